package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// Limits of the ratio at which three conductors of one size may jam in a bend,
// and the allowance for a bend's being oval that cable practice makes (memory).
const (
	JamLeast = 2.8
	JamMost  = 3.2
	Ovality  = 1.05
)

// A Jam is the ratio of a raceway's inside diameter to the diameter of three
// like conductors in it: plain, which is what NFPA 70 remarks on, and with the
// raceway taken larger by Ovality. It informs and limits nothing.
type Jam struct {
	Plain, Oval             unit.Ratio
	PlainLikely, OvalLikely bool // the ratio lies in 2.8 to 3.2
}

// JamRatio returns the jam ratio of three conductors of a diameter in a raceway
// of an inside diameter. Errors: a diameter not above zero; conductors wider
// than the raceway.
//
// Method: raceway.jam.
func JamRatio(inside, conductor unit.Length) (Jam, error) {
	if err := limit.First(limit.Positive("inside", inside), limit.Positive("conductor", conductor)); err != nil {
		return Jam{}, err
	}
	if conductor > inside {
		return Jam{}, limit.Break("conductor", limit.OutOfRange)
	}
	plain, err := limit.Result(unit.Ratio(inside / conductor))
	if err != nil {
		return Jam{}, err
	}
	oval, err := limit.Result(plain * Ovality)
	if err != nil {
		return Jam{}, err
	}
	return Jam{plain, oval, likely(plain), likely(oval)}, nil
}

func likely(r unit.Ratio) bool { return r >= JamLeast*(1-slack) && r <= JamMost*(1+slack) }
