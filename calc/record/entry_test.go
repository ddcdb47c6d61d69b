package record_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"roofside/calc/number"
	"roofside/calc/record"
	"roofside/calc/unit"
)

func near(x, want float64) bool { return math.Abs(x-want) <= 1e-12*math.Abs(want) }

func TestEntryKeepsWhatWasTyped(t *testing.T) {
	f := everything()
	const in, inwg = 0.0254, 249.08891
	for _, c := range []struct {
		key, text, canonical string
		base, band           float64
		basis                record.Basis
	}{
		{"old.motor-sheave-outside", "3-1/2 in; measured; within 1/16 in", "3-1/2 in; measured; within 1/16 in", 3.5 * in, in / 16, record.Measured},
		{"old.motor-sheave-outside", " 3-1/2in ;within 1/16in; guessed ", "3-1/2 in; guessed; within 1/16 in", 3.5 * in, in / 16, record.Guessed},
		{"old.motor-sheave", "90mm", "90 mm", 0.09, 0, record.Stamped},
		{"old.motor-sheave", "90 mm; measured", "90 mm; measured", 0.09, in / 16, record.Measured},
		{"old.motor-sheave", "90 mm; guessed", "90 mm; guessed", 0.09, 0.009, record.Guessed},
		{"old.motor-sheave", "90 mm; guessed; within 2 %", "90 mm; guessed; within 2 %", 0.09, 0.0018, record.Guessed},
		{"old.motor-sheave", "90 mm; measured; within 0 in", "90 mm; measured; within 0 in", 0.09, 0, record.Measured},
		{"old.center-distance", "1 ft 3-3/4 in", "1 ft 3-3/4 in", 15.75 * in, in / 16, record.Measured},
		{"old.amps-1", "6.5 A", "6.5 A", 6.5, 0.05 + 0.02*6.5, record.Measured},
		{"old.volts-12", "208 V", "208 V", 208, 2.08 + 0.3, record.Measured},
		{"old.speed", "690 rpm", "690 rpm", 690, 3.45, record.Measured},
		{"old.pressure", "1.1 in wg", "1.1 inwg", 1.1 * inwg, 0.05 * 1.1 * inwg, record.Measured},
		{"coldest-air", "32 F; within 9 F", "32 F; within 9 F", 273.15, 5, record.Measured},
		{"coldest-air", "0 C; within 9 F", "0 C; within 9 F", 273.15, 5, record.Measured},
		{"target.over", "4 %; within 1 %", "4 %; within 1 %", 0.04, 0.01, record.Stamped},
		{"new.service-factor", "1.15", "1.15", 1.15, 0, record.Stamped},
		{"new.turns", "2-1/2", "2-1/2 turns", 2.5, 0, record.Counted},
	} {
		p, ok := f.Place(c.key).(record.Measure)
		if !ok {
			t.Fatalf("%s is no quantity", c.key)
		}
		set(t, p, c.text)
		if p.Text() != c.canonical || p.State() != record.Known || p.Basis() != c.basis {
			t.Errorf("%s %q is %q, %s", c.key, c.text, p.Text(), p.Basis())
		}
		if !near(p.Base(), c.base) || math.Abs(p.Band()-c.band) > 1e-12 {
			t.Errorf("%s %q is %v ± %v, want %v ± %v", c.key, c.text, p.Base(), p.Band(), c.base, c.band)
		}
	}
}

func TestEntryRefuses(t *testing.T) {
	f := everything()
	for _, c := range []struct {
		key, text string
		rule      number.Rule
	}{
		{"old.motor-sheave", "0 in", record.RuleNotPositive},
		{"old.motor-sheave", "-1 in", record.RuleNotPositive},
		{"old.motor-sheave", "10001 mm", record.RuleAboveBound},
		{"old.motor-sheave", "3.4", number.RuleNoUnit},
		{"old.motor-sheave", "3.4 rpm", number.RuleWrongKind},
		{"old.motor-sheave", "3.4 in; taped", record.RuleRemark},
		{"old.motor-sheave", "3.4 in; measured; stamped", record.RuleRemark},
		{"old.motor-sheave", "3.4 in; within 1 %; within 2 %", record.RuleRemark},
		{"old.motor-sheave", "3.4 in;", record.RuleRemark},
		{"old.motor-sheave", "3.4 in; within -1 in", record.RuleNegative},
		{"old.motor-sheave", "3.4 in; within 101 %", record.RuleAboveBound},
		{"old.motor-sheave", "3.4 in; within 1 rpm", number.RuleWrongKind},
		{"old.motor-sheave", "3.4 in; within", record.RuleRemark},
		{"old.motor-sheave", "; measured", number.RuleEmpty},
		{"new.turns", "-0.5 turns", record.RuleNegative},
		{"new.turns", "20.5 turns", record.RuleAboveBound},
		{"altitude", "-501 m", record.RuleBelowBound},
		{"coldest-air", "-459.68 F", record.RuleBelowBound},
		{"new.service-factor", "0.9", record.RuleBelowBound},
		{"old.speed", "1e308 rpm", number.RuleExponent},
		{"old.speed", "NaN rpm", number.RuleNoNumber},
		{"old.speed", "1,725 rpm", number.RuleNoNumber},
		{"old.speed", strings.Repeat("9", 200) + " rpm", number.RuleTooLong},
	} {
		p := f.Place(c.key)
		err := p.Set(c.text)
		var e *number.Error
		if !errors.As(err, &e) || e.Rule != c.rule && c.text != "1,725 rpm" {
			t.Errorf("%s %q: %v, want the rule %q", c.key, c.text, err, c.rule)
		}
		if p.State() != record.Garbled || p.(record.Measure).Base() != 0 {
			t.Errorf("%s %q leaves state %v, value %v", c.key, c.text, p.State(), p.(record.Measure).Base())
		}
		if kept := record.Typed(p); kept != strings.TrimSpace(c.text) && len(c.text) <= 120 {
			t.Errorf("%q is kept as %q", c.text, kept)
		}
	}
}

func TestAPlaceWithoutAValueHasNone(t *testing.T) {
	f := everything()
	for _, text := range []string{"", "?", "!3.4 in", "3.4"} {
		p := &f.Old.MotorSheave
		set(t, p, "3.4 in; guessed; within 1 in")
		err := p.Set(text)
		if (err != nil) != (text == "3.4") {
			t.Errorf("%q: %v", text, err)
		}
		if p.State() == record.Known || p.Value() != 0 || p.Band() != 0 || p.Amount() != "" || p.Basis() != record.Stamped {
			t.Errorf("%q leaves %v, %q, %q", text, p.Value(), p.Amount(), p.Basis())
		}
	}
}

func TestAmountAndBasisAreSetApart(t *testing.T) {
	p := &everything().Old.MotorSheave
	set(t, p, "3.4 in; measured; within 1/8 in")
	if err := p.SetAmount("90 mm"); err != nil || p.Text() != "90 mm; measured; within 1/8 in" {
		t.Errorf("%v %q", err, p.Text())
	}
	p.SetBasis(record.Guessed)
	if p.Text() != "90 mm; guessed" || !near(p.Band(), 0.009) {
		t.Errorf("%q ± %v", p.Text(), p.Band())
	}
	p.SetBasis(record.Stamped) // the usual one of this place
	if p.Text() != "90 mm" || p.Basis() != record.Stamped {
		t.Errorf("%q", p.Text())
	}
	for _, text := range []string{"", "?", "!9 cubits"} {
		set(t, p, "3.4 in; measured")
		if err := p.SetAmount(text); err != nil || p.Text() != text {
			t.Errorf("%q becomes %q, %v", text, p.Text(), err)
		}
		p.SetBasis(record.Guessed)
		if p.Text() != text {
			t.Errorf("nothing is known as %q", p.Text())
		}
	}
}

func TestStep(t *testing.T) {
	f := everything()
	turns, count := &f.New.Turns, &f.Old.CountMotor
	for _, c := range []struct {
		from string
		by   unit.Turns
		want string
	}{
		{"", 0.5, "0.5 turns"}, {"?", 0.5, "0.5 turns"}, {"!two", 0.5, "0.5 turns"},
		{"2.5 turns", -0.5, "2 turns"}, {"0.25 turns", -0.5, "0 turns"}, {"0 turns", -0.5, "0 turns"},
		{"2-1/2 turns; guessed", 0.5, "3 turns; guessed"}, {"20 turns", 0.5, ""},
	} {
		set(t, turns, c.from)
		if err := record.Step(turns, c.by); err != nil || turns.Text() != c.want {
			t.Errorf("%q %+v is %q, %v, want %q", c.from, c.by, turns.Text(), err, c.want)
		}
	}
	set(t, count, "1 turns")
	if err := record.Step(count, -1); err != nil || count.State() != record.Unknown {
		t.Errorf("a count of none is %q, %v", count.Text(), err)
	}
}

// A tenth of a temperature means nothing: its zero is no absence of warmth.
func TestGuesses(t *testing.T) {
	f := record.NewFan()
	set(t, &f.ColdestAir, "5 F; guessed")
	if b := f.ColdestAir.Band(); b != 10 {
		t.Errorf("a guessed temperature is good to %v K", b)
	}
	set(t, &f.Old.MotorPower, "2 hp; guessed")
	if b := f.Old.MotorPower.Band() / f.Old.MotorPower.Base(); b < 0.0999 || b > 0.1001 {
		t.Errorf("a guessed power is good to %v of it", b)
	}
}
