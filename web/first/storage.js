"use strict";
// Stands in for storage where the browser refuses it (all cookies blocked, or a
// frame that is sandboxed without its origin): go-app ends at the first touch of
// it. window.roofside.storage is "kept" or "none"; the program sets "none" too
// where it keeps nothing by choice, as in an embedded frame.
(() => {
  const roofside = (window.roofside ??= {});
  roofside.storage = "kept";
  for (const name of ["localStorage", "sessionStorage"]) {
    try {
      window[name].getItem("roofside");
    } catch {
      roofside.storage = "none";
      Object.defineProperty(window, name, { configurable: true, value: standIn() });
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
