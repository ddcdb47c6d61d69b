package sheet

import (
	"strconv"
	"strings"

	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// SwappedVerdict asks about a fan sheave smaller than the motor sheave: such a
// fan would turn faster than its motor, and the two are easily swapped.
func SwappedVerdict(s *record.Side) Verdict {
	motor, fan := MotorPitch(s), FanPitch(s)
	return limitOf[unit.Length]{rule: RuleSwapped, method: "drive.swapped", scale: &unit.Shop, level: Watch, least: true}.hold(fan, motor)
}

// farOff is how far the length by a belt's number may lie from the one by
// sheaves and center distance before it is a blunder: a taped distance counts
// twice, and belts differ by some tenths of an inch (common practice).
const farOff = 1.5 * unit.Inch

// BeltNumberVerdict holds the length that a belt's number stands for against
// the one that runs at the center distance. It catches blunders and no more.
func BeltNumberVerdict(s *record.Side) Verdict {
	v := Verdict{Rule: RuleBeltNumber, Method: "belt.number"}
	number, ok := numberedLength(s.BeltNumber.Text())
	length := BeltLength(s)
	if !ok || !length.Known() {
		v.Level = Unjudged
		if !ok {
			v.Wanted = append(v.Wanted, &s.BeltNumber)
		}
		v.Wanted = append(v.Wanted, length.open()...)
		return v
	}
	v.Value, v.Limit = Figure{&unit.Shop, float64(length.Value)}, Figure{&unit.Shop, float64(number)}
	if abs(float64(length.Value-number)) > float64(farOff) {
		v.Level = Watch
	}
	return v
}

// parseBelt reads a belt number such as A50 or 4L430.
func parseBelt(text string) (section drive.Section, number int, ok bool) {
	text = strings.ToUpper(strings.ReplaceAll(strings.ReplaceAll(text, " ", ""), "-", ""))
	for _, s := range drive.Sections() {
		digits, has := strings.CutPrefix(text, string(s))
		if !has || strings.Trim(digits, "0123456789") != "" { // A is the start of AX, too
			continue
		}
		if n, err := strconv.Atoi(digits); err == nil {
			return s, n, true
		}
	}
	return "", 0, false
}

// numberedLength returns the pitch length that a belt number stands for.
func numberedLength(text string) (unit.Length, bool) {
	section, number, ok := parseBelt(text)
	if !ok {
		return 0, false
	}
	l, err := belt.PitchLength(section, number)
	return l, err == nil
}
