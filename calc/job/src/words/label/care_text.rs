//! Sentences of the service card and of the due list.

labels! {
/// Why a bed stands as it does.
CareText {
    FirstShown = "The outlet showed {outlet} on {day}: the first that isn't nought. The bed is being spent."
        / "La salida marcó {outlet} el {day}: lo primero que no es cero. El lecho se está agotando."
        / "La sortie a montré {outlet} le {day} : la première valeur non nulle. Le lit s’use.",
    ShownSince = "The outlet showed {outlet} on {day}: not nought since {since}. The bed is being spent."
        / "La salida marcó {outlet} el {day}: no es cero desde el {since}. El lecho se está agotando."
        / "La sortie a montré {outlet} le {day} : non nulle depuis le {since}. Le lit s’use.",
    AboveLimit = "The outlet showed {outlet} on {day}, above its limit of {limit}."
        / "La salida marcó {outlet} el {day}, por encima de su límite de {limit}."
        / "La sortie a montré {outlet} le {day}, au-dessus de sa limite de {limit}.",
    Regenerate = "The outlet showed {outlet} on {day}. Look at salt and settings and regenerate, then test again, before media are ordered."
        / "La salida marcó {outlet} el {day}. Mire sal y ajustes y regenere; luego analice otra vez, antes de pedir medio."
        / "La sortie a montré {outlet} le {day}. Regardez sel et réglages et régénérez, puis analysez à nouveau, avant de commander du média.",
    TypedOver = "The bed was {months} months old on {day}. That is as long as it may be used."
        / "El lecho tenía {months} meses el {day}. Es lo más que se puede usar."
        / "Le lit avait {months} mois le {day}. C’est le plus longtemps qu’il peut servir.",
    UsualOver = "The bed was {months} months old on {day}. That is as long as such a bed is usually used ({source})."
        / "El lecho tenía {months} meses el {day}. Es lo que se suele usar un lecho así ({source})."
        / "Le lit avait {months} mois le {day}. C’est aussi longtemps qu’un tel lit sert d’habitude ({source}).",
    WorkedOver = "By its water and the bed it lasted {time}, to {day}: {why}."
        / "Según su agua y el lecho duró {time}, hasta el {day}: {why}."
        / "D’après son eau et le lit il a duré {time}, jusqu’au {day} : {why}.",
    WaterOver = "As much water went through the bed as may."
        / "Por el lecho ha pasado toda el agua que puede."
        / "Toute l’eau permise a traversé le lit.",
    LimitPassed = "By its tests the outlet reached its limit about {day}."
        / "Según sus análisis la salida llegó a su límite hacia el {day}."
        / "D’après ses analyses la sortie a atteint sa limite vers le {day}.",
    Leak = "Something leaks." / "Algo pierde agua." / "Quelque chose fuit.",
    Grains = "Grains came with the backwash: set it lower, and look again."
        / "Salieron granos con el retrolavado: ajústelo más bajo y mire otra vez."
        / "Des grains sont venus avec le rétrolavage : réglez-le plus bas, et regardez à nouveau.",
    Cloudy = "The drain was still cloudy at the end: backwash until it runs clear."
        / "El desagüe seguía turbio al final: retrolave hasta que salga claro."
        / "L’égout était encore trouble à la fin : rétrolavez jusqu’à l’eau claire.",
    MediaLost = "Media is lost: bring {packs} of a pack."
        / "Se pierde medio: lleve {packs} de envase."
        / "Du média se perd : apportez {packs} de conditionnement.",
    DueSoon = "A new bed is due on {day}: bring it along."
        / "Toca lecho nuevo el {day}: llévelo."
        / "Un nouveau lit est dû le {day} : apportez-le.",
    FillUpSoon = "The bed is to be filled up by {day}: bring what has dissolved."
        / "Hay que reponer el lecho antes del {day}: lleve lo que se ha disuelto."
        / "Le lit est à compléter avant le {day} : apportez ce qui s’est dissous.",
    NeverTested = "The outlet of this bed was never tested."
        / "La salida de este lecho no se analizó nunca."
        / "La sortie de ce lit n’a jamais été analysée.",
    VisitOverdue = "The visit was due on {day}." / "La visita tocaba el {day}." / "La visite était due le {day}.",
    AllWell = "All that was read is as it should be. Next visit by {next}."
        / "Todo lo leído está como debe. Próxima visita antes del {next}."
        / "Tout ce qui a été lu est comme il faut. Prochaine visite avant le {next}.",
    DayToCome = "Is the day right? It is still to come, or is none. The visit is kept and counts from that day on."
        / "¿Es correcto el día? Aún no ha llegado, o no existe. La visita se guarda y cuenta desde ese día."
        / "Le jour est-il juste ? Il est encore à venir, ou n’existe pas. La visite est conservée et compte à partir de ce jour.",
    OutletAboveInlet = "Were the two tests swapped? The outlet shows {outlet}, the inlet {inlet}. A reading at the inlet or above stays out of the curve."
        / "¿Se cambiaron los dos análisis? La salida marca {outlet}, la entrada {inlet}. Una lectura como la entrada o más queda fuera de la curva."
        / "Les deux analyses ont-elles été échangées ? La sortie montre {outlet}, l’entrée {inlet}. Une lecture à l’entrée ou au-dessus reste hors de la courbe.",
    MeterFell = "Was the meter misread, or replaced? It shows less than before. The reading is kept and doesn't count; write down a replaced meter as such."
        / "¿Se leyó mal el contador, o se cambió? Marca menos que antes. La lectura se guarda y no cuenta; anote un contador cambiado como tal."
        / "Le compteur a-t-il été mal lu, ou remplacé ? Il montre moins qu’avant. La lecture est conservée et ne compte pas ; notez un compteur remplacé comme tel.",
    OtherUnit = "Is {unit} the right unit? It can't be compared with that of the latest test. These tests are kept and stay out of the curve."
        / "¿Es {unit} la unidad correcta? No se puede comparar con la del último análisis. Estos análisis se guardan y quedan fuera de la curva."
        / "{unit} est-elle la bonne unité ? Elle n’est pas comparable à celle de la dernière analyse. Ces analyses sont conservées et restent hors de la courbe.",
    SurfaceRose = "Was it read in the same state? The surface lies {length} higher than the first time: less freeboard. Carbon often reads higher after its first backwash; otherwise media were added, or the tape was read to something else."
        / "¿Se leyó en el mismo estado? La superficie está {length} más alta que la primera vez: menos espacio libre. El carbón suele quedar más alto tras su primer retrolavado; si no, se añadió medio, o la cinta se leyó hasta otra cosa."
        / "A-t-on lu dans le même état ? La surface est {length} plus haut que la première fois : moins de hauteur libre. Le charbon est souvent plus haut après son premier rétrolavage ; sinon du média a été ajouté, ou le ruban lu jusqu’à autre chose.",
    TapeOutside = "Is it from the rim down to the media? {length} lies outside this vessel's bed."
        / "¿Es del borde al medio? {length} queda fuera del lecho de este recipiente."
        / "Est-ce du bord au média ? {length} est hors du lit de cette cuve.",
    ReachedAbout = "Likely about {likely}; between {low} and {high} a test reads the limit (nine of ten)."
        / "Probable hacia el {likely}; entre el {low} y el {high} un análisis marca el límite (nueve de diez)."
        / "Probable vers le {likely} ; entre le {low} et le {high} une analyse indique la limite (neuf fois sur dix).",
    NoTest = "No test of the outlet yet."
        / "Todavía no hay ningún análisis de la salida."
        / "Aucune analyse de la sortie pour l’instant.",
    NothingFoundOnce = "{waits} {tests} test showed nothing so far: as long as the front hasn't come no curve can tell when it will."
        / "{waits} {tests} análisis no ha mostrado nada: mientras el frente no llegue ninguna curva puede decir cuándo."
        / "{waits} {tests} analyse n’a rien montré jusqu’ici : tant que le front n’est pas arrivé, aucune courbe ne dit quand il viendra.",
    NothingFound = "{waits} {tests} tests showed nothing so far: as long as the front hasn't come no curve can tell when it will."
        / "{waits} {tests} análisis no han mostrado nada: mientras el frente no llegue ninguna curva puede decir cuándo."
        / "{waits} {tests} analyses n’ont rien montré jusqu’ici : tant que le front n’est pas arrivé, aucune courbe ne dit quand il viendra.",
    NoInlet = "The inlet was never tested, so nothing says how much comes through."
        / "La entrada no se analizó nunca, así que nada dice cuánto pasa."
        / "L’entrée n’a jamais été analysée : rien ne dit combien passe.",
    LimitBetween = "The limit must lie between nothing and the inlet."
        / "El límite debe estar entre nada y la entrada."
        / "La limite doit être entre rien et l’entrée.",
    ThreeTests = "Three tests that show something, and less than the inlet, are the least."
        / "Lo mínimo son tres análisis que muestren algo, y menos que la entrada."
        / "Il faut au moins trois analyses qui montrent quelque chose, et moins que l’entrée.",
    OneTime = "The tests were all made at one time."
        / "Los análisis se hicieron todos a la vez."
        / "Les analyses ont toutes été faites au même moment.",
    NoRise = "The tests that show something don't rise clearly yet."
        / "Los análisis que muestran algo aún no suben con claridad."
        / "Les analyses qui montrent quelque chose ne montent pas encore nettement.",
    LostInScatter = "The limit is lost in the scatter of the tests."
        / "El límite se pierde en la dispersión de los análisis."
        / "La limite se perd dans la dispersion des analyses.",
    Between = "{first} on {first_day}, {latest} on {latest_day}"
        / "{first} el {first_day}, {latest} el {latest_day}"
        / "{first} le {first_day}, {latest} le {latest_day}",
    AsBefore = "{between}: {said} {spread}" / "{between}: {said} {spread}" / "{between} : {said} {spread}",
    LiesHigher = "{between}: the surface lies {length} higher than settling explains ({spread})."
        / "{between}: la superficie está {length} más alta de lo que explica el asentamiento ({spread})."
        / "{between} : la surface est {length} plus haut que le tassement ne l’explique ({spread}).",
    LiesLower = "{between}: {length} lower than settling explains ({spread}). Lost: {volume} or {mass} of {material}."
        / "{between}: {length} más baja de lo que explica el asentamiento ({spread}). Perdido: {volume} o {mass} de {material}."
        / "{between} : {length} plus bas que le tassement ne l’explique ({spread}). Perdu : {volume} ou {mass} de {material}.",
    LiesLowerPacks = "{between}: {length} lower than settling explains ({spread}). Lost: {volume} or {mass} of {material}, {packs} of a {pack}."
        / "{between}: {length} más baja de lo que explica el asentamiento ({spread}). Perdido: {volume} o {mass} de {material}, {packs} de {pack}."
        / "{between} : {length} plus bas que le tassement ne l’explique ({spread}). Perdu : {volume} ou {mass} de {material}, {packs} de {pack}.",
    NoUsualLife = "No usual life is known for such a bed. Type after how many months, or how much water, it is changed."
        / "No se conoce vida habitual de un lecho así. Escriba tras cuántos meses, o cuánta agua, se cambia."
        / "Aucune durée usuelle n’est connue pour un tel lit. Saisissez après combien de mois, ou combien d’eau, il est remplacé.",
    UsualMonths = "{low} to {high} months ({source})."
        / "De {low} a {high} meses ({source})."
        / "{low} à {high} mois ({source}).",
    TypedMonths = "{months} months, as typed." / "{months} meses, como se escribió." / "{months} mois, comme saisi.",
    WorkedLife = "{time} by its water and the bed: {why}."
        / "{time} según su agua y el lecho: {why}."
        / "{time} d’après son eau et le lit : {why}.",
    TestsAndTyped = "The tests say when; what was typed holds besides."
        / "Los análisis dicen cuándo; lo escrito vale además."
        / "Les analyses disent quand ; ce qui a été saisi vaut en plus.",
    ReadingsTakeOver = "Readings take over as soon as three tests show something and a curve goes through them."
        / "Las lecturas mandan en cuanto tres análisis muestran algo y una curva pasa por ellos."
        / "Les lectures prennent le relais dès que trois analyses montrent quelque chose et qu’une courbe y passe.",
}}
