"use strict";
// Mends a per cent sign in the fragment that starts no escape (#note=50%): Go
// refuses such an address, and go-app then uses what it did not get.
(() => {
  const mend = () => {
    const mended = location.hash.replace(/%(?![0-9a-f]{2})/gi, "%25");
    if (mended !== location.hash) history.replaceState(history.state, "", location.pathname + location.search + mended);
  };
  mend();
  addEventListener("popstate", mend); // comes before go-app's own listener
})();
