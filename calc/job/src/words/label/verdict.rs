//! Verdicts: what is judged, why, what would mend it.

labels! {
/// What is judged.
SubjectText {
    Gap = "Gap beside the riser, {layer}"
        / "Hueco junto al tubo central, {layer}"
        / "Espace le long du tube central, {layer}",
    Slot = "Collector slots, {layer}" / "Ranuras del colector, {layer}" / "Fentes du collecteur, {layer}",
    Neighbours = "{lower} under {upper}" / "{lower} bajo {upper}" / "{lower} sous {upper}",
    Cover = "Cover of the collector" / "Cubierta del colector" / "Couverture du collecteur",
    Freeboard = "Room above the media" / "Sitio sobre el medio" / "Place au-dessus du média",
    Diameter = "Inside diameter" / "Diámetro interior" / "Diamètre intérieur",
    Backwash = "Backwash at {flow}" / "Retrolavado a {flow}" / "Rétrolavage à {flow}",
    CarryOver = "Fines in the backwash" / "Finos en el retrolavado" / "Fines dans le rétrolavage",
    UpperSlot = "Upper collector slots, {layer}"
        / "Ranuras del colector superior, {layer}"
        / "Fentes du collecteur supérieur, {layer}",
    Mixing = "{upper} on {lower} in backwash"
        / "{upper} sobre {lower} en retrolavado"
        / "{upper} sur {lower} en rétrolavage",
    PressureLoss = "Pressure lost by the clean unit"
        / "Presión perdida por el equipo limpio"
        / "Pression perdue par l’appareil propre",
    PeakLoss = "Pressure lost by the clean unit at the peak"
        / "Presión perdida por el equipo limpio en la punta"
        / "Pression perdue par l’appareil propre en pointe",
    ServiceLift = "Lift at the service flow"
        / "Levantamiento con el caudal de servicio"
        / "Soulèvement au débit de service",
    Feed = "Feed to reverse osmosis, {what}"
        / "Alimentación de la ósmosis inversa, {what}"
        / "Alimentation de l’osmose inverse, {what}",
    Layer = "layer" / "capa" / "couche",
    Media = "media" / "medio" / "média",
}}

labels! {
/// Why something is judged as it is.
ReasonText {
    GapFine = "{grains} of the largest grains fit beside the riser; {wanted} are enough."
        / "Junto al tubo central caben {grains} de los granos más grandes; bastan {wanted}."
        / "{grains} des plus gros grains passent le long du tube central ; {wanted} suffisent.",
    GapJams = "{grains} of the largest grains fit beside the riser; under {wanted} they jam."
        / "Junto al tubo central caben {grains} de los granos más grandes; con menos de {wanted} se atascan."
        / "{grains} des plus gros grains passent le long du tube central ; sous {wanted} ils se coincent.",
    GapLeaned = "Even with the riser leaned over only {grains} of the largest grains fit; under {wanted} none pass."
        / "Incluso inclinando el tubo central caben solo {grains} de los granos más grandes; con menos de {wanted} no pasa ninguno."
        / "Même en inclinant le tube central, seuls {grains} des plus gros grains passent ; sous {wanted} aucun ne passe.",
    SlotLets = "Slots of {slot} let the smallest grains through, {grain}."
        / "Las ranuras de {slot} dejan pasar los granos más pequeños, {grain}."
        / "Des fentes de {slot} laissent passer les plus petits grains, {grain}.",
    SlotClose = "Slots of {slot} are close to the smallest grains, {grain}; up to {share} of a grain is safe."
        / "Las ranuras de {slot} se acercan a los granos más pequeños, {grain}; hasta {share} de un grano es seguro."
        / "Des fentes de {slot} sont proches des plus petits grains, {grain} ; jusqu’à {share} d’un grain c’est sûr.",
    SlotHolds = "Slots of {slot} hold the smallest grains, {grain}."
        / "Las ranuras de {slot} retienen los granos más pequeños, {grain}."
        / "Des fentes de {slot} retiennent les plus petits grains, {grain}.",
    GapHeld = "The layer below holds the riser, and only {grains} of the largest grains fit beside it; none pass."
        / "La capa de debajo sujeta el tubo central y a su lado caben solo {grains} de los granos más grandes; no pasa ninguno."
        / "La couche du dessous tient le tube central, et seuls {grains} des plus gros grains passent à côté ; aucun ne passe.",
    CoarserAbove = "Its grains reach {below}, those above {above}: the coarser belongs below."
        / "Sus granos llegan a {below}, los de encima a {above}: lo más grueso va debajo."
        / "Ses grains atteignent {below}, ceux du dessus {above} : le plus gros va en dessous.",
    SizeRatio = "The largest grain below is {ratio} times the smallest above; {limit} is the most."
        / "El grano más grande de abajo es {ratio} veces el más pequeño de encima; {limit} es lo máximo."
        / "Le plus gros grain du dessous fait {ratio} fois le plus petit du dessus ; {limit} est le maximum.",
    FilterRatio = "Grains below are {ratio} times those above (D15 over D85); {limit} is the most."
        / "Los granos de abajo son {ratio} veces los de encima (D15 entre D85); {limit} es lo máximo."
        / "Les grains du dessous font {ratio} fois ceux du dessus (D15 sur D85) ; {limit} est le maximum.",
    NoRoom = "It needs {needs}; there is room for {room}."
        / "Necesita {needs}; hay sitio para {room}."
        / "Il faut {needs} ; il y a de la place pour {room}.",
    SlotAbove = "The top slot stands {length} above the underbed."
        / "La ranura más alta queda {length} sobre la capa de soporte."
        / "La fente la plus haute est {length} au-dessus de la couche support.",
    CoverAbove = "The underbed stands {length} above the top slot."
        / "La capa de soporte queda {length} sobre la ranura más alta."
        / "La couche support est {length} au-dessus de la fente la plus haute.",
    OverEnd = "The media would stand {length} above where the bed must end."
        / "El medio quedaría {length} por encima de donde debe acabar el lecho."
        / "Le média serait {length} au-dessus de là où le lit doit finir.",
    Freeboard = "Freeboard {length}." / "Espacio libre {length}." / "Hauteur libre {length}.",
    Stands = "Likely {warm} in the warmest water and {cold} in the coldest; there is room for {room}."
        / "Probable {warm} en el agua más cálida y {cold} en la más fría; hay sitio para {room}."
        / "Probablement {warm} dans l’eau la plus chaude et {cold} dans la plus froide ; il y a de la place pour {room}.",
    LiftsAtBest = "In the warmest water it lifts the bed by {expansion} at best; {wanted} is the least that cleans it."
        / "En el agua más cálida levanta el lecho {expansion} como mucho; {wanted} es lo mínimo que lo limpia."
        / "Dans l’eau la plus chaude il soulève le lit de {expansion} au mieux ; {wanted} est le minimum qui le nettoie.",
    LiftsLikely = "In the warmest water it likely lifts the bed by {expansion}; {wanted} is the least that cleans it."
        / "En el agua más cálida probablemente levanta el lecho {expansion}; {wanted} es lo mínimo que lo limpia."
        / "Dans l’eau la plus chaude il soulève probablement le lit de {expansion} ; {wanted} est le minimum qui le nettoie.",
    WashesOut = "In the coldest water it washes the finest grains out; there is room for {room}."
        / "En el agua más fría arrastra los granos más finos; hay sitio para {room}."
        / "Dans l’eau la plus froide il emporte les plus fins grains ; il y a de la place pour {room}.",
    StandsAtLeast = "In the coldest water the bed stands out by {expansion} at the least; there is room for {room}."
        / "En el agua más fría el lecho se expande {expansion} como mínimo; hay sitio para {room}."
        / "Dans l’eau la plus froide le lit se détend d’au moins {expansion} ; il y a de la place pour {room}.",
    StandsLikely = "In the coldest water the bed likely stands out by {expansion}; there is room for {room}."
        / "En el agua más fría el lecho probablemente se expande {expansion}; hay sitio para {room}."
        / "Dans l’eau la plus froide le lit se détend probablement de {expansion} ; il y a de la place pour {room}.",
    FinestFalls = "Water rises at {speed}; the finest kept grain falls at {settling}."
        / "El agua sube a {speed}; el grano más fino que se queda cae a {settling}."
        / "L’eau monte à {speed} ; le plus fin grain gardé tombe à {settling}.",
    FinestLeaves = "Water rises at {speed}, the finest kept grain falls at only {settling} in the coldest water."
        / "El agua sube a {speed} y el grano más fino que se queda cae a solo {settling} en el agua más fría."
        / "L’eau monte à {speed}, le plus fin grain gardé ne tombe qu’à {settling} dans l’eau la plus froide.",
    HeavierAbove = "Lifted, the upper layer weighs {above} and the lower {below}: they change places."
        / "Levantada, la capa de encima pesa {above} y la de debajo {below}: cambian de sitio."
        / "Soulevée, la couche du dessus pèse {above} et celle du dessous {below} : elles changent de place.",
    EdgesMix = "Its coarsest grains weigh {above} when lifted, the finest below {below}: a band between them mixes."
        / "Sus granos más gruesos pesan {above} levantados, los más finos de debajo {below}: entre ambos se mezcla una franja."
        / "Ses plus gros grains pèsent {above} soulevés, les plus fins du dessous {below} : une bande se mélange entre eux.",
    EdgesApart = "Its coarsest grains weigh {above} when lifted, the finest below {below}: they stay apart."
        / "Sus granos más gruesos pesan {above} levantados, los más finos de debajo {below}: quedan separados."
        / "Ses plus gros grains pèsent {above} soulevés, les plus fins du dessous {below} : ils restent séparés.",
    AtLeast = "It is {value}; {limit} is the least."
        / "Es {value}; {limit} es lo mínimo."
        / "C’est {value} ; {limit} est le minimum.",
    AtMost = "It is {value}; {limit} is the most."
        / "Es {value}; {limit} es lo máximo."
        / "C’est {value} ; {limit} est le maximum.",
    TenthLifts = "Water rises at {speed}; the finest tenth of the bed lifts from {start}."
        / "El agua sube a {speed}; el décimo más fino del lecho se levanta desde {start}."
        / "L’eau monte à {speed} ; le dixième le plus fin du lit se soulève à partir de {start}.",
    LiesStill = "Water rises at {speed}; the bed lies still up to {start}."
        / "El agua sube a {speed}; el lecho no se mueve hasta {start}."
        / "L’eau monte à {speed} ; le lit reste immobile jusqu’à {start}.",
    AboveNominal = "It comes out at {inside}, more than the nominal {nominal}."
        / "Sale {inside}, más que el nominal {nominal}."
        / "On obtient {inside}, plus que le nominal {nominal}.",
}}

labels! {
/// The smallest thing that would mend it.
RemedyText {
    PourSlowly = "Pour slowly and work it round."
        / "Vierta despacio y vaya repartiendo alrededor."
        / "Versez lentement en répartissant tout autour.",
    FillPortOrManway = "Load by a fill port or a manway."
        / "Cargue por una boca de llenado o una boca de hombre."
        / "Chargez par un orifice de remplissage ou un trou d’homme.",
    SmallerGrain = "Or take grains of at most {size}."
        / "O use granos de como mucho {size}."
        / "Ou prenez des grains d’au plus {size}.",
    CoarserGrain = "Take grains of at least {size}, or finer slots."
        / "Use granos de al menos {size}, o ranuras más finas."
        / "Prenez des grains d’au moins {size}, ou des fentes plus fines.",
    CoarserAtSlots = "Or put a coarser layer against the slots."
        / "O ponga una capa más gruesa contra las ranuras."
        / "Ou mettez une couche plus grosse contre les fentes.",
    SwapLayers = "Put the coarser layer below."
        / "Ponga debajo la capa más gruesa."
        / "Mettez la couche la plus grosse en dessous.",
    CheckReadings = "Check the readings, and whether the pack was fuller than printed."
        / "Revise las lecturas, y si el envase traía más de lo impreso."
        / "Vérifiez les lectures, et si le conditionnement contenait plus qu’imprimé.",
    LayerBetween = "Put a layer between, of a size between the two."
        / "Ponga una capa entre ambas, de un tamaño intermedio."
        / "Mettez une couche entre les deux, d’une taille intermédiaire.",
    MoreUnderbed = "Add {volume} of underbed."
        / "Añada {volume} de capa de soporte."
        / "Ajoutez {volume} de couche support.",
    OnePack = "At most 1 pack fits." / "Cabe como mucho 1 envase." / "Au plus 1 conditionnement tient.",
    FewerPacks = "At most {packs} packs fit."
        / "Caben como mucho {packs} envases."
        / "Au plus {packs} conditionnements tiennent.",
    DrainCheck = "Settle it on site: {flow} at the coldest water for {minutes}; no grains in the drain."
        / "Aclárelo en obra: {flow} con el agua más fría durante {minutes}; sin granos en el desagüe."
        / "À trancher sur place : {flow} avec l’eau la plus froide pendant {minutes} ; aucun grain à l’égout.",
    FlowControl = "Fit a drain line flow control of {flow}."
        / "Monte un regulador de caudal del desagüe de {flow}."
        / "Montez un régulateur de débit à l’égout de {flow}.",
    TwoFlowControls = "Or two drain line flow controls: {cold} in the cold season, {warm} in the warm."
        / "O dos reguladores de caudal del desagüe: {cold} en la época fría, {warm} en la cálida."
        / "Ou deux régulateurs de débit à l’égout : {cold} en saison froide, {warm} en saison chaude.",
    NarrowerVessel = "Take a vessel of at most {diameter} diameter."
        / "Tome un recipiente de como mucho {diameter} de diámetro."
        / "Prenez une cuve d’au plus {diameter} de diamètre.",
    Give = "Give at least {flow} for backwash."
        / "Dé al menos {flow} para retrolavar."
        / "Donnez au moins {flow} pour le rétrolavage.",
    OrGive = "Or give at least {flow} for backwash."
        / "O dé al menos {flow} para retrolavar."
        / "Ou donnez au moins {flow} pour le rétrolavage.",
    LessBackwash = "Backwash at no more than {flow}."
        / "Retrolave con no más de {flow}."
        / "Rétrolavez à {flow} au plus.",
    MoreRoom = "Or take a vessel with {length} more height above the bed."
        / "O tome un recipiente con {length} más de altura sobre el lecho."
        / "Ou prenez une cuve avec {length} de hauteur en plus au-dessus du lit.",
    LessFlow = "Send at most {flow} through one vessel."
        / "Pase como mucho {flow} por un recipiente."
        / "Faites passer au plus {flow} par cuve.",
    MoreVessels = "{vessels} vessels side by side would do."
        / "{vessels} recipientes en paralelo servirían."
        / "{vessels} cuves en parallèle conviendraient.",
    ReducePressure = "Fit a pressure reducing valve before it."
        / "Monte antes una válvula reductora de presión."
        / "Montez un réducteur de pression en amont.",
    OtherVessel = "Take a vessel whose label allows it, or cool the water."
        / "Tome un recipiente cuya placa lo permita, o enfríe el agua."
        / "Prenez une cuve dont la plaque le permet, ou refroidissez l’eau.",
    TapeBareShell = "Tape the bare shell, not the jacket, and measure the wall."
        / "Mida con la cinta la virola desnuda, no la funda, y mida la pared."
        / "Passez le ruban sur la virole nue, pas sur la housse, et mesurez la paroi.",
}}
