package sheet_test

import (
	"errors"
	"testing"

	"roofside/calc/limit"
	"roofside/calc/raceway"
	"roofside/calc/sheet"
)

// Of a raceway without a wire it is said that it has none, wherever that matters, and
// no place stands for it: there is nothing to correct, only rows to add.
func TestARacewayWithoutWires(t *testing.T) {
	f := fan(t, "raceway.conduit=EMT&raceway.size=1/2&circuit.material=copper&circuit.length=60ft&supply=three-phase&new.motor-power=2hp&new.motor-volts=208V")
	c := sheet.CircuitOf(f)
	fill := sheet.FillVerdict(f)
	for name, fault := range map[string]*sheet.Fault{"size": c.Least.Fault, "ground": c.Ground.Fault, "fill": fill.Fault} {
		var e *limit.Error
		if fault == nil || fault.Place != nil || !errors.As(fault.Err, &e) || e.Rule != raceway.NoConductor {
			t.Errorf("%s: %+v", name, fault)
		}
	}
	if fill.Level != sheet.Unjudged || len(fill.Wanted) > 0 {
		t.Errorf("%+v", fill)
	}
}

// Each row of wires stands in the working of the fill with its area: 3 of 12 THWN-2,
// 0.0133 in² each (NFPA 70, Chapter 9, Table 5).
func TestWiresStandInTheWorkingOfTheFill(t *testing.T) {
	f := fan(t, "code-edition=2023&raceway.conduit=EMT&raceway.size=1/2&wire.w1.count=3&wire.w1.size=12&wire.w1.insulation=THWN-2&wire.w1.role=circuit")
	a := sheet.FillShare(f)
	if !a.Known() {
		t.Fatal(a.Wanted, a.Fault)
	}
	if got := term(t, a.Steps, "3 × 12 THWN-2") / (0.0254 * 0.0254); got < 3*0.01325 || got > 3*0.01335 {
		t.Errorf("%v in²", got)
	}
}
