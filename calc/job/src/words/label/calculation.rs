//! Texts of the calculation sheet.

labels! {
/// A fixed text of the calculation sheet.
CalculationLabel {
    Number = "no." / "n.º" / "n°",
    Layer = "layer" / "capa" / "couche",
    Equation = "equation, and the values in it"
        / "ecuación, y los valores en ella"
        / "équation, et les valeurs dedans",
    Rests = "from" / "de" / "d’après",
    Inside = "Inside of the vessel" / "Interior del recipiente" / "Intérieur de la cuve",
    Ceiling = "Freeboard" / "Espacio libre" / "Hauteur libre",
    Room = "Section and room" / "Sección y sitio" / "Section et place",
    Water = "Water" / "Agua" / "Eau",
    Grains = "Grains" / "Granos" / "Grains",
    Fractions = "sizes of the fractions" / "tamaños de las fracciones" / "tailles des fractions",
    Seen = "What was seen," / "Lo que se vio," / "Ce qui a été vu,",
    Starts = "Where lifting begins, and the fall of the finest kept grain"
        / "Dónde empieza a levantarse, y la caída del grano más fino que se queda"
        / "Où le soulèvement commence, et la chute du plus fin grain gardé",
    LiftCold = "Backwash at the judged setting, coldest water"
        / "Retrolavado con el ajuste juzgado, agua más fría"
        / "Rétrolavage au réglage jugé, eau la plus froide",
    LiftWarm = "Backwash at the judged setting, warmest water"
        / "Retrolavado con el ajuste juzgado, agua más cálida"
        / "Rétrolavage au réglage jugé, eau la plus chaude",
    Lifts = "Flow that lifts enough in the warmest water"
        / "Caudal que levanta bastante en el agua más cálida"
        / "Débit qui soulève assez dans l’eau la plus chaude",
    Stays = "Flow that keeps the bed in, in the coldest water"
        / "Caudal que deja el lecho dentro, en el agua más fría"
        / "Débit qui laisse le lit dedans, dans l’eau la plus froide",
    Weights = "Weights" / "Pesos" / "Poids",
    ServiceUsual = "Service at the usual flow" / "Servicio con el caudal habitual" / "Service au débit usuel",
    ServicePeak = "Service at the highest flow" / "Servicio con el caudal máximo" / "Service au débit le plus élevé",
    ServiceWashing = "Service while one vessel is washed"
        / "Servicio mientras se lava un recipiente"
        / "Service pendant qu’une cuve se lave",
    Sources = "Sources" / "Fuentes" / "Sources",
    Trial = "found by trial: put in, what is asked for below comes out"
        / "hallado por tanteo: puesto dentro, sale abajo lo que se pide"
        / "trouvé par essais : remis dedans, on obtient dessous ce qui est demandé",
    FromMemory = "from memory: no verdict rests on it"
        / "de memoria: ningún veredicto se apoya en ello"
        / "de mémoire : aucun verdict ne repose dessus",
    Fraction = "fraction" / "fracción" / "fraction",
    With = "with" / "con" / "avec",
    After = "packs poured:" / "envases vertidos:" / "conditionnements versés :",
    EachOf = "d each of" / "d cada uno de" / "d chacun de",
    RuleOfDigits = "Every line can be worked out again from what stands in it. Values are in SI, rounded to six digits; a result agrees as far as the rounding of its values reaches. Angles are in radians, log is to base 10, Φ is the normal distribution."
        / "Cada línea se puede rehacer con lo que está escrito en ella. Los valores van en SI, redondeados a seis cifras; un resultado coincide hasta donde llega el redondeo de sus valores. Los ángulos van en radianes, log es en base 10, Φ es la distribución normal."
        / "Chaque ligne peut être refaite à partir de ce qui y est écrit. Les valeurs sont en SI, arrondies à six chiffres ; un résultat concorde dans la limite de l’arrondi de ses valeurs. Les angles sont en radians, log est en base 10, Φ est la loi normale.",
    RuleOfTrial = "Where a result also stands inside its equation it was found by trial: put in, both sides agree."
        / "Donde un resultado está también dentro de su ecuación, se halló por tanteo: puesto dentro, ambos lados coinciden."
        / "Là où un résultat est aussi dans son équation, il a été trouvé par essais : remis dedans, les deux côtés concordent.",
    RuleOfSums = "Σ with the index d adds over all sizes of the layer's fractions of equal mass; they stand under Grains. ε is found for each by the equation beside it, and never counted below the settled voidage."
        / "Σ con el índice d suma sobre todos los tamaños de las fracciones de igual masa de la capa; están en Granos. ε se halla para cada uno con la ecuación de al lado, y nunca se cuenta por debajo de la porosidad asentada."
        / "Σ avec l’indice d additionne toutes les tailles des fractions d’égale masse de la couche ; elles sont sous Grains. ε est trouvé pour chacune par l’équation à côté, et n’est jamais compté sous la porosité du lit posé.",
}}
