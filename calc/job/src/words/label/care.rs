//! Fixed texts of the service card and of the due list.

labels! {
/// A fixed text of the service card or of the due list.
CareLabel {
    ServiceCard = "Service card" / "Ficha de mantenimiento" / "Fiche d’entretien",
    DueList = "Due list" / "Lista de vencimientos" / "Liste des échéances",
    Fine = "Fine" / "Bien" / "Bon",
    NextVisit = "Next visit" / "Próxima visita" / "Prochaine visite",
    OrderNow = "Order now" / "Pedir ya" / "Commander",
    LogVisit = "This visit" / "Esta visita" / "Cette visite",
    SaveVisit = "Save visit" / "Guardar la visita" / "Enregistrer la visite",
    Outlet = "Outlet test" / "Análisis a la salida" / "Analyse en sortie",
    Inlet = "Inlet test" / "Análisis a la entrada" / "Analyse en entrée",
    OtherValue = "other" / "otro" / "autre",
    TestUnit = "Unit of the test" / "Unidad del análisis" / "Unité de l’analyse",
    Meter = "Meter" / "Contador" / "Compteur",
    MeterBefore = "last time" / "la última vez" / "la dernière fois",
    DrainSeen = "Drain" / "Desagüe" / "Égout",
    DrainClearNoGrains = "Clear, no grains" / "Claro, sin granos" / "Clair, sans grains",
    DrainClearGrains = "Clear, with grains" / "Claro, con granos" / "Clair, avec grains",
    DrainCloudy = "Cloudy, no grains" / "Turbio, sin granos" / "Trouble, sans grains",
    DrainCloudyGrains = "Cloudy, with grains" / "Turbio, con granos" / "Trouble, avec grains",
    More = "More readings" / "Más lecturas" / "Autres lectures",
    PressureIn = "Pressure before" / "Presión antes" / "Pression avant",
    PressureOut = "Pressure after" / "Presión después" / "Pression après",
    SinceWash = "Since the last wash" / "Desde el último lavado" / "Depuis le dernier lavage",
    SinceWashHint = "with both pressures it tells how long a run lasts"
        / "con ambas presiones dice cuánto dura entre lavados"
        / "avec les deux pressions, cela donne la durée entre lavages",
    DrainFlow = "Drain flow" / "Caudal en el desagüe" / "Débit à l’égout",
    DrainFlowHint = "by bucket and watch" / "con cubo y reloj" / "au seau et à la montre",
    DrainMinutes = "Drain watched for" / "Desagüe observado durante" / "Égout observé pendant",
    WaterTemperature = "Water temperature" / "Temperatura del agua" / "Température de l’eau",
    Tape = "Tape, rim down to the media" / "Cinta, del borde al medio" / "Ruban, du bord au média",
    TapeHint = "only with the valve off" / "solo con la válvula quitada" / "seulement vanne démontée",
    TapeState = "State of the surface" / "Estado de la superficie" / "État de la surface",
    AsPoured = "As poured" / "Recién vertida" / "Telle que versée",
    SettledAtOpening = "Settled, at opening" / "Asentada, al abrir" / "Tassée, à l’ouverture",
    Salt = "Salt filled in" / "Sal añadida" / "Sel ajouté",
    Leaks = "Leaks" / "Fugas" / "Fuites",
    NotSaid = "not said" / "no se dijo" / "non dit",
    Settings = "Valve settings" / "Ajustes de la válvula" / "Réglages de la vanne",
    Notes = "Notes" / "Notas" / "Notes",
    By = "Read by" / "Leído por" / "Lu par",
    Day = "Day" / "Día" / "Jour",
    DayWrong = "Type the day as year-month-day, like 2026-11-24."
        / "Escriba el día como año-mes-día: 2026-11-24."
        / "Saisissez le jour comme année-mois-jour : 2026-11-24.",
    NothingRead = "Nothing was read yet." / "Todavía no se ha leído nada." / "Rien n’a encore été lu.",
    NotKept = "Not kept yet: one of the numbers makes no sense."
        / "Aún no se guarda: uno de los números no tiene sentido."
        / "Pas encore conservé : un des nombres n’a pas de sens.",
    AskFirst = "Look at this first" / "Mire esto primero" / "Regardez ceci d’abord",
    KeepAnyway = "Keep it as it is" / "Dejarlo como está" / "Le garder tel quel",
    GoBack = "Go back to it" / "Volver a ello" / "Y revenir",
    Kept = "Visit kept." / "Visita guardada." / "Visite conservée.",
    Withdraw = "Withdraw" / "Retirar" / "Retirer",
    Visits = "Visits of this bed" / "Visitas de este lecho" / "Visites de ce lit",
    NoVisits = "No visit of this bed yet."
        / "Todavía no hay visitas de este lecho."
        / "Aucune visite de ce lit pour l’instant.",
    ShowAll = "Show all" / "Mostrar todas" / "Tout montrer",
    Asked = "Asked about" / "Se preguntó por" / "Question posée sur",
    Bed = "This bed" / "Este lecho" / "Ce lit",
    BedBegan = "Put in" / "Cargado" / "Mis en place",
    BedUnknown = "when it was put in isn't known"
        / "no se sabe cuándo se cargó"
        / "on ne sait pas quand il a été mis en place",
    EarlierBeds = "Earlier beds here" / "Lechos anteriores aquí" / "Lits précédents ici",
    Water = "Water through it" / "Agua que ha pasado" / "Eau passée",
    BedVolumes = "Bed volumes" / "Volúmenes de lecho" / "Volumes de lit",
    NoMeter = "no meter was read twice" / "ningún contador se leyó dos veces" / "aucun compteur n’a été lu deux fois",
    NewBedDue = "New bed due" / "Toca lecho nuevo" / "Nouveau lit dû",
    NextVisitDue = "Next visit due" / "Próxima visita prevista" / "Prochaine visite prévue",
    Forecast = "When the outlet reaches its limit"
        / "Cuándo llega la salida a su límite"
        / "Quand la sortie atteint sa limite",
    ForecastHow = "The curve through the tests" / "La curva por los análisis" / "La courbe par les analyses",
    NotDeterminable = "Not determinable yet." / "Aún no se puede determinar." / "Pas encore déterminable.",
    Likely = "likely" / "probable" / "probable",
    Earliest = "earliest" / "lo más pronto" / "au plus tôt",
    Latest = "latest" / "lo más tarde" / "au plus tard",
    LimitTyped = "limit, as typed" / "límite, como se escribió" / "limite, telle que saisie",
    LimitAssumed = "limit: a tenth of the inlet is taken until one is typed"
        / "límite: se toma un décimo de la entrada hasta que se escriba uno"
        / "limite : un dixième de l’entrée est pris tant qu’aucune n’est saisie",
    TestsUsed = "tests fitted" / "análisis ajustados" / "analyses ajustées",
    TestsNothing = "showed nothing and only bound the curve"
        / "no mostraron nada y solo acotan la curva"
        / "n’ont rien montré et bornent seulement la courbe",
    TestsWhole = "at the inlet or above, left out"
        / "como la entrada o más, dejados fuera"
        / "à l’entrée ou au-dessus, écartées",
    WeighedByInlet = "The inlet varied: places count what came in, as of the mean inlet."
        / "La entrada varió: los puntos cuentan lo que entró, como si fuera la entrada media."
        / "L’entrée a varié : les points comptent ce qui est entré, ramené à l’entrée moyenne.",
    InletOfOther = "Where no inlet was tested the nearest one before stands in."
        / "Donde no se analizó la entrada vale la anterior más cercana."
        / "Là où l’entrée n’a pas été analysée, la précédente la plus proche en tient lieu.",
    ScatterOf = "scatter of one test, share of the inlet"
        / "dispersión de un análisis, parte de la entrada"
        / "dispersion d’une analyse, part de l’entrée",
    RateOfLate = "The date takes the rate of water of the last 90 days."
        / "La fecha toma el consumo de agua de los últimos 90 días."
        / "La date prend le débit d’eau des 90 derniers jours.",
    IntervalCaution = "Errors that last, as of one pack of strips, make the interval too narrow: in a trial it then held in 79 of 100 beds."
        / "Los errores que duran, como los de un paquete de tiras, hacen el intervalo demasiado estrecho: en una prueba acertó entonces en 79 de 100 lechos."
        / "Les erreurs qui durent, comme celles d’un paquet de bandelettes, rendent l’intervalle trop étroit : lors d’un essai il n’a alors tenu que pour 79 lits sur 100.",
    AssumedBefore = "Assumed before readings" / "Supuesto antes de las lecturas" / "Supposé avant les lectures",
    TakesOver = "By now the tests say when; the usual life is set aside."
        / "Ahora los análisis dicen cuándo; la vida habitual se deja a un lado."
        / "Désormais les analyses disent quand ; la durée usuelle est mise de côté.",
    MediaSurface = "Media surface" / "Superficie del medio" / "Surface du média",
    NoTwoTapes = "Two tape readings in one state are needed to say whether media is lost."
        / "Hacen falta dos lecturas de cinta en el mismo estado para decir si se pierde medio."
        / "Il faut deux lectures au ruban dans le même état pour dire si du média se perd.",
    NoTopUp = "No top-up: within the spread."
        / "Sin reposición: dentro del margen."
        / "Pas d’appoint : dans la marge.",
    SettlingTaken = "settling allowance, share of the depth"
        / "margen de asentamiento, parte de la altura"
        / "marge de tassement, part de la hauteur",
    ChartOutlet = "Outlet over inlet" / "Salida entre entrada" / "Sortie sur entrée",
    ChartPressure = "Pressure lost" / "Presión perdida" / "Pression perdue",
    ChartTable = "The same as a table" / "Lo mismo en tabla" / "La même chose en table",
    Share = "Outlet/inlet" / "Salida/entrada" / "Sortie/entrée",
    DaysOfLife = "Day of its life" / "Día de su vida" / "Jour de sa vie",
    WaterOfLife = "Water through it" / "Agua que ha pasado" / "Eau passée",
    Changeout = "New bed put in today" / "Lecho nuevo cargado hoy" / "Nouveau lit mis en place aujourd’hui",
    ChangeoutSure = "End this bed's life and begin the next?"
        / "¿Terminar la vida de este lecho y empezar la siguiente?"
        / "Terminer la vie de ce lit et commencer la suivante ?",
    Rotate = "Lag becomes lead" / "El segundo pasa a primero" / "Le second passe premier",
    RotateHint = "The beds change places; their lives go with the media."
        / "Los lechos cambian de sitio; su vida va con el medio."
        / "Les lits changent de place ; leur vie suit le média.",
    MeterReplaced = "Meter replaced" / "Contador cambiado" / "Compteur remplacé",
    OldMeterEnd = "Old meter at its end" / "Contador viejo al final" / "Ancien compteur à la fin",
    NewMeterStart = "New meter at its start" / "Contador nuevo al principio" / "Nouveau compteur au début",
    Keep = "Keep" / "Guardar" / "Garder",
    Replacement = "Make the replacement job" / "Crear el trabajo de cambio" / "Créer le chantier de remplacement",
    OldRecord = "The bed this job replaces"
        / "El lecho que este trabajo sustituye"
        / "Le lit que ce chantier remplace",
    Expected = "What is expected" / "Lo que se espera" / "Ce qui est attendu",
    ExpectedHint = "The latest kept holds." / "Vale lo último que se guardó." / "Le dernier conservé fait foi.",
    ExpectedKept = "Kept; it holds from now on."
        / "Guardado; vale desde ahora."
        / "Conservé ; valable dès maintenant.",
    WhatHappens = "What happens to it" / "Qué le pasa" / "Ce qui lui arrive",
    Limit = "Outlet limit" / "Límite a la salida" / "Limite en sortie",
    CalendarMonths = "Change after, months" / "Cambiar tras, meses" / "Remplacer après, mois",
    WaterMost = "Change after, water" / "Cambiar tras, agua" / "Remplacer après, eau",
    VisitMonths = "Visit every, months" / "Visitar cada, meses" / "Visiter tous les, mois",
    Settling = "Settling between openings" / "Asentamiento entre aperturas" / "Tassement entre ouvertures",
    NothingDue = "Nothing is looked after yet. Log a visit on a vessel's service card, or sign a loading."
        / "Todavía no se cuida nada. Anote una visita en la ficha de un recipiente, o firme una carga."
        / "Rien n’est encore suivi. Notez une visite sur la fiche d’une cuve, ou signez un chargement.",
    DueHint = "All jobs on this device, what comes first standing first."
        / "Todos los trabajos de este dispositivo, lo que antes toca primero."
        / "Tous les chantiers de cet appareil, le plus proche en premier.",
    CalendarFile = "Save as calendar" / "Guardar como calendario" / "Enregistrer comme calendrier",
    Print = "Print" / "Imprimir" / "Imprimer",
    Due = "Due" / "Fecha" / "Échéance",
    What = "What" / "Qué" / "Quoi",
    Where = "Where" / "Dónde" / "Où",
    Why = "Why" / "Por qué" / "Pourquoi",
    VisitWord = "visit" / "visita" / "visite",
    NewBedWord = "new bed" / "lecho nuevo" / "nouveau lit",
    Untagged = "no tag" / "sin identificación" / "sans repère",
}}
