package sheet_test

import (
	"strings"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// usual are values that the places which a verdict may consult usually have on such
// jobs, the unfavorable ones among them: editions in force, plates that are sold,
// supplies, air on roofs. Common practice. A plate's speed and frequency are not among
// them: a reading or each other contradicts what is only put in.
var usual = map[string][]string{
	"supply":                {"three-phase", "single-phase", "two-speed"}, // what a drive puts out is asked for
	"same-wheel":            {"yes", "no"},
	"altitude":              {"0 ft", "5000 ft", "7500 ft"},
	"coldest-air":           {"-40 F", "0 F", "40 F", "70 F"},
	"hottest-air":           {"77 F", "104 F", "122 F"},
	"code-edition":          {"2017", "2020", "2023"},
	"new.motor-power":       {"1/2 hp", "3/4 hp", "1 hp", "1-1/2 hp", "2 hp", "3 hp", "5 hp", "7-1/2 hp", "10 hp"},
	"new.motor-volts":       {"115 V", "200 V", "208 V", "230 V", "460 V", "575 V"},
	"new.service-factor":    {"1", "1.15", "1.25"},
	"new.phases":            {"3", "1"},
	"new.wheel-max-speed":   {"600 rpm", "800 rpm", "1000 rpm", "1400 rpm"},
	"new.section":           {"A", "AX", "B", "BX", "4L", "5L", "3V"},
	"new.groove":            {"standard", "combination"},
	"new.most-turns":        {"4 turns", "5 turns", "6 turns"},
	"new.belts":             {"1", "2"},
	"new.travel-toward":     {"0 in", "1/2 in", "2 in"},
	"new.travel-away":       {"0 in", "1/2 in", "2 in"},
	"new.rotation":          {"marked", "reverse"},
	"new.rise-40":           {"yes", "no"},
	"trial.t1.tipped-up":    {"yes", "no"},
	"trial.t1.frequency":    {"30 Hz", "45 Hz", "60 Hz"},
	"trial.t1.belt-age":     {"new", "used"},
	"circuit.terminals":     {"60", "75"},
	"circuit.material":      {"copper", "aluminum"},
	"circuit.device":        {"inverse-time-breaker", "time-delay-fuse"},
	"circuit.device-rating": {"15 A", "20 A", "30 A", "60 A"},
	"raceway.place":         {"indoors", "outdoors"},
	"raceway.exposure":      {"shaded", "rooftop"},
	"raceway.use":           {"run", "nipple"},
	"raceway.height":        {"1/4 in", "13/16 in", "4 in"},
	"raceway.length":        {"2 ft", "4 ft", "10 ft"},
	"wire.w1.role":          {"circuit", "ground", "other"},
	"wire.w1.where":         {"both", "raceway", "box"},
	"wire.w2.role":          {"circuit", "ground", "other"},
}

// Missing is never better than known: a verdict that is within while a place is empty is
// no stop with any value that the place usually has.
func TestMissingIsNeverBetterThanKnown(t *testing.T) {
	found := map[string]int{}
	for i, c := range corpus(t) {
		if !sampled(i, 12) {
			continue
		}
		f := c.open(t)
		for key, values := range usual {
			p := f.Place(key)
			if p == nil {
				continue
			}
			if key == "trial.t1.frequency" && f.Supply.Value() != record.Inverter { // a supply's is what it is
				continue
			}
			text := p.Text()
			p.Set("")
			empty, bare := standing(f), order(f)
			for _, value := range values {
				if err := p.Set(value); err != nil {
					t.Fatal(key, value, err)
				}
				known, move := standing(f), order(f)
				for name, v := range known {
					without, has := empty[name]
					if (strings.Contains(name, " set.") || strings.HasPrefix(name, "airflow new.")) && (move.Do != bare.Do || move.To != bare.To) { // another setting
						continue
					}
					if has && without.Level == sheet.Within && v.Level == sheet.Stop {
						found[name+" <- "+key+"="+value+" "+string(v.Rule)]++
						t.Errorf("%s: %s is within without %s, and a stop (%s) with %s", c.id, name, key, v.Rule, value)
					}
				}
			}
			p.Set(text)
		}
	}
	t.Log(found)
}
