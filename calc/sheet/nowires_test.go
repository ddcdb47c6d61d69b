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
