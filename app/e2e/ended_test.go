//go:build e2e

package e2e

import (
	"fmt"
	"testing"
)

// The program ends: the page says so, that the record is safe, and how to go on.
func TestProgramEnds(t *testing.T) {
	t.Parallel()
	for lang, words := range map[string][3]string{
		"en-US": {"Roofside has stopped", "The record is safe on this device.", "Reload"},
		"es":    {"Roofside se ha detenido", "El registro está a salvo en este aparato.", "Recargar"},
	} {
		t.Run(lang, func(t *testing.T) {
			p := NewPhoneIn(t, lang)
			tab := p.Open("/drive/")
			tab.EndProgram()
			tab.AwaitText("#ended h2", words[0])
			tab.AwaitText("#ended p", words[1])
			tab.AwaitText("#ended button", words[2])
			tab.Shoot("ended-" + lang)
			tab.Click("#ended button")
			tab.Await(`!document.getElementById("ended")`)
			tab.AwaitMounted()
		})
	}
}

// Where the very page ends the program, the start page is one tap away.
func TestProgramEndsAndGoesHome(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/drive/")
	tab.EndProgram()
	tab.AwaitText("#ended a", "Open the start page")
	tab.Click("#ended a")
	tab.Await(`location.pathname === "/"`)
	tab.AwaitMounted()
}

// EndProgram makes go-app itself panic, past every guard of ours: its navigation
// is called without the address that it relies on. The program ends for good.
func (t *Tab) EndProgram() {
	t.t.Helper()
	t.Expect("exit code: 2")
	t.Allow("Go program has already exited") // a timer that it had set
	Eval[any](t, `(goappNav(), null)`)
}

// Panic makes the program fail where a guard of ours catches it: in the next
// "handler" or the next "render". Only a script in the page can ask for it.
func (t *Tab) Panic(where string) {
	t.t.Helper()
	Eval[any](t, fmt.Sprintf(`(window.roofside.fail = %q, null)`, where))
}

// Where nothing could be kept, the page does not claim that it was.
func TestProgramEndsWithNothingKept(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/drive/")
	Eval[any](tab, `(roofside.storage = "none", null)`)
	tab.EndProgram()
	tab.AwaitText("#ended p", "note down what you need")
	// The screen stays within reach for that.
	if Eval[bool](tab, `document.querySelector("#ended").matches(":modal")`) {
		t.Error("the dialog blocks the page")
	}
}

// A trap inside the program comes out as an error of the window.
func TestTrapIsTheEnd(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/")
	tab.Expect("RuntimeError")
	Eval[any](tab, `setTimeout(() => { throw new WebAssembly.RuntimeError("unreachable"); }) && null`)
	tab.AwaitText("#ended h2", "Roofside has stopped")
}

// Other people's errors do not stop the program, and must not say it stopped.
func TestOtherErrorIsNotTheEnd(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/")
	tab.Expect("an extension's own fault")
	tab.Expect("a promise of an extension's")
	Eval[any](tab, `setTimeout(() => { throw new Error("an extension's own fault"); }) && null`)
	Eval[any](tab, `setTimeout(() => { Promise.reject(new Error("a promise of an extension's")); }) && null`)
	tab.Rest()
	if Eval[bool](tab, `!!document.getElementById("ended")`) {
		t.Error("the page says that the program has ended")
	}
}
