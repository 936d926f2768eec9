//! Texts of sending a job, of taking one in, and of joining two states of one.

labels! {
/// A text of a job that travels.
TravelLabel {
    Send = "Send this job" / "Enviar este trabajo" / "Envoyer ce chantier",
    SendAbout = "to a colleague, the warehouse, who loads, the customer"
        / "a un colega, al almacén, a quien carga, al cliente"
        / "à un collègue, au magasin, à qui charge, au client",
    Whom = "Whom it is for" / "Para quién es" / "Pour qui",
    Goes = "What goes along" / "Qué se envía" / "Ce qui part",
    Costs = "Costs and margins" / "Costos y márgenes" / "Coûts et marges",
    CostsHint = "what things cost you, markups, and the quote being made, which is made of them"
        / "lo que le cuestan las cosas, los recargos y la oferta en curso, que se hace con ellos"
        / "ce que les choses vous coûtent, les majorations et le devis en cours, qui en est fait",
    CostsStay = "Costs and margins stay here. The quote being made stays too: issue it, and the issued one goes without them."
        / "Los costes y márgenes se quedan aquí. La oferta en curso también: emítala, y la emitida va sin ellos."
        / "Les coûts et les marges restent ici. Le devis en cours aussi : émettez-le, et le devis émis part sans eux.",
    CostsGo = "▲ Costs and margins go along. Whoever gets this can read them."
        / "▲ Los costes y márgenes se envían. Quien reciba esto puede leerlos."
        / "▲ Les coûts et les marges partent. Qui reçoit ceci peut les lire.",
    StaysHere = "What stays here" / "Qué se queda aquí" / "Ce qui reste ici",
    PhotosStay = "Photos stay on this device."
        / "Las fotos se quedan en este aparato."
        / "Les photos restent sur cet appareil.",
    ListStays = "The price list of this device stays; only the rows this job uses can go."
        / "La lista de precios de este aparato se queda; solo pueden ir las filas que usa este trabajo."
        / "La liste de prix de cet appareil reste ; seules les lignes que ce chantier utilise peuvent partir.",
    LandsOn = "Opens at" / "Se abre en" / "S’ouvre sur",
    JobItself = "The job" / "El trabajo" / "Le chantier",
    YourName = "Your name" / "Su nombre" / "Votre nom",
    NameHint = "told to the receiver; may stay empty"
        / "se dice a quien recibe; puede quedar vacío"
        / "dit à qui reçoit ; peut rester vide",
    Ways = "Ways to send it" / "Maneras de enviarlo" / "Façons de l’envoyer",
    AsFile = "As a file" / "Como archivo" / "En fichier",
    AsFileAbout = "Opens with no connection. The surest way: nothing cuts it off."
        / "Se abre sin conexión. La manera más segura: nada lo corta."
        / "S’ouvre sans connexion. La façon la plus sûre : rien ne le coupe.",
    ShareFile = "Share the file" / "Compartir el archivo" / "Partager le fichier",
    SaveIt = "Save the file" / "Guardar el archivo" / "Enregistrer le fichier",
    AsLink = "As a link" / "Como enlace" / "En lien",
    AsLinkAbout = "The job stands in the link itself; no server keeps it. Whoever has the link can read it."
        / "El trabajo está en el enlace mismo; ningún servidor lo guarda. Quien tenga el enlace puede leerlo."
        / "Le chantier est dans le lien même ; aucun serveur ne le garde. Qui a le lien peut le lire.",
    LinkLong = "{count} letters long." / "{count} letras de largo." / "{count} lettres de long.",
    LinkTooLong = "▲ Longer than 4000 letters: many messengers cut such a link. Send the file instead."
        / "▲ Más de 4000 letras: muchos mensajeros cortan un enlace así. Envíe el archivo."
        / "▲ Plus de 4000 lettres : bien des messageries coupent un tel lien. Envoyez le fichier.",
    CopyLink = "Copy the link" / "Copiar el enlace" / "Copier le lien",
    ShareLink = "Share the link" / "Compartir el enlace" / "Partager le lien",
    Copied = "Copied." / "Copiado." / "Copié.",
    NotCopied = "This browser doesn't let the page copy. Hold the text and copy it yourself."
        / "Este navegador no deja copiar a la página. Mantenga pulsado el texto y cópielo usted."
        / "Ce navigateur ne laisse pas la page copier. Appuyez longuement sur le texte et copiez-le.",
    LinkText = "The link" / "El enlace" / "Le lien",
    TapAgain = "The browser asks for another tap."
        / "El navegador pide otro toque."
        / "Le navigateur demande d’appuyer encore.",
    NotShared = "This browser didn't share the file. Save it instead."
        / "Este navegador no compartió el archivo. Guárdelo."
        / "Ce navigateur n’a pas partagé le fichier. Enregistrez-le.",
    Handed = "Handed over." / "Entregado." / "Remis.",
    AsCodes = "As codes on this screen" / "Como códigos en esta pantalla" / "En codes sur cet écran",
    AsCodesAbout = "The other device holds its camera up to this screen: in Bedwright, Receive a job, Read codes. No connection is needed."
        / "El otro aparato acerca su cámara a esta pantalla: en Bedwright, Recibir un trabajo, Leer códigos. No hace falta conexión."
        / "L’autre appareil tend sa caméra vers cet écran : dans Bedwright, Recevoir un chantier, Lire des codes. Aucune connexion n’est nécessaire.",
    OneCode = "One code: any phone's camera opens it."
        / "Un solo código: lo abre la cámara de cualquier teléfono."
        / "Un seul code : la caméra de tout téléphone l’ouvre.",
    ShowCodes = "Show codes" / "Mostrar códigos" / "Montrer des codes",
    HideCodes = "Hide codes" / "Ocultar códigos" / "Cacher les codes",
    TooManyCodes = "It is too long for codes. Send the file instead."
        / "Es demasiado largo para códigos. Envíe el archivo."
        / "C’est trop long pour des codes. Envoyez le fichier.",
    Code = "Code" / "Código" / "Code",
    FrameOf = "{number} of {count}" / "{number} de {count}" / "{number} sur {count}",
    Faster = "Faster" / "Más rápido" / "Plus vite",
    Slower = "Slower" / "Más lento" / "Moins vite",
    Receive = "Receive a job" / "Recibir un trabajo" / "Recevoir un chantier",
    ReceiveHint = "Nothing on this device changes before you say so."
        / "Nada de este aparato cambia antes de que usted lo diga."
        / "Rien ne change sur cet appareil avant que vous le disiez.",
    ChooseFile = "Choose a file" / "Elegir un archivo" / "Choisir un fichier",
    DropHint = "A file or a text can also be dropped here."
        / "Un archivo o un texto también se puede soltar aquí."
        / "Un fichier ou un texte peut aussi être déposé ici.",
    PasteTitle = "Paste what you were sent" / "Pegue lo que le enviaron" / "Collez ce qu’on vous a envoyé",
    PasteHint = "a link, a whole message, the code alone"
        / "un enlace, un mensaje entero, el código solo"
        / "un lien, un message entier, le code seul",
    LookAtIt = "Look at it" / "Mirarlo" / "Regarder",
    NotTaken = "Nothing was taken in." / "No se tomó nada." / "Rien n’a été pris.",
    Came = "What came" / "Lo que llegó" / "Ce qui est arrivé",
    From = "Sent by" / "Enviado por" / "Envoyé par",
    FromNobody = "nobody said who" / "nadie dijo quién" / "personne n’a dit qui",
    SentOn = "{who}, on {day}" / "{who}, el {day}" / "{who}, le {day}",
    AsWritten = "{who} (as the sender wrote it; nothing proves it)"
        / "{who} (como lo escribió quien envía; nada lo prueba)"
        / "{who} (comme l’a écrit qui envoie ; rien ne le prouve)",
    Holds = "It holds" / "Contiene" / "Il contient",
    WithoutCosts = "Costs and margins were kept back."
        / "Los costes y márgenes no se enviaron."
        / "Les coûts et les marges n’ont pas été envoyés.",
    NewHere = "This job isn't on this device yet."
        / "Este trabajo aún no está en este aparato."
        / "Ce chantier n’est pas encore sur cet appareil.",
    KeepIt = "Keep it on this device" / "Guardarlo en este aparato" / "Le garder sur cet appareil",
    IsHere = "This job is on this device already."
        / "Este trabajo ya está en este aparato."
        / "Ce chantier est déjà sur cet appareil.",
    InBin = "▲ Here it lies in the bin." / "▲ Aquí está en la papelera." / "▲ Ici il est dans la corbeille.",
    NothingNew = "It says nothing that isn't here."
        / "No dice nada que no esté aquí."
        / "Il ne dit rien qui ne soit ici.",
    OpenIt = "Open the job" / "Abrir el trabajo" / "Ouvrir le chantier",
    Differs = "What is not the same" / "Lo que no es igual" / "Ce qui diffère",
    DiffersAbout = "What only one side changed is set to that side, where both did, to yours. Change it line by line; then join."
        / "Lo que solo un lado cambió está puesto en ese lado; donde ambos, en el suyo. Cámbielo línea por línea; luego una."
        / "Ce qu’un seul côté a changé est mis de ce côté ; là où les deux l’ont fait, du vôtre. Changez ligne par ligne, puis réunissez.",
    HereIs = "Here" / "Aquí" / "Ici",
    ThereIs = "Came" / "Llegó" / "Arrivé",
    WasBefore = "Before" / "Antes" / "Avant",
    ChangedHere = "changed here" / "cambiado aquí" / "changé ici",
    ChangedThere = "changed by the sender" / "cambiado por quien envía" / "changé par qui envoie",
    ChangedBoth = "changed on both sides" / "cambiado en ambos lados" / "changé des deux côtés",
    KeepMine = "Keep mine" / "Dejar lo mío" / "Garder le mien",
    TakeTheirs = "Take what came" / "Tomar lo que llegó" / "Prendre ce qui est arrivé",
    KeepBothTexts = "Both texts" / "Ambos textos" / "Les deux textes",
    AllMine = "Mine everywhere" / "Lo mío en todo" / "Le mien partout",
    AllTheirs = "What came everywhere" / "Lo que llegó en todo" / "Ce qui est arrivé partout",
    RecordsCome = "Records that come with it (signatures, readings, visits, issues): {count}. They are added to those here."
        / "Registros que vienen con él (firmas, lecturas, visitas, emisiones): {count}. Se añaden a los de aquí."
        / "Relevés qui viennent avec lui (signatures, lectures, visites, émissions) : {count}. Ils s’ajoutent à ceux d’ici.",
    Join = "Join the two" / "Unir los dos" / "Réunir les deux",
    KeepBothJobs = "Keep both: put it beside mine as a job of its own"
        / "Conservar ambos: ponerlo junto al mío como trabajo propio"
        / "Garder les deux : le mettre à côté du mien comme chantier à part",
    PutAway = "Put it away" / "Descartarlo" / "L’écarter",
    Joined = "Joined. What stood here before can be had back with Undo until you leave this job."
        / "Unidos. Lo que estaba aquí antes se recupera con Deshacer hasta que deje este trabajo."
        / "Réunis. Ce qui était ici avant revient avec Annuler tant que vous ne quittez pas ce chantier.",
    Nothing = "nothing" / "nada" / "rien",
    WholeSection = "The whole part" / "La parte entera" / "La partie entière",
    IsExcerpt = "This is the card of one vessel: a part of a job."
        / "Esta es la ficha de un recipiente: parte de un trabajo."
        / "Ceci est la fiche d’une cuve : une partie d’un chantier.",
    OpenCard = "Open the card" / "Abrir la ficha" / "Ouvrir la fiche",
    LinkPage = "This page was opened by a link"
        / "Esta página se abrió con un enlace"
        / "Cette page a été ouverte par un lien",
    InBrowser = "If you use Bedwright as an installed app: the app keeps its jobs apart from this browser. Copy the code, open the app, choose Receive a job and paste."
        / "Si usa Bedwright como aplicación instalada: la aplicación guarda sus trabajos aparte de este navegador. Copie el código, abra la aplicación, elija Recibir un trabajo y pegue."
        / "Si vous utilisez Bedwright comme application installée : elle garde ses chantiers à part de ce navigateur. Copiez le code, ouvrez l’application, choisissez Recevoir un chantier et collez.",
    CopyCode = "Copy the code" / "Copiar el código" / "Copier le code",
    ReadCodes = "Read codes" / "Leer códigos" / "Lire des codes",
    ReadCodesAbout = "Codes on another screen or on a label. The browser asks whether this page may use the camera; the picture stays on this device."
        / "Códigos de otra pantalla o de una etiqueta. El navegador pregunta si esta página puede usar la cámara; la imagen se queda en este aparato."
        / "Des codes sur un autre écran ou une étiquette. Le navigateur demande si cette page peut utiliser la caméra ; l’image reste sur cet appareil.",
    StopReading = "Stop the camera" / "Detener la cámara" / "Arrêter la caméra",
    PhotoOfCode = "A photo of a code" / "Una foto de un código" / "Une photo d’un code",
    PointAtCode = "Hold the camera so that the whole code stands in the picture."
        / "Sostenga la cámara de modo que el código entero esté en la imagen."
        / "Tenez la caméra pour que le code entier soit dans l’image.",
    CameraRefused = "The browser didn't give the camera to this page. Allow it in the browser's settings for this page, or take a photo of the code."
        / "El navegador no dio la cámara a esta página. Permítala en los ajustes del navegador para esta página, o tome una foto del código."
        / "Le navigateur n’a pas donné la caméra à cette page. Autorisez-la dans les réglages du navigateur pour cette page, ou prenez une photo du code.",
    NoCamera = "This device has no camera that a page may use. Choose a photo of the code, or a file."
        / "Este aparato no tiene una cámara que una página pueda usar. Elija una foto del código, o un archivo."
        / "Cet appareil n’a pas de caméra qu’une page puisse utiliser. Choisissez une photo du code, ou un fichier.",
    ReaderMissing = "The reader of codes could not be started. Load this page again, with a connection."
        / "No se pudo iniciar el lector de códigos. Cargue esta página otra vez, con conexión."
        / "Le lecteur de codes n’a pas pu démarrer. Rechargez cette page, avec une connexion.",
    NoCodeInPhoto = "No code could be read in this photo. Take it closer, straight from the front, without glare."
        / "No se pudo leer ningún código en esta foto. Tómela más cerca, de frente, sin reflejos."
        / "Aucun code n’a pu être lu sur cette photo. Prenez-la de plus près, bien en face, sans reflet.",
    FramesMissing = "{read} of {count} read. Still missing: {numbers}."
        / "{read} de {count} leídos. Faltan: {numbers}."
        / "{read} sur {count} lus. Manquent encore : {numbers}.",
    BeginAgain = "Begin again" / "Empezar de nuevo" / "Recommencer",
    SectionHead = "Job" / "Trabajo" / "Chantier",
    SectionSearch = "Search" / "Búsqueda" / "Recherche",
    SectionLater = "A part of a later version"
        / "Una parte de una versión posterior"
        / "Une partie d’une version ultérieure",
    Order = "Order" / "Orden" / "Ordre",
    DamageCut = "Its end is missing: most likely a messenger cut a long link off. Ask for the file instead."
        / "Le falta el final: lo más probable es que un mensajero haya cortado un enlace largo. Pida el archivo."
        / "Il manque la fin : sans doute une messagerie a-t-elle coupé un long lien. Demandez le fichier.",
    DamageChanged = "Something in it was changed on the way, or a piece is missing. Copy it again as a whole, or ask for the file."
        / "Algo cambió por el camino, o falta un trozo. Cópielo otra vez entero, o pida el archivo."
        / "Quelque chose a changé en chemin, ou un morceau manque. Copiez-le à nouveau en entier, ou demandez le fichier.",
    DamageLetter = "At its letter {at} stands “{letter}”, which no code has. Copy it again as a whole, or ask for the file."
        / "En su letra {at} está «{letter}», que ningún código tiene. Cópielo otra vez entero, o pida el archivo."
        / "À sa lettre {at} se trouve « {letter} », qu’aucun code n’a. Copiez-le à nouveau en entier, ou demandez le fichier.",
    DamageOther = "There is no job in it. Paste the whole link or message, or choose the file that was sent."
        / "No hay ningún trabajo en él. Pegue el enlace o el mensaje entero, o elija el archivo que le enviaron."
        / "Il n’y a pas de chantier dedans. Collez tout le lien ou tout le message, ou choisissez le fichier envoyé.",
    DamageTooNew = "It was made by a later version of Bedwright. Update this page, then open it again."
        / "Lo hizo una versión posterior de Bedwright. Actualice esta página y ábralo otra vez."
        / "Il vient d’une version ultérieure de Bedwright. Mettez cette page à jour, puis ouvrez-le à nouveau.",
    DamageTooLong = "Unpacked it would be {million} million letters, more than any job. It is not opened."
        / "Desempaquetado serían {million} millones de letras, más que cualquier trabajo. No se abre."
        / "Déballé, il ferait {million} millions de lettres, plus que tout chantier. Il n’est pas ouvert.",
    DamageTooDeep = "Its lists stand in each other deeper than in any job. It is not opened."
        / "Sus listas están unas dentro de otras más hondo que en cualquier trabajo. No se abre."
        / "Ses listes s’emboîtent plus profondément que dans tout chantier. Il n’est pas ouvert.",
    DamageTooMany = "It holds more values than any job. It is not opened."
        / "Contiene más valores que cualquier trabajo. No se abre."
        / "Il contient plus de valeurs que tout chantier. Il n’est pas ouvert.",
    DamageNotJson = "The file makes no sense from line {line}, letter {column} on: it was cut or changed. Ask for it again."
        / "El archivo no tiene sentido desde la línea {line}, letra {column}: se cortó o cambió. Pídalo otra vez."
        / "Le fichier n’a plus de sens à partir de la ligne {line}, lettre {column} : il a été coupé ou changé. Redemandez-le.",
    DamageOtherFormat = "It is a file of something else. Choose the file that was sent."
        / "Es un archivo de otra cosa. Elija el archivo que le enviaron."
        / "C’est un fichier d’autre chose. Choisissez le fichier envoyé.",
    DamageLacks = "It lacks what every job has: it was cut or changed. Ask for it again."
        / "Le falta lo que todo trabajo tiene: se cortó o cambió. Pídalo otra vez."
        / "Il lui manque ce que tout chantier a : il a été coupé ou changé. Redemandez-le.",
    OtherJob = "They are two different jobs." / "Son dos trabajos distintos." / "Ce sont deux travaux différents.",
    NoSense = "With these choices “{section}” would not make sense. Choose one side for it, or keep both jobs."
        / "Con estas elecciones «{section}» no tendría sentido. Elija un lado, o conserve ambos trabajos."
        / "Avec ces choix « {section} » n’aurait pas de sens. Choisissez un côté, ou gardez les deux travaux.",
    CoverHolds = "Holds: {parts}." / "Contiene: {parts}." / "Contient : {parts}.",
    CoverFrom = "Sent by {from}." / "Enviado por {from}." / "Envoyé par {from}.",
    CoverHow = "To open it: in Bedwright choose “Receive a job” and open this file, or paste the line below. Whoever has it can read it."
        / "Para abrirlo: en Bedwright elija «Recibir un trabajo» y abra este archivo, o pegue la línea de abajo. Quien lo tenga puede leerlo."
        / "Pour l’ouvrir : dans Bedwright choisissez « Recevoir un chantier » et ouvrez ce fichier, ou collez la ligne ci-dessous. Qui l’a peut le lire.",
}}
