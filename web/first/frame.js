"use strict";
// A page in a frame tells its host how high it is, and nothing else:
// { roofside: { height: 812 } }, in CSS pixels, whenever that changes. Whose
// page the host is is not known here, and a height is no secret.
(() => {
  if (window.parent === window || !new URLSearchParams(location.search).has("embed")) return;
  let told = 0;
  const tell = () => {
    const height = Math.ceil(document.body.getBoundingClientRect().height);
    if (height === told) return;
    told = height;
    window.parent.postMessage({ roofside: { height } }, "*");
  };
  addEventListener("DOMContentLoaded", () => new ResizeObserver(tell).observe(document.body));
})();
