//! What is said of how every figure is known: the page, and names of what has no noun of its own.

use bedwright_calc::quantity::Check;

labels! {
/// A fixed text of the page that says how sure the figures are.
SureLabel {
    Title = "How sure are we" / "Qué seguridad tenemos" / "Quelle est notre certitude",
    About = "How every figure is worked out, where that comes from, and what it was compared with."
        / "Cómo se calcula cada valor, de dónde viene y con qué se comparó."
        / "Comment chaque valeur est calculée, d’où cela vient, et à quoi elle a été comparée.",
    Formulas = "{count} formulas: {arithmetic} follow by arithmetic or a definition, {own} are rules of our own, {published} are published, {library} come from public libraries, {practice} are common practice, {memory} are from memory."
        / "{count} fórmulas: {arithmetic} se deducen por aritmética o definición, {own} son reglas propias, {published} están publicadas, {library} vienen de bibliotecas públicas, {practice} son práctica habitual, {memory} son de memoria."
        / "{count} formules : {arithmetic} découlent de l’arithmétique ou d’une définition, {own} sont des règles à nous, {published} sont publiées, {library} viennent de bibliothèques publiques, {practice} sont la pratique courante, {memory} sont de mémoire.",
    Compared = "{outside} of them are compared with values from outside. {again} more are worked again by another program: that finds a slip, not a wrong formula. {none} are held by our own tests only."
        / "{outside} de ellas se comparan con valores externos. Otras {again} las calcula de nuevo otro programa: eso descubre un descuido, no una fórmula equivocada. {none} solo las sostienen nuestras propias pruebas."
        / "{outside} d’entre elles sont comparées à des valeurs extérieures. {again} autres sont recalculées par un autre programme : cela trouve une étourderie, pas une formule fausse. {none} ne tiennent que par nos propres essais.",
    Numbers = "Of {count} numbers that are assumed or draw a limit, {memory} are from memory and {practice} are common practice. Most grain data are from memory too."
        / "De {count} números que se suponen o que fijan un límite, {memory} son de memoria y {practice} son práctica habitual. La mayoría de los datos de los granos también son de memoria."
        / "Sur {count} nombres supposés ou qui posent une limite, {memory} sont de mémoire et {practice} sont la pratique courante. La plupart des données sur les grains sont aussi de mémoire.",
    Advice = "What is from memory was not looked up in a document. Measure it, or type what the paper of your own medium says; what you type goes before."
        / "Lo que es de memoria no se buscó en ningún documento. Mídalo, o escriba lo que dice la hoja de su propio medio; lo que usted escribe prevalece."
        / "Ce qui est de mémoire n’a été vérifié dans aucun document. Mesurez-le, ou saisissez ce que dit la fiche de votre propre média ; ce que vous saisissez l’emporte.",
    Search = "Search formulas, numbers and sources"
        / "Buscar fórmulas, números y fuentes"
        / "Chercher des formules, nombres et sources",
    Found = "{count} of {of} lines" / "{count} de {of} líneas" / "{count} lignes sur {of}",
    NothingFound = "No line has all these words."
        / "Ninguna línea tiene todas estas palabras."
        / "Aucune ligne n’a tous ces mots.",
    Memory = "From memory" / "De memoria" / "De mémoire",
    Practice = "Common practice" / "Práctica habitual" / "Pratique courante",
    Every = "Every formula" / "Todas las fórmulas" / "Toutes les formules",
    With = "What we compare with" / "Con qué comparamos" / "À quoi nous comparons",
    What = "What" / "Qué" / "Quoi",
    Value = "Value or equation" / "Valor o ecuación" / "Valeur ou équation",
    Gives = "What it gives" / "Qué da" / "Ce qu’elle donne",
    Equation = "Equation" / "Ecuación" / "Équation",
    Comes = "Where it comes from" / "De dónde viene" / "D’où cela vient",
    Held = "Compared with" / "Comparado con" / "Comparé à",
    UsedAs = "Used as" / "Se usa como" / "Sert de",
    Said = "Says" / "Dice" / "Dit",
    Size = "How much" / "Cuánto" / "Combien",
    AsFormula = "formula" / "fórmula" / "formule",
    AsNumber = "number assumed, or limit" / "número supuesto, o límite" / "nombre supposé, ou limite",
    AsRule = "rule of a purpose" / "regla de un fin" / "règle d’un usage",
    AsMaterial = "data of a material" / "datos de un material" / "données d’un matériau",
    AsTable = "table to choose from" / "tabla para elegir" / "table où choisir",
    Again = "worked again: {what}, {with}" / "calculado de nuevo: {what}, {with}" / "recalculé : {what}, {with}",
    OwnTests = "our own tests only" / "solo nuestras propias pruebas" / "nos propres essais seulement",
    SaysOutside = "the formula and its arithmetic" / "la fórmula y su aritmética" / "la formule et son arithmétique",
    SaysAgain = "the arithmetic only" / "solo la aritmética" / "l’arithmétique seulement",
    Rows = "{count} rows" / "{count} filas" / "{count} lignes",
    Sheets = "every line of the sheets of {count} vessels"
        / "cada línea de las hojas de {count} recipientes"
        / "chaque ligne des feuilles de {count} cuves",
    Currencies = "{count} currencies" / "{count} monedas" / "{count} monnaies",
    AtLeast = "at least {low}" / "al menos {low}" / "au moins {low}",
    AtMost = "at most {high}" / "como máximo {high}" / "au plus {high}",
    Between = "{low} to {high}" / "{low} a {high}" / "{low} à {high}",
    InBackwash = "flow per area in backwash" / "caudal por área en el lavado" / "débit surfacique au lavage",
    CollectorAbove = "upper collector above the media"
        / "colector superior sobre el medio"
        / "collecteur supérieur au-dessus du média",
    SizesOfVessels = "usual heights, heads and bores of nominal vessel sizes"
        / "alturas, fondos y bocas usuales de los tamaños nominales"
        / "hauteurs, fonds et ouvertures usuels des tailles nominales",
    SizesOfRisers = "outside diameters of pipe for risers"
        / "diámetros exteriores de tubo central"
        / "diamètres extérieurs des tubes centraux",
    SizesOfControls = "sizes of drain line flow controls"
        / "tamaños de reguladores de caudal"
        / "calibres des régulateurs de débit",
    SizesOfPacks = "packs each material is sold in"
        / "envases en que se vende cada material"
        / "conditionnements de chaque matériau",
    Parts = "parts that a job takes" / "piezas que lleva un trabajo" / "pièces que prend un chantier",
    Lives = "usual lives of media" / "duraciones usuales de los medios" / "durées de vie usuelles des médias",
    HowSure = "How sure is this formula"
        / "Qué seguridad tiene esta fórmula"
        / "Quelle est la certitude de cette formule",
}
}

labels! {
/// What a formula gives that has no noun of its own.
FormulaName {
    Given = "what was typed" / "lo que se escribió" / "ce qui a été saisi",
    GapCentred = "gap beside a centred riser, in grains"
        / "hueco junto al tubo centrado, en granos"
        / "jeu à côté du tube centré, en grains",
    GapLeaned = "gap beside a leaned riser, in grains"
        / "hueco junto al tubo arrimado, en granos"
        / "jeu à côté du tube incliné, en grains",
    SlotRatio = "slot against the smallest grain"
        / "ranura frente al grano menor"
        / "fente contre le plus petit grain",
    SizeRatio = "grains of neighbouring layers" / "granos de capas vecinas" / "grains de couches voisines",
    FilterRatio = "whether a layer holds the one above"
        / "si una capa retiene la de encima"
        / "si une couche retient celle du dessus",
    PacksOfAll = "packs of all vessels" / "envases de todos los recipientes" / "conditionnements de toutes les cuves",
    RuleMargin = "how far a rule is met" / "cuánto se cumple una regla" / "de combien une règle est tenue",
    AboveEllipsoid = "room above, in an ellipsoidal head"
        / "espacio encima, en un fondo elíptico"
        / "volume au-dessus, fond elliptique",
    AboveCap = "room above, in a crown" / "espacio encima, en un casquete" / "volume au-dessus, dans une calotte",
    AboveKnuckle = "room above, in a knuckle"
        / "espacio encima, en un rebordeado"
        / "volume au-dessus, dans une carre",
    ByTrial = "what is found by trial" / "lo que se halla por tanteo" / "ce qui est trouvé par essais",
    WashWaterYear = "wash water in a year, of a quote"
        / "agua de lavado al año, de una oferta"
        / "eau de lavage par an, d’un devis",
    TapeDeviation = "how much higher the surface lies"
        / "cuánto más alta está la superficie"
        / "de combien la surface est plus haute",
    PacksDeviation = "packs more than were to be expected"
        / "envases de más frente a lo esperado"
        / "conditionnements de plus qu’attendu",
    PackHeld = "what a pack held, as a share"
        / "lo que traía un envase, en parte"
        / "ce que contenait un conditionnement, en part",
    CalciteMonth = "calcite dissolved in a month" / "calcita disuelta en un mes" / "calcite dissoute en un mois",
    MagnesiaMonth = "magnesia dissolved in a month" / "magnesia disuelta en un mes" / "magnésie dissoute en un mois",
    RefillDepth = "depth that goes until it is filled up"
        / "profundidad que se va hasta rellenar"
        / "hauteur qui part avant de compléter",
    WaterUntilFull = "water until the media are full"
        / "agua hasta que el medio está lleno"
        / "eau jusqu’à ce que le média soit plein",
    BedVolumesUntil = "bed volumes until the carbon is full"
        / "volúmenes de lecho hasta llenar el carbón"
        / "volumes de lit jusqu’au charbon plein",
    CarbonUse = "carbon used by a volume of water"
        / "carbón que gasta un volumen de agua"
        / "charbon pris par un volume d’eau",
    OxidantDemand = "oxidant for iron and manganese"
        / "oxidante para hierro y manganeso"
        / "oxydant pour le fer et le manganèse",
    SaltForOne = "salt for one regeneration" / "sal para una regeneración" / "sel pour une régénération",
    SaltInYear = "salt in a year" / "sal al año" / "sel par an",
    BrineVolume = "brine for one regeneration" / "salmuera para una regeneración" / "saumure pour une régénération",
    RinseVolume = "water that rinses one regeneration"
        / "agua de enjuague de una regeneración"
        / "eau de rinçage d’une régénération",
    LiftingIndex = "a pack against what one person may lift"
        / "un envase frente a lo que puede levantar una persona"
        / "un conditionnement face à ce qu’une personne peut lever",
    MediaLost = "media lost between two readings"
        / "medio perdido entre dos lecturas"
        / "média perdu entre deux lectures",
    SurfaceLower = "how much lower the surface lies"
        / "cuánto más baja está la superficie"
        / "de combien la surface est plus basse",
    MediaInYear = "media in a year" / "medio al año" / "média par an",
    PacksInYear = "packs in a year" / "envases al año" / "conditionnements par an",
    DissolvedInYear = "media dissolved in a year" / "medio disuelto al año" / "média dissous par an",
    WashWaterInYear = "wash water in a year" / "agua de lavado al año" / "eau de lavage par an",
    SpentVolume = "volume of spent media" / "volumen de medio agotado" / "volume de média usé",
    SpentDrums = "drums of spent media" / "bidones de medio agotado" / "fûts de média usé",
}
}

names! {
/// What a comparison is of.
CheckName of Check {
    VesselVolumes = "volumes below heights" / "volúmenes bajo una altura" / "volumes sous une hauteur",
    VesselHeights = "heights that hold volumes"
        / "alturas que contienen un volumen"
        / "hauteurs qui contiennent un volume",
    HeadShapes = "depths and volumes of heads" / "alturas y volúmenes de fondos" / "hauteurs et volumes des fonds",
    Water = "density and viscosity of water"
        / "densidad y viscosidad del agua"
        / "masse volumique et viscosité de l’eau",
    PackedBed = "pressure lost at rest" / "presión perdida en reposo" / "pression perdue au repos",
    MinimumFluidisation = "speeds that begin to lift"
        / "velocidades que empiezan a levantar"
        / "vitesses qui commencent à soulever",
    Hendricks = "speeds that begin to lift, printed"
        / "velocidades que empiezan a levantar, impresas"
        / "vitesses qui commencent à soulever, imprimées",
    Fluidised = "share of water in a lifted bed"
        / "parte de agua en un lecho levantado"
        / "part d’eau dans un lit soulevé",
    Settling = "settling speeds" / "velocidades de caída" / "vitesses de chute",
    Grading = "gradings cut at the mesh"
        / "granulometrías cortadas en la malla"
        / "granulométries coupées à la maille",
    Expansion = "expansions of graded beds" / "expansiones de lechos graduados" / "expansions de lits gradués",
    TapeSpread = "spread of tape readings" / "dispersión de lecturas de cinta" / "dispersion des lectures au ruban",
    Carbonate = "waters and the calcite they take"
        / "aguas y la calcita que toman"
        / "eaux et la calcite qu’elles prennent",
    Contactor = "calcite taken in contact" / "calcita tomada en contacto" / "calcite prise au contact",
    Magnesia = "magnesia taken up" / "magnesia tomada" / "magnésie prise",
    BedDepth = "lines of service time by depth"
        / "rectas de servicio según la profundidad"
        / "droites de durée selon la hauteur",
    MediaLoss = "media between two readings" / "medio entre dos lecturas" / "média entre deux lectures",
    Sieves = "openings of sieves" / "aberturas de tamices" / "ouvertures de tamis",
    Packs = "packs at least cost" / "envases al menor coste" / "conditionnements au moindre coût",
    Cutting = "pieces cut from stock lengths" / "piezas cortadas de barras" / "pièces coupées dans des longueurs",
    Quotes = "what quotes come to" / "lo que suman los presupuestos" / "ce que font les devis",
    StudentT = "quantiles for intervals" / "cuantiles para intervalos" / "quantiles pour les intervalles",
    Calibration = "when a reading will be reached"
        / "cuándo se alcanzará una lectura"
        / "quand une lecture sera atteinte",
    Spent = "curves of beds being spent" / "curvas de lechos que se agotan" / "courbes de lits qui s’usent",
    Currencies = "decimals of currencies" / "decimales de las monedas" / "décimales des monnaies",
    MinimumLow = "speeds that begin to lift, by Wen and Yu"
        / "velocidades que empiezan a levantar, según Wen y Yu"
        / "vitesses qui commencent à soulever, selon Wen et Yu",
    FluidisedLow = "share of water by Wen and Yu" / "parte de agua según Wen y Yu" / "part d’eau selon Wen et Yu",
    SettlingGrains = "settling speeds of grains that are no balls"
        / "velocidades de caída de granos que no son bolas"
        / "vitesses de chute de grains non sphériques",
    GrainSurfaces = "surfaces of grains" / "superficies de granos" / "surfaces de grains",
    Balances = "bed lives, salt and water in a year"
        / "duraciones, sal y agua al año"
        / "durées de vie, sel et eau par an",
    PrintedSheet = "printed calculation sheets" / "hojas de cálculo impresas" / "feuilles de calcul imprimées",
}
}

labels! {
/// What a number that is assumed, or a limit, is there for.
AssumptionName {
    InsideOfNominal = "inside diameter over nominal diameter"
        / "diámetro interior entre nominal"
        / "diamètre intérieur sur nominal",
    DepthUnderNominal = "nominal height less inside depth"
        / "altura nominal menos profundidad interior"
        / "hauteur nominale moins profondeur intérieure",
    NeckHeight = "neck height until measured" / "altura del cuello sin medir" / "hauteur du col non mesurée",
    RiserOutsideDiameter = "riser outside diameter until measured"
        / "diámetro exterior del tubo sin medir"
        / "diamètre extérieur du tube non mesuré",
    RiserWall = "wall of the riser" / "pared del tubo central" / "paroi du tube central",
    NeighbourRatio = "coarser over finer grains of neighbouring layers, at most"
        / "granos gruesos entre finos de capas vecinas, como máximo"
        / "grains grossiers sur fins de couches voisines, au plus",
    SpreadDiameterNominal = "spread of a diameter nobody measured"
        / "dispersión de un diámetro sin medir"
        / "dispersion d’un diamètre non mesuré",
    GapHeldStop = "gap in grains through which none pass"
        / "hueco en granos por el que no pasa ninguno"
        / "jeu en grains où aucun ne passe",
    SpreadDepthAssumed = "spread of a depth nobody measured"
        / "dispersión de una profundidad sin medir"
        / "dispersion d’une profondeur non mesurée",
    WellLow = "coldest water of a well" / "agua más fría de pozo" / "eau la plus froide d’un puits",
    WellHigh = "warmest water of a well" / "agua más cálida de pozo" / "eau la plus chaude d’un puits",
    MainsLow = "coldest water of the mains" / "agua más fría de red" / "eau la plus froide du réseau",
    MainsHigh = "warmest water of the mains" / "agua más cálida de red" / "eau la plus chaude du réseau",
    SurfaceLow = "coldest surface water" / "agua superficial más fría" / "eau de surface la plus froide",
    SurfaceHigh = "warmest surface water" / "agua superficial más cálida" / "eau de surface la plus chaude",
    RetainedLow = "water that stays between drained grains, least"
        / "agua que queda entre granos escurridos, mínimo"
        / "eau qui reste entre grains égouttés, au moins",
    RetainedHigh = "water that stays between drained grains, most"
        / "agua que queda entre granos escurridos, máximo"
        / "eau qui reste entre grains égouttés, au plus",
    RetainedCarbon = "water in the pores of carbon over its dry weight"
        / "agua en los poros del carbón entre su peso seco"
        / "eau dans les pores du charbon sur son poids sec",
    SettlingAllowance = "what a bed settles without loss"
        / "lo que asienta un lecho sin pérdida"
        / "ce qu’un lit se tasse sans perte",
    VoidageLoosest = "loosest voidage that is believed"
        / "porosidad más suelta que se admite"
        / "porosité la plus lâche admise",
    IronFactor = "hardness a milligram of iron counts for"
        / "dureza por la que cuenta un miligramo de hierro"
        / "dureté pour laquelle compte un milligramme de fer",
    SoftenerReserve = "reserve of a softener" / "reserva de un ablandador" / "réserve d’un adoucisseur",
    RefillShare = "share that may dissolve before filling up"
        / "parte que puede disolverse antes de rellenar"
        / "part qui peut se dissoudre avant de compléter",
    CarbonUsable = "share of carbon that is used" / "parte del carbón que se aprovecha" / "part du charbon utilisée",
    MediaUsable = "share of other media that is used"
        / "parte de otros medios que se aprovecha"
        / "part des autres médias utilisée",
    ResinLife = "life of resin" / "duración de la resina" / "durée de vie de la résine",
    SurfaceWorkingLow = "share of the surface that still works, at worst"
        / "parte de la superficie que aún trabaja, como mínimo"
        / "part de la surface encore active, au pire",
    Bucket = "what a bucket holds" / "lo que cabe en un cubo" / "contenance d’un seau",
    NearMiss = "part of a pack that nobody buys one for"
        / "parte de envase por la que nadie compra otro"
        / "part d’un conditionnement qu’on n’achète pas pour elle",
    GapCentredCaution = "gap in grains below which they pass slowly"
        / "hueco en granos bajo el cual pasan despacio"
        / "jeu en grains sous lequel ils passent lentement",
    GapLeanedStop = "gap in grains below which they bridge"
        / "hueco en granos bajo el cual se atascan"
        / "jeu en grains sous lequel ils font voûte",
    SlotCaution = "slot over smallest grain, at most"
        / "ranura entre grano menor, como máximo"
        / "fente sur plus petit grain, au plus",
    SpreadDiameterMeasured = "spread of a measured diameter"
        / "dispersión de un diámetro medido"
        / "dispersion d’un diamètre mesuré",
    SpreadPack = "spread of what is in a pack"
        / "dispersión del contenido de un envase"
        / "dispersion du contenu d’un conditionnement",
    SpreadTape = "spread of a tape reading"
        / "dispersión de una lectura de cinta"
        / "dispersion d’une lecture au ruban",
    CarryOverCaution = "speed over the fall of the finest grain, at most"
        / "velocidad entre caída del grano más fino, como máximo"
        / "vitesse sur chute du grain le plus fin, au plus",
    LossLimitService = "most a unit may lose in service"
        / "lo máximo que puede perder en servicio"
        / "perte maximale en service",
    LossLimitPeak = "most a unit may lose at peak flow"
        / "lo máximo que puede perder en punta"
        / "perte maximale au débit de pointe",
    DrainCheckMinutes = "how long a drain is watched"
        / "cuánto se mira el desagüe"
        / "combien de temps on regarde l’égout",
    FlowControlTolerance = "tolerance of a drain line flow control"
        / "tolerancia de un regulador de caudal"
        / "tolérance d’un régulateur de débit",
    TipDiameter = "widest vessel that two people tip"
        / "recipiente más ancho que vuelcan dos personas"
        / "cuve la plus large que deux personnes basculent",
    Bulking = "bulking of spent media" / "esponjamiento del medio agotado" / "foisonnement du média usé",
    SpentDrum = "what a drum holds" / "lo que cabe en un bidón" / "contenance d’un fût",
    StockLength = "stock length of pipe" / "largo comercial de tubo" / "longueur commerciale de tube",
    Kerf = "width of the saw's cut" / "ancho del corte de sierra" / "largeur du trait de scie",
    LiftReach = "reach when a pack is lifted"
        / "alcance al levantar un envase"
        / "portée en levant un conditionnement",
    LiftHeight = "height of the hands when a pack is lifted"
        / "altura de las manos al levantar un envase"
        / "hauteur des mains en levant un conditionnement",
    LiftTravel = "how far a pack is lifted" / "cuánto se levanta un envase" / "de combien on lève un conditionnement",
    PalletMass = "what a pallet bears" / "lo que aguanta un palé" / "ce que porte une palette",
}
}
