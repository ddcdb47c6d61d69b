package page

import (
	"html"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/app/text"
	"roofside/calc/record"
	"roofside/calc/sheet"
)

// told is all that the demonstration lacks for its list.
const told = "&new.model=U-18&new.weight=210 lb&old.curb-width=24 in&old.curb-length=30 in&new.curb-width=24-1/2 in&new.curb-length=30-1/2 in&raceway.length=6 ft"

// materialStates bring out every line and every reason.
var materialStates = []string{
	"", demoFan, demoFan + told,
	demoFan + told + "&new.curb-width=23 in&opening.kind=ring-knockout&new.motor-power=5 hp&new.motor-volts=460 V&raceway.place=indoors&raceway.conduit=EMT&raceway.length=21 ft",
	demoFan + told + "&new.curb-width=30 in&opening.kind=knockout&opening.size=1&raceway.place=indoors&raceway.conduit=PVC-40&raceway.size=3/4&wire.w2.where=box",
	demoFan + "&new.sheave=fixed&new.motor-sheave=4 in&old.section=A&old.motor-sheave=3.4 in&old.motor-bore=1-1/8 in&new.motor-bore=7/8 in&new.motor-key=3/16 in",
	demoFan + "&new.sheave=fixed&new.motor-sheave=4 in&new.motor-bore=7/8 in&new.motor-key=3/16 in&opening.kind=knockout&opening.size=1/2&raceway.size=3/4",
	demoFan + "&new.sheave=fixed&new.motor-sheave=3.4 in&opening.kind=hub&raceway.conduit=RMC&opening.size=1/2&raceway.size=3/4",
	demoFan + "&target.speed=400 rpm&new.belt-number=A56&new.fan-bore=1 in&opening.kind=conduit&opening.conduit=EMT&raceway.conduit=RMC",
	demoFan + "&new.belt-number=&new.travel-away=&trial.t1.turns=3 turns&trial.t1.speed=600 rpm",
	demoFan + "&supply=drive&new.frequency=60 Hz&target.speed=400 rpm&target.power=&new.belt-number=&box.size=square 4 x 1-1/2&box.devices=0&box.clamps=no",
	demoFan + "&wire.w1.size=8&wire.w2.size=10&raceway.length=6 ft",
	demoFan + "&raceway.size=3/8&raceway.length=10 ft&wire.w1.size=10&circuit.device-rating=20 A",
	demoFan + "&wire.w1.size=4&raceway.size=1-1/4&opening.size=1-1/4&box.size=octagonal 4 x 1-1/4&box.devices=0&box.clamps=no&wire.w1.box-count=6",
	demoFan + "&box.size=octagonal 4 x 1-1/4&box.devices=0&box.clamps=no&wire.w1.box-count=6&wire.w2.box-count=2&new.minimum-circuit-ampacity=25 A&circuit.length=40 ft&wire.w2.size=14&circuit.device-rating=20 A",
	demoFan + "&box.size=square 4 x 1-1/2&box.devices=0&box.clamps=no&wire.w1.insulation=THHN&circuit.length=40 ft&wire.w2.size=?",
	demoFan + "&box.size=square 4 x 1-1/2&wire.w1.size=16&wire.w2.where=box&raceway.conduit=LFNC-B&circuit.length=40 ft&circuit.device-rating=20 A",
	demoFan + "&wire.w1.insulation=TW&hottest-air=60 C",
	demoFan + "&raceway.conduit=EMT&wire.w2.where=box&raceway.length=!long&circuit.material=",
	"opening.kind=knockout&opening.size=1&raceway.conduit=EMT&raceway.size=1/2&raceway.place=indoors&supply=direct",
	"raceway.conduit=FMC&raceway.size=1/2&raceway.length=6ft",
	"opening.kind=hub&opening.size=1/2&raceway.conduit=LFMC&raceway.size=1/2&new.model=" + strings.Repeat("W", 200),
	"new.belts=4&new.belt-number=B&new.weight=!heavy",
}

func benchWith(t *testing.T, tag, state string) *bench {
	t.Helper()
	before := shared
	t.Cleanup(func() { shared = before })
	b := newBench(store.Memory(), tag)
	b.Follow(strings.ReplaceAll(last(state), " ", "%20"))
	shared = b
	return b
}

// last keeps of a link what is said last of each place.
func last(state string) string {
	var kept []string
	parts := strings.Split(state, "&")
	for i, p := range parts {
		key, _, _ := strings.Cut(p, "=")
		if !slices.ContainsFunc(parts[i+1:], func(later string) bool { return strings.HasPrefix(later, key+"=") }) {
			kept = append(kept, p)
		}
	}
	return strings.Join(kept, "&")
}

// list draws materials as a page would.
type list struct {
	app.Compo
	ui func() app.UI
}

func (l *list) Render() app.UI { return l.ui() }

var gaps = regexp.MustCompile(`\{[a-z]+\}`)

// Every name, figure and reason of a list is said by some state, in both languages;
// what is drawn says what the plain text says.
func TestEveryMaterialIsWorded(t *testing.T) {
	for _, tag := range text.Tags() {
		var all strings.Builder
		for _, state := range materialStates {
			b := benchWith(t, tag, state)
			materials := sheet.Materials(b.Fan)
			plain := b.materialsText(materials)
			all.WriteString(plain)
			drawn := html.UnescapeString(tags.ReplaceAllString(whole(t, &list{ui: func() app.UI { return b.materials(materials) }}), "\n"))
			for _, bad := range []string{"⟦", "NaN", "Inf", "{", " ,", " ."} {
				if strings.Contains(plain, bad) || strings.Contains(drawn, bad) {
					t.Errorf("%s: %q in state %.60q:\n%s\n%s", tag, bad, state, plain, drawn)
				}
			}
			all.WriteString(drawn)
			for _, m := range materials {
				for _, s := range []string{b.thing(m), strings.Join(b.reasons(m), " ")} {
					if !strings.Contains(drawn, s) || !strings.Contains(plain, s) {
						t.Errorf("%s: %q is not said in state %.60q", tag, s, state)
					}
				}
				for _, p := range m.Wanted[:min(len(m.Wanted), mostWanted)] {
					if !strings.Contains(drawn, b.full(b.keyOf(p))) {
						t.Errorf("%s: no way to %s in state %.60q", tag, b.keyOf(p), state)
					}
				}
			}
		}
		said := all.String()
		words := text.For(tag)
		for _, key := range words.Keys() {
			if !strings.HasPrefix(key, "material.") && !strings.HasPrefix(key, "reason.") && !strings.HasPrefix(key, "materials.") || key == "materials.elsewhere" {
				continue
			}
			for _, piece := range gaps.Split(words.T(key), -1) {
				if piece = strings.TrimSpace(piece); !strings.Contains(said, piece) {
					t.Errorf("%s: no state says %s: %q", tag, key, piece)
				}
			}
		}
	}
}

// The demonstration's list as it is copied.
func TestMaterialsText(t *testing.T) {
	b := benchWith(t, "en-US", demoFan+told)
	plain := b.materialsText(sheet.Materials(b.Fan))
	for _, want := range []string{
		"Bring\n- 1 × New fan U-18, 210 lb\n  Replaces the one that failed. The crane needs its weight.",
		"- 9.0 ft Curb gasket\n", "- 2 × Belt A50, pitch length 51.30 in\n  As entered: one to run, and a spare for each.",
		"- 1 × 3/4 × 1/2 reducing bushing, for wet locations\n", "- 2 × 1/2 LFMC connector, for wet locations\n  Between the opening and the conduit.",
		"- 6.0 ft 1/2 LFMC\n", "- 2 × 1/2 LFMC strap\n  Within 1.0 ft of the fixed end, at most 4.5 ft apart; at the fan the last 3.0 ft may hang free.\n",
		"- 4 × Listed insulated connector, for wire 12, for wet locations\n",
		"Stays in use\n- 1 × Motor sheave, 3 turns open\n", "- 3 × Wire 12 THWN-2\n  Reused: it carries what the new fan takes.",
	} {
		if !strings.Contains(plain, want) {
			t.Errorf("no %q in\n%s", want, plain)
		}
	}
	drawn := html.UnescapeString(whole(t, &list{ui: func() app.UI { return b.materials(sheet.Materials(b.Fan)) }}))
	for _, want := range []string{"NFPA 70: National Electrical Code, 342.30", "From new fan: belt number, new fan: belts side by side<"} {
		if !strings.Contains(drawn, want) {
			t.Errorf("no %q in\n%s", want, drawn)
		}
	}
	if strings.Contains(plain, "Needs") || strings.Contains(plain, "Not known yet") {
		t.Errorf("something is wanted of a fan of which all is told:\n%s", plain)
	}
}

// What another fan of the roof lacks has no way from this one, and is said.
func TestMaterialsOfARoof(t *testing.T) {
	b := benchWith(t, "en-US", strings.Replace(demoFan, "&new.weight=185 lb", "", 1)) // as little is known of the other's
	sum := sheet.Sum([][]sheet.Material{sheet.Materials(b.Fan), sheet.Materials(record.NewFan())})
	plain := b.materialsText(sum)
	if !strings.Contains(plain, "- 2 × New fan") || !strings.Contains(plain, b.T("materials.elsewhere")) || strings.Contains(plain, "⟦") {
		t.Errorf("%s", plain)
	}
	drawn := whole(t, &list{ui: func() app.UI { return b.materials(sum) }})
	if !strings.Contains(drawn, b.T("materials.elsewhere")) || strings.Contains(drawn, "⟦") {
		t.Errorf("%s", drawn)
	}
}

// A way leads only to a field that some page has.
func TestEveryMaterialsWayLeadsSomewhere(t *testing.T) {
	for _, state := range materialStates {
		b := benchWith(t, "en-US", state)
		for _, m := range sheet.Materials(b.Fan) {
			wanted := slices.Clone(m.Wanted)
			if m.Fault != nil && m.Fault.Place != nil {
				wanted = append(wanted, m.Fault.Place)
			}
			for _, p := range wanted {
				if len(sectionsOf(b.keyOf(p))) == 0 {
					t.Errorf("%s: %s stands in no section", m.Thing, b.keyOf(p))
				}
			}
		}
	}
}
