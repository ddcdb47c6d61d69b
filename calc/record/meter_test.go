package record_test

import (
	"testing"

	"roofside/calc/record"
)

// A reading is as wide as its meter's maker states, of a trial that was there before
// and of one that comes later; a band of its own, or a guess, goes before.
func TestMetersSayHowWideAReadingIs(t *testing.T) {
	f := record.NewFan()
	for key, text := range map[string]string{"trial.t1.amps-1": "10 A", "trial.t1.volts-12": "200 V", "trial.t1.amps-2": "10 A; guessed", "trial.t1.amps-3": "10 A; within 3 %"} {
		f.Apply(map[string]string{key: text})
	}
	width := func(key string, want float64, ofMeter bool) {
		t.Helper()
		p := f.Place(key).(interface {
			record.Measure
			Width() (record.Band, bool)
		})
		if _, meter := p.Width(); !near(p.Band(), want) || meter != ofMeter {
			t.Errorf("%s ± %v, the meter's: %v; want ± %v, %v", key, p.Band(), meter, want, ofMeter)
		}
	}
	width("trial.t1.amps-1", 0.05+0.02*10, true) // common practice
	width("trial.t1.volts-12", 0.3+0.01*200, true)
	width("trial.t1.amps-2", 1, false)
	width("trial.t1.amps-3", 0.3, false)
	f.Apply(map[string]string{"meter.clamp-accuracy": "1.5 %", "meter.voltmeter-digits": "0.5 V"})
	width("trial.t1.amps-1", 0.05+0.015*10, true)
	width("trial.t1.volts-12", 0.5+0.01*200, true)
	width("trial.t1.amps-2", 1, false)
	width("trial.t1.amps-3", 0.3, false)
	later := f.NewTrial()
	set(t, &later.Reading.Amps[0], "20 A")
	if got := later.Reading.Amps[0].Band(); !near(got, 0.05+0.015*20) {
		t.Errorf("of a later trial: ± %v", got)
	}
	if later.Reading.Amps[0].Unread() != nil {
		t.Error("nothing is garbled")
	}
	f.Apply(map[string]string{"meter.clamp-digits": "!x"})
	if p := later.Reading.Amps[0].Unread(); p != f.Place("meter.clamp-digits") {
		t.Errorf("blocked by %v", p)
	}
	if f.Trial("t1").Reading.Amps[1].Unread() != nil || f.Trial("t1").Reading.Volts[0].Unread() != nil {
		t.Error("a guess, and the voltmeter, need no clamp")
	}
}

// What a meter reads is bounded as ever.
func TestMeterBounds(t *testing.T) {
	f := everything()
	for key, texts := range map[string][]string{
		"meter.clamp-accuracy": {"-1 %", "51 %", "2"}, "meter.voltmeter-digits": {"-0.1 V", "101 V", "1 A"}, "trial.t1.clamp-turns": {"0 turns", "-1 turns", "101 turns"},
		"new.overload-dial": {"0 A"}, "new.power-factor": {"0", "1.01"}, "new.efficiency": {"0 %", "101 %"}, "new.leads": {"1-1-2"}, "new.rotation": {"left"},
	} {
		for _, text := range texts {
			if f.Place(key).Set(text) == nil || f.Place(key).State() != record.Garbled {
				t.Errorf("%s takes %q", key, text)
			}
		}
	}
}
