//go:build e2e

package e2e

import "testing"

// The harness itself must see what it is there to see: a breach of the content
// policy, a missing file, an exception.
func TestConsoleIsHeard(t *testing.T) {
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
