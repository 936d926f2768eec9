//! Fixed texts of the price list.

labels! {
/// A fixed text of the price list's screen.
PriceLabel {
    Title = "Price list" / "Lista de precios" / "Liste de prix",
    About = "What packs, parts, work and freight cost and sell for. The list stays on this device; a job takes the rows it uses along. A price nobody typed is a gap, never nought."
        / "Lo que cuestan y a cuánto se venden envases, piezas, trabajo y transporte. La lista queda en este dispositivo; un trabajo se lleva las filas que usa. Un precio que nadie escribió es un hueco, nunca cero."
        / "Ce que coûtent et à combien se vendent conditionnements, pièces, travail et transport. La liste reste sur cet appareil ; un chantier emporte les lignes qu’il utilise. Un prix que personne n’a saisi est un manque, jamais zéro.",
    AboutList = "This list" / "Esta lista" / "Cette liste",
    ListTitle = "Name of the list" / "Nombre de la lista" / "Nom de la liste",
    Currency = "Currency" / "Moneda" / "Monnaie",
    CurrencyHint = "three letters, as in USD" / "tres letras, como USD" / "trois lettres, comme EUR",
    Version = "Version" / "Versión" / "Version",
    Search = "Search the list" / "Buscar en la lista" / "Chercher dans la liste",
    AllKinds = "Every kind" / "Todos los tipos" / "Tous les types",
    KindsTitle = "Kind" / "Tipo" / "Type",
    GapsOnly = "Without a price" / "Sin precio" / "Sans prix",
    RetiredToo = "No longer offered as well" / "También lo que ya no se ofrece" / "Aussi ce qui n’est plus proposé",
    Found = "rows found" / "filas halladas" / "lignes trouvées",
    FoundOne = "row found" / "fila hallada" / "ligne trouvée",
    OfRows = "of" / "de" / "sur",
    NothingFound = "No row matches." / "Ninguna fila coincide." / "Aucune ligne ne correspond.",
    More = "Show more rows" / "Mostrar más filas" / "Montrer plus de lignes",
    NewRow = "New row" / "Fila nueva" / "Nouvelle ligne",
    Edit = "Change" / "Cambiar" / "Modifier",
    Done = "Done" / "Hecho" / "Terminé",
    NoPrice = "no price" / "sin precio" / "sans prix",
    NoCost = "no cost" / "sin coste" / "sans coût",
    CostIs = "cost" / "coste" / "coût",
    Cost = "Cost" / "Coste" / "Coût",
    Price = "Price" / "Precio" / "Prix",
    NoName = "Row without a name" / "Fila sin nombre" / "Ligne sans nom",
    PartNumber = "Part number" / "Referencia" / "Référence",
    Name = "Name" / "Nombre" / "Nom",
    Bin = "Bin" / "Ubicación" / "Emplacement",
    Unit = "Unit" / "Unidad" / "Unité",
    TaxClass = "Tax class" / "Clase de impuesto" / "Classe de taxe",
    SupersededBy = "Superseded by part number" / "Sustituida por la referencia" / "Remplacée par la référence",
    Size = "Stock length or pack size"
        / "Largo de venta o tamaño del envase"
        / "Longueur vendue ou taille du conditionnement",
    SizeHint = "with its unit: 10 ft, 25 kg" / "con su unidad: 10 ft, 25 kg" / "avec son unité : 10 ft, 25 kg",
    Storage = "Storage" / "Almacenaje" / "Stockage",
    Hazards = "What can hurt" / "Qué puede hacer daño" / "Ce qui peut blesser",
    Retire = "No longer offered" / "Ya no se ofrece" / "Ne plus proposer",
    Offer = "Offer again" / "Volver a ofrecer" / "Proposer à nouveau",
    Retired = "no longer offered" / "ya no se ofrece" / "n’est plus proposé",
    Shipped = "as shipped" / "de origen" / "d’origine",
    Invented = "invented" / "inventado" / "inventé",
    ShippedAgain = "Back to the shipped row" / "Volver a la fila de origen" / "Revenir à la ligne d’origine",
    FileTitle = "As a file" / "Como archivo" / "En fichier",
    FileAbout = "Comma-separated values, for a spreadsheet. A file that comes in is tried first; nothing changes before you say so."
        / "Valores separados por comas, para una hoja de cálculo. Un archivo que entra se prueba antes; nada cambia hasta que usted lo diga."
        / "Valeurs séparées par des virgules, pour un tableur. Un fichier qui entre est d’abord essayé ; rien ne change avant que vous le disiez.",
    Separator = "Between cells" / "Entre celdas" / "Entre les cellules",
    Comma = "Comma" / "Coma" / "Virgule",
    Semicolon = "Semicolon" / "Punto y coma" / "Point-virgule",
    Mark = "With a byte order mark, for programs that take the text for another alphabet without it"
        / "Con marca de orden de bytes, para programas que sin ella toman el texto por otro alfabeto"
        / "Avec une marque d’ordre des octets, pour les programmes qui sans elle prennent le texte pour un autre alphabet",
    SaveList = "Save the list as a file" / "Guardar la lista como archivo" / "Enregistrer la liste en fichier",
    OpenList = "Try a file" / "Probar un archivo" / "Essayer un fichier",
    Trial = "What the file would do" / "Lo que haría el archivo" / "Ce que ferait le fichier",
    Decimal = "Decimal mark of its amounts" / "Signo decimal de sus importes" / "Signe décimal de ses montants",
    DecimalOfFile = "As the file shows" / "Como muestra el archivo" / "Comme le fichier le montre",
    DecimalPoint = "Point" / "Punto" / "Point",
    DecimalComma = "Comma" / "Coma" / "Virgule",
    Added = "new" / "nuevas" / "nouvelles",
    Changed = "changed" / "cambiadas" / "modifiées",
    Unchanged = "unchanged" / "sin cambio" / "inchangées",
    Refused = "refused" / "rechazadas" / "refusées",
    AddedTitle = "New rows" / "Filas nuevas" / "Nouvelles lignes",
    ChangedTitle = "Changed rows" / "Filas cambiadas" / "Lignes modifiées",
    RefusedTitle = "Refused rows" / "Filas rechazadas" / "Lignes refusées",
    RefusedAbout = "They are left out. Mend them in the file and try it again."
        / "Se dejan fuera. Corríjalas en el archivo y pruébelo otra vez."
        / "Elles sont écartées. Corrigez-les dans le fichier et essayez-le à nouveau.",
    Ignored = "Columns nobody knows, left out:"
        / "Columnas que nadie conoce, dejadas fuera:"
        / "Colonnes que personne ne connaît, écartées :",
    Take = "Take it into the list" / "Tomarlo en la lista" / "Le prendre dans la liste",
    Leave = "Leave the list as it is" / "Dejar la lista como está" / "Laisser la liste telle quelle",
    SaveRefusals = "Save the refused rows as a file"
        / "Guardar las filas rechazadas como archivo"
        / "Enregistrer les lignes refusées en fichier",
    AndMore = "and more:" / "y más:" / "et d’autres :",
    Was = "was" / "antes" / "avant",
    Blank = "blank" / "vacío" / "vide",
    Line = "line" / "línea" / "ligne",
    Taken = "The file is in the list. Undo takes it back."
        / "El archivo está en la lista. Deshacer lo quita."
        / "Le fichier est dans la liste. Annuler le retire.",
    NotTaken = "The file wasn't tried." / "El archivo no se probó." / "Le fichier n’a pas été essayé.",
    ResetTitle = "Start over" / "Empezar de nuevo" / "Tout reprendre",
    Reset = "Back to the shipped list" / "Volver a la lista de origen" / "Revenir à la liste d’origine",
    ResetAsk = "Every price, bin and row you typed or brought in leaves the list. Jobs keep the rows they took along. Undo brings it back while the page is open."
        / "Todos los precios, ubicaciones y filas que escribió o trajo salen de la lista. Los trabajos conservan las filas que se llevaron. Deshacer lo devuelve mientras la página esté abierta."
        / "Tous les prix, emplacements et lignes que vous avez saisis ou apportés quittent la liste. Les chantiers gardent les lignes emportées. Annuler les ramène tant que la page est ouverte.",
    ResetYes = "Yes, back to the shipped list"
        / "Sí, volver a la lista de origen"
        / "Oui, revenir à la liste d’origine",
    ResetNo = "No, keep it" / "No, conservarla" / "Non, la garder",
    PersonsOwn = "own" / "propia" / "à vous",
}
}
