//! What the entries of the water side are called, and how to take them.

use crate::field::WaterField;

names! {
/// What an entry of the water side is called.
WaterName of WaterField {
    TemperatureLow = "Coldest water" / "Agua más fría" / "Eau la plus froide",
    TemperatureHigh = "Warmest water" / "Agua más cálida" / "Eau la plus chaude",
    BackwashAvailable = "Flow there is for backwash"
        / "Caudal que hay para retrolavar"
        / "Débit disponible pour le rétrolavage",
    SitePressure = "Pressure at rest" / "Presión en reposo" / "Pression au repos",
    CeilingClearance = "Clear height" / "Altura disponible" / "Hauteur dégagée",
    ServiceFlow = "Service flow of the site" / "Caudal de servicio del lugar" / "Débit de service du site",
    PeakFlow = "Highest service flow" / "Caudal de servicio máximo" / "Débit de service le plus élevé",
    MinimumExpansion = "Least expansion" / "Expansión mínima" / "Expansion minimale",
    FlowControl = "Drain line flow control fitted"
        / "Regulador de caudal del desagüe montado"
        / "Régulateur de débit à l’égout monté",
    ValveLoss = "Pressure lost in the valve" / "Presión perdida en la válvula" / "Pression perdue dans la vanne",
    CollectorLoss = "Pressure lost in the collectors"
        / "Presión perdida en los colectores"
        / "Pression perdue dans les collecteurs",
    LabelPressure = "Highest pressure on the label" / "Presión máxima de la placa" / "Pression maximale de la plaque",
    LabelTemperature = "Highest temperature on the label"
        / "Temperatura máxima de la placa"
        / "Température maximale de la plaque",
    AirHead = "Depth of air kept on top" / "Altura de aire que se mantiene arriba" / "Hauteur d’air gardée en haut",
    UpperSlotWidth = "Slot width of the upper collector"
        / "Ancho de ranura del colector superior"
        / "Largeur de fente du collecteur supérieur",
    FeedFreeChlorine = "Free chlorine after it" / "Cloro libre después" / "Chlore libre après",
    FeedTotalChlorine = "Total chlorine after it" / "Cloro total después" / "Chlore total après",
    FeedHardness = "Hardness after it" / "Dureza después" / "Dureté après",
    FeedIron = "Iron after it" / "Hierro después" / "Fer après",
    SiltDensityIndex = "Silt density index after it"
        / "Índice de densidad de sedimentos (SDI) después"
        / "Indice de colmatage (SDI) après",
    EmptyMass = "Weight of the empty vessel" / "Peso del recipiente vacío" / "Poids de la cuve vide",
    FootDiameter = "Diameter of its foot" / "Diámetro del pie" / "Diamètre du pied",
    GrainLow = "Smallest grain" / "Grano más pequeño" / "Plus petit grain",
    GrainHigh = "Largest grain" / "Grano más grande" / "Plus gros grain",
    EffectiveSize = "Effective size" / "Tamaño efectivo" / "Taille effective",
    Uniformity = "Uniformity coefficient" / "Coeficiente de uniformidad" / "Coefficient d’uniformité",
    ParticleDensity = "Particle density, wetted"
        / "Densidad de partícula, mojada"
        / "Masse volumique des grains, mouillés",
    Voidage = "Settled voidage" / "Porosidad asentada" / "Porosité du lit posé",
    Sphericity = "Sphericity" / "Esfericidad" / "Sphéricité",
    DailyUse = "Water used a day" / "Agua gastada al día" / "Eau utilisée par jour",
    Ph = "pH" / "pH" / "pH",
    Alkalinity = "Alkalinity" / "Alcalinidad" / "Alcalinité",
    CarbonDioxide = "Free carbon dioxide" / "Dióxido de carbono libre" / "Dioxyde de carbone libre",
    CalciumHardness = "Calcium, or all hardness" / "Calcio, o toda la dureza" / "Calcium, ou toute la dureté",
    MagnesiumHardness = "Magnesium, where known apart"
        / "Magnesio, si se sabe aparte"
        / "Magnésium, s’il est connu à part",
    Sodium = "Sodium" / "Sodio" / "Sodium",
    Sulfate = "Sulfate" / "Sulfato" / "Sulfates",
    Chloride = "Chloride" / "Cloruro" / "Chlorures",
    DissolvedSolids = "Dissolved solids" / "Sólidos disueltos" / "Matières dissoutes",
    Iron = "Iron" / "Hierro" / "Fer",
    Manganese = "Manganese" / "Manganeso" / "Manganèse",
    Aluminium = "Aluminium" / "Aluminio" / "Aluminium",
    Turbidity = "Turbidity, NTU" / "Turbidez, NTU" / "Turbidité, NTU",
    Chlorine = "Chlorine, free and combined" / "Cloro, libre y combinado" / "Chlore, libre et combiné",
    SuspendedSolids = "Suspended solids" / "Sólidos en suspensión" / "Matières en suspension",
    RefillShare = "Share that may go before filling up"
        / "Parte que puede irse antes de reponer"
        / "Part qui peut partir avant l’appoint",
    WashTime = "How long a wash takes" / "Cuánto dura un lavado" / "Combien dure un lavage",
    WashInterval = "Time between two washes" / "Tiempo entre dos lavados" / "Temps entre deux lavages",
    SaltDose = "Salt dose" / "Dosis de sal" / "Dose de sel",
    ResinCapacity = "Capacity of the resin at that dose"
        / "Capacidad de la resina con esa dosis"
        / "Capacité de la résine à cette dose",
    Reserve = "Reserve" / "Reserva" / "Réserve",
    IronFactor = "Hardness that iron counts for, mg for a mg"
        / "Dureza por la que cuenta el hierro, mg por mg"
        / "Dureté pour laquelle compte le fer, mg par mg",
    HalfLength = "Half-length of the carbon"
        / "Longitud de semirreducción del carbón"
        / "Longueur de demi-réduction du charbon",
    TestVelocity = "Flow per area of that test" / "Caudal por área de ese ensayo" / "Débit surfacique de cet essai",
    InletConcentration = "What comes in" / "Lo que entra" / "Ce qui entre",
    OutletLimit = "What may leave" / "Lo que puede salir" / "Ce qui peut sortir",
    TerminalDrop = "Washed at a loss of" / "Se lava con una pérdida de" / "Lavé à une perte de",
    MediaCapacity = "What the media hold" / "Lo que retiene el medio" / "Ce que retient le média",
    UsableShare = "Share of it that is used" / "Parte de ello que se usa" / "Part qui en est utilisée",
    FreundlichFactor = "Freundlich K" / "K de Freundlich" / "K de Freundlich",
    FreundlichExponent = "Freundlich 1/n" / "1/n de Freundlich" / "1/n de Freundlich",
    ReadingDepth1 = "First bed: depth" / "Primer lecho: altura" / "Premier lit : hauteur",
    ReadingTime1 = "First bed: service time" / "Primer lecho: tiempo de servicio" / "Premier lit : temps de service",
    ReadingDepth2 = "Second bed: depth" / "Segundo lecho: altura" / "Deuxième lit : hauteur",
    ReadingTime2 = "Second bed: service time"
        / "Segundo lecho: tiempo de servicio"
        / "Deuxième lit : temps de service",
    ReadingDepth3 = "Third bed: depth" / "Tercer lecho: altura" / "Troisième lit : hauteur",
    ReadingTime3 = "Third bed: service time"
        / "Tercer lecho: tiempo de servicio"
        / "Troisième lit : temps de service",
}}

hints! {
/// How to take an entry of the water side, in a few words, where the name doesn't say it.
WaterHint of WaterField {
    TemperatureLow = "in late winter; the well's own if it is one"
        / "a finales de invierno; la del pozo si lo es"
        / "en fin d’hiver ; celle du puits si c’en est un",
    TemperatureHigh = "in late summer" / "a finales de verano" / "en fin d’été",
    BackwashAvailable = "bucket and watch at the drain, or what the pump gives"
        / "cubo y reloj en el desagüe, o lo que da la bomba"
        / "seau et montre à l’égout, ou ce que donne la pompe",
    ServiceFlow = "all vessels of this kind together"
        / "todos los recipientes de este tipo juntos"
        / "toutes les cuves de ce genre ensemble",
    PeakFlow = "all vessels of this kind together"
        / "todos los recipientes de este tipo juntos"
        / "toutes les cuves de ce genre ensemble",
    MinimumExpansion = "of the settled media, in the warmest water"
        / "del medio asentado, en el agua más cálida"
        / "du média posé, dans l’eau la plus chaude",
    FlowControl = "as stamped on it; leave empty to have one chosen"
        / "como está grabado; vacío para que se elija uno"
        / "comme gravé dessus ; vide pour qu’un soit choisi",
    ValveLoss = "at the usual flow of one vessel"
        / "con el caudal habitual de un recipiente"
        / "au débit usuel d’une cuve",
    CollectorLoss = "at the usual flow of one vessel"
        / "con el caudal habitual de un recipiente"
        / "au débit usuel d’une cuve",
    AirHead = "no room for the bed" / "no es sitio para el lecho" / "pas de place pour le lit",
    FeedFreeChlorine = "at the membrane" / "en la membrana" / "à la membrane",
    FeedTotalChlorine = "at the membrane, free and combined"
        / "en la membrana, libre y combinado"
        / "à la membrane, libre et combiné",
    FeedHardness = "as calcium carbonate" / "como carbonato de calcio" / "en carbonate de calcium",
    SiltDensityIndex = "over 15 minutes" / "en 15 minutos" / "sur 15 minutes",
    GrainLow = "the lower sieve" / "el tamiz de abajo" / "le tamis du bas",
    GrainHigh = "the upper sieve" / "el tamiz de arriba" / "le tamis du haut",
    EffectiveSize = "a tenth by weight is finer"
        / "un décimo en peso es más fino"
        / "un dixième en poids est plus fin",
    Uniformity = "size six tenths are finer than, over the effective size; 1 for one size"
        / "tamaño por debajo del cual están seis décimas, entre el tamaño efectivo; 1 si hay un solo tamaño"
        / "taille sous laquelle sont six dixièmes, sur la taille effective ; 1 pour une seule taille",
    Voidage = "share of the settled bed that is water"
        / "parte del lecho asentado que es agua"
        / "part du lit posé qui est de l’eau",
    Sphericity = "1 for balls" / "1 para esferas" / "1 pour des sphères",
    DailyUse = "the whole site, on average over the year"
        / "todo el lugar, de media en el año"
        / "tout le site, en moyenne sur l’année",
    Alkalinity = "say what it is counted as" / "diga como qué se cuenta" / "dites en quoi elle est comptée",
    MagnesiumHardness = "say what it is counted as" / "diga como qué se cuenta" / "dites en quoi il est compté",
    CalciumHardness = "say what it is counted as: CaCO₃, or the ion"
        / "diga como qué se cuenta: CaCO₃, o el ion"
        / "dites en quoi c’est compté : CaCO₃, ou l’ion",
    CarbonDioxide = "where pH or alkalinity isn't known"
        / "si no se conocen el pH o la alcalinidad"
        / "si le pH ou l’alcalinité n’est pas connu",
    SaltDose = "for one regeneration, on a volume of resin"
        / "para una regeneración, por volumen de resina"
        / "pour une régénération, par volume de résine",
    ResinCapacity = "from the resin's own paper; else the rule's"
        / "del papel de la resina; si no, la de la regla"
        / "d’après le papier de la résine ; sinon celle de la règle",
    HalfLength = "from the carbon's own paper, with the test's flow"
        / "del papel del carbón, con el caudal del ensayo"
        / "d’après le papier du charbon, avec le débit de l’essai",
    TestVelocity = "a half-length without it says nothing"
        / "sin él una longitud de semirreducción no dice nada"
        / "sans lui une longueur de demi-réduction ne dit rien",
    TerminalDrop = "pressure lost over the whole unit; with readings of a visit it tells the run"
        / "presión perdida en todo el equipo; con lecturas de una visita da la duración"
        / "pression perdue sur tout l’appareil ; avec des relevés de visite, elle donne la durée",
    MediaCapacity = "weight held by a volume of bed, from the paper of the media"
        / "peso retenido por volumen de lecho, del papel del medio"
        / "poids retenu par volume de lit, d’après le papier du média",
    FreundlichFactor = "mg in a gram of carbon at 1 mg/L"
        / "mg en un gramo de carbón a 1 mg/L"
        / "mg dans un gramme de charbon à 1 mg/L",
    ReadingDepth1 = "same media, inlet, limit and flow per area"
        / "mismo medio, entrada, límite y caudal por área"
        / "mêmes média, entrée, limite et débit surfacique",
    ReadingDepth2 = "same media, inlet, limit and flow per area"
        / "mismo medio, entrada, límite y caudal por área"
        / "mêmes média, entrée, limite et débit surfacique",
    ReadingDepth3 = "same media, inlet, limit and flow per area"
        / "mismo medio, entrada, límite y caudal por área"
        / "mêmes média, entrée, limite et débit surfacique",
}}
