package sheet_test

import "testing"

// The belt to bring, case by case. 3.4 in over 8.4 at 3 turns; pitch lengths by RMA
// IP-20, a number and 1.3 in; around two sheaves 2C + π/2 (D + d) + (D − d)²/4C.
func TestTheBeltToBring(t *testing.T) {
	for _, c := range []struct{ name, more, want string }{
		{"entered, its base travel not told", "&new.travel-away=",
			"bring 2 belt A50 51.3 in | belt-entered | new.travel-away"},
		{"entered, the fan sheave's text no value", "&new.fan-sheave=!8",
			"bring 2 belt A50 51.3 in | belt-entered | !new.fan-sheave"},
		{"entered, the motor sheave's text no value", "&new.anchor-pitch=!4",
			"bring 2 belt A50 51.3 in | belt-entered | !new.anchor-pitch"},
		// 16-1/8 in: 32.25 + 18.54 + 0.39 = 51.17 in. A50 moves the base 0.06 in; the base
		// has the way to A46 and to A51 as well, and no cause to go it.
		{"none entered, all within reach", "&new.belt-number=&new.center-distance=16-1/8 in&new.travel-toward=4 in&new.travel-away=4 in",
			"bring 2 belt A50 51.3 in | belt-length"},
		// 15-3/4 in: 50.43 in. A49 goes 0.06 in toward, which leaves less than the 3/4 in that
		// belts take to go on; A51, the next of the standard's, goes 0.94 in away, and leaves
		// all that is needed.
		{"none entered, the nearer one leaves too little to put it on", "&new.belt-number=&new.travel-toward=5/8 in&new.travel-away=3-1/2 in",
			"bring 2 belt A51 52.3 in | belt-length"},
		// A49 leaves 0.6 in of the inch that it will stretch by; A46 leaves more than enough.
		{"none entered, the nearer one leaves too little to take up", "&new.belt-number=&new.travel-toward=3 in&new.travel-away=1/2 in",
			"bring 2 belt A46 47.3 in | belt-length"},
		{"none entered, the base can't move", "&new.belt-number=&new.travel-toward=0 in&new.travel-away=0 in",
			"bring 2 belt A 50.43 in | belt-length | new.center-distance new.travel-toward new.travel-away"},
		{"none entered, the center distance no value", "&new.belt-number=&new.center-distance=!far",
			"bring 2 belt A | belt-length | !new.center-distance"},
		// No belt goes around sheaves whose rims would touch, and A16 is too short for any.
		{"entered, too short for its sheaves, which can't stand so near", "&new.belt-number=A16&new.center-distance=3 in",
			"bring 2 belt A | belt-instead | !new.center-distance"},
	} {
		has(t, c.name, demoRoof(t, c.more), c.want)
	}
}
