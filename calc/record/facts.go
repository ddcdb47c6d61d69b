package record

import "roofside/calc/unit"

// What is fixed about the places. Bounds only keep out what no fan can have;
// the trade's own limits belong to the answers.
//
// Bands of a measured value are common practice: a diameter taped to 1/16 in,
// a clamp meter within 2 % and 5 digits of 0.01 A, a voltmeter within 1 % and 3
// digits of 0.1 V, a tachometer within 0.5 %, a hand count to a quarter turn, a
// flow or a pressure in a duct within 5 %, a spring scale within 5 %, a
// deflection to half of 1/16 in, a straightedge's gap to 1/64 in, a span's
// frequency within 1 Hz.
var (
	diameter = Fact{Scale: unit.Shop, Bounds: "gt=0,lte=10", Basis: Stamped, Read: Band{Abs: 1. / 16 * float64(unit.Inch)}}
	taped    = Fact{Scale: unit.Shop, Bounds: "gt=0,lte=10", Basis: Measured, Read: diameter.Read}
	gap      = Fact{Scale: unit.Shop, Bounds: "gt=0,lte=1", Basis: Measured, Read: Band{Abs: 1. / 64 * float64(unit.Inch)}}
	lead     = Fact{Scale: unit.Shop, Bounds: "gt=0,lte=1", Basis: Counted}
	travel   = Fact{Scale: unit.Shop, Bounds: "gte=0,lte=10", Basis: Measured, Read: diameter.Read}
	duct     = Fact{Scale: unit.Shop, Bounds: "gt=0,lte=100", Basis: Measured, Read: diameter.Read}

	deflection = Fact{Scale: unit.Shop, Bounds: "gt=0,lte=1", Basis: Measured, Read: Band{Abs: 1. / 32 * float64(unit.Inch)}}
	offset     = Fact{Scale: unit.Shop, Bounds: "gte=0,lte=1", Basis: Measured, Read: gap.Read}

	pressed     = Fact{Scale: unit.Pull, Bounds: "gt=0,lte=10000", Basis: Measured, Read: Band{Rel: 0.05}}
	listedForce = Fact{Scale: unit.Pull, Bounds: "gt=0,lte=10000", Basis: Stamped}
	beltMass    = Fact{Scale: unit.BeltMass, Bounds: "gt=0,lte=10", Basis: Stamped, Read: pressed.Read}
	plucked     = Fact{Scale: unit.Cycles, Bounds: "gt=0,lte=1000", Basis: Measured, Read: Band{Abs: 1}}

	bore   = Fact{Scale: unit.Shop, Bounds: "gt=0,lte=1", Basis: Measured, Read: gap.Read}
	weight = Fact{Scale: unit.Weight, Bounds: "gt=0,lte=10000", Basis: Stamped}

	hoodLength = Fact{Scale: unit.Site, Bounds: "gt=0,lte=1000", Basis: Measured}
	altitude   = Fact{Scale: unit.Site, Bounds: "gte=-500,lte=10000", Basis: Measured}

	grooveAngle = Fact{Scale: unit.Arc, Bounds: "gte=0.1,lte=1.5", Basis: Stamped, Read: Band{Abs: float64(unit.Degree)}}

	turnsOpen    = Fact{Scale: unit.TurnCount, Bounds: "gte=0,lte=20", Basis: Counted}
	stampedTurns = Fact{Scale: unit.TurnCount, Bounds: "gte=0,lte=20", Basis: Stamped}
	countedTurns = Fact{Scale: unit.TurnCount, Bounds: "gt=0,lte=100000", Basis: Counted}

	plateSpeed  = Fact{Scale: unit.Rotation, Bounds: "gt=0,lte=100000", Basis: Stamped, Read: tachometer.Read}
	reportSpeed = Fact{Scale: unit.Rotation, Bounds: "gt=0,lte=100000", Basis: Measured}
	tachometer  = Fact{Scale: unit.Rotation, Bounds: "gt=0,lte=100000", Basis: Measured, Read: Band{Rel: 0.005}}

	platePower  = Fact{Scale: unit.Shaft, Bounds: "gt=0,lte=1e7", Basis: Stamped}
	reportPower = Fact{Scale: unit.Shaft, Bounds: "gt=0,lte=1e7", Basis: Measured}

	plateVolts = Fact{Scale: unit.Potential, Bounds: "gt=0,lte=10000", Basis: Stamped}
	meterVolts = Fact{Scale: unit.Potential, Bounds: "gte=0,lte=10000", Basis: Measured, Read: Band{Abs: 0.3, Rel: 0.01}}
	plateAmps  = Fact{Scale: unit.Amperage, Bounds: "gt=0,lte=10000", Basis: Stamped}
	clampAmps  = Fact{Scale: unit.Amperage, Bounds: "gte=0,lte=10000", Basis: Measured, Read: Band{Abs: 0.05, Rel: 0.02}}

	clampTurns  = Fact{Scale: unit.TurnCount, Bounds: "gt=0,lte=100", Basis: Counted}
	meterShare  = Fact{Scale: unit.Share, Bounds: "gte=0,lte=0.5", Basis: Stamped}
	clampDigits = Fact{Scale: unit.Amperage, Bounds: "gte=0,lte=100", Basis: Stamped}
	voltsDigits = Fact{Scale: unit.Potential, Bounds: "gte=0,lte=100", Basis: Stamped}
	dialAmps    = Fact{Scale: unit.Amperage, Bounds: "gt=0,lte=10000", Basis: Stamped}

	plateFactor = Fact{Scale: unit.Factor, Bounds: "gt=0,lte=1", Basis: Stamped}
	efficiency  = Fact{Scale: unit.Share, Bounds: "gt=0,lte=1", Basis: Stamped}

	serviceFactor = Fact{Scale: unit.Factor, Bounds: "gte=1,lte=2", Basis: Stamped}
	share         = Fact{Scale: unit.Share, Bounds: "gte=0,lte=1", Basis: Stamped}

	plateFrequency = Fact{Scale: unit.Cycles, Bounds: "gt=0,lte=1000", Basis: Stamped}
	meterFrequency = Fact{Scale: unit.Cycles, Bounds: "gt=0,lte=1000", Basis: Measured}

	airTemperature = Fact{Scale: unit.Warmth, Bounds: "gte=180,lte=700", Basis: Measured}

	flow           = Fact{Scale: unit.Airflow, Bounds: "gt=0,lte=10000", Basis: Measured, Read: Band{Rel: 0.05}}
	reportFlow     = Fact{Scale: unit.Airflow, Bounds: "gt=0,lte=10000", Basis: Stamped, Read: flow.Read}
	flowOrNone     = Fact{Scale: unit.Airflow, Bounds: "gte=0,lte=10000", Basis: Measured, Read: flow.Read}
	pressure       = Fact{Scale: unit.AirPressure, Bounds: "gt=0,lte=1e5", Basis: Measured, Read: Band{Rel: 0.05}}
	reportPressure = Fact{Scale: unit.AirPressure, Bounds: "gt=0,lte=1e5", Basis: Stamped, Read: pressure.Read}
	spacePressure  = Fact{Scale: unit.AirPressure, Bounds: "gte=0,lte=1e5", Basis: Measured, Read: Band{Rel: 0.05}}

	// A caliper over soft insulation is read to 5 thousandths of an inch.
	caliper   = Fact{Scale: unit.Shop, Bounds: "gt=0,lte=0.1", Basis: Measured, Read: Band{Abs: 0.005 * float64(unit.Inch)}}
	clearance = Fact{Scale: unit.Shop, Bounds: "gte=0,lte=10", Basis: Measured, Read: diameter.Read}
	run       = Fact{Scale: unit.Site, Bounds: "gt=0,lte=1000", Basis: Measured}
	capacity  = Fact{Scale: unit.Capacity, Bounds: "gt=0,lte=1", Basis: Stamped}

	tally       = Fact{Scale: unit.Tally, Bounds: "gt=0,lte=10000", Basis: Counted, Whole: true}
	tallyOrNone = Fact{Scale: unit.Tally, Bounds: "gte=0,lte=10000", Basis: Counted, Whole: true}

	// Wishes carry no band: they are chosen, not known.
	wish = struct{ speed, flow, pressure, power Fact }{
		Fact{Scale: unit.Rotation, Bounds: "gt=0,lte=100000", Basis: Stamped},
		Fact{Scale: unit.Airflow, Bounds: "gt=0,lte=10000", Basis: Stamped},
		Fact{Scale: unit.AirPressure, Bounds: "gt=0,lte=1e5", Basis: Stamped},
		Fact{Scale: unit.Shaft, Bounds: "gt=0,lte=1e7", Basis: Stamped},
	}
)
