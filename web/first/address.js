"use strict";
// Mends an address before go-app reads it. A per cent sign in the fragment that
// starts no escape (#note=50%) makes Go refuse the address, and go-app then uses
// what it did not get. %FF stands in for it: a byte that no text has, by which the
// reader of links knows the broken escape. And go-app knows a page by its folder alone, where a file
// server also answers to the index.html in it.
(() => {
  const mend = () => {
    const path = location.pathname.replace(/\/index\.html$/, "/");
    const fragment = location.hash.replace(/%(?![0-9a-f]{2})/gi, "%FF");
    if (path === location.pathname && fragment === location.hash) return;
    history.replaceState(history.state, "", path + location.search + fragment);
  };
  mend();
  addEventListener("popstate", mend); // comes before go-app's own listener
})();
