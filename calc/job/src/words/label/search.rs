//! Fixed texts of the vessel search.

labels! {
/// A fixed text of the vessel search.
SearchLabel {
    Find = "Find vessels for a flow" / "Buscar recipientes para un caudal" / "Chercher des cuves pour un débit",
    Title = "Vessels for a flow" / "Recipientes para un caudal" / "Cuves pour un débit",
    Hint = "Which sizes, and how many, would do. Sizes and heights are from memory: measure what you are offered."
        / "Qué tamaños, y cuántos, servirían. Tamaños y alturas son de memoria: mida lo que le ofrezcan."
        / "Quelles tailles, et combien, conviendraient. Tailles et hauteurs sont de mémoire : mesurez ce qu’on vous propose.",
    Asked = "What is asked" / "Qué se pide" / "Ce qui est demandé",
    Media = "Media" / "Medio filtrante" / "Média filtrant",
    Underbed = "Gravel in the bottom head" / "Grava en el fondo inferior" / "Gravier dans le fond inférieur",
    NoUnderbed = "none" / "ninguna" / "aucun",
    Riser = "Riser" / "Tubo central" / "Tube central",
    RiserStraight = "In one piece, from above" / "De una pieza, por arriba" / "D’une pièce, par le haut",
    RiserInParts = "In parts, or put in lying down" / "Por partes, o metido tumbado" / "En parties, ou mis couché",
    OtherFlowControl = "Another drain line flow control"
        / "Otro regulador de caudal del desagüe"
        / "Un autre régulateur de débit à l’égout",
    FlowControlHint = "another size you can get; those known here are thought of anyway"
        / "otro tamaño que pueda conseguir; los de aquí se tienen en cuenta siempre"
        / "un autre calibre que vous pouvez avoir ; ceux connus ici sont essayés de toute façon",
    ClearanceHint = "from the floor to the lowest thing above"
        / "del suelo a lo más bajo que hay encima"
        / "du sol à la chose la plus basse au-dessus",
    Suit = "Would do" / "Servirían" / "Conviendraient",
    NoneSuits = "No size would do. Those that come nearest stand below, with what they miss."
        / "Ningún tamaño serviría. Los que más se acercan están abajo, con lo que les falta."
        / "Aucune taille ne conviendrait. Les plus proches sont dessous, avec ce qui leur manque.",
    MoreThatSuit = "More that would do" / "Más que servirían" / "D’autres qui conviendraient",
    Miss = "Won't do" / "No sirven" / "Ne conviennent pas",
    TooSmall = "too small for one pack" / "demasiado pequeño para un envase" / "trop petite pour un conditionnement",
    Make = "Make this vessel" / "Crear este recipiente" / "Créer cette cuve",
    EachVessel = "each" / "cada uno" / "chacune",
    Together = "together" / "en total" / "ensemble",
    Packs = "packs" / "envases" / "conditionnements",
    FlowPerArea = "flow per area" / "caudal por área" / "débit surfacique",
    ContactTime = "contact time" / "tiempo de contacto" / "temps de contact",
    ContactTimePair = "of both" / "de ambos" / "des deux",
    Loss = "pressure lost, clean" / "presión perdida, limpio" / "pression perdue, propre",
    WhileWashing = "while one is washed" / "mientras se lava uno" / "pendant qu’une se lave",
    Freeboard = "freeboard" / "espacio libre" / "hauteur libre",
    FlowControl = "drain line flow control" / "regulador de caudal del desagüe" / "régulateur de débit à l’égout",
    Expansion = "expansion, cold to warm" / "expansión, fría a cálida" / "expansion, froide à chaude",
    Height = "clear height needed" / "altura libre necesaria" / "hauteur dégagée nécessaire",
    Operating = "weight in operation" / "peso en operación" / "poids en service",
    WithoutVessel = "without the vessel" / "sin el recipiente" / "sans la cuve",
    Spare = "Rules:" / "Reglas:" / "Règles :",
    Judged = "What was judged" / "Qué se juzgó" / "Ce qui a été jugé",
    AskFor = "to be asked for: no size known here is so large"
        / "hay que pedirlo: ningún tamaño conocido aquí es tan grande"
        / "à demander : aucun calibre connu ici n’est aussi grand",
    TagStart = "V-" / "V-" / "V-",
    Waits = "Type the flow to see what would do."
        / "Escriba el caudal para ver qué serviría."
        / "Saisissez le débit pour voir ce qui conviendrait.",
}
}
