//! What stands on the section of a vessel and on a backwash window, and what is read out in their place.

labels! {
/// A text of a picture.
PictureText {
    SectionTitle = "Section of the vessel" / "Sección del recipiente" / "Coupe de la cuve",
    Depth = "inside depth" / "profundidad interior" / "profondeur intérieure",
    Freeboard = "freeboard" / "espacio libre" / "hauteur libre",
    Datum = "datum: rim" / "referencia: borde" / "référence : bord",
    TapeInch = "tape, in" / "cinta, in" / "ruban, in",
    TapeMillimetre = "tape, mm" / "cinta, mm" / "ruban, mm",
    LiftedCold = " A broken line: the bed in backwash at the coldest water, {water}, {tape} under the rim."
        / " Una línea de trazos: el lecho en retrolavado con el agua más fría, {water}, {tape} bajo el borde."
        / " Un trait interrompu : le lit en rétrolavage avec l’eau la plus froide, {water}, {tape} sous le bord.",
    LiftedWarm = " A line of short strokes: the bed in backwash at the warmest water, {water}, {tape} under the rim."
        / " Una línea de trazos cortos: el lecho en retrolavado con el agua más cálida, {water}, {tape} bajo el borde."
        / " Un trait à tirets courts : le lit en rétrolavage avec l’eau la plus chaude, {water}, {tape} sous le bord.",
    LiftedKey = "bed in backwash, water at {water}"
        / "lecho en retrolavado, agua a {water}"
        / "lit en rétrolavage, eau à {water}",
    LoadedKey = "surfaces as loaded, {day}" / "superficies al cargar, {day}" / "surfaces au chargement, {day}",
    LoadedTape = "loaded {tape}" / "cargado {tape}" / "chargé {tape}",
    LoadedTold = " As loaded on {day}: layer {number}, the tape read {tape}."
        / " Al cargar el {day}: capa {number}, la cinta marcaba {tape}."
        / " Au chargement du {day} : couche {number}, le ruban indiquait {tape}.",
    Cut = "riser cut to {length}" / "tubo central cortado a {length}" / "tube central coupé à {length}",
    CutTold = " The riser is cut to {length}." / " El tubo central se corta a {length}." / " Le tube central est coupé à {length}.",
    Unknown = "The inside of the vessel isn't known yet: a broken outline with a question mark."
        / "Aún no se conoce el interior del recipiente: un contorno de trazos con un signo de interrogación."
        / "L’intérieur de la cuve n’est pas encore connu : un contour interrompu avec un point d’interrogation.",
    ToScale = "Drawn to scale: inside diameter {diameter}, inside depth {depth}."
        / "Dibujado a escala: diámetro interior {diameter}, profundidad interior {depth}."
        / "Dessiné à l’échelle : diamètre intérieur {diameter}, profondeur intérieure {depth}.",
    NoLayer = " No layer yet." / " Aún no hay ninguna capa." / " Aucune couche pour l’instant.",
    Layer = " Layer {number}{name}: the tape reads {tape} down to its surface, {spread}."
        / " Capa {number}{name}: la cinta marca {tape} hasta su superficie, {spread}."
        / " Couche {number}{name} : le ruban indique {tape} jusqu’à sa surface, {spread}.",
    LayerProblem = " Layer {number}{name}: it can't be done as asked."
        / " Capa {number}{name}: no se puede hacer como se pide."
        / " Couche {number}{name} : impossible comme demandé.",
    LayerUnread = " Layer {number}{name}: an entry is missing or makes no sense."
        / " Capa {number}{name}: falta un dato o no tiene sentido."
        / " Couche {number}{name} : une donnée manque ou n’a pas de sens.",
    LayerWaits = " Layer {number}{name}: it waits for a layer below."
        / " Capa {number}{name}: espera una capa de debajo."
        / " Couche {number}{name} : elle attend une couche du dessous.",
    FreeboardShare = " Freeboard {length}, {share} of the media bed."
        / " Espacio libre {length}, {share} del lecho."
        / " Hauteur libre {length}, {share} du lit.",
    FreeboardOnly = " Freeboard {length}." / " Espacio libre {length}." / " Hauteur libre {length}.",
}}

labels! {
/// A text of a backwash window.
WindowText {
    Flow = "flow, {unit}" / "caudal, {unit}" / "débit, {unit}",
    Temperature = "water temperature, {unit}" / "temperatura del agua, {unit}" / "température de l’eau, {unit}",
    OneTemperature = "water at this site: {low} {unit}"
        / "agua en este lugar: {low} {unit}"
        / "eau de ce site : {low} {unit}",
    Temperatures = "water at this site: {low} to {high} {unit}"
        / "agua en este lugar: {low} a {high} {unit}"
        / "eau de ce site : {low} à {high} {unit}",
    Available = "{flow} available" / "{flow} disponibles" / "{flow} disponibles",
    AvailableSentence = " {available}." / " {available}." / " {available}.",
    Chosen = " Chosen {chosen}." / " Elegido {chosen}." / " Choisi {chosen}.",
    Water = "Water" / "Agua" / "Eau",
    LiftsLow = "Lifts enough from, low line"
        / "Levanta bastante desde, línea baja"
        / "Soulève assez à partir de, ligne basse",
    LiftsLikely = "Lifts enough from, likely"
        / "Levanta bastante desde, probable"
        / "Soulève assez à partir de, probable",
    LiftsHigh = "Lifts enough from, high line"
        / "Levanta bastante desde, línea alta"
        / "Soulève assez à partir de, ligne haute",
    StaysLow = "Stays in up to, low line" / "No se escapa hasta, línea baja" / "Reste dedans jusqu’à, ligne basse",
    StaysLikely = "Stays in up to, likely" / "No se escapa hasta, probable" / "Reste dedans jusqu’à, probable",
    StaysHigh = "Stays in up to, high line" / "No se escapa hasta, línea alta" / "Reste dedans jusqu’à, ligne haute",
    FinestLeave = "Finest grains leave from"
        / "Los granos más finos salen desde"
        / "Les plus fins grains partent à partir de",
    Both = " At {at} the bed likely lifts enough from {lifts} and stays in up to {stays}"
        / " A {at} el lecho probablemente se levanta bastante desde {lifts} y no se escapa hasta {stays}"
        / " À {at} le lit se soulève probablement assez à partir de {lifts} et reste dedans jusqu’à {stays}",
    Neither = " At {at} no flow likely does: the bed lifts enough from {lifts} only and stays in only up to {stays}"
        / " A {at} probablemente ningún caudal sirve: el lecho solo se levanta bastante desde {lifts} y solo aguanta hasta {stays}"
        / " À {at} aucun débit ne convient probablement : le lit ne se soulève assez qu’à partir de {lifts} et ne reste dedans que jusqu’à {stays}",
    Lifts = " At {at} the bed likely lifts enough from {lifts}"
        / " A {at} el lecho probablemente se levanta bastante desde {lifts}"
        / " À {at} le lit se soulève probablement assez à partir de {lifts}",
    Stays = " At {at} the bed likely stays in up to {stays}"
        / " A {at} el lecho probablemente no se escapa hasta {stays}"
        / " À {at} le lit reste probablement dedans jusqu’à {stays}",
    UnknownLines = " At {at} neither line is known"
        / " A {at} no se conoce ninguna de las dos líneas"
        / " À {at} aucune des deux lignes n’est connue",
    Finest = "; the finest grains leave from {flow}"
        / "; los granos más finos salen desde {flow}"
        / " ; les plus fins grains partent à partir de {flow}",
}}

labels! {
/// A text of a drawing that is shown or saved by itself.
DrawingLabel {
    Sheet = "Section to scale" / "Sección a escala" / "Coupe à l’échelle",
    SheetLetters = "SC" / "SC" / "SC",
    Saving = "Save the drawing" / "Guardar el dibujo" / "Enregistrer le dessin",
    AsSvg = "Drawing as SVG" / "Dibujo en SVG" / "Dessin en SVG",
    AsPng = "Drawing as PNG" / "Dibujo en PNG" / "Dessin en PNG",
    Failed = "This browser made no picture of the drawing. The SVG shows the same; its print can be kept as a picture too."
        / "Este navegador no hizo ninguna imagen del dibujo. El SVG muestra lo mismo; también su impresión sirve de imagen."
        / "Ce navigateur n’a fait aucune image du dessin. Le SVG montre la même chose ; son impression peut aussi servir d’image.",
}}
