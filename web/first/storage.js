"use strict";
// Stands in for storage where the browser refuses it (all cookies blocked, or a
// frame that is sandboxed without its origin): go-app ends at the first touch of
// it. window.roofside.storage is "kept" or "none"; the program sets "none" too
// where it keeps nothing by choice, as in an embedded frame.
//
// Two copies of the site on one origin keep their records apart: window.roofside.prefix,
// before each entry, names the path that a copy stands at, but for one at the root.
(() => {
  const roofside = (window.roofside ??= {});
  const FIRST = "roofside/"; // of a copy at the root, and of every copy once
  const base = new URL("../", document.currentScript.src).pathname;
  roofside.prefix = base === "/" ? FIRST : `roofside@${base}`;
  roofside.storage = "kept";
  for (const name of ["localStorage", "sessionStorage"]) {
    try {
      window[name].getItem("roofside");
    } catch {
      roofside.storage = "none";
      Object.defineProperty(window, name, { configurable: true, value: standIn() });
    }
  }
  // What was kept before copies were told apart is taken along once, and stays where it
  // was. With no room for both, the copy goes on there.
  if (roofside.storage === "kept" && roofside.prefix !== FIRST && localStorage.getItem(roofside.prefix + "along") === null) {
    const entries = Object.keys(localStorage).filter((key) => key.startsWith(FIRST));
    const here = (key) => roofside.prefix + key.slice(FIRST.length);
    try {
      for (const key of entries) localStorage.setItem(here(key), localStorage.getItem(key));
      localStorage.setItem(roofside.prefix + "along", "taken");
    } catch {
      for (const key of entries) localStorage.removeItem(here(key));
      roofside.prefix = FIRST;
    }
  }

  // A worker is refused there as well; go-app tries if it sees the interface,
  // and reports the refusal as an error.
  if (roofside.storage === "none") delete Navigator.prototype.serviceWorker;

  function standIn() {
    const items = new Map();
    return {
      getItem: (key) => items.get(String(key)) ?? null,
      setItem: (key, value) => { items.set(String(key), String(value)); },
      removeItem: (key) => { items.delete(String(key)); },
      clear: () => items.clear(),
      key: (index) => [...items.keys()][index] ?? null,
      get length() { return items.size; },
    };
  }
})();
