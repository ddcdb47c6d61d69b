package raceway_test

import (
	"math"
	"testing"

	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/raceway"
	"roofside/calc/source"
	"roofside/calc/unit"
)

var mild = raceway.Conditions{
	Edition: raceway.Edition2023, Material: raceway.Copper, Insulation: raceway.THWN2, Location: raceway.Wet,
	Ambient: unit.Celsius(30), Carrying: 3, Use: raceway.Run, Exposure: raceway.Shaded, Terminals: raceway.Column60,
}

func with(change func(c *raceway.Conditions)) raceway.Conditions {
	c := mild
	change(&c)
	return c
}

// By hand from the tables: 30 A of size 12 in the 90 °C column, 25 A in that of
// 75 °C, 20 A in that of 60 °C.
func TestAmpacityByHand(t *testing.T) {
	for _, test := range []struct {
		name       string
		conditions raceway.Conditions
		corrected  unit.Current
		usable     unit.Current
	}{
		{"as the table has it", mild, 30, 20},
		{"terminals for 75", with(func(c *raceway.Conditions) { c.Terminals = raceway.Column75 }), 30, 25},
		{"six conductors, 80 %", with(func(c *raceway.Conditions) { c.Carrying = 6 }), 24, 20},
		{"ten conductors, 50 %", with(func(c *raceway.Conditions) { c.Carrying = 10 }), 15, 15},
		{"ten in a nipple", with(func(c *raceway.Conditions) { c.Carrying, c.Use = 10, raceway.Nipple }), 30, 20},
		{"50 °C and six, 0.82 · 0.80", with(func(c *raceway.Conditions) { c.Ambient, c.Carrying = unit.Celsius(50), 6 }), 19.68, 19.68},
		{"cold, 1.15", with(func(c *raceway.Conditions) { c.Ambient = unit.Celsius(5) }), 34.5, 20},
		{"XHHW wet, 75 °C", with(func(c *raceway.Conditions) { c.Insulation = raceway.XHHW }), 25, 20},
		{"XHHW dry, 90 °C", with(func(c *raceway.Conditions) { c.Insulation, c.Location = raceway.XHHW, raceway.Dry }), 30, 20},
		{"unmarked as TW, 0.71 at 45 °C", with(func(c *raceway.Conditions) { c.Insulation, c.Ambient = raceway.Unmarked, unit.Celsius(45) }), 14.2, 14.2},
		{"aluminum", with(func(c *raceway.Conditions) { c.Material = raceway.Aluminum }), 25, 15},
		{"clad as aluminum", with(func(c *raceway.Conditions) { c.Material = raceway.Clad }), 25, 15},
		{"sun, 1/2 in, 73 °C: 0.50", with(func(c *raceway.Conditions) {
			c.Ambient, c.Exposure, c.Height = unit.Celsius(40), raceway.Rooftop, 0.5*unit.Inch
		}), 15, 15},
		{"sun, XHHW-2 exempt: 0.91", with(func(c *raceway.Conditions) {
			c.Insulation, c.Ambient, c.Exposure = raceway.XHHW2, unit.Celsius(40), raceway.Rooftop
		}), 27.3, 20},
	} {
		a, err := raceway.AmpacityOf("12", test.conditions)
		if err != nil {
			t.Errorf("%s: %v", test.name, err)
			continue
		}
		check.Within(t, test.name+", corrected", a.Corrected, test.corrected, 1e-9)
		check.Within(t, test.name+", usable", a.Usable, test.usable, 1e-9)
		check.Within(t, test.name+", steps", a.Corrected, a.Table*unit.Current(a.Ambient*a.Adjusted), 1e-12)
		if a.Edition != test.conditions.Edition || a.Size != "12" || a.Known != source.Memory {
			t.Errorf("%s: %+v", test.name, a)
		}
	}
}

func TestAmpacityRefuses(t *testing.T) {
	for _, test := range []struct {
		name       string
		size       raceway.WireSize
		conditions raceway.Conditions
		parameter  string
		rule       limit.Rule
	}{
		{"size", "13", mild, "size", limit.NotTabulated},
		{"no figure at 60 °C for the terminals", "16", mild, "size", limit.NotTabulated},
		{"aluminum 14", "14", with(func(c *raceway.Conditions) { c.Material = raceway.Aluminum }), "size", limit.NotTabulated},
		{"material", "12", with(func(c *raceway.Conditions) { c.Material = "iron" }), "Material", limit.NotTabulated},
		{"edition", "12", with(func(c *raceway.Conditions) { c.Edition = "2014" }), "Edition", limit.NotTabulated},
		{"edition in the sun", "12", with(func(c *raceway.Conditions) { c.Edition, c.Exposure = "2014", raceway.Rooftop }), "Edition", limit.NotTabulated},
		{"THHN in the wet", "12", with(func(c *raceway.Conditions) { c.Insulation = raceway.THHN }), "Insulation", raceway.DryOnly},
		{"bare", "12", with(func(c *raceway.Conditions) { c.Insulation = raceway.Bare }), "Insulation", limit.NotTabulated},
		{"location", "12", with(func(c *raceway.Conditions) { c.Location = "damp" }), "Location", limit.NotTabulated},
		{"too hot", "12", with(func(c *raceway.Conditions) { c.Ambient = unit.Celsius(86) }), "Ambient", raceway.TooHot},
		{"too hot for 60 °C", "12", with(func(c *raceway.Conditions) { c.Insulation, c.Ambient = raceway.TW, unit.Celsius(56) }), "Ambient", raceway.TooHot},
		{"no air", "12", with(func(c *raceway.Conditions) { c.Ambient = 0 }), "Ambient", limit.NotPositive},
		{"none carrying", "12", with(func(c *raceway.Conditions) { c.Carrying = 0 }), "Carrying", limit.NotPositive},
		{"use", "12", with(func(c *raceway.Conditions) { c.Use = "" }), "Use", limit.NotTabulated},
		{"exposure", "12", with(func(c *raceway.Conditions) { c.Exposure = "" }), "Exposure", limit.NotTabulated},
		{"height", "12", with(func(c *raceway.Conditions) { c.Height = -1 }), "Height", limit.Negative},
		{"terminals", "12", with(func(c *raceway.Conditions) { c.Terminals = 70 }), "Terminals", limit.NotTabulated},
	} {
		_, err := raceway.AmpacityOf(test.size, test.conditions)
		check.Broken(t, test.name, err, test.parameter, test.rule)
	}
	_, err := raceway.SmallestWire(0, mild)
	check.Broken(t, "no current", err, "current", limit.NotPositive)
	_, err = raceway.SmallestWire(196, mild)
	check.Broken(t, "more than 4/0 at 60 °C", err, "current", raceway.NoSizeFits)
	_, err = raceway.CheckConductor(raceway.Demand{}, "12", mild)
	check.Broken(t, "no demand", err, "Current", limit.NotPositive)
}

func TestSmallestWireIsSmallest(t *testing.T) {
	for _, material := range []raceway.Material{raceway.Copper, raceway.Aluminum} {
		c := with(func(c *raceway.Conditions) { c.Material = material })
		for need := unit.Current(1); need <= 150; need++ {
			a := check.Value[raceway.Ampacity](t)(raceway.SmallestWire(need, c))
			if a.Usable < need {
				t.Errorf("%s, %v A: %s carries %v A", material, need, a.Size, a.Usable)
			}
			last := raceway.WireSize("")
			for _, size := range raceway.WireSizes()[2:] {
				if size == a.Size {
					break
				}
				last = size
			}
			if last == "" {
				continue
			}
			if smaller, err := raceway.AmpacityOf(last, c); err == nil && smaller.Usable >= need {
				t.Errorf("%s, %v A: %s would do for %s", material, need, last, a.Size)
			}
		}
	}
	edge := check.Value[raceway.Check](t)(raceway.CheckConductor(raceway.Demand{Current: 20}, "12", mild))
	over := check.Value[raceway.Check](t)(raceway.CheckConductor(raceway.Demand{Current: 25}, "12", mild))
	if !edge.Enough || edge.Margin != 0 || over.Enough || math.Abs(float64(over.Margin+0.2)) > 1e-12 {
		t.Errorf("20 A of 20 A: %+v; of 25 A: %+v", edge, over)
	}
}

func TestRooftopByEdition(t *testing.T) {
	for _, test := range []struct {
		edition    raceway.Edition
		inches     unit.Length
		insulation raceway.Insulation
		want       unit.TemperatureDifference
		known      source.Known
	}{
		{raceway.Edition2017, 0.874, raceway.THWN2, 33, source.LookedUp}, // 310.15(B)(3)(c)
		{raceway.Edition2017, 0.875, raceway.THWN2, 0, source.LookedUp},
		{raceway.Edition2017, 0, raceway.XHHW2, 0, source.LookedUp}, // its exception
		{raceway.Edition2020, 0, raceway.THWN2, 33, source.LookedUp},
		{raceway.Edition2020, 0.80, raceway.THWN2, 33, source.LookedUp},
		{raceway.Edition2020, 0.875, raceway.THWN2, 0, source.LookedUp},
		{raceway.Edition2023, 0.74, raceway.THWN2, 33, source.LookedUp},
		{raceway.Edition2023, 0.75, raceway.THWN2, 0, source.LookedUp},
		{raceway.Edition2023, 0, raceway.XHHW2, 0, source.LookedUp},
		{raceway.Edition2020, 0, raceway.XHHW2, 0, source.Memory},
		{raceway.Edition2023, 0, raceway.XHHW, 33, source.LookedUp},
		{raceway.Edition2023, 0, raceway.Unmarked, 33, source.LookedUp},
	} {
		a, err := raceway.RooftopAdder(test.edition, test.inches*unit.Inch, test.insulation)
		if err != nil || a != (raceway.Adder{Edition: test.edition, Difference: test.want, Known: test.known}) {
			t.Errorf("%s, %v in, %s: %+v, %v", test.edition, test.inches, test.insulation, a, err)
		}
	}
	for inches, want := range map[unit.Length]unit.TemperatureDifference{0: 33, 0.5: 33, 0.51: 22, 3.5: 22, 3.6: 17, 12: 17, 13: 14, 36: 14, 37: 0} {
		if a, err := raceway.RooftopAdderByHeight(inches * unit.Inch); err != nil || a.Difference != want || a.Known != source.LookedUp {
			t.Errorf("%v in up to 2014: %+v, %v", inches, a, err)
		}
	}
}

func TestAmbientBands(t *testing.T) {
	for celsius, want := range map[float64]unit.Ratio{-40: 1.15, 10: 1.15, 10.5: 1.12, 15: 1.12, 30: 1, 30.5: 0.96, 35: 0.96, 36: 0.91, 85: 0.29} {
		if k, err := raceway.AmbientFactor(unit.Celsius(celsius), raceway.Column90); err != nil || k != want {
			t.Errorf("%v °C: %v, %v", celsius, k, err)
		}
	}
	for n, want := range map[int]float64{1: 1, 3: 1, 4: 0.8, 6: 0.8, 7: 0.7, 9: 0.7, 10: 0.5, 20: 0.5, 21: 0.45, 30: 0.45, 31: 0.4, 40: 0.4, 41: 0.35, 500: 0.35} {
		if k, err := raceway.AdjustmentFactor(n); err != nil || math.Abs(float64(k)-want) > 1e-12 {
			t.Errorf("%d: %v, %v", n, k, err)
		}
	}
}

func TestMotorCurrents(t *testing.T) {
	for _, test := range []struct {
		name      string
		phases    raceway.Phases
		hp        unit.Power
		volts     unit.Voltage
		want      unit.Current
		parameter string
	}{
		{"system volts, 480", raceway.ThreePhase, 5, 480, 7.6, ""},
		{"system volts, 240", raceway.ThreePhase, 5, 240, 15.2, ""},
		{"1/6 hp", raceway.SinglePhase, 1.0 / 6, 115, 4.4, ""},
		{"1/3 hp", raceway.SinglePhase, 1.0 / 3, 230, 3.6, ""},
		{"0.33 hp", raceway.SinglePhase, 0.33, 230, 3.6, ""},
		{"3.7 kW", raceway.ThreePhase, 3.7 / 0.7457, 460, 7.6, ""},
		{"1.1 kW", raceway.ThreePhase, 1.1 / 0.7457, 460, 3.0, ""},
		{"5.2 hp", raceway.ThreePhase, 5.2, 460, 0, "power"},
		{"between columns", raceway.ThreePhase, 5, 380, 0, "volts"},
		{"no such column of one phase", raceway.SinglePhase, 5, 460, 0, "volts"},
		{"empty cell", raceway.ThreePhase, 5, 115, 0, "volts"},
		{"no such row", raceway.ThreePhase, 4, 460, 0, "power"},
		{"1/4 hp on three phases", raceway.ThreePhase, 0.25, 460, 0, "power"},
		{"phases", "two", 5, 460, 0, "phases"},
	} {
		i, err := raceway.TableCurrent(test.phases, test.hp*unit.Horsepower, test.volts)
		if test.parameter != "" {
			check.Broken(t, test.name, err, test.parameter, limit.NotTabulated)
		} else if err != nil || i != test.want {
			t.Errorf("%s: %v, %v, want %v", test.name, i, err, test.want)
		}
	}
	plate := check.Value[raceway.Demand](t)(raceway.DemandFromPlate(17))
	if plate != (raceway.Demand{Current: 17, Basis: raceway.FromPlate, Known: source.Memory}) {
		t.Errorf("%+v", plate)
	}
}

// Fuses come in sizes that breakers do not; breakers of 10 A came in 2023.
func TestStandardRatings(t *testing.T) {
	for _, test := range []struct {
		current unit.Current
		device  raceway.Device
		edition raceway.Edition
		want    unit.Current
	}{
		{0.5, raceway.TimeDelayFuse, raceway.Edition2017, 1}, {2, raceway.NontimeFuse, raceway.Edition2023, 3},
		{7, raceway.TimeDelayFuse, raceway.Edition2020, 10}, {7, raceway.InverseTimeBreaker, raceway.Edition2020, 15},
		{7, raceway.InverseTimeBreaker, raceway.Edition2017, 15}, {7, raceway.InverseTimeBreaker, raceway.Edition2023, 10},
		{15, raceway.InverseTimeBreaker, raceway.Edition2023, 15}, {600.5, raceway.NontimeFuse, raceway.Edition2023, 601},
		{600.5, raceway.InverseTimeBreaker, raceway.Edition2023, 700}, {6000, raceway.InverseTimeBreaker, raceway.Edition2023, 6000},
		{70.00000000001, raceway.InverseTimeBreaker, raceway.Edition2023, 70}, // 28 · 2.5 may end so
	} {
		if r, err := raceway.StandardRating(test.current, test.device, test.edition); err != nil || r != test.want {
			t.Errorf("%v A, %s, %s: %v, %v, want %v", test.current, test.device, test.edition, r, err, test.want)
		}
	}
	_, err := raceway.StandardRating(6001, raceway.InverseTimeBreaker, raceway.Edition2023)
	check.Broken(t, "largest", err, "current", raceway.NoSizeFits)
	_, err = raceway.StandardRating(6, "relay", raceway.Edition2023)
	check.Broken(t, "device", err, "device", limit.NotTabulated)
	_, err = raceway.StandardRating(6, raceway.NontimeFuse, "")
	check.Broken(t, "edition", err, "edition", limit.NotTabulated)
}

func TestOvercurrentByHand(t *testing.T) {
	for _, test := range []struct {
		name                             string
		current                          unit.Current
		device                           raceway.Device
		motor                            raceway.MotorType
		edition                          raceway.Edition
		computed, rating, greatest, last unit.Current
	}{
		{"nontime, 300 and 400 %", 7.6, raceway.NontimeFuse, raceway.SquirrelCage, raceway.Edition2023, 22.8, 25, 30.4, 30},
		{"over 100 A, 300 %", 120, raceway.InverseTimeBreaker, raceway.SquirrelCage, raceway.Edition2020, 300, 300, 360, 350},
		{"at 100 A, 400 %", 100, raceway.InverseTimeBreaker, raceway.SquirrelCage, raceway.Edition2020, 250, 250, 400, 400},
		{"wound rotor, 150 %", 20, raceway.TimeDelayFuse, raceway.WoundRotor, raceway.Edition2023, 30, 30, 45, 45},
		{"small motor, none small enough", 1.1, raceway.InverseTimeBreaker, raceway.DesignBEfficient, raceway.Edition2020, 2.75, 15, 4.4, 0},
		{"small motor, fuse", 1.1, raceway.TimeDelayFuse, raceway.DesignBEfficient, raceway.Edition2020, 1.925, 3, 2.475, 1},
		{"fuses to 600 A", 150, raceway.NontimeFuse, raceway.SquirrelCage, raceway.Edition2023, 450, 450, 600, 600},
		{"not above 600 A", 160, raceway.NontimeFuse, raceway.SquirrelCage, raceway.Edition2023, 480, 500, 640, 600},
	} {
		o, err := raceway.LargestOvercurrent(test.current, test.device, test.motor, test.edition)
		if err != nil {
			t.Errorf("%s: %v", test.name, err)
			continue
		}
		check.Within(t, test.name+", computed", o.Computed, test.computed, 1e-9)
		check.Within(t, test.name+", greatest", o.Greatest, test.greatest, 1e-9)
		if o.Rating != test.rating || o.Last != test.last || o.Edition != test.edition || o.Basis != raceway.FromTable {
			t.Errorf("%s: %+v", test.name, o)
		}
	}
	for motor, want := range map[raceway.MotorType]unit.Current{raceway.SquirrelCage: 80, raceway.DesignBEfficient: 110, raceway.DirectCurrent: 25} {
		if i, err := raceway.InstantaneousTrip(10, motor); err != nil || math.Abs(float64(i-want)) > 1e-9 {
			t.Errorf("%s: %v, %v", motor, i, err)
		}
	}
	_, err := raceway.LargestOvercurrent(10, raceway.TimeDelayFuse, "stepper", raceway.Edition2023)
	check.Broken(t, "motor", err, "motor", limit.NotTabulated)
	for most, want := range map[unit.Current]unit.Current{20: 20, 24.9: 20, 10: 10} {
		if o, err := raceway.OvercurrentFromPlate(most, raceway.InverseTimeBreaker, raceway.Edition2023); err != nil || o.Rating != want || o.Basis != raceway.FromPlate {
			t.Errorf("plate %v: %+v, %v", most, o, err)
		}
	}
	_, err = raceway.OvercurrentFromPlate(9, raceway.InverseTimeBreaker, raceway.Edition2023)
	check.Broken(t, "below the smallest", err, "most", raceway.NoSizeFits)
}

func TestGrounds(t *testing.T) {
	for _, test := range []struct {
		rating      unit.Current
		material    raceway.Material
		circuit     raceway.WireSize
		edition     raceway.Edition
		table, size raceway.WireSize
		known       source.Known
	}{
		{15, raceway.Copper, "14", raceway.Edition2023, "14", "14", source.LookedUp},
		{15.5, raceway.Copper, "12", raceway.Edition2023, "12", "12", source.LookedUp},
		{40, raceway.Copper, "14", raceway.Edition2020, "10", "14", source.LookedUp},
		{100, raceway.Aluminum, "1", raceway.Edition2017, "6", "6", source.LookedUp},
		{1200, raceway.Aluminum, "4/0", raceway.Edition2023, "250 kcmil", "4/0", source.LookedUp},
	} {
		g, err := raceway.GroundFor(test.rating, test.material, test.circuit, test.edition)
		if err != nil || g != (raceway.GroundWire{Edition: test.edition, Table: test.table, Size: test.size, Known: test.known}) {
			t.Errorf("%v A: %+v, %v", test.rating, g, err)
		}
	}
	_, err := raceway.GroundFor(6001, raceway.Copper, "4/0", raceway.Edition2023)
	check.Broken(t, "above the table", err, "rating", limit.NotTabulated)
	_, err = raceway.GroundFor(20, "iron", "12", raceway.Edition2023)
	check.Broken(t, "material", err, "material", limit.NotTabulated)
	_, err = raceway.GroundFor(20, raceway.Copper, "13", raceway.Edition2023)
	check.Broken(t, "circuit", err, "circuit", limit.NotTabulated)
	// 6530 cmil · 26240 / 10380 = 16507 cmil: size 8 has 16510.
	if size, err := raceway.GroundRaised("12", "10", "6"); err != nil || size != "8" {
		t.Errorf("12 for 10 raised to 6: %s, %v", size, err)
	}
	// 10380 cmil · 26240 / 16510 = 16497 cmil, and 41740 / 16510: 26242 cmil, just over size 6.
	for installed, want := range map[raceway.WireSize]raceway.WireSize{"8": "10", "6": "8", "4": "4"} {
		if size, err := raceway.GroundRaised("10", "8", installed); err != nil || size != want {
			t.Errorf("10 for 8 raised to %s: %s, %v", installed, size, err)
		}
	}
	_, err = raceway.GroundRaised("10", "8", "10")
	check.Broken(t, "made smaller", err, "installed", limit.OutOfRange)
	_, err = raceway.GroundRaised("4/0", "14", "4/0")
	check.Broken(t, "past the table", err, "installed", raceway.NoSizeFits)
	for _, test := range []struct {
		size     raceway.WireSize
		material raceway.Material
		edition  raceway.Edition
		want     unit.Current
	}{{"14", raceway.Copper, raceway.Edition2017, 15}, {"10", raceway.Aluminum, raceway.Edition2020, 25}, {"14", raceway.Clad, raceway.Edition2023, 10}, {"12", raceway.Clad, raceway.Edition2017, 15}} {
		if i, err := raceway.SmallConductorLimit(test.size, test.material, test.edition); err != nil || i != test.want {
			t.Errorf("%s %s %s: %v, %v", test.size, test.material, test.edition, i, err)
		}
	}
	_, err = raceway.SmallConductorLimit("14", raceway.Clad, raceway.Edition2020)
	check.Broken(t, "clad 14 before 2023", err, "material", limit.NotTabulated)
	_, err = raceway.SmallConductorLimit("8", raceway.Copper, raceway.Edition2023)
	check.Broken(t, "not small", err, "size", limit.NotTabulated)
}

func TestFlexibleConduit(t *testing.T) {
	for _, test := range []struct {
		conduit  raceway.Conduit
		size     raceway.TradeSize
		rating   unit.Current
		feet     unit.Length
		mounting raceway.Mounting
		want     raceway.PathReason
	}{
		{raceway.FMC, "3/4", 20, 6, raceway.Still, raceway.PathServes},
		{raceway.FMC, "3/4", 25, 6, raceway.Still, raceway.PathRating},
		{raceway.FMC, "1-1/4", 20, 6, raceway.Still, raceway.PathServes},
		{raceway.FMC, "1-1/2", 15, 1, raceway.Still, raceway.PathSize},
		{raceway.LFMC, "2", 15, 1, raceway.Still, raceway.PathSize},
		{raceway.LFMC, "3/8", 20, 3, raceway.Still, raceway.PathServes},
		{raceway.LFMC, "1/2", 25, 3, raceway.Still, raceway.PathRating},
		{raceway.LFMC, "1-1/4", 60, 6, raceway.Still, raceway.PathServes},
		{raceway.LFMC, "1/2", 20.1, 3, raceway.Still, raceway.PathRating},
		{raceway.LFMC, "1", 60.1, 3, raceway.Still, raceway.PathRating},
		{raceway.LFMC, "3/4", 60, 6.1, raceway.Still, raceway.PathLength},
		{raceway.LFMC, "3/4", 20, 3, raceway.Flexing, raceway.PathFlexes},
		{raceway.LFNCB, "3/4", 20, 3, raceway.Still, raceway.PathNonmetallic},
	} {
		p, err := raceway.FlexAsGround(test.conduit, test.size, test.rating, test.feet*unit.Foot, test.mounting)
		if err != nil || p.Reason != test.want || p.Wire != (test.want != raceway.PathServes) {
			t.Errorf("%+v: %+v, %v", test, p, err)
		}
	}
	_, err := raceway.FlexAsGround(raceway.EMT, "1/2", 20, 1, raceway.Still)
	check.Broken(t, "rigid", err, "conduit", limit.OutOfRange)
	_, err = raceway.FlexAsGround(raceway.FMC, "1/2", 20, 1, "")
	check.Broken(t, "mounting", err, "mounting", limit.NotTabulated)
	for conduit, feet := range map[raceway.Conduit]unit.Length{raceway.FMC: 4, raceway.LFMC: 4, raceway.LFNCA: 3} {
		if l, err := raceway.UnsecuredMost(conduit, "2"); err != nil || l != feet*unit.Foot {
			t.Errorf("2 %s: %v, %v", conduit, l, err)
		}
	}
}

func TestDrop(t *testing.T) {
	drop := check.Value[unit.Voltage](t)
	z := check.Value[raceway.Impedance](t)(raceway.ImpedanceOf("8", raceway.Copper, raceway.WallSteel))
	three := drop(raceway.VoltageDrop(raceway.ThreePhase, 20, 100*unit.Foot, z, 0.85))
	one := drop(raceway.VoltageDrop(raceway.SinglePhase, 20, 100*unit.Foot, z, 0.85))
	check.Within(t, "two wires to √3", one/three, unit.Voltage(2/math.Sqrt(3)), 1e-12)
	check.Within(t, "by length and current", drop(raceway.VoltageDrop(raceway.ThreePhase, 40, 300*unit.Foot, z, 0.85)), 6*three, 1e-12)
	check.Within(t, "resistance alone at power factor 1", drop(raceway.VoltageDrop(raceway.SinglePhase, 10, 1000*unit.Foot, z, 1)), 15.6, 1e-9)
	// A power factor of 0.6 has a sine of 0.8: 2 · 10 · (0.78 · 0.6 + 0.065 · 0.8) = 10.4 V.
	check.Within(t, "at 0.6", drop(raceway.VoltageDrop(raceway.SinglePhase, 10, 1000*unit.Foot, z, 0.6)), 10.4, 1e-9)
	check.Within(t, "no run", drop(raceway.VoltageDrop(raceway.ThreePhase, 10, 0, z, 0.85)), 0, 0)
	_, err := raceway.VoltageDrop(raceway.ThreePhase, 10, 1, z, 1.005)
	check.Broken(t, "power factor", err, "powerFactor", limit.OutOfRange)
	_, err = raceway.VoltageDrop("two", 10, 1, z, 0.85)
	check.Broken(t, "phases", err, "phases", limit.NotTabulated)
	_, err = raceway.ImpedanceOf("14", raceway.Aluminum, raceway.WallPVC)
	check.Broken(t, "empty cell", err, "size", limit.NotTabulated)
	_, err = raceway.ImpedanceOf("12", raceway.Copper, "lead")
	check.Broken(t, "wall", err, "wall", limit.NotTabulated)

	k := check.Value[unit.Resistivity](t)(raceway.ResistivityOf("8", raceway.Stranded, raceway.Copper))
	p := check.Value[raceway.Property](t)(raceway.PropertyOf("8", raceway.Stranded))
	byK := drop(raceway.VoltageDropByK(raceway.ThreePhase, 20, 100*unit.Foot, k, p.Area))
	check.Within(t, "K form is direct-current resistance", byK, unit.Voltage(math.Sqrt(3)*20*0.1*0.778), 1e-9)
	check.Within(t, "area back", check.Value[unit.Area](t)(raceway.AreaForDrop(raceway.ThreePhase, 20, 100*unit.Foot, k, byK)), p.Area, 1e-15)
	r := check.Value[unit.LineImpedance](t)(raceway.ResistanceOf(k, p.Area))
	check.Within(t, "K over area", r.In(unit.OhmPerThousandFeet), 0.778, 1e-9)
	there := check.Value[unit.LineImpedance](t)(raceway.ResistanceAt(r, raceway.CopperAt75, raceway.PropertyTemperature, raceway.PropertyTemperature))
	check.Within(t, "at its own temperature", there, r, 0)
	// Aluminum of size 8: 1.28 Ω/kft · 16510 cmil.
	al := check.Value[unit.Resistivity](t)(raceway.ResistivityOf("8", raceway.Stranded, raceway.Aluminum))
	check.Within(t, "aluminum", al.In(unit.OhmCircularMilPerFoot), 21.1328, 1e-9)
	_, err = raceway.ResistivityOf("8", raceway.Stranded, raceway.Clad)
	check.Broken(t, "clad", err, "material", limit.NotTabulated)
	_, err = raceway.ResistanceAt(r, 1, raceway.PropertyTemperature, 1)
	check.Broken(t, "nothing left", err, "t", limit.OutOfRange)
	walls := map[raceway.Conduit]raceway.Wall{raceway.EMT: raceway.WallSteel, raceway.LFMC: raceway.WallSteel, raceway.PVC80: raceway.WallPVC, raceway.LFNCB: raceway.WallPVC}
	for conduit, want := range walls {
		if w, err := raceway.WallOf(conduit); err != nil || w != want {
			t.Errorf("%s: %s, %v", conduit, w, err)
		}
	}
}

// Check values of the gauge: area and the metric sizes about it, computed apart.
func TestGauge(t *testing.T) {
	for _, test := range []struct {
		size             raceway.WireSize
		mm, cmil         float64
		nearest, atLeast unit.Area
	}{
		{"18", 1.0237, 1624.3, 0.75, 1}, {"12", 2.0525, 6529.9, 4, 4}, {"8", 3.2636, 16509.7, 10, 10}, {"3", 5.8273, 52634.8, 25, 35},
		{"2", 6.5437, 66371.3, 35, 35}, {"1/0", 8.2515, 105534.5, 50, 70}, {"4/0", 11.684, 211600, 120, 120},
	} {
		d := check.Value[unit.Length](t)(raceway.GaugeDiameter(test.size))
		a := check.Value[unit.Area](t)(raceway.GaugeArea(test.size))
		check.Within(t, string(test.size)+" in mm", d.In(unit.Millimeter), test.mm, 0.00006)
		check.Within(t, string(test.size)+" in cmil", a.In(unit.CircularMil), test.cmil, 0.06)
		nearest, atLeast, err := raceway.NearestMetric(a)
		if err != nil || math.Abs(nearest.Area.In(unit.SquareMillimeter)-float64(test.nearest)) > 1e-9 || math.Abs(atLeast.Area.In(unit.SquareMillimeter)-float64(test.atLeast)) > 1e-9 {
			t.Errorf("%s: %v and %v, %v", test.size, nearest, atLeast, err)
		}
	}
	_, _, err := raceway.NearestMetric(130 * unit.SquareMillimeter)
	check.Broken(t, "beyond the table", err, "area", raceway.NoSizeFits)
	_, err = raceway.WireForArea(211_601 * unit.CircularMil)
	check.Broken(t, "beyond 4/0", err, "area", raceway.NoSizeFits)
}
