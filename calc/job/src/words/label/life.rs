//! Fixed texts of how long a bed lasts.

use crate::answers::life::{LifeName, LimitedBy};

labels! {
/// A text of how long a bed lasts.
LifeLabel {
    MediaLife = "Media life" / "Vida del medio" / "Durée de vie du média",
    MediaLifeHint = "How long the bed lasts, from the water and the bed. After some visits the readings take over."
        / "Cuánto dura el lecho, según el agua y el lecho. Tras algunas visitas mandan las lecturas."
        / "Combien de temps dure le lit, d’après l’eau et le lit. Après quelques visites les lectures prennent le relais.",
    Analysis = "The water's analysis and use" / "Análisis y consumo del agua" / "Analyse et usage de l’eau",
    AnalysisHint = "Hardness and alkalinity: choose what they are counted as; mg/L alone could mean two things."
        / "Dureza y alcalinidad: elija como qué se cuentan; mg/L solo puede significar dos cosas."
        / "Dureté et alcalinité : choisissez en quoi elles sont comptées ; mg/L seul peut vouloir dire deux choses.",
    OfTheBed = "What the bed holds and loses" / "Lo que el lecho retiene y pierde" / "Ce que le lit retient et perd",
    ToSay = "To say how long it lasts, type:"
        / "Para decir cuánto dura, escriba:"
        / "Pour dire combien il dure, saisissez :",
    ExpectedLife = "Expected life" / "Vida esperada" / "Durée de vie attendue",
    UpTo = "up to" / "hasta" / "jusqu’à",
    WhereSlowed = "where films slow the bed"
        / "donde las películas frenan el lecho"
        / "là où les films ralentissent le lit",
    LimitedByWord = "What limits it" / "Qué la limita" / "Ce qui la limite",
    LimitDissolving = "so much has dissolved that it is filled up"
        / "se ha disuelto tanto que se repone"
        / "tant s’est dissous qu’on fait l’appoint",
    LimitCapacity = "the bed holds what it can" / "el lecho retiene lo que puede" / "le lit retient ce qu’il peut",
    LimitReadings = "your own readings by depth"
        / "sus propias lecturas por altura"
        / "vos propres lectures par hauteur",
    LimitAge = "age of the resin, from memory; what is regenerated is below"
        / "edad de la resina, de memoria; lo que se regenera está abajo"
        / "âge de la résine, de mémoire ; ce qui est régénéré est dessous",
    ChangesMost = "What changes it most" / "Lo que más la cambia" / "Ce qui la change le plus",
    TenthMore = "a tenth more makes it" / "con un décimo más dura" / "avec un dixième de plus il dure",
    TenthPh = "a pH higher by 0.1 makes it" / "con un pH 0,1 más alto dura" / "avec un pH plus haut de 0,1 il dure",
    RegeneratesEvery = "a tenth more makes the time between regenerations"
        / "con un décimo más pasa entre regeneraciones"
        / "avec un dixième de plus il passe entre régénérations",
    Longer = "longer" / "más" / "de plus",
    Shorter = "shorter" / "menos" / "de moins",
    Unchanged = "no different" / "lo mismo" / "autant",
    InYearQuoted = "in a year" / "en un año" / "en un an",
    EachOf = "each" / "cada uno" / "chacune",
    Lasts = "the bed lasts" / "el lecho dura" / "le lit dure",
    InYear = "In a year" / "En un año" / "En un an",
    PacksWord = "bags or sacks" / "bolsas o sacos" / "sacs",
    MediaWord = "media" / "de medio" / "de média",
    SaltWord = "salt" / "de sal" / "de sel",
    WashWaterWord = "water for washing" / "de agua de lavado" / "d’eau de lavage",
    RegenerationWater = "water for brine and rinse at the most"
        / "de agua para salmuera y enjuague como mucho"
        / "d’eau pour saumure et rinçage au plus",
    LifeWaits = "Waits for an entry that makes no sense yet: see below."
        / "Espera un dato que aún no tiene sentido: véase abajo."
        / "Attend une donnée qui n’a pas encore de sens : voir dessous.",
    OfMemory = "Shares, limits and factors that nobody typed are from memory: see what each figure rests on."
        / "Las partes, límites y factores que nadie escribió son de memoria: vea en qué se apoya cada valor."
        / "Les parts, limites et facteurs que personne n’a saisis sont de mémoire : voyez sur quoi repose chaque valeur.",
    ToSaturation = "Calcite the water could take up"
        / "Calcita que el agua podría tomar"
        / "Calcite que l’eau pourrait prendre",
    Calcite = "Calcite it takes up in this bed"
        / "Calcita que toma en este lecho"
        / "Calcite qu’elle prend dans ce lit",
    Magnesia = "Magnesia it takes up in passing" / "Magnesia que toma al pasar" / "Magnésie qu’elle prend au passage",
    Dioxide = "Free carbon dioxide at the inlet"
        / "Dióxido de carbono libre a la entrada"
        / "Dioxyde de carbone libre en entrée",
    IndexBefore = "Saturation index at the inlet"
        / "Índice de saturación a la entrada"
        / "Indice de saturation en entrée",
    HardnessBefore = "Hardness at the inlet" / "Dureza a la entrada" / "Dureté en entrée",
    PhAfter = "Outlet pH" / "pH a la salida" / "pH en sortie",
    PhSlowed = "Outlet pH where films slow the bed"
        / "pH a la salida donde las películas frenan el lecho"
        / "pH en sortie là où les films ralentissent le lit",
    PhPeak = "Outlet pH at the peak" / "pH a la salida en la punta" / "pH en sortie en pointe",
    PhStanding = "Outlet pH after standing" / "pH a la salida tras reposo" / "pH en sortie après stagnation",
    HardnessAfter = "Outlet hardness" / "Dureza a la salida" / "Dureté en sortie",
    AlkalinityAfter = "Outlet alkalinity" / "Alcalinidad a la salida" / "Alcalinité en sortie",
    IndexAfter = "Outlet saturation index" / "Índice de saturación a la salida" / "Indice de saturation en sortie",
    CalciteMonth = "Calcite in a month" / "Calcita en un mes" / "Calcite en un mois",
    MagnesiaMonth = "Magnesia in a month" / "Magnesia en un mes" / "Magnésie en un mois",
    RefillDepth = "Fill up by" / "Reponer" / "Appoint de",
    HalfTime = "Contact time that halves chlorine"
        / "Tiempo de contacto que reduce el cloro a la mitad"
        / "Temps de contact qui réduit le chlore de moitié",
    ChlorineLeft = "Chlorine that leaves" / "Cloro que sale" / "Chlore qui sort",
    ContactTimeNeeded = "Contact time needed" / "Tiempo de contacto necesario" / "Temps de contact nécessaire",
    CarbonCapacity = "What carbon holds of its weight"
        / "Lo que el carbón retiene de su peso"
        / "Ce que le charbon retient de son poids",
    BedVolumes = "Bed volumes until it is used"
        / "Volúmenes de lecho hasta agotarlo"
        / "Volumes de lit jusqu’à épuisement",
    CarbonUse = "Carbon use rate" / "Consumo de carbón" / "Consommation de charbon",
    TimePerMetre = "Service time a metre of bed adds"
        / "Tiempo de servicio que añade un metro de lecho"
        / "Temps de service qu’ajoute un mètre de lit",
    CriticalDepth = "Depth that adds none" / "Altura que no añade nada" / "Hauteur qui n’ajoute rien",
    ServiceTime = "Service time by your readings"
        / "Tiempo de servicio según sus lecturas"
        / "Temps de service d’après vos lectures",
    ResinCapacity = "Capacity of the resin" / "Capacidad de la resina" / "Capacité de la résine",
    CompensatedHardness = "Hardness with iron counted" / "Dureza contando el hierro" / "Dureté, fer compté",
    Water = "Water until then" / "Agua hasta entonces" / "Eau jusque-là",
    Regenerations = "Between regenerations" / "Entre regeneraciones" / "Entre régénérations",
    Salt = "Salt for a regeneration" / "Sal para una regeneración" / "Sel pour une régénération",
    BrineLow = "Brine for one, strong" / "Salmuera para una, fuerte" / "Saumure pour une, forte",
    BrineHigh = "Brine for one, weak" / "Salmuera para una, débil" / "Saumure pour une, faible",
    RinseLow = "Rinse water for one, at least"
        / "Agua de enjuague para una, al menos"
        / "Eau de rinçage pour une, au moins",
    RinseHigh = "Rinse water for one, at most"
        / "Agua de enjuague para una, como mucho"
        / "Eau de rinçage pour une, au plus",
    RunLength = "Between two washes" / "Entre dos lavados" / "Entre deux lavages",
    Grounds = "Where these figures come from" / "De dónde vienen estas cifras" / "D’où viennent ces chiffres",
    GroundsHint = "a paper, a test, a person: it stands on the calculation sheet and the quote"
        / "un papel, un ensayo, una persona: figura en la hoja de cálculo y en el presupuesto"
        / "un papier, un essai, une personne : cela figure sur la note de calcul et le devis",
    GroundsSaid = "typed figures of the bed come from: {grounds}"
        / "las cifras escritas del lecho vienen de: {grounds}"
        / "les chiffres saisis du lit viennent de : {grounds}",
    RunByDrop = "Between two washes, by your readings"
        / "Entre dos lavados, según sus lecturas"
        / "Entre deux lavages, d’après vos relevés",
    Oxygen = "Oxygen that iron and manganese ask for"
        / "Oxígeno que piden hierro y manganeso"
        / "Oxygène que demandent fer et manganèse",
    ChlorineDemand = "Chlorine that they ask for, as Cl₂"
        / "Cloro que piden, como Cl₂"
        / "Chlore qu’ils demandent, en Cl₂",
    Permanganate = "Permanganate that they ask for" / "Permanganato que piden" / "Permanganate qu’ils demandent",
}}

/// What a figure is called.
#[must_use]
pub const fn life_name(name: LifeName) -> LifeLabel {
    match name {
        LifeName::ToSaturation => LifeLabel::ToSaturation,
        LifeName::Calcite => LifeLabel::Calcite,
        LifeName::Magnesia => LifeLabel::Magnesia,
        LifeName::Dioxide => LifeLabel::Dioxide,
        LifeName::IndexBefore => LifeLabel::IndexBefore,
        LifeName::HardnessBefore => LifeLabel::HardnessBefore,
        LifeName::PhAfter => LifeLabel::PhAfter,
        LifeName::PhSlowed => LifeLabel::PhSlowed,
        LifeName::PhPeak => LifeLabel::PhPeak,
        LifeName::PhStanding => LifeLabel::PhStanding,
        LifeName::HardnessAfter => LifeLabel::HardnessAfter,
        LifeName::AlkalinityAfter => LifeLabel::AlkalinityAfter,
        LifeName::IndexAfter => LifeLabel::IndexAfter,
        LifeName::CalciteMonth => LifeLabel::CalciteMonth,
        LifeName::MagnesiaMonth => LifeLabel::MagnesiaMonth,
        LifeName::RefillDepth => LifeLabel::RefillDepth,
        LifeName::HalfTime => LifeLabel::HalfTime,
        LifeName::ChlorineLeft => LifeLabel::ChlorineLeft,
        LifeName::ContactTimeNeeded => LifeLabel::ContactTimeNeeded,
        LifeName::CarbonCapacity => LifeLabel::CarbonCapacity,
        LifeName::BedVolumes => LifeLabel::BedVolumes,
        LifeName::CarbonUse => LifeLabel::CarbonUse,
        LifeName::TimePerMetre => LifeLabel::TimePerMetre,
        LifeName::CriticalDepth => LifeLabel::CriticalDepth,
        LifeName::ServiceTime => LifeLabel::ServiceTime,
        LifeName::ResinCapacity => LifeLabel::ResinCapacity,
        LifeName::CompensatedHardness => LifeLabel::CompensatedHardness,
        LifeName::Water => LifeLabel::Water,
        LifeName::Regenerations => LifeLabel::Regenerations,
        LifeName::Salt => LifeLabel::Salt,
        LifeName::BrineLow => LifeLabel::BrineLow,
        LifeName::BrineHigh => LifeLabel::BrineHigh,
        LifeName::RinseLow => LifeLabel::RinseLow,
        LifeName::RinseHigh => LifeLabel::RinseHigh,
        LifeName::RunLength => LifeLabel::RunLength,
        LifeName::RunByDrop => LifeLabel::RunByDrop,
        LifeName::Oxygen => LifeLabel::Oxygen,
        LifeName::ChlorineDemand => LifeLabel::ChlorineDemand,
        LifeName::Permanganate => LifeLabel::Permanganate,
    }
}

/// What ends a life.
#[must_use]
pub const fn limited_by(limit: LimitedBy) -> LifeLabel {
    match limit {
        LimitedBy::Dissolving => LifeLabel::LimitDissolving,
        LimitedBy::Capacity => LifeLabel::LimitCapacity,
        LimitedBy::Readings => LifeLabel::LimitReadings,
        LimitedBy::Age => LifeLabel::LimitAge,
    }
}
