//! Texts that several screens share, or that stand on the vessel's page.

labels! {
/// A fixed text that several screens share, or that stands on the vessel's page.
Label {
    Jobs = "Jobs" / "Trabajos" / "Chantiers",
    Settings = "Settings" / "Ajustes" / "Réglages",
    Vessel = "Vessel" / "Recipiente" / "Cuve",
    Vessels = "Vessels" / "Recipientes" / "Cuves",
    Verdicts = "Verdicts" / "Veredictos" / "Verdicts",
    Layers = "Layers" / "Capas" / "Couches",
    Results = "Figures" / "Valores" / "Valeurs",
    AllFine = "Checked and fine" / "Comprobado y bien" / "Vérifié, tout va bien",
    BillOfMaterials = "Bill of materials" / "Lista de materiales" / "Nomenclature",
    PickList = "Pick list" / "Lista de recogida" / "Liste de prélèvement",
    SurveySheet = "Survey sheet" / "Hoja de toma de datos" / "Fiche de relevé",
    Survey = "Survey" / "Toma de datos" / "Relevé",
    NewJob = "New job" / "Nuevo trabajo" / "Nouveau chantier",
    SampleJob = "Sample job" / "Trabajo de ejemplo" / "Chantier d’exemple",
    NoJobs = "No job on this device yet."
        / "Todavía no hay ningún trabajo en este dispositivo."
        / "Aucun chantier sur cet appareil pour l’instant.",
    NoJobsHint = "Start one, look at the invented sample, or open a file somebody sent you."
        / "Empiece uno, mire el ejemplo inventado o abra un archivo que le hayan enviado."
        / "Commencez-en un, regardez l’exemple inventé ou ouvrez un fichier qu’on vous a envoyé.",
    Search = "Search jobs" / "Buscar trabajos" / "Chercher un chantier",
    NothingFound = "No job matches." / "Ningún trabajo coincide." / "Aucun chantier ne correspond.",
    Untitled = "Untitled job" / "Trabajo sin título" / "Chantier sans titre",
    Duplicate = "Duplicate" / "Duplicar" / "Dupliquer",
    CopyOf = "Copy of" / "Copia de" / "Copie de",
    Delete = "Delete" / "Borrar" / "Supprimer",
    Restore = "Restore" / "Recuperar" / "Récupérer",
    Bin = "Bin" / "Papelera" / "Corbeille",
    BinHint = "Deleted jobs stay here for 30 days."
        / "Los trabajos borrados quedan aquí 30 días."
        / "Les chantiers supprimés restent ici 30 jours.",
    EraseForGood = "Erase for good" / "Borrar para siempre" / "Effacer définitivement",
    Undo = "Undo" / "Deshacer" / "Annuler",
    Redo = "Redo" / "Rehacer" / "Rétablir",
    SaveFile = "Save a file" / "Guardar un archivo" / "Enregistrer un fichier",
    Title = "Job" / "Trabajo" / "Chantier",
    Customer = "Customer" / "Cliente" / "Client",
    Site = "Site" / "Lugar" / "Site",
    Owner = "Your company" / "Su empresa" / "Votre entreprise",
    Letterhead = "Letterhead" / "Membrete" / "En-tête",
    LetterheadHint = "It stands on the first sheet of every paper of a job of this company. It is kept on this device."
        / "Figura en la primera hoja de cada documento de un trabajo de esta empresa. Se guarda en este dispositivo."
        / "Il figure sur la première feuille de chaque document d’un chantier de cette entreprise. Il est gardé sur cet appareil.",
    CompanyAddress = "Address" / "Dirección" / "Adresse",
    AddressLong = "Six lines of 60 letters find room on a sheet. What is beyond them is kept, but not printed."
        / "En una hoja caben seis líneas de 60 letras. Lo que las supera se guarda, pero no se imprime."
        / "Six lignes de 60 lettres tiennent sur une feuille. Ce qui dépasse est gardé, mais pas imprimé.",
    CompanyPicture = "Picture of the company" / "Imagen de la empresa" / "Image de l’entreprise",
    ChoosePicture = "Choose a picture" / "Elegir una imagen" / "Choisir une image",
    RemovePicture = "Remove the picture" / "Quitar la imagen" / "Retirer l’image",
    JobNumber = "Job number" / "Número de trabajo" / "Numéro de chantier",
    Notes = "Notes" / "Notas" / "Notes",
    KindOfJob = "Kind of job" / "Tipo de trabajo" / "Type de chantier",
    KindNew = "New" / "Nuevo" / "Neuf",
    KindChangeout = "Changeout" / "Cambio completo" / "Remplacement complet",
    KindPartial = "Partial replacement" / "Cambio parcial" / "Remplacement partiel",
    KindTopUp = "Top-up" / "Reposición" / "Appoint",
    AddVessel = "Add a vessel" / "Añadir un recipiente" / "Ajouter une cuve",
    RemoveVessel = "Remove this vessel" / "Quitar este recipiente" / "Retirer cette cuve",
    NoVessels = "No vessel yet. Add the one you stand at."
        / "Todavía no hay ningún recipiente. Añada el que tiene delante."
        / "Aucune cuve pour l’instant. Ajoutez celle qui est devant vous.",
    Tags = "Tags" / "Identificaciones" / "Repères",
    TagsHint = "One for each vessel that is the same, with commas between: CF-1, CF-2"
        / "Una por cada recipiente igual, separadas por comas: CF-1, CF-2"
        / "Un par cuve identique, séparés par des virgules : CF-1, CF-2",
    Untagged = "No tag" / "Sin identificación" / "Sans repère",
    FoundAs = "How it was found" / "Cómo se encontró" / "Comment on l’a trouvée",
    OpenAndEmpty = "Open and empty" / "Abierto y vacío" / "Ouverte et vide",
    InService = "In service, nothing may be opened"
        / "En servicio, no se puede abrir nada"
        / "En service, rien ne peut être ouvert",
    DiameterBy = "Inside diameter by" / "Diámetro interior según" / "Diamètre intérieur d’après",
    WayNominal = "Nominal size only" / "Solo la medida nominal" / "La taille nominale seulement",
    WayMeasured = "Measured inside" / "Medido por dentro" / "Mesuré à l’intérieur",
    WayCircumference = "Tape round the bare shell"
        / "Cinta alrededor de la virola desnuda"
        / "Ruban autour de la virole nue",
    WayMeteredFill = "Metered fill" / "Llenado medido con contador" / "Remplissage mesuré au compteur",
    WayRiseOfBag = "Rise of a known bag" / "Subida con una bolsa conocida" / "Montée avec un sac connu",
    BottomHead = "Bottom head" / "Fondo inferior" / "Fond inférieur",
    TopHead = "Top head" / "Fondo superior" / "Fond supérieur",
    HeadFlat = "Flat" / "Plano" / "Plat",
    HeadEllipsoidal = "2:1 semi-ellipsoidal" / "Semielíptico 2:1" / "Elliptique 2:1",
    HeadHemispherical = "Hemispherical" / "Hemisférico" / "Hémisphérique",
    HeadAsmeFd = "Torispherical, ASME F&D" / "Toriesférico, ASME F&D" / "Torisphérique, ASME F&D",
    HeadDin28011 = "Torispherical, DIN 28011" / "Toriesférico, DIN 28011" / "Torisphérique, DIN 28011",
    HeadDin28013 = "Torispherical, DIN 28013" / "Toriesférico, DIN 28013" / "Torisphérique, DIN 28013",
    HeadConical = "Conical" / "Cónico" / "Conique",
    Opening = "Opening" / "Abertura" / "Ouverture",
    OpeningTopOnly = "Top only, threaded" / "Solo arriba, roscada" / "En haut seulement, filetée",
    OpeningTopAndBottom = "Top and bottom, no riser"
        / "Arriba y abajo, sin tubo central"
        / "En haut et en bas, sans tube central",
    OpeningSidePorts = "Side ports" / "Bocas laterales" / "Piquages latéraux",
    OpeningFlange = "Flange" / "Brida" / "Bride",
    OpeningManway = "Manway" / "Boca de hombre" / "Trou d’homme",
    OpeningFillPort = "Separate fill port" / "Boca de llenado aparte" / "Orifice de remplissage séparé",
    Riser = "Riser" / "Tubo central" / "Tube central",
    BottomCollector = "Bottom collector" / "Colector inferior" / "Collecteur inférieur",
    CollectorNone = "None, or not counted" / "Ninguno, o no se cuenta" / "Aucun, ou non compté",
    CollectorBasket = "Basket or cone screen" / "Cesta o criba cónica" / "Crépine panier ou cône",
    CollectorLaterals = "Hub and laterals" / "Cubo y brazos laterales" / "Moyeu et bras latéraux",
    CollectorSlottedPlate = "Slotted plate" / "Placa ranurada" / "Plateau à fentes",
    CollectorNozzlePlate = "Nozzle plate" / "Placa con toberas" / "Plancher à crépines",
    UpperCollector = "Upper collector" / "Colector superior" / "Collecteur supérieur",
    Yes = "Yes" / "Sí" / "Oui",
    No = "No" / "No" / "Non",
    Assumed = "assumed" / "supuesto" / "supposé",
    AssumedUntilMeasured = "assumed until measured" / "supuesto hasta medirlo" / "supposé jusqu’à la mesure",
    InsideDiameter = "inside diameter" / "diámetro interior" / "diamètre intérieur",
    StraightSide = "straight side" / "parte cilíndrica" / "partie cylindrique",
    Capacity = "holds to the rim" / "cabida hasta el borde" / "contenance jusqu’au bord",
    RiserCut = "Cut the riser to" / "Corte el tubo central a" / "Coupez le tube central à",
    StillMissing = "For a quote that can be defended, still to be measured:"
        / "Para una oferta defendible falta medir:"
        / "Pour un devis défendable, il reste à mesurer :",
    LookAgain = "Look again at:" / "Mire otra vez:" / "À revoir :",
    NothingMissing = "Every figure asked for was measured."
        / "Todo lo que se pide está medido."
        / "Tout ce qui est demandé a été mesuré.",
    Underbed = "Underbed" / "Capa de soporte" / "Couche support",
    UnderbedNone = "none" / "ninguna" / "aucune",
    Media = "Media" / "Medio filtrante" / "Média filtrant",
    AddUnderbed = "Add underbed" / "Añadir capa de soporte" / "Ajouter une couche support",
    AddMedia = "Add media" / "Añadir medio filtrante" / "Ajouter un média filtrant",
    RemoveLayer = "Remove layer" / "Quitar la capa" / "Retirer la couche",
    MoveUp = "Move up" / "Subir" / "Monter",
    MoveDown = "Move down" / "Bajar" / "Descendre",
    Material = "Material" / "Material" / "Matériau",
    ChooseMaterial = "Choose a material" / "Elija un material" / "Choisissez un matériau",
    Pack = "Pack" / "Envase" / "Conditionnement",
    Target = "Fill by" / "Llenar por" / "Remplir d’après",
    TargetCover = "Cover the collector by" / "Cubrir el colector con" / "Couvrir le collecteur de",
    TargetDepth = "Depth on the axis" / "Altura en el eje" / "Hauteur sur l’axe",
    TargetVolume = "Volume" / "Volumen" / "Volume",
    TargetWeight = "Dry weight" / "Peso seco" / "Poids sec",
    TargetPacks = "Packs" / "Envases" / "Conditionnements",
    TargetFreeboard = "Up to this freeboard" / "Hasta este espacio libre" / "Jusqu’à cette hauteur libre",
    TargetFreeboardRatio = "Up to this freeboard, % of media"
        / "Hasta este espacio libre, % del medio"
        / "Jusqu’à cette hauteur libre, % du média",
    TargetTapeReading = "Up to this tape reading" / "Hasta esta lectura de cinta" / "Jusqu’à cette lecture au ruban",
    Amount = "How much" / "Cuánto" / "Combien",
    Minimum = "This is a minimum" / "Es un mínimo" / "C’est un minimum",
    Bucket = "Bucket for part bags" / "Cubo para partes de bolsa" / "Seau pour les parties de sac",
    Packs = "packs" / "envases" / "conditionnements",
    LeftOver = "left over" / "sobrante" / "reste",
    None = "none" / "ninguno" / "aucun",
    TapeReads = "tape reads" / "cinta" / "ruban",
    After = "after" / "tras" / "après",
    Volume = "volume" / "volumen" / "volume",
    Weight = "dry weight" / "peso seco" / "poids sec",
    DepthAtAxis = "depth on the axis" / "altura en el eje" / "hauteur sur l’axe",
    DepthAtWall = "depth at the wall" / "altura en la pared" / "hauteur à la paroi",
    Cover = "covers the top slot by" / "cubre la ranura más alta en" / "couvre la fente la plus haute de",
    Freeboard = "Freeboard" / "Espacio libre" / "Hauteur libre",
    Datum = "datum: rim of the opening" / "referencia: borde de la abertura" / "référence : bord de l’ouverture",
    DepthTable = "Depth table" / "Tabla de alturas" / "Table des hauteurs",
    Height = "height" / "altura" / "hauteur",
    Waits = "waits for what is below it" / "espera lo que está debajo" / "attend ce qui est dessous",
    Quantity = "quantity" / "cantidad" / "quantité",
    Item = "item" / "artículo" / "article",
    PartNumber = "part number" / "referencia" / "référence",
    BinPlace = "bin" / "ubicación" / "emplacement",
    LotAndDate = "lot · date" / "lote · fecha" / "lot · date",
    For = "for" / "para" / "pour",
    Each = "each" / "cada uno" / "chacun",
    PerVessel = "Each vessel on its own" / "Cada recipiente por separado" / "Chaque cuve à part",
    Pooled = "Pooled over the job" / "En común para todo el trabajo" / "En commun pour tout le chantier",
    Saved = "saved by pooling" / "se ahorran al juntar" / "économisés en commun",
    ComesBack = "comes back" / "se devuelve" / "revient",
    LeftOut = "Not counted, because a figure is missing:"
        / "No contado, porque falta un dato:"
        / "Non compté, car une donnée manque :",
    EmptyBill = "Nothing to buy yet. Plan a layer first."
        / "Todavía no hay nada que comprar. Planifique antes una capa."
        / "Rien à acheter pour l’instant. Prévoyez d’abord une couche.",
    Total = "total" / "total" / "total",
    Lines = "lines" / "líneas" / "lignes",
    Print = "Print" / "Imprimir" / "Imprimer",
    PrintHint = "If nothing opens, use the browser's menu: Share or Print."
        / "Si no se abre nada, use el menú del navegador: Compartir o Imprimir."
        / "Si rien ne s’ouvre, passez par le menu du navigateur : Partager ou Imprimer.",
    Paper = "Paper" / "Papel" / "Papier",
    PaperLetter = "US Letter" / "Carta (EE. UU.)" / "US Letter",
    PaperA4 = "A4" / "A4" / "A4",
    Blank = "Blank" / "En blanco" / "Vierge",
    Filled = "Filled" / "Rellena" / "Remplie",
    Sheet = "sheet" / "hoja" / "feuille",
    Of = "of" / "de" / "sur",
    Document = "document" / "documento" / "document",
    Revision = "revision" / "revisión" / "révision",
    Created = "date" / "fecha" / "date",
    PickedBy = "picked by · date" / "recogido por · fecha" / "prélevé par · date",
    SheetTitle = "title" / "título" / "titre",
    SheetOwner = "owner" / "propietario" / "propriétaire",
    SheetJob = "job" / "trabajo" / "chantier",
    Picked = "Picked" / "Recogido" / "Prélevé",
    PickedThenChanged = "picked before the bill changed:"
        / "recogido antes de cambiar la lista:"
        / "prélevé avant le changement de la nomenclature :",
    LanguageTitle = "Language" / "Idioma" / "Langue",
    LanguageNotHere = "The texts of this language could not be had. With a connection, choose it again."
        / "No se pudieron obtener los textos de este idioma. Con conexión, elíjalo otra vez."
        / "Les textes de cette langue n’ont pas pu être obtenus. Avec une connexion, choisissez-la à nouveau.",
    PaperLanguage = "Language of the paper" / "Idioma del documento" / "Langue du document",
    Units = "Units" / "Unidades" / "Unités",
    UnitsUs = "Inches, cubic feet, pounds" / "Pulgadas, pies cúbicos, libras" / "Pouces, pieds cubes, livres",
    UnitsMetric = "Millimetres, litres, kilograms"
        / "Milímetros, litros, kilogramos"
        / "Millimètres, litres, kilogrammes",
    DecimalMark = "Decimal mark" / "Signo decimal" / "Signe décimal",
    DecimalPoint = "Point: 1.5" / "Punto: 1.5" / "Point : 1.5",
    DecimalComma = "Comma: 1,5" / "Coma: 1,5" / "Virgule : 1,5",
    Theme = "Light and dark" / "Claro y oscuro" / "Clair et sombre",
    ThemeSystem = "As the device" / "Como el dispositivo" / "Comme l’appareil",
    ThemeLight = "Light" / "Claro" / "Clair",
    ThemeDark = "Dark" / "Oscuro" / "Sombre",
    ReadyOffline = "Ready offline" / "Listo sin conexión" / "Prêt hors connexion",
    NotReadyOffline = "Not ready offline yet: stay online a moment"
        / "Aún no está listo sin conexión: siga conectado un momento"
        / "Pas encore prêt hors connexion : restez connecté un instant",
    UpdateWaiting = "A new version is ready." / "Hay una versión nueva lista." / "Une nouvelle version est prête.",
    UpdateNow = "Use it now" / "Usarla ahora" / "L’utiliser maintenant",
    UpdateLater = "Later" / "Más tarde" / "Plus tard",
    UpdateElsewhere = "Another tab took a new version. Reload this one."
        / "Otra pestaña tomó una versión nueva. Recargue esta."
        / "Un autre onglet a pris une nouvelle version. Rechargez celui-ci.",
    Reload = "Reload" / "Recargar" / "Recharger",
    KeptHere = "Kept in this browser, on this device. The browser may erase it; save a file of what matters."
        / "Se guarda en este navegador, en este dispositivo. El navegador puede borrarlo; guarde un archivo de lo que importa."
        / "Conservé dans ce navigateur, sur cet appareil. Le navigateur peut l’effacer ; enregistrez un fichier de ce qui compte.",
    NotKept = "Not kept. What you type is lost when this page closes. Save a file now."
        / "No se guarda. Lo que escriba se pierde al cerrar esta página. Guarde un archivo ahora."
        / "Non conservé. Ce que vous saisissez est perdu à la fermeture de cette page. Enregistrez un fichier maintenant.",
    StorageFull = "The browser's storage is full. The last change is not kept."
        / "El almacenamiento del navegador está lleno. El último cambio no se ha guardado."
        / "Le stockage du navigateur est plein. La dernière modification n’est pas conservée.",
    ChangedElsewhere = "This job was changed in another tab."
        / "Este trabajo se cambió en otra pestaña."
        / "Ce chantier a été modifié dans un autre onglet.",
    TakeTheirs = "Show that" / "Mostrar ese" / "Montrer celui-là",
    SetAside = "Something could not be read. It was set aside, not overwritten."
        / "Algo no se pudo leer. Se apartó, no se sobrescribió."
        / "Quelque chose n’a pas pu être lu. Il a été mis de côté, non écrasé.",
    DownloadIt = "Download it" / "Descargarlo" / "Le télécharger",
    LockedSection = "A part of this job is from a later version. It is kept as it is; update the app to change it."
        / "Una parte de este trabajo es de una versión posterior. Se conserva tal cual; actualice la aplicación para cambiarla."
        / "Une partie de ce chantier vient d’une version plus récente. Elle est conservée telle quelle ; mettez l’application à jour pour la modifier.",
    Build = "build" / "compilación" / "version",
    Dismiss = "Dismiss" / "Cerrar" / "Fermer",
    SampleMark = "Sample: every name and figure is invented."
        / "Ejemplo: todos los nombres y cifras son inventados."
        / "Exemple : tous les noms et chiffres sont inventés.",
    PlanningAid = "Planning aid. Local codes, the site's rules and licensed practice decide."
        / "Ayuda para planificar. Deciden las normas locales, las reglas del lugar y los profesionales habilitados."
        / "Aide à la préparation. Les règlements locaux, les règles du site et les professionnels habilités décident.",
    LiftCaution = "Bags over 51 lb (23 kg): two people or a lift aid. Dust: wet it down, mask and gloves as the local code says."
        / "Bolsas de más de 51 lb (23 kg): dos personas o una ayuda para levantar. Polvo: humedézcalo, con mascarilla y guantes según la norma local."
        / "Sacs de plus de 51 lb (23 kg) : deux personnes ou une aide au levage. Poussière : mouillez-la, masque et gants selon le règlement local.",
    AbcKey = "abc" / "abc" / "abc",
    DigitsKey = "123" / "123" / "123",
    FileNotRead = "That file was not opened:" / "Ese archivo no se abrió:" / "Ce fichier n’a pas été ouvert :",
    FileTooNew = "it was made by a later version of this page"
        / "lo hizo una versión posterior de esta página"
        / "il vient d’une version plus récente de cette page",
    FileNotAJob = "it is no job of this page"
        / "no es un trabajo de esta página"
        / "ce n’est pas un chantier de cette page",
    FileDamaged = "it is cut or damaged" / "está cortado o dañado" / "il est coupé ou endommagé",
    JobNotFound = "This job isn't on this device."
        / "Este trabajo no está en este dispositivo."
        / "Ce chantier n’est pas sur cet appareil.",
    BackToJobs = "Back to the jobs" / "Volver a los trabajos" / "Retour aux chantiers",
    StandingMeasured = "measured" / "medido" / "mesuré",
    StandingAssumed = "assumed" / "supuesto" / "supposé",
    MeasuredHow = "how it is known" / "cómo se sabe" / "d’où on le sait",
    Value = "value" / "valor" / "valeur",
    Menu = "Menu" / "Menú" / "Menu",
    BackwashWindow = "Backwash window" / "Ventana de retrolavado" / "Fenêtre de rétrolavage",
    WindowSizes = "sizes" / "tamaños" / "calibres",
    WindowLifts = "↑ lifts enough" / "↑ levanta bastante" / "↑ soulève assez",
    WindowStays = "↓ stays in" / "↓ no se escapa" / "↓ reste dedans",
    WindowFinest = "fines leave" / "salen los finos" / "les fines partent",
    WindowOffScale = " ↑" / " ↑" / " ↑",
    WindowNoLines = "No line can be drawn for this bed"
        / "No se puede trazar ninguna línea para este lecho"
        / "Aucune ligne ne peut être tracée pour ce lit",
    WindowNoValue = "none" / "ninguno" / "aucun",
    WindowLikely = "likely limit" / "límite probable" / "limite probable",
    WindowCautious = "cautious limit" / "límite prudente" / "limite prudente",
    WindowLikelyFails = "likely fails" / "probablemente no" / "probablement non",
    WindowFails = "fails on every line" / "no, en ninguna línea" / "non, sur aucune ligne",
    PartBag = "part bag" / "parte de bolsa" / "partie de sac",
    Buckets = "buckets" / "cubos" / "seaux",
    Shorter = "shorter" / "menos de altura" / "de moins en hauteur",
    PickListLetters = "PL" / "PL" / "PL",
    BillLetters = "BM" / "BM" / "BM",
    SurveyLetters = "SV" / "SV" / "SV",
    CalculationLetters = "CS" / "CS" / "CS",
    CalculationSheet = "Calculation sheet" / "Memoria de cálculo" / "Note de calcul",
    Figure = "figure" / "valor" / "valeur",
    WhatWentIn = "What went in" / "Datos usados" / "Données utilisées",
    MostPacks = "Most whole packs of the top layer that some size still washes all year"
        / "Máximo de envases enteros de la capa superior que algún tamaño aún lava todo el año"
        / "Maximum de conditionnements entiers de la couche du haut qu’un calibre lave encore toute l’année",
    Result = "result" / "resultado" / "résultat",
    SurveyedBy = "surveyed by · date" / "datos tomados por · fecha" / "relevé par · date",
    CheckedBy = "checked by · date" / "revisado por · fecha" / "vérifié par · date",
    Line = "line" / "línea" / "ligne",
    WeightEach = "weight each" / "peso de cada uno" / "poids unitaire",
    WeightTogether = "weight" / "peso" / "poids",
    WithoutParts = "without parts" / "sin piezas" / "sans les pièces",
    PacksUsed = "used" / "usados" / "utilisés",
    PutBack = "Picked, and no longer on the bill. Put back:"
        / "Recogido y ya no está en la lista. Devuélvalo:"
        / "Prélevé et plus dans la nomenclature. À remettre :",
    SortByBin = "Put in bin order" / "Ordenar por ubicación" / "Trier par emplacement",
    NotThereYet = "not there yet" / "aún no está" / "pas encore là",
    Unit = "unit" / "unidad" / "unité",
    OnTheLabel = "On the vessel's label" / "En la placa del recipiente" / "Sur la plaque de la cuve",
    RatedPressure = "Highest pressure" / "Presión máxima" / "Pression maximale",
    RatedTemperature = "Highest temperature" / "Temperatura máxima" / "Température maximale",
    LabelNumber = "Number on the label" / "Número de la placa" / "Numéro de la plaque",
    LabelYear = "Year made" / "Año de fabricación" / "Année de fabrication",
    TapeReadings = "Tape readings" / "Lecturas de cinta" / "Lectures au ruban",
    TapeAsFound = "Media surface as found"
        / "Superficie del medio tal como se encontró"
        / "Surface du média telle que trouvée",
    TapeAfterUnderbed = "After the underbed" / "Tras la capa de soporte" / "Après la couche support",
    TapeAfterBag = "After bag number" / "Tras la bolsa número" / "Après le sac numéro",
    Sketch = "Sketch" / "Croquis" / "Croquis",
    SketchHint = "Ports, heights, what stands in the way. Mark the datum."
        / "Bocas, alturas, obstáculos. Marque la referencia."
        / "Piquages, hauteurs, obstacles. Marquez la référence.",
    AllVessels = "All vessels" / "Todos los recipientes" / "Toutes les cuves",
    AnyVessel = "A vessel that isn't in the job"
        / "Un recipiente que no está en el trabajo"
        / "Une cuve qui n’est pas dans le chantier",
    Note = "note" / "nota" / "note",
    OnPaper = "On paper" / "En papel" / "Sur papier",
    HeadsAndOpening = "Heads and opening" / "Fondos y abertura" / "Fonds et ouverture",
    WaterFold = "Water and duty" / "Agua y cometido" / "Eau et fonction",
    WaterFed = "backwash up to" / "retrolavado hasta" / "rétrolavage jusqu’à",
    SiteWater = "Water on site" / "Agua del lugar" / "Eau du site",
    SiteWaterHint = "The same for every vessel of the job. Temperatures nobody typed are from memory."
        / "La misma para todos los recipientes del trabajo. Las temperaturas que nadie escribió son de memoria."
        / "La même pour toutes les cuves du chantier. Les températures que personne n’a saisies sont de mémoire.",
    WaterFrom = "Water comes from" / "El agua viene de" / "L’eau vient",
    FromWell = "A well" / "Un pozo" / "D’un puits",
    FromMains = "A water main" / "Una red de agua" / "D’un réseau d’eau",
    FromSurface = "River, lake or rain" / "Río, lago o lluvia" / "D’une rivière, d’un lac ou de la pluie",
    DutyTitle = "What it must do" / "Qué debe hacer" / "Ce qu’elle doit faire",
    MoreOfDuty = "Pressures, label, weights" / "Presiones, placa, pesos" / "Pressions, plaque, poids",
    FeedOfDuty = "Where it feeds reverse osmosis"
        / "Si alimenta una ósmosis inversa"
        / "Si elle alimente une osmose inverse",
    PurposeTitle = "Purpose" / "Finalidad" / "But",
    PurposeDechlorination = "Take chlorine out" / "Quitar cloro" / "Éliminer le chlore",
    PurposeChloramine = "Take chloramine out" / "Quitar cloramina" / "Éliminer la chloramine",
    PurposeOrganics = "Take organics out" / "Quitar materia orgánica" / "Éliminer les matières organiques",
    PurposeSediment = "Hold sediment back" / "Retener sedimentos" / "Retenir les sédiments",
    PurposeIron = "Take iron and manganese out" / "Quitar hierro y manganeso" / "Éliminer le fer et le manganèse",
    PurposeSoftening = "Soften" / "Ablandar" / "Adoucir",
    PurposeAnion = "Take nitrate or other anions out"
        / "Quitar nitrato u otros aniones"
        / "Éliminer les nitrates ou d’autres anions",
    PurposeNeutralising = "Neutralise acid water" / "Neutralizar agua ácida" / "Neutraliser l’eau acide",
    PurposeOther = "Something else" / "Otra cosa" / "Autre chose",
    RegimeTitle = "Flow regime" / "Régimen de flujo" / "Sens d’écoulement",
    RegimeBackwashed = "Down, backwashed" / "Descendente, con retrolavado" / "Descendant, avec rétrolavage",
    RegimeUpflow = "Up" / "Ascendente" / "Ascendant",
    RegimeNever = "Down, never backwashed" / "Descendente, nunca retrolavado" / "Descendant, jamais rétrolavé",
    RegimeAirHead = "Down under an air head, backwashed"
        / "Descendente bajo cámara de aire, con retrolavado"
        / "Descendant sous coussin d’air, avec rétrolavage",
    ArrangementTitle = "Arrangement" / "Disposición" / "Disposition",
    ArrangementSingle = "Single" / "Uno solo" / "Une seule",
    ArrangementParallel = "Side by side" / "En paralelo" / "En parallèle",
    ArrangementTwin = "Twin, in turn" / "Dos, por turnos" / "Deux, à tour de rôle",
    ArrangementLeadLag = "One after the other" / "En serie" / "En série",
    Grains = "Grains" / "Granos" / "Grains",
    GrainsHint = "From the paper that came with the medium; until then the middle of the catalogue's range."
        / "Del papel que vino con el medio; hasta entonces, el centro del intervalo del catálogo."
        / "D’après le papier livré avec le média ; d’ici là, le milieu de la plage du catalogue.",
    Backwash = "Backwash" / "Retrolavado" / "Rétrolavage",
    Service = "Service" / "Servicio" / "Service",
    WindowTable = "The window in figures" / "La ventana en cifras" / "La fenêtre en chiffres",
    FlowControls = "Drain line flow controls"
        / "Reguladores de caudal del desagüe"
        / "Régulateurs de débit à l’égout",
    SettingFlow = "flow" / "caudal" / "débit",
    SettingCold = "coldest water" / "agua más fría" / "eau la plus froide",
    SettingWarm = "warmest water" / "agua más cálida" / "eau la plus chaude",
    SettingMark = "verdict" / "veredicto" / "verdict",
    NeverWashed = "This bed is never backwashed: a backwash window does not apply."
        / "Este lecho nunca se retrolava: no hay ventana de retrolavado."
        / "Ce lit n’est jamais rétrolavé : pas de fenêtre de rétrolavage.",
    Room = "There is room for" / "Hay sitio para" / "Il y a de la place pour",
    Decides = "What decides" / "Qué decide" / "Ce qui décide",
    DecidesHint = "Likely expansion in the coldest water, with the least and the most of each."
        / "Expansión probable en el agua más fría, con lo menos y lo más de cada dato."
        / "Expansion probable dans l’eau la plus froide, avec le moins et le plus de chaque donnée.",
    LinesTitle = "Where the likely line stands" / "Dónde está la línea probable" / "Où se place la ligne probable",
    LinesUnknown = "Nothing seen yet: the likely line stands half way between the two models."
        / "Aún no se ha visto nada: la línea probable está a medio camino entre los dos modelos."
        / "Rien n’a encore été vu : la ligne probable est à mi-chemin entre les deux modèles.",
    LinesKnown = "Set by what was seen:" / "Fijada por lo visto:" / "Fixée par ce qui a été vu :",
    EvidenceTitle = "What was seen" / "Lo que se vio" / "Ce qui a été vu",
    EvidenceHint = "A drain check settles more than any catalogue: run the backwash at the coldest water and look at the drain."
        / "Una comprobación en el desagüe aclara más que cualquier catálogo: retrolave con el agua más fría y mire el desagüe."
        / "Un contrôle à l’égout tranche mieux que tout catalogue : rétrolavez avec l’eau la plus froide et regardez l’égout.",
    EvidenceDrain = "Drain check" / "Comprobación en el desagüe" / "Contrôle à l’égout",
    EvidencePaper = "Point from the paper that came with the medium"
        / "Punto del papel que vino con el medio"
        / "Point du papier livré avec le média",
    EvidenceTube = "Clear-tube test" / "Ensayo en tubo transparente" / "Essai en tube transparent",
    EvidenceDrop = "Clean pressure drop" / "Pérdida de carga limpia" / "Perte de charge propre",
    EvidenceDropHint = "Two gauges in service just after a backwash. Take off what the valve and the collectors lose."
        / "Dos manómetros en servicio justo después de un retrolavado. Reste lo que pierden la válvula y los colectores."
        / "Deux manomètres en service juste après un rétrolavage. Déduisez ce que perdent la vanne et les collecteurs.",
    EvidenceDropKnown = "Settled voidage by clean pressure drops:"
        / "Porosidad asentada según pérdidas de carga limpias:"
        / "Porosité du lit posé d’après les pertes de charge propres :",
    EvidenceReadings = "Readings:" / "Lecturas:" / "Lectures :",
    EvidenceSince = "since" / "desde el" / "depuis le",
    EvidenceDropUnknown = "No clean pressure drop says how closely the bed lies."
        / "Ninguna pérdida de carga limpia dice lo apretado que está el lecho."
        / "Aucune perte de charge propre ne dit à quel point le lit est serré.",
    DropWord = "Pressure lost over the bed" / "Presión perdida en el lecho" / "Pression perdue dans le lit",
    LayerWord = "Layer" / "Capa" / "Couche",
    EvidenceKindTitle = "Kind" / "Tipo" / "Type",
    EvidenceAdd = "Add it" / "Añadirlo" / "L’ajouter",
    Drain = "In the drain" / "En el desagüe" / "À l’égout",
    EvidenceWithdraw = "Withdraw" / "Retirar" / "Retirer",
    EvidenceOfVisit = "from a visit" / "de una visita" / "d’une visite",
    EvidenceGrains = "Grains in the drain" / "Granos en el desagüe" / "Des grains à l’égout",
    EvidenceNoGrains = "No grains in the drain" / "Sin granos en el desagüe" / "Aucun grain à l’égout",
    EvidenceIncomplete = "Flow, temperature and what was seen are needed."
        / "Hacen falta caudal, temperatura y lo que se vio."
        / "Il faut le débit, la température et ce qui a été vu.",
    EvidenceSetAside = "set aside: too short, nothing new, or outside both models"
        / "apartado: demasiado corto, nada nuevo, o fuera de ambos modelos"
        / "mis de côté : trop court, rien de nouveau, ou hors des deux modèles",
    FlowControlHint = "each, not added to the verdict. Sizes from memory."
        / "cada uno, sin sumarse al veredicto. Tamaños de memoria."
        / "chacun, sans entrer dans le verdict. Calibres de mémoire.",
    FlowWord = "Flow" / "Caudal" / "Débit",
    FlowPerAreaWord = "Flow per area" / "Caudal por área" / "Débit surfacique",
    TemperatureWord = "Water temperature" / "Temperatura del agua" / "Température de l’eau",
    MinutesWord = "How long" / "Cuánto tiempo" / "Combien de temps",
    ExpansionWord = "Expansion" / "Expansión" / "Expansion",
    FlowPerArea = "Flow per area" / "Caudal por área" / "Débit surfacique",
    ContactTime = "Empty-bed contact time" / "Tiempo de contacto en lecho vacío" / "Temps de contact en lit vide",
    ContactTimePair = "Contact time of both" / "Tiempo de contacto de ambos" / "Temps de contact des deux",
    BedVolumes = "Bed volumes" / "Volúmenes de lecho" / "Volumes de lit",
    PressureLoss = "Pressure lost, clean" / "Presión perdida, limpio" / "Pression perdue, propre",
    PeakFlowPerArea = "Flow per area at the peak" / "Caudal por área en la punta" / "Débit surfacique en pointe",
    PeakPressureLoss = "Pressure lost at the peak, clean"
        / "Presión perdida en la punta, limpio"
        / "Pression perdue en pointe, propre",
    WashingFlowPerArea = "Flow per area while one is washed"
        / "Caudal por área mientras se lava uno"
        / "Débit surfacique pendant qu’une se lave",
    WashingContactTime = "Contact time while one is washed"
        / "Tiempo de contacto mientras se lava uno"
        / "Temps de contact pendant qu’une se lave",
    ExpansionCold = "Likely expansion, coldest water"
        / "Expansión probable, agua más fría"
        / "Expansion probable, eau la plus froide",
    ExpansionWarm = "Likely expansion, warmest water"
        / "Expansión probable, agua más cálida"
        / "Expansion probable, eau la plus chaude",
    MemoryCold = "After Dharmarajah and Cleasby, from memory, coldest water"
        / "Según Dharmarajah y Cleasby, de memoria, agua más fría"
        / "D’après Dharmarajah et Cleasby, de mémoire, eau la plus froide",
    MemoryWarm = "After Dharmarajah and Cleasby, from memory, warmest water"
        / "Según Dharmarajah y Cleasby, de memoria, agua más cálida"
        / "D’après Dharmarajah et Cleasby, de mémoire, eau la plus chaude",
    BackwashPerArea = "Backwash flow per area" / "Caudal de retrolavado por área" / "Débit surfacique de rétrolavage",
    LiftsFrom = "Warm water lifts enough from"
        / "El agua cálida levanta bastante desde"
        / "L’eau chaude soulève assez à partir de",
    StaysTo = "Cold water keeps it in up to"
        / "El agua fría no lo saca hasta"
        / "L’eau froide le laisse dedans jusqu’à",
    StartsLifting = "Warm water begins to lift at"
        / "El agua cálida empieza a levantar con"
        / "L’eau chaude commence à soulever à",
    FitThis = "Fit" / "Montar" / "Monter",
    Least = "least" / "lo menos" / "le moins",
    Most = "most" / "lo más" / "le plus",
    GrainsLeave = "grains leave" / "salen granos" / "des grains partent",
    NoServiceFlow = "Type the service flow to see contact time and pressure loss."
        / "Escriba el caudal de servicio para ver el tiempo de contacto y la pérdida de carga."
        / "Saisissez le débit de service pour voir le temps de contact et la perte de charge.",
    WeightDrained = "Weight drained" / "Peso escurrido" / "Poids égoutté",
    WeightOperating = "Weight in operation" / "Peso en operación" / "Poids en service",
    WeightWaterFull = "Weight full of water, no media"
        / "Peso lleno de agua, sin medio"
        / "Poids plein d’eau, sans média",
    FloorLoad = "Load on the floor" / "Carga sobre el suelo" / "Charge au sol",
    LiftedSurface = "Lifted surface above the lowest point, coldest water"
        / "Superficie levantada sobre el punto más bajo, agua más fría"
        / "Surface soulevée au-dessus du point le plus bas, eau la plus froide",
    WaterWaits = "Waits for the vessel and its layers."
        / "Espera el recipiente y sus capas."
        / "Attend la cuve et ses couches.",
}}
