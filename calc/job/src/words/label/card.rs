//! Fixed texts of the card's charts, of the service card and the due list on paper, and of what one tap says.

labels! {
/// A fixed text of the card's charts, or of the card and the due list on paper.
CardLabel {
    OverTime = "From visit to visit" / "De visita en visita" / "De visite en visite",
    WaterByVisit = "Water through the bed" / "Agua a través del lecho" / "Eau passée à travers le lit",
    LostByVisit = "Pressure lost across the vessel"
        / "Presión perdida en el recipiente"
        / "Pression perdue dans la cuve",
    DaysSince = "day of the bed's life" / "día de vida del lecho" / "jour de vie du lit",
    Clean = "clean" / "limpio" / "propre",
    WaterSaid = "{water} from the first reading of the chart to the last, on {day}."
        / "{water} desde la primera lectura del gráfico hasta la última, el {day}."
        / "{water} de la première lecture du graphique à la dernière, le {day}.",
    LostSaid = "First {first} on {since}, last {last} on {day}."
        / "Primero {first} el {since}, por último {last} el {day}."
        / "D’abord {first} le {since}, en dernier {last} le {day}.",
    CleanSaid = "Clean, at the usual flow in the coldest water, it loses {loss} (worked out; of valve and collectors only what was typed)."
        / "Limpio, con el caudal habitual y el agua más fría, pierde {loss} (calculado; de la válvula y los colectores solo lo escrito)."
        / "Propre, au débit habituel dans l’eau la plus froide, il perd {loss} (calculé ; pour la vanne et les collecteurs, seulement ce qui a été saisi).",
    SameFlow = "Pressures compare only when they are read at the same flow."
        / "Las presiones solo se comparan si se leen con el mismo caudal."
        / "Les pressions ne se comparent que si elles sont lues au même débit.",
    RunByDrop = "Between two washes, by its pressures"
        / "Entre dos lavados, según sus presiones"
        / "Entre deux lavages, d’après ses pressions",
    RunSaid = "{time}, by a straight line through {count} readings of the same flow. Where a cake closes the surface the loss rises faster."
        / "{time}, por una recta a través de {count} lecturas con el mismo caudal. Si una torta cierra la superficie, la pérdida sube más deprisa."
        / "{time}, par une droite à travers {count} relevés au même débit. Si un gâteau ferme la surface, la perte monte plus vite.",
    RunRange = "Nine runs of ten end between {low} and {high}."
        / "Nueve de cada diez terminan entre {low} y {high}."
        / "Neuf sur dix finissent entre {low} et {high}.",
    RunNoTerminal = "Type on the vessel's page, under media life, at which loss of pressure it is washed; then these readings tell how long a run lasts."
        / "Escriba en la página del recipiente, en la vida del medio, con qué pérdida de presión se lava; entonces estas lecturas dicen cuánto dura."
        / "Saisissez sur la page de la cuve, sous la durée de vie du média, à quelle perte de pression on lave ; ces relevés disent alors combien de temps cela dure.",
    BehindCharts = "Readings behind the charts" / "Lecturas de los gráficos" / "Lectures des graphiques",
    ThroughBed = "Through the bed" / "A través del lecho" / "À travers le lit",
    Lost = "Lost" / "Pérdida" / "Perte",
    LeftOut = "left out" / "no se cuenta" / "non comptée",
    PressureRose = "Were the two pressures swapped? After the vessel it shows {after}, before it {before}. They are kept as read."
        / "¿Se intercambiaron las dos presiones? Después del recipiente se lee {after} y antes {before}. Se guardan como se leyeron."
        / "Les deux pressions ont-elles été interverties ? Après la cuve on lit {after}, avant {before}. Elles sont gardées telles quelles.",
    LikelyAnswers = "Outlet {outlet}, drain clear, no grains"
        / "Salida {outlet}, desagüe claro, sin granos"
        / "Sortie {outlet}, égout clair, sans grains",
    CardLetters = "SC" / "FS" / "FE",
    DueLetters = "DL" / "LV" / "LE",
    VisitedBy = "looked after by · date" / "atendido por · fecha" / "suivi par · date",
    CheckedOn = "gone through by · date" / "revisado por · fecha" / "passé en revue par · date",
    Pressures = "Pressure before / after" / "Presión antes / después" / "Pression avant / après",
    Tests = "Inlet / outlet" / "Entrada / salida" / "Entrée / sortie",
    DayAndName = "day · who" / "día · quién" / "jour · qui",
    ByPen = "Next visits, for a pen" / "Próximas visitas, a mano" / "Prochaines visites, au stylo",
    EarlierVisits = "Earlier visits of this bed that stand only in the job: {count}."
        / "Visitas anteriores de este lecho que solo constan en el trabajo: {count}."
        / "Visites antérieures de ce lit qui ne figurent que dans le chantier : {count}.",
    AllJobs = "all jobs" / "todos los trabajos" / "tous les chantiers",
    Rows = "{count} due" / "{count} pendientes" / "{count} à faire",
    Order = "Order or bring now" / "Pedir o llevar ahora" / "À commander ou à apporter maintenant",
    Coming = "By the day" / "Por fecha" / "Par date",
}}
