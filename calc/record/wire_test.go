package record_test

import (
	"errors"
	"fmt"
	"testing"

	"roofside/calc/number"
	"roofside/calc/record"
)

func TestRowsOfConductors(t *testing.T) {
	f := record.NewFan()
	problems := f.Apply(map[string]string{
		"wire.w2.count": "3", "wire.w2.size": "12", "wire.w10.count": "1", "wire.g.insulation": "RHW-2*", "wire.junk.color": "red", "wire.W1.count": "2",
	})
	if len(problems) != 2 || len(f.Wires) != 3 || f.Wires[0].ID != "g" || f.Wires[1].ID != "w2" || f.Wires[2].ID != "w10" {
		t.Fatalf("%d rows, problems %v", len(f.Wires), problems)
	}
	if w := f.NewWire(); w == nil || w.ID != "w11" || w.Count.Fact() == nil {
		t.Errorf("started %+v", w)
	}
	before := f.Wires
	f.RemoveWire("w2")
	f.RemoveWire("w2")
	if f.Wire("w2") != nil || len(f.Wires) != 3 || before[1].ID != "w2" {
		t.Errorf("%d rows left, and the list held before begins with %v", len(f.Wires), before[1])
	}
}

func TestRowsOfConductorsAreLimited(t *testing.T) {
	f := record.NewFan()
	texts := map[string]string{}
	for i := range record.MostWires + 2 {
		texts[fmt.Sprintf("wire.k%02d.count", i)] = "1"
	}
	problems := f.Apply(texts)
	if len(f.Wires) != record.MostWires || len(problems) != 2 || problems[0].Key != "wire.k50.count" || !errors.Is(problems[0].Err, record.ErrFull) {
		t.Errorf("%d rows, problems %v", len(f.Wires), problems)
	}
	if f.NewWire() != nil {
		t.Error("a row too many")
	}
	if p := f.Apply(map[string]string{"wire.k00.color": "red"}); len(p) != 1 || !errors.Is(p[0].Err, record.ErrLater) {
		t.Errorf("a key that is none, in a full list: %v", p)
	}
}

func TestCountsAreWhole(t *testing.T) {
	for text, rule := range map[string]number.Rule{
		"3": "", "4/2": "", "10000": "", "0": record.RuleNotPositive, "-1": record.RuleNotPositive, "2.5": record.RuleNotWhole, "10001": record.RuleAboveBound, "3 %": number.RuleWrongKind,
	} {
		w := record.NewFan().NewWire()
		err := w.Count.Set(text)
		var broken *number.Error
		if rule == "" != (err == nil) || rule != "" && (!errors.As(err, &broken) || broken.Rule != rule) {
			t.Errorf("%q: %v, want %q", text, err, rule)
		}
	}
	if err := record.NewFan().Box.Devices.Set("0"); err != nil {
		t.Errorf("no devices: %v", err)
	}
}
