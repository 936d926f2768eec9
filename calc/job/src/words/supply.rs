//! Texts of packs, pick list, staging and labels.

use bedwright_calc::quantity::Length;
use bedwright_calc::supply::lifting::Grip;
use bedwright_calc::supply::packs::Chosen;

use super::Manner;
use super::label::measure::ChosenText;
use super::label::{labels, names};
use crate::field::SupplyField;
use crate::papers::Tool;
use crate::picked::Step;

labels! {
/// A text of packs, pick list, staging or labels.
SupplyLabel {
    Packs = "Packs" / "Envases" / "Conditionnements",
    PacksHint = "Which packs each material is bought in. With the cost of every pack offered the cheapest combination is taken, exactly; without, the one that leaves least."
        / "En qué envases se compra cada material. Con el coste de cada envase ofrecido se toma la combinación más barata, exactamente; sin él, la que menos deja."
        / "Dans quels conditionnements chaque matériau est acheté. Avec le coût de chaque conditionnement proposé, la combinaison la moins chère est prise, exactement ; sans lui, celle qui laisse le moins.",
    Pack = "Pack" / "Envase" / "Conditionnement",
    Offered = "Offered" / "Ofrecido" / "Proposé",
    Cost = "Cost of one" / "Coste de uno" / "Coût unitaire",
    NoCost = "not known" / "desconocido" / "inconnu",
    Alone = "Alone it would take" / "Solo con él harían falta" / "Seul, il en faudrait",
    Taken = "Taken" / "Tomado" / "Pris",
    LockAt = "Always take" / "Tomar siempre" / "Toujours prendre",
    Opened = "Left in opened packs" / "Queda en envases abiertos" / "Reste dans des conditionnements ouverts",
    OpenedHint = "used up first" / "se gasta primero" / "utilisé d’abord",
    PerVessel = "Whole packs for every vessel"
        / "Envases enteros para cada recipiente"
        / "Conditionnements entiers pour chaque cuve",
    PooledOver = "Shared over the job" / "Compartido en todo el trabajo" / "Partagé sur tout le chantier",
    EachOwn = "Whole packs for every vessel would take"
        / "Con envases enteros para cada recipiente harían falta"
        / "Avec des conditionnements entiers pour chaque cuve il faudrait",
    Fewer = "fewer" / "menos" / "de moins",
    LeftOver = "left over" / "de sobra" / "de reste",
    Short = "short" / "de menos" / "de moins",
    ShortBed = "bed a little shorter: a near miss"
        / "lecho algo más bajo: por muy poco"
        / "lit un peu plus bas : à très peu près",
    FromOpened = "from opened packs" / "de envases abiertos" / "de conditionnements ouverts",
    CutFromStock = "Pipe cut from stock"
        / "Tubo cortado de largos de venta"
        / "Tube coupé dans des longueurs vendues",
    StockHint = "as the pipe is sold" / "como se vende el tubo" / "comme le tube est vendu",
    NoRisers = "No riser is cut for this job."
        / "En este trabajo no se corta ningún tubo central."
        / "Aucun tube central n’est coupé pour ce chantier.",
    LengthsOf = "lengths of" / "largos de" / "longueurs de",
    LengthOf = "length of" / "largo de" / "longueur de",
    LeastProven = "the least there can be" / "lo mínimo que puede haber" / "le minimum possible",
    LeastUnknown = "at least" / "al menos" / "au moins",
    AboutCut = "Some lengths rest on something assumed: cut those on site."
        / "Algunos largos se apoyan en algo supuesto: córtelos en obra."
        / "Certaines longueurs reposent sur une supposition : coupez-les sur place.",
    Lifting = "Lifting" / "Levantar" / "Levage",
    LiftingHint = "By the revised NIOSH lifting equation; seldom, for less than an hour, on a firm floor."
        / "Según la ecuación revisada de NIOSH; pocas veces, menos de una hora, sobre suelo firme."
        / "D’après l’équation révisée du NIOSH ; rarement, moins d’une heure, sur sol ferme.",
    MayLift = "One person may lift" / "Una persona puede levantar" / "Une personne peut lever",
    TimesLimit = "times that" / "veces eso" / "fois cela",
    TimesLiftable = "times what one person may lift"
        / "veces lo que puede levantar una persona"
        / "fois ce qu’une personne peut lever",
    TwoPeople = "two people, a lifting aid, or smaller packs"
        / "dos personas, una ayuda para levantar, o envases más pequeños"
        / "deux personnes, une aide au levage, ou des conditionnements plus petits",
    GripLabel = "Grip" / "Agarre" / "Prise",
    GripGood = "handles" / "asas" / "poignées",
    GripFair = "fingers under a firm edge" / "dedos bajo un borde firme" / "doigts sous un bord ferme",
    GripPoor = "a sack that sags" / "un saco que se dobla" / "un sac qui plie",
    Pallets = "Pallets" / "Palés" / "Palettes",
    Pallet = "Pallet" / "Palé" / "Palette",
    PalletsHint = "what truck, rack and pallet may bear"
        / "lo que aguantan camión, estantería y palé"
        / "ce que supportent camion, rayonnage et palette",
    OnPallets = "Pallets needed" / "Palés necesarios" / "Palettes nécessaires",
    StagingList = "Staging list" / "Lista de acopio" / "Liste de mise à disposition",
    StagingLetters = "ST" / "ST" / "ST",
    StagedBy = "Staged by, date" / "Acopiado por, fecha" / "Mis à disposition par, date",
    LoadingOrder = "Loading order" / "Orden de carga" / "Ordre de chargement",
    PourEach = "Into each" / "En cada uno" / "Dans chacune",
    Stage = "Stage here" / "Acopiar aquí" / "Mettre ici",
    SharedOn = "the rest goes to the next vessel"
        / "el resto va al siguiente recipiente"
        / "le reste va à la cuve suivante",
    Labels = "Labels" / "Etiquetas" / "Étiquettes",
    LabelsHint = "One for every vessel and one for every pallet, in plain print."
        / "Una por recipiente y una por palé, en letra sencilla."
        / "Une par cuve et une par palette, en caractères simples.",
    LabelSize = "Size of a label" / "Tamaño de una etiqueta" / "Taille d’une étiquette",
    LabelTooLarge = "No label of this size fits on the sheet."
        / "En la hoja no cabe ninguna etiqueta de este tamaño."
        / "Aucune étiquette de cette taille ne tient sur la feuille.",
    LabelTooSmall = "This size is too small for what stands on a label: at least 70 × 45 mm."
        / "Este tamaño es demasiado pequeño para lo que lleva una etiqueta: al menos 70 × 45 mm."
        / "Cette taille est trop petite pour ce que porte une étiquette : au moins 70 × 45 mm.",
    LabelsPerSheet = "labels on a sheet" / "etiquetas por hoja" / "étiquettes par feuille",
    QrRoom = "room for a code, 25 mm" / "sitio para un código, 25 mm" / "place pour un code, 25 mm",
    Medium = "Media, bottom first" / "Medio, primero el de abajo" / "Média, le plus bas d’abord",
    FilledOn = "Filled on" / "Cargado el" / "Rempli le",
    BaselineTape = "Tape reading as poured" / "Lectura de cinta recién vertido" / "Lecture au ruban tel que versé",
    DrainControl = "Drain line flow control" / "Regulador de caudal del desagüe" / "Régulateur de débit à l’égout",
    NextDue = "Next due" / "Próximo vencimiento" / "Prochaine échéance",
    Planned = "Planned" / "Planificado" / "Prévu",
    Weighs = "Weighs" / "Pesa" / "Pèse",
    Holds = "Holds" / "Contiene" / "Contient",
    SendAlong = "To send along" / "Para enviar junto" / "À envoyer avec",
    SafetySheet = "Safety data sheet" / "Ficha de datos de seguridad" / "Fiche de données de sécurité",
    Certificate = "Certificate of the lot; for drinking water its listing (NSF/ANSI/CAN 61 or what is asked for locally)"
        / "Certificado del lote; para agua potable, su registro (NSF/ANSI/CAN 61 o lo que se pida en el lugar)"
        / "Certificat du lot ; pour l’eau potable, son attestation (NSF/ANSI/CAN 61 ou ce qui est exigé sur place)",
    Tools = "Tools" / "Herramientas" / "Outils",
    Date = "Date on it" / "Su fecha" / "Sa date",
    Lot = "Lot" / "Lote" / "Lot",
    Instead = "Taken instead" / "Tomado en su lugar" / "Pris à la place",
    PickedCount = "Picked" / "Recogido" / "Prélevé",
    ShortBy = "Short by" / "Faltan" / "Il manque",
    ShortOrInstead = "Short, or something else" / "Falta algo, u otra cosa" / "Il en manque, ou autre chose",
    LockWrong = "Type a whole number of packs."
        / "Escriba un número entero de envases."
        / "Saisissez un nombre entier de conditionnements.",
    CountWrong = "Type a whole number, at most as many as are asked for."
        / "Escriba un número entero, como mucho lo que se pide."
        / "Saisissez un nombre entier, au plus ce qui est demandé.",
    StepDraft = "Draft" / "Borrador" / "Brouillon",
    StepPicked = "Picked" / "Recogido" / "Prélevé",
    StepStaged = "Staged" / "Acopiado" / "Mis à disposition",
    StepHandedOver = "Handed over" / "Entregado" / "Remis",
    Steps = "How far it is" / "Por dónde va" / "Où cela en est",
    StepBy = "Your name" / "Su nombre" / "Votre nom",
    StepName = "Type your name first: it stands beside the step."
        / "Escriba antes su nombre: figura junto al paso."
        / "Saisissez d’abord votre nom : il figure à côté de l’étape.",
    StepOpenLines = "lines have no tick and no count. Tick them, or type how many there were."
        / "líneas sin marca ni número. Márquelas, o escriba cuántos había."
        / "lignes sans coche ni nombre. Cochez-les, ou saisissez combien il y en avait.",
    StepBack = "Take back the last step" / "Retirar el último paso" / "Reprendre la dernière étape",
    StepBackHint = "Kept as a correction; nothing is erased."
        / "Se guarda como corrección; no se borra nada."
        / "Conservé comme correction ; rien n’est effacé.",
    Frozen = "What was picked stands here as it was. Take the step back to change it."
        / "Lo recogido está aquí como estaba. Retire el paso para cambiarlo."
        / "Ce qui a été prélevé est ici tel quel. Reprenez l’étape pour le modifier.",
    ChangedSince = "The bill has changed since it was picked:"
        / "La lista de materiales ha cambiado desde la recogida:"
        / "La nomenclature a changé depuis le prélèvement :",
    WasPicked = "picked for" / "recogido para" / "prélevé pour",
    NowAsked = "now asked" / "ahora se pide" / "maintenant demandé",
    WhichPaper = "Which paper" / "Qué documento" / "Quel document",
    NoCode = "no bar code: it holds letters that Code 128 hasn't"
        / "sin código de barras: tiene letras que Code 128 no tiene"
        / "sans code à barres : il a des lettres que Code 128 n’a pas",
}}

impl Manner {
    /// What a cut plan shows.
    #[must_use]
    pub fn cut_title(&self) -> &'static str {
        self.label(ChosenText::CutTitle)
    }

    /// What is left of a stock length.
    #[must_use]
    pub fn cut_rest(&self, rest: Length) -> String {
        self.sentence(ChosenText::CutRest, &[("length", &self.tape(rest))])
    }

    /// What an entry of supply is called.
    #[must_use]
    pub fn supply_field(&self, field: SupplyField) -> &'static str {
        self.label(field)
    }

    /// Why packs were taken, in a sentence.
    #[must_use]
    pub fn chosen(&self, chosen: Chosen) -> String {
        let text = match chosen {
            Chosen::NothingToBuy => ChosenText::NothingToBuy,
            Chosen::NoChoice => ChosenText::NoChoice,
            Chosen::AsPlanned => ChosenText::AsPlanned,
            Chosen::LeastCost => ChosenText::LeastCost,
            Chosen::LeastLeftOver { unpriced } => {
                let text = if unpriced == 1 { ChosenText::LeastLeftOne } else { ChosenText::LeastLeft };
                return self.sentence(text, &[("unpriced", &unpriced.to_string())]);
            }
        };
        self.label(text).to_owned()
    }
}

/// What a grip is called.
#[must_use]
pub const fn grip(grip: Grip) -> SupplyLabel {
    match grip {
        Grip::Good => SupplyLabel::GripGood,
        Grip::Fair => SupplyLabel::GripFair,
        Grip::Poor => SupplyLabel::GripPoor,
    }
}

/// What a step of picking is called.
#[must_use]
pub const fn step(step: Step) -> SupplyLabel {
    match step {
        Step::Picked => SupplyLabel::StepPicked,
        Step::Staged => SupplyLabel::StepStaged,
        Step::HandedOver => SupplyLabel::StepHandedOver,
    }
}

names! {
/// What a tool is called.
ToolName of Tool {
    Tape = "Tape measure, weighted end" / "Cinta métrica con peso en el extremo" / "Mètre ruban lesté",
    Light = "Lamp to look inside" / "Lámpara para mirar dentro" / "Lampe pour regarder à l’intérieur",
    Level = "Spirit level" / "Nivel de burbuja" / "Niveau à bulle",
    Marker = "Marker that holds on wet surfaces"
        / "Marcador que pinta sobre mojado"
        / "Marqueur qui tient sur le mouillé",
    Bucket = "Bucket of known volume, and a watch"
        / "Cubo de volumen conocido y reloj"
        / "Seau de volume connu et montre",
    Saw = "Fine saw and deburring tool for the riser"
        / "Sierra fina y desbarbador para el tubo central"
        / "Scie fine et ébavureur pour le tube central",
    Vacuum = "Wet vacuum or eductor, and bags for what comes out"
        / "Aspiradora de líquidos o eyector, y sacos para lo que sale"
        / "Aspirateur à eau ou hydro-éjecteur, et sacs pour ce qui sort",
    Hoses = "Hoses to drain, with an air gap"
        / "Mangueras al desagüe, con separación de aire"
        / "Tuyaux vers l’égout, avec garde d’air",
    TestKit = "Test kit for the outlet" / "Equipo de análisis para la salida" / "Trousse d’analyse pour la sortie",
    LiftingAid = "Lifting aid, or a second person"
        / "Ayuda para levantar, o una segunda persona"
        / "Aide au levage, ou une deuxième personne",
}}
