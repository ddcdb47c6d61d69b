package page

import "roofside/calc/record"

// demoFan is an invented case: over the second hood line of a teaching kitchen
// a fan has seized, so that its ratio was counted by hand; a balance report of
// two years ago gives the target. The new fan has the same wheel, another motor
// speed and another fan sheave, and its motor sheave came closed.
const demoFan = "name=Hood line 2, west&supply=three-phase&same-wheel=yes&altitude=620 ft&coldest-air=5 F" +
	"&target.speed=712 rpm&target.airflow=3200 cfm&target.pressure=1.1 inwg&target.power=1.15 hp&target.air-temperature=90 F" +
	"&old.motor-power=2 hp&old.motor-volts=208 V&old.motor-speed=1725 rpm&old.motor-amps=?&old.motor-sheave=?" +
	"&old.count-fan-turns=20 turns&old.count-motor-turns=48.25 turns" +
	"&new.motor-power=2 hp&new.motor-volts=208 V&new.motor-amps=6.6 A&new.service-factor-amps=7.6 A&new.motor-speed=1750 rpm" +
	"&new.wheel-max-speed=1080 rpm&new.section=A&new.sheave=adjustable" +
	"&new.anchor-turns=0 turns&new.anchor-pitch=4.0 in&new.second-anchor-turns=5 turns&new.second-anchor-pitch=3.0 in" +
	"&new.fan-sheave=8.4 in&new.turns=0 turns&new.center-distance=15-3/4 in&new.travel-toward=1 in&new.travel-away=1-1/4 in&new.belt-number=A50"

// demo returns the invented fan.
func demo() *record.Fan {
	texts, problems := record.ParseFragment(demoFan)
	f := record.NewFan()
	for _, p := range append(problems, f.Apply(texts)...) {
		panic("demo: " + p.Key + ": " + p.Err.Error())
	}
	return f
}
