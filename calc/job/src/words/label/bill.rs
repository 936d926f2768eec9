//! Fixed texts of the bill of materials: lines left out, spent media, prices taken over.

labels! {
/// A fixed text of the bill's screen and sheet.
BillLabel {
    LeaveTitle = "Leave a line out" / "Dejar fuera una línea" / "Écarter une ligne",
    LeaveAbout = "A line that isn't wanted here is left out with its reason. It stays on the bill's foot and can be taken in again."
        / "Una línea que aquí no se quiere se deja fuera con su motivo. Queda al pie de la lista y se puede volver a incluir."
        / "Une ligne dont on ne veut pas ici est écartée avec sa raison. Elle reste au pied de la nomenclature et peut être reprise.",
    Line = "Line" / "Línea" / "Ligne",
    Reason = "Reason" / "Motivo" / "Raison",
    ReasonHint = "the customer has one, local code asks for another…"
        / "el cliente ya tiene una, la norma local pide otra…"
        / "le client en a une, le règlement local en demande une autre…",
    ReasonMissing = "Say why, in a few words."
        / "Diga por qué, en pocas palabras."
        / "Dites pourquoi, en quelques mots.",
    Leave = "Leave it out" / "Dejarla fuera" / "L’écarter",
    Chosen = "Left out by choice" / "Dejado fuera a propósito" / "Écarté par choix",
    TakeIn = "Take in again" / "Volver a incluir" / "Reprendre",
    SpentTitle = "Spent media" / "Medio agotado" / "Média usé",
    SpentAbout = "What comes out is looser than the bed. Drums are counted from what will be put in, and shared by the vessels."
        / "Lo que sale está más suelto que el lecho. Los bidones se cuentan por lo que se va a meter, y los recipientes los comparten."
        / "Ce qui sort est plus lâche que le lit. Les fûts sont comptés d’après ce qui sera mis, et partagés entre les cuves.",
    Bulking = "Bulking" / "Esponjamiento" / "Foisonnement",
    BulkingHint = "volume in a drum over volume in the bed"
        / "volumen en el bidón entre volumen en el lecho"
        / "volume dans le fût sur volume dans le lit",
    Drum = "A drum holds" / "En un bidón caben" / "Un fût contient",
    DrumHint = "filled as far as it may be lifted and closed"
        / "lleno hasta donde se pueda levantar y cerrar"
        / "rempli autant qu’on peut le lever et le fermer",
    Prices = "Prices" / "Precios" / "Prix",
    Differ = "prices of this job are others in the list now."
        / "precios de este trabajo son ahora otros en la lista."
        / "prix de ce chantier sont maintenant autres dans la liste.",
    DiffersOne = "price of this job is another in the list now."
        / "precio de este trabajo es ahora otro en la lista."
        / "prix de ce chantier est maintenant autre dans la liste.",
    TakeOver = "Take the list's prices over" / "Tomar los precios de la lista" / "Reprendre les prix de la liste",
}
}
