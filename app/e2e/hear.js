// Put before the first script of the site while other engines are tried: keeps
// what goes wrong, from the first moment and from page to page.
(() => {
  const heard = JSON.parse(sessionStorage.getItem("heard") ?? "[]");
  const hear = (...words) => {
    heard.push(`${location.pathname}: ${words.join(" ")}`);
    sessionStorage.setItem("heard", JSON.stringify(heard));
  };
  sessionStorage.setItem("heard", JSON.stringify(heard));
  for (const level of ["error", "warn"]) {
    const say = console[level];
    console[level] = (...words) => { hear(`console.${level}:`, ...words); say.apply(console, words); };
  }
  addEventListener("error", (event) => hear("error:", event.message ?? `${event.target.src ?? event.target.href} did not load`), true);
  addEventListener("unhandledrejection", (event) => hear("rejection:", event.reason));
  addEventListener("securitypolicyviolation", (event) => hear("policy:", event.violatedDirective, event.blockedURI));
})();
