package page

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
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
	"old.amps-1=5A&old.amps-2=5.2A&old.amps-3=6A&old.motor-amps=6A&old.motor-power=2hp&old.volts-12=208V&old.volts-23=210V&old.volts-31=190V&old.tipped-up=yes&want.goal=airflow",
}

// everything is opened, so that every word of a state is drawn.
func everything(b *bench) {
	for _, p := range parts {
		b.open[p.id] = true
	}
	for _, id := range []string{"more", "sheaves", "readings", "hood-answers", "reading t1"} {
		b.open[id] = true
	}
	for k, p := range b.Fan.Places() {
		b.open["working "+k] = true
		_ = p
	}
	for _, a := range []string{"target.fan-speed", "old.fan-speed", "new.fan-speed", "old.ratio", "at.airflow", "at.power", "new.amps", "limit.plate-amps"} {
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
	for _, p := range []app.Composer{NewHome(), NewDrive(), NewAirflow(), NewRaceway(), NewSettings(), NewSources(), NewUnknown()} {
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
		for _, choosing := range []string{"", "old.motor-speed", "new.fan-sheave"} {
			html := draw(t, state, func(b *bench) { b.choosing = choosing })
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
