//! The top bar and its menu.

labels! {
/// A fixed text of the top bar.
TopLabel {
    Menu = "Menu",
    Papers = "Papers",
    ThisDevice = "This device",
    SurveySheetAbout = "to measure by, blank or filled",
    CalculationAbout = "every figure with its formula and source",
    BillAbout = "what the job takes, per vessel and pooled",
    QuoteAbout = "what is offered, for how much, and on what it rests",
    PacksAbout = "which packs each material is bought in",
    PickListAbout = "what the warehouse pulls, in the order of the shelf",
    LabelsAbout = "for every vessel and pallet",
    LoadingAbout = "step by step for each vessel: removal, loading, what was signed",
}
}
