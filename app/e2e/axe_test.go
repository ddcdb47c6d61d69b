//go:build e2e

package e2e

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// axeRoutes lists every page with a link that fills it: with answers, and with
// what can't be read or can't be.
var axeRoutes = []struct{ route, link string }{
	{"/", ""},
	{"/drive/", ""},
	{"/drive/", filled},
	{"/drive/", faulty},
	{"/airflow/", filled},
	{"/airflow/", faulty},
	{"/belt/", ""},
	{"/belt/", filled + beltRead},
	{"/belt/", faulty + beltFault},
	{"/power/", ""},
	{"/power/", filled + proving},
	{"/power/", filled + "&trial.t1.amps-2=!x&trial.t1.clamp-turns=0turns&trial.t1.volts-12=480V&trial.t1.volts-23=200V&trial.t1.volts-31=200V"},
	{"/raceway/", ""},
	{"/raceway/", filled + rewired},
	{"/raceway/", faulty + "&opening.kind=hub&opening.size=3/8&raceway.conduit=LFNC-B&raceway.size=1/2&wire.w1.count=!0&wire.w1.size=18&wire.w1.insulation=THHN&box.volume=!big"},
	{"/record/", ""},
	{"/record/", filled + left + "&check.wind=not-applicable&new.discharge=down"},
	{"/record/", faulty + "&handover.on=!soon&new.curb-width=!wide&old.curb-width=0in"},
	{"/settings/", ""},
	{"/sources/", ""},
}

const (
	filled = "#supply=three-phase&same-wheel=yes&altitude=620ft&coldest-air=5F&target.speed=712rpm&target.airflow=3200cfm&target.pressure=1.1inwg" +
		"&target.power=1.15hp&target.air-temperature=90F&old.motor-speed=1725rpm&old.motor-sheave=?&old.count-fan-turns=20&old.count-motor-turns=48.25" +
		"&new.motor-power=2hp&new.motor-volts=208V&new.motor-amps=6.6A&new.service-factor-amps=7.6A&new.motor-speed=1750rpm&new.wheel-max-speed=1080rpm" +
		"&new.section=A&new.sheave=adjustable&new.anchor-turns=0&new.anchor-pitch=4.0in&new.second-anchor-turns=5&new.second-anchor-pitch=3.0in" +
		"&new.fan-sheave=8.4in&new.turns=0&new.center-distance=15-3/4in&new.travel-toward=1in&new.travel-away=1-1/4in&new.belt-number=A50" +
		"&hood.listing=listed&hood.label-airflow=3000cfm&hood.duct-width=18in&hood.duct-height=12in&trial.t1.turns=3&trial.t1.speed=700rpm&trial.t1.amps-1=4.4A"
	proving = "&trial.t1.amps-2=4.5A&trial.t1.amps-3=5.9A&trial.t1.volts-12=208V&trial.t1.volts-23=207V&trial.t1.volts-31=208V&trial.t1.leads=1-2-3&new.rotation=marked" +
		"&new.leads=3-1-2&trial.t2.leads=3-1-2&trial.t2.amps-1=4.4A&trial.t2.amps-2=4.5A&trial.t2.amps-3=5.9A&new.protection=thermal-protector&new.restart=automatic&new.service-factor=1"
	faulty = "#no.such=1&old.motor-speed=!fast&old.motor-sheave=3.4in&old.fan-sheave=0in&old.center-distance=1in&new.sheave=adjustable&new.section=A" +
		"&new.anchor-turns=0&new.anchor-pitch=3in&new.second-anchor-turns=5&new.second-anchor-pitch=4in&same-wheel=yes&hood.duct-width=0in&hood.airflow=!much"
)

// rewired is the old conduit with its wire, used again.
const rewired = "&opening.kind=knockout&opening.size=3/4&raceway.conduit=LFMC&raceway.size=1/2&raceway.exposure=rooftop&raceway.height=1/2in&circuit.material=copper&hottest-air=104F" +
	"&circuit.device=inverse-time-breaker&circuit.device-rating=25A&circuit.length=150ft&wire.w1.count=3&wire.w1.size=12&wire.w1.insulation=THWN-2&wire.w1.role=circuit&wire.w2.count=1&wire.w2.size=12" +
	"&wire.w2.insulation=bare&wire.w2.role=ground&wire.w3.count=9&wire.w3.size=14&wire.w3.insulation=TW&wire.w3.role=other&box.size=device%203%20x%202%20x%202&box.devices=1&box.clamps=yes"

// A belt that was read, and one that can't be.
const (
	beltRead  = "&new.belts=1&new.belt-rating=1hp&new.belt-listed-force=2lbf&trial.t1.belt-age=new&trial.t1.belt-force=2.4lbf&trial.t1.belt-deflection=1/4in&trial.t1.alignment-gap=1/4in"
	beltFault = "&new.belt-number=A5O&new.belts=1&new.center-distance=!far&trial.t1.belt-age=new&trial.t1.belt-force=0lbf&trial.t1.belt-deflection=16in"
)

// Every page, in every look and language, with answers and with errors, is free
// of what axe-core finds wrong.
func TestNothingStandsInTheWayOfAnyone(t *testing.T) {
	t.Parallel()
	axe, err := os.ReadFile("../../.build/axe-core/axe.min.js")
	if err != nil {
		t.Fatal(err, "; app/e2e/install-axe brings it")
	}
	p := NewPhone(t)
	p.Hold()
	for _, at := range axeRoutes {
		tab := p.Open(at.route + at.link)
		tab.examine(t, string(axe), at.route)
		tab.Close()
		tab = p.Open(at.route + "?lang=es" + at.link)
		tab.examine(t, string(axe), at.route+" in Spanish", "light") // colors know no language
		tab.Close()
	}
	embedded := p.Open("/drive/?embed" + filled)
	embedded.examine(t, string(axe), "embedded /drive/")
	wide := p.Open("/drive/" + filled)
	wide.do("widening", chromedp.EmulateViewport(1280, 800))
	wide.examine(t, string(axe), "/drive/ at 1280")
}

// examine opens what is closed and asks axe-core in each look, or in those given.
func (t *Tab) examine(test *testing.T, axe, where string, looks ...string) {
	test.Helper()
	for range 3 { // what opens may hold more that opens
		Eval[int](t, `(() => { const closed = [...document.querySelectorAll("main [aria-expanded=false]:not(.row-why)")].slice(0, 60); closed.forEach((b) => b.click()); return closed.length; })()`)
		t.Rest()
	}
	Eval[bool](t, "("+"() => { "+axe+"; return true; })()")
	if len(looks) == 0 {
		looks = []string{"light", "dark", "sun"}
	}
	for _, look := range looks {
		only := `, { runOnly: { type: "rule", values: ["color-contrast"] } }`
		if look == "light" {
			only = ""
		}
		found := Eval[[]string](t, fmt.Sprintf(`(async () => {
			document.querySelector(".page").classList.remove("look-light", "look-dark", "look-sun");
			document.querySelector(".page").classList.add("look-%s");
			const result = await axe.run(document%s);
			return result.violations.flatMap((v) => v.nodes.slice(0, 3).map((n) => v.id + ": " + n.html.slice(0, 160) + " " + n.failureSummary.slice(0, 300)));
		})()`, look, only))
		if len(found) > 0 {
			test.Errorf("%s, %s:\n%s", where, look, strings.Join(found, "\n"))
		}
	}
}
