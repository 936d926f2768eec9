// The page that shows when Bedwright has stopped: plain DOM, no wasm, nothing is deleted.
//
// `window.bedwrightCrash(message or error)` is called by the panic hook, and from here when wasm traps without one and loading
// the page again isn't the better way. It shows once; what comes later is added to the details. The saved jobs are read here, by script, from local storage (keys
// that start with "bedwright/") and from the journal (IndexedDB `bedwright`, store `journal`).
//
// The file: {format: "bedwright-rescue", version: 1, build, written, entries: {key: text}, journal: {key: value},
// problems: [text]}. In the journal bytes stand as {base64: text}.
(function () {
  "use strict";

  var says = window.bedwrightSays;
  var PREFIX = "bedwright/";
  var JOURNAL_AT_LATEST_MS = 3000;
  var AGAIN = "bedwright-again";
  var AGAIN_AFTER_MS = 60000;
  var build = "";
  var details = [];
  var shown = null;
  var touched = false;
  var again = false;
  var journal = {};
  var journalProblem = "the journal was not read yet";

  window.bedwrightCrash = function (message, when) {
    details.push(message instanceof Error ? inFull(message) : String(message));
    window.bedwrightCrashed = true;
    if (shown) {
      shown.value = report();
      return;
    }
    show(when === "start");
    readJournal().then(
      function (read) {
        journal = read;
        journalProblem = "";
      },
      function (error) {
        journalProblem = "the journal could not be read: " + error;
      },
    );
  };

  function fromWasm(error) {
    return (
      typeof WebAssembly === "object" &&
      typeof WebAssembly.RuntimeError === "function" &&
      error instanceof WebAssembly.RuntimeError
    );
  }

  // What went wrong and where; not every browser repeats the first in the second.
  function inFull(error) {
    var what = String(error);
    var stack = String(error.stack || "");
    return stack.indexOf(what) < 0 ? what + "\n" + stack : stack;
  }

  // An engine may stop in code that is right (DEVELOPERS.md, "Functions with many loops stay apart"). While nobody has touched
  // the page nothing can be lost: it is loaded again, at most once a minute.
  function loadedAgain() {
    if (touched || shown || again) {
      return again;
    }
    try {
      if (Date.now() - Number(sessionStorage.getItem(AGAIN) || 0) < AGAIN_AFTER_MS) {
        return false;
      }
      sessionStorage.setItem(AGAIN, String(Date.now()));
    } catch (error) {
      return false;
    }
    again = true;
    window.location.reload();
    return true;
  }

  ["pointerdown", "keydown", "input"].forEach(function (name) {
    window.addEventListener(
      name,
      function () {
        touched = true;
      },
      true,
    );
  });

  window.addEventListener("error", function (event) {
    if (fromWasm(event.error) && !loadedAgain()) {
      window.bedwrightCrash(event.error);
    }
  });
  window.addEventListener("unhandledrejection", function (event) {
    if (fromWasm(event.reason) && !loadedAgain()) {
      window.bedwrightCrash(event.reason);
    }
  });

  // This script is loaded first, so these listeners are asked first: once stopped, the wasm is not woken again to
  // save a state that may be half done.
  ["pagehide", "visibilitychange", "beforeunload", "hashchange", "popstate", "storage"].forEach(function (name) {
    window.addEventListener(
      name,
      function (event) {
        if (shown || again) {
          event.stopImmediatePropagation();
        }
      },
      true,
    );
  });

  // ---- what is shown --------------------------------------------------------------------------------------------

  function element(tag, text, className) {
    var made = document.createElement(tag);
    if (text) {
      made.textContent = text;
    }
    if (className) {
      made.className = className;
    }
    return made;
  }

  function button(text, action) {
    var made = element("button", text);
    made.type = "button";
    made.addEventListener("click", action);
    return made;
  }

  function report() {
    return "build " + build + "\n" + navigator.userAgent + "\n\n" + details.join("\n\n");
  }

  function show(atStart) {
    var meta = document.querySelector('meta[name="bedwright-build"]');
    build = meta ? meta.content : "";
    var page = element("main", "", "notice-page");
    page.id = "bedwright-crash";
    var told = element("div");
    told.setAttribute("role", "alert");
    page.appendChild(told);
    told.appendChild(element("h1", says(atStart ? "Bedwright could not start" : "Bedwright has stopped")));
    page.appendChild(
      element(
        "p",
        says(
          atStart
            ? "A part of the page did not load or did not run. If there is a connection, load the page again."
            : "Something went wrong inside the page. What was typed in the last moments may not be kept.",
        ),
      ),
    );
    page.appendChild(
      element(
        "p",
        says("Nothing was deleted. Download the jobs that are kept on this device first, then load the page again."),
      ),
    );
    var said = element("p");
    said.setAttribute("role", "status");
    var buttons = element("div", "", "notice-buttons");
    buttons.appendChild(
      button(says("Download my jobs"), function () {
        download(said);
      }),
    );
    buttons.appendChild(
      button(says("Reload"), function () {
        window.location.reload();
      }),
    );
    buttons.appendChild(
      button(says("Copy details"), function () {
        copy(said);
      }),
    );
    page.appendChild(buttons);
    page.appendChild(said);
    shown = element("textarea");
    shown.readOnly = true;
    shown.setAttribute("aria-label", says("Details"));
    shown.value = report();
    page.appendChild(shown);
    document.body.textContent = "";
    document.body.appendChild(page);
    document.title = says("Bedwright has stopped");
  }

  function copy(said) {
    function byHand() {
      shown.focus();
      shown.select();
      said.textContent = says("The details are marked. Copy them with the browser's own command.");
    }
    if (navigator.clipboard && navigator.clipboard.writeText) {
      navigator.clipboard.writeText(report()).then(function () {
        said.textContent = says("The details are copied.");
      }, byHand);
    } else {
      byHand();
    }
  }

  // ---- what is saved --------------------------------------------------------------------------------------------

  function rescue() {
    var problems = journalProblem ? [journalProblem] : [];
    var entries = {};
    try {
      for (var i = 0; i < localStorage.length; i += 1) {
        var key = localStorage.key(i);
        if (key !== null && key.indexOf(PREFIX) === 0) {
          entries[key] = localStorage.getItem(key);
        }
      }
    } catch (error) {
      problems.push("local storage could not be read: " + error);
    }
    return {
      format: "bedwright-rescue",
      version: 1,
      build: build,
      written: new Date().toISOString(),
      entries: entries,
      journal: journal,
      problems: problems,
    };
  }

  function download(said) {
    var kept = rescue();
    var count = Object.keys(kept.entries).length + Object.keys(kept.journal).length;
    var name = "bedwright-rescue-" + kept.written.slice(0, 10) + ".json";
    var blob = new Blob([JSON.stringify(kept, null, 1)], { type: "application/json" });
    var text =
      count === 0
        ? says("Nothing is kept on this device; the file says so.")
        : says("The file holds {} saved parts. Keep it.", count);
    if (kept.problems.length > 0) {
      text += " " + says("Not everything could be read: {}.", kept.problems.join("; "));
    }
    // An installed page on iOS has no way back from a download, so the file goes through the share sheet there.
    if (navigator.standalone === true && typeof File === "function" && navigator.canShare) {
      var file = new File([blob], name, { type: "application/json" });
      if (navigator.canShare({ files: [file] })) {
        navigator.share({ files: [file] }).then(
          function () {
            said.textContent = text;
          },
          function (error) {
            said.textContent = error.name === "AbortError" ? "" : says("The file was not shared. Tap again.");
          },
        );
        return;
      }
    }
    var link = document.createElement("a");
    link.href = URL.createObjectURL(blob);
    link.download = name;
    document.body.appendChild(link);
    link.click();
    link.remove();
    setTimeout(function () {
      URL.revokeObjectURL(link.href);
    }, 60000);
    said.textContent = text;
  }

  // Opens the journal only if there is one: opening makes an empty one otherwise, in the way of the page's own.
  function readJournal() {
    var reading = new Promise(function (resolve, reject) {
      var opening = indexedDB.open("bedwright");
      opening.onupgradeneeded = function () {
        opening.transaction.abort();
      };
      opening.onblocked = function () {
        reject("it is in use");
      };
      opening.onerror = function (event) {
        event.preventDefault();
        if (opening.error && opening.error.name === "AbortError") {
          resolve([[], []]);
        } else {
          reject(String(opening.error));
        }
      };
      opening.onsuccess = function () {
        var database = opening.result;
        if (!database.objectStoreNames.contains("journal")) {
          database.close();
          resolve([[], []]);
          return;
        }
        var transaction = database.transaction("journal", "readonly");
        var store = transaction.objectStore("journal");
        var keys = store.getAllKeys();
        var values = store.getAll();
        transaction.oncomplete = function () {
          database.close();
          resolve([keys.result, values.result]);
        };
        transaction.onabort = function () {
          database.close();
          reject(String(transaction.error));
        };
      };
    });
    var tooLate = new Promise(function (_, reject) {
      setTimeout(function () {
        reject("it did not answer");
      }, JOURNAL_AT_LATEST_MS);
    });
    return Promise.race([reading, tooLate]).then(function (both) {
      return Promise.all(both[1].map(plain)).then(function (values) {
        var read = {};
        both[0].forEach(function (key, at) {
          read[typeof key === "string" ? key : JSON.stringify(key)] = values[at];
        });
        return read;
      });
    });
  }

  // A value of the journal as JSON can hold it.
  function plain(value) {
    if (typeof Blob === "function" && value instanceof Blob) {
      return value.arrayBuffer().then(plain);
    }
    if (value instanceof ArrayBuffer) {
      return base64(new Uint8Array(value));
    }
    if (ArrayBuffer.isView(value)) {
      return base64(new Uint8Array(value.buffer, value.byteOffset, value.byteLength));
    }
    if (Array.isArray(value)) {
      return Promise.all(value.map(plain));
    }
    if (value && typeof value === "object" && Object.getPrototypeOf(value) === Object.prototype) {
      var names = Object.keys(value);
      return Promise.all(
        names.map(function (name) {
          return plain(value[name]);
        }),
      ).then(function (parts) {
        var made = {};
        names.forEach(function (name, at) {
          made[name] = parts[at];
        });
        return made;
      });
    }
    return value === undefined ? null : value;
  }

  function base64(bytes) {
    var text = "";
    for (var at = 0; at < bytes.length; at += 0x8000) {
      text += String.fromCharCode.apply(null, bytes.subarray(at, at + 0x8000));
    }
    return { base64: btoa(text) };
  }
})();
