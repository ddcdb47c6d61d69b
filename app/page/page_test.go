package page

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/app/text"
	"roofside/calc/number"
	"roofside/calc/record"
)

// states are records that bring out as many of the pages' words as links can.
var states = []string{
	"",
	demoFan,
	demoFan + "&trial.t1.turns=3turns&trial.t1.speed=700rpm&trial.t1.amps-1=4.4A&trial.t1.accepted=yes",
	demoOthers[0], demoOthers[1], demoOthers[2],
	"supply=drive&old.motor-speed=1750rpm&old.frequency=45Hz&old.motor-sheave=3.4in&old.fan-sheave=8.6in",
	"old.motor-speed=1750rpm&old.motor-sheave=3.4in&old.fan-sheave=3in&old.center-distance=1in&old.speed=2000rpm&old.belt-healthy=yes",
	"same-wheel=no&target.rated-speed=800rpm&new.sheave=fixed&new.motor-sheave=3in&new.fan-sheave=9in&new.motor-speed=1725rpm",
	"new.sheave=adjustable&new.anchor-turns=0turns&new.anchor-pitch=3in&new.second-anchor-turns=5turns&new.second-anchor-pitch=4in",
	"old.motor-speed=?&old.motor-sheave=?&old.motor-sheave-outside=3.5in;guessed&old.section=A&new.turns=!closed?",
	"hood.listing=unlisted&hood.kind=wall&hood.duty=heavy&hood.length=8ft&hood.duct-width=18in&hood.duct-height=12in&hood.airflow=3000cfm&hood.makeup-airflow=2500cfm&hood.space-pressure=0.03inwg",
	demoFan + beltRead + "2.5 lbf&trial.t1.belt-deflection=1/4 in",
	demoFan + beltRead + "2.4 lbf; within 0.1 lbf&trial.t1.belt-deflection=1/4 in; within 1/128 in&new.belt-rating=1hp&new.groove=standard",
	demoFan + beltRead + "1 lbf&trial.t1.belt-deflection=1/4 in&new.belt-number=B50&new.groove=standard&new.belt-rating=5hp",
	demoFan + beltRead + "9 lbf&trial.t1.belt-deflection=1/4 in&new.belt-number=3V500&new.travel-away=0in",
	demoFan + beltRead + "2 lbf&trial.t1.belt-deflection=1/4 in&new.belt-number=A52&new.travel-toward=1/4in",
	demoFan + beltRead + "3 lbf&trial.t1.belt-deflection=1/4 in&trial.t1.alignment-gap=0.02in",
	demoFan + "&trial.t1.turns=3turns&trial.t1.belt-age=used&trial.t1.alignment-gap=0.11in&trial.t1.belt-force=1.7 lbf; within 0 lbf&trial.t1.belt-deflection=1/4 in; within 0 in",
	demoFan + "&trial.t1.turns=3turns&trial.t1.belt-age=used&trial.t1.alignment-gap=1in&trial.t1.belt-force=1.7 lbf&trial.t1.belt-deflection=1/4 in",
	demoFan + "&trial.t1.turns=3turns&trial.t1.belt-age=used&trial.t1.belt-frequency=90Hz&trial.t1.belt-force=1lbf&trial.t1.belt-deflection=1/4 in",
	demoFan + "&trial.t1.turns=3turns&trial.t1.belt-force=3lbf&new.belt-listed-force=?",
	demoFan + "&new.belt-number=A&new.belt-listed-force=3lbf&trial.t1.turns=3turns&trial.t1.belt-age=new&trial.t1.belt-force=3lbf&trial.t1.belt-deflection=2in",
	"new.sheave=fixed&new.motor-sheave=3.5in&new.fan-sheave=9in&new.center-distance=14in&new.section=A&new.motor-speed=1750rpm&new.motor-power=2hp&new.belts=1&new.belt-number=B46",
	"new.section=4L&new.sheave=fixed&new.motor-sheave=3.5in&new.fan-sheave=9in&new.belt-number=A10",
	powerStates[0], powerStates[1], powerStates[2], powerStates[3], powerStates[4], powerStates[5],
	"old.amps-1=5A&old.amps-2=5.2A&old.amps-3=6A&old.motor-amps=6A&old.motor-power=2hp&old.volts-12=208V&old.volts-23=210V&old.volts-31=190V&old.tipped-up=yes&want.goal=airflow",
	differing("old", "new") + leftAs, differing("new", "old") + "&check.wind=done&check.guard=not-applicable&check.hinge=not-applicable&check.hinge-why=bolted down",
	strings.NewReplacer("discharge=up", "discharge=down", "new.phases=3", "new.phases=1").Replace(demoFan+leftAs) + "&new.rotation-low=reverse&handover.by=N. N.&handover.on=2026-03-09&handover.notes=Curb out of level.",
	rewired,
	rewired + "&code-edition=2020&circuit.terminals=75&circuit.device-rating=25A&circuit.length=700ft&box.size=square 4 x 1-1/2&box.devices=1&box.clamps=yes&wire.w1.box-count=6&wire.w3.count=4&wire.w3.size=14&wire.w3.insulation=TW&wire.w3.role=other&wire.w3.where=raceway",
	"opening.kind=ring-knockout&opening.size=1-1/4&raceway.conduit=EMT&raceway.size=1/2&raceway.place=indoors&new.motor-volts=460V&wire.w1.count=3&wire.w1.size=4&wire.w1.insulation=THHN&wire.w2.count=1&wire.w2.size=8&wire.w2.insulation=bare&wire.w2.role=ground&box.volume=12in3&box.devices=0&box.clamps=no&raceway.use=nipple",
	"opening.kind=knockout&opening.size=3/4&raceway.conduit=LFNC-B&raceway.size=3/8&wire.w1.count=!0&wire.w1.size=12&wire.w1.insulation=THHN&supply=drive&new.maximum-overcurrent=20A&new.minimum-circuit-ampacity=?",
	strings.ReplaceAll(rewired, "THWN-2", "THHN"), strings.ReplaceAll(rewired, "THWN-2", "TW") + "&box.size=square 4 x 2-1/8&box.devices=0&box.clamps=no&circuit.device-rating=15A&circuit.length=40ft&wire.w2.size=14",
	strings.ReplaceAll(rewired, "raceway.size=1/2", "raceway.size=3/8") + "&wire.w1.count=9&circuit.device-rating=60A",
	"supply=three-phase&new.motor-power=5hp&new.motor-volts=460V&new.motor-speed=1160rpm&new.motor-amps=8A&raceway.conduit=EMT&raceway.size=1/2&raceway.exposure=shaded&circuit.material=copper&hottest-air=90F&wire.w1.count=3&wire.w1.size=8&wire.w1.insulation=THWN-2&circuit.device=time-delay-fuse&circuit.device-rating=15A",
	"raceway.conduit=FMC&raceway.size=1/2&wire.w1.count=1&wire.w1.size=12&wire.w1.insulation=THHN&new.minimum-circuit-ampacity=40A&circuit.material=copper&hottest-air=90F&raceway.exposure=shaded",
	"opening.kind=conduit&opening.conduit=EMT&opening.size=1/2&raceway.conduit=EMT&raceway.size=1/2&wire.w1.count=2;guessed&wire.w1.size=16&wire.w1.insulation=unmarked&wire.w1.diameter=0.14in&raceway.exposure=rooftop",
	"opening.kind=fitting&opening.size=1&raceway.conduit=FMC&raceway.size=3/8&raceway.fittings=inside&wire.w1.count=1&wire.w1.size=14&wire.w1.insulation=THHN&wire.w2.count=1&wire.w2.size=14&wire.w2.insulation=bare&wire.w2.role=ground&box.volume=!big",
	"opening.kind=knockout&opening.size=1/2&raceway.conduit=RMC&raceway.size=3/4&wire.w1.count=60&wire.w1.size=4&wire.w1.insulation=THWN-2&raceway.place=indoors&circuit.material=aluminum&hottest-air=95F&supply=single-phase&new.motor-power=1/2hp&new.motor-volts=115V&box.size=device 3 x 2 x 2",
}

// beltRead is a new belt read at the setting that the example orders.
const beltRead = "&trial.t1.turns=3turns&trial.t1.at=2026-03-09T14:05:00-06:00&trial.t1.belt-age=new&trial.t1.belt-force="

// leftAs is the demo's new fan as it was left.
const leftAs = "&trial.t1.turns=3turns&trial.t1.at=2026-03-09T14:05:00-06:00&trial.t1.accepted=yes&trial.t1.speed=717rpm&trial.t1.amps-1=5.6A&trial.t1.amps-2=5.7A&trial.t1.amps-3=5.5A" +
	"&trial.t1.volts-12=208.2V&trial.t1.volts-23=207.6V&trial.t1.volts-31=208.8V&trial.t1.belt-age=used&trial.t1.belt-frequency=31Hz&trial.t1.alignment-gap=1/32in&new.rotation=marked&hood.airflow=3200cfm"

// differing are two fans that have nothing in common, one on each side.
func differing(small, large string) string {
	s := "supply=three-phase&same-wheel=no"
	for _, x := range [][3]string{{"wheel-diameter", "20in", "22in"}, {"motor-volts", "208V", "230V"}, {"phases", "3", "1"}, {"motor-frequency", "50Hz", "60Hz"}, {"motor-power", "1hp", "2hp"}, {"motor-amps", "3A", "6A"},
		{"motor-speed", "1150rpm", "1750rpm"}, {"frame", "56", "143T"}, {"service-factor", "1", "1.15"}, {"sheave", "fixed", "adjustable"}, {"motor-sheave", "3in", "4in"}, {"motor-bore", "5/8in", "7/8in"},
		{"motor-key", "3/16in", "1/4in"}, {"fan-sheave", "7in", "9in"}, {"fan-bore", "3/4in", "1in"}, {"fan-key", "3/16in", "1/4in"}, {"section", "A", "B"}, {"belt-number", "A50", "B52"}, {"belts", "1", "2"},
		{"curb-width", "24in", "26in"}, {"curb-length", "24in", "24-1/2in"}, {"inlet", "16in", "18in"}, {"weight", "120lb", "160lb"}, {"hinge", "left", "far"}, {"discharge", "up", "side"}} {
		s += "&" + small + "." + x[0] + "=" + x[1] + "&" + large + "." + x[0] + "=" + x[2]
	}
	return s
}

// rewired is a fan whose old conduit and wire are used again.
const rewired = "supply=three-phase&new.phases=3&new.motor-power=2hp&new.motor-volts=208V&opening.kind=hub&opening.size=3/4&raceway.conduit=LFMC&raceway.size=1/2&raceway.exposure=rooftop&raceway.height=1/2in&circuit.material=copper&hottest-air=104F&circuit.device=inverse-time-breaker" +
	"&wire.w1.count=3&wire.w1.size=12&wire.w1.insulation=THWN-2&wire.w1.role=circuit&wire.w2.count=1&wire.w2.size=12&wire.w2.insulation=THWN-2&wire.w2.role=ground"

// everything is opened, so that every word of a state is drawn.
func everything(b *bench) {
	for _, p := range parts {
		b.open[p.id] = true
	}
	for _, id := range []string{"more", "sheaves", "readings", "hood-answers", "reading t1", "share", "qr", "belt-more", "which", "align", "load", "wires", "wire w1", "wire w2", "wired-motor", "wire-more", "like", "log", "part survey", "bring"} {
		b.open[id] = true
	}
	for _, g := range record.CheckGroups() {
		b.open["part "+g.Name] = true
	}
	for k, p := range b.Fan.Places() {
		b.open["working "+k] = true
		_ = p
	}
	for _, a := range []string{"target.fan-speed", "old.fan-speed", "new.fan-speed", "old.ratio", "at.airflow", "at.power", "new.amps", "limit.plate-amps", "fitted.center", "set.span", "measured.tension", "set.frequency-least", "belt.capacity", "align.shift", "raceway.fill", "raceway.smallest", "circuit.ampacity", "circuit.overcurrent", "circuit.drop", "box.needed"} {
		b.open["working "+a] = true
	}
}

func draw(t *testing.T, state string, prepare func(*bench)) string {
	t.Helper()
	before := shared
	t.Cleanup(func() { shared = before })
	shared = newBench(store.Memory(), "en-US")
	shared.Follow(strings.ReplaceAll(state, " ", "%20"))
	everything(shared)
	if prepare != nil {
		prepare(shared)
	}
	var all strings.Builder
	for _, p := range []app.Composer{NewHome(), NewDrive(), NewAirflow(), NewBelt(), NewPower(), NewRaceway(), NewRecord(), NewSettings(), NewSources(), NewUnknown()} {
		all.WriteString(whole(t, p))
	}
	return all.String()
}

// whole draws a page with the components in it.
func whole(t *testing.T, p app.Composer) string {
	t.Helper()
	e := app.NewTestEngine()
	if err := e.Load(p); err != nil {
		t.Fatal(err)
	}
	e.ConsumeAll()
	return app.HTMLString(p)
}

func TestNoWordIsMissing(t *testing.T) {
	for _, state := range states {
		for i, choosing := range []string{"", "old.motor-speed", "new.fan-sheave"} {
			html := draw(t, state, func(b *bench) {
				b.choosing = choosing
				b.printing = []string{printSheet, printLabel, ""}[i]
				if i > 1 {
					b.words = text.For("es")
				}
			})
			for rest := html; ; {
				_, after, found := strings.Cut(rest, "⟦")
				if !found {
					break
				}
				key, tail, _ := strings.Cut(after, "⟧")
				t.Errorf("no sentence for %q in state %.60q", key, state)
				rest = tail
			}
			for _, bad := range []string{"NaN", "Inf", "A failure"} {
				if strings.Contains(html, bad) {
					t.Errorf("%q is shown in state %.60q", bad, state)
				}
			}
			if shared.crash != "" {
				t.Errorf("drawing failed in state %.60q: %s", state, shared.crash)
			}
		}
	}
}

func TestTheExampleIsWhole(t *testing.T) {
	b := newBench(store.Memory(), "en-US")
	b.startDemo()
	if ids := b.Fans.IDs(); len(ids) != 4 || b.ID != ids[0] {
		t.Errorf("%d fans are kept, %s of %v is open", len(ids), b.ID, ids)
	}
	if b.Trouble != nil || b.Fan.Name.Text() != "Hood line 2, west" {
		t.Errorf("open: %q, %v", b.Fan.Name.Text(), b.Trouble)
	}
}

func TestEveryPlaceHasAName(t *testing.T) {
	b := newBench(store.Memory(), "en-US")
	b.Fan.NewTrial()
	b.Fan.NewWire()
	for k, p := range b.Fan.Places() {
		if strings.Contains(b.full(k), "⟦") {
			t.Errorf("%s has no name", k)
		}
		if s, ok := p.(record.Selector); ok {
			for _, o := range s.Options() {
				if strings.Contains(b.option(o), "⟦") {
					t.Errorf("%s: option %s has no name", k, o)
				}
			}
		}
	}
}

// Every rule that the library can name has a sentence. The rules are read off
// its source, so that a new one is not forgotten.
func TestEveryRuleHasASentence(t *testing.T) {
	b := newBench(store.Memory(), "en-US")
	for prefix, files := range map[string]string{"number.": "../../calc/{number/error,record/check,record/choice,record/entry,record/word}.go", "limit.": "../../calc/{limit/limit,raceway/raceway}.go", "rule.": "../../calc/sheet/verdict.go"} {
		rule := regexp.MustCompile(`\bRule += "([^"]+)"`)
		found := 0
		for _, file := range braces(files) {
			source, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			for _, m := range rule.FindAllStringSubmatch(string(source), -1) {
				found++
				if !b.words.Has(prefix + m[1]) {
					t.Errorf("no sentence for %q", prefix+m[1])
				}
			}
		}
		if found < 10 {
			t.Errorf("%s: only %d rules found in the source", prefix, found)
		}
	}
	for _, r := range number.Rules() {
		if !b.words.Has("number." + string(r)) {
			t.Errorf("no sentence for number.%s", r)
		}
	}
}

// A sentence of a rule that no answer names any more is dead.
func TestNoRuleSentenceIsStale(t *testing.T) {
	source, err := os.ReadFile("../../calc/sheet/verdict.go")
	if err != nil {
		t.Fatal(err)
	}
	rules := map[string]bool{}
	for _, m := range regexp.MustCompile(`\bRule += "([^"]+)"`).FindAllStringSubmatch(string(source), -1) {
		rules[m[1]] = true
	}
	words, err := os.ReadFile("../text/en.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range regexp.MustCompile(`"rule\.([^."]+)[^"]*":`).FindAllStringSubmatch(string(words), -1) {
		if !rules[m[1]] {
			t.Errorf("no answer names the rule %s", m[1])
		}
	}
}

// braces spreads one {a,b} in a path.
func braces(path string) []string {
	before, rest, ok := strings.Cut(path, "{")
	if !ok {
		return []string{path}
	}
	list, after, _ := strings.Cut(rest, "}")
	var all []string
	for _, item := range strings.Split(list, ",") {
		all = append(all, before+item+after)
	}
	return all
}

func TestEverySectionHasAPage(t *testing.T) {
	for _, p := range parts {
		if homes[p.id] == "" {
			t.Errorf("no page is known for section %s", p.id)
		}
	}
}

func TestEveryFieldOfASectionIsAPlace(t *testing.T) {
	b := newBench(store.Memory(), "en-US")
	for _, p := range parts {
		for _, f := range p.fields {
			if b.place(f) == nil {
				t.Errorf("section %s lists %s, which is no place", p.id, f)
			}
		}
	}
}
