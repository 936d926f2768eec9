//! Why there is no answer, and what to bear in mind.

labels! {
/// Why what was typed makes no sense, and what it may be.
MisreadText {
    Empty = "Nothing is typed. Type a number, {example}."
        / "No hay nada escrito. Escriba un número, {example}."
        / "Rien n’est saisi. Saisissez un nombre, {example}.",
    Stops = "This stops before it is a number. Type a number, {example}."
        / "Esto se corta antes de ser un número. Escriba un número, {example}."
        / "Cela s’arrête avant d’être un nombre. Saisissez un nombre, {example}.",
    NotANumber = "“{found}” isn't part of a number. Type a number, {example}."
        / "«{found}» no forma parte de un número. Escriba un número, {example}."
        / "« {found} » ne fait pas partie d’un nombre. Saisissez un nombre, {example}.",
    Ambiguous = "This could be {one} or {other}. Say which."
        / "Esto podría ser {one} o {other}. Diga cuál."
        / "Ce pourrait être {one} ou {other}. Dites lequel.",
    UnknownUnit = "“{found}” is no unit known here. {units}"
        / "«{found}» no es una unidad conocida aquí. {units}"
        / "« {found} » n’est pas une unité connue ici. {units}",
    NoCount = "A number of pieces isn't asked for here. {units}"
        / "Aquí no se pide un número de piezas. {units}"
        / "On ne demande pas ici un nombre de pièces. {units}",
    CountedAs = "“{found}” doesn't say what is meant here: as calcium carbonate, or as the ion? Choose the unit beside it."
        / "«{found}» no dice qué se quiere decir: ¿como carbonato de calcio, o como el ion? Elija la unidad al lado."
        / "« {found} » ne dit pas ce qui est compté : en carbonate de calcium, ou en ion ? Choisissez l’unité à côté.",
    SomethingElse = "“{found}” measures something else. {units}"
        / "«{found}» mide otra cosa. {units}"
        / "« {found} » mesure autre chose. {units}",
    PartTooLarge = "{part} after the larger unit is too much: it must be below {limit}."
        / "{part} tras la unidad mayor es demasiado: debe ser menos de {limit}."
        / "{part} après la plus grande unité, c’est trop : il faut moins de {limit}.",
    TooLong = "This is too long for a number."
        / "Esto es demasiado largo para un número."
        / "C’est trop long pour un nombre.",
    TooLarge = "This is larger than anything in this trade. Check the number and its unit."
        / "Esto es mayor que cualquier cosa de este oficio. Revise el número y su unidad."
        / "C’est plus grand que tout dans ce métier. Vérifiez le nombre et son unité.",
    TooSmall = "This is smaller than anything in this trade. Check the number and its unit."
        / "Esto es menor que cualquier cosa de este oficio. Revise el número y su unidad."
        / "C’est plus petit que tout dans ce métier. Vérifiez le nombre et son unité.",
    DivideByZero = "A fraction over 0 is no number."
        / "Una fracción entre 0 no es un número."
        / "Une fraction sur 0 n’est pas un nombre.",
    NotWhole = "{value} is no number of things. It must be a whole number from 1, like 8."
        / "{value} no es un número de cosas. Debe ser un número entero desde 1, como 8."
        / "{value} n’est pas un nombre de choses. Il faut un nombre entier à partir de 1, comme 8.",
    NoSuchSize = "{diameter} × {height} in is no vessel's size. Type the diameter, then the height: 12x52."
        / "{diameter} × {height} in no es el tamaño de ningún recipiente. Escriba el diámetro y luego la altura: 12x52."
        / "{diameter} × {height} in n’est la taille d’aucune cuve. Saisissez le diamètre, puis la hauteur : 12x52.",
    NoSize = "This is no vessel's size. Type the diameter, then the height, in inches: 12x52 or 1252."
        / "Esto no es el tamaño de ningún recipiente. Escriba el diámetro y luego la altura, en pulgadas: 12x52 o 1252."
        / "Ce n’est la taille d’aucune cuve. Saisissez le diamètre, puis la hauteur, en pouces : 12x52 ou 1252.",
    BareNumber = "Type a bare number." / "Escriba solo un número." / "Saisissez un nombre seul.",
    Units = "Units it can be in: {units}." / "Unidades posibles: {units}." / "Unités possibles : {units}.",
    LikeInch = "like 52, 11 3/4 or 4 ft 4 in" / "como 52, 11 3/4 o 4 ft 4 in" / "comme 52, 11 3/4 ou 4 ft 4 in",
    LikeMillimetre = "like 1320 or 298.5" / "como 1320 o 298,5" / "comme 1320 ou 298,5",
    LikeCubicFoot = "like 2, 1.5 or 1/6" / "como 2, 1,5 o 1/6" / "comme 2, 1,5 ou 1/6",
    LikeEach = "like 2 or 1.5" / "como 2 o 1,5" / "comme 2 ou 1,5",
    LikeFlow = "like 7 or 3.5" / "como 7 o 3,5" / "comme 7 ou 3,5",
    LikeTemperature = "like 12" / "como 12" / "comme 12",
    LikePercent = "like 20" / "como 20" / "comme 20",
    Like = "like 1.5" / "como 1,5" / "comme 1,5",
}}

labels! {
/// Why there is no answer, and what to do. `what` is the name of a quantity.
ProblemText {
    NoTopSlot = "There is no top slot to cover: choose a bottom collector with slots and its height, or fill by another measure."
        / "No hay ranura más alta que cubrir: elija un colector inferior con ranuras y su altura, o llene por otra medida."
        / "Il n’y a pas de fente la plus haute à couvrir : choisissez un collecteur inférieur à fentes et sa hauteur, ou remplissez d’après une autre mesure.",
    Missing = "{what} is needed and isn't there yet."
        / "{what}: hace falta y aún no está."
        / "{what} : c’est nécessaire et pas encore là.",
    BelowNought = "{what} can't be below 0; it is {value}."
        / "{what}: no puede ser menor que 0; es {value}."
        / "{what} : ne peut pas être inférieur à 0 ; c’est {value}.",
    NotPositive = "{what} must be more than 0; it is {value}."
        / "{what}: debe ser mayor que 0; es {value}."
        / "{what} : doit être supérieur à 0 ; c’est {value}.",
    DropOutside = "At this flow grains of these sizes lose from {low} to {high} however they lie; {value} was read. Check flow, gauges and grains, and whether the bed was clean."
        / "Con este caudal unos granos de estos tamaños pierden de {low} a {high}, estén como estén; se leyó {value}. Revise caudal, manómetros y granos, y si el lecho estaba limpio."
        / "À ce débit des grains de ces tailles perdent de {low} à {high}, quelle que soit leur position ; {value} a été lu. Vérifiez débit, manomètres et grains, et si le lit était propre.",
    UpTo = "{what} must be more than 0 and at most {high}; it is {value}."
        / "{what}: debe ser mayor que 0 y como mucho {high}; es {value}."
        / "{what} : doit être supérieur à 0 et au plus {high} ; c’est {value}.",
    OutOfRange = "{what} must be from {low} to {high}; it is {value}."
        / "{what}: debe ir de {low} a {high}; es {value}."
        / "{what} : doit aller de {low} à {high} ; c’est {value}.",
    OverTheRim = "This would bring the surface to {value} above the lowest point, over the rim at {limit}."
        / "Esto llevaría la superficie a {value} sobre el punto más bajo, por encima del borde, que está a {limit}."
        / "Cela porterait la surface à {value} au-dessus du point le plus bas, au-dessus du bord qui est à {limit}.",
    LateralTooLong = "{what} must be at most {limit}, what the shell leaves at their height; it is {value}."
        / "{what}: como mucho {limit}, lo que deja la virola a su altura; es {value}."
        / "{what} : au plus {limit}, ce que laisse la virole à leur hauteur ; c’est {value}.",
    WallTooThick = "{what} must be less than half the shell's diameter by the tape, {limit}; it is {value}."
        / "{what}: debe ser menos de la mitad del diámetro de la virola según la cinta, {limit}; es {value}."
        / "{what} : doit être moins de la moitié du diamètre de la virole d’après le ruban, {limit} ; c’est {value}.",
    NotBelow = "{what} must be less than the {other}, {limit}; it is {value}."
        / "{what}: debe ser menor que «{other}», {limit}; es {value}."
        / "{what} : doit être inférieur à « {other} », {limit} ; c’est {value}.",
    NoStraightSide = "{what} must be more than heads and neck together, {limit}; it is {value}."
        / "{what}: debe ser más que fondos y cuello juntos, {limit}; es {value}."
        / "{what} : doit être plus que fonds et col ensemble, {limit} ; c’est {value}.",
    NoRiserLeft = "No riser would be left: this must be more than {limit}; it is {value}."
        / "No quedaría tubo central: debe ser más de {limit}; es {value}."
        / "Il ne resterait pas de tube central : il faut plus de {limit} ; c’est {value}.",
    NotAbove = "{what} must be more than the {other}, {limit}; it is {value}."
        / "{what}: debe ser mayor que «{other}», {limit}; es {value}."
        / "{what} : doit être supérieur à « {other} », {limit} ; c’est {value}.",
    LateralsFill = "The laterals would take {needs} of a section of {room}, and grains could not pass. Check their number, length and diameter."
        / "Los brazos ocuparían {needs} de una sección de {room}, y los granos no podrían pasar. Revise su número, largo y diámetro."
        / "Les bras prendraient {needs} d’une section de {room}, et les grains ne pourraient pas passer. Vérifiez leur nombre, leur longueur et leur diamètre.",
    DoesNotFit = "This needs {needs}; there is room for {room}."
        / "Esto necesita {needs}; hay sitio para {room}."
        / "Il faut {needs} ; il y a de la place pour {room}.",
    AlreadyReached = "{value} is already reached: the surface below stands {there} above the lowest point."
        / "{value} ya está alcanzado: la superficie de debajo está a {there} sobre el punto más bajo."
        / "{value} est déjà atteint : la surface du dessous est à {there} au-dessus du point le plus bas.",
    WaitsForLayer = "Waits for a layer that has no answer yet."
        / "Espera una capa que aún no tiene respuesta."
        / "Attend une couche qui n’a pas encore de réponse.",
    WaitsFor = "Waits for the {other}." / "Espera: {other}." / "Attend : {other}.",
    CarriesAway = "{what} of {value} leaves no bed: the grains go with the water."
        / "{what}: con {value} no queda lecho; los granos se van con el agua."
        / "{what} : avec {value} il ne reste pas de lit ; les grains partent avec l’eau.",
    TooFine = "{what} has more than {places} decimal places."
        / "{what}: tiene más de {places} decimales."
        / "{what} : a plus de {places} décimales.",
    WholePrice = "{what} can't be the whole price: type less than 100 %."
        / "{what}: no puede ser todo el precio; escriba menos de 100 %."
        / "{what} : ne peut pas être tout le prix ; saisissez moins de 100 %.",
    TooLargeToAdd = "{what} and quantity are too large to be added up to the last digit."
        / "{what} y cantidad son demasiado grandes para sumarlos hasta la última cifra."
        / "{what} et quantité sont trop grands pour être additionnés jusqu’au dernier chiffre.",
    TooManyWays = "{what}: more ways than can be gone through to be sure which is best. Offer fewer sizes, or lock some."
        / "{what}: más combinaciones de las que se pueden recorrer para saber cuál es la mejor. Ofrezca menos tamaños, o fije algunos."
        / "{what} : plus de combinaisons qu’on ne peut en parcourir pour être sûr de la meilleure. Proposez moins de tailles, ou fixez-en.",
    NoSolution = "No diameter fits the {what} and these two tape readings. Check all three."
        / "Ningún diámetro encaja con «{what}» y estas dos lecturas de cinta. Revise las tres cosas."
        / "Aucun diamètre ne va avec « {what} » et ces deux lectures au ruban. Vérifiez les trois.",
    NoMaterial = "Choose a material." / "Elija un material." / "Choisissez un matériau.",
    UnknownMaterial = "This version doesn't know the material “{id}”. Choose another, or update."
        / "Esta versión no conoce el material «{id}». Elija otro, o actualice."
        / "Cette version ne connaît pas le matériau « {id} ». Choisissez-en un autre, ou mettez à jour.",
    UnknownPack = "This version doesn't know the pack “{id}”. Choose another, or update."
        / "Esta versión no conoce el envase «{id}». Elija otro, o actualice."
        / "Cette version ne connaît pas le conditionnement « {id} ». Choisissez-en un autre, ou mettez à jour.",
    NoAmount = "Type how much." / "Escriba cuánto." / "Saisissez combien.",
    NoSuchUnit = "“{found}” is no unit known here. Leave it out, or type another."
        / "«{found}» no es una unidad conocida aquí. Quítela, o escriba otra."
        / "« {found} » n’est pas une unité connue ici. Retirez-la, ou saisissez-en une autre.",
}}

labels! {
/// What to bear in mind.
CautionText {
    MeasureDiameter = "Taken as {share} of the nominal diameter, from memory. Measure it."
        / "Tomado como {share} del diámetro nominal, de memoria. Mídalo."
        / "Pris comme {share} du diamètre nominal, de mémoire. Mesurez-le.",
    AboveNominal = "Comes out at {inside}, more than the nominal {nominal}. Check the reading it comes from."
        / "Sale {inside}, más que el nominal {nominal}. Revise la lectura de la que viene."
        / "On obtient {inside}, plus que le nominal {nominal}. Vérifiez la lecture d’où cela vient.",
    MeasureDepth = "Taken as {length} under the nominal height, from memory. Measure it."
        / "Tomada como {length} menos que la altura nominal, de memoria. Mídala."
        / "Prise comme {length} de moins que la hauteur nominale, de mémoire. Mesurez-la.",
    IfPackWasFull = "True if the bag was full. If it was short, the vessel is narrower than this."
        / "Cierto si la bolsa estaba llena. Si faltaba, el recipiente es más estrecho."
        / "Vrai si le sac était plein. S’il en manquait, la cuve est plus étroite.",
    DensityVaries = "Bulk density is {low} to {high} from lot to lot."
        / "La densidad aparente va de {low} a {high} de un lote a otro."
        / "La masse volumique apparente va de {low} à {high} d’un lot à l’autre.",
    BeyondFit = "Outside what the equation was fitted to: {value} against {limit}."
        / "Fuera de lo que ajusta la ecuación: {value} frente a {limit}."
        / "Hors du domaine d’ajustement de l’équation : {value} contre {limit}.",
    NotLifted = "This flow doesn't lift the grains; they lie as they settled."
        / "Este caudal no levanta los granos; están como se asentaron."
        / "Ce débit ne soulève pas les grains ; ils restent comme ils se sont posés.",
    SizesGuessed = "How the sizes are spread is a guess between the sieves: effective size and uniformity aren't known."
        / "Cómo se reparten los tamaños entre los tamices es una conjetura: no se conocen tamaño efectivo ni uniformidad."
        / "La répartition des tailles entre les tamis est une supposition : taille effective et uniformité ne sont pas connues.",
    FromMemory = "From memory: no verdict rests on it."
        / "De memoria: ningún veredicto se apoya en ello."
        / "De mémoire : aucun verdict ne repose dessus.",
    ChargesMiss = "Cations and anions of the analysis miss each other by {share}: something is left out or measured wrong."
        / "Cationes y aniones del análisis no cuadran por {share}: falta algo o está mal medido."
        / "Cations et anions de l’analyse diffèrent de {share} : quelque chose manque ou est mal mesuré.",
    Overshoot = "Water that stands in magnesia goes above pH {limit}: flush before use, and mind fittings and taste."
        / "El agua parada en magnesia pasa de pH {limit}: deje correr antes de usar, y cuide accesorios y sabor."
        / "L’eau qui stagne dans la magnésie dépasse pH {limit} : rincez avant usage, attention aux raccords et au goût.",
    AboveRule = "{value} is more than the rule counts on at this salt dose ({limit})."
        / "{value} es más de lo que cuenta la regla con esta dosis de sal ({limit})."
        / "{value} est plus que ce que la règle compte à cette dose de sel ({limit}).",
    Supersaturated = "The water is supersaturated already (saturation index {index}): it takes up no calcite and may lay some down."
        / "El agua ya está sobresaturada (índice de saturación {index}): no toma calcita y puede dejarla."
        / "L’eau est déjà sursaturée (indice de saturation {index}) : elle ne prend pas de calcite et peut en déposer.",
    WithoutVessel = "Without the vessel itself: the weight of the empty vessel isn't known. Add it."
        / "Sin el propio recipiente: no se conoce el peso del recipiente vacío. Añádalo."
        / "Sans la cuve elle-même : le poids de la cuve vide n’est pas connu. Ajoutez-le.",
}}
