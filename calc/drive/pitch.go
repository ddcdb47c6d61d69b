package drive

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// PitchFromOutside returns the pitch diameter of a belt of a section on a fixed
// sheave of the given outside diameter. A standard A groove gives outside less
// 0.25 in, a standard B less 0.35 in; an A belt in a combination groove sits
// much deeper. A narrow section takes the standard type, and its pitch diameter is the
// outside one; [NarrowSpread] is what older prints take off. Groove widths may differ by ± 0.006 in, the result so by ± 0.02 in.
// Errors: outside not above zero or not above the belt's depth; no such groove.
//
// Method: drive.outside.
func PitchFromOutside(outside unit.Length, section Section, groove GrooveType) (unit.Length, error) {
	if err := limit.Positive("outside", outside); err != nil {
		return 0, err
	}
	inside, err := insideOf(outside, section, groove)
	if err != nil {
		return 0, err
	}
	if outside <= inside {
		return 0, limit.Break("outside", limit.SheaveTooSmall)
	}
	return limit.Result(outside - inside)
}

// OutsideFromPitch returns the outside diameter of the fixed sheave on which a
// belt of a section has the given pitch diameter. Where the groove angle
// changes, an A belt in a combination groove has no sheave for pitches between
// 7.099 and 7.131 in; there the wider angle's answer is given. Errors: pitch
// not above zero; no such groove.
//
// Method: drive.outside.
func OutsideFromPitch(pitch unit.Length, section Section, groove GrooveType) (unit.Length, error) {
	if err := limit.Positive("pitch", pitch); err != nil {
		return 0, err
	}
	if _, ok := narrowOf(section); ok {
		if groove != Standard {
			return 0, limit.Break("groove", limit.NotTabulated)
		}
		return pitch, nil
	}
	g, err := GrooveOf(section, groove)
	if err != nil {
		return 0, err
	}
	if outside := pitch + g.Narrow.Inside; outside <= g.Bound {
		return outside, nil
	}
	return limit.Result(pitch + g.Wide.Inside)
}

// insideOf returns outside less pitch diameter.
func insideOf(outside unit.Length, section Section, groove GrooveType) (unit.Length, error) {
	if _, ok := narrowOf(section); ok {
		if groove != Standard {
			return 0, limit.Break("groove", limit.NotTabulated)
		}
		return 0, nil
	}
	g, err := GrooveOf(section, groove)
	if err != nil {
		return 0, err
	}
	return g.Flank(outside).Inside, nil
}

func narrowOf(section Section) (narrow, bool) {
	for i := range narrows {
		if narrows[i].section == section {
			return narrows[i], true
		}
	}
	return narrow{}, false
}

// PitchFromGap returns the pitch diameter of a belt of a section in a groove
// with straight flanks: outside is the flanges' outside diameter, gap the
// groove's width measured there, angle the full groove angle. It serves an
// adjustable sheave that can't be closed for counting. An error of 0.01 in in
// the gap is 0.03 in in the diameter at 34°. Errors: an input not above zero,
// angle not between 0 and 180°, gap narrower than the belt's pitch width, no
// diameter left; narrow sections are not covered.
//
// Method: drive.gap.
func PitchFromGap(outside, gap unit.Length, section Section, angle unit.Angle) (unit.Length, error) {
	if err := limit.First(limit.Positive("outside", outside), limit.Positive("gap", gap), checkAngle(angle)); err != nil {
		return 0, err
	}
	g, err := GrooveOf(section, Standard)
	if err != nil {
		return 0, err
	}
	if gap < g.Belt {
		return 0, limit.Break("gap", limit.GrooveTooNarrow)
	}
	depth, err := GapChange(gap-g.Belt, angle)
	if err != nil {
		return 0, err
	}
	if outside <= depth {
		return 0, limit.Break("outside", limit.SheaveTooSmall)
	}
	return limit.Result(outside - depth)
}

// GapChange returns how much smaller the pitch diameter becomes when the groove
// opens by change; negative when it closes. Errors: change not finite, angle
// not between 0 and 180°.
//
// Method: drive.gap.
func GapChange(change unit.Length, angle unit.Angle) (unit.Length, error) {
	if err := limit.First(limit.Finite("change", change), checkAngle(angle)); err != nil {
		return 0, err
	}
	return limit.Result(change / unit.Length(math.Tan(float64(angle)/2)))
}

func checkAngle(angle unit.Angle) error {
	if err := limit.Positive("angle", angle); err != nil {
		return err
	}
	if angle >= math.Pi {
		return limit.Break("angle", limit.OutOfRange)
	}
	return nil
}
