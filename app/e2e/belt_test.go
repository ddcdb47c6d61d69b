//go:build e2e

package e2e

import (
	"math"
	"strings"
	"testing"
)

// A hand's figures for the example's belt at 3 turns open, apart from the program:
// 3.4 in under 8.4 in, the belt that lies tight on 4 in at 15 3/4 in, 1750 rpm, the
// report's 1.15 hp at 712 rpm carried by the cube of speed, pressed in by 1/4 in.
// By statics 16.5 lbf · 1000 ft/min / hp, ratio 5^(θ/180°), and 0.105 kg/m for A.
func beltForce() (least, most float64) { // of a new belt, in newtons
	const in, lbf = 0.0254, 4.4482216152605
	length := func(d, c float64) float64 {
		a := math.Asin((8.4 - d) / (2 * c))
		return 2*c*math.Cos(a) + math.Pi/2*(8.4+d) + a*(8.4-d)
	}
	c := 15.75
	for range 60 {
		c += (length(4, 15.75) - length(3.4, c)) / 2
	}
	span := math.Sqrt(c*c - 2.5*2.5)
	ratio := math.Pow(5, 1-2*math.Asin(2.5/c)/math.Pi)
	v := math.Pi * 3.4 * 1750 / 12 // ft/min
	power := 1.15 * math.Pow(underLoad(3.4)/712, 3)
	tension := 16.5*(ratio+1)/(ratio-1)*power/(v/1000)*lbf + 0.105*math.Pow(v*0.3048/60, 2)
	least = 4 * 1.5 * tension * 0.25 / span // the belt run in bears up to 1.5 of it
	return least, 1.33 * least
}

// The belt of the example, typed on the roof without signal, from which belt to what
// a reading means.
func TestTheBelt(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	home := p.Open("/")
	home.AwaitInstalled()
	home.Close()
	p.Offline()

	// Drive has the job but for the belt.
	tab := p.Open("/drive/#same-wheel=yes&supply=three-phase&target.speed=712rpm&target.power=1.15hp&new.section=A&new.sheave=adjustable")
	tab.open("plate")
	tab.fill(newPlate)
	tab.open("plate")
	tab.open("new")
	tab.fill(newDrive)
	tab.AwaitText(`output[name="move"]`, "From closed, open 3 turns, to 3 open.")
	tab.Go("/belt/")
	tab.AwaitText(`output[name="tension"]`, "To find the force, enter:")
	tab.AwaitNoValue("set.force-least")
	tab.open("new")
	if got := tab.FieldText("new.fan-sheave"); got != "8.4" { // known from Drive
		t.Errorf("the fan sheave is %q here", got)
	}
	tab.open("new")
	tab.Click(`button[name="to tension new.center-distance"]`)
	tab.Await(`document.activeElement.name === "new.center-distance"`)
	tab.fill(newBase)
	tab.open("base")
	tab.open("belt")
	tab.take("new.belts", "1")
	least, most := beltForce()
	tab.AwaitText(`output[name="tension"]`, "Deflect 1/4 in at mid span with 2.0\u2060–\u20602.7\u00a0lbf.")
	tab.AwaitText(".dataplate", "new belt · shaft power · 3 open")
	tab.AwaitValue("set.deflection", 0.25*0.0254, 1e-12, "m")
	tab.AwaitValue("set.force-least", least, 1e-4*least, "N")
	tab.AwaitValue("set.force-most", most, 1e-4*most, "N")
	tab.AwaitValue("measured.new-least", least, 1e-4*least, "N")
	tab.AwaitValue("measured.run-in-most", least, 1e-4*least, "N")
	tab.AwaitText(".below", "First the sheave: From closed, open 3 turns, to 3 open.")

	// Which belt: A50 as entered, and a number that is none.
	tab.open("which")
	tab.Type("new.belt-number", "A5O")
	tab.AwaitText("#new-belt-number-note", "No belt has this number.")
	tab.AwaitNoValue("fitted.center")
	tab.Type("new.belt-number", "A10")
	tab.AwaitText("#new-belt-number-note", "too short to go around")
	tab.Type("new.belt-number", "A50")
	tab.Await(`!document.querySelector("#new-belt-number-note")`)
	tab.AwaitValue("fitted.center", 16.182*0.0254, 0.005*0.0254, "m") // the belt that lay tight at 15-3/4 in closed
	tab.AwaitText(`[data-of="fitted.center"]`, "stretch can't be taken up")
	tab.AwaitText(`[data-of="shorter.center"]`, "The base falls")
	tab.AwaitText(`[data-of="nearest.center"]`, "stretch can't be taken up")
	tab.open("which")
	tab.AwaitText("#which", "A50 · Watch: Take-up")
	tab.open("belt")

	// The reading goes where the plate has ordered.
	tab.Click(`button[name="add tension"]`)
	tab.Await(`document.activeElement.name === "trial.t1.belt-force"`)
	for key, want := range map[string]string{"trial.t1.turns": "3", "trial.t1.belt-deflection": "1/4"} {
		if got := tab.FieldText(key); got != want {
			t.Errorf("%s is prefilled with %q, the plate has ordered %s", key, got, want)
		}
	}
	for _, c := range [][2]string{
		{"1", "Loose: move the motor base away from the fan, read again."},
		{"2.4", "Within. Guard on, then run it"},
		{"3", "Within. Guard on, then run it"}, // no more than the motor's plate power asks for
		{"7", "Tight: move the motor base toward the fan, read again."},
	} {
		tab.Type("trial.t1.belt-force", c[0])
		tab.AwaitText(`output[name="tension"]`, c[1])
	}
	tab.Type("trial.t1.belt-force", "1")
	tab.AwaitText(".dataplate", "Watch")
	tab.AwaitText(".below", "lbf: it slips.")
	tab.Shoot("belt-loose")
	tab.Type("trial.t1.belt-frequency", "70") // 4 · 0.105 kg/m · (0.406 m · 70 Hz)², some 340 N: tight
	tab.AwaitText(`output[name="tension"]`, "Force and frequency disagree")

	// Frequency alone, with the mass off the maker's card, can say within.
	tab.Type("trial.t1.belt-force", "")
	tab.open("belt")
	tab.Type("new.belt-mass", "0.105 kg/m")
	tab.open("belt")
	tab.Type("trial.t1.belt-frequency", "48") // 160 N; 143 to 190 for a new belt
	tab.AwaitText(`output[name="tension"]`, "Within. Guard on, then run it 15 to 30 minutes and tension again.")
	tab.open("align")
	tab.Type("trial.t1.alignment-gap", "1/4")
	tab.AwaitText(`[data-of="align.gap"]`, "more than ½° out of line")
	tab.AwaitText(`output[name="tension"]`, "Don't run it: align the sheaves")
	tab.AwaitText(`.dataplate [data-of="tension"]`, "Stop")
	tab.Type("trial.t1.alignment-gap", "0")
	tab.AwaitText(`[data-of="align.gap"]`, "the most for V-belts")

	// Nothing is lost, and Drive knows that the sheave has been set.
	tab.Reload()
	tab.AwaitText(`output[name="tension"]`, "Within.")
	tab.Go("/drive/")
	tab.AwaitText(`output[name="move"]`, "Leave it 3 open.")
}

// What can't be is said beside its field, kept, and answers nothing.
func TestBadBeltInput(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/belt/" + demo + "&trial.t1.turns=3turns&trial.t1.belt-age=new&trial.t1.belt-force=2.4lbf&trial.t1.belt-deflection=1/4in")
	tab.AwaitText(`output[name="tension"]`, "Within.")
	tab.open("readings")
	tab.open("reading t1")
	for _, c := range []struct{ key, typed, says string }{
		{"trial.t1.belt-force", "0", "more than zero"}, {"trial.t1.belt-force", "-2", "more than zero"}, {"trial.t1.belt-force", "two", "is not a number"},
		{"trial.t1.belt-deflection", "0", "more than zero"}, {"trial.t1.belt-deflection", "16", "Pressed in too far"}, {"trial.t1.belt-deflection", "1/32", "error is as large as the reading"},
		{"trial.t1.belt-frequency", "0", "more than zero"}, {"trial.t1.belt-frequency", "-1", "more than zero"}, {"trial.t1.belt-frequency", "50 lbf", "is a unit of something else"},
	} {
		before := tab.FieldText(c.key)
		tab.Type(c.key, c.typed)
		tab.AwaitText("#"+strings.ReplaceAll(c.key, ".", "-")+"-note", c.says)
		tab.Await(`document.querySelector('[name="tension"]').innerText.startsWith("Reading 1")`)
		tab.Type(c.key, before)
	}
	tab.open("align")
	tab.open("which")
	tab.Type("trial.t1.alignment-gap", "-0.1")
	tab.AwaitText("#trial-t1-alignment-gap-note", "below zero")
	tab.AwaitNoValue("align.gap")
	tab.open("base")
	for typed, says := range map[string]string{"0": "more than zero", "-3": "more than zero", "5": "sheaves would overlap", "x": "is not a number"} {
		tab.Type("new.center-distance", typed)
		tab.AwaitText("#new-center-distance-note", says)
		for _, name := range []string{"set.span", "set.deflection", "set.force-least", "measured.new-most", "plate.new-least", "align.aim", "set.belt-length"} {
			tab.AwaitNoValue(name)
		}
	}
	tab.Type("new.center-distance", "") // then the belt's number tells
	tab.AwaitValue("set.center", 16.19*0.0254, 0.005*0.0254, "m")
	tab.open("belt")
	tab.Type("new.belt-number", "")
	tab.AwaitNoValue("set.span")
	tab.AwaitText(`output[name="tension"]`, "To judge the reading, enter:")
}
