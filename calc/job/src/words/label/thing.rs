//! Names of things on the shelf, of packs, of units.

use bedwright_calc::quantity::{Basis, Mark};
use bedwright_calc::supply::Fitting;

names! {
/// What a part is called.
PartName of Fitting {
    RiserPipe = "Riser pipe" / "Tubo central" / "Tube central",
    BottomCollector = "Bottom collector for riser"
        / "Colector inferior para tubo central"
        / "Collecteur inférieur pour tube central",
    UpperCollector = "Upper collector for riser"
        / "Colector superior para tubo central"
        / "Collecteur supérieur pour tube central",
    RiserCap = "Riser cap for loading"
        / "Tapón del tubo central para la carga"
        / "Bouchon du tube central pour le chargement",
    OpeningORing = "Tank O-ring" / "Junta tórica del recipiente" / "Joint torique de la cuve",
    SiliconeGrease = "Silicone grease for O-rings"
        / "Grasa de silicona para juntas tóricas"
        / "Graisse silicone pour joints toriques",
    TagLabel = "Label for the tag" / "Etiqueta de identificación" / "Étiquette du repère",
    PressureVessel = "Vessel" / "Recipiente" / "Cuve",
    ControlValve = "Control valve" / "Válvula de control" / "Vanne de commande",
    PlainHead = "In-and-out head without a valve"
        / "Cabezal de entrada y salida sin válvula"
        / "Tête d’entrée et de sortie sans vanne",
    FacePiping = "Face piping with its valves"
        / "Tubería frontal con sus válvulas"
        / "Tuyauterie de façade avec ses vannes",
    LoadingFunnel = "Loading funnel" / "Embudo de carga" / "Entonnoir de chargement",
    BottomORing = "O-ring for the bottom opening"
        / "Junta tórica para la abertura inferior"
        / "Joint torique pour l’ouverture basse",
    FlangeGasket = "Flange gasket" / "Junta de brida" / "Joint de bride",
    ManwayGasket = "Manway gasket" / "Junta de boca de hombre" / "Joint de trou d’homme",
    Bypass = "Bypass with shut-off valves" / "Derivación con válvulas de cierre" / "Bipasse avec vannes d’arrêt",
    DrainLineFlowControl = "Drain line flow control"
        / "Regulador de caudal del desagüe"
        / "Régulateur de débit à l’égout",
    AirGapFitting = "Air-gap fitting for the drain"
        / "Pieza de separación de aire para el desagüe"
        / "Raccord à garde d’air pour l’égout",
    BrineTank = "Brine tank with its valve" / "Depósito de salmuera con su válvula" / "Bac à saumure avec sa vanne",
    FirstSalt = "First fill of salt" / "Primera carga de sal" / "Première charge de sel",
    VacuumBreaker = "Vacuum breaker" / "Rompedor de vacío" / "Casse-vide",
    Jacket = "Jacket against condensation" / "Funda contra la condensación" / "Housse contre la condensation",
    SampleTap = "Sample tap" / "Grifo de muestras" / "Robinet de prélèvement",
    PressureGauge = "Pressure gauge" / "Manómetro" / "Manomètre",
    PreFilter = "Pre-filter" / "Prefiltro" / "Préfiltre",
    ProtectiveEquipment = "Protective equipment, by local code"
        / "Equipo de protección, según la norma local"
        / "Équipement de protection, selon le règlement local",
    Disinfectant = "Disinfectant" / "Desinfectante" / "Désinfectant",
    TemporaryWater = "Temporary water connection" / "Conexión de agua provisional" / "Raccordement d’eau provisoire",
    SpentMediaDrum = "Drum for spent media" / "Bidón para medio agotado" / "Fût pour média usé",
    WasteDetermination = "Waste determination for spent media"
        / "Determinación de residuo del medio agotado"
        / "Caractérisation du déchet pour le média usé",
}}

labels! {
/// What a material of the catalogue is called.
MaterialName {
    GravelSixteenth = "Gravel 1/16 × 1/8 in" / "Grava 1/16 × 1/8 in" / "Gravier 1/16 × 1/8 in",
    GravelEighth = "Gravel 1/8 × 1/4 in" / "Grava 1/8 × 1/4 in" / "Gravier 1/8 × 1/4 in",
    GravelQuarter = "Gravel 1/4 × 1/2 in" / "Grava 1/4 × 1/2 in" / "Gravier 1/4 × 1/2 in",
    GravelHalf = "Gravel 1/2 × 3/4 in" / "Grava 1/2 × 3/4 in" / "Gravier 1/2 × 3/4 in",
    GravelThreeQuarters = "Gravel 3/4 × 1 in" / "Grava 3/4 × 1 in" / "Gravier 3/4 × 1 in",
    GravelWide = "Gravel 3/4 × 1 1/2 in" / "Grava 3/4 × 1 1/2 in" / "Gravier 3/4 × 1 1/2 in",
    GarnetCoarse = "Coarse garnet 8×16" / "Granate grueso 8×16" / "Grenat grossier 8×16",
    Sand = "Silica sand 20×30" / "Arena de sílice 20×30" / "Sable siliceux 20×30",
    FilterSand = "Filter sand 0.45–0.55 mm" / "Arena filtrante 0,45–0,55 mm" / "Sable filtrant 0,45–0,55 mm",
    Anthracite = "Anthracite 0.8–1.2 mm" / "Antracita 0,8–1,2 mm" / "Anthracite 0,8–1,2 mm",
    Garnet = "Garnet 30×60" / "Granate 30×60" / "Grenat 30×60",
    Ilmenite = "Ilmenite, fine" / "Ilmenita fina" / "Ilménite fine",
    Coconut8 = "Coconut carbon 8×30" / "Carbón de coco 8×30" / "Charbon de coco 8×30",
    Coconut12 = "Coconut carbon 12×40" / "Carbón de coco 12×40" / "Charbon de coco 12×40",
    Coconut20 = "Coconut carbon 20×50" / "Carbón de coco 20×50" / "Charbon de coco 20×50",
    Bituminous8 = "Bituminous carbon 8×30" / "Carbón bituminoso 8×30" / "Charbon bitumineux 8×30",
    Bituminous12 = "Bituminous carbon 12×40" / "Carbón bituminoso 12×40" / "Charbon bitumineux 12×40",
    Calcite = "Calcite 16×40" / "Calcita 16×40" / "Calcite 16×40",
    Magnesia = "Magnesia 6×16" / "Magnesia 6×16" / "Magnésie 6×16",
    ResinCation = "Softening resin, cation" / "Resina ablandadora, catiónica" / "Résine adoucissante, cationique",
    ResinAnion = "Anion resin" / "Resina aniónica" / "Résine anionique",
    SandCoated = "Manganese-coated sand" / "Arena recubierta de manganeso" / "Sable enrobé de manganèse",
    Manganese20 = "Manganese dioxide 20×40" / "Dióxido de manganeso 20×40" / "Dioxyde de manganèse 20×40",
    Manganese8 = "Manganese dioxide 8×20" / "Dióxido de manganeso 8×20" / "Dioxyde de manganèse 8×20",
    Zeolite = "Zeolite 14×40" / "Zeolita 14×40" / "Zéolithe 14×40",
    Alumina14 = "Activated alumina 14×28" / "Alúmina activada 14×28" / "Alumine activée 14×28",
    Alumina28 = "Activated alumina 28×48" / "Alúmina activada 28×48" / "Alumine activée 28×48",
    Glass = "Crushed glass 0.4–0.8 mm" / "Vidrio triturado 0,4–0,8 mm" / "Verre broyé 0,4–0,8 mm",
}}

labels! {
/// What packs are called, one and many; how parts are counted.
CountName {
    Bag = "bag" / "bolsa" / "sac",
    Bags = "bags" / "bolsas" / "sacs",
    Sack = "sack" / "saco" / "sac",
    Sacks = "sacks" / "sacos" / "sacs",
    Drum = "drum" / "bidón" / "fût",
    Drums = "drums" / "bidones" / "fûts",
    BulkBag = "bulk bag" / "saca" / "grand sac",
    BulkBags = "bulk bags" / "sacas" / "grands sacs",
    Piece = "piece" / "pieza" / "pièce",
    Pieces = "pieces" / "piezas" / "pièces",
    Each = "each" / "unidad" / "unité",
}}

labels! {
/// How things stand beside each other: a unit whose sign is a word, what joins a name and a value.
Joint {
    Colon = ": " / ": " / " : ",
    SquareFoot = "sq ft" / "ft²" / "ft²",
    CubicFoot = "cu ft" / "ft³" / "ft³",
    PoundPerCubicFoot = "lb/cu ft" / "lb/ft³" / "lb/ft³",
    CubicInch = "cu in" / "in³" / "in³",
    GrainPerCubicFoot = "gr/cu ft CaCO₃" / "gr/ft³ CaCO₃" / "gr/ft³ CaCO₃",
    CutTo = "cut to {length}" / "cortado a {length}" / "coupé à {length}",
    CutOnSite = "cut on site, about {length}"
        / "cortado en obra, unos {length}"
        / "coupé sur place, environ {length}",
}}

names! {
/// How good something is.
MarkName of Mark {
    Fine = "fine" / "bien" / "bon",
    SetOnSite = "set on site" / "ajustar en obra" / "à régler sur place",
    Caution = "caution" / "precaución" / "attention",
    Stop = "stop" / "alto" / "stop",
}}

names! {
/// What a value rests on.
BasisName of Basis {
    Measured = "measured" / "medido" / "mesuré",
    Typed = "typed" / "escrito" / "saisi",
    Catalogue = "catalogue" / "catálogo" / "catalogue",
    Assumed = "assumed" / "supuesto" / "supposé",
}}

labels! {
/// Where a value comes from, where no document says it.
SourceText {
    Practice = "common practice" / "práctica habitual" / "pratique courante",
    Memory = "from memory" / "de memoria" / "de mémoire",
    Typed = "typed by a person" / "escrito por una persona" / "saisi par une personne",
    Arithmetic = "arithmetic" / "aritmética" / "arithmétique",
    OwnRule = "our own rule: between the low model and the high one; half way until something was seen"
        / "regla propia: entre el modelo bajo y el alto; a medio camino hasta que se vea algo"
        / "notre propre règle : entre le modèle bas et le haut ; à mi-chemin tant que rien n’a été vu",
}}
