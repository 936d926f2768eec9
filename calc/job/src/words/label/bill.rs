//! Fixed texts of the bill of materials: lines left out, spent media, prices taken over.

labels! {
/// A fixed text of the bill's screen and sheet.
BillLabel {
    LeaveTitle = "Leave a line out",
    LeaveAbout = "A line that isn't wanted here is left out with its reason. It stays on the bill's foot and can be taken in again.",
    Line = "Line",
    Reason = "Reason",
    ReasonHint = "the customer has one, local code asks for another…",
    ReasonMissing = "Say why, in a few words.",
    Leave = "Leave it out",
    Chosen = "Left out by choice",
    TakeIn = "Take in again",
    SpentTitle = "Spent media",
    SpentAbout = "What comes out is looser than the bed. Drums are counted from what will be put in, and shared by the vessels.",
    Bulking = "Bulking",
    BulkingHint = "volume in a drum over volume in the bed",
    Drum = "A drum holds",
    DrumHint = "filled as far as it may be lifted and closed",
    Prices = "Prices",
    Differ = "prices of this job are others in the list now.",
    DiffersOne = "price of this job is another in the list now.",
    TakeOver = "Take the list's prices over",
}
}
