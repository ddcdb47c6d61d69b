//go:build e2e

package e2e

import "testing"

// The harness itself must see what it is there to see: a breach of the content
// policy, a missing file, an exception.
func TestConsoleIsHeard(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/")
	tab.Expect("Content Security Policy")
	tab.Expect("404")
	tab.Expect("MIME type") // of the page that answers for the missing file
	tab.Expect("thrown on purpose")
	Eval[any](tab, `(() => {
		const script = document.createElement("script");
		script.textContent = "window.ran = true";
		document.head.append(script);
		document.head.append(Object.assign(document.createElement("script"), { src: "/missing.js" }));
		setTimeout(() => { throw new Error("thrown on purpose"); });
		return null;
	})()`)
	tab.Await(`performance.getEntriesByType("resource").some((r) => r.name.endsWith("/missing.js"))`)
	tab.Rest()
	if Eval[bool](tab, `!!window.ran`) {
		t.Error("an inline script ran")
	}
}

// A page that is drawn anew between the aim and the tap costs nothing, and what
// comes to lie on top in that moment is not tapped in the element's place.
func TestATapMeetsWhatItWasAimedAt(t *testing.T) {
	t.Parallel()
	tab := NewPhone(t).Open("/settings/")
	Eval[any](tab, `(() => {
		window.tapped = [];
		addEventListener("click", (event) => tapped.push(event.target.id));
		const button = Object.assign(document.createElement("button"), { id: "aim", textContent: "Aim" });
		document.querySelector("main").prepend(button);
		const cover = Object.assign(document.createElement("dialog"), { id: "cover", textContent: "Cover" });
		document.body.append(cover);
		const between = [
			() => document.getElementById("aim").replaceWith(button.cloneNode(true)),
			() => { cover.showModal(); setTimeout(() => cover.close(), 300); },
		];
		let missed; // it is set when the aim is taken, and again by the tap
		Object.defineProperty(window, "missedTest", { get: () => missed, set: (now) => { missed = now; if (!window.event) between.shift()?.(); } });
		return null;
	})()`)
	tab.Click("#aim")
	if got := Eval[string](tab, `tapped.join()`); got != "aim" {
		t.Errorf("drawn anew, the tap met %q", got)
	}
	tab.Click("#aim")
	if got := Eval[string](tab, `tapped.join()`); got != "aim,aim" {
		t.Errorf("covered for a moment, the taps met %q", got)
	}
}
