"use strict";
// Where the program can't start, this says so in the reader's language, has the worker
// mend what is damaged on the device, and hands the records out without the program.
// Where the page's first script itself is what is damaged, the worker sends this one
// alone in its place.
(() => {
  const roofside = (window.roofside ??= {});
  const WORDS = {
    en: {
      title: "Roofside can't start",
      mending: "The program's files on this device are being checked …",
      damaged: "A file of the program is damaged on this device. Open this page again with a signal: it mends itself.",
      unreached: "The program could not be fetched. It is tried again when the signal is back.",
      broken: "The program was fetched and did not start. Close this page and open it again; if that does not help, update the browser.",
      kept: "Your records are safe on this device.",
      again: "Try again",
      save: "Save the records as a file",
    },
    es: {
      title: "Roofside no puede arrancar",
      mending: "Se revisan los archivos del programa en este aparato …",
      damaged: "Un archivo del programa está dañado en este aparato. Abra esta página otra vez con señal: se repara sola.",
      unreached: "No se pudo descargar el programa. Se intenta otra vez cuando vuelva la señal.",
      broken: "El programa se descargó y no arrancó. Cierre esta página y ábrala otra vez; si no basta, actualice el navegador.",
      kept: "Sus registros están a salvo en este aparato.",
      again: "Intentar otra vez",
      save: "Guardar los registros en un archivo",
    },
  };
  const PREFIX = roofside.prefix;
  const PATIENCE = 60_000; // ms: a slow phone reads 13 MB to prove them
  const SOON = 10_000; // ms after all is loaded, by which go-app has asked for the program

  const read = (key) => {
    try {
      return localStorage.getItem(PREFIX + key);
    } catch {
      return null; // a frame without storage
    }
  };
  const parsed = (text) => {
    try {
      return JSON.parse(text);
    } catch {
      return null;
    }
  };
  const words = () => {
    const language = parsed(read("settings"))?.language || navigator.language;
    return language.startsWith("es") ? WORDS.es : WORDS.en;
  };

  // records are the kept fans as a file that the program opens, or nothing.
  function records() {
    const fans = [];
    try {
      for (let i = 0; i < localStorage.length; i++) {
        const key = localStorage.key(i);
        const fan = key.startsWith(PREFIX + "fan/") && parsed(localStorage.getItem(key))?.fan;
        if (fan && Object.keys(fan).length > 0) fans.push(fan);
      }
    } catch {
      // none can be read
    }
    return fans.length > 0 && JSON.stringify({ form: 1, roof: "", fans }, null, "\t");
  }

  function save(text) {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.download = "records.roof.json";
    link.click();
  }

  const element = (tag, text, more) => Object.assign(document.createElement(tag), { textContent: text }, more);

  function say(why) {
    if (!document.body) return addEventListener("DOMContentLoaded", () => say(why));
    const text = words();
    document.getElementById("app-wasm-loader")?.remove(); // where go-app would show its raw error
    let dialog = document.getElementById("ended");
    if (!dialog) {
      dialog = element("div", "", { id: "ended" });
      dialog.setAttribute("role", "alertdialog");
      dialog.setAttribute("aria-labelledby", "ended-title");
      document.body.append(dialog);
    }
    dialog.lang = text === WORDS.es ? "es" : "en";
    const file = records();
    dialog.replaceChildren(element("h2", text.title, { id: "ended-title" }), element("p", text[why]));
    if (why === "mending") return;
    if (file) dialog.append(element("p", text.kept));
    dialog.append(element("button", text.again, { type: "button", onclick: () => location.reload() }));
    if (file) dialog.append(element("button", text.save, { type: "button", name: "save", onclick: () => save(file) }));
  }

  // proven has the worker prove what it keeps, and tells how many files it mended and
  // how many are damaged still.
  async function proven() {
    const worker = self.origin !== "null" && navigator.serviceWorker?.controller;
    if (!worker) return { mended: 0, damaged: 0 };
    const { port1, port2 } = new MessageChannel();
    const answer = new Promise((resolve) => { port1.onmessage = (event) => resolve(event.data); });
    worker.postMessage({ roofside: "prove" }, [port2]);
    return Promise.race([answer, new Promise((resolve) => setTimeout(() => resolve({ mended: 0, damaged: 0 }), PATIENCE))]);
  }

  // once keeps a page that is mended in vain from loading for ever.
  function once() {
    try {
      const before = Number(sessionStorage.getItem(PREFIX + "mended"));
      sessionStorage.setItem(PREFIX + "mended", Date.now());
      return Date.now() - before > PATIENCE;
    } catch {
      return false;
    }
  }

  let told = false;
  roofside.stuck = async (error, known) => {
    if (told) return;
    told = true;
    if (error) console.warn("the program does not start:", error);
    addEventListener("online", () => location.reload());
    let why = known;
    if (!why) {
      say("mending");
      const { mended, damaged } = await proven();
      if (mended > 0 && once()) return location.reload();
      why = damaged > 0 ? "damaged" : ["CompileError", "LinkError", "RuntimeError"].some((kind) => error instanceof WebAssembly[kind]) ? "broken" : "unreached";
    }
    say(why);
  };
  roofside.prove = proven;
  if (roofside.alone) {
    roofside.program = () => new Promise(() => {}); // go-app may be there, and ask
    return roofside.stuck(null, "damaged");
  }

  let asked = false;
  const watched = (act) => async (...parts) => {
    asked = true;
    try {
      return await act(...parts);
    } catch (error) {
      roofside.stuck(error);
      throw error;
    }
  };
  roofside.program = watched(roofside.program);
  for (const name of ["instantiate", "instantiateStreaming"]) {
    if (WebAssembly[name]) WebAssembly[name] = watched(WebAssembly[name].bind(WebAssembly));
  }
  // go-app asks for no program where it is told so, or by a crawler.
  const unasked = /wasm=false/.test(location.search) || /bot|crawler|spider|crawling/i.test(navigator.userAgent);
  addEventListener("load", () => setTimeout(() => { if (!asked && !unasked) roofside.stuck(null); }, SOON));
})();
