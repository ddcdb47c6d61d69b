"use strict";
// A second, quicker keeper. A browser writes localStorage down in its own time:
// Chromium five seconds after a change and, after several, no oftener than once a
// minute; one that is killed in between has lost the rest. So each entry that the
// program changes goes into a journal as well, which is written down at once, and a
// start takes from the journal what is newer than what localStorage still had. The
// clocks of both are one entry, roofside/last.
(() => {
  const roofside = (window.roofside ??= {});
  const PREFIX = "roofside/";
  const LAST = PREFIX + "last";
  const GATHER = 250; // ms: a phone's memory wears with every write
  const PATIENCE = 2000; // ms: a journal that does not open must not keep the record closed

  roofside.noted = () => {};
  const embedded = new URLSearchParams(location.search).has("embed");
  if (embedded || roofside.storage !== "kept" || !window.indexedDB) return;

  const journal = new Promise((resolve, reject) => {
    const open = indexedDB.open("roofside", 1);
    open.onupgradeneeded = () => open.result.createObjectStore("entries");
    open.onsuccess = () => {
      open.result.onversionchange = () => open.result.close(); // somebody clears the site
      resolve(open.result);
    };
    open.onerror = () => reject(open.error);
  });
  const last = () => Number(localStorage.getItem(LAST)) || 0;

  // Where the journal fails, as in some private windows, localStorage is there
  // alone, as before: nothing is to be said of it.
  const due = new Map();
  let timer = 0;
  const write = () => {
    clearTimeout(timer);
    timer = 0;
    if (due.size === 0) return;
    const rows = [...due].map(([key, moment]) => [{ moment, text: localStorage.getItem(PREFIX + key) }, key]);
    due.clear();
    journal.then((db) => {
      const entries = db.transaction("entries", "readwrite", { durability: "strict" }).objectStore("entries");
      for (const [row, key] of rows) entries.put(row, key);
    }).catch(() => {});
  };

  // Told by the program behind each change of an entry.
  roofside.noted = (key) => {
    const moment = Math.max(Date.now(), last() + 1); // a clock may be set back
    try {
      localStorage.setItem(LAST, moment);
    } catch {
      // Full: the journal alone knows the moment, and will count as newer, which it is.
    }
    due.set(key, moment);
    timer ||= setTimeout(write, GATHER);
  };
  addEventListener("pagehide", write);
  document.addEventListener("visibilitychange", () => { if (document.visibilityState === "hidden") write(); });

  const rows = (db) => new Promise((resolve, reject) => {
    const read = db.transaction("entries").objectStore("entries").openCursor();
    const all = [];
    read.onsuccess = () => {
      if (!read.result) return resolve(all);
      all.push({ key: read.result.key, ...read.result.value });
      read.result.continue();
    };
    read.onerror = () => reject(read.error);
  });

  let late = false;
  const restore = journal.then(rows).then((all) => {
    if (late) return; // the program has begun, and knows better
    const had = last();
    let newest = had;
    for (const { key, moment, text } of all) {
      if (moment <= had) continue;
      if (text === null) localStorage.removeItem(PREFIX + key);
      else localStorage.setItem(PREFIX + key, text);
      newest = Math.max(newest, moment);
    }
    if (newest > had) localStorage.setItem(LAST, newest);
  }).catch(() => {});

  // go-app begins as soon as the program is compiled, and takes its sign of loading
  // away: so what compiles it waits. The clock starts there, for a slow phone is busy
  // until then.
  for (const name of ["instantiate", "instantiateStreaming"]) {
    const compile = WebAssembly[name];
    if (!compile) continue;
    WebAssembly[name] = async (...parts) => {
      const program = await compile.apply(WebAssembly, parts);
      await Promise.race([restore, new Promise((resolve) => setTimeout(resolve, PATIENCE))]);
      late = true;
      return program;
    };
  }
})();
