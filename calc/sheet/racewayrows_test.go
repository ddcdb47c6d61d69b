package sheet_test

import (
	"strings"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// whole is a usual good installation on a roof: 2 hp at 208 V, three phases, in
// liquidtight conduit with its ground, 2 in off the roof on a day of 40 °C. By Table
// 430.250 7.5 A, 9.4 to carry (430.22); 12 THWN-2 carries 20 A at 60 °C terminals
// (110.14(C)); 250 % are 18.75, a breaker of 20 (430.52, 240.6); a ground of 12 for it
// (Table 250.122).
const whole = "supply=three-phase&new.phases=3&new.motor-power=2hp&new.motor-volts=208V&new.motor-amps=6.6A&new.motor-speed=1750rpm" +
	"&new.volts-12=208V&opening.kind=hub&opening.size=1/2&raceway.conduit=LFMC&raceway.size=1/2&raceway.place=outdoors&raceway.exposure=rooftop&raceway.height=2in&raceway.length=5ft" +
	"&circuit.material=copper&circuit.terminals=60&circuit.device=inverse-time-breaker&circuit.device-rating=20A&circuit.length=80ft&hottest-air=40C&code-edition=2023" +
	"&wire.a.count=3&wire.a.size=12&wire.a.insulation=THWN-2&wire.a.role=circuit&wire.b.count=1&wire.b.size=12&wire.b.insulation=THWN-2&wire.b.role=ground"

// noGround takes the ground wire out.
const noGround = "&wire.b.where=box"

// wired is the whole installation with other values in some places.
func wired(t testing.TB, with string) *record.Fan {
	t.Helper()
	f := fan(t, whole)
	for part := range strings.SplitSeq(strings.TrimPrefix(with, "&"), "&") {
		if key, text, ok := strings.Cut(part, "="); ok {
			f.Apply(map[string]string{key: text})
		}
	}
	return f
}

// racewayPlate are the verdicts that stand on the raceway's page.
func racewayPlate(f *record.Fan) (list []sheet.Verdict) {
	for _, h := range sheet.JobOf(f, unit.Inch/16, false).Stands(sheet.OfRaceway) {
		list = append(list, h.Verdict)
	}
	return list
}

func wantedOf(f *record.Fan, v sheet.Verdict) string {
	var keys []string
	for _, p := range v.Wanted {
		keys = append(keys, f.KeyOf(p))
	}
	return strings.Join(keys, " ")
}

// What a person of the trade would say, with the section that says it.
func TestRowsOfTheRaceway(t *testing.T) {
	const (
		five1 = "&new.phases=1&new.motor-power=5hp&new.motor-volts=230V&new.motor-amps=27A&new.volts-12=232V&wire.a.count=2&circuit.terminals=75&circuit.device-rating=70A"
		seven = "&new.motor-power=7-1/2hp&new.motor-volts=230V&new.motor-amps=20A&wire.a.size=10&wire.b.size=10&circuit.device-rating=60A&circuit.length="
		half4 = "&new.motor-power=1/2hp&new.motor-volts=460V&new.motor-amps=1A&new.volts-12=480V&wire.a.size=14&wire.b.size=14&circuit.device-rating=15A"
		hot   = "&wire.a.size=14&wire.a.insulation=THWN&wire.b.size=14&raceway.height=13/16in;within 0in&new.motor-power=1hp&new.motor-amps=4A&circuit.device-rating=15A"
		small = "&raceway.size=3/8"
		one   = "&supply=single-phase&new.phases=1&new.motor-power=1hp&new.motor-volts=115V&new.motor-amps=14A&new.volts-12=118V&wire.a.count=2&circuit.length="
	)
	for _, c := range []struct {
		name, with string
		level      sheet.Level
		rule       sheet.Rule // that decides, unless within
		wants      string     // where it can't be judged
	}{
		{"the whole installation", "", sheet.Within, "", ""},

		// Table 430.248: 28 A, 35 to carry (430.22), 25 is what 12 has at 75 °C.
		{"single-phase plate on three lines, 5 hp 230 V, 12 AWG", five1, sheet.Stop, sheet.RuleAmpacity, ""},
		{"the same in 8 AWG", five1 + "&wire.a.size=8&wire.b.size=8&raceway.size=3/4&opening.size=3/4", sheet.Within, "", ""},
		// 28 A by Table 430.248: a breaker of 70 (250 %), up to 110 (400 % are 112).
		{"its device by the same table: 110 A where it won't start on less", five1 + "&wire.a.size=8&wire.b.size=6&raceway.size=3/4&opening.size=3/4&circuit.device-rating=110A", sheet.Watch, sheet.RuleOvercurrent, ""},
		{"its device by the same table: 125 A", five1 + "&wire.a.size=8&wire.b.size=6&raceway.size=3/4&opening.size=3/4&circuit.device-rating=125A", sheet.Stop, sheet.RuleOvercurrent, ""},
		// Table 9, 8 AWG in steel: 0.78 Ω and 0.065 Ω in 1000 ft; 2 · 28 · (0.78 · 0.85 + 0.065 · 0.53) · 0.3 = 11.7 V of 230.
		{"its drop over both conductors", five1 + "&wire.a.size=8&wire.b.size=8&raceway.size=3/4&opening.size=3/4&circuit.length=300ft", sheet.Watch, sheet.RuleDrop, ""},
		{"the plate's phases not said, and one would be too much", "&new.phases=&new.motor-power=3hp&new.motor-amps=9A&circuit.device-rating=30A&wire.b.size=10", sheet.Unjudged, sheet.RuleAmpacity, "new.phases"}, // 10.6 or 18.7 A; 20 to carry 23.4
		{"the plate's phases not said, and either is enough", "&new.phases=", sheet.Within, "", ""},                                                                                                                 // 13.2 · 1.25 = 16.5
		{"the plate's phases not said, of 460 V, which no single phase has", "&new.phases=&new.motor-power=5hp&new.motor-volts=460V&new.motor-amps=6.5A&new.volts-12=480V", sheet.Within, "", ""},

		// Table 430.250, 208 V: 24.2 A, 30.3 to carry, 30 is what 10 has at 60 °C.
		{"7-1/2 hp, 230 V plate, 208 V read, 10 AWG at 60 °C", seven, sheet.Stop, sheet.RuleAmpacity, ""},
		{"read on the old fan", seven + "&new.volts-12=&old.volts-12=209V", sheet.Stop, sheet.RuleAmpacity, ""},
		{"read on a trial", seven + "&new.volts-12=&trial.a.volts-23=206V", sheet.Stop, sheet.RuleAmpacity, ""},
		{"240 V read: 22 A, 27.5 to carry", seven + "&new.volts-12=241V", sheet.Within, "", ""},
		{"volts not read: 208 or 240", seven + "&new.volts-12=", sheet.Unjudged, sheet.RuleAmpacity, "old.volts-12"},
		{"volts read between 208 and 240, the meter deciding", seven + "&new.volts-12=224V", sheet.Unjudged, sheet.RuleAmpacity, "new.volts-12"},
		{"the same at 75 °C terminals", seven + "&circuit.terminals=75", sheet.Within, "", ""},
		// Table 430.250, 200 V: 25.3 A, more than 208 V has: never the smaller.
		{"200 V plate on 208 V", seven + "&new.motor-volts=200V&circuit.terminals=75&wire.a.size=10", sheet.Within, "", ""},
		// Table 430.248: 1 hp at 115 V is 16 A, 20 to carry; at 230 V 8.
		{"115/230 V, plate at 230 V and 115 V read, 14 AWG", one + "&new.motor-volts=230V&new.motor-amps=7A&wire.a.size=14&wire.b.size=14&circuit.terminals=75&circuit.device-rating=15A", sheet.Stop, sheet.RuleDeviceSmall, ""},
		{"115 V plate, 12 AWG, 20 A", one, sheet.Within, "", ""},

		// 310.15(B)(2): 13/16 in is under 7/8 (2017, 2020), not under 3/4 (2023). 73 °C leaves
		// 75 °C insulation nothing (Table 310.15(B)(1)(1)).
		{"edition not said, 14 THWN 13/16 in off the roof", "&code-edition=" + hot, sheet.Unjudged, sheet.RuleTooHot, "code-edition"},
		{"the same in 2020", hot + "&code-edition=2020", sheet.Stop, sheet.RuleTooHot, ""},
		{"the same in 2017, 310.15(B)(3)(c)", hot + "&code-edition=2017", sheet.Stop, sheet.RuleTooHot, ""},
		{"the same in 2023", hot, sheet.Within, "", ""},
		{"the same of XHHW-2, exempt in all", "&code-edition=" + hot + "&wire.a.insulation=XHHW-2", sheet.Within, "", ""},
		{"edition not said, 1 in off the roof", "&code-edition=" + hot + "&raceway.height=1in;within 0in", sheet.Within, "", ""},
		{"edition not said, 1/2 in off the roof", "&code-edition=" + hot + "&raceway.height=1/2in;within 0in", sheet.Stop, sheet.RuleTooHot, ""},
		// 12 THWN-2 at 73 °C: 0.50 · 30 = 15 A, of which 9.4 are asked for.
		{"edition not said, and enough either way", "&code-edition=&raceway.height=13/16in;within 0in", sheet.Within, "", ""},
		// 3 hp: 10.6 · 1.25 = 13.3; 14 THWN-2 at 73 °C 0.50 · 25 = 12.5, else 15 at 60 °C terminals.
		{"edition not said, and the ampacity hangs on it", "&code-edition=&raceway.height=13/16in;within 0in&wire.a.size=14&new.motor-power=3hp&new.motor-amps=9A", sheet.Unjudged, sheet.RuleAmpacity, "code-edition"},

		// 16 A by the fan's plate behind a drive: 0.50 · 30 are 15 where 33 °C are added.
		{"edition not said, behind a drive", "&code-edition=&raceway.height=13/16in;within 0in&supply=drive&new.minimum-circuit-ampacity=16A&new.maximum-overcurrent=20A", sheet.Unjudged, sheet.RuleAmpacity, "code-edition"},
		// 13.2 A of one phase, 16.5 to carry, and 15 in 2020; otherwise 20 or 9.4 A.
		{"edition and phases not said, and both decide", "&code-edition=&new.phases=&raceway.height=13/16in;within 0in", sheet.Unjudged, sheet.RuleAmpacity, "code-edition new.phases"},
		// 15 A in each; 3 hp are 10.6 A, of one phase 18.7, 23.4 to carry.
		{"edition and phases not said, and the phases decide", "&code-edition=&new.phases=&raceway.height=1/2in;within 0in&new.motor-power=3hp&new.motor-amps=9A&circuit.device-rating=30A&wire.b.size=10", sheet.Unjudged, sheet.RuleAmpacity, "new.phases"},

		// 240.6(A): 10 A for breakers since 2023; 1.1 A · 250 % = 2.75, the next is 15 or 10.
		{"edition not said, 15 A breaker on 1/2 hp 460 V", "&code-edition=" + half4, sheet.Unjudged, sheet.RuleOvercurrent, "code-edition"},
		{"the same in 2020", half4 + "&code-edition=2020", sheet.Within, "", ""},
		{"the same in 2023", half4, sheet.Stop, sheet.RuleOvercurrent, ""},
		// 4 A · 250 % = 10: 15 is the next but one in 2023, and the last that 400 % leave.
		{"edition not said, 15 A breaker on 4 A of a slow motor", "&code-edition=&new.motor-speed=1150rpm&new.motor-power=3/4hp&new.motor-amps=4A&circuit.device-rating=15A", sheet.Unjudged, sheet.RuleOvercurrent, "code-edition"},
		{"edition not said, 15 A breaker on 4.1 A of it", "&code-edition=&new.motor-speed=1150rpm&new.motor-power=3/4hp&new.motor-amps=4.1A&circuit.device-rating=15A", sheet.Within, "", ""},
		{"edition not said, 20 A breaker on it", "&code-edition=" + half4 + "&circuit.device-rating=20A&wire.b.size=12", sheet.Stop, sheet.RuleOvercurrent, ""},
		{"edition not said, 3 A time-delay fuse on it", "&code-edition=" + half4 + "&circuit.device=time-delay-fuse&circuit.device-rating=3A", sheet.Within, "", ""}, // 175 % are 1.9
		{"edition not said, 20 A on 2 hp 208 V", "&code-edition=", sheet.Within, "", ""},

		// 350.20(A), 348.20(A)(2), 356.20(A): 3/8 up to 6 ft.
		{"3/8 LFMC, 10 ft", small + "&raceway.length=10ft", sheet.Stop, sheet.RuleSmallLong, ""},
		{"3/8 FMC indoors, 10 ft", small + "&raceway.conduit=FMC&raceway.fittings=outside&raceway.place=indoors&raceway.length=10ft", sheet.Stop, sheet.RuleSmallLong, ""},
		{"3/8 LFNC-B, 10 ft", small + "&raceway.conduit=LFNC-B&raceway.length=10ft", sheet.Stop, sheet.RuleSmallLong, ""},
		{"3/8 LFMC, 6 ft", small + "&raceway.length=6ft", sheet.Within, "", ""},
		{"3/8 LFMC, how long not said", small + "&raceway.length=", sheet.Unjudged, sheet.RuleSmallLong, "raceway.length"},
		{"3/8 LFMC, 6 ft or so", small + "&raceway.length=6ft;within 1ft", sheet.Unjudged, sheet.RuleSmallLong, "raceway.length"},
		{"1/2 LFMC, 10 ft, with its ground", "&raceway.length=10ft", sheet.Within, "", ""},
		// 356.12(3) lets what 356.10(5) does: longer where secured by 356.30.
		{"LFNC-A, 20 ft", "&raceway.conduit=LFNC-A&raceway.length=20ft", sheet.Watch, sheet.RuleFlexLong, ""},
		{"LFNC-A, how long not said", "&raceway.conduit=LFNC-A&raceway.length=", sheet.Within, "", ""},
		{"LFNC-A, 6 ft", "&raceway.conduit=LFNC-A&raceway.length=6ft", sheet.Within, "", ""},
		{"LFNC-B, 20 ft", "&raceway.conduit=LFNC-B&raceway.length=20ft", sheet.Within, "", ""},
		// 348.12(1): not of a conduit that the opening is said to have been.
		{"a hub, and flexible metal left in the record", "&opening.conduit=FMC", sheet.Within, "", ""},
		{"flexible metal at the opening", "&opening.kind=conduit&opening.conduit=FMC", sheet.Stop, sheet.RuleConduitWet, ""},
		// Chapter 9, note 4: a nipple is 24 in at most.
		{"a nipple of 10 ft", "&raceway.use=nipple&raceway.length=10ft", sheet.Watch, sheet.RuleNippleLong, ""},
		{"a nipple of 24 in", "&raceway.use=nipple&raceway.length=24in", sheet.Within, "", ""},
		{"nine in a nipple of 20 in or so, too many for a run", "&raceway.use=nipple&raceway.length=20in;within 10in&wire.c.count=6&wire.c.size=12&wire.c.insulation=THWN-2&wire.c.role=other", sheet.Unjudged, sheet.RuleFillCount, "raceway.length"},
		{"nine in a nipple of no known length", "&raceway.use=nipple&raceway.length=&wire.c.count=6&wire.c.size=12&wire.c.insulation=THWN-2&wire.c.role=other", sheet.Unjudged, sheet.RuleFillCount, "raceway.length"},
		{"nine in a nipple of a length that is none", "&raceway.use=nipple&raceway.length=!short&wire.c.count=6&wire.c.size=12&wire.c.insulation=THWN-2&wire.c.role=other", sheet.Unjudged, sheet.RuleFillCount, "raceway.length"},
		{"ten in a nipple that is none", "&raceway.use=nipple&raceway.length=10ft&wire.c.count=6&wire.c.size=12&wire.c.insulation=THWN-2&wire.c.role=other", sheet.Stop, sheet.RuleFillCount, ""},

		// 250.118(5) and (6): 6 ft; 20 A, or 60 A of LFMC from 3/4 to 1-1/4; 350.60, 348.60.
		{"LFMC over 6 ft, no ground", noGround + "&raceway.length=7ft", sheet.Stop, sheet.RuleFlexLength, ""},
		{"FMC indoors over 6 ft, no ground", noGround + "&raceway.conduit=FMC&raceway.place=indoors&raceway.length=7ft", sheet.Stop, sheet.RuleFlexLength, ""},
		{"1/2 LFMC behind 25 A, no ground", noGround + "&new.motor-power=3hp&new.motor-amps=9A&circuit.device-rating=25A&wire.a.size=10", sheet.Stop, sheet.RuleFlexRating, ""},
		{"3/4 LFMC behind 60 A, no ground", noGround + seven + "&raceway.size=3/4&opening.size=3/4&circuit.terminals=75", sheet.Watch, sheet.RuleNoGround, ""},
		{"3/4 LFMC behind 70 A, no ground", noGround + seven + "&raceway.size=3/4&opening.size=3/4&circuit.terminals=75&circuit.device-rating=70A", sheet.Stop, sheet.RuleFlexRating, ""},
		{"3/4 FMC indoors behind 25 A, no ground", noGround + "&new.motor-power=3hp&new.motor-amps=9A&raceway.conduit=FMC&raceway.place=indoors&raceway.size=3/4&opening.size=3/4&circuit.device-rating=25A", sheet.Stop, sheet.RuleFlexRating, ""},
		{"1-1/2 LFMC, no ground", noGround + "&raceway.size=1-1/2&opening.size=1-1/2", sheet.Stop, sheet.RuleFlexSize, ""},
		{"LFMC of 5 ft behind 20 A, no ground, whether it flexes not said", noGround, sheet.Watch, sheet.RuleNoGround, ""},
		{"the same, length and rating not said", noGround + "&raceway.length=&circuit.device-rating=", sheet.Watch, sheet.RuleNoGround, ""},
		{"the same, the fan tips up", noGround + "&new.hinge=left", sheet.Stop, sheet.RuleFlexTips, ""},
		{"the same, amps were read at it tipped up", noGround + "&trial.a.tipped-up=yes", sheet.Stop, sheet.RuleFlexTips, ""},
		{"the same, the fan has no hinge", noGround + "&new.hinge=none", sheet.Watch, sheet.RuleNoGround, ""},
		{"it tips up, with its ground wire", "&new.hinge=left", sheet.Within, "", ""},
		// 356.60, 352.60
		{"LFNC-B, no ground", noGround + "&raceway.conduit=LFNC-B", sheet.Stop, sheet.RuleNoGround, ""},
		// 250.118(2) to (4)
		{"EMT, no ground", noGround + "&raceway.conduit=EMT", sheet.Within, "", ""},
		{"RMC, no ground", noGround + "&raceway.conduit=RMC", sheet.Within, "", ""},

		// Table 430.250: 7.5 A. 24 A belongs to another hp, other volts, or to one phase.
		{"2 hp 208 V, 24 A on its plate", "&new.motor-amps=24A", sheet.Watch, sheet.RulePlateTable, ""},
		{"2 hp 208 V, amps of 460 V on its plate", "&new.motor-amps=3.2A", sheet.Watch, sheet.RulePlateTable, ""},
		{"10 hp 208 V, 7 A on its plate, 20 A", "&new.minimum-circuit-ampacity=16A&new.maximum-overcurrent=20A&new.motor-power=10hp&new.motor-amps=7A&circuit.length=", sheet.Watch, sheet.RulePlateAmpacity, ""},
		{"2 hp 208 V, 8.2 A on its plate", "&new.motor-amps=8.2A", sheet.Within, "", ""},
		{"5 hp 460 V, a premium motor of 5.9 A", "&new.motor-power=5hp&new.motor-volts=460V&new.motor-amps=5.9A&new.volts-12=478V", sheet.Within, "", ""},
		{"2 hp at 1150 rpm by its plate", "&new.motor-speed=1150rpm&new.motor-amps=8.6A&circuit.device-rating=20A", sheet.Within, "", ""},
		// 8.4 · 1.25 = 10.5 A of 20.
		{"speed not said, the plate above the table", "&new.motor-speed=&new.motor-amps=8.4A", sheet.Within, "", ""},

		// 14 TW at 45 °C: 0.71 · 15 = 10.7 A; by the table 9.4 are asked for, by the plate 9.3 · 1.25 = 11.6.
		{"speed not said, and below 1200 rpm the plate would be too much", "&new.motor-speed=&new.motor-amps=9.3A&wire.a.size=14&wire.a.insulation=TW&hottest-air=45C;within 0C", sheet.Unjudged, sheet.RuleAmpacity, "new.motor-speed"},
		// 3 hp: 10.6 · 1.25 = 13.3 by the table; by a plate of 8.4 A it would be 10.5.
		{"speed not said, and by the table it is too much", "&new.motor-speed=&new.motor-power=3hp&new.motor-amps=8.4A&wire.a.size=14&wire.a.insulation=TW&hottest-air=45C;within 0C", sheet.Stop, sheet.RuleAmpacity, ""},
		{"speed not said, and by the plate it is near", "&new.motor-speed=&new.motor-amps=8.5A;within 0.1A&wire.a.size=14&wire.a.insulation=TW&hottest-air=45C;within 0C", sheet.Unjudged, sheet.RuleAmpacity, "new.motor-speed"},
		{"the same at 1750 rpm", "&new.motor-amps=9.3A&wire.a.size=14&wire.a.insulation=TW&hottest-air=45C;within 0C", sheet.Within, "", ""},
		// 430.52(C)(1)(b): 225 % are 94.5 of 42 A (230 V), 103.9 of 46.2 A (208 V).
		{"volts not read, a fuse that is too large at 240 and to be watched at 208", seven + "&new.motor-power=15hp&new.motor-amps=38A&new.volts-12=&wire.a.size=4&wire.b.size=4&raceway.size=1&opening.size=1&circuit.terminals=75&circuit.device=time-delay-fuse&circuit.device-rating=100A", sheet.Watch, sheet.RuleOvercurrent, ""},
		// 430.52(B): carries the start; 430.58 with 430.110(A): a breaker 115 % of the table.
		{"15 A breaker, 16 A motor", one + "&new.motor-amps=16A&circuit.device-rating=15A", sheet.Stop, sheet.RuleDeviceSmall, ""},
		{"15 A breaker, 16 A by the table, plate not read", one + "&new.motor-amps=&circuit.device-rating=15A", sheet.Stop, sheet.RuleDeviceSmall, ""},
		{"15 A fuse, 16 A motor", one + "&new.motor-amps=16A&circuit.device=time-delay-fuse&circuit.device-rating=15A", sheet.Stop, sheet.RuleDeviceSmall, ""},
		{"15 A breaker, 13.5 A on the plate of a 16 A row", one + "&new.motor-amps=13.5A&circuit.device-rating=15A", sheet.Watch, sheet.RuleBreakerSmall, ""},
		{"20 A breaker before a drive, by the fan's plate", "&supply=drive&new.minimum-circuit-ampacity=12A&new.maximum-overcurrent=20A", sheet.Within, "", ""},
		{"17.5 A fuse, 18 A on the plate of a 16 A row", one + "&new.motor-amps=18A&circuit.device=time-delay-fuse&circuit.device-rating=17.5A", sheet.Stop, sheet.RuleDeviceSmall, ""},
		{"15 A fuse, which is no disconnect, 13.5 A on the plate of a 16 A row", one + "&new.motor-amps=13.5A&circuit.device=time-delay-fuse&circuit.device-rating=15A", sheet.Within, "", ""},
		{"20 A breaker, 16 A motor", one + "&new.motor-amps=16A", sheet.Within, "", ""},
		{"10 A time-delay fuse on 7.5 A", "&circuit.device=time-delay-fuse&circuit.device-rating=10A", sheet.Within, "", ""},
		{"a breaker above what the fan's plate allows", "&new.minimum-circuit-ampacity=10A&new.maximum-overcurrent=15A", sheet.Stop, sheet.RuleOvercurrent, ""},
		{"a breaker as the fan's plate allows", "&new.minimum-circuit-ampacity=10A&new.maximum-overcurrent=20A", sheet.Within, "", ""},

		// 250.122(B): 12 for 20 A; 14 would carry 9.4 A, so 10 AWG asks for a ground of 8 or of its own size.
		{"10 AWG reused, ground of 12, 20 A", "&wire.a.size=10", sheet.Watch, sheet.RuleGroundRaised, ""},
		{"the same, edition not said", "&wire.a.size=10&code-edition=", sheet.Watch, sheet.RuleGroundRaised, ""},
		{"the same in 2017, which has no exception", "&wire.a.size=10&code-edition=2017", sheet.Stop, sheet.RuleGroundRaised, ""},
		{"10 AWG reused, ground of 10", "&wire.a.size=10&wire.b.size=10", sheet.Within, "", ""},
		{"10 AWG reused, ground of 14, below the table", "&wire.a.size=10&wire.b.size=14", sheet.Stop, sheet.RuleGround, ""},

		// 250.97: 277 V is the line of 480 V to ground.
		{"277 V to rings", "&supply=single-phase&new.phases=1&opening.kind=ring-knockout&new.motor-volts=277V&new.volts-12=&new.minimum-circuit-ampacity=10A&new.maximum-overcurrent=20A&wire.a.count=2&new.motor-amps=", sheet.Watch, sheet.RuleBond, ""},
		{"480 V read, plate's volts not", "&opening.kind=ring-knockout&new.motor-volts=&new.volts-12=480V&new.minimum-circuit-ampacity=10A&new.maximum-overcurrent=20A&circuit.length=", sheet.Watch, sheet.RuleBond, ""},
		{"208 V to rings", "&opening.kind=ring-knockout", sheet.Within, "", ""},
		{"240 V, 252 of it read, to rings", "&opening.kind=ring-knockout&new.motor-volts=230V&new.volts-12=252V&new.motor-amps=6A", sheet.Within, "", ""},

		// 314.16(B)(5): six grounds of 12 are 2.25 in³ to 2017, 3.375 from 2020 on.
		{"a box that holds its grounds in 2017 alone, edition not said", "&code-edition=&box.volume=9.5in3&box.devices=0&box.clamps=no&wire.b.box-count=6", sheet.Unjudged, sheet.RuleBoxFill, "code-edition"},
		{"the same in 2017", "&code-edition=2017&box.volume=9.5in3&box.devices=0&box.clamps=no&wire.b.box-count=6", sheet.Within, "", ""},
		{"the same in 2020", "&code-edition=2020&box.volume=9.5in3&box.devices=0&box.clamps=no&wire.b.box-count=6", sheet.Stop, sheet.RuleBoxFill, ""},

		// 310.3(A): aluminum from 12 on.
		{"aluminum of 14", "&circuit.material=aluminum&wire.a.size=14&new.motor-power=1hp&new.motor-amps=4.3A&circuit.device-rating=15A", sheet.Stop, sheet.RuleLeastWire, ""},
		{"a guessed count of what lies beside it", "&wire.c.count=2;guessed&wire.c.size=14&wire.c.insulation=THWN-2&wire.c.role=other", sheet.Unjudged, sheet.RuleFill, "wire.c.count"},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := wired(t, c.with)
			list := racewayPlate(f)
			worst := sheet.Worst(list)
			if worst.Level != c.level || c.level != sheet.Within && worst.Rule != c.rule || c.level == sheet.Unjudged && wantedOf(f, worst) != c.wants {
				t.Errorf("%s, %s, wants %q", levelName(worst.Level), worst.Rule, wantedOf(f, worst))
				for _, v := range list {
					t.Logf("  %s %s %v of %v, wants %q, %+v", levelName(v.Level), v.Rule, v.Value.Base, v.Limit.Base, wantedOf(f, v), v.Fault)
				}
			}
		})
	}
}

// An ampacity that an edition leaves nothing of counts as too little in it.
func TestAnEditionThatLeavesNothingIsAStop(t *testing.T) {
	f := wired(t, "&code-edition=&wire.a.size=14&wire.a.insulation=THWN&wire.b.size=14&raceway.height=13/16in;within 0in&new.motor-power=1hp&new.motor-amps=4A&circuit.device-rating=15A")
	if v := sheet.CircuitOf(f).WireVerdict; v.Level != sheet.Unjudged || wantedOf(f, v) != "code-edition" {
		t.Errorf("%+v", v)
	}
}
