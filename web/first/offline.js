"use strict";
// Tells whether the site works without signal: window.roofside.offline is { state, version,
// since }, and "roofside-offline" on window says that it has changed. The states:
// "ready", of a version kept since a moment in ms; "coming", on its way; "cut", broken off,
// to be tried again; "full", no room on the device; "insecure", no TLS, so that a browser
// keeps nothing; "blocked", the browser refuses to; "frame", a page in a frame keeps nothing.
(() => {
  const roofside = (window.roofside ??= {});
  roofside.offline = { state: "coming" };
  const tell = (now) => {
    if (JSON.stringify(now) === JSON.stringify(roofside.offline)) return;
    roofside.offline = now;
    dispatchEvent(new CustomEvent("roofside-offline"));
  };
  const workers = navigator.serviceWorker;
  if (window.parent !== window || self.origin === "null") return tell({ state: "frame" });
  if (!window.isSecureContext) return tell({ state: "insecure" });
  if (!workers) return tell({ state: "blocked" });

  workers.addEventListener("message", (event) => {
    const said = event.data?.roofside;
    if (said?.failed && roofside.offline.state !== "ready") tell({ state: said.failed });
  });
  workers.startMessages();

  async function look() {
    const registration = await workers.getRegistration().catch(() => null);
    const worker = registration?.active;
    if (!worker) return;
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = (event) => { if (event.data) tell({ state: "ready", ...event.data }); };
    worker.postMessage({ roofside: "kept" }, [port2]);
  }
  workers.ready.then((registration) => {
    if (registration.active?.state === "activated") look();
    registration.active?.addEventListener("statechange", look);
  }, () => tell({ state: "blocked" }));

  // go-app registers the worker; a browser that refuses says so to it alone.
  const register = workers.register;
  workers.register = (...what) => register.apply(workers, what).catch((error) => {
    if (roofside.offline.state === "coming") tell({ state: error.name === "SecurityError" || error.name === "NotSupportedError" ? "blocked" : "cut" });
    throw error;
  });
})();
