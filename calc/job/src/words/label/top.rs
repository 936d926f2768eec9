//! The top bar and its menu.

labels! {
/// A fixed text of the top bar.
TopLabel {
    Menu = "Menu" / "Menú" / "Menu",
    Papers = "Papers" / "Documentos" / "Documents",
    ThisDevice = "This device" / "Este dispositivo" / "Cet appareil",
    SurveySheetAbout = "to measure by, blank or filled"
        / "para medir con ella, en blanco o rellena"
        / "pour mesurer, vierge ou remplie",
    CalculationAbout = "every figure with its formula and source"
        / "cada valor con su fórmula y su fuente"
        / "chaque valeur avec sa formule et sa source",
    BillAbout = "what the job takes, per vessel and pooled"
        / "lo que lleva el trabajo, por recipiente y en común"
        / "ce que prend le chantier, par cuve et en commun",
    QuoteAbout = "what is offered, for how much, and on what it rests"
        / "qué se ofrece, por cuánto y en qué se apoya"
        / "ce qui est proposé, pour combien, et sur quoi cela repose",
    PacksAbout = "which packs each material is bought in"
        / "en qué envases se compra cada material"
        / "dans quels conditionnements chaque matériau est acheté",
    PickListAbout = "what the warehouse pulls, in the order of the shelf"
        / "lo que saca el almacén, por orden de estante"
        / "ce que sort le magasin, dans l’ordre des rayons",
    LabelsAbout = "for every vessel and pallet" / "para cada recipiente y palé" / "pour chaque cuve et palette",
    LoadingAbout = "step by step for each vessel: removal, loading, what was signed"
        / "paso a paso para cada recipiente: vaciado, carga, lo firmado"
        / "étape par étape pour chaque cuve : vidange, chargement, ce qui a été signé",
}
}
