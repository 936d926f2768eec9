//! The steps of removal and loading, their cautions, what a tape reading says.

labels! {
/// A caution that opens a sheet.
LoadingCaution {
    Isolate = "Bypass, isolate, let the pressure off, vent. Gauge at nought and vent open before anything is loosened."
        / "Derive, aísle, quite la presión, ventee. Manómetro a cero y venteo abierto antes de aflojar nada."
        / "Mettez en bipasse, isolez, faites tomber la pression, mettez à l’air. Manomètre à zéro et évent ouvert avant de desserrer quoi que ce soit.",
    Power = "Pull the valve's plug. Where the site locks out, lock out."
        / "Desenchufe la válvula. Donde el lugar bloquea y etiqueta, bloquee."
        / "Débranchez la vanne. Là où le site consigne, consignez.",
    Oxygen = "Wet carbon takes the oxygen from the air of a closed vessel. Never put your head in, never enter alone; test the air first."
        / "El carbón húmedo quita el oxígeno del aire de un recipiente cerrado. No meta nunca la cabeza, no entre nunca solo; compruebe antes el aire."
        / "Le charbon humide prend l’oxygène de l’air d’une cuve fermée. N’y mettez jamais la tête, n’y entrez jamais seul ; contrôlez l’air d’abord.",
    Heavy = "A drained bed is heavy and shifts: two people or a lift aid, feet clear when tipping."
        / "Un lecho escurrido pesa y se desplaza: dos personas o una ayuda para levantar, pies apartados al volcar."
        / "Un lit égoutté est lourd et se déplace : deux personnes ou une aide au levage, pieds dégagés en basculant.",
    Spent = "The old bed holds what it took out: arsenic, radium, uranium, solvents, PFAS. Gloves, no dust, and its owner says what class of waste it is."
        / "El lecho viejo guarda lo que retuvo: arsénico, radio, uranio, disolventes, PFAS. Guantes, sin polvo, y su dueño dice qué clase de residuo es."
        / "L’ancien lit contient ce qu’il a retenu : arsenic, radium, uranium, solvants, PFAS. Gants, pas de poussière, et son propriétaire dit de quelle classe de déchet il s’agit.",
    Lift = "Bags over 51 lb (23 kg): two people or a lift aid. Never lift one overhead from a ladder."
        / "Bolsas de más de 51 lb (23 kg): dos personas o una ayuda para levantar. No levante nunca una por encima de la cabeza desde una escalera."
        / "Sacs de plus de 51 lb (23 kg) : deux personnes ou une aide au levage. N’en levez jamais un au-dessus de la tête depuis une échelle.",
    Silica = "Gravel and sand dust is silica: wet it down, mask as the local code says."
        / "El polvo de grava y arena es sílice: humedézcalo, mascarilla según la norma local."
        / "La poussière de gravier et de sable est de la silice : mouillez-la, masque selon le règlement local.",
    Dust = "Dust: wet it down, mask as the local code says."
        / "Polvo: humedézcalo, mascarilla según la norma local."
        / "Poussière : mouillez-la, masque selon le règlement local.",
    Vacuum = "Fill slowly from below, vent open. Plastic vessels take no vacuum."
        / "Llene despacio desde abajo, venteo abierto. Los recipientes de plástico no aguantan vacío."
        / "Remplissez lentement par le bas, évent ouvert. Les cuves en plastique ne supportent pas le vide.",
    Disinfect = "Disinfect as the site's rules say, and rinse to waste, before anybody drinks of it."
        / "Desinfecte según las reglas del lugar y enjuague al desagüe antes de que nadie beba."
        / "Désinfectez selon les règles du site, et rincez à l’égout, avant que quiconque en boive.",
}}

labels! {
/// A step: what to do, or how.
StepText {
    Bypass = "Bypass open" / "Derivación abierta" / "Bipasse ouvert",
    BypassHow = "Tell whoever uses the water: it is untreated while you work."
        / "Avise a quien usa el agua: no está tratada mientras trabaja."
        / "Prévenez ceux qui utilisent l’eau : elle n’est pas traitée pendant votre travail.",
    Isolate = "Inlet and outlet shut and tagged"
        / "Entrada y salida cerradas y señalizadas"
        / "Entrée et sortie fermées et signalées",
    Depressurise = "Pressure let off through the drain"
        / "Presión quitada por el desagüe"
        / "Pression évacuée par l’égout",
    Vent = "Vent open, gauge at nought" / "Venteo abierto, manómetro a cero" / "Évent ouvert, manomètre à zéro",
    VentHow = "Only now loosen anything." / "Solo ahora afloje algo." / "Ne desserrez rien avant.",
    Power = "Valve without power" / "Válvula sin corriente" / "Vanne hors tension",
    ValveOff = "Valve off" / "Válvula quitada" / "Vanne démontée",
    ValveOffHow = "Cap the riser, so that nothing falls into it."
        / "Tape el tubo central, para que no caiga nada dentro."
        / "Bouchez le tube central, pour que rien n’y tombe.",
    ReadFound = "Read the tape: surface as found"
        / "Lea la cinta: superficie tal como se encontró"
        / "Lisez le ruban : surface telle que trouvée",
    ReadFoundHow = "On the axis, from the rim down."
        / "En el eje, desde el borde hacia abajo."
        / "Sur l’axe, depuis le bord.",
    ReadLeft = "Read the tape: surface that is left"
        / "Lea la cinta: superficie que queda"
        / "Lisez le ruban : surface qui reste",
    LevelFirst = "Level it first." / "Nivélela antes." / "Nivelez-la d’abord.",
    Gravel = "Gravel: new, or washed and separated"
        / "Grava: nueva, o lavada y separada"
        / "Gravier : neuf, ou lavé et séparé",
    GravelHow = "Gravel that can't be separated from the old bed goes with it."
        / "La grava que no se puede separar del lecho viejo se va con él."
        / "Le gravier qu’on ne peut pas séparer de l’ancien lit part avec lui.",
    SlotsSeen = "Collector's slots looked at" / "Ranuras del colector revisadas" / "Fentes du collecteur examinées",
    SlotsSeenHow = "All open, none torn, none wider than the others."
        / "Todas abiertas, ninguna rota, ninguna más ancha que las demás."
        / "Toutes ouvertes, aucune déchirée, aucune plus large que les autres.",
    RiserSeen = "Riser looked at" / "Tubo central revisado" / "Tube central examiné",
    RiserSeenHow = "Straight, no crack, its end square."
        / "Recto, sin grietas, el extremo a escuadra."
        / "Droit, sans fissure, l’extrémité d’équerre.",
    SeatSeen = "Seat looked at" / "Asiento revisado" / "Siège examiné",
    SeatSeenHow = "The riser stands in it without rocking."
        / "El tubo central se apoya en él sin bailar."
        / "Le tube central y tient sans jeu.",
    ThreadSeen = "Thread and O-ring groove looked at"
        / "Rosca y ranura de la junta tórica revisadas"
        / "Filetage et gorge du joint torique examinés",
    FacesSeen = "Sealing faces looked at" / "Caras de cierre revisadas" / "Portées de joint examinées",
    Drums = "What came out stands in labelled drums"
        / "Lo que salió está en bidones etiquetados"
        / "Ce qui est sorti est dans des fûts étiquetés",
    Waste = "Waste class decided by its owner"
        / "Clase de residuo decidida por su dueño"
        / "Classe de déchet décidée par son propriétaire",
    WasteHow = "A leaching test or the local equivalent decides, not the look of it."
        / "Decide un ensayo de lixiviación o su equivalente local, no el aspecto."
        / "Un essai de lixiviation ou l’équivalent local décide, pas l’aspect.",
    Position = "On its final spot, level, facing right"
        / "En su sitio definitivo, a nivel, bien orientado"
        / "À sa place définitive, de niveau, bien orientée",
    PositionHow = "Loaded, it can't be moved."
        / "Cargado, ya no se puede mover."
        / "Chargée, on ne peut plus la bouger.",
    RinseVessel = "Rinsed, empty, nothing left in it"
        / "Enjuagado, vacío, sin nada dentro"
        / "Rincée, vide, rien dedans",
    Collector = "Collector on its seat" / "Colector en su asiento" / "Collecteur sur son siège",
    RiserMark = "Riser marked at the rim" / "Tubo central marcado en el borde" / "Tube central marqué au bord",
    ExpectCut = "Expect to cut it to {length}."
        / "Se espera cortarlo a {length}."
        / "À couper sans doute à {length}.",
    ValveAbove = "The valve wants it {length} above the rim."
        / "La válvula lo quiere {length} sobre el borde."
        / "La vanne le veut {length} au-dessus du bord.",
    ValveBelow = "The valve wants it {length} below the rim."
        / "La válvula lo quiere {length} bajo el borde."
        / "La vanne le veut {length} au-dessous du bord.",
    ValveFlush = "Flush with the rim, unless the valve's paper says otherwise."
        / "A ras del borde, salvo que el papel de la válvula diga otra cosa."
        / "À fleur du bord, sauf si le papier de la vanne dit autre chose.",
    RiserCut = "Riser cut at the mark, deburred"
        / "Tubo central cortado en la marca, desbarbado"
        / "Tube central coupé à la marque, ébavuré",
    RiserCutHow = "Square; no burr inside or out."
        / "A escuadra; sin rebabas dentro ni fuera."
        / "D’équerre ; sans bavure dedans ni dehors.",
    RiserCap = "Riser capped" / "Tubo central tapado" / "Tube central bouché",
    RiserCapHow = "The cap stays on until the last bag is in."
        / "El tapón se queda hasta que entre la última bolsa."
        / "Le bouchon reste jusqu’au dernier sac.",
    Cushion = "Water stands over the collector"
        / "Hay agua por encima del colector"
        / "De l’eau recouvre le collecteur",
    CushionMust = "A must here: falling grains break laterals."
        / "Aquí es obligado: los granos al caer rompen los brazos."
        / "Indispensable ici : des grains qui tombent cassent les bras.",
    CushionHelps = "It breaks the fall of the first grains."
        / "Amortigua la caída de los primeros granos."
        / "Elle amortit la chute des premiers grains.",
    PouredPlain = "Poured and levelled" / "Vertido y nivelado" / "Versé et nivelé",
    Poured = "{amount} {material} poured, levelled"
        / "{amount} {material}: vertido, nivelado"
        / "{amount} {material} : versé, nivelé",
    PourPack = "Pack: {pack}." / "Envase: {pack}." / "Conditionnement : {pack}.",
    PourPart = "Of the last pack {share}: {volume} or {buckets} buckets."
        / "Del último envase {share}: {volume} o {buckets} cubos."
        / "Du dernier conditionnement {share} : {volume} ou {buckets} seaux.",
    Read = "Read the tape" / "Lea la cinta" / "Lisez le ruban",
    ReadHow = "Level it first; on the axis beside the riser, from the rim down."
        / "Nivélela antes; en el eje junto al tubo central, desde el borde hacia abajo."
        / "Nivelez-la d’abord ; sur l’axe le long du tube central, depuis le bord.",
    RiserCentred = "Riser not lifted, still in the middle"
        / "Tubo central sin levantar, aún en el centro"
        / "Tube central non soulevé, toujours au milieu",
    RiserCentredHow = "Once gravel runs under a lifted riser, the valve won't go on."
        / "Si entra grava bajo un tubo central levantado, la válvula no encaja."
        / "Si du gravier passe sous un tube central soulevé, la vanne ne se monte plus.",
    SealThread = "Thread and O-ring groove clean, silicone only"
        / "Rosca y ranura de la junta tórica limpias, solo silicona"
        / "Filetage et gorge du joint torique propres, silicone seulement",
    SealThreadHow = "No tape and no dope on the vessel's thread; no petroleum grease on the O-ring."
        / "Ni cinta ni pasta en la rosca del recipiente; nada de grasa de petróleo en la junta tórica."
        / "Ni ruban ni pâte sur le filetage de la cuve ; pas de graisse de pétrole sur le joint torique.",
    SealFaces = "Sealing faces and gasket clean" / "Caras de cierre y junta limpias" / "Portées et joint propres",
    CapOff = "Cap off the riser" / "Tapón quitado del tubo central" / "Bouchon retiré du tube central",
    CapOffHow = "Forgotten, no water gets through."
        / "Si se olvida, no pasa agua."
        / "S’il est oublié, l’eau ne passe pas.",
    UpperCollector = "Upper collector in" / "Colector superior puesto" / "Collecteur supérieur en place",
    ValveOn = "Valve on, hand-tight" / "Válvula puesta, apretada a mano" / "Vanne montée, serrée à la main",
    ClosedUp = "Closed up, bolts evenly tight"
        / "Cerrado, tornillos apretados por igual"
        / "Fermée, boulons serrés également",
    AirGap = "Drain ends over an air gap"
        / "El desagüe acaba con separación de aire"
        / "L’évacuation finit sur une garde d’air",
    Fill = "Filled slowly in backwash position"
        / "Llenado despacio en posición de retrolavado"
        / "Remplie lentement en position de rétrolavage",
    FillHow = "Bypass half open, vent open: through the riser, so that water rises from below."
        / "Derivación a medias, venteo abierto: por el tubo central, para que el agua suba desde abajo."
        / "Bipasse à moitié ouvert, évent ouvert : par le tube central, pour que l’eau monte du bas.",
    Soak = "Carbon soaked" / "Carbón empapado" / "Charbon trempé",
    SoakHow = "Up to a day wets its pores (from memory). Air left in it blows the bed out."
        / "Hasta un día moja sus poros (de memoria). El aire que queda dentro expulsa el lecho."
        / "Jusqu’à un jour mouille ses pores (de mémoire). L’air resté dedans chasse le lit.",
    Backwash = "First backwash until it runs clear"
        / "Primer retrolavado hasta que salga claro"
        / "Premier rétrolavage jusqu’à l’eau claire",
    BackwashUpTo = "Up to {flow} at the drain. Raise it slowly."
        / "Hasta {flow} en el desagüe. Súbalo despacio."
        / "Jusqu’à {flow} à l’égout. Augmentez lentement.",
    BackwashSlowly = "Raise the flow slowly." / "Suba el caudal despacio." / "Augmentez le débit lentement.",
    RinseToWaste = "Rinsed to waste until clear"
        / "Enjuagado al desagüe hasta que salga claro"
        / "Rincée à l’égout jusqu’à l’eau claire",
    Regenerate = "Regenerated once" / "Regenerado una vez" / "Régénérée une fois",
    Settings = "Times, hardness and salt set" / "Tiempos, dureza y sal ajustados" / "Temps, dureté et sel réglés",
    Leaks = "No leak under pressure" / "Sin fugas bajo presión" / "Aucune fuite sous pression",
    LeaksHow = "Wait ten minutes, look again."
        / "Espere diez minutos y mire otra vez."
        / "Attendez dix minutes, regardez à nouveau.",
    OutletTest = "Outlet tested" / "Salida analizada" / "Sortie analysée",
    Label = "Label on" / "Etiqueta puesta" / "Étiquette posée",
    LabelHow = "Media, lot, date, your name." / "Medio, lote, fecha, su nombre." / "Média, lot, date, votre nom.",
    TakeOut = "Drained, old bed taken out" / "Escurrido, lecho viejo sacado" / "Égoutté, ancien lit sorti",
    TakeOutPart = "Drained, upper part taken out"
        / "Escurrido, parte de arriba sacada"
        / "Égoutté, partie du haut sortie",
    BedWeighs = "The whole bed weighs {least} to {most} once the water has run off. How much stays in it is from memory."
        / "El lecho entero pesa de {least} a {most} cuando se ha ido el agua. Cuánta queda en él es de memoria."
        / "Le lit entier pèse de {least} à {most} une fois l’eau écoulée. Ce qui en reste est de mémoire.",
    UsualMethod = "Usual for its size and openings: {method}."
        / "Lo habitual para su tamaño y aberturas: {method}."
        / "Usuel pour sa taille et ses ouvertures : {method}.",
}}

labels! {
/// What a tape reading says.
ReadingText {
    AsExpected = "as expected" / "como se esperaba" / "comme attendu",
    Higher = "{length} higher" / "{length} más alta" / "{length} plus haut",
    Lower = "{length} lower" / "{length} más baja" / "{length} plus bas",
    OffLess = "The surface stands {off} than expected ({spread}): {packs} less than counted. Read the tape once more."
        / "La superficie está {off} de lo esperado ({spread}): {packs} menos de lo contado. Lea la cinta otra vez."
        / "La surface est {off} que prévu ({spread}) : {packs} de moins que compté. Relisez le ruban.",
    OffMore = "The surface stands {off} than expected ({spread}): {packs} more than counted. Read the tape once more."
        / "La superficie está {off} de lo esperado ({spread}): {packs} más de lo contado. Lea la cinta otra vez."
        / "La surface est {off} que prévu ({spread}) : {packs} de plus que compté. Relisez le ruban.",
    Likely = "Likely: {why}" / "Probable: {why}" / "Probable : {why}",
    Or = "Or: {why}" / "O: {why}" / "Ou : {why}",
    PackPart = "one {pack} was only {share} full."
        / "una unidad ({pack}) solo estaba llena al {share}."
        / "un conditionnement ({pack}) n’était plein qu’à {share}.",
    PackMore = "one {pack} held {share} more than is printed on it."
        / "una unidad ({pack}) traía {share} más de lo impreso."
        / "un conditionnement ({pack}) contenait {share} de plus qu’imprimé.",
    Fewer = "{packs} fewer than counted went in."
        / "entraron {packs} menos de lo contado."
        / "il en est entré {packs} de moins que compté.",
    More = "{packs} more than counted went in."
        / "entraron {packs} más de lo contado."
        / "il en est entré {packs} de plus que compté.",
    DiameterNot = "the inside diameter is {inside}, not {known}."
        / "el diámetro interior es {inside}, no {known}."
        / "le diamètre intérieur est {inside}, et non {known}.",
    Diameter = "the inside diameter is {inside}."
        / "el diámetro interior es {inside}."
        / "le diamètre intérieur est {inside}.",
    Depth = "the inside depth, which is only assumed, is {depth}."
        / "la profundidad interior, que solo se supone, es {depth}."
        / "la profondeur intérieure, seulement supposée, est {depth}.",
    Density = "this lot's bulk density is {density}."
        / "la densidad aparente de este lote es {density}."
        / "la masse volumique apparente de ce lot est {density}.",
    Found = "Surface as found" / "Superficie tal como se encontró" / "Surface telle que trouvée",
    Left = "Surface that was left" / "Superficie que quedó" / "Surface qui restait",
    AfterLast = "After the last of {layer}" / "Tras lo último de {layer}" / "Après le dernier de {layer}",
    AfterPack = "After {container} {pack} of {layer}"
        / "Tras {container} {pack} de {layer}"
        / "Après {container} {pack} de {layer}",
    PackWord = "pack" / "envase" / "conditionnement",
    PlanFirst = "The vessel's inside and its layers must be known: see the vessel's page."
        / "Hay que conocer el interior del recipiente y sus capas: vea la página del recipiente."
        / "L’intérieur de la cuve et ses couches doivent être connus : voyez la page de la cuve.",
    TypeIt = "{place}: type the tape reading."
        / "{place}: escriba la lectura de cinta."
        / "{place} : saisissez la lecture au ruban.",
    Misread = "{place}: {why}" / "{place}: {why}" / "{place} : {why}",
    Contradicts = "{place}: the reading contradicts the vessel or the one below it. Read it once more."
        / "{place}: la lectura contradice al recipiente o a la de debajo. Léala otra vez."
        / "{place} : la lecture contredit la cuve ou celle du dessous. Relisez-la.",
    PacksWrong = "{layer}: the number of packs makes no sense."
        / "{layer}: el número de envases no tiene sentido."
        / "{layer} : le nombre de conditionnements n’a pas de sens.",
}}
