//go:build e2e

package e2e

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// A hand works the page: a thumb taps, a keyboard goes from control to control.
type hand interface {
	typeIn(key, text string)
	take(key, word string)   // one of a few words
	choose(key, word string) // one of a list
	press(button string)     // by its name
	visit(route string)      // by the tabs
}

// open opens a section that is closed.
func unfold(tab *Tab, h hand, section string) {
	tab.t.Helper()
	tab.Rest()
	if Eval[bool](tab, fmt.Sprintf(`document.querySelector('button[name="section %s"]').ariaExpanded === "false"`, section)) {
		h.press("section " + section)
		tab.Await(fmt.Sprintf(`document.querySelector('button[name="section %s"]').ariaExpanded === "true"`, section))
	}
}

// begins makes a name that ends in a space the beginning of one.
func begins(name string) string {
	if strings.HasSuffix(name, " ") {
		return "^"
	}
	return ""
}

type thumb struct{ *Tab }

func (h thumb) typeIn(key, text string) { h.Type(key, text) }
func (h thumb) take(key, word string)   { h.Tab.take(key, word) }
func (h thumb) choose(key, word string) { h.Choose(key, word) }
func (h thumb) press(button string) {
	h.Rest() // what was typed before may still move the page
	h.Click(fmt.Sprintf("button[name%s=%q]", begins(button), button))
}
func (h thumb) visit(route string) {
	h.Click(fmt.Sprintf(".tabs a[href=%q]", route))
	h.Await(fmt.Sprintf(`location.pathname === %q`, route))
}

type keyboard struct{ *Tab }

func (h keyboard) typeIn(key, text string) {
	h.reach(fmt.Sprintf("at.name === %q", key))
	h.do("emptying "+key, chromedp.KeyEvent("a", chromedp.KeyModifiers(chromedp.ModifierCtrl)), chromedp.KeyEvent(kb.Backspace))
	h.Keys(text)
}

func (h keyboard) take(key, word string) {
	h.reach(fmt.Sprintf("at.name === %q && at.value === %q", key, word))
	h.Keys(kb.Enter)
}

func (h keyboard) choose(key, word string) {
	h.reach(fmt.Sprintf("at.name === %q", key))
	h.Keys(word) // a list goes to what is typed
	h.Await(fmt.Sprintf("document.querySelector('[name=%q]').value === %q", key, word))
}

func (h keyboard) press(button string) {
	h.reach(fmt.Sprintf("at.matches('button[name%s=%q]')", begins(button), button))
	h.Keys(kb.Enter)
}

func (h keyboard) visit(route string) {
	h.reach(fmt.Sprintf(`at.tagName === "A" && at.closest(".tabs") && at.getAttribute("href") === %q`, route))
	h.Keys(kb.Enter)
	h.Await(fmt.Sprintf(`location.pathname === %q && document.activeElement.id === "main"`, route))
}

// reach goes on by Tab, or stays where the focus is already there.
func (h keyboard) reach(what string) {
	h.t.Helper()
	h.Rest()
	if !Eval[bool](h.Tab, fmt.Sprintf(`(() => { const at = document.activeElement; return !!(%s); })()`, what)) {
		h.tabTo(what)
	}
}

// A step of the job: a page, a section of it, and what is entered there. "=" before
// a text takes a word, "~" chooses one of a list, "!" presses a button.
type step struct {
	route, section string
	enter          [][2]string
}

var wholeJob = []step{
	// As found.
	{"/drive/", "job", [][2]string{{"name", "Line 2"}, {"supply", "=three-phase"}, {"same-wheel", "=yes"}}},
	{"/drive/", "target", [][2]string{{"target.speed", "712"}}},
	{"/drive/", "old", oldFan},
	{"/drive/", "amps", [][2]string{{"old.motor-power", "2"}, {"old.motor-volts", "208"}, {"old.motor-amps basis", "!"}, {"old.motor-amps known", "=?"}}},
	{"/airflow/", "reference", report},
	{"/record/", "fit", [][2]string{{"old.curb-width", "24"}, {"old.curb-length", "24"}, {"old.hinge", "=left"}, {"old.weight", "160"}}},
	{"/raceway/", "opening", [][2]string{{"raceway.conduit", "=LFMC"}, {"raceway.size", "=1/2"}}},
	{"/raceway/", "wires", [][2]string{{"add wire", "!"}, {"wire.w1.count", "3"}, {"wire.w1.size", "~12"}, {"wire.w1.insulation", "~THWN-2"}, {"section wire w1", "!"},
		{"add wire", "!"}, {"wire.w2.count", "1"}, {"wire.w2.size", "~12"}, {"wire.w2.insulation", "~THWN-2"}}},
	// As received, and the day before.
	{"/drive/", "plate", append(newPlate, [2]string{"new.no-load-amps", "2.2"}, [2]string{"coldest-air", "5"})},
	{"/drive/", "new", append([][2]string{{"new.section", "=A"}, {"new.sheave", "=adjustable"}}, newDrive...)},
	{"/drive/", "base", newBase},
	{"/belt/", "belt", [][2]string{{"new.belt-number", "A50"}, {"new.belts", "=1"}}},
	{"/record/", "fit", [][2]string{{"new.curb-width", "24.5"}, {"new.curb-length", "24.5"}, {"new.hinge", "=left"}, {"new.weight", "185"}, {"new.discharge", "=up"}}},
	{"/raceway/", "opening", [][2]string{{"opening.kind", "=hub"}, {"opening.size", "=3/4"}}},
	{"/raceway/", "circuit", [][2]string{{"circuit.material", "=copper"}, {"hottest-air", "104"}, {"raceway.exposure", "=rooftop"}, {"raceway.height", "2"}, {"circuit.device", "=inverse-time-breaker"}}},
	// On the roof: volts, rotation, belt, amps, speed.
	{"/power/", "readings", [][2]string{{"add reading", "!"}, {"trial.t1.volts-12", "208.2"}, {"trial.t1.volts-23", "207.6"}, {"trial.t1.volts-31", "208.8"}}},
	{"/power/", "rotation", [][2]string{{"new.rotation", "=marked"}}},
	{"/belt/", "", [][2]string{{"add tension", "!"}, {"trial.t1.belt-age", "=used"}, {"trial.t1.belt-force", "1.8"}}},
	{"/belt/", "align", [][2]string{{"trial.t1.alignment-gap", "1/32"}}},
	{"/power/", "readings", [][2]string{{"trial.t1.amps-1", "5.6"}, {"trial.t1.amps-2", "5.7"}, {"trial.t1.amps-3", "5.5"}}},
	{"/drive/", "reading t1", [][2]string{{"trial.t1.speed", "717"}, {"trial.t1.accepted", "=yes"}}},
	{"/airflow/", "hood", [][2]string{{"hood.airflow", "3200"}}},
	{"/record/", "closing", [][2]string{{"handover.by", "N. N."}, {"offer handover.on ", "!"}}},
}

// plain leaves out how a number was typed: a page writes 15 3/4 as 15-3/4.
func plain(text string) string { return strings.NewReplacer(",", "", " ", "-").Replace(text) }

// do counts what a hand enters over the whole job, and shows that nothing is
// asked for twice: no key is entered again, and what was entered stands in every
// field of its name, on every page.
func do(t *testing.T, tab *Tab, h hand) (typed, taken int) {
	t.Helper()
	stands := map[string]string{}
	at := "/"
	for _, s := range wholeJob {
		if s.route != at {
			h.visit(s.route)
			at = s.route
		}
		if s.section != "" {
			unfold(tab, h, s.section)
		}
		for key, want := range stands {
			if got := Eval[string](tab, fmt.Sprintf(`document.querySelector(%q)?.value ?? %q`, field(key), want)); plain(got) != plain(want) {
				t.Errorf("%s, section %s: %s holds %q, and %q was entered", s.route, s.section, key, got, want)
			}
		}
		for _, e := range s.enter {
			key, text := e[0], e[1]
			if _, twice := stands[key]; twice {
				t.Errorf("%s is entered twice", key)
			}
			switch {
			case text == "!":
				h.press(key)
				continue
			case strings.HasPrefix(text, "="):
				h.take(key, text[1:])
				if word := text[1:]; word != "?" {
					tab.Await(fmt.Sprintf(`document.querySelector('button[name=%q][value=%q]').ariaPressed === "true"`, key, word))
				} else { // the ways of knowing close behind the one that is taken
					tab.AwaitText(fmt.Sprintf("button[name=%q]", strings.TrimSuffix(key, " known")+" basis"), "can't be read")
				}
				taken++
			case strings.HasPrefix(text, "~"):
				h.choose(key, text[1:])
				taken++
				stands[key] = text[1:]
			default:
				h.typeIn(key, text)
				typed++
				stands[key] = text
			}
		}
	}
	return typed, taken
}

// The whole job, from survey to proof, on a phone without signal: by thumb, and by
// the keyboard alone.
func TestTheWholeJob(t *testing.T) {
	t.Parallel()
	for name, of := range map[string]func(*Tab) hand{"thumb": func(t *Tab) hand { return thumb{t} }, "keyboard": func(t *Tab) hand { return keyboard{t} }} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			p := NewPhone(t)
			home := p.Open("/")
			home.AwaitInstalled()
			home.Close()
			p.Offline()
			tab := p.Open("/")
			h := of(tab)
			h.press("start")
			tab.AwaitText(".fan.open", "Not begun")
			typed, taken := do(t, tab, h)
			t.Logf("%d values typed, %d words taken", typed, taken)

			h.visit("/drive/")
			tab.AwaitText(`output[name="move"]`, "Leave it 3 open")
			h.visit("/power/")
			tab.AwaitText(".power .move", "Within")
			h.visit("/record/")
			tab.AwaitValue("record.speed.left", 717, 1e-9, "rpm")
			tab.AwaitValue("record.amps.left", 5.6, 1e-9, "A")
			for _, part := range []string{"survey", "prove"} {
				unfold(tab, h, "part "+part)
			}
			// Values speak for themselves: none of these is ticked.
			tab.Await(`["Target speed", "Old motor's plate", "Rotation proven, belt off", "Sheaves aligned", "Belt tensioned", "Volts as left", "Amps as left", "Speed as left", "Run in and tensioned again", "Airflow measured at the hood"]
				.every((s) => [...document.querySelectorAll(".check-name")].some((e) => e.textContent === s + "Done")) || document.querySelector(".checks").innerText && false`)
			tab.Shoot("whole-" + name)
		})
	}
}
