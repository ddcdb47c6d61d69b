package page

import "roofside/calc/record"

// The example is the roof of a college's teaching kitchen, invented: four fans,
// over two hood lines, a bread oven and a dish room.

// demoFan is the one that comes first: it has seized, so that its ratio was
// counted by hand; a balance report of two years ago gives the target. The new
// fan has the same wheel, another motor speed and another fan sheave, and its
// motor sheave came closed. Its wire stays, the new fan's hub is a size larger, and
// its base goes over the curb.
const demoFan = "supply=three-phase&same-wheel=yes&altitude=620 ft&coldest-air=5 F" +
	"&target.speed=712 rpm&target.airflow=3200 cfm&target.pressure=1.1 inwg&target.power=1.15 hp&target.air-temperature=90 F" +
	"&old.motor-power=2 hp&old.motor-volts=208 V&old.motor-speed=1725 rpm&old.motor-amps=?&old.motor-sheave=?" +
	"&old.count-fan-turns=20 turns&old.count-motor-turns=48.25 turns" +
	"&new.motor-power=2 hp&new.motor-volts=208 V&new.motor-amps=6.6 A&new.service-factor-amps=7.6 A&new.motor-speed=1750 rpm" +
	"&new.wheel-max-speed=1080 rpm&new.section=A&new.sheave=adjustable" +
	"&new.anchor-turns=0 turns&new.anchor-pitch=4.0 in&new.second-anchor-turns=5 turns&new.second-anchor-pitch=3.0 in" +
	"&new.fan-sheave=8.4 in&new.turns=0 turns&new.center-distance=15-3/4 in&new.travel-toward=1 in&new.travel-away=2 in&new.belt-number=A50&new.belts=1" +
	"&opening.kind=hub&opening.size=3/4&raceway.conduit=LFMC&raceway.size=1/2&raceway.place=outdoors&raceway.exposure=rooftop&raceway.height=2 in" +
	"&hottest-air=104 F&circuit.material=copper&circuit.device=inverse-time-breaker" +
	"&old.curb-width=24 in&old.curb-length=24 in&new.curb-width=24-1/2 in&new.curb-length=24-1/2 in&old.weight=165 lb&new.weight=185 lb" +
	"&old.phases=3&new.phases=3&old.hinge=left&new.hinge=left&old.discharge=up&new.discharge=up&raceway.length=4 ft" +
	"&wire.w1.count=3&wire.w1.size=12&wire.w1.insulation=THWN-2&wire.w1.role=circuit&wire.w2.count=1&wire.w2.size=12&wire.w2.insulation=THWN-2&wire.w2.role=ground"

// Its neighbors run.
var demoOthers = []string{
	"supply=three-phase&old.motor-power=3 hp&old.motor-volts=208 V&old.motor-amps=9.6 A&old.motor-speed=1745 rpm" +
		"&old.section=B&old.sheave=fixed&old.motor-sheave=4.6 in&old.fan-sheave=9.4 in&old.speed=846 rpm&old.belt-healthy=yes" +
		"&old.amps-1=7.9 A&old.amps-2=8.1 A&old.amps-3=8.0 A&target.tag-speed=850 rpm",
	"supply=single-phase&old.motor-power=1/2 hp&old.motor-volts=115 V&old.motor-speed=1725 rpm" +
		"&old.section=A&old.sheave=adjustable&old.turns=2-1/2 turns&old.fan-sheave-outside=7 in",
	"supply=direct",
}

// demo returns the invented fans in the order they are needed.
func demo() []*record.Fan {
	var fans []*record.Fan
	for _, link := range append([]string{demoFan}, demoOthers...) {
		texts, problems := record.ParseFragment(link)
		f := record.NewFan()
		for _, p := range append(problems, f.Apply(texts)...) {
			panic("demo: " + p.Key + ": " + p.Err.Error())
		}
		fans = append(fans, f)
	}
	return fans
}

var demoNames = []string{"demo.first", "demo.second", "demo.third", "demo.fourth"}

// startDemo keeps the invented fans and opens the first.
func (b *bench) startDemo() {
	first := ""
	roof, err := b.Fans.AddRoof(b.T("demo.roof"))
	if err != nil {
		b.Trouble = err
		return
	}
	for i, f := range demo() {
		b.must(f.Name.Set(b.T(demoNames[i])))
		b.Start(roof, f)
		if first == "" {
			first = b.ID
		}
	}
	b.Take(first)
}
