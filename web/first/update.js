"use strict";
// Tells the program that a new version waits, and lets it take over on the
// user's word. The program hears "roofside-update" on window, or reads
// window.roofside.updateReady if it came later, and calls
// window.roofside.takeOver().
(() => {
  const roofside = (window.roofside ??= {});
  roofside.updateReady = false;
  roofside.takeOver = () => location.reload();

  const workers = navigator.serviceWorker;
  if (!workers) return;

  // Only the page that asked reloads: in another tab someone may be typing.
  roofside.takeOver = async () => {
    const waiting = (await workers.getRegistration())?.waiting;
    if (!waiting) return location.reload(); // another tab was first
    waiting.addEventListener("statechange", () => {
      if (waiting.state === "activated") location.reload();
    });
    waiting.postMessage({ roofside: "take over" });
  };

  workers.ready.then((registration) => {
    const tell = () => {
      if (!registration.waiting) return;
      roofside.updateReady = true;
      window.dispatchEvent(new CustomEvent("roofside-update"));
    };
    const follow = () => registration.installing?.addEventListener("statechange", (event) => {
      if (event.target.state === "installed") tell();
    });
    registration.addEventListener("updatefound", follow);
    follow(); // one may be on its way since before this page
    tell();

    // A page that stays open for weeks is never loaded anew, so it looks when
    // it is taken up again. Without signal this fails, as it should: the next
    // time comes by itself.
    const look = () => registration.update().catch(() => {});
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "visible") look();
    });
    addEventListener("online", look);
  });
})();
