package belt_test

import (
	"math/rand/v2"
	"testing"

	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// What any force within the reading's error would be told.
func tautness(f unit.Force, allowed belt.Band) belt.Tautness {
	switch {
	case f < allowed.Low:
		return belt.Loose
	case f > allowed.High:
		return belt.Tight
	}
	return belt.Taut
}

// JCGM 106:2012, simple acceptance: the reading itself is held against the band; it is
// near an edge where its error reaches across, and says nothing where its error is
// wider than the band and not all of it lies to one side.
func TestAVerdictGoesByTheReading(t *testing.T) {
	random := rand.New(rand.NewPCG(13, 17))
	seen := map[belt.Tautness]int{}
	for range 5000 {
		force := unit.Force(1+9*random.Float64()) * lbf
		span := unit.Length(8+40*random.Float64()) * in
		h := check.Value[unit.Length](t)(belt.DeflectionDistance(span))
		deflection := h * unit.Length(0.7+0.6*random.Float64())
		forceOff, deflectionOff := force*unit.Force(0.2*random.Float64()), deflection*unit.Length(0.3*random.Float64())
		r, err := belt.ReadForce(force, forceOff, deflection, deflectionOff, span)
		if err != nil {
			t.Fatal(err)
		}
		allowed := belt.Band{Low: unit.Force(1+5*random.Float64()) * lbf}
		allowed.High = allowed.Low * 1.5
		v, err := belt.Judge(r, allowed)
		if err != nil {
			t.Fatal(err)
		}
		seen[v.Tautness]++
		want := map[belt.Tautness]belt.Move{belt.Loose: belt.MoveAway, belt.Tight: belt.MoveToward, belt.Taut: belt.MoveNone, belt.Unjudged: belt.MoveNone}
		if v.Move != want[v.Tautness] {
			t.Errorf("%s moves %s", v.Tautness, v.Move)
		}
		for range 30 {
			f := force + forceOff*unit.Force(2*random.Float64()-1)
			d := deflection + deflectionOff*unit.Length(2*random.Float64()-1)
			if at := f * unit.Force(h/d); at < r.Low*(1-1e-12) || at > r.High*(1+1e-12) {
				t.Errorf("%v lies outside %+v", at, r)
			}
		}
		low, middle, high := tautness(r.Low, allowed), tautness(r.Value, allowed), tautness(r.High, allowed)
		across, wide := low != middle || high != middle, max(r.Value-r.Low, r.High-r.Value) > allowed.High-allowed.Low
		switch {
		case across && wide:
			if v.Tautness != belt.Unjudged || v.Near {
				t.Errorf("%+v in %+v: %+v, though its error is wider than the band", r, allowed, v)
			}
		case v.Tautness != middle || v.Near != across:
			t.Errorf("%+v in %+v: %+v, want %s, near %v", r, allowed, v, middle, across)
		}
	}
	for _, k := range []belt.Tautness{belt.Loose, belt.Taut, belt.Tight, belt.Unjudged} {
		if seen[k] < 100 {
			t.Errorf("%s came up %d times", k, seen[k])
		}
	}
}

// A force set by the tension's own figures is within; the frequency says the same.
func TestSetBeltIsWithin(t *testing.T) {
	pulls(func(power unit.Power, v unit.Velocity, arc unit.Angle, belts int) {
		const m, span = 0.105 * unit.KilogramPerMeter, 14 * in
		tension := check.Value[unit.Force](t)(belt.StaticTension(power, v, arc, belts, 0, belt.TensionByStatics))
		f := check.Value[belt.Forces](t)(belt.ForceBands(tension, 0))
		for _, test := range []struct {
			share unit.Force
			band  belt.Band
			want  belt.Tautness
		}{
			{0.95, f.RunIn, belt.Loose}, {1.25, f.RunIn, belt.Taut}, {1.55, f.RunIn, belt.Tight},
			{1.45, f.New, belt.Loose}, {1.75, f.New, belt.Taut}, {2.05, f.New, belt.Tight},
		} {
			at := tension * test.share
			h := check.Value[unit.Length](t)(belt.DeflectionDistance(span))
			byForce := check.Value[belt.Reading](t)(belt.ReadForce(at/16, 0, h, 0, span))
			hz := check.Value[unit.Frequency](t)(belt.FrequencyFromTension(m, span, at))
			byFrequency := check.Value[belt.Reading](t)(belt.ReadFrequency(m, 0, span, hz, 0, 0))
			for _, r := range []belt.Reading{byForce, byFrequency} {
				if got := check.Value[belt.Verdict](t)(belt.Judge(r, test.band)); got.Tautness != test.want {
					t.Errorf("%v of the tension: %s, want %s", test.share, got.Tautness, test.want)
				}
			}
		}
	})
}

func TestReadingFaults(t *testing.T) {
	_, err := belt.ReadForce(4*lbf, 4*lbf, 0.2*in, 0, 14*in)
	check.Broken(t, "force of its own error", err, "forceOff", limit.TooCoarse)
	_, err = belt.ReadForce(4*lbf, 0, 0.03*in, 0.03*in, 14*in)
	check.Broken(t, "deflection of its own error", err, "deflectionOff", limit.TooCoarse)
	_, err = belt.ReadForce(4*lbf, 0, 0.88*in, 0, 14*in)
	check.Broken(t, "more than a sixteenth of the span", err, "deflection", limit.TooDeep)
	_, err = belt.ReadFrequency(0.1, 1, 14*in, 40, 0, 0)
	check.Broken(t, "any mass", err, "spread", limit.TooCoarse)
	_, err = belt.ReadFrequency(0.1, 0, 14*in, 40, 40, 0)
	check.Broken(t, "any frequency", err, "fOff", limit.TooCoarse)
	_, err = belt.Judge(belt.Reading{Low: 2, Value: 1, High: 3}, belt.Band{Low: 1, High: 2})
	check.Broken(t, "reading out of order", err, "reading", limit.OutOfRange)
	_, err = belt.Judge(belt.Reading{Low: 1, Value: 1, High: 1}, belt.Band{Low: 2, High: 1})
	check.Broken(t, "band out of order", err, "allowed", limit.OutOfRange)
}

// A span of 16 in is pressed in by 1 in at most.
func TestDeepestDeflection(t *testing.T) {
	for depth, rule := range map[unit.Length]limit.Rule{0.997: "", 1.003: limit.TooDeep} {
		_, byForce := belt.ReadForce(4*lbf, 0, depth*in, 0, 16*in)
		_, at := belt.ForceAt(4*lbf, depth*in, 16*in)
		for name, err := range map[string]error{"ReadForce": byForce, "ForceAt": at} {
			switch {
			case rule != "":
				check.Broken(t, name, err, "deflection", rule)
			case err != nil:
				t.Errorf("%s at %v in: %v", name, depth, err)
			}
		}
	}
}

func TestSectionInGroove(t *testing.T) {
	for _, s := range drive.Sections() {
		if m := check.Value[belt.Match](t)(belt.SectionInGroove(s, s, drive.Standard)); m != belt.MatchOwn {
			t.Errorf("%s in its own groove: %s", s, m)
		}
	}
	for _, test := range []struct {
		belt, sheave drive.Section
		groove       drive.GrooveType
		want         belt.Match
	}{
		{"B", "A", drive.Standard, belt.MatchProud},
		{"4L", "A", drive.Standard, belt.MatchKin},
		{"4L", "B", drive.Standard, belt.MatchSunk},
		{"B", "A", drive.Combination, belt.MatchOwn},
		{"A", "3V", drive.Standard, belt.MatchFamily},
		{"5V", "3V", drive.Standard, belt.MatchProud},
		{"3VX", "3V", drive.Standard, belt.MatchKin},
	} {
		if m := check.Value[belt.Match](t)(belt.SectionInGroove(test.belt, test.sheave, test.groove)); m != test.want {
			t.Errorf("%s in %s, %s: %s, want %s", test.belt, test.sheave, test.groove, m, test.want)
		}
	}
	_, err := belt.SectionInGroove("3V", "3V", drive.Combination)
	check.Broken(t, "narrow combination", err, "groove", limit.NotTabulated)
	_, err = belt.SectionInGroove("Q", "A", drive.Standard)
	check.Broken(t, "unknown belt", err, "belt", limit.NotTabulated)
	_, err = belt.SectionInGroove("A", "Q", drive.Standard)
	check.Broken(t, "unknown sheave", err, "sheave", limit.NotTabulated)
}

func TestBeltCount(t *testing.T) {
	for _, test := range []struct {
		design, rating unit.Power
		want           int
	}{{1, 2, 1}, {2, 2, 1}, {2.0001, 2, 2}, {0.3, 0.1, 3}, {1e-9, 1, 1}} {
		n := check.Value[int](t)(belt.BeltsNeeded(test.design, test.rating))
		if n != test.want {
			t.Errorf("%v by %v: %d, want %d", test.design, test.rating, n, test.want)
		}
		if c, _, err := belt.BeltCapacity(test.design, test.rating, n); err != nil || c != belt.CapacityEnough {
			t.Errorf("%d belts for %v by %v: %s, %v", n, test.design, test.rating, c, err)
		}
		if n > 1 {
			if c, _, err := belt.BeltCapacity(test.design, test.rating, n-1); err != nil || c != belt.CapacityShort {
				t.Errorf("%d belts for %v by %v: %s, %v", n-1, test.design, test.rating, c, err)
			}
		}
	}
	_, err := belt.BeltsNeeded(101, 1)
	check.Broken(t, "too many", err, "rating", limit.OutOfRange)
}

func TestAlignment(t *testing.T) {
	most, aim, err := belt.AlignmentOffset(12 * in)
	if err != nil {
		t.Fatal(err)
	}
	check.Near(t, "aim, for a foot", aim.In(in), 1./16, 1e-12)
	check.Near(t, "most, about a tenth for a foot", most.In(in), 0.105, 0.005)
	for gap := unit.Length(0); gap < 0.2*in; gap += 0.001 * in {
		want := belt.AlignmentOut
		if gap <= aim {
			want = belt.AlignmentGood
		} else if gap <= most {
			want = belt.AlignmentAllowed
		}
		if got, near, err := belt.JudgeAlignment(gap, 0, 12*in); err != nil || near || got != want {
			t.Errorf("%v in: %s, want %s, %v", gap.In(in), got, want, err)
		}
	}
	// By the gap itself; an error wider than the most, 0.105 in, says nothing but where
	// all of it lies to one side.
	for _, c := range []struct {
		gap, off unit.Length
		want     belt.Alignment
		near     bool
	}{
		{0.09, 0.03, belt.AlignmentAllowed, true}, {0.12, 0.03, belt.AlignmentOut, true}, {0.07, 0.03, belt.AlignmentAllowed, false}, {0.14, 0.03, belt.AlignmentOut, false},
		{0.05, 0.03, belt.AlignmentGood, false}, {0, 0.104, belt.AlignmentGood, false}, {0.01, 0.104, belt.AlignmentGood, true},
		{0.05, 0.106, belt.AlignmentUnjudged, false}, {0.3, 0.106, belt.AlignmentOut, false},
	} {
		if got, near, err := belt.JudgeAlignment(c.gap*in, c.off*in, 12*in); err != nil || got != c.want || near != c.near {
			t.Errorf("%+v: %s, near %v, %v", c, got, near, err)
		}
	}
	_, _, err = belt.JudgeAlignment(-1, 0, 12*in)
	check.Broken(t, "gap below zero", err, "gap", limit.Negative)
	_, _, err = belt.JudgeAlignment(0, 0, 0)
	check.Broken(t, "no span", err, "span", limit.NotPositive)
	there, back := check.Value[unit.Length](t)(belt.BeltShift(0.0625*in, 1, 3)), check.Value[unit.Length](t)(belt.BeltShift(0.0625*in, 3, 1))
	check.Near(t, "there and back", there, -back, 1e-15)
	check.Near(t, "half a flange's travel", there.In(in), 0.0625, 1e-12)
}
