//! The nouns of quantities: inside a sentence, so in small letters.

use bedwright_calc::quantity::Term;

names! {
/// What a quantity is called.
TermName of Term {
    NominalDiameter = "nominal diameter" / "diámetro nominal" / "diamètre nominal",
    NominalHeight = "nominal height" / "altura nominal" / "hauteur nominale",
    InsideDiameter = "inside diameter" / "diámetro interior" / "diamètre intérieur",
    Circumference = "tape round the bare shell"
        / "cinta alrededor de la virola desnuda"
        / "ruban autour de la virole nue",
    Wall = "wall" / "pared" / "paroi",
    MeteredVolume = "water let in" / "agua introducida" / "eau introduite",
    TapeBefore = "tape before" / "cinta antes" / "ruban avant",
    TapeAfter = "tape after" / "cinta después" / "ruban après",
    PackVolume = "volume of a pack" / "volumen de un envase" / "volume d’un conditionnement",
    PackMass = "weight of a pack" / "peso de un envase" / "poids d’un conditionnement",
    InsideDepth = "inside depth" / "profundidad interior" / "profondeur intérieure",
    DepthUnderNominal = "nominal height less inside depth"
        / "altura nominal menos profundidad interior"
        / "hauteur nominale moins profondeur intérieure",
    NeckHeight = "neck height" / "altura del cuello" / "hauteur du col",
    ClearBore = "clear bore" / "paso libre" / "passage libre",
    BottomHeadDepth = "depth of the bottom head" / "altura del fondo inferior" / "hauteur du fond inférieur",
    TopHeadDepth = "depth of the top head" / "altura del fondo superior" / "hauteur du fond supérieur",
    StraightSide = "straight side" / "parte cilíndrica" / "partie cylindrique",
    RiserOutsideDiameter = "riser outside diameter"
        / "diámetro exterior del tubo central"
        / "diamètre extérieur du tube central",
    RiserSeat = "height the riser stands at"
        / "altura a la que se apoya el tubo central"
        / "hauteur où repose le tube central",
    RiserAllowance = "what the valve wants above the rim"
        / "lo que la válvula quiere sobre el borde"
        / "ce que la vanne veut au-dessus du bord",
    CollectorDiameter = "collector diameter" / "diámetro del colector" / "diamètre du collecteur",
    CollectorBottom = "collector lower end" / "extremo inferior del colector" / "extrémité basse du collecteur",
    CollectorTop = "collector upper end" / "extremo superior del colector" / "extrémité haute du collecteur",
    LateralCount = "number of laterals" / "número de brazos" / "nombre de bras",
    LateralAxis = "laterals' centre" / "centro de los brazos" / "axe des bras",
    LateralLength = "length of a lateral" / "largo de un brazo" / "longueur d’un bras",
    TopSlot = "height of the top slot" / "altura de la ranura más alta" / "hauteur de la fente la plus haute",
    SlotWidth = "slot width" / "ancho de ranura" / "largeur de fente",
    UpperCollector = "rim to upper collector" / "del borde al colector superior" / "du bord au collecteur supérieur",
    Height = "height" / "altura" / "hauteur",
    FreeVolume = "free volume" / "volumen libre" / "volume libre",
    Target = "amount of the layer" / "cantidad de la capa" / "quantité de la couche",
    LayerVolume = "volume of the layer" / "volumen de la capa" / "volume de la couche",
    BulkDensity = "bulk density" / "densidad aparente" / "masse volumique apparente",
    GrainLow = "smallest grain" / "grano más pequeño" / "plus petit grain",
    GrainHigh = "largest grain" / "grano más grande" / "plus gros grain",
    Bucket = "bucket" / "cubo" / "seau",
    Step = "step of the table" / "paso de la tabla" / "pas de la table",
    Freeboard = "freeboard" / "espacio libre" / "hauteur libre",
    MediaDepth = "depth of the media bed" / "altura del lecho" / "hauteur du lit",
    TapeReading = "tape reading" / "lectura de cinta" / "lecture au ruban",
    Packs = "packs" / "envases" / "conditionnements",
    Price = "price" / "precio" / "prix",
    WaterTemperature = "water temperature" / "temperatura del agua" / "température de l’eau",
    TemperatureLow = "coldest water" / "agua más fría" / "eau la plus froide",
    TemperatureHigh = "warmest water" / "agua más cálida" / "eau la plus chaude",
    WaterDensity = "density of the water" / "densidad del agua" / "masse volumique de l’eau",
    WaterViscosity = "viscosity of the water" / "viscosidad del agua" / "viscosité de l’eau",
    CrossSection = "section of the shell" / "sección de la virola" / "section de la virole",
    FlowPerArea = "flow per area" / "caudal por área" / "débit surfacique",
    ServiceFlow = "service flow through one vessel"
        / "caudal de servicio por un recipiente"
        / "débit de service par une cuve",
    SiteFlow = "service flow of the site" / "caudal de servicio del lugar" / "débit de service du site",
    Vessels = "vessels that share it" / "recipientes que lo reparten" / "cuves qui se le partagent",
    PeakFlow = "highest service flow" / "caudal de servicio máximo" / "débit de service le plus élevé",
    BackwashFlow = "backwash flow" / "caudal de retrolavado" / "débit de rétrolavage",
    BackwashAvailable = "flow there is for backwash"
        / "caudal que hay para retrolavar"
        / "débit disponible pour le rétrolavage",
    FlowControl = "drain line flow control" / "regulador de caudal del desagüe" / "régulateur de débit à l’égout",
    ContactTime = "empty-bed contact time" / "tiempo de contacto en lecho vacío" / "temps de contact en lit vide",
    BedVolumes = "bed volumes an hour" / "volúmenes de lecho por hora" / "volumes de lit par heure",
    MediaVolume = "volume of the media" / "volumen del medio" / "volume du média",
    ParticleDensity = "particle density, wetted"
        / "densidad de partícula, mojada"
        / "masse volumique des grains, mouillés",
    Voidage = "settled voidage" / "porosidad asentada" / "porosité du lit posé",
    Sphericity = "sphericity" / "esfericidad" / "sphéricité",
    EffectiveSize = "effective size" / "tamaño efectivo" / "taille effective",
    Uniformity = "uniformity coefficient" / "coeficiente de uniformidad" / "coefficient d’uniformité",
    GrainSize = "grain size" / "tamaño de grano" / "taille de grain",
    LayerDepth = "depth of the layer" / "altura de la capa" / "hauteur de la couche",
    PressureLoss = "pressure lost in the layer" / "presión perdida en la capa" / "pression perdue dans la couche",
    ValveLoss = "pressure lost in the valve" / "presión perdida en la válvula" / "pression perdue dans la vanne",
    CollectorLoss = "pressure lost in the collectors"
        / "presión perdida en los colectores"
        / "pression perdue dans les collecteurs",
    PressureLossLimit = "most the unit may lose"
        / "lo más que puede perder el equipo"
        / "ce que l’appareil peut perdre au plus",
    Expansion = "expansion" / "expansión" / "expansion",
    MinimumExpansion = "least expansion" / "expansión mínima" / "expansion minimale",
    RoomExpansion = "expansion there is room for"
        / "expansión para la que hay sitio"
        / "expansion pour laquelle il y a de la place",
    LineWeight = "place of the line between low (0) and high (1)"
        / "lugar de la línea entre baja (0) y alta (1)"
        / "place de la ligne entre basse (0) et haute (1)",
    MinimumFluidisation = "speed that begins to lift"
        / "velocidad que empieza a levantar"
        / "vitesse qui commence à soulever",
    SettlingSpeed = "settling speed of the finest kept grain"
        / "velocidad de caída del grano más fino que se queda"
        / "vitesse de chute du plus fin grain gardé",
    AirHead = "air head" / "cámara de aire" / "coussin d’air",
    UpperSlotWidth = "slot width of the upper collector"
        / "ancho de ranura del colector superior"
        / "largeur de fente du collecteur supérieur",
    SitePressure = "pressure on site" / "presión en el lugar" / "pression sur site",
    LabelPressure = "pressure on the label" / "presión de la placa" / "pression de la plaque",
    LabelTemperature = "temperature on the label" / "temperatura de la placa" / "température de la plaque",
    SiltDensityIndex = "silt density index" / "índice de densidad de sedimentos (SDI)" / "indice de colmatage (SDI)",
    EmptyMass = "weight of the empty vessel" / "peso del recipiente vacío" / "poids de la cuve vide",
    FootDiameter = "diameter of the foot" / "diámetro del pie" / "diamètre du pied",
    WaterMass = "weight of the water" / "peso del agua" / "poids de l’eau",
    SkeletalDensity = "density of the solid" / "densidad del sólido" / "masse volumique du solide",
    RetainedWater = "water that stays when drained"
        / "agua que queda tras escurrir"
        / "eau qui reste après égouttage",
    Minutes = "how long" / "cuánto tiempo" / "combien de temps",
    CeilingClearance = "clear height" / "altura disponible" / "hauteur dégagée",
    LayerMass = "dry weight of the layer" / "peso seco de la capa" / "poids sec de la couche",
    OperatingMass = "weight in operation" / "peso en operación" / "poids en service",
    RiserWall = "wall of the riser" / "pared del tubo central" / "paroi du tube central",
    RiserLength = "length of the riser" / "largo del tubo central" / "longueur du tube central",
    VesselCount = "number of vessels" / "número de recipientes" / "nombre de cuves",
    CrownShare = "crown radius over the diameter"
        / "radio del casquete entre diámetro"
        / "rayon de calotte sur diamètre",
    KnuckleShare = "knuckle radius over the diameter"
        / "radio de transición entre diámetro"
        / "rayon de carre sur diamètre",
    CrownRadius = "radius of the crown" / "radio del casquete" / "rayon de calotte",
    KnuckleRadius = "radius of the knuckle" / "radio de transición" / "rayon de carre",
    KnuckleJoint = "height of the joint of crown and knuckle"
        / "altura de la unión de casquete y transición"
        / "hauteur du raccord de calotte et de carre",
    HeadDepth = "depth of the head" / "altura del fondo" / "hauteur du fond",
    HeadVolume = "volume of the head" / "volumen del fondo" / "volume du fond",
    ShellVolume = "volume of the empty shell"
        / "volumen del recipiente sin nada dentro"
        / "volume de la cuve sans rien dedans",
    StepHeight = "height where what stands on the axis changes"
        / "altura donde cambia lo que hay en el eje"
        / "hauteur où change ce qui est sur l’axe",
    ShellAtStep = "volume of the empty shell below it"
        / "volumen del recipiente sin nada, por debajo"
        / "volume de la cuve sans rien, en dessous",
    FreeAtStep = "free volume below it" / "volumen libre por debajo" / "volume libre en dessous",
    SolidSection = "section of what stands on the axis above it"
        / "sección de lo que hay en el eje, por encima"
        / "section de ce qui est sur l’axe, au-dessus",
    CrownHeight = "height of the crown" / "altura de la cima" / "hauteur du sommet",
    TangentHeight = "height of the upper tangent line"
        / "altura de la línea tangente superior"
        / "hauteur de la ligne de tangence supérieure",
    ShellAtTangent = "volume of the empty shell up to the upper tangent line"
        / "volumen del recipiente sin nada hasta la línea tangente superior"
        / "volume de la cuve sans rien jusqu’à la ligne de tangence supérieure",
    ShellAtCrown = "volume of the empty shell up to the crown"
        / "volumen del recipiente sin nada hasta la cima"
        / "volume de la cuve sans rien jusqu’au sommet",
    Ceiling = "height of the ceiling" / "altura del techo del lecho" / "hauteur du plafond du lit",
    CeilingOpen = "height of the ceiling without the air"
        / "altura del techo del lecho sin el aire"
        / "hauteur du plafond du lit sans l’air",
    AskedHeight = "height that is asked for" / "altura que se pide" / "hauteur demandée",
    AskedVolume = "free volume below that height"
        / "volumen libre por debajo de esa altura"
        / "volume libre sous cette hauteur",
    VolumeBelow = "volume of the layers below" / "volumen de las capas de debajo" / "volume des couches du dessous",
    BottomHeight = "height of the lower face" / "altura de la cara inferior" / "hauteur de la face inférieure",
    MediaBelow = "depth of the media below" / "altura del medio de debajo" / "hauteur du média du dessous",
    FullHeight = "height with all that was asked for"
        / "altura con todo lo que se pidió"
        / "hauteur avec tout ce qui était demandé",
    AskedLayerVolume = "volume that was asked for" / "volumen que se pidió" / "volume demandé",
    AskedStackVolume = "volume of all layers with it"
        / "volumen de todas las capas con él"
        / "volume de toutes les couches avec lui",
    AskedPacks = "packs that would take" / "envases que harían falta" / "conditionnements qu’il faudrait",
    WholePacks = "whole packs" / "envases enteros" / "conditionnements entiers",
    PacksToBuy = "packs to buy" / "envases por comprar" / "conditionnements à acheter",
    PartShare = "share of the last pack" / "parte del último envase" / "part du dernier conditionnement",
    LeftOver = "left of the last pack" / "queda del último envase" / "reste du dernier conditionnement",
    PartVolume = "volume of the part pack"
        / "volumen de la parte de envase"
        / "volume de la partie de conditionnement",
    BucketMeasures = "bucket measures" / "medidas de cubo" / "mesures de seau",
    WallDepth = "depth at the wall" / "altura en la pared" / "hauteur à la paroi",
    Cover = "cover above the top slot"
        / "cubierta sobre la ranura más alta"
        / "couverture au-dessus de la fente la plus haute",
    ShorterBy = "bed shorter by" / "lecho más bajo en" / "lit plus bas de",
    FreeboardRatio = "freeboard over the depth of the media"
        / "espacio libre entre altura del medio"
        / "hauteur libre sur hauteur du média",
    RiserCut = "length of the riser" / "largo del tubo central" / "longueur du tube central",
    DryMass = "dry weight of all layers" / "peso seco de todas las capas" / "poids sec de toutes les couches",
    HeightBefore = "height of the surface before" / "altura de la superficie antes" / "hauteur de la surface avant",
    HeightAfter = "height of the surface after" / "altura de la superficie después" / "hauteur de la surface après",
    VolumeBefore = "volume below the surface before"
        / "volumen bajo la superficie antes"
        / "volume sous la surface avant",
    VolumeAfter = "volume below the surface after"
        / "volumen bajo la superficie después"
        / "volume sous la surface après",
    SpreadOfDiameter = "moved by the tolerance of the diameter, one standard deviation"
        / "movido por la tolerancia del diámetro, una desviación típica"
        / "déplacé par la tolérance du diamètre, un écart type",
    SpreadOfPacks = "moved by what is in the packs, one standard deviation"
        / "movido por lo que hay en los envases, una desviación típica"
        / "déplacé par ce que contiennent les conditionnements, un écart type",
    SpreadOfTape = "reading the tape, one standard deviation"
        / "lectura de la cinta, una desviación típica"
        / "lecture du ruban, un écart type",
    SpreadOfDepth = "moved by an assumed depth, one standard deviation"
        / "movido por una profundidad supuesta, una desviación típica"
        / "déplacé par une profondeur supposée, un écart type",
    TapeSpread = "nine of ten readings within, up and down"
        / "nueve de diez lecturas dentro, arriba y abajo"
        / "neuf lectures sur dix dedans, en haut et en bas",
    Share = "share that is finer" / "parte que es más fina" / "part plus fine",
    LogMean = "mean of the logarithm of the sizes in mm"
        / "media del logaritmo de los tamaños en mm"
        / "moyenne du logarithme des tailles en mm",
    LogDeviation = "standard deviation of that logarithm"
        / "desviación típica de ese logaritmo"
        / "écart type de ce logarithme",
    SizeBelow = "next known size below" / "siguiente tamaño conocido por debajo" / "taille connue juste au-dessous",
    SizeAbove = "next known size above" / "siguiente tamaño conocido por encima" / "taille connue juste au-dessus",
    ShareBelow = "share finer than the next size below"
        / "parte más fina que el tamaño de debajo"
        / "part plus fine que la taille du dessous",
    ShareAbove = "share finer than the next size above"
        / "parte más fina que el tamaño de encima"
        / "part plus fine que la taille du dessus",
    SixTenthsSize = "size six tenths are finer than"
        / "tamaño por debajo del cual están seis décimas"
        / "taille sous laquelle sont six dixièmes",
    Fractions = "fractions of equal mass" / "fracciones de igual masa" / "fractions d’égale masse",
    MeanReciprocal = "mean of one over the sizes"
        / "media de uno entre los tamaños"
        / "moyenne de un sur les tailles",
    MeanReciprocalSquare = "mean of one over the sizes squared"
        / "media de uno entre los tamaños al cuadrado"
        / "moyenne de un sur les tailles au carré",
    UnitLoss = "pressure lost by the whole unit"
        / "presión perdida por todo el equipo"
        / "pression perdue par tout l’appareil",
    UsualFlow = "usual flow of one vessel" / "caudal habitual de un recipiente" / "débit usuel d’une cuve",
    UnderbedVolume = "volume of the underbed" / "volumen de la capa de soporte" / "volume de la couche support",
    CeilingVolume = "free volume below the ceiling"
        / "volumen libre bajo el techo del lecho"
        / "volume libre sous le plafond du lit",
    WenYuExpansion = "expansion by Wen and Yu" / "expansión según Wen y Yu" / "expansion d’après Wen et Yu",
    ErgunExpansion = "expansion by Ergun" / "expansión según Ergun" / "expansion d’après Ergun",
    MemoryExpansion = "expansion by Dharmarajah and Cleasby, from memory"
        / "expansión según Dharmarajah y Cleasby, de memoria"
        / "expansion d’après Dharmarajah et Cleasby, de mémoire",
    BedExpansion = "expansion of all media together"
        / "expansión de todo el medio junto"
        / "expansion de tout le média ensemble",
    LowExpansion = "low line" / "línea baja" / "ligne basse",
    HighExpansion = "high line" / "línea alta" / "ligne haute",
    WenYuVoidage = "share of water by Wen and Yu" / "parte de agua según Wen y Yu" / "part d’eau d’après Wen et Yu",
    ErgunVoidage = "share of water by Ergun" / "parte de agua según Ergun" / "part d’eau d’après Ergun",
    MemoryVoidage = "share of water by Dharmarajah and Cleasby, from memory"
        / "parte de agua según Dharmarajah y Cleasby, de memoria"
        / "part d’eau d’après Dharmarajah et Cleasby, de mémoire",
    WeightLow = "lowest place of the line that can still be"
        / "lugar más bajo que aún puede tener la línea"
        / "place la plus basse que la ligne peut encore avoir",
    WeightHigh = "highest place of the line that can still be"
        / "lugar más alto que aún puede tener la línea"
        / "place la plus haute que la ligne peut encore avoir",
    SeenWeight = "place of the line by what was seen"
        / "lugar de la línea según lo visto"
        / "place de la ligne d’après ce qui a été vu",
    SeenCount = "pieces of evidence" / "cosas vistas" / "choses vues",
    PointExpansion = "expansion that was read off" / "expansión leída" / "expansion lue",
    ErgunMinimum = "speed that begins to lift, by Ergun"
        / "velocidad que empieza a levantar, según Ergun"
        / "vitesse qui commence à soulever, d’après Ergun",
    CoarsestSize = "size nine tenths are finer than"
        / "tamaño por debajo del cual están nueve décimas"
        / "taille sous laquelle sont neuf dixièmes",
    FinestSize = "size a twentieth is finer than"
        / "tamaño por debajo del cual está una vigésima parte"
        / "taille sous laquelle est un vingtième",
    PoreWater = "water in the pores over the dry weight"
        / "agua en los poros entre el peso seco"
        / "eau dans les pores sur le poids sec",
    WetMass = "weight of the drained layer" / "peso de la capa escurrida" / "poids de la couche égouttée",
    DrainedMass = "weight drained" / "peso escurrido" / "poids égoutté",
    FullMass = "weight full of water" / "peso lleno de agua" / "poids plein d’eau",
    SolidVolume = "volume of the solid" / "volumen del sólido" / "volume du solide",
    SolidDensity = "density of the solid" / "densidad del sólido" / "masse volumique du solide",
    WallVolume = "volume of the riser's wall"
        / "volumen de la pared del tubo central"
        / "volume de la paroi du tube central",
    FloorLoad = "load on the floor" / "carga sobre el suelo" / "charge au sol",
    Cost = "cost" / "coste" / "coût",
    Quantity = "quantity" / "cantidad" / "quantité",
    Discount = "discount" / "descuento" / "remise",
    Markup = "markup on the cost" / "recargo sobre el coste" / "majoration du coût",
    Margin = "margin on the price" / "margen sobre el precio" / "marge sur le prix",
    TaxRate = "rate of the tax class" / "tipo de la clase de impuesto" / "taux de la classe de taxe",
    Freight = "freight" / "transporte" / "transport",
    FreightRate = "freight rate" / "tarifa de transporte" / "tarif de transport",
    FreightWeight = "weight for freight" / "peso para el transporte" / "poids pour le transport",
    LabourHours = "hours of work" / "horas de trabajo" / "heures de travail",
    QuoteLines = "number of lines" / "número de líneas" / "nombre de lignes",
    QuoteTotal = "total of the quote" / "total de la oferta" / "total du devis",
    WashTime = "time of one backwash" / "tiempo de un retrolavado" / "temps d’un rétrolavage",
    WashesPerYear = "backwashes a year" / "retrolavados al año" / "rétrolavages par an",
    CleanDrop = "pressure lost over the clean bed"
        / "presión perdida en el lecho limpio"
        / "pression perdue dans le lit propre",
    Ph = "pH" / "pH" / "pH",
    Alkalinity = "alkalinity as CaCO₃" / "alcalinidad como CaCO₃" / "alcalinité en CaCO₃",
    CarbonDioxide = "carbon dioxide" / "dióxido de carbono" / "dioxyde de carbone",
    CalciumHardness = "calcium as CaCO₃" / "calcio como CaCO₃" / "calcium en CaCO₃",
    MagnesiumHardness = "magnesium as CaCO₃" / "magnesio como CaCO₃" / "magnésium en CaCO₃",
    Hardness = "hardness as CaCO₃" / "dureza como CaCO₃" / "dureté en CaCO₃",
    Sodium = "sodium" / "sodio" / "sodium",
    Sulfate = "sulfate" / "sulfato" / "sulfates",
    Chloride = "chloride" / "cloruro" / "chlorures",
    DissolvedSolids = "dissolved solids" / "sólidos disueltos" / "matières dissoutes",
    ChargeBalance = "difference of cations and anions"
        / "diferencia de cationes y aniones"
        / "différence des cations et des anions",
    SaturationIndex = "saturation index" / "índice de saturación" / "indice de saturation",
    CalciteDissolved = "calcite taken up" / "calcita tomada" / "calcite prise",
    MagnesiaDissolved = "magnesia taken up" / "magnesia tomada" / "magnésie prise",
    GrainSurface = "surface of the grains" / "superficie de los granos" / "surface des grains",
    CalciteMass = "weight of the calcite" / "peso de la calcita" / "poids de la calcite",
    MagnesiaMass = "weight of the magnesia" / "peso de la magnesia" / "poids de la magnésie",
    AverageUse = "water treated on average" / "agua tratada de media" / "eau traitée en moyenne",
    RefillShare = "share that may go before filling up"
        / "parte que puede irse antes de reponer"
        / "part qui peut partir avant l’appoint",
    InletConcentration = "what comes in" / "lo que entra" / "ce qui entre",
    OutletConcentration = "what may leave" / "lo que puede salir" / "ce qui peut sortir",
    MediaCapacity = "what the media hold" / "lo que retiene el medio" / "ce que retient le média",
    UsableShare = "share that is used" / "parte que se usa" / "part utilisée",
    ServiceTime = "service time" / "tiempo de servicio" / "temps de service",
    ServiceTimePerMetre = "service time a metre of bed adds"
        / "tiempo de servicio que añade un metro de lecho"
        / "temps de service qu’ajoute un mètre de lit",
    CriticalDepth = "depth that brings no service time"
        / "altura que no da tiempo de servicio"
        / "hauteur qui ne donne aucun temps de service",
    HalfLength = "half-length" / "longitud de semirreducción" / "longueur de demi-réduction",
    TestVelocity = "flow per area of the test" / "caudal por área del ensayo" / "débit surfacique de l’essai",
    HalfTime = "contact time that halves it"
        / "tiempo de contacto que reduce a la mitad"
        / "temps de contact qui réduit de moitié",
    FreundlichFactor = "Freundlich K, mg/g at 1 mg/L"
        / "K de Freundlich, mg/g a 1 mg/L"
        / "K de Freundlich, mg/g à 1 mg/L",
    FreundlichExponent = "Freundlich 1/n" / "1/n de Freundlich" / "1/n de Freundlich",
    Iron = "iron" / "hierro" / "fer",
    Manganese = "manganese" / "manganeso" / "manganèse",
    Aluminium = "aluminium" / "aluminio" / "aluminium",
    Turbidity = "turbidity, NTU" / "turbidez, NTU" / "turbidité, NTU",
    SaltDose = "salt dose" / "dosis de sal" / "dose de sel",
    ResinCapacity = "capacity of the resin" / "capacidad de la resina" / "capacité de la résine",
    IronFactor = "hardness a milligram of iron counts for"
        / "dureza por la que cuenta un miligramo de hierro"
        / "dureté pour laquelle compte un milligramme de fer",
    CompensatedHardness = "hardness with iron counted" / "dureza contando el hierro" / "dureté, fer compté",
    Reserve = "reserve" / "reserva" / "réserve",
    WaterBetween = "water between regenerations" / "agua entre regeneraciones" / "eau entre régénérations",
    RegenerationInterval = "time between regenerations" / "tiempo entre regeneraciones" / "temps entre régénérations",
    Solids = "suspended solids" / "sólidos en suspensión" / "matières en suspension",
    RunLength = "run length" / "duración entre lavados" / "durée entre lavages",
    SinceWash = "time since the wash" / "tiempo desde el lavado" / "temps depuis le lavage",
    DropSeen = "pressure lost" / "presión perdida" / "pression perdue",
    TerminalDrop = "loss of pressure at which it is washed"
        / "pérdida de presión a la que se lava"
        / "perte de pression à laquelle on lave",
    WashWater = "water for one wash" / "agua de un lavado" / "eau d’un lavage",
    Life = "expected life" / "vida esperada" / "durée de vie attendue",
    StockLength = "stock length" / "largo de venta" / "longueur vendue",
    Kerf = "width of the saw's cut" / "ancho del corte de sierra" / "largeur du trait de scie",
    LiftReach = "reach out to the hands" / "alcance hasta las manos" / "portée jusqu’aux mains",
    LiftHeight = "height of the hands" / "altura de las manos" / "hauteur des mains",
    LiftTravel = "way up or down" / "recorrido arriba o abajo" / "course vers le haut ou le bas",
    LiftTwist = "twist to the side, degrees" / "giro hacia el lado, grados" / "torsion sur le côté, degrés",
    LiftGrip = "factor for the grip" / "factor de agarre" / "facteur de prise",
    LiftLimit = "what one person may lift" / "lo que puede levantar una persona" / "ce qu’une personne peut lever",
    PalletMass = "weight a pallet may bear" / "peso que aguanta un palé" / "poids que supporte une palette",
    PalletPacks = "packs a pallet may bear"
        / "envases que aguanta un palé"
        / "conditionnements que supporte une palette",
    Confidence = "confidence" / "confianza" / "confiance",
    Freedom = "degrees of freedom" / "grados de libertad" / "degrés de liberté",
    Readings = "number of readings" / "número de lecturas" / "nombre de lectures",
    ReadingPlace = "spread of the readings over time"
        / "dispersión de las lecturas en el tiempo"
        / "étalement des lectures dans le temps",
    Trend = "rise of the readings" / "subida de las lecturas" / "montée des lectures",
    ReadingSpread = "scatter of the readings" / "dispersión de las lecturas" / "dispersion des lectures",
    OutletLimit = "outlet limit" / "límite a la salida" / "limite en sortie",
    Settling = "settling allowance" / "margen de asentamiento" / "marge de tassement",
    FreeChlorine = "free chlorine" / "cloro libre" / "chlore libre",
    TotalChlorine = "total chlorine" / "cloro total" / "chlore total",
    Bulking = "bulking of spent media" / "esponjamiento del medio agotado" / "foisonnement du média usé",
    DrumVolume = "what a drum holds" / "lo que cabe en un bidón" / "ce que contient un fût",
}}
