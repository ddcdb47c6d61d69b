"use strict";
// The last net: if the Go program ends, its page stays on the screen and does
// nothing any more. This says so, and that what was typed is safe.
(() => {
  const WORDS = {
    en: {
      title: "Roofside has stopped",
      kept: "The record is safe on this device. Reload to go on.",
      none: "This page could keep nothing on this device: note down what you need from the screen, then reload.",
      reload: "Reload",
      home: "Open the start page",
    },
    es: {
      title: "Roofside se ha detenido",
      kept: "El registro está a salvo en este aparato. Recargue para seguir.",
      none: "Esta página no pudo guardar nada en este aparato: anote lo que necesite de la pantalla y recargue.",
      reload: "Recargar",
      home: "Abrir la página de inicio",
    },
  };
  const home = new URL("../", document.currentScript.src).href;
  const served = document.documentElement.lang;

  // The served page's language says nothing of the reader; one that the program
  // has set does.
  function words() {
    const now = document.documentElement.lang;
    const language = now !== served ? now : navigator.language;
    return language.startsWith("es") ? WORDS.es : WORDS.en;
  }

  function element(tag, text, more) {
    return Object.assign(document.createElement(tag), { textContent: text }, more);
  }

  function say() {
    // Before it has drawn anything it may be damaged on the device.
    if (!window.roofside.live) return window.roofside.stuck(new WebAssembly.RuntimeError("the program ended as it began"));
    if (document.getElementById("ended")) return;
    const say = words();
    const dialog = element("dialog", "", { id: "ended" });
    dialog.setAttribute("role", "alertdialog");
    dialog.setAttribute("aria-labelledby", "ended-title");
    dialog.append(
      element("h2", say.title, { id: "ended-title" }),
      element("p", say[window.roofside.storage]),
      element("button", say.reload, { type: "button", onclick: () => location.reload() }),
      // The way out where the very address or page is what ends the program.
      element("a", say.home, { href: home }),
    );
    document.body.append(dialog);
    if (window.roofside.storage === "kept") dialog.showModal();
    else dialog.show(); // leaves the page within reach, to be copied from

    window.roofside.prove?.().catch(() => {}); // it may be damaged on the device: then a reload finds it mended

    // What go-app has left here would only throw, and stop the link above.
    window.onclick = window.onpopstate = null;
  }

  // wasm_exec.js defines Go later than this runs, and go-app uses it at once:
  // so its arrival is awaited. The program has no end of its own: if run
  // returns, or throws, it has failed.
  Object.defineProperty(window, "Go", {
    configurable: true,
    set(Go) {
      Object.defineProperty(window, "Go", { configurable: true, writable: true, value: Go });
      const run = Go.prototype.run;
      Go.prototype.run = function (instance) { return run.call(this, instance).finally(say); };
    },
  });

  // A trap in the program, or a stack that overflows, does not end run: it
  // comes out wherever the browser had called in. Other errors, such as those
  // of an extension, do not stop the program.
  const fatal = (error) => error instanceof WebAssembly.RuntimeError || error instanceof RangeError;
  addEventListener("error", (event) => { if (fatal(event.error)) say(); });
  addEventListener("unhandledrejection", (event) => { if (fatal(event.reason)) say(); });
})();
