//! What is said of the price list's rows and of its file.

use crate::prices::{Care, PriceKind, SizeFault};

names! {
/// What a row prices.
KindName of PriceKind {
    Material = "Material" / "Material" / "Matériau",
    Pack = "Pack" / "Envase" / "Conditionnement",
    Part = "Part" / "Pieza" / "Pièce",
    Labour = "Labour" / "Mano de obra" / "Main-d’œuvre",
    Disposal = "Disposal" / "Eliminación" / "Élimination",
    Freight = "Freight" / "Transporte" / "Transport",
}}

names! {
/// How a thing is stored, or what can hurt about it.
CareName of Care {
    KeepDry = "keep dry" / "mantener seco" / "tenir au sec",
    KeepFromFrost = "keep from frost" / "proteger de las heladas" / "protéger du gel",
    KeepCool = "keep cool" / "mantener fresco" / "tenir au frais",
    KeepOutOfSun = "keep out of the sun" / "proteger del sol" / "protéger du soleil",
    KeepClosed = "keep closed" / "mantener cerrado" / "tenir fermé",
    KeepUpright = "keep upright" / "mantener de pie" / "tenir debout",
    Dust = "dust" / "polvo" / "poussière",
    SilicaDust = "silica dust" / "polvo de sílice" / "poussière de silice",
    TakesOxygen = "takes oxygen from the air when wet"
        / "húmedo, quita oxígeno del aire"
        / "humide, prend l’oxygène de l’air",
    Slippery = "slippery when spilt" / "resbala si se derrama" / "glissant si répandu",
    Irritant = "irritates skin and eyes" / "irrita piel y ojos" / "irrite la peau et les yeux",
    Corrosive = "corrosive" / "corrosivo" / "corrosif",
    Oxidising = "feeds a fire" / "aviva el fuego" / "attise le feu",
    Flammable = "flammable" / "inflamable" / "inflammable",
    Toxic = "toxic" / "tóxico" / "toxique",
}}

names! {
/// Why a text is no size.
SizeText of SizeFault {
    NotASize = "This is no length, volume or weight with its unit. Type it as in 10 ft or 25 kg."
        / "Esto no es una longitud, un volumen o un peso con su unidad. Escríbalo como 10 ft o 25 kg."
        / "Ce n’est ni une longueur, ni un volume, ni un poids avec son unité. Saisissez comme 10 ft ou 25 kg.",
    NoSize = "A size is more than nought." / "Un tamaño es más que cero." / "Une taille est plus que zéro.",
}}

labels! {
/// What a charge that ships with the page is called, and what it is counted in.
ChargeName {
    OnSite = "Work on site" / "Trabajo en obra" / "Travail sur place",
    Travel = "Travel" / "Desplazamiento" / "Déplacement",
    Drum = "Drum for spent media" / "Bidón para medio agotado" / "Fût pour média usé",
    SpentMedia = "Disposal of spent media" / "Eliminación de medio agotado" / "Élimination du média usé",
    Determination = "Waste determination" / "Determinación de residuo" / "Caractérisation du déchet",
    FreightWeight = "Freight by weight" / "Transporte por peso" / "Transport au poids",
    Delivery = "Delivery" / "Entrega" / "Livraison",
    Hour = "hour" / "hora" / "heure",
    DrumUnit = "drum" / "bidón" / "fût",
    EachUnit = "each" / "unidad" / "unité",
}}

labels! {
/// A column of the price list's file.
ColumnName {
    Key = "key" / "clave" / "clé",
    Kind = "kind" / "tipo" / "type",
    PartNumber = "part number" / "referencia" / "référence",
    Name = "name" / "nombre" / "nom",
    Bin = "bin" / "ubicación" / "emplacement",
    Unit = "unit" / "unidad" / "unité",
    TaxClass = "tax class" / "clase de impuesto" / "classe de taxe",
    SupersededBy = "superseded by" / "sustituida por" / "remplacée par",
    Cost = "cost" / "coste" / "coût",
    Price = "price" / "precio" / "prix",
    Size = "size" / "tamaño" / "taille",
    Care = "care" / "cuidado" / "soin",
    Retired = "retired" / "retirada" / "retirée",
    Origin = "origin" / "origen" / "origine",
}}

labels! {
/// Why a text, a row or a file isn't taken.
PriceFault {
    TooLong = "This has {letters} letters; at most {most} fit. Shorten it."
        / "Tiene {letters} letras; caben como mucho {most}. Acórtelo."
        / "Il y a {letters} lettres ; au plus {most} tiennent. Raccourcissez.",
    Comma = "a comma" / "una coma" / "une virgule",
    Point = "a point" / "un punto" / "un point",
    NotAnAmount = "This isn't an amount. Type digits only, without the currency: 1234.50."
        / "Esto no es un importe. Escriba solo cifras, sin la moneda: 1234,50."
        / "Ce n’est pas un montant. Saisissez des chiffres seuls, sans la monnaie : 1234,50.",
    Negative = "An amount is never below nought here. A reduction belongs to the quote."
        / "Aquí un importe nunca es menor que cero. Una rebaja va en la oferta."
        / "Un montant n’est jamais sous zéro ici. Une remise va dans le devis.",
    TooLarge = "This is more than 999 999 999 999. Check the digits."
        / "Esto es más de 999 999 999 999. Revise las cifras."
        / "C’est plus que 999 999 999 999. Vérifiez les chiffres.",
    TooFine = "This has more than {most} digits behind the mark. Round it."
        / "Tiene más de {most} cifras tras el signo decimal. Redondéelo."
        / "Il y a plus de {most} chiffres après le signe décimal. Arrondissez.",
    MarkTwice = "The decimal mark, {mark}, stands here more than once."
        / "El signo decimal, {mark}, está aquí más de una vez."
        / "Le signe décimal, {mark}, est là plus d’une fois.",
    OtherMark = "{found} could be meant either way: the decimal mark here is {mark}."
        / "{found} se puede entender de dos modos: el signo decimal aquí es {mark}."
        / "{found} peut se comprendre de deux façons : le signe décimal ici est {mark}.",
    QuoteInside = "A quotation mark stands inside a cell. Put the whole cell between quotation marks and double the inner one."
        / "Hay unas comillas dentro de una celda. Ponga toda la celda entre comillas y duplique las de dentro."
        / "Un guillemet est dans une cellule. Mettez toute la cellule entre guillemets et doublez celui du dedans.",
    QuoteAfter = "Something stands behind the quotation mark that closes a cell."
        / "Hay algo tras las comillas que cierran una celda."
        / "Il y a quelque chose après le guillemet qui ferme une cellule.",
    QuoteOpen = "A quotation mark is never closed."
        / "Unas comillas no se cierran nunca."
        / "Un guillemet n’est jamais fermé.",
    CellTooLong = "A cell has more than {most} letters."
        / "Una celda tiene más de {most} letras."
        / "Une cellule a plus de {most} lettres.",
    Cells = "It has {found} cells; the first row names {wanted} columns."
        / "Tiene {found} celdas; la primera fila nombra {wanted} columnas."
        / "Elle a {found} cellules ; la première ligne nomme {wanted} colonnes.",
    NoName = "It has neither a key nor a part number."
        / "No tiene ni clave ni referencia."
        / "Elle n’a ni clé ni référence.",
    ColumnTooLong = "Its {column} has {letters} letters; at most {most} fit."
        / "Su columna «{column}» tiene {letters} letras; caben como mucho {most}."
        / "Sa colonne « {column} » a {letters} lettres ; au plus {most} tiennent.",
    Amount = "Its {column}, “{text}”: {why}"
        / "Su columna «{column}», «{text}»: {why}"
        / "Sa colonne « {column} », « {text} » : {why}",
    MixedMarks = "“{text}” has another decimal mark than line {line}, where it is {mark}."
        / "«{text}» tiene otro signo decimal que la línea {line}, donde es {mark}."
        / "« {text} » a un autre signe décimal que la ligne {line}, où c’est {mark}.",
    WhichMark = "The mark in “{text}” could be meant either way, and no other amount tells. Choose the decimal mark above."
        / "El signo de «{text}» se puede entender de dos modos, y ningún otro importe lo dice. Elija arriba el signo decimal."
        / "Le signe dans « {text} » peut se comprendre de deux façons, et aucun autre montant ne le dit. Choisissez le signe décimal ci-dessus.",
    NotOneOf = "Its {column}, “{text}”, is none of: {may_be}."
        / "Su columna «{column}», «{text}», no es nada de esto: {may_be}."
        / "Sa colonne « {column} », « {text} », n’est rien de ceci : {may_be}.",
    Size = "Its size, “{text}”: {why}" / "Su tamaño, «{text}»: {why}" / "Sa taille, « {text} » : {why}",
    SameKey = "Line {line} has the same key."
        / "La línea {line} tiene la misma clave."
        / "La ligne {line} a la même clé.",
    SamePartNumber = "Line {line} has the same part number."
        / "La línea {line} tiene la misma referencia."
        / "La ligne {line} a la même référence.",
    PartNumberTaken = "Another row of the list has this part number: its key is {key}."
        / "Otra fila de la lista tiene esta referencia: su clave es {key}."
        / "Une autre ligne de la liste a cette référence : sa clé est {key}.",
    WhichRow = "{rows} rows of the list have this part number. Say which by its key."
        / "{rows} filas de la lista tienen esta referencia. Diga cuál por su clave."
        / "{rows} lignes de la liste ont cette référence. Dites laquelle par sa clé.",
    FileTooLong = "It has {found} MiB; at most {most} MiB are read. Split it."
        / "Tiene {found} MiB; se leen como mucho {most} MiB. Divídalo."
        / "Il a {found} Mio ; au plus {most} Mio sont lus. Partagez-le.",
    NotUtf8 = "It isn't text in UTF-8. Save it as comma-separated values in UTF-8."
        / "No es texto en UTF-8. Guárdelo como valores separados por comas en UTF-8."
        / "Ce n’est pas du texte en UTF-8. Enregistrez-le en valeurs séparées par des virgules, en UTF-8.",
    NoRows = "There is no row in it below the names of the columns."
        / "No hay ninguna fila bajo los nombres de las columnas."
        / "Il n’y a aucune ligne sous les noms des colonnes.",
    NoHeader = "Its first row doesn't name the columns. It must name part_number or key; save the list as a file to see them all."
        / "Su primera fila no nombra las columnas. Debe nombrar part_number o key; guarde la lista como archivo para verlas todas."
        / "Sa première ligne ne nomme pas les colonnes. Elle doit nommer part_number ou key ; enregistrez la liste en fichier pour les voir toutes.",
    SameColumn = "The column “{column}” stands in it twice."
        / "La columna «{column}» está dos veces."
        / "La colonne « {column} » y est deux fois.",
    TooMany = "It has {rows} rows; a list holds at most {most}, those that are there included. Nothing was taken."
        / "Tiene {rows} filas; en una lista caben como mucho {most}, contando las que ya hay. No se tomó nada."
        / "Il a {rows} lignes ; une liste en contient au plus {most}, celles qui y sont comprises. Rien n’a été pris.",
}}
