//! Fixed texts of the removal sheet, the loading sheet, the start-up report and what leads to them.

labels! {
/// A fixed text of the sheets that somebody empties and loads a vessel by.
LoadingLabel {
    RemovalSheet = "Removal sheet" / "Hoja de vaciado" / "Fiche de vidange",
    LoadingSheet = "Loading sheet" / "Hoja de carga" / "Fiche de chargement",
    StartUpReport = "Start-up report" / "Informe de puesta en marcha" / "Rapport de mise en service",
    Loading = "Removal and loading" / "Vaciado y carga" / "Vidange et chargement",
    RemovalLetters = "RS" / "RS" / "RS",
    LoadingLetters = "LS" / "LS" / "LS",
    StartUpLetters = "SR" / "SR" / "SR",
    DoneBy = "done by · date" / "hecho por · fecha" / "fait par · date",
    LoadedBy = "loaded by · date" / "cargado por · fecha" / "chargé par · date",
    Step = "step" / "paso" / "étape",
    Expected = "tape to expect" / "cinta esperada" / "ruban attendu",
    Read = "tape read" / "cinta leída" / "ruban lu",
    When = "when · who" / "cuándo · quién" / "quand · qui",
    NothingToTakeOut = "A new vessel: there is nothing to take out."
        / "Un recipiente nuevo: no hay nada que sacar."
        / "Une cuve neuve : il n’y a rien à sortir.",
    ChooseVessel = "Each vessel has sheets of its own."
        / "Cada recipiente tiene sus propias hojas."
        / "Chaque cuve a ses propres fiches.",
    NotBegun = "not begun" / "sin empezar" / "pas commencé",
    StepsDone = "steps done" / "pasos hechos" / "étapes faites",
    YourName = "Your name" / "Su nombre" / "Votre nom",
    YourNameHint = "kept on this device; it stands beside each tick and under what you sign"
        / "queda en este dispositivo; figura junto a cada marca y bajo lo que firme"
        / "conservé sur cet appareil ; il figure à côté de chaque coche et sous ce que vous signez",
    Cautions = "Cautions" / "Precauciones" / "Précautions",
    IHaveRead = "I have read them" / "Las he leído" / "Je les ai lues",
    NameFirst = "Type your name first." / "Escriba antes su nombre." / "Saisissez d’abord votre nom.",
    ReadBy = "Read by" / "Leídas por" / "Lues par",
    AnotherDay = "Asked once a day for each person and job."
        / "Se pregunta una vez al día por persona y trabajo."
        / "Demandé une fois par jour à chaque personne et pour chaque chantier.",
    Done = "Done" / "Hecho" / "Fait",
    Optional = "if you like" / "si quiere" / "si vous voulez",
    Tape = "Tape" / "Cinta" / "Ruban",
    TapeAfterPack = "Tape between packs, if you like"
        / "Cinta entre envases, si quiere"
        / "Ruban entre conditionnements, si vous voulez",
    CantBeTaken = "It can't be taken any more" / "Ya no se puede tomar" / "Ne peut plus être prise",
    NotTaken = "not taken" / "no tomada" / "non prise",
    TypeItAfterAll = "Type it after all" / "Escribirla de todos modos" / "La saisir quand même",
    Expect = "expect" / "se espera" / "attendu",
    Planned = "planned" / "planificado" / "prévu",
    WithinSpread = "as expected" / "como se esperaba" / "comme attendu",
    Likely = "Likely:" / "Probable:" / "Probable :",
    Lot = "Lot and date on the packs" / "Lote y fecha en los envases" / "Lot et date sur les conditionnements",
    PacksPoured = "Packs poured, if not as planned"
        / "Envases vertidos, si no como se planificó"
        / "Conditionnements versés, si autrement que prévu",
    WasteBy = "Who decides the waste class"
        / "Quién decide la clase de residuo"
        / "Qui décide de la classe de déchet",
    WasteClass = "Waste class they decided on" / "Clase de residuo que decidió" / "Classe de déchet décidée",
    FoundText = "What was found" / "Lo que se encontró" / "Ce qui a été trouvé",
    SettingsText = "Settings" / "Ajustes" / "Réglages",
    OutletText = "Outlet test" / "Análisis a la salida" / "Analyse en sortie",
    Deviations = "What was done another way, and why"
        / "Qué se hizo de otro modo, y por qué"
        / "Ce qui a été fait autrement, et pourquoi",
    Method = "How it is taken out" / "Cómo se saca" / "Comment on le sort",
    MethodVacuum = "Wet vacuum" / "Aspiradora de líquidos" / "Aspirateur à eau",
    MethodTip = "Tip it, two people" / "Volcar, dos personas" / "Basculer, deux personnes",
    MethodEductor = "Eductor, by a bottom port"
        / "Eyector, por una boca inferior"
        / "Hydro-éjecteur, par un piquage bas",
    MethodManway = "By hand, through the manway" / "A mano, por la boca de hombre" / "À la main, par le trou d’homme",
    MethodOther = "Another way" / "De otro modo" / "Autrement",
    Drums = "Drums" / "Bidones" / "Fûts",
    AddDrum = "Add a drum" / "Añadir un bidón" / "Ajouter un fût",
    RemoveDrum = "Remove drum" / "Quitar el bidón" / "Retirer le fût",
    DrumLabel = "On its label" / "En su etiqueta" / "Sur son étiquette",
    DrumContents = "What is in it" / "Qué contiene" / "Ce qu’il contient",
    DrumWeight = "Weight" / "Peso" / "Poids",
    Drum = "drum" / "bidón" / "fût",
    Photo = "Photo" / "Foto" / "Photo",
    TakePhoto = "Take a photo" / "Hacer una foto" / "Prendre une photo",
    RemovePhoto = "Remove the photo" / "Quitar la foto" / "Retirer la photo",
    PhotoHint = "If you like. It stays on this device and never holds up the text."
        / "Si quiere. Queda en este dispositivo y nunca retrasa el texto."
        / "Si vous voulez. Elle reste sur cet appareil et ne retarde jamais le texte.",
    PhotoElsewhere = "The photo lies on the device that took it."
        / "La foto está en el dispositivo que la hizo."
        / "La photo est sur l’appareil qui l’a prise.",
    PhotoFailed = "The picture could not be kept. Everything else is."
        / "La imagen no se pudo guardar. Todo lo demás, sí."
        / "L’image n’a pas pu être conservée. Tout le reste, si.",
    Sign = "Sign" / "Firmar" / "Signer",
    SignHint = "What is signed is written through to the disk and then frozen; a mistake is set right by a correction."
        / "Lo firmado se escribe hasta el disco y queda fijo; un error se arregla con una corrección."
        / "Ce qui est signé est écrit jusqu’au disque puis figé ; une erreur se répare par une correction.",
    Signing = "Writing it through to the disk …" / "Escribiéndolo hasta el disco …" / "Écriture jusqu’au disque …",
    NotSigned = "Not signed: the browser could not write it through to the disk. Save a file, then try again."
        / "No firmado: el navegador no pudo escribirlo hasta el disco. Guarde un archivo y pruebe otra vez."
        / "Non signé : le navigateur n’a pas pu l’écrire jusqu’au disque. Enregistrez un fichier, puis réessayez.",
    StillLacks = "Before it can be signed:" / "Antes de poder firmar:" / "Avant de pouvoir signer :",
    NotTicked = "Not ticked; the record will say so:"
        / "Sin marcar; el registro lo dirá:"
        / "Non coché ; l’enregistrement le dira :",
    SignedBy = "Signed by" / "Firmado por" / "Signé par",
    AsLoaded = "As loaded" / "Como se cargó" / "Tel que chargé",
    Frozen = "Signed, so nothing here is changed any more."
        / "Firmado: aquí ya no se cambia nada."
        / "Signé : plus rien ne change ici.",
    Correct = "Add a correction" / "Añadir una corrección" / "Ajouter une correction",
    Corrections = "Corrections" / "Correcciones" / "Corrections",
    CorrectionText = "What was wrong, and what is right"
        / "Qué estaba mal, y qué es lo correcto"
        / "Ce qui était faux, et ce qui est juste",
    CorrectionOf = "Of which reading" / "De qué lectura" / "De quelle lecture",
    CorrectionNone = "of no reading" / "de ninguna lectura" / "d’aucune lecture",
    CorrectionTape = "Tape, as it should be" / "Cinta, como debe ser" / "Ruban, tel qu’il doit être",
    CorrectionAdd = "Sign the correction" / "Firmar la corrección" / "Signer la correction",
    CorrectionNeeds = "Say what was wrong." / "Diga qué estaba mal." / "Dites ce qui était faux.",
    Readings = "Tape readings" / "Lecturas de cinta" / "Lectures au ruban",
    Packs = "packs" / "envases" / "conditionnements",
    Higher = "against expected" / "frente a lo esperado" / "par rapport à l’attendu",
    StateAsPoured = "as poured, valve off" / "recién vertida, válvula quitada" / "telle que versée, vanne démontée",
    StateSettled = "settled, at opening" / "asentada, al abrir" / "tassée, à l’ouverture",
    AfterLast = "after the last" / "tras el último" / "après le dernier",
    NoPacks = "left as it was" / "se dejó como estaba" / "laissé tel quel",
    Ladder = "Ladder of tape readings" / "Escala de lecturas de cinta" / "Échelle des lectures au ruban",
    AllSteps = "Every step" / "Todos los pasos" / "Toutes les étapes",
    ToRemoval = "Removal sheet" / "Hoja de vaciado" / "Fiche de vidange",
    ToLoading = "Loading sheet" / "Hoja de carga" / "Fiche de chargement",
    WaitsForPlan = "This vessel's inside or a layer isn't known yet. The steps stand, the tape readings wait."
        / "Aún no se conoce el interior de este recipiente o una capa. Los pasos valen, las lecturas de cinta esperan."
        / "L’intérieur de cette cuve ou une couche n’est pas encore connu. Les étapes valent, les lectures au ruban attendent.",
    CodesDecide = "Local codes, the site's rules and licensed practice decide. Take every figure here as a planning aid."
        / "Deciden las normas locales, las reglas del lugar y los profesionales habilitados. Tome cada cifra de aquí como ayuda para planificar."
        / "Les règlements locaux, les règles du site et les professionnels habilités décident. Prenez chaque chiffre ici comme une aide à la préparation.",
}}
