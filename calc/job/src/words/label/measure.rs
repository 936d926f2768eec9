//! Short patterns: times, vessels together, entries of supply, sums of a year.

use crate::field::SupplyField;

labels! {
/// How long.
TimeText {
    Years = "{number} years" / "{number} años" / "{number} ans",
    Months = "{number} months" / "{number} meses" / "{number} mois",
    Days = "{number} days" / "{number} días" / "{number} jours",
    Hours = "{number} h" / "{number} h" / "{number} h",
    Minutes = "{number} min" / "{number} min" / "{number} min",
}}

labels! {
/// How a search puts what it found.
FoundText {
    One = "one vessel" / "un recipiente" / "une cuve",
    Twin = "two, in turn" / "dos, por turnos" / "deux, à tour de rôle",
    LeadLag = "two, one after the other" / "dos, en serie" / "deux, en série",
    SideBySide = "{count} side by side" / "{count} en paralelo" / "{count} en parallèle",
    Short = "{what}: {share} short" / "{what}: falta {share}" / "{what} : il manque {share}",
    Spare = "{what}: {share} to spare" / "{what}: sobra {share}" / "{what} : {share} de marge",
    Times = "{what}: {times} times what is asked"
        / "{what}: {times} veces lo que se pide"
        / "{what} : {times} fois ce qui est demandé",
}}

labels! {
/// What a quote says of a year.
YearText {
    Hour = "h" / "h" / "h",
    WashWater = "{volume} of wash water a year: {flow} for {minutes} min, {washes} times."
        / "{volume} de agua de lavado al año: {flow} durante {minutes} min, {washes} veces."
        / "{volume} d’eau de lavage par an : {flow} pendant {minutes} min, {washes} fois.",
    WashWaterOfMany = "{volume} of wash water a year: {flow} for {minutes} min, {washes} times, {vessels} vessels."
        / "{volume} de agua de lavado al año: {flow} durante {minutes} min, {washes} veces, {vessels} recipientes."
        / "{volume} d’eau de lavage par an : {flow} pendant {minutes} min, {washes} fois, {vessels} cuves.",
    Salt = "{mass} of salt a year, as typed; not worked out from the resin."
        / "{mass} de sal al año, como se escribió; no calculada a partir de la resina."
        / "{mass} de sel par an, comme saisi ; non calculé à partir de la résine.",
}}

names! {
/// What an entry of supply is called.
SupplyName of SupplyField {
    StockLength = "Stock length" / "Largo de venta" / "Longueur vendue",
    Kerf = "Width of the saw's cut" / "Ancho del corte de sierra" / "Largeur du trait de scie",
    PalletMass = "A pallet bears" / "Un palé aguanta" / "Une palette supporte",
    PalletPacks = "Packs on a pallet" / "Envases en un palé" / "Conditionnements sur une palette",
    LiftReach = "Reach out to the hands" / "Alcance hasta las manos" / "Portée jusqu’aux mains",
    LiftHeight = "Hands above the floor at first"
        / "Manos sobre el suelo al principio"
        / "Mains au-dessus du sol au départ",
    LiftTravel = "Up or down by" / "Arriba o abajo" / "Vers le haut ou le bas de",
    LiftTwist = "Twist to the side, degrees" / "Giro hacia el lado, grados" / "Torsion sur le côté, degrés",
    LabelWidth = "Label width" / "Ancho de la etiqueta" / "Largeur de l’étiquette",
    LabelHeight = "Label height" / "Alto de la etiqueta" / "Hauteur de l’étiquette",
}}

labels! {
/// How pipe is cut, and why packs were taken.
ChosenText {
    CutTitle = "How the pipe is cut" / "Cómo se corta el tubo" / "Comment le tube est coupé",
    CutRest = "{length} left" / "sobran {length}" / "reste {length}",
    NothingToBuy = "Nothing to buy." / "Nada que comprar." / "Rien à acheter.",
    NoChoice = "No choice: one pack is offered, or every number is set."
        / "Sin elección: se ofrece un solo envase, o todos los números están fijados."
        / "Pas de choix : un seul conditionnement est proposé, ou tous les nombres sont fixés.",
    AsPlanned = "As the layers were planned: no cost is known."
        / "Como se planificaron las capas: no se conoce ningún coste."
        / "Comme les couches ont été prévues : aucun coût n’est connu.",
    LeastCost = "Costs least of all combinations; of equal costs it leaves least, then is fewest packs."
        / "Es la combinación de menor coste; a igual coste, la que menos deja y luego la de menos envases."
        / "C’est la combinaison la moins chère ; à coût égal, celle qui laisse le moins, puis celle de moins de conditionnements.",
    LeastLeftOne = "Leaves least. Costs can't be compared: {unpriced} of the packs offered has no cost."
        / "Es la que menos deja. Los costes no se pueden comparar: {unpriced} de los envases ofrecidos no tiene coste."
        / "C’est celle qui laisse le moins. Les coûts ne sont pas comparables : {unpriced} des conditionnements proposés n’a pas de coût.",
    LeastLeft = "Leaves least. Costs can't be compared: {unpriced} of the packs offered have no cost."
        / "Es la que menos deja. Los costes no se pueden comparar: {unpriced} de los envases ofrecidos no tienen coste."
        / "C’est celle qui laisse le moins. Les coûts ne sont pas comparables : {unpriced} des conditionnements proposés n’ont pas de coût.",
}}
