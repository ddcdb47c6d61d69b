package sheet_test

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"roofside/calc/sheet"
)

// plates are motors as they stand on kitchen roofs: power, volts, amps, the system's
// volts. The amps are those of a four-pole motor's plate, common practice.
var plates = []struct{ power, volts, amps, system float64 }{
	{0.5, 208, 2.2, 208}, {0.75, 230, 2.8, 240}, {1, 200, 4.0, 208}, {1.5, 230, 5.0, 240}, {2, 208, 6.6, 208},
	{2, 460, 3.1, 480}, {3, 460, 4.3, 480}, {5, 460, 6.7, 480}, {5, 230, 13.4, 240}, {7.5, 460, 9.8, 480}, {10, 575, 10, 600},
}

// A motor that is fine is within: volts within half a per cent of each other and of
// their system's, legs within 4 % of each other, from four tenths of the plate up to
// what leaves room for the clamp.
func TestHealthyMotorsAreWithin(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 430))
	off := func(share float64) float64 { return 1 + share*(2*random.Float64()-1) }
	for range 600 {
		m := plates[random.IntN(len(plates))]
		supply := []string{"three-phase", "three-phase&mount=direct", "direct&new.phases=3", "drive", "two-speed&new.rotation-low=marked"}[random.IntN(5)]
		link := fmt.Sprintf("supply=%s&new.motor-power=%ghp&new.motor-volts=%gV&new.motor-amps=%gA&new.service-factor=1.15&new.motor-speed=1745rpm&new.rotation=marked", supply, m.power, m.volts, m.amps)
		if random.IntN(2) == 0 {
			link += fmt.Sprintf("&new.no-load-amps=%.2fA", m.amps*0.35)
		}
		if random.IntN(2) == 0 {
			link += fmt.Sprintf("&new.overload-dial=%gA", m.amps)
		}
		load := 0.42 + 0.44*random.Float64()
		v, i := m.system*off(0.02), m.amps*load
		link += across(fmt.Sprintf("%.1f", v*off(0.003)), fmt.Sprintf("%.1f", v*off(0.003)), fmt.Sprintf("%.1f", v*off(0.003)))
		link += legs(fmt.Sprintf("%.2f", i*off(0.02)), fmt.Sprintf("%.2f", i*off(0.02)), fmt.Sprintf("%.2f", i*off(0.02)))
		if p := sheet.Prove(fan(t, link)); p.Worst.Level != sheet.Within || p.Next != sheet.StepVerdict {
			t.Errorf("%s: next %s, %+v", link, p.Next, p.Worst)
		}
	}
}

// A leg that carries next to nothing, or half of what the others do on even volts, is
// never within, on no supply with three legs, at no load, whatever else is missing.
func TestNoBadLegIsWithin(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 430))
	for range 600 {
		m := plates[random.IntN(len(plates))]
		supply := []string{"three-phase", "three-phase&mount=direct", "direct&new.phases=3", "direct", "drive", "two-speed&new.rotation-low=marked"}[random.IntN(6)]
		link := fmt.Sprintf("supply=%s&new.rotation=marked", supply)
		for _, part := range []string{
			fmt.Sprintf("&new.motor-power=%ghp", m.power), fmt.Sprintf("&new.motor-volts=%gV", m.volts), fmt.Sprintf("&new.motor-amps=%gA", m.amps),
			"&new.service-factor=1.15", "&new.motor-speed=1745rpm",
		} {
			if random.IntN(4) > 0 {
				link += part
			}
		}
		if random.IntN(4) > 0 {
			v := fmt.Sprintf("%g", m.system)
			link += across(v, v, v)
		}
		dead, i := random.IntN(2) == 0, m.amps*(0.3+0.6*random.Float64())
		share := 0.3 + 0.2*random.Float64()
		if dead {
			share = 0.05 * random.Float64()
		}
		var at [3]string
		for n := range at {
			at[n] = fmt.Sprintf("%.2f", i)
		}
		at[random.IntN(3)] = fmt.Sprintf("%.2f", i*share)
		link += legs(at[0], at[1], at[2])
		p := sheet.Prove(fan(t, link))
		switch {
		case p.Worst.Level == sheet.Within && p.Next == sheet.StepVerdict:
			t.Errorf("%s is within", link)
		case dead && m.amps > 3 && p.Worst.Level != sheet.Stop:
			t.Errorf("%s is no stop: %+v", link, p.Worst)
		}
	}
}
