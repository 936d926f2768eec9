//! Fixed texts of what goes with a signed record: its photo, its corrections.

labels! {
/// Why a photo wasn't kept.
PhotoLabel {
    NoPicture = "This file is no picture that this browser reads: nothing of it was kept. Take or choose another one."
        / "Este archivo no es una imagen que este navegador lea: no se guardó nada. Tome o elija otra."
        / "Ce fichier n’est pas une image que ce navigateur lit : rien n’en a été gardé. Prenez-en ou choisissez-en une autre.",
    TooLarge = "This picture is larger than 60 MB: nothing of it was kept. Take or choose a smaller one."
        / "Esta imagen ocupa más de 60 MB: no se guardó nada. Tome o elija una más pequeña."
        / "Cette image dépasse 60 Mo : rien n’en a été gardé. Prenez-en ou choisissez-en une plus petite.",
}}

labels! {
/// What a correction of a signed record asks for.
CorrectionLabel {
    LotOf = "Of which layer's lot" / "Del lote de qué capa" / "Du lot de quelle couche",
    LotOfNone = "of no lot" / "de ningún lote" / "d’aucun lot",
    Lot = "Lot and date, as they should be" / "Lote y fecha, como deben ser" / "Lot et date, comme ils doivent être",
    NeedsTape = "Type the tape reading as it should be."
        / "Escriba la lectura de la cinta como debe ser."
        / "Saisissez la lecture du mètre telle qu’elle doit être.",
    NeedsLot = "Type the lot as it should be."
        / "Escriba el lote como debe ser."
        / "Saisissez le lot tel qu’il doit être.",
    NotWritten = "Not added: the browser could not write it through to the disk. What you typed still stands here; try again."
        / "No se añadió: el navegador no pudo escribirlo en el disco. Lo que escribió sigue aquí; inténtelo de nuevo."
        / "Non ajoutée : le navigateur n’a pas pu l’écrire sur le disque. Ce que vous avez saisi est encore là ; réessayez.",
}}
