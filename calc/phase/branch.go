package phase

import "roofside/calc/limit"

// A Check is one thing that readings at a motor can show. The spellings are keys.
type Check string

// Checks.
const (
	CheckVoltUnbalance Check = "volt-unbalance"
	CheckAmpUnbalance  Check = "amp-unbalance"
	CheckLostPhase     Check = "lost-phase"
	CheckRoll          Check = "lead-roll"
	CheckPlateVolts    Check = "plate-volts"
	CheckPlateAmps     Check = "plate-amps"
	CheckLoadFromAmps  Check = "load-from-amps"
	CheckRotation      Check = "rotation"
)

// Checks returns every check, in the order they are made.
func Checks() []Check {
	return []Check{CheckPlateVolts, CheckVoltUnbalance, CheckRotation, CheckLostPhase, CheckPlateAmps, CheckAmpUnbalance, CheckRoll, CheckLoadFromAmps}
}

// A Use is whether a check says anything on a supply. The spellings are keys.
type Use string

// Uses.
const (
	UseYes    Use = "yes"
	UseNo     Use = "no"
	UseOutput Use = "drive-output" // read between drive and motor, with a meter made for a drive's output
	UseInput  Use = "drive-input"  // read ahead of the drive, where there is a sine to read
	UseEach   Use = "each-speed"   // for each speed by itself
)

// CheckUse returns whether a check says anything on a supply. One phase has no
// unbalance and its amps tell no load; a drive makes its own three phases, so that
// its amps do not show the supply's faults, and its input amps are unbalanced by
// nature. Errors: no such check, no such supply.
//
// Method: phase.branch.
func CheckUse(check Check, supply Supply) (Use, error) {
	if _, err := ReversedBy(supply); err != nil {
		return "", err
	}
	switch check {
	case CheckRotation:
		if supply == TwoSpeed {
			return UseEach, nil
		}
		return UseYes, nil
	case CheckPlateVolts:
		return byDrive(supply, UseInput), nil
	case CheckPlateAmps:
		return byDrive(supply, UseOutput), nil
	case CheckVoltUnbalance, CheckLostPhase, CheckAmpUnbalance, CheckRoll, CheckLoadFromAmps:
	default:
		return "", limit.Break("check", limit.NotTabulated)
	}
	switch supply {
	case ThreePhase:
		return UseYes, nil
	case TwoSpeed:
		return UseEach, nil
	case Inverter:
		switch check {
		case CheckVoltUnbalance:
			return UseInput, nil
		case CheckAmpUnbalance, CheckLostPhase:
			return UseOutput, nil
		}
	}
	return UseNo, nil
}

func byDrive(supply Supply, use Use) Use {
	switch supply {
	case Inverter:
		return use
	case TwoSpeed:
		return UseEach
	}
	return UseYes
}
