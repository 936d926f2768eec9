// What the scripts beside the page say, in the person's language. Loaded first; the wasm and its texts may not be there.
//
// `window.bedwrightSays(sentence)` gives an English sentence in the language that was chosen in Settings, else in the browser's;
// one that isn't here stays English. `{}` stands for what the caller puts in.
(function () {
  "use strict";

  var OTHERS = {
    "Opening Bedwright.": ["Abriendo Bedwright.", "Ouverture de Bedwright."],
    "Bedwright can't start in this browser": [
      "Bedwright no puede arrancar en este navegador",
      "Bedwright ne peut pas démarrer dans ce navigateur",
    ],
    "It computes on this device and needs WebAssembly, which is turned off or missing here.": [
      "Calcula en este dispositivo y necesita WebAssembly, que aquí está desactivado o no existe.",
      "Il calcule sur cet appareil et a besoin de WebAssembly, désactivé ou absent ici.",
    ],
    "If this page was opened inside another app, open it in the phone's own browser instead: look for “Open in browser” in that app's menu.": [
      "Si esta página se abrió dentro de otra aplicación, ábrala en el navegador del teléfono: busque «Abrir en el navegador» en el menú de esa aplicación.",
      "Si cette page s’est ouverte dans une autre application, ouvrez-la dans le navigateur du téléphone\u202f: cherchez «\u202fOuvrir dans le navigateur\u202f» dans le menu de cette application.",
    ],
    "On an iPhone or iPad in Lockdown Mode: in Safari's page menu choose Website Settings, then turn Lockdown Mode off for this page. Elsewhere, turn off the browser's strictest protection for this page.": [
      "En un iPhone o iPad en modo de aislamiento: en el menú de página de Safari elija la configuración del sitio web y desactive ese modo para esta página. En otros, desactive para esta página la protección más estricta del navegador.",
      "Sur un iPhone ou un iPad en mode Isolement\u202f: dans le menu de page de Safari, choisissez les réglages du site web, puis désactivez ce mode pour cette page. Ailleurs, désactivez pour cette page la protection la plus stricte du navigateur.",
    ],
    "If the browser is older than about 2021, update it. Then load this page again.": [
      "Si el navegador es anterior a 2021, aproximadamente, actualícelo. Después vuelva a cargar esta página.",
      "Si le navigateur date d’avant 2021 environ, mettez-le à jour. Rechargez ensuite cette page.",
    ],
    "This file holds the whole page, packed, and this browser is too old to unpack it. Update the browser (one of 2023 or later will do), then open the file again.": [
      "Este archivo contiene toda la página, comprimida, y este navegador es demasiado antiguo para descomprimirla. Actualice el navegador (basta uno de 2023 o posterior) y vuelva a abrir el archivo.",
      "Ce fichier contient toute la page, compressée, et ce navigateur est trop ancien pour la décompresser. Mettez le navigateur à jour (2023 ou plus récent), puis rouvrez le fichier.",
    ],
    "Bedwright could not start": ["Bedwright no pudo arrancar", "Bedwright n’a pas pu démarrer"],
    "Bedwright has stopped": ["Bedwright se ha detenido", "Bedwright s’est arrêté"],
    "A part of the page did not load or did not run. If there is a connection, load the page again.": [
      "Una parte de la página no se cargó o no se ejecutó. Si hay conexión, vuelva a cargar la página.",
      "Une partie de la page ne s’est pas chargée ou n’a pas pu s’exécuter. S’il y a une connexion, rechargez la page.",
    ],
    "Something went wrong inside the page. What was typed in the last moments may not be kept.": [
      "Algo falló dentro de la página. Es posible que lo escrito en los últimos instantes no se haya guardado.",
      "Quelque chose a échoué dans la page. Ce qui a été saisi dans les derniers instants n’est peut-être pas conservé.",
    ],
    "Nothing was deleted. Download the jobs that are kept on this device first, then load the page again.": [
      "No se borró nada. Descargue primero los trabajos guardados en este dispositivo y después vuelva a cargar la página.",
      "Rien n’a été supprimé. Téléchargez d’abord les chantiers conservés sur cet appareil, puis rechargez la page.",
    ],
    "Download my jobs": ["Descargar mis trabajos", "Télécharger mes chantiers"],
    "Reload": ["Volver a cargar", "Recharger"],
    "Copy details": ["Copiar los detalles", "Copier les détails"],
    "Details": ["Detalles", "Détails"],
    "The details are copied.": ["Los detalles están copiados.", "Les détails sont copiés."],
    "The details are marked. Copy them with the browser's own command.": [
      "Los detalles están seleccionados. Cópielos con la orden del navegador.",
      "Les détails sont sélectionnés. Copiez-les avec la commande du navigateur.",
    ],
    "Nothing is kept on this device; the file says so.": [
      "No hay nada guardado en este dispositivo; el archivo así lo dice.",
      "Rien n’est conservé sur cet appareil\u202f; le fichier le dit.",
    ],
    "The file holds {} saved parts. Keep it.": [
      "El archivo contiene {} partes guardadas. Consérvelo.",
      "Le fichier contient {} parties enregistrées. Gardez-le.",
    ],
    "Not everything could be read: {}.": ["No todo se pudo leer: {}.", "Tout n’a pas pu être lu\u202f: {}."],
    "The file was not shared. Tap again.": [
      "El archivo no se compartió. Toque otra vez.",
      "Le fichier n’a pas été partagé. Touchez encore une fois.",
    ],
  };

  function chosen() {
    try {
      // The first line of what is kept of the person ends with the language.
      return /\s(en|es|fr)(?:\n|$)/.exec(localStorage.getItem("bedwright/person") || "");
    } catch (error) {
      return null;
    }
  }

  // The first language the browser prefers that is known here.
  function preferred() {
    var tags = navigator.languages || [navigator.language];
    for (var at = 0; at < tags.length; at += 1) {
      var tag = String(tags[at]).slice(0, 2).toLowerCase();
      if (tag === "en" || tag === "es" || tag === "fr") {
        return tag;
      }
    }
    return "en";
  }

  var kept = chosen();
  // The page changes it when the person does.
  document.documentElement.lang = kept ? kept[1] : preferred();

  window.bedwrightSays = function (sentence, put) {
    var others = OTHERS[sentence] || [];
    var at = ["es", "fr"].indexOf(document.documentElement.lang);
    return (others[at] || sentence).replace("{}", function () {
      return put;
    });
  };
})();
