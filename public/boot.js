// Starts the page: checks what the browser can do, loads the wasm, looks after the service worker.
//
// With the page it speaks through events on `window` and attributes of <html> (an attribute also tells what was said
// before the page was there to listen):
//
//   out  bedwright-update-waiting    data-update="waiting"     a new build is ready; nothing happens until accepted
//   out  bedwright-update-elsewhere  data-update="elsewhere"   another tab took the new build; this page is the old one
//   in   bedwright-update-accept     the person wants it (save first): the new build takes over, the page reloads once
//   out  bedwright-offline-ready     data-offline="ready"      detail: build id; every listed file is on this device
//   out  bedwright-offline-not-ready data-offline="not-ready"  data-offline-reason: no-worker, refused, installing,
//                                                              missing-files, install-failed, repair-needs-connection
//   out                              data-offline="inside"     the single file: all of the page is in it, there is no worker
//   out  bedwright-install-changed   data-install="offered"    the browser offers to install the page, or no longer does
//   in   bedwright-install           let the browser ask the person (from a tap)
//   in   bedwright-offline-check     look again
//   in   bedwright-offline-repair    unregister the worker, drop the caches, reload (only with a connection)
(function () {
  "use strict";

  var root = document.documentElement;
  // The single file brings everything along (inside.js).
  var inside = window.bedwrightInside;
  var RELOAD_AT_LATEST_MS = 5000;
  var ASK_FOR_UPDATE_EVERY_MS = 60 * 60 * 1000;
  var WORKER_MUST_ANSWER_MS = 5000;

  function say(name, detail) {
    window.dispatchEvent(new CustomEvent(name, { detail: detail }));
  }

  // ---- the page -------------------------------------------------------------------------------------------------

  function explain(title, sentences) {
    var page = document.createElement("main");
    page.className = "notice-page";
    var heading = document.createElement("h1");
    heading.textContent = window.bedwrightSays(title);
    page.appendChild(heading);
    sentences.forEach(function (sentence) {
      var line = document.createElement("p");
      line.textContent = window.bedwrightSays(sentence);
      page.appendChild(line);
    });
    document.body.textContent = "";
    document.body.appendChild(page);
  }

  function start() {
    if (typeof WebAssembly !== "object" || typeof WebAssembly.instantiate !== "function") {
      explain("Bedwright can't start in this browser", [
        "It computes on this device and needs WebAssembly, which is turned off or missing here.",
        "If this page was opened inside another app, open it in the phone's own browser instead: look for “Open in browser” in that app's menu.",
        "On an iPhone or iPad in Lockdown Mode: in Safari's page menu choose Website Settings, then turn Lockdown Mode off for this page. Elsewhere, turn off the browser's strictest protection for this page.",
        "If the browser is older than about 2021, update it. Then load this page again.",
      ]);
      return;
    }
    var opening = document.createElement("p");
    opening.className = "notice-line";
    opening.setAttribute("role", "status");
    opening.textContent = window.bedwrightSays("Opening Bedwright.");
    document.body.appendChild(opening);
    (inside ? inside.page(explain) : fetched()).then(
      function () {
        opening.remove();
        root.dataset.page = "started";
      },
      function (error) {
        window.bedwrightCrash(error, "start");
      },
    );
  }

  function fetched() {
    var script = document.getElementById("bedwright-script").href;
    var wasm = document.getElementById("bedwright-wasm").href;
    return import(script).then(function (page) {
      return page.default({ module_or_path: wasm });
    });
  }

  // ---- the service worker ---------------------------------------------------------------------------------------

  var registration = null;
  var accepted = false;
  var reloading = false;

  function reloadOnce() {
    if (!reloading) {
      reloading = true;
      window.location.reload();
    }
  }

  function notReady(reason) {
    root.dataset.offline = "not-ready";
    root.dataset.offlineReason = reason;
    say("bedwright-offline-not-ready", { reason: reason });
  }

  function updateWaits() {
    if (root.dataset.update !== "waiting") {
      root.dataset.update = "waiting";
      say("bedwright-update-waiting");
    }
  }

  // A worker that waits while another one is active is an update; the first one of all is not.
  function lookForUpdate() {
    if (registration.waiting && registration.active) {
      updateWaits();
    }
  }

  function followInstallation(worker) {
    worker.addEventListener("statechange", function () {
      if (worker.state === "installed") {
        lookForUpdate();
      } else if (worker.state === "activated") {
        checkOffline();
      } else if (worker.state === "redundant" && !registration.active) {
        notReady("install-failed");
      }
    });
  }

  function checkOffline() {
    var worker = registration && registration.active;
    if (!worker) {
      if (registration && !registration.installing && !registration.waiting) {
        notReady("install-failed");
      } else {
        notReady("installing");
      }
      return;
    }
    if (worker.state === "activating") {
      // Its state change asks again.
      worker.addEventListener("statechange", checkOffline, { once: true });
      return;
    }
    var channel = new MessageChannel();
    var tooLate = setTimeout(function () {
      notReady("missing-files");
    }, WORKER_MUST_ANSWER_MS);
    channel.port1.onmessage = function (event) {
      clearTimeout(tooLate);
      if (event.data.missing.length === 0) {
        root.dataset.offline = "ready";
        delete root.dataset.offlineReason;
        say("bedwright-offline-ready", event.data.build);
      } else {
        notReady("missing-files");
      }
    };
    worker.postMessage({ type: "OFFLINE_STATE" }, [channel.port2]);
  }

  function accept() {
    accepted = true;
    var waiting = registration && registration.waiting;
    if (!waiting) {
      // Another tab was first, or it is gone: the page that a reload brings is the newest there is.
      reloadOnce();
      return;
    }
    setTimeout(reloadOnce, RELOAD_AT_LATEST_MS);
    waiting.postMessage({ type: "SKIP_WAITING" });
  }

  // Without a connection a repair would take away what is still there.
  function repair() {
    fetch("./sw.js", { cache: "no-store" })
      .then(function (response) {
        if (!response.ok) {
          throw new Error(String(response.status));
        }
        var gone = registration ? registration.unregister() : Promise.resolve();
        return gone
          .then(function () {
            return window.caches ? caches.keys() : [];
          })
          .then(function (names) {
            return Promise.all(
              names
                .filter(function (name) {
                  return name.indexOf("bedwright-") === 0;
                })
                .map(function (name) {
                  return caches.delete(name);
                }),
            );
          });
      })
      .then(reloadOnce, function () {
        notReady("repair-needs-connection");
      });
  }

  function lookAfterWorker() {
    window.addEventListener("bedwright-offline-repair", repair);
    window.addEventListener("bedwright-update-accept", accept);
    window.addEventListener("bedwright-offline-check", function () {
      if (registration) {
        checkOffline();
      }
    });
    if (!("serviceWorker" in navigator)) {
      notReady("no-worker");
      return;
    }
    var hadController = Boolean(navigator.serviceWorker.controller);
    navigator.serviceWorker.addEventListener("controllerchange", function () {
      if (accepted) {
        reloadOnce();
      } else if (hadController) {
        root.dataset.update = "elsewhere";
        say("bedwright-update-elsewhere");
      }
      hadController = true;
    });
    navigator.serviceWorker.register("./sw.js", { updateViaCache: "none" }).then(
      function (made) {
        // A browser that forbids workers may answer with nothing instead of refusing.
        if (!made) {
          notReady("refused");
          return;
        }
        registration = made;
        lookForUpdate();
        if (made.installing) {
          followInstallation(made.installing);
        }
        made.addEventListener("updatefound", function () {
          if (made.installing) {
            followInstallation(made.installing);
          }
        });
        checkOffline();
        askForUpdates();
      },
      function () {
        notReady("refused");
      },
    );
  }

  // A page that stays open for days asks now and then when it comes back into view.
  function askForUpdates() {
    var asked = Date.now();
    document.addEventListener("visibilitychange", function () {
      if (document.visibilityState === "visible" && Date.now() - asked > ASK_FOR_UPDATE_EVERY_MS) {
        asked = Date.now();
        // Without a connection there is nothing to learn.
        registration.update().catch(function () {});
      }
    });
  }

  // ---- the page as an app ---------------------------------------------------------------------------------------

  var offer = null;

  function offered(event) {
    offer = event;
    if (event) {
      root.dataset.install = "offered";
    } else {
      delete root.dataset.install;
    }
    say("bedwright-install-changed");
  }

  window.addEventListener("beforeinstallprompt", function (event) {
    event.preventDefault();
    offered(event);
  });
  window.addEventListener("appinstalled", function () {
    offered(null);
  });
  window.addEventListener("bedwright-install", function () {
    var asked = offer;
    // It is good for one asking.
    offered(null);
    if (asked) {
      asked.prompt();
    }
  });
  // A file that was opened with the installed page: to the screen that takes jobs in.
  if (window.launchQueue) {
    window.launchQueue.setConsumer(function (launch) {
      if (launch.files && launch.files[0]) {
        launch.files[0]
          .getFile()
          .then(function (file) {
            return file.text();
          })
          .then(
            function (text) {
              window.location.hash = "/open/" + encodeURIComponent(text);
            },
            function () {
              window.location.hash = "/open";
            },
          );
      }
    });
  }

  if (inside) {
    root.dataset.offline = "inside";
  }
  start();
  if (!inside) {
    lookAfterWorker();
  }
})();
