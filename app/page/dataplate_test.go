package page

import (
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
	"golang.org/x/net/html"

	"roofside/app/store"
	"roofside/calc/record"
	"roofside/calc/scenario"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

var ranks = []string{"within", "unjudged", "watch", "stop"}

// offered tells whether a verdict is of what is only offered, or past, as the README
// has it.
func offered(of, level string, b *bench) bool {
	switch of {
	case "need.motor-sheave", "need.fan-sheave", "need.frequency", "shorter.center", "nearest.center", "longer.center":
		return true
	}
	return strings.HasPrefix(of, "row ") || isTrial(of, b) || strings.HasPrefix(of, "like.") && level != "stop"
}

func isTrial(id string, b *bench) bool {
	return slices.ContainsFunc(b.Fan.Trials, func(t *record.Trial) bool { return t.ID == id })
}

// alone are records in which one verdict, in a folded section or beside a figure, is
// worse than all that the plate words.
var alone = []string{
	left0 + "&old.motor-speed=1750rpm&old.motor-sheave=3.4in&old.fan-sheave=8.4in&old.speed=1400rpm",
	left0 + "&target.tag-speed=600rpm",
	left0 + "&old.motor-sheave=9in&old.fan-sheave=3in",
	strings.NewReplacer("trial.t1.turns=3turns", "trial.t1.turns=4turns", "speed=717rpm", "speed=692rpm", "alignment-gap=1/32in", "alignment-gap=1in").Replace(left0),
	strings.NewReplacer("travel-away=2 in", "travel-away=2-1/2in", "belt-frequency=31Hz", "belt-frequency=48Hz", "belt-age=used", "belt-age=new").Replace(left0) + "&new.belt-mass=0.105kg/m&new.belt-rating=1/4hp",
	left0 + "&new.overload-dial=20A",
	strings.Replace(left0, "speed=717rpm", "speed=690rpm", 1) + "&trial.t2.turns=3turns",
	left0 + "&hood.space-pressure=0.03inwg",
	"supply=three-phase&new.overload-dial=20A&new.motor-amps=6.6A&new.motor-power=2hp&new.service-factor=1.15",
	"wire.w1.count=3&wire.w1.size=8&wire.w1.insulation=THWN-2&raceway.conduit=EMT&raceway.size=3/4",
	"old.curb-width=24in&new.curb-width=23in",
}

const left0 = demoFan + leftAs

// A plate is never better than any verdict that stands on its page, in an open section
// or under the plate, and says what the library says.
func TestThePlateIsTheWorstOnItsPage(t *testing.T) {
	type drawn struct{ link, page string } // all pages, where none is said
	var links []drawn
	for _, state := range slices.Concat(states, alone) {
		links = append(links, drawn{state, ""})
	}
	all, err := scenario.Load(os.DirFS("../../testdata/scenarios"))
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range all {
		links = append(links, drawn{s.Link, s.Page})
	}
	before := shared
	defer func() { shared = before }()
	seen := map[string]int{}
	for _, l := range links {
		link := l.link
		shared = newBench(store.Memory(), "en-US")
		shared.Follow(strings.ReplaceAll(link, " ", "%20"))
		everything(shared)
		for on, p := range map[sheet.Subject]app.Composer{sheet.OfDrive: NewDrive(), sheet.OfAirflow: NewAirflow(), sheet.OfBelt: NewBelt(), sheet.OfPower: NewPower(), sheet.OfRaceway: NewRaceway(), sheet.OfRecord: NewRecord()} {
			if l.page != "" && l.page != string(on) {
				continue
			}
			n, err := html.Parse(strings.NewReader(whole(t, p)))
			if err != nil {
				t.Fatal(err)
			}
			plate := find(n, "section", "data-plate", string(on))
			if plate == nil {
				if on != sheet.OfDrive && on != sheet.OfBelt || !shared.Fan.DirectDrive() {
					t.Errorf("%.60q: no plate on %s", link, on)
				}
				continue
			}
			level := attribute(plate, "data-verdict")
			if want := levels[sheet.JobOf(shared.Fan, unit.Inch/16, false).Plate(on).Level]; level != string(want) || attribute(plate, "data-of") != "plate" {
				t.Errorf("%.60q: the plate of %s is %s, the library says %s", link, on, level, want)
			}
			seen[level]++
			for d := range n.Descendants() {
				of, stands := attribute(d, "data-of"), attribute(d, "data-verdict")
				if d.Type != html.ElementNode || stands == "" || offered(of, stands, shared) {
					continue
				}
				if of == "" {
					t.Errorf("%.60q: a verdict on %s has no name", link, on)
				}
				if slices.Index(ranks, stands) > slices.Index(ranks, level) {
					t.Errorf("%s: the plate of %s is %s, and %s stands at %s", link, on, level, of, stands)
				}
			}
		}
	}
	for _, level := range ranks {
		if seen[level] < 5 {
			t.Errorf("%d plates are %s", seen[level], level)
		}
	}
}
