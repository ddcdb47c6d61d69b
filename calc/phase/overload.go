package phase

import (
	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// An OverloadClass is what a motor's plate says that its overload protection
// depends on. The spellings are keys.
type OverloadClass string

// Overload classes.
const (
	OverloadService OverloadClass = "service-factor" // marked service factor of 1.15 or more
	OverloadCool    OverloadClass = "40C-rise"       // marked temperature rise of 40 K or less
	OverloadOther   OverloadClass = "other"
)

// ServiceFactorLeast is the marked service factor from which a motor counts as
// [OverloadService]: 430.32(A)(1).
const ServiceFactorLeast unit.Ratio = 1.15

// OverloadClassOf returns the class of a motor by its marked service factor alone;
// one marked with a rise of 40 K or less is [OverloadCool] whatever that is.
// Errors: serviceFactor below one or above two.
//
// Method: phase.overload.
func OverloadClassOf(serviceFactor unit.Ratio) (OverloadClass, error) {
	if err := limit.Positive("serviceFactor", serviceFactor); err != nil {
		return "", err
	}
	if serviceFactor < 1 || serviceFactor > 2 {
		return "", limit.Break("serviceFactor", limit.OutOfRange)
	}
	const slack = 1e-9
	if serviceFactor >= ServiceFactorLeast*(1-slack) {
		return OverloadService, nil
	}
	return OverloadOther, nil
}

// overloads are 430.32(A)(1) and (C) of NFPA 70, 2023; what the transcription read
// has lost was read in that of 2008. Motors of 1 hp and less come here too, by (B)(1)
// and (D)(1).
var overloads = [...]struct {
	class                   OverloadClass
	trip, after             unit.Ratio
	tripKnown, afterFailure source.Known
}{
	{OverloadService, 1.25, 1.40, source.LookedUp, source.LookedUp},
	{OverloadCool, 1.25, 1.40, source.LookedUp, source.LookedUp},
	{OverloadOther, 1.15, 1.30, source.LookedUp, source.LookedUp},
}

// An Overload is what the code allows at most, and what the relay is set to: two
// things. Relays mostly have the margin built in and are dialed in motor amps
// (memory); the relay's own instructions rule.
type Overload struct {
	Trip         unit.Current // greatest trip current
	AfterFailure unit.Current // greatest, only after a documented failure to start or to carry the load
	Dial         unit.Current // plate amps
	Known        source.Known // of Trip
	AfterKnown   source.Known
}

// OverloadMost is the share of plate amps above which no separate overload device may
// be set, whatever the motor: the greatest of 430.32(C).
const OverloadMost unit.Ratio = 1.40

// OverloadOf returns the overload currents of a motor from plate amps, not the code's
// table current. A motor of 1 hp or less goes by the same: started by itself by
// 430.32(B)(1), started by hand and permanently installed by 430.32(D)(1), which leads
// there. Errors: plate not above zero, no such class.
//
// Method: phase.overload.
func OverloadOf(plate unit.Current, class OverloadClass) (Overload, error) {
	if err := limit.Positive("plate", plate); err != nil {
		return Overload{}, err
	}
	for i := range overloads {
		o := &overloads[i]
		if o.class != class {
			continue
		}
		after, err := limit.Result(plate * unit.Current(o.after))
		if err != nil {
			return Overload{}, err
		}
		return Overload{plate * unit.Current(o.trip), after, plate, o.tripKnown, o.afterFailure}, nil
	}
	return Overload{}, limit.Break("class", limit.NotTabulated)
}

// ProtectorTrip returns the greatest trip current of a protector built into a
// motor, from the code's table current: 170 % to 9 A, 156 % to 20 A, 140 % above. Such a protector may start the motor again by itself.
// Errors: table not above zero.
//
// Method: phase.overload.protector.
func ProtectorTrip(table unit.Current) (unit.Current, error) {
	if err := limit.Positive("table", table); err != nil {
		return 0, err
	}
	share := unit.Ratio(1.40)
	switch {
	case table <= 9:
		share = 1.70
	case table <= 20:
		share = 1.56
	}
	return limit.Result(table * unit.Current(share))
}
