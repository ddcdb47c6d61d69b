package sheet_test

// inOrder is a fan as it is left in order: every page is within, and every item done.
const inOrder = "supply=three-phase&same-wheel=yes&altitude=620 ft&coldest-air=5 F&target.speed=712 rpm&target.airflow=3200 cfm&target.power=1.15 hp&target.air-temperature=90 F" +
	"&new.motor-power=2 hp&new.motor-volts=208 V&new.motor-amps=6.6 A&new.service-factor=1.15&new.no-load-amps=3.4 A&new.motor-speed=1750 rpm&new.motor-frequency=60 Hz&new.phases=3" +
	"&new.wheel-max-speed=1080 rpm&new.section=A&new.sheave=adjustable&new.anchor-turns=0 turns&new.anchor-pitch=4.0 in&new.second-anchor-turns=5 turns&new.second-anchor-pitch=3.0 in&new.most-turns=5 turns" +
	"&new.fan-sheave=8.4 in&new.turns=0 turns&new.center-distance=15-3/4 in&new.travel-toward=1 in&new.travel-away=2 in&new.belt-number=A50&new.belts=1&new.rotation=marked&new.overload-dial=6.6 A" +
	"&old.curb-width=24 in&old.curb-length=24 in&new.curb-width=24-1/2 in&new.curb-length=24-1/2 in&hood.listing=listed&hood.label-airflow=3000 cfm&hood.airflow=3200 cfm" +
	readings +
	"&opening.kind=hub&opening.size=3/4&raceway.conduit=LFMC&raceway.size=1/2&raceway.place=outdoors&raceway.use=run&raceway.exposure=shaded&raceway.length=4 ft&hottest-air=86 F&code-edition=2023" +
	"&circuit.material=copper&circuit.terminals=75&circuit.device=inverse-time-breaker&circuit.device-rating=15 A&circuit.length=60 ft" +
	"&wire.w1.count=3&wire.w1.size=12&wire.w1.insulation=THWN-2&wire.w1.role=circuit&wire.w2.count=1&wire.w2.size=12&wire.w2.insulation=THWN-2&wire.w2.role=ground"

// readings are what was read at it.
const readings = "&trial.t1.turns=3 turns&trial.t1.speed=716 rpm&trial.t1.amps-1=5.4 A&trial.t1.amps-2=5.5 A&trial.t1.amps-3=5.3 A&trial.t1.volts-12=207 V&trial.t1.volts-23=208 V&trial.t1.volts-31=207 V" +
	"&trial.t1.air-temperature=85 F&trial.t1.belt-age=used&trial.t1.belt-force=3.4 lbf&trial.t1.belt-deflection=1/4 in&trial.t1.alignment-gap=1/32 in&trial.t1.accepted=yes"

// What the change of a fault begins with: nothing was read, no wires were entered.
const (
	unread  = "unread&"
	unwired = "unwired&"
)

type pageFault struct {
	page, name, level string
	item              string // of the handover
	with, why         string
}

// faultsOfPages are one change each to the fan in order, after which one verdict stands at a
// level on a page, and what it speaks about of the handover is no longer done.
var faultsOfPages = []pageFault{
	{"drive", "rotation", "stop", "rotation", "new.rotation=reverse", "a wheel that turns backward moves air, too, and too little (common practice)"},
	{"drive", "amps.lost", "stop", "amps", "trial.t1.amps-3=0.1 A", "two legs carry it all: a phase is lost"},
	{"drive", "amps.line", "stop", "amps", "trial.t1.amps-1=9 A&trial.t1.amps-2=9 A&trial.t1.amps-3=9 A", "9 A are over 1.15 times 6.6 A"},
	{"drive", "amps.tipped-up", "watch", "amps", "trial.t1.tipped-up=yes", "tipped up, it moves other air"},
	{"drive", "reading.speed", "stop", "speed", "trial.t1.speed=1432 rpm", "twice what the sheaves give: the tachometer's"},
	{"drive", "set.wheel-max", "stop", "speed", "new.wheel-max-speed=700 rpm", "716 rpm are over the wheel's"},
	{"drive", "set.plate-amps", "unjudged", "", unread + "target.power=", "nobody knows what it takes"},
	{"drive", "set.below-target", "watch", "speed", unread + "target.speed=880 rpm", "4.0 over 8.4 give 857 at most, at the 1800 rpm of no load"},
	{"drive", "set.target", "watch", "speed", "target.speed=500 rpm", "3.0 over 8.4 at 1750 rpm give 625 at least"},
	{"drive", "need.target", "stop", "", "target.speed=900 rpm", "twice the power of 716 rpm, of a motor that gives 1.15 times its own"},
	{"drive", "need.target", "stop", "", unread + "new.fan-sheave=&new.wheel-max-speed=700 rpm", "712 rpm are over the wheel's, whatever the sheaves"},
	{"drive", "left.fan-speed", "watch", "speed", "target.speed=740 rpm", "left 3 % under its target"},
	{"drive", "target.fan-speed", "watch", "", "target.tag-speed=600 rpm", "report and drive tag are 16 % apart"},
	{"drive", "target.fan-speed", "watch", "", unread + "new.turns=&target.tag-speed=600 rpm", "nor where no setting is known yet"},
	{"drive", "target.fan-speed", "watch", "", unread + "target.speed=880 rpm&target.tag-speed=700 rpm", "nor where no setting reaches it"},
	{"drive", "new.swapped", "watch", "", unread + "new.fan-sheave=2.5 in&new.motor-speed=&new.belt-number=", "the fan's sheave is the larger one (common practice)"},
	{"drive", "old.swapped", "watch", "", "old.motor-sheave=8.4 in&old.fan-sheave=3.4 in", "the fan's sheave is the larger one (common practice)"},
	{"drive", "old.belt-speed", "stop", "", "old.motor-sheave=18 in&old.motor-speed=3450 rpm&old.fan-sheave=20 in", "16,000 ft/min are over the 6500 of cast iron"},
	{"drive", "new.belt-number", "watch", "", "new.belt-number=A60&new.travel-away=", "A50 lies at this center distance"},
	{"drive", "old.mismatch", "watch", "", "old.motor-sheave=3.4 in&old.fan-sheave=8.4 in&old.motor-speed=1750 rpm&old.speed=600 rpm&old.belt-healthy=no", "708 rpm less 3 % of slip are 687"},
	{"drive", "move", "unjudged", "", unread + "target.speed=", "nobody has said how fast it is to turn"},

	{"airflow", "rotation", "stop", "rotation", "new.rotation=reverse", "see Drive"},
	{"airflow", "amps.lost", "stop", "amps", "trial.t1.amps-3=0.1 A", "see Drive"},
	{"airflow", "amps.line", "stop", "amps", "trial.t1.amps-1=9 A&trial.t1.amps-2=9 A&trial.t1.amps-3=9 A", "see Drive"},
	{"airflow", "amps.tipped-up", "watch", "amps", "trial.t1.tipped-up=yes", "see Drive"},
	{"airflow", "reading.speed", "stop", "speed", "trial.t1.speed=1432 rpm", "see Drive"},
	{"airflow", "new.amps", "stop", "", unread + "target.power=3.5 hp", "2 hp give 1.15 times their own"},
	{"airflow", "at.fan-speed", "stop", "speed", "new.wheel-max-speed=700 rpm", "716 rpm are over the wheel's"},
	{"airflow", "at.fan-speed", "stop", "", "want.goal=speed&want.speed=1157 rpm", "over the wheel's 1080"},
	{"airflow", "at.fan-speed", "stop", "", "want.goal=airflow&want.airflow=5200 cfm", "712 · 5200 / 3200 rpm (fan laws)"},
	{"airflow", "volts-unbalance", "stop", "volts", "trial.t1.volts-12=190 V&trial.t1.volts-23=212 V&trial.t1.volts-31=212 V", "7 %: MG 1 14.36, no motor runs above 5 %"},
	{"airflow", "hood.exhaust", "stop", "hood-airflow", "hood.label-airflow=3600 cfm", "the label asks for more than was measured"},
	{"airflow", "hood.exhaust", "unjudged", "", "hood.label-airflow=3600 cfm&hood.airflow=3590 cfm", "it may be less than the label asks for"},
	{"airflow", "duct.velocity", "watch", "hood-airflow", "hood.duct-diameter=40 in", "367 ft/min of the 500 that carry grease off"},
	{"airflow", "space", "stop", "", "hood.space-pressure=0.05 inH2O", "0.02 in of water at most"},

	{"belt", "rotation", "stop", "rotation", "new.rotation=reverse", "see Drive"},
	{"belt", "amps.lost", "stop", "amps", "trial.t1.amps-3=0.1 A", "see Drive"},
	{"belt", "amps.line", "stop", "amps", "trial.t1.amps-1=9 A&trial.t1.amps-2=9 A&trial.t1.amps-3=9 A", "see Drive"},
	{"belt", "amps.tipped-up", "watch", "amps", "trial.t1.tipped-up=yes&new.motor-power=2.2 hp", "see Drive"},
	{"belt", "reading.speed", "stop", "speed", "trial.t1.speed=1432 rpm", "see Drive"},
	{"belt", "tension", "watch", "tension", "trial.t1.belt-force=1 lbf", "half of what it takes to carry the load"},
	{"belt", "tension", "unjudged", "", "trial.t1.belt-age=", "looser or tighter is a matter of its age"},
	{"belt", "tension", "unjudged", "", unread + "new.turns=3 turns&new.fan-sheave=", "on unknown sheaves there is no force to press with"},
	{"belt", "tension", "unjudged", "", unread + "new.sheave=", "nor on a sheave that may be set or not"},
	{"belt", "tension", "unjudged", "", "new.belt-number=&trial.t1.belt-age=", "read, it is begun, whatever the belt"},
	{"belt", "tension", "unjudged", "", "new.belt-number=&trial.t1.belt-age=&trial.t1.alignment-gap=", "nor the gap"},
	{"belt", "align.gap", "stop", "alignment", "trial.t1.alignment-gap=1 in", "half a degree is 1/8 in here"},
	{"belt", "align.gap", "unjudged", "", "trial.t1.alignment-gap=1/32 in; within 1/2 in", "it may be out of line"},
	{"belt", "align.gap", "unjudged", "", "new.belt-number=&trial.t1.belt-force=&trial.t1.belt-deflection=&trial.t1.belt-age=&trial.t1.alignment-gap=1/32 in; within 1/2 in", "read, it is begun, whatever the belt"},
	{"belt", "new.groove", "stop", "", "new.section=B&new.groove=standard", "an A belt lies at the bottom of a B groove"},
	{"belt", "new.groove", "unjudged", "", "new.section=", "nobody has said what groove it is"},
	{"belt", "new.belt-number", "watch", "", "new.belt-number=A60&new.travel-away=", "A50 lies at this center distance"},
	{"belt", "fitted.center", "stop", "", "new.travel-away=1/16 in", "3 turns open, the belt lies tight 1/2 in farther away"},
	{"belt", "fitted.center", "unjudged", "", "new.travel-away=", "the base may not go as far as the belt asks"},
	{"belt", "fitted.center", "unjudged", "", "new.center-distance=", "nobody knows from where the base goes as far as it does"},
	{"belt", "fitted.center", "unjudged", "", "new.travel-toward=&new.travel-away=", "nobody knows how far the base goes"},
	{"belt", "set.belt-speed", "stop", "", unread + "new.motor-speed=3450 rpm&new.anchor-pitch=10 in&new.second-anchor-pitch=9 in&new.turns=3 turns&new.belt-number=&target.speed=", "8500 ft/min are over the 6500 of cast iron"},
	{"belt", "set.belt-speed", "unjudged", "", unread + "new.motor-speed=3450 rpm&new.sheave=fixed&new.motor-sheave=7.19 in; within 2 %25&target.speed=", "6494 ft/min, within 2 %, of the 6500 of cast iron"},
	{"belt", "belt.capacity", "watch", "", "new.belt-rating=1.2 hp", "it carries 1.5 hp"},
	{"belt", "belt.capacity", "unjudged", "", "new.belt-rating=!1..2", "what is typed is no power"},

	{"power", "supply.phases", "stop", "plate-matches", "supply=single-phase", "a motor of three phases does not run on one"},
	{"power", "supply.phases", "stop", "plate-matches", unread + "supply=single-phase", "nor where nothing was read yet"},
	{"power", "supply.phases", "unjudged", "", "supply=single-phase&new.phases=&trial.t1.volts-23=&trial.t1.volts-31=&trial.t1.amps-2=&trial.t1.amps-3=", "it may have three"},
	{"power", "amps.lost", "stop", "amps", "trial.t1.amps-3=0.1 A", "see Drive"},
	{"power", "amps.lost", "stop", "amps", "supply=&trial.t1.amps-3=0.1 A", "whatever feeds it, it has three legs"},
	{"power", "amps.lost", "stop", "amps", "supply=&new.phases=&trial.t1.amps-3=0.1 A", "nor is its plate needed"},
	{"power", "volts.unbalance", "stop", "volts", "trial.t1.volts-12=190 V&trial.t1.volts-23=212 V&trial.t1.volts-31=212 V", "7 %: MG 1 14.36, no motor runs above 5 %"},
	{"power", "volts.frequency", "stop", "volts", "trial.t1.frequency=50 Hz", "208 V at 50 Hz are 120 % of its flux: MG 1 12.44"},
	{"power", "volts.of-plate", "stop", "volts", "trial.t1.volts-12=185 V&trial.t1.volts-23=185 V&trial.t1.volts-31=185 V", "11 % under its plate: MG 1 12.44, 10 %"},
	{"power", "volts.plate", "watch", "plate-matches", "new.motor-volts=230 V", "C84.1: a 230 V motor is for 240 V"},
	{"power", "volts.system", "unjudged", "", "trial.t1.volts-12=187 V&trial.t1.volts-23=187 V&trial.t1.volts-31=187 V&new.motor-volts=200 V", "C84.1 has no such system"},
	{"power", "ask.double-volts", "watch", "volts", "trial.t1.volts-12=416 V&trial.t1.volts-23=416 V&trial.t1.volts-31=416 V", "twice the plate's: the other connection"},
	{"power", "ask.half-volts", "watch", "volts", "trial.t1.volts-12=104 V&trial.t1.volts-23=104 V&trial.t1.volts-31=104 V", "half the plate's: the other connection"},
	{"power", "ask.double-amps", "watch", "amps", "new.motor-amps=3.3 A&new.no-load-amps=1.7 A&trial.t1.amps-1=6.6 A&trial.t1.amps-2=6.6 A&trial.t1.amps-3=6.6 A", "twice the plate's: the other connection"},
	{"power", "amps.line", "stop", "amps", "trial.t1.amps-1=9 A&trial.t1.amps-2=9 A&trial.t1.amps-3=9 A", "9 A are over 1.15 times 6.6 A"},
	{"power", "amps.tipped-up", "watch", "amps", "trial.t1.tipped-up=yes", "see Drive"},
	{"power", "amps.unbalance", "watch", "amps", "trial.t1.amps-1=5.4 A&trial.t1.amps-2=5.9 A&trial.t1.amps-3=4.6 A", "13 % are over the trade's 10"},
	{"power", "amps.return", "watch", "amps", "supply=single-phase&new.phases=1&trial.t1.volts-23=&trial.t1.volts-31=&trial.t1.amps-3=&trial.t1.amps-2=4 A", "what goes in comes back"},
	{"power", "power.shaft", "watch", "amps", "new.motor-power=4 hp&new.power-factor=80 %25&new.efficiency=85 %25", "it would give more than it takes"},
	{"power", "rotation", "stop", "rotation", "new.rotation=reverse", "see Drive"},
	{"power", "rotation", "stop", "rotation", unread + "new.rotation=reverse", "nor where nothing was read yet"},
	{"power", "rotation", "unjudged", "", "new.rotation=", "nobody has seen it turn"},
	{"power", "overload.set", "stop", "overload-set", "new.overload-dial=9 A", "430.32: 125 % of 6.6 A are 8.25"},
	{"power", "overload.set", "stop", "overload-set", unread + "new.overload-dial=9 A", "nor where nothing was read yet"},
	{"power", "power.next", "unjudged", "", unread, "no amps were read"},

	{"raceway", "raceway.fill", "stop", "", "wire.w1.count=12", "Annex C: nine of 12 THWN-2 in 1/2 LFMC"},
	{"raceway", "raceway.jam", "watch", "", unwired + "raceway.conduit=EMT&wire.w1.count=3&wire.w1.size=8&wire.w1.insulation=THWN-2&wire.w1.role=circuit", "Chapter 9: 2.8 to 3.2 times the wire's diameter"},
	{"raceway", "circuit.ampacity", "stop", "", "wire.w1.size=14&new.motor-power=7.5 hp&new.motor-amps=22 A", "Table 430.250: 24.2 A and 25 % are more than 20"},
	{"raceway", "circuit.ground", "stop", "", "wire.w2.size=14&circuit.device-rating=30 A", "Table 250.122: 10 behind 30 A"},
	{"raceway", "circuit.overcurrent", "stop", "", "circuit.device-rating=80 A", "430.52: 250 % of 7.5 A, the next size 20 A"},
	{"raceway", "circuit.drop-share", "watch", "", "circuit.length=900 ft", "210.19, note: 3 %"},
	{"raceway", "take-along", "unjudged", "", "opening.size=", "no bushing fits an unknown opening"},
	{"raceway", "conduit-wet", "stop", "", "raceway.conduit=FMC", "348.12: not in the wet"},
	{"raceway", "dry-only w1", "stop", "", "wire.w1.insulation=THHN", "Table 310.4(A): dry and damp places"},
	{"raceway", "box.needed", "unjudged", "", unwired + "box.size=square 4 x 1-1/2", "nobody has said what is in it"},

	{"record", "curb.clearance", "stop", "base-fits", "new.curb-width=23 in", "it does not go over the curb"},
	{"record", "curb.clearance-along", "stop", "base-fits", "new.curb-length=23 in", "it does not go over the curb"},
	{"record", "like.motor-frequency", "stop", "", "old.motor-frequency=50 Hz", "a motor for 60 Hz does not run where 50 Hz did"},
	{"record", "like.discharge", "stop", "", "new.discharge=down", "grease is thrown away from the roof"},
}
