package phase

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// PlateTolerance is how far the voltage at a motor may be from its plate's: a US
// DOE motor tip sheet and a condensed NEMA MG 1.
const PlateTolerance unit.Ratio = 0.10

// A Share is a reading over what a plate says, with the meter's error, and how it
// stands.
type Share struct {
	Value, Low, High unit.Ratio
	Verdict
}

// VoltsAgainstPlate returns a voltage over the plate's for the way the motor's
// leads are connected: within [PlateTolerance] to either side, stop beyond.
// Errors: v or plate not above zero; a meter below zero or as coarse as its
// reading.
//
// Method: phase.plate.volts.
func VoltsAgainstPlate(v unit.Voltage, meter Meter[unit.Voltage], plate unit.Voltage) (Share, error) {
	s, err := share("v", v, meter, "plate", plate)
	if err != nil {
		return Share{}, err
	}
	if s.Low <= 1 && s.High >= 1 { // within the error it may be right on the plate
		s.Verdict = judge(0, max(1-s.Low, s.High-1), PlateTolerance, PlateTolerance)
		return s, nil
	}
	off := func(x unit.Ratio) unit.Ratio { return unit.Ratio(math.Abs(float64(x - 1))) }
	s.Verdict = judge(min(off(s.Low), off(s.High)), max(off(s.Low), off(s.High)), PlateTolerance, PlateTolerance)
	return s, nil
}

// AmpsAgainstPlate returns a line current over plate current: within to the plate,
// watch to service-factor amps as plated, stop above. A motor without such amps has
// plate for service. Unbalance above 1 % voids the service factor, and so does most
// any drive: plate then, too. Errors: i below zero, plate not above zero, service
// under plate; a meter below zero or as coarse as its reading.
//
// Method: phase.plate.amps.
func AmpsAgainstPlate(i unit.Current, meter Meter[unit.Current], plate, service unit.Current) (Share, error) {
	if err := limit.First(limit.NonNegative("i", i), limit.Positive("plate", plate), limit.Positive("service", service)); err != nil {
		return Share{}, err
	}
	if service < plate {
		return Share{}, limit.Break("service", limit.OutOfRange)
	}
	most, err := limit.Result(unit.Ratio(service / plate))
	if err != nil {
		return Share{}, err
	}
	s := Share{}
	if i > 0 {
		if s, err = share("i", i, meter, "plate", plate); err != nil {
			return Share{}, err
		}
	} else if err := meter.check(); err != nil {
		return Share{}, err
	}
	s.Verdict = judge(s.Low, s.High, 1, most)
	return s, nil
}

func share[Q unit.Voltage | unit.Current](name string, x Q, meter Meter[Q], against string, plate Q) (Share, error) {
	if err := limit.First(limit.Positive(name, x), meter.check(), limit.Positive(against, plate)); err != nil {
		return Share{}, err
	}
	low, high := meter.around(x)
	s := Share{Value: unit.Ratio(x / plate), Low: unit.Ratio(low / plate), High: unit.Ratio(high / plate)}
	if _, err := limit.Result(s.High); err != nil {
		return Share{}, err
	}
	if _, err := limit.Result(s.Value); err != nil {
		return Share{}, err
	}
	return s, nil
}

// A Connection is what a reading says of how a motor's leads are connected, high
// voltage or low. The spellings are keys.
type Connection string

// Connections.
const (
	ConnectionPlain  Connection = "plain"
	ConnectionDouble Connection = "double" // near twice what the plate leads one to expect: ask
	ConnectionHalf   Connection = "half"   // near half of it: ask; an unloaded motor's amps may be so too
)

// connectionNear is how near to two or a half counts (common practice).
const connectionNear = 0.15

// ConnectionHint returns whether a reading is so near twice or half the plate's
// value that the connection of the leads is to be asked about first. Errors: an
// input not above zero.
//
// Method: phase.connection.
func ConnectionHint[Q unit.Voltage | unit.Current](reading, plate Q) (Connection, error) {
	if err := limit.First(limit.Positive("reading", reading), limit.Positive("plate", plate)); err != nil {
		return "", err
	}
	switch x := float64(reading / plate); {
	case math.Abs(x-2) <= 2*connectionNear:
		return ConnectionDouble, nil
	case math.Abs(x-0.5) <= 0.5*connectionNear:
		return ConnectionHalf, nil
	}
	return ConnectionPlain, nil
}
