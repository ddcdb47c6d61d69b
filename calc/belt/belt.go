// Package belt holds the geometry and the tension of a V-belt on two sheaves.
//
// Terms. The drive is open: both sheaves turn the same way. Pitch length is the
// length of the belt along its cord; datum length is the classical standard's
// name for it, and a belt's number is near its inside length in inches. Center
// is the distance between the two axes. Span is the free straight run between
// the sheaves; arc is the angle over which the belt lies on a sheave. Tension is
// that of one strand of one belt at rest, unless all belts or the running drive
// are named; deflection is how far a span is pressed in at its middle.
//
// driver and driven are the pitch diameters of the motor's and the fan's sheave;
// either may be the larger. Lengths are pitch lengths unless said otherwise.
//
// Setting a belt goes from [StaticTension] over [ForceBands] to a reading,
// [ReadForce] or [ReadFrequency], and its verdict, [Judge]: once with the shaft
// power measured and once with the plate's. A verdict moves the motor base, never
// the sheave, which sets the fan's speed.
//
// Not here: what power a belt can carry; no source read gives it by section. It is an
// input.
package belt

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// OpenLength returns the pitch length of a belt on two sheaves with their axes
// center apart: exact for sheaves in one plane and a belt without thickness.
// Errors: an input not above zero; axes nearer than half the sum of the
// diameters.
//
// Method: belt.length.
func OpenLength(driver, driven, center unit.Length) (unit.Length, error) {
	if err := checkSheaves(driver, driven, center); err != nil {
		return 0, err
	}
	return limit.Result(unit.Length(length(float64(driver), float64(driven), float64(center))))
}

// length is L = 2C·cos a + π/2·(D+d) + a·(D−d) with sin a = (D−d)/2C. It is
// even in D−d, so the order of the sheaves does not matter.
func length(d, D, C float64) float64 {
	sin := (D - d) / 2 / C
	cos := math.Sqrt((1 - sin) * (1 + sin))
	return 2*C*cos + math.Pi*(D/2+d/2) + math.Asin(sin)*(D-d)
}

// ApproximateLength returns the handbooks' short form of [OpenLength],
// 2C + π/2·(D+d) + (D−d)²/4C. It is never longer than the exact length: short
// by 0.0001 C at (D−d)/C = 0.4, 0.006 C at 1 and 0.033 C at 1.5. For comparison
// and for solving by hand. Errors: as OpenLength.
//
// Method: belt.length.short.
func ApproximateLength(driver, driven, center unit.Length) (unit.Length, error) {
	if err := checkSheaves(driver, driven, center); err != nil {
		return 0, err
	}
	d, D, C := float64(driver), float64(driven), float64(center)
	return limit.Result(unit.Length(2*C + math.Pi*(D/2+d/2) + (D-d)/C*(D-d)/4))
}

// CenterFromLength returns the distance of the axes at which a belt of the
// given pitch length lies tight on two sheaves: the exact [OpenLength], solved.
// Errors: an input not above zero; a belt too short for the sheaves even when
// they touch.
//
// Method: belt.center.
func CenterFromLength(driver, driven, pitchLength unit.Length) (unit.Length, error) {
	if err := checkLength(driver, driven, pitchLength); err != nil {
		return 0, err
	}
	d, D, L := float64(driver), float64(driven), float64(pitchLength)
	touching := D/2 + d/2
	shortest, err := limit.Result(length(d, D, touching))
	if err != nil {
		return 0, err
	}
	if L <= shortest {
		return 0, limit.Break("pitchLength", limit.BeltTooShort)
	}
	// Length is convex in C, with slope 2·cos a, and never below
	// 2C + π/2·(D+d). Newton's steps from that bound come down to the root
	// and do not pass it.
	C := (L - math.Pi*touching) / 2
	for range 60 {
		sin := (D - d) / 2 / C
		step := (length(d, D, C) - L) / (2 * math.Sqrt((1-sin)*(1+sin)))
		C -= step
		if !(math.Abs(step) > 1e-14*C) {
			break
		}
	}
	return limit.Result(unit.Length(math.Max(C, touching)))
}

// ApproximateCenter returns the handbooks' solution of [ApproximateLength] for
// the center: C = (B + √(B² − 32·(D−d)²))/16 with B = 4L − 2π·(D+d). Never
// shorter than [CenterFromLength]. For comparison. Errors: as
// CenterFromLength.
//
// Method: belt.center.short.
func ApproximateCenter(driver, driven, pitchLength unit.Length) (unit.Length, error) {
	if err := checkLength(driver, driven, pitchLength); err != nil {
		return 0, err
	}
	d, D, L := float64(driver), float64(driven), float64(pitchLength)
	B := 4*L - 2*math.Pi*(D+d)
	r := (D - d) / B
	if !(B > 0) || 32*r*r > 1 {
		return 0, limit.Break("pitchLength", limit.BeltTooShort)
	}
	C := B * (1 + math.Sqrt(1-32*r*r)) / 16
	if C <= D/2+d/2 {
		return 0, limit.Break("pitchLength", limit.BeltTooShort)
	}
	return limit.Result(unit.Length(C))
}

// Span returns the free length of belt between two sheaves: what deflection is
// measured against. Errors: as [OpenLength].
//
// Method: belt.span.
func Span(driver, driven, center unit.Length) (unit.Length, error) {
	if err := checkSheaves(driver, driven, center); err != nil {
		return 0, err
	}
	C, h := float64(center), math.Abs(float64(driven-driver))/2
	return limit.Result(unit.Length(C * math.Sqrt((1-h/C)*(1+h/C))))
}

func checkSheaves(driver, driven, center unit.Length) error {
	if err := limit.First(limit.Positive("driver", driver), limit.Positive("driven", driven), limit.Positive("center", center)); err != nil {
		return err
	}
	if center <= driver/2+driven/2 {
		return limit.Break("center", limit.SheavesOverlap)
	}
	return nil
}

func checkLength(driver, driven, pitchLength unit.Length) error {
	return limit.First(limit.Positive("driver", driver), limit.Positive("driven", driven), limit.Positive("pitchLength", pitchLength))
}
