//go:build e2e

package e2e

import (
	"math"
	"testing"
)

// The demonstration fan is wired again: a 3/4 hub, the old 1/2 liquidtight
// conduit with three wires and a ground of size 12, on a hot roof in the sun.
// Expected figures are by hand: areas of Tables 4 and 5, 7.5 A of Table 430.250
// for 2 hp at 208 V and 125 % of it, 20 A of Table 310.16 at 60 °C terminals,
// 2.25 in³ a wire in a box (314.16).
func TestRewiring(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	home := p.Open("/")
	home.AwaitInstalled()
	home.Close()
	p.Offline()

	tab := p.Open("/raceway/")
	tab.AwaitText(`output[name="take-along"]`, "What opening, and what conduit?")
	tab.Click(`button[name="to raceway opening.kind"]`) // the plate leads to the field
	tab.Await(`document.activeElement.id === "opening-kind"`)
	tab.take("opening.kind", "hub")
	tab.take("opening.size", "3/4")
	tab.take("raceway.conduit", "LFMC")
	tab.take("raceway.size", "1/2")
	tab.AwaitText(`output[name="take-along"]`, "Take along: 3/4 × 1/2 reducing bushing, 1/2 LFMC connector.")
	tab.take("raceway.conduit", "FMC") // 348.12, from memory: not in wet locations
	tab.AwaitText(`.dataplate [data-of="joint"]`, "stop, conduit outdoors")
	tab.take("raceway.conduit", "LFMC")
	tab.AwaitText(`.dataplate [data-of="joint"]`, "within")
	tab.open("opening")

	tab.Click(`button[name="to first wire"]`)
	tab.Await(`document.activeElement.name === "wire.w1.count"`)
	tab.Keys("3")
	tab.Choose("wire.w1.size", "12")
	tab.Choose("wire.w1.insulation", "THWN-2")
	tab.AwaitValue("raceway.fill", 3*0.0133/0.314, 1e-9, "1")
	tab.open("wire w1")
	tab.Click(`button[name="add wire"]`)
	tab.Await(`document.activeElement.name === "wire.w2.count"`)
	tab.Click(`button[name="wire.w2.count more"]`) // a gloved hand counts by taps
	tab.Choose("wire.w2.size", "12")
	tab.Choose("wire.w2.insulation", "THWN-2")
	tab.AwaitValue("raceway.fill", 4*0.0133/0.314, 1e-9, "1")
	tab.AwaitText(`.dataplate [data-of="fill"]`, "within")
	tab.open("wires")

	tab.open("wired-motor")
	tab.take("supply", "three-phase")
	tab.take("new.phases", "3") // of one phase it would be 13.2 A (Table 430.248)
	tab.fill([][2]string{{"new.motor-power", "2"}, {"new.motor-volts", "208"}})
	tab.AwaitValue("circuit.demand", 1.25*7.5, 1e-9, "A")
	tab.open("wired-motor")
	tab.open("circuit")
	tab.take("circuit.material", "copper")
	tab.Type("hottest-air", "104")
	tab.take("raceway.exposure", "rooftop")
	tab.Type("raceway.height", "2")
	tab.take("circuit.device", "inverse-time-breaker")
	tab.AwaitValue("circuit.ampacity", 20, 1e-9, "A")
	tab.AwaitText(`output[name="circuit.ground"]`, "12") // 20 A ask for 12
	tab.AwaitText(`.dataplate [data-of="wires"]`, "within")
	// In the sun and close to the roof 33 °C are added: 73 °C, 0.50 of 30 A.
	tab.Type("raceway.height", "1/2")
	tab.AwaitValue("circuit.ampacity", 15, 1e-9, "A")
	tab.Type("new.minimum-circuit-ampacity", "16")
	tab.AwaitText(`.dataplate [data-of="wires"]`, "stop")
	tab.Type("new.minimum-circuit-ampacity", "1.6") // a slip of the thumb: less than the motor's own
	tab.AwaitText(`.dataplate [data-of="wires"]`, "watch, minimum circuit ampacity")
	tab.Type("new.minimum-circuit-ampacity", "")
	tab.AwaitText(`.dataplate [data-of="wires"]`, "within")
	tab.open("circuit")

	tab.open("box")
	tab.Choose("box.size", "square 4 x 1-1/2")
	tab.Type("box.devices", "0")
	tab.take("box.clamps", "yes")
	tab.fill([][2]string{{"wire.w1.box-count", "6"}, {"wire.w2.box-count", "2"}})
	inch := math.Pow(0.0254, 3)
	tab.AwaitValue("box.needed", 8*2.25*inch, 1e-9, "m3")
	tab.AwaitValue("box.fill", 18/21.0, 1e-9, "1")
	tab.Shoot("rewired")

	// Drive knows the motor from here, and what Drive changes counts here.
	tab.Go("/drive/")
	tab.open("plate")
	if got := tab.FieldText("new.motor-power"); got != "2" {
		t.Errorf("Drive has %q hp", got)
	}
	tab.Type("new.motor-power", "3")
	tab.Go("/raceway/")
	tab.AwaitValue("circuit.demand", 1.25*10.6, 1e-9, "A") // 10.6 A for 3 hp at 208 V
	tab.Reload()
	tab.AwaitValue("raceway.fill", 4*0.0133/0.314, 1e-9, "1")
}

// Undoing a choice from a list shows the one before.
func TestAListGoesBack(t *testing.T) {
	t.Parallel()
	tab := NewPhone(t).Open("/raceway/#wire.w1.count=3&wire.w1.size=12&wire.w1.insulation=THHN")
	tab.open("wires")
	tab.open("wire w1")
	shown := func(want string) {
		t.Helper()
		if got := tab.FieldText("wire.w1.size"); got != want {
			t.Errorf("the list shows %q, want %q", got, want)
		}
	}
	shown("12")
	tab.Choose("wire.w1.size", "10")
	shown("10")
	tab.Click(`button[name="undo"]`)
	shown("12")
	tab.Choose("wire.w1.size", "-")
	shown("-")
	tab.AwaitNoValue("raceway.fill")
	tab.Click(`button[name="undo"]`)
	shown("12")
	if small := Eval[[]string](tab, `[...document.querySelectorAll("main select, main button, main input")].filter((e) => { const r = e.getBoundingClientRect(); return r.height > 0 && r.height < 44; }).map((e) => e.name + " " + e.getBoundingClientRect().height)`); len(small) > 0 {
		t.Errorf("too small for a thumb: %v", small)
	}
}

// What no row can be is said beside its field, kept, and answers nothing.
func TestBadConductors(t *testing.T) {
	t.Parallel()
	tab := NewPhone(t).Open("/raceway/#raceway.conduit=LFMC&raceway.size=1/2&wire.w1.count=3&wire.w1.size=12&wire.w1.insulation=THWN-2")
	tab.AwaitValue("raceway.fill", 3*0.0133/0.314, 1e-9, "1")
	tab.open("wires")
	tab.open("wire w1")
	for typed, says := range map[string]string{
		"0": "more than zero", "-3": "more than zero", "2.5": "whole number", "three": "is not a number", "10001": "Larger than any fan has", "3 in": "is a unit of something else", "1e3": "without an exponent",
	} {
		tab.Type("wire.w1.count", typed)
		tab.AwaitText("#wire-w1-count-note", says)
		tab.AwaitNoValue("raceway.fill")
		tab.AwaitNoValue("circuit.ampacity")
		if got := tab.FieldText("wire.w1.count"); got != typed {
			t.Errorf("%q became %q", typed, got)
		}
	}
	tab.Type("wire.w1.count", "4")
	tab.AwaitValue("raceway.fill", 4*0.0133/0.314, 1e-9, "1")
	tab.Choose("wire.w1.insulation", "unmarked")
	tab.AwaitNoValue("raceway.fill")
	for typed, says := range map[string]string{"0": "more than zero", "?": "is not a number", "9 kg": "is a unit of something else", "5 in": "Larger than any fan has"} {
		tab.Type("wire.w1.diameter", typed)
		tab.AwaitText("#wire-w1-diameter-note", says)
		tab.AwaitNoValue("raceway.fill")
	}
	tab.Type("wire.w1.diameter", "0.14")
	tab.AwaitValue("raceway.fill", 4*math.Pi/4*0.14*0.14/0.314, 1e-9, "1")
	tab.Choose("wire.w1.insulation", "XHHW")
	tab.Choose("wire.w1.size", "18") // the table has none
	tab.AwaitText("#wire-w1-size-note", "no such row")
	tab.AwaitNoValue("raceway.fill")
	tab.Reload()
	tab.AwaitNoValue("raceway.fill")
}
