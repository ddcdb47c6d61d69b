package record

import "roofside/calc/unit"

// Form is the version of the stored form that this library writes. A record
// of a later form can be read, never rewritten.
const Form = 1

// A Fan is one fan to be replaced and its replacement.
type Fan struct {
	Name      Word
	Step      Choice[Stage] // of the swap, the last one done
	Supply    Choice[Supply]
	Mount     Choice[Mount]
	SameWheel Choice[Answer] // the new wheel is the old one's type, diameter and model

	Altitude   Entry[unit.Length]
	ColdestAir Entry[unit.Temperature] // at the coldest start
	HottestAir Entry[unit.Temperature] // about the raceway

	Target   Target
	Old, New Side
	Card     BeltCard
	Trials   []*Trial // in the order they were made
	Hood     Hood
	Want     Want

	Clamp     Meter[unit.Current]
	Voltmeter Meter[unit.Voltage]
	Edition   Choice[Edition]
	Opening   Opening
	Raceway   Raceway
	Wires     []*Wire
	Box       Box
	Circuit   Circuit
	Checks    [mostChecks]Check
	Handover  Handover

	form  int               // as read; 0 for one made here
	later map[string]string // see later.go
}

// Target is what the new fan is to do.
type Target struct {
	Speed      Entry[unit.Speed] // of the balance report or the design
	TagSpeed   Entry[unit.Speed] // of the drive tag
	Rated      Entry[unit.Speed] // the new fan's, at the design airflow and pressure
	RatedPower Entry[unit.Power] // at its shaft, there
	Use        Choice[Origin]    // overrules the ranking of origins
	Over       Entry[unit.Ratio] // how far above the target a setting may come

	Airflow  Entry[unit.Flow]
	Pressure Entry[unit.Pressure] // static
	Power    Entry[unit.Power]    // at the fan's shaft
	AirTemp  Entry[unit.Temperature]
}

// Side is one of the two fans: its plate, its drive and what was read at it.
type Side struct {
	// The motor's plate.
	MotorPower        Entry[unit.Power]
	MotorVolts        Entry[unit.Voltage] // as the leads are connected
	MotorAmps         Entry[unit.Current] // full load, at those volts
	ServiceFactor     Entry[unit.Ratio]
	ServiceFactorAmps Entry[unit.Current]
	MotorSpeed        Entry[unit.Speed]
	MotorFrequency    Entry[unit.Frequency]
	MinimumAmpacity   Entry[unit.Current] // of the circuit: the fan's own plate, where it says so
	MaximumDevice     Entry[unit.Current] // of overcurrent protection: the same
	PowerFactor       Entry[unit.Ratio]
	Efficiency        Entry[unit.Ratio]
	CoolRise          Choice[Answer] // marked with a temperature rise of 40 °C or less

	// How it is connected and protected.
	Leads         Choice[Leads]
	Rotation      Choice[Rotation]
	RotationLow   Choice[Rotation] // of a two-speed motor's low speed
	RotationLeads Choice[Leads]    // as they stood when it was bumped; none said: 1-2-3
	Protection    Choice[Protection]
	Restart       Choice[Restart]
	Dial          Entry[unit.Current] // of the overload relay

	// The wheel.
	WheelDiameter Entry[unit.Length]
	WheelMax      Entry[unit.Speed]

	// The drive. Diameters are pitch diameters unless their key says outside.
	Section           Choice[Section]
	Groove            Choice[Groove]
	Sheave            Choice[Pitch] // the motor sheave's kind
	MotorSheave       Entry[unit.Length]
	MotorOutside      Entry[unit.Length]
	MotorGap          Entry[unit.Length] // width of the groove at the outside diameter
	GrooveAngle       Entry[unit.Angle]
	FanSheave         Entry[unit.Length]
	FanOutside        Entry[unit.Length]
	Turns             Entry[unit.Turns] // open: as found, or as shipped
	AnchorTurns       Entry[unit.Turns] // two settings whose pitch diameter is stamped
	AnchorPitch       Entry[unit.Length]
	SecondAnchorTurns Entry[unit.Turns]
	SecondAnchorPitch Entry[unit.Length]
	MostTurns         Entry[unit.Turns]
	FlangeLead        Entry[unit.Length] // axial travel of the movable flange in a turn
	BeltNumber        Word
	Belts             Choice[Belts]
	Center            Entry[unit.Length] // shaft center distance at Turns
	TravelToward      Entry[unit.Length] // base travel left toward the fan shaft
	TravelAway        Entry[unit.Length]

	Fit Fit

	// The ratio counted by hand.
	CountFan   Entry[unit.Turns]
	CountMotor Entry[unit.Turns]

	// What was read.
	BeltHealthy Choice[Answer]
	NoLoadAmps  Entry[unit.Current] // with the belt off
	Reading     Reading
}

// Reading is what instruments said at one time.
type Reading struct {
	Speed      Entry[unit.Speed] // of the fan
	MotorTach  Entry[unit.Speed]
	Amps       [3]Entry[unit.Current]
	Volts      [3]Entry[unit.Voltage] // between lines 1-2, 2-3, 3-1
	ClampTurns Entry[unit.Turns]      // turns of the conductor through the clamp; once unless given
	Frequency  Entry[unit.Frequency]
	AirTemp    Entry[unit.Temperature]
	Airflow    Entry[unit.Flow]
	Pressure   Entry[unit.Pressure]
	TippedUp   Choice[Answer] // amps read at a fan tipped up are false
	RunAt      Choice[Pace]   // of a two-speed motor
}

// Trial is one setting of the new drive and what was read at it.
type Trial struct {
	ID       string
	Turns    Entry[unit.Turns]
	At       Moment
	Accepted Choice[Answer]
	Leads    Choice[Leads] // as they stood at the reading
	Reading  Reading
	Belt     BeltReading

	keys []string
}

// BeltCard is what the maker of the new drive's belt says of it.
type BeltCard struct {
	Rating Entry[unit.Power]      // of one belt, corrected for arc and length
	Force  Entry[unit.Force]      // at the middle of the span, for 1/64 of it
	Mass   Entry[unit.LinearMass] // of one belt, for each length
}

// BeltReading is what was read at the belt of one setting, at rest.
type BeltReading struct {
	Age        Choice[BeltAge]
	Force      Entry[unit.Force]  // at the middle of the span,
	Deflection Entry[unit.Length] // pressed in so far
	Frequency  Entry[unit.Frequency]
	Gap        Entry[unit.Length] // of a straightedge along one sheave, at the other
}

// Hood is the hood, the duct and the air that replaces what is exhausted.
type Hood struct {
	Listing      Choice[Listing]
	LabelAirflow Entry[unit.Flow] // what the listed hood's own label asks for
	Kind         Choice[HoodKind]
	Duty         Choice[HoodDuty]
	Length       Entry[unit.Length]
	Airflow      Entry[unit.Flow] // measured at the hood

	DuctWidth    Entry[unit.Length]
	DuctHeight   Entry[unit.Length]
	DuctDiameter Entry[unit.Length]

	MakeUp        Entry[unit.Flow]
	Transfer      Entry[unit.Flow] // air drawn from rooms beside the kitchen
	SpacePressure Entry[unit.Pressure]
}

// Want is what is sought of the fan laws, and at which value.
type Want struct {
	Goal     Choice[Goal]
	Speed    Entry[unit.Speed]
	Airflow  Entry[unit.Flow]
	Pressure Entry[unit.Pressure]
	Power    Entry[unit.Power]
	AirTemp  Entry[unit.Temperature]
}

// NewFan returns a fan of which nothing is known.
func NewFan() *Fan {
	f := &Fan{}
	f.bind()
	return f
}

// bind gives each place its facts, which listing it does.
func (f *Fan) bind() {
	for range f.Places() {
	}
}

// DirectDrive tells whether the wheel stands on its motor's own shaft, so that there
// is no belt. A supply that is only said to be direct says this too, until the mount is
// said.
func (f *Fan) DirectDrive() bool {
	if f.Mount.State() == Known {
		return f.Mount.Value() == OnShaft
	}
	return f.Supply.Value() == Direct
}

// ReadOnly tells whether f was read from a later form than this library
// writes, so that writing it would lose what it doesn't know.
func (f *Fan) ReadOnly() bool { return f.form > Form }

// Left returns the trial the new fan was left at, the last one accepted, or
// nil.
func (f *Fan) Left() *Trial {
	for i := len(f.Trials) - 1; i >= 0; i-- {
		if f.Trials[i].Accepted.Value() == Yes {
			return f.Trials[i]
		}
	}
	return nil
}
