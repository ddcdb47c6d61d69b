"use strict";
// A second, quicker keeper. A browser writes localStorage down in its own time:
// Chromium five seconds after a change and, after several, no oftener than once a
// minute; one that is killed in between has lost the rest. So each entry that the
// program changes goes into a journal as well, which is written down at once, and a
// start takes from the journal what is newer than what localStorage still had. The
// clocks of both are one entry, roofside/last. A journal that opens when the program has
// begun is taken in place by place: what was changed since stands, all else is the
// journal's.
(() => {
  const roofside = (window.roofside ??= {});
  const PREFIX = roofside.prefix;
  const LAST = PREFIX + "last";
  const GATHER = 250; // ms: a phone's memory wears with every write
  const PATIENCE = 2000; // ms: a journal that does not open must not keep the record closed

  roofside.noted = () => {};
  const embedded = new URLSearchParams(location.search).has("embed");
  if (embedded || roofside.storage !== "kept" || !window.indexedDB) return;

  const journal = new Promise((resolve, reject) => {
    const open = indexedDB.open(PREFIX.replace(/^roofside\/$/, "roofside"), 1); // the name that it has had at the root
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

  const had = last();
  let base = null; // what the entries held when the program began, where the journal was not there yet
  const restore = journal.then(rows).then((all) => {
    let newest = last();
    for (const { key, moment, text } of all) {
      if (moment <= had) continue;
      if (base) takeIn(key, text);
      else put(PREFIX + key, text);
      newest = Math.max(newest, moment);
    }
    if (newest > last()) localStorage.setItem(LAST, newest);
    base = null;
  }).catch(() => {});

  function put(entry, text) {
    if (text === null) localStorage.removeItem(entry);
    else localStorage.setItem(entry, text);
  }

  // takeIn brings an entry of a late journal together with what has become of it since
  // the program began, and tells the program.
  function takeIn(key, text) {
    const entry = PREFIX + key, was = base.get(entry) ?? null, now = localStorage.getItem(entry);
    if (now === text) return;
    const next = now === was ? text : merged(key, was, now, text);
    if (next === now) return;
    put(entry, next);
    if (now !== was) roofside.noted(key);
    dispatchEvent(new StorageEvent("storage", { key: entry }));
  }

  // merged is what was changed here since on top of the journal's; a text that is no fan's
  // stands as it was changed here, and the journal's is set aside.
  function merged(key, was, now, text) {
    if (now === null || text === null || key === "open" || key === "settings") return now;
    try {
      const [before, here, there] = [was ?? `{"fan":{}}`, now, text].map((t) => JSON.parse(t));
      if (!key.startsWith("fan/")) return roofs(before, here, there);
      const fan = { ...there.fan };
      for (const place of new Set([...Object.keys(before.fan), ...Object.keys(here.fan)])) {
        if (here.fan[place] === before.fan[place]) continue;
        if (here.fan[place] === undefined) delete fan[place];
        else fan[place] = here.fan[place];
      }
      return JSON.stringify({ form: Math.max(here.form, there.form), fan: Object.fromEntries(Object.entries(fan).sort(([a], [b]) => (a < b ? -1 : 1))) });
    } catch {
      localStorage.setItem(`${PREFIX}aside/${key.replace(/^fan\//, "")}`, text);
      return now;
    }
  }

  // roofs adds to the list as it was changed here the roofs that only the journal has,
  // and the names it gave; fans are found by their own entries.
  function roofs(before, here, there) {
    const by = (list, id) => list.roofs?.find((roof) => roof.id === id);
    const all = here.roofs.map((roof) => ({ ...roof, name: roof.name === by(before, roof.id)?.name ? (by(there, roof.id) ?? roof).name : roof.name }));
    for (const roof of there.roofs) if (!by(before, roof.id) && !by(here, roof.id)) all.push(roof);
    return JSON.stringify({ roofs: all });
  }

  // go-app begins as soon as the program is compiled, and takes its sign of loading
  // away: so what compiles it waits. The clock starts there, for a slow phone is busy
  // until then.
  for (const name of ["instantiate", "instantiateStreaming"]) {
    const compile = WebAssembly[name];
    if (!compile) continue;
    WebAssembly[name] = async (...parts) => {
      const program = await compile.apply(WebAssembly, parts);
      const soon = await Promise.race([restore.then(() => true), new Promise((resolve) => setTimeout(resolve, PATIENCE))]);
      if (!soon) base = new Map(Object.keys(localStorage).filter((key) => key.startsWith(PREFIX)).map((key) => [key, localStorage.getItem(key)]));
      return program;
    };
  }
})();
