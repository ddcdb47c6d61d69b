package sheet_test

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// wiredWell are usual good installations; each must be within as it stands.
var wiredWell = map[string]string{
	"liquidtight on the roof":     "",
	"1/2 in off the roof":         "&raceway.height=1/2in;within 0in",
	"13/16 in off the roof":       "&raceway.height=13/16in;within 0in",
	"short 3/8":                   "&raceway.size=3/8",
	"EMT without a ground wire":   noGround + "&raceway.conduit=EMT",
	"FMC indoors":                 "&raceway.conduit=FMC&raceway.place=indoors&raceway.exposure=&raceway.height=",
	"THHN indoors":                "&wire.a.insulation=THHN&wire.b.insulation=THHN&raceway.place=indoors&raceway.exposure=&raceway.height=",
	"a nipple":                    "&raceway.use=nipple&raceway.length=20in&wire.c.count=8&wire.c.size=12&wire.c.insulation=THWN-2&wire.c.role=other&new.minimum-circuit-ampacity=8A",
	"3 hp with nothing to spare":  "&new.motor-power=3hp&new.motor-amps=9A&wire.a.size=14&circuit.device-rating=25A&wire.b.size=14",
	"7-1/2 hp, 230 V on 240":      "&new.motor-power=7-1/2hp&new.motor-volts=230V&new.motor-amps=20A&new.volts-12=241V&wire.a.size=10&wire.b.size=10&circuit.device-rating=60A&circuit.length=40ft",
	"5 hp, 460 V":                 "&new.motor-power=5hp&new.motor-volts=460V&new.motor-amps=6.5A&new.volts-12=480V",
	"1/2 hp, 460 V in 2020":       "&new.motor-power=1/2hp&new.motor-volts=460V&new.motor-amps=1A&new.volts-12=480V&wire.a.size=14&wire.b.size=14&circuit.device-rating=15A&code-edition=2020",
	"1/2 hp, 460 V in 2023":       "&new.motor-power=1/2hp&new.motor-volts=460V&new.motor-amps=1A&new.volts-12=480V&wire.a.size=14&wire.b.size=14&circuit.device-rating=10A",
	"1 hp, 115 V":                 "&supply=single-phase&new.phases=1&new.motor-power=1hp&new.motor-volts=115V&new.motor-amps=14A&new.volts-12=118V&wire.a.count=2&circuit.length=20ft",
	"5 hp of one phase, 8 AWG":    "&new.phases=1&new.motor-power=5hp&new.motor-volts=230V&new.motor-amps=27A&new.volts-12=232V&wire.a.count=2&circuit.terminals=75&circuit.device-rating=70A&wire.a.size=8&wire.b.size=8&raceway.size=3/4&opening.size=3/4",
	"by the fan's plate":          "&new.minimum-circuit-ampacity=16A&new.maximum-overcurrent=20A",
	"a slow motor by its plate":   "&new.motor-speed=1150rpm&new.motor-amps=8.6A",
	"a drive by the fan's plate":  "&supply=drive&new.minimum-circuit-ampacity=12A&new.maximum-overcurrent=20A",
	"a box with its grounds":      "&box.volume=14in3&box.devices=0&box.clamps=no&wire.b.box-count=6",
	"10 AWG with a ground of 10":  "&wire.a.size=10&wire.b.size=10",
	"rings at 208 V":              "&opening.kind=ring-knockout",
	"unfavorable terminals taken": "&circuit.terminals=",
}

// usualWiring are the values that a place may usually have, the unfavorable among them.
var usualWiring = map[string][]string{
	"supply": {"three-phase", "single-phase"}, "new.phases": {"1", "3"}, "new.motor-power": {"1hp", "2hp", "5hp", "10hp"}, "new.motor-volts": {"115V", "200V", "208V", "230V", "460V"},
	"new.motor-amps": {"3A", "6A", "9A", "14A", "28A"}, "new.motor-speed": {"860rpm", "1150rpm", "1750rpm"}, "new.volts-12": {"118V", "208V", "240V", "480V"},
	"raceway.conduit": {"EMT", "LFMC", "FMC", "LFNC-A", "LFNC-B", "PVC-40"}, "raceway.size": {"3/8", "1/2", "3/4"}, "raceway.place": {"outdoors"}, "raceway.use": {"run"}, "raceway.fittings": {"inside", "outside"},
	"raceway.exposure": {"shaded", "rooftop"}, "raceway.height": {"0in", "1/2in", "13/16in", "2in"}, "raceway.length": {"3ft", "10ft", "20ft"}, "hottest-air": {"30C", "40C", "50C", "60C"},
	"circuit.material": {"copper", "aluminum"}, "circuit.terminals": {"60", "75"}, "circuit.device": {"inverse-time-breaker", "time-delay-fuse", "nontime-fuse"},
	"code-edition": {"2017", "2020", "2023"}, "new.minimum-circuit-ampacity": {"9A", "16A"}, "new.maximum-overcurrent": {"15A", "20A"},
	"wire.a.count": {"2", "3", "9"}, "wire.a.size": {"18", "14", "12"}, "wire.a.insulation": {"TW", "THHN", "THWN", "THWN-2", "unmarked"}, "wire.a.role": {"circuit"}, "wire.a.where": {"raceway"},
	"wire.b.count": {"1"}, "wire.b.size": {"14", "12"}, "wire.b.insulation": {"THHN", "bare", "THWN-2"}, "wire.b.role": {"ground"},
	"opening.kind": {"hub", "ring-knockout"}, "opening.size": {"1/2", "3/4"}, "box.volume": {"8in3", "14in3"}, "box.devices": {"0", "1"}, "box.clamps": {"yes", "no"},
}

// unasked are the places whose absence is no question that was asked: a raceway's
// verdict says nothing of them until they are.
var unasked = map[string]string{
	"new.minimum-circuit-ampacity": "the motor tables rule where the fan has no such plate (430.22)",
	"new.maximum-overcurrent":      "the motor tables rule where the fan has no such plate (430.52)",
}

// Missing is never better than known: with a place empty the plate is not within where
// some usual value of it would make it stop.
func TestNothingUnsaidIsWithin(t *testing.T) {
	held := 0
	for _, name := range slices.Sorted(maps.Keys(wiredWell)) {
		f := wired(t, wiredWell[name])
		if v := sheet.Worst(racewayPlate(f)); v.Level != sheet.Within {
			t.Errorf("%s is %s by %s, wants %q, %+v", name, levelName(v.Level), v.Rule, wantedOf(f, v), v.Fault)
			continue
		}
		for key, values := range usualWiring {
			if unasked[key] != "" || f.Place(key) == nil || f.Place(key).State() == record.Unknown {
				continue
			}
			without := wired(t, wiredWell[name])
			without.Apply(map[string]string{key: ""})
			if v := sheet.Worst(racewayPlate(without)); v.Level != sheet.Within {
				continue
			}
			held++
			for _, value := range values {
				if key == "new.volts-12" && value != "480V" && f.New.MotorVolts.Text() == "460 V" {
					continue // leads on the wrong volts are another verdict's
				}
				with := wired(t, wiredWell[name])
				with.Apply(map[string]string{key: value})
				if v := sheet.Worst(racewayPlate(with)); v.Level == sheet.Stop {
					t.Errorf("%s, %s empty is within, and %s stops it by %s: %v of %v", name, key, value, v.Rule, v.Value.Base, v.Limit.Base)
				}
			}
		}
	}
	if held < 50 {
		t.Errorf("only %d places may be left empty", held)
	}
}

// Less known is never surer: a wider band never makes the plate's verdict within, nor a
// stop of what was none.
func TestAWiderBandIsNeverSurer(t *testing.T) {
	for _, name := range slices.Sorted(maps.Keys(wiredWell)) {
		for _, key := range []string{"raceway.height", "hottest-air", "raceway.length", "new.volts-12", "new.motor-amps", "new.motor-volts", "new.motor-power", "circuit.device-rating", "circuit.length"} {
			for _, with := range []string{"", "&raceway.height=1/2in&hottest-air=45C", "&raceway.length=10ft&circuit.device-rating=30A"} {
				before := wired(t, wiredWell[name]+with)
				text := before.Place(key).Text()
				if text == "" || before.Place(key).State() != record.Known {
					continue
				}
				value, _, _ := strings.Cut(text, ";")
				level := sheet.Level(-1)
				for _, band := range []string{"within 0 %", "within 5 %", "within 20 %", "within 60 %", "within 100 %"} {
					f := wired(t, wiredWell[name]+with+"&"+key+"="+value+"; "+band)
					if f.Place(key).State() != record.Known {
						t.Fatalf("%s=%s; %s", key, value, band)
					}
					now := sheet.Worst(racewayPlate(f)).Level
					if level > sheet.Within && now == sheet.Within || level >= sheet.Within && level < sheet.Watch && now > sheet.Unjudged {
						t.Errorf("%s%s: %s %s makes %s of %s", name, with, key, band, levelName(now), levelName(level))
					}
					level = now
				}
			}
		}
	}
}
