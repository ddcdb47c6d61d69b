package raceway

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Support is how a raceway is held.
type Support struct {
	Spacing unit.Length // most between two supports
	Ends    unit.Length // most from a box or other end to the first
	Free    unit.Length // most that may hang free at an end that must flex; 0 of what does not bend
}

// SupportOf returns how a raceway is held: EMT, IMC and RMC every 10 ft and within
// 3 ft of an end; PVC within 3 ft, every 3 ft up to size 1 and every 5 ft up to 2;
// FMC and LFMC within 12 in, every 4-1/2 ft; LFNC within 12 in, every 3 ft. That
// straight runs of IMC and RMC with threaded couplings may have fewer (Table
// 344.30(B)) is left aside, and so is that LFNC up to 6 ft need not be held: both
// are on the safe side. Errors: no such type; a size that the type is not tabulated
// in.
//
// Method: raceway.support.
func SupportOf(conduit Conduit, size TradeSize) (Support, error) {
	b, err := BoreOf(conduit, size)
	if err != nil {
		return Support{}, err
	}
	if conduit.Flexible() {
		free, err := UnsecuredMost(conduit, size)
		if conduit.Metallic() {
			return Support{SupportSpacing, SecuredWithin, free}, err
		}
		return Support{3 * unit.Foot, SecuredWithin, free}, err
	}
	s := Support{Spacing: 10 * unit.Foot, Ends: 3 * unit.Foot}
	if conduit == PVC40 || conduit == PVC80 {
		s.Spacing = 3 * unit.Foot
		if b.Size.rank() > Size1.rank() {
			s.Spacing = 5 * unit.Foot
		}
	}
	return s, nil
}

// Straps returns the fewest straps that hold a straight run between two ends. Where
// what it ends at flexes, a flexible conduit hangs free there, and one no longer than
// it may hang free needs none, its fittings holding it; a conduit that does not bend
// is never said to flex. A bend in the run may ask for more. Errors: as [SupportOf];
// length not above zero, or so great that the count is above 10 000; no such
// mounting.
//
// Method: raceway.support.
func Straps(conduit Conduit, size TradeSize, length unit.Length, mounting Mounting) (int, error) {
	s, err := SupportOf(conduit, size)
	if err := limit.First(err, limit.Positive("length", length)); err != nil {
		return 0, err
	}
	if mounting != Still && mounting != Flexing {
		return 0, limit.Break("mounting", limit.NotTabulated)
	}
	far := s.Ends
	if mounting == Flexing && s.Free > 0 {
		if length <= s.Free*(1+slack) {
			return 0, nil
		}
		far = s.Free
	}
	return pieces(length-s.Ends-far, s.Spacing, 1)
}

// StickLength is how long conduit and tubing that does not bend is sold (common
// practice).
const StickLength = 10 * unit.Foot

// Sticks returns how many lengths of 10 ft make a run; one less of couplings joins
// them. Errors: length not above zero, or so great that the count is above 10 000.
//
// Method: raceway.sticks.
func Sticks(length unit.Length) (int, error) {
	if err := limit.Positive("length", length); err != nil {
		return 0, err
	}
	return pieces(length, StickLength, 0)
}

// pieces returns how many of a length cover another, and those beside.
func pieces(length, each unit.Length, beside int) (int, error) {
	n := math.Ceil(float64(length/each) * (1 - slack))
	if n+float64(beside) > MostCount {
		return 0, limit.Break("length", TooMany)
	}
	return max(int(n), 0) + beside, nil
}

// MakeUp is what a conductor loses at an end to stripping, the connector and
// reaching around the box (common practice).
const MakeUp = 6 * unit.Inch

// WireCut returns the length to cut a conductor to for a run: at each end what is left
// free at a box (300.14) and what making it up takes. Errors: run not above zero.
//
// Method: raceway.cut.
func WireCut(run unit.Length) (unit.Length, error) {
	if err := limit.Positive("run", run); err != nil {
		return 0, err
	}
	return limit.Result(run + 2*(FreeConductor+MakeUp))
}
