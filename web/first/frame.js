"use strict";
// A page in a frame tells its host how high it is: { roofside: { height: 812 } }, in CSS
// pixels, whenever that changes. Whose page the host is is not known here, and a height
// is no secret. A host that asks, by { roofside: "answers" }, is told the named answers
// of the page and its plate, and again whenever they change: a frame holds only what its
// address and the hand in front of it have put there, never a kept record.
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

  const said = () => {
    const answers = {};
    for (const output of document.querySelectorAll("output[name]")) {
      const data = output.querySelector("data");
      answers[output.name] = data && data.value !== "" ? { value: Number(data.value), unit: data.dataset.unit ?? "" } : null;
    }
    const plate = document.querySelector("[data-plate]")?.dataset;
    return { answers, plate: plate ? { page: plate.plate, verdict: plate.verdict, do: plate.do ?? "", to: plate.to ?? "" } : null };
  };

  let asked = null, last = "", timer = 0;
  const reply = () => {
    timer = 0;
    const now = said(), text = JSON.stringify(now);
    if (text === last) return;
    last = text;
    asked.source.postMessage({ roofside: now }, { targetOrigin: asked.origin === "null" ? "*" : asked.origin });
  };
  addEventListener("message", (event) => {
    if (event.source !== window.parent || event.data?.roofside !== "answers") return;
    const first = asked === null;
    asked = event;
    last = "";
    reply();
    if (first) new MutationObserver(() => { timer ||= setTimeout(reply, 100); }).observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
  });
})();
