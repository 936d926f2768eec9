//! Texts of packs, pick list, staging and labels.

use bedwright_calc::quantity::Length;
use bedwright_calc::supply::lifting::Grip;
use bedwright_calc::supply::packs::Chosen;

use super::Manner;
use super::label::{labels, names};
use crate::field::SupplyField;
use crate::papers::Tool;
use crate::picked::Step;

labels! {
/// A text of packs, pick list, staging or labels.
SupplyLabel {
    Packs = "Packs",
    PacksHint = "Which packs each material is bought in. With the cost of every pack offered the cheapest combination is taken, exactly; without, the one that leaves least.",
    Pack = "Pack",
    Offered = "Offered",
    Cost = "Cost of one",
    NoCost = "not known",
    Alone = "Alone it would take",
    Taken = "Taken",
    LockAt = "Always take",
    Opened = "Left in opened packs",
    OpenedHint = "used up first",
    PerVessel = "Whole packs for every vessel",
    PooledOver = "Shared over the job",
    EachOwn = "Whole packs for every vessel would take",
    Fewer = "fewer",
    LeftOver = "left over",
    Short = "short",
    ShortBed = "bed a little shorter: a near miss",
    FromOpened = "from opened packs",
    CutFromStock = "Pipe cut from stock",
    StockHint = "as the pipe is sold",
    NoRisers = "No riser is cut for this job.",
    LengthsOf = "lengths of",
    LengthOf = "length of",
    LeastProven = "the least there can be",
    LeastUnknown = "at least",
    AboutCut = "Some lengths rest on something assumed: cut those on site.",
    Lifting = "Lifting",
    LiftingHint = "By the revised NIOSH lifting equation; seldom, for less than an hour, on a firm floor.",
    MayLift = "One person may lift",
    TimesLimit = "times that",
    TimesLiftable = "times what one person may lift",
    TwoPeople = "two people, a lifting aid, or smaller packs",
    GripLabel = "Grip",
    GripGood = "handles",
    GripFair = "fingers under a firm edge",
    GripPoor = "a sack that sags",
    Pallets = "Pallets",
    Pallet = "Pallet",
    PalletsHint = "what truck, rack and pallet may bear",
    OnPallets = "Pallets needed",
    StagingList = "Staging list",
    StagingLetters = "ST",
    StagedBy = "Staged by, date",
    LoadingOrder = "Loading order",
    PourEach = "Into each",
    Stage = "Stage here",
    SharedOn = "the rest goes to the next vessel",
    Labels = "Labels",
    LabelsHint = "One for every vessel and one for every pallet, in plain print.",
    LabelSize = "Size of a label",
    LabelTooLarge = "No label of this size fits on the sheet.",
    LabelTooSmall = "This size is too small for what stands on a label: at least 70 × 45 mm.",
    LabelsPerSheet = "labels on a sheet",
    QrRoom = "room for a code, 25 mm",
    Medium = "Media, bottom first",
    FilledOn = "Filled on",
    BaselineTape = "Tape reading as poured",
    DrainControl = "Drain line flow control",
    NextDue = "Next due",
    Planned = "Planned",
    Weighs = "Weighs",
    Holds = "Holds",
    SendAlong = "To send along",
    SafetySheet = "Safety data sheet",
    Certificate = "Certificate of the lot; for drinking water its listing (NSF/ANSI/CAN 61 or what is asked for locally)",
    Tools = "Tools",
    Date = "Date on it",
    Lot = "Lot",
    Instead = "Taken instead",
    PickedCount = "Picked",
    ShortBy = "Short by",
    ShortOrInstead = "Short, or something else",
    CountWrong = "Type a whole number, at most as many as are asked for.",
    StepDraft = "Draft",
    StepPicked = "Picked",
    StepStaged = "Staged",
    StepHandedOver = "Handed over",
    Steps = "How far it is",
    StepBy = "Your name",
    StepName = "Type your name first: it stands beside the step.",
    StepOpenLines = "lines have no tick and no count. Tick them, or type how many there were.",
    StepBack = "Take back the last step",
    StepBackHint = "Kept as a correction; nothing is erased.",
    Frozen = "What was picked stands here as it was. Take the step back to change it.",
    ChangedSince = "The bill has changed since it was picked:",
    WasPicked = "picked for",
    NowAsked = "now asked",
    WhichPaper = "Which paper",
    NoCode = "no bar code: it holds letters that Code 128 hasn't",
}}

impl Manner {
    /// What a cut plan shows.
    #[must_use]
    pub fn cut_title(&self) -> &'static str {
        "How the pipe is cut"
    }

    /// What is left of a stock length.
    #[must_use]
    pub fn cut_rest(&self, rest: Length) -> String {
        format!("{} left", self.tape(rest))
    }

    /// What an entry of supply is called.
    #[must_use]
    pub fn supply_field(&self, field: SupplyField) -> &'static str {
        match field {
            SupplyField::StockLength => "Stock length",
            SupplyField::Kerf => "Width of the saw's cut",
            SupplyField::PalletMass => "A pallet bears",
            SupplyField::PalletPacks => "Packs on a pallet",
            SupplyField::LiftReach => "Reach out to the hands",
            SupplyField::LiftHeight => "Hands above the floor at first",
            SupplyField::LiftTravel => "Up or down by",
            SupplyField::LiftTwist => "Twist to the side, degrees",
            SupplyField::LabelWidth => "Label width",
            SupplyField::LabelHeight => "Label height",
        }
    }

    /// Why packs were taken, in a sentence.
    #[must_use]
    pub fn chosen(&self, chosen: Chosen) -> String {
        match chosen {
            Chosen::NothingToBuy => "Nothing to buy.".to_owned(),
            Chosen::NoChoice => "No choice: one pack is offered, or every number is set.".to_owned(),
            Chosen::AsPlanned => "As the layers were planned: no cost is known.".to_owned(),
            Chosen::LeastCost => {
                "Costs least of all combinations; of equal costs it leaves least, then is fewest packs.".to_owned()
            }
            Chosen::LeastLeftOver { unpriced } => format!(
                "Leaves least. Costs can't be compared: {unpriced} of the packs offered {} no cost.",
                if unpriced == 1 { "has" } else { "have" }
            ),
        }
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
    Marker = "Marker that holds on wet surfaces" / "Marcador que pinta sobre mojado" / "Marqueur qui tient sur le mouillé",
    Bucket = "Bucket of known volume, and a watch" / "Cubo de volumen conocido y reloj" / "Seau de volume connu et montre",
    Saw = "Fine saw and deburring tool for the riser" / "Sierra fina y desbarbador para el tubo central" / "Scie fine et ébavureur pour le tube central",
    Vacuum = "Wet vacuum or eductor, and bags for what comes out" / "Aspiradora de líquidos o eyector, y sacos para lo que sale" / "Aspirateur à eau ou hydro-éjecteur, et sacs pour ce qui sort",
    Hoses = "Hoses to drain, with an air gap" / "Mangueras al desagüe, con separación de aire" / "Tuyaux vers l’égout, avec garde d’air",
    TestKit = "Test kit for the outlet" / "Equipo de análisis para la salida" / "Trousse d’analyse pour la sortie",
    LiftingAid = "Lifting aid, or a second person" / "Ayuda para levantar, o una segunda persona" / "Aide au levage, ou une deuxième personne",
}}
