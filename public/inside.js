// Only in the single file: takes out what is packed inside it, so that nothing is fetched.
//
// Each part is a data element `bedwright-inside-<name>` with its bytes deflated (RFC 1951) and in base64. `page` is asked by
// boot.js; the script after this one puts `start` beside it. What the page asks for by an address (texts of other languages,
// the reader of codes) gets an address of the browser's own memory.
(function () {
  "use strict";

  function text(name) {
    var element = document.getElementById("bedwright-inside-" + name);
    var found = element ? element.textContent.trim() : "";
    if (element) {
      element.remove();
    }
    return found;
  }

  function taken(name) {
    var letters = atob(text(name));
    var bytes = new Uint8Array(letters.length);
    for (var at = 0; at < letters.length; at += 1) {
      bytes[at] = letters.charCodeAt(at);
    }
    return new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  }

  function address(of, put) {
    document.querySelector("meta[name=bedwright-" + put + "]").content = URL.createObjectURL(of);
  }

  function texts(language) {
    return new Response(taken("texts-" + language)).blob().then(function (blob) {
      address(blob, "texts-" + language);
    });
  }

  // The worker's script unpacks its wasm itself, when somebody wants it.
  function reader() {
    var wasm = text("reader");
    if (!wasm) {
      return Promise.resolve();
    }
    return new Response(taken("codes")).text().then(function (script) {
      address(new Blob([script.replace("{{reader}}", wasm)], { type: "text/javascript" }), "codes");
    });
  }

  window.bedwrightInside = {
    start: null,
    // Starts the page; where the browser is too old for it, says so instead.
    page: function (explain) {
      if (typeof DecompressionStream !== "function") {
        explain("Bedwright can't start in this browser", [
          "This file holds the whole page, packed, and this browser is too old to unpack it. Update the browser (one of 2023 or later will do), then open the file again.",
        ]);
        return new Promise(function () {});
      }
      return Promise.all([texts("es"), texts("fr")])
        .then(function () {
          return window.bedwrightInside.start({
            module_or_path: new Response(taken("app"), { headers: { "Content-Type": "application/wasm" } }),
          });
        })
        .then(function () {
          // Without it the page says that it can read no codes.
          reader().catch(function () {});
        });
    },
  };
})();
