//! How the page stands on a device: opened as a file, or installed.

labels! {
/// A fixed text about that.
DeviceLabel {
    Inside = "The whole page is in this file" / "La página entera está en este archivo" / "Toute la page est dans ce fichier",
    KeptByBrowser = "Kept by this browser, on this device, not in the file that was opened. Opened elsewhere it may show nothing of it; save a file of what matters."
        / "Lo guarda este navegador, en este dispositivo, no el archivo que se abrió. Abierto en otro sitio puede no mostrar nada; guarde un archivo de lo que importa."
        / "Conservé par ce navigateur, sur cet appareil, pas dans le fichier ouvert. Ouvert ailleurs, il peut ne rien en montrer ; enregistrez un fichier de ce qui compte.",
    FromDisk = "Opened from disk" / "Abierta desde el disco" / "Ouverte depuis le disque",
    FromDiskPlace = "The jobs are not in the file that was opened. Some browsers keep them for the file at this very place, so that it starts empty once it is moved, renamed or copied; others share them with every page that is opened from disk."
        / "Los trabajos no están en el archivo que se abrió. Algunos navegadores los guardan para el archivo en este mismo lugar, de modo que empieza vacío si se mueve, se renombra o se copia; otros los comparten con toda página que se abra desde el disco."
        / "Les chantiers ne sont pas dans le fichier ouvert. Certains navigateurs les gardent pour le fichier à cet endroit précis : déplacé, renommé ou copié, il repart vide ; d’autres les partagent avec toute page ouverte depuis le disque.",
    FromDiskAlone = "Nothing looks after the file: a newer one must be put in its place. Save a backup, or a file of each job that matters: only that goes along to another device."
        / "Nadie se ocupa del archivo: uno más nuevo hay que ponerlo en su lugar. Guarde una copia de seguridad, o un archivo de cada trabajo que importe: solo eso va a otro dispositivo."
        / "Rien ne veille sur le fichier : un plus récent doit être mis à sa place. Enregistrez une sauvegarde, ou un fichier de chaque chantier qui compte : cela seul va sur un autre appareil.",
    Install = "Install on this device" / "Instalar en este dispositivo" / "Installer sur cet appareil",
    InstallAbout = "It then opens like an app, without the browser's bars, and with no connection."
        / "Así se abre como una aplicación, sin las barras del navegador y sin conexión."
        / "Il s’ouvre alors comme une application, sans les barres du navigateur, et hors connexion.",
    InstallOnIos = "To have it as an app that Safari doesn't empty: Share, then “Add to Home Screen”."
        / "Para tenerlo como una aplicación que Safari no vacía: Compartir, luego «Añadir a pantalla de inicio»."
        / "Pour l’avoir comme une application que Safari ne vide pas : Partager, puis « Sur l’écran d’accueil ».",
    AsText = "As a text" / "Como texto" / "En texte",
    AsTextAbout = "This page was opened from disk and has no address, so that no link leads to it. Whoever gets the text pastes it under Receive a job, and can read it."
        / "Esta página se abrió desde el disco y no tiene dirección, así que ningún enlace lleva a ella. Quien reciba el texto lo pega en Recibir un trabajo, y puede leerlo."
        / "Cette page a été ouverte depuis le disque et n’a pas d’adresse : aucun lien n’y mène. Qui reçoit le texte le colle sous Recevoir un chantier, et peut le lire.",
    CopyText = "Copy the text" / "Copiar el texto" / "Copier le texte",
    ShareText = "Share the text" / "Compartir el texto" / "Partager le texte",
    TheText = "The text" / "El texto" / "Le texte",
    CodeForPage = "This page was opened from disk and has no address: only Bedwright reads the code, under Receive a job."
        / "Esta página se abrió desde el disco y no tiene dirección: solo Bedwright lee el código, en Recibir un trabajo."
        / "Cette page a été ouverte depuis le disque et n’a pas d’adresse : seul Bedwright lit le code, sous Recevoir un chantier.",
}
}
