//! Fixed texts of backup, storage and several tabs.

labels! {
/// A fixed text of the screen of backup and storage, or of a notice about what is kept.
KeepingLabel {
    Title = "Backup and storage" / "Copia de seguridad y almacenamiento" / "Sauvegarde et stockage",
    Backup = "Backup" / "Copia de seguridad" / "Sauvegarde",
    BackupAbout = "Every job with its records and photos, the price list, what was set aside, and how you like things, in one file. The invented sample is no part of it. Keep the file somewhere else than on this device: it holds costs and customers, and whoever has it can read it."
        / "Cada trabajo con sus registros y fotos, la lista de precios, lo que se apartó y sus preferencias, en un solo archivo. El ejemplo inventado no forma parte de él. Guarde el archivo en otro lugar que no sea este dispositivo: contiene costes y clientes, y quien lo tenga puede leerlo."
        / "Chaque chantier avec ses relevés et photos, la liste de prix, ce qui a été mis de côté et vos préférences, dans un seul fichier. L’exemple inventé n’en fait pas partie. Gardez le fichier ailleurs que sur cet appareil : il contient des coûts et des clients, et quiconque l’a peut le lire.",
    SaveBackup = "Save a backup" / "Guardar una copia" / "Enregistrer une sauvegarde",
    NoBackupYet = "There is no backup yet." / "Todavía no hay ninguna copia." / "Il n’y a pas encore de sauvegarde.",
    LastBackup = "Last backup: {day}." / "Última copia: {day}." / "Dernière sauvegarde : {day}.",
    NothingChanged = "Nothing was changed since." / "Nada ha cambiado desde entonces." / "Rien n’a changé depuis.",
    NothingToBackUp = "There is nothing to back up yet."
        / "Todavía no hay nada que copiar."
        / "Il n’y a encore rien à sauvegarder.",
    JobsChanged = "Jobs new or changed since: {count}."
        / "Trabajos nuevos o cambiados desde entonces: {count}."
        / "Chantiers nouveaux ou modifiés depuis : {count}.",
    JobsUnsaved = "Jobs in no backup: {count}."
        / "Trabajos sin copia: {count}."
        / "Chantiers sans sauvegarde : {count}.",
    PricesChanged = "The price list was changed." / "La lista de precios ha cambiado." / "La liste de prix a changé.",
    BackupHanded = "The file {name} was handed to the browser. See that it arrived: a page isn't told."
        / "El archivo {name} se entregó al navegador. Compruebe que llegó: a una página no se le comunica."
        / "Le fichier {name} a été remis au navigateur. Vérifiez qu’il est arrivé : une page ne l’apprend pas.",
    BackupShared = "The file {name} was handed over."
        / "El archivo {name} se entregó."
        / "Le fichier {name} a été transmis.",
    BackupTapAgain = "The file is ready. Tap once more."
        / "El archivo está listo. Toque otra vez."
        / "Le fichier est prêt. Touchez encore une fois.",
    BackupFailed = "The file could not be handed over."
        / "No se pudo entregar el archivo."
        / "Le fichier n’a pas pu être transmis.",
    PhotosUnread = "The photos could not be read; they are not in the file."
        / "No se pudieron leer las fotos; no están en el archivo."
        / "Les photos n’ont pas pu être lues ; elles ne sont pas dans le fichier.",
    Remind = "It is time for a backup." / "Es hora de hacer una copia." / "Il est temps de faire une sauvegarde.",
    PutOff = "Not this week" / "Esta semana no" / "Pas cette semaine",
    RestoreTitle = "Bring a backup in" / "Traer una copia" / "Reprendre une sauvegarde",
    RestoreAbout = "The file is tried first: you see what it would do, and nothing changes before you say so."
        / "Primero se prueba el archivo: usted ve qué haría, y nada cambia antes de que lo diga."
        / "Le fichier est d’abord essayé : vous voyez ce qu’il ferait, et rien ne change avant que vous le disiez.",
    TryBackup = "Try a backup" / "Probar una copia" / "Essayer une sauvegarde",
    Trial = "What the backup would do" / "Qué haría la copia" / "Ce que ferait la sauvegarde",
    MadeOn = "Made on {day}" / "Hecha el {day}" / "Faite le {day}",
    New = "new" / "nuevos" / "nouveaux",
    Same = "the same" / "iguales" / "identiques",
    Newer = "newer than here" / "más nuevos que aquí" / "plus récents qu’ici",
    Older = "older than here" / "más antiguos que aquí" / "plus anciens qu’ici",
    Conflicting = "changed on both sides" / "cambiados en ambos lados" / "modifiés des deux côtés",
    WillNew = "new: it comes in" / "nuevo: entra" / "nouveau : il est ajouté",
    WillNewer = "newer than here: it takes the place of the one here"
        / "más nuevo que aquí: ocupa su lugar"
        / "plus récent qu’ici : il prend sa place",
    WillOlder = "older than here: the one here stays"
        / "más antiguo que aquí: se queda el de aquí"
        / "plus ancien qu’ici : celui d’ici reste",
    WillBoth = "changed on both sides: both are kept, the backup's as a job of its own"
        / "cambiado en ambos lados: se conservan los dos, el de la copia como trabajo aparte"
        / "modifié des deux côtés : les deux sont gardés, celui de la sauvegarde comme chantier à part",
    AndMore = "and more: {count}" / "y más: {count}" / "et d’autres : {count}",
    FromBackup = "{title} (backup of {day})" / "{title} (copia del {day})" / "{title} (sauvegarde du {day})",
    PriceRows = "Price list: {fresh} rows new, {differing} different, {same} the same."
        / "Lista de precios: {fresh} filas nuevas, {differing} distintas, {same} iguales."
        / "Liste de prix : {fresh} lignes nouvelles, {differing} différentes, {same} identiques.",
    PricesUnread = "The price list in it can't be read here; it is left out."
        / "La lista de precios que contiene no se puede leer aquí; se deja fuera."
        / "La liste de prix qu’il contient ne peut pas être lue ici ; elle est laissée de côté.",
    TakeRows = "Take the different rows as well; Undo on the price list takes them back"
        / "Tomar también las filas distintas; Deshacer en la lista de precios las devuelve"
        / "Prendre aussi les lignes différentes ; Annuler sur la liste de prix les rend",
    TakePerson = "Take units, marks, paper and name from the backup"
        / "Tomar unidades, signos, papel y nombre de la copia"
        / "Prendre unités, signes, papier et nom de la sauvegarde",
    PhotosIn = "Photos that aren't here: {count}."
        / "Fotos que no están aquí: {count}."
        / "Photos qui ne sont pas ici : {count}.",
    AsideIn = "Texts that were set aside: {count}."
        / "Textos que se apartaron: {count}."
        / "Textes mis de côté : {count}.",
    TakeIn = "Take it in" / "Tomarla" / "La reprendre",
    LeaveAll = "Leave everything as it is" / "Dejar todo como está" / "Tout laisser tel quel",
    NothingNew = "Everything in it is here already."
        / "Todo lo que contiene ya está aquí."
        / "Tout ce qu’elle contient est déjà ici.",
    TakenIn = "Taken in. Jobs that came or changed: {count}."
        / "Tomada. Trabajos que llegaron o cambiaron: {count}."
        / "Reprise. Chantiers ajoutés ou modifiés : {count}.",
    NotTaken = "Nothing was changed." / "No se cambió nada." / "Rien n’a été changé.",
    WhyTooLong = "The file is longer than any backup."
        / "El archivo es más largo que cualquier copia."
        / "Le fichier est plus long que toute sauvegarde.",
    WhyOther = "This file is no backup."
        / "Este archivo no es una copia de seguridad."
        / "Ce fichier n’est pas une sauvegarde.",
    WhyOneJob = "This file is one job. Open it on the page of all jobs."
        / "Este archivo es un solo trabajo. Ábralo en la página de todos los trabajos."
        / "Ce fichier est un seul chantier. Ouvrez-le sur la page de tous les chantiers.",
    WhyCut = "The end of the file is missing: it was cut off on its way. Get it once more."
        / "Falta el final del archivo: se cortó por el camino. Consígalo otra vez."
        / "La fin du fichier manque : il a été coupé en route. Procurez-vous-le à nouveau.",
    WhyChanged = "The file was damaged or changed since it was written. Get it once more."
        / "El archivo se dañó o se cambió desde que se escribió. Consígalo otra vez."
        / "Le fichier a été abîmé ou modifié depuis son écriture. Procurez-vous-le à nouveau.",
    WhyTooNew = "The file is from a later version of Bedwright. Update this page, then try again."
        / "El archivo es de una versión posterior de Bedwright. Actualice esta página e inténtelo otra vez."
        / "Le fichier vient d’une version plus récente de Bedwright. Mettez cette page à jour, puis réessayez.",
    WhyJob = "A job in the file can't be read."
        / "Un trabajo del archivo no se puede leer."
        / "Un chantier du fichier ne peut pas être lu.",
    WhyNotRead = "The browser could not read the file."
        / "El navegador no pudo leer el archivo."
        / "Le navigateur n’a pas pu lire le fichier.",
    Storage = "Storage" / "Almacenamiento" / "Stockage",
    StorageAbout = "Everything is kept in this browser, on this device, in two places. A browser can lose what it keeps: only a backup elsewhere is safe."
        / "Todo se guarda en este navegador, en este dispositivo, en dos lugares. Un navegador puede perder lo que guarda: solo una copia en otro lugar es segura."
        / "Tout est gardé dans ce navigateur, sur cet appareil, à deux endroits. Un navigateur peut perdre ce qu’il garde : seule une sauvegarde ailleurs est sûre.",
    UsedOf = "{used} of about {all} used, {left} left"
        / "{used} de unos {all} usados, quedan {left}"
        / "{used} sur environ {all} utilisés, reste {left}",
    RoomSource = "How much a browser gives is not told; about 5 million letters is common practice."
        / "No se comunica cuánto da un navegador; unos 5 millones de letras es la práctica habitual."
        / "Ce qu’un navigateur accorde n’est pas dit ; environ 5 millions de lettres est l’usage.",
    Letters = "{count} letters" / "{count} letras" / "{count} lettres",
    ThousandLetters = "{count} thousand letters" / "{count} mil letras" / "{count} milliers de lettres",
    MillionLetters = "{count} million letters" / "{count} millones de letras" / "{count} millions de lettres",
    OfJobs = "Jobs" / "Trabajos" / "Chantiers",
    OfPrices = "Price list" / "Lista de precios" / "Liste de prix",
    OfAside = "Set aside" / "Apartado" / "Mis de côté",
    OfRest = "All else" / "Todo lo demás" / "Tout le reste",
    OfOthers = "Other pages of this address" / "Otras páginas de esta dirección" / "Autres pages de cette adresse",
    Everything = "With photos and the second copy: {used} of about {all} that the browser allows."
        / "Con las fotos y la segunda copia: {used} de unos {all} que permite el navegador."
        / "Avec les photos et la seconde copie : {used} sur environ {all} que le navigateur permet.",
    EverythingUnknown = "How much photos and the second copy take, this browser doesn't tell."
        / "Cuánto ocupan las fotos y la segunda copia, este navegador no lo dice."
        / "Ce que prennent les photos et la seconde copie, ce navigateur ne le dit pas.",
    LocalBlocked = "This browser lets the page keep nothing in its first place."
        / "Este navegador no deja que la página guarde nada en su primer lugar."
        / "Ce navigateur ne laisse la page rien garder au premier endroit.",
    Promised = "The browser promised not to erase it by itself. You still can, and a device can be lost."
        / "El navegador prometió no borrarlo por sí mismo. Usted sí puede, y un dispositivo se puede perder."
        / "Le navigateur a promis de ne pas l’effacer de lui-même. Vous le pouvez encore, et un appareil peut se perdre.",
    NotPromised = "The browser did not promise to keep it: it may erase it when room is short, or when this page wasn't opened for a while."
        / "El navegador no prometió conservarlo: puede borrarlo si falta espacio o si esta página no se abre durante un tiempo."
        / "Le navigateur n’a pas promis de le garder : il peut l’effacer quand la place manque, ou quand cette page n’a pas été ouverte depuis un moment.",
    PromiseUnknown = "This browser doesn't say whether it may erase it by itself."
        / "Este navegador no dice si puede borrarlo por sí mismo."
        / "Ce navigateur ne dit pas s’il peut l’effacer de lui-même.",
    AskPromise = "Ask the browser to keep it"
        / "Pedir al navegador que lo conserve"
        / "Demander au navigateur de le garder",
    OnIos = "On an iPhone or iPad" / "En un iPhone o iPad" / "Sur un iPhone ou iPad",
    IosErases = "Safari erases all that a page keeps when the page isn't opened for seven days of use."
        / "Safari borra todo lo que guarda una página si no se abre durante siete días de uso."
        / "Safari efface tout ce qu’une page garde si elle n’est pas ouverte pendant sept jours d’utilisation.",
    IosInstall = "Put on the Home Screen (Share, then “Add to Home Screen”), the page is spared that."
        / "Puesta en la pantalla de inicio (Compartir, luego «Añadir a pantalla de inicio»), la página se libra de eso."
        / "Placée sur l’écran d’accueil (Partager, puis « Sur l’écran d’accueil »), la page y échappe.",
    IosApart = "The page on the Home Screen keeps jobs of its own and doesn't see those of this tab. Save a backup here first, then open it there."
        / "La página de la pantalla de inicio guarda sus propios trabajos y no ve los de esta pestaña. Guarde primero una copia aquí y luego ábrala allí."
        / "La page de l’écran d’accueil garde ses propres chantiers et ne voit pas ceux de cet onglet. Enregistrez d’abord une sauvegarde ici, puis ouvrez-la là-bas.",
    Follows = "This job is open in another tab. What is typed there shows here; here nothing can be changed."
        / "Este trabajo está abierto en otra pestaña. Lo que se escribe allí se ve aquí; aquí no se puede cambiar nada."
        / "Ce chantier est ouvert dans un autre onglet. Ce qui y est saisi s’affiche ici ; ici, rien ne peut être changé.",
    WorkHere = "Work here instead" / "Trabajar aquí" / "Travailler ici",
    TakenElsewhere = "Another tab took this job over. What was typed here is kept."
        / "Otra pestaña se hizo cargo de este trabajo. Lo que se escribió aquí está guardado."
        / "Un autre onglet a repris ce chantier. Ce qui a été saisi ici est gardé.",
    NewerFormat = "A later version of Bedwright has written here. This tab is the older one and writes nothing more, so that nothing is overwritten. Load the page again."
        / "Una versión posterior de Bedwright ha escrito aquí. Esta pestaña es la antigua y no escribe más, para no sobrescribir nada. Cargue la página otra vez."
        / "Une version plus récente de Bedwright a écrit ici. Cet onglet est l’ancien et n’écrit plus rien, pour ne rien écraser. Rechargez la page.",
    OnlyInJournal = "The browser's first place is full. What you type is kept in the second place alone. Save a backup, then erase jobs you don't need."
        / "El primer lugar del navegador está lleno. Lo que escribe se guarda solo en el segundo. Guarde una copia y luego borre trabajos que no necesite."
        / "Le premier endroit du navigateur est plein. Ce que vous saisissez n’est gardé qu’au second. Enregistrez une sauvegarde, puis effacez les chantiers inutiles.",
    Emptied = "What this browser kept was erased while the page was open. What the page still had was kept anew."
        / "Lo que guardaba este navegador se borró mientras la página estaba abierta. Lo que la página aún tenía se guardó de nuevo."
        / "Ce que ce navigateur gardait a été effacé pendant que la page était ouverte. Ce que la page avait encore a été gardé à nouveau.",
    AllGone = "There were jobs in this browser, and they are gone: it, or somebody, erased what the page kept. A backup brings them back."
        / "Había trabajos en este navegador y ya no están: él, o alguien, borró lo que la página guardaba. Una copia los devuelve."
        / "Il y avait des chantiers dans ce navigateur, et ils ont disparu : lui, ou quelqu’un, a effacé ce que la page gardait. Une sauvegarde les rend.",
}
}
