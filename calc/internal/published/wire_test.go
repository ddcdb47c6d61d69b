package published_test

import (
	"roofside/calc/airflow"
	"roofside/calc/drive"
	. "roofside/calc/internal/published"
	"roofside/calc/raceway"
	"roofside/calc/unit"
)

var wireAnswers = map[string]answer{
	"B05": tableCurrent, "B06": tableCurrent, "B07": tableCurrent, "B09": tableCurrent, "B10": tableCurrent,
	"B11": tableCurrent, "B13": tableCurrent, "B14": tableCurrent, "B15": tableCurrent,
	"B17": func(c Case) Results {
		d := must(raceway.DemandFromTable(In[unit.Current](c, "table")))
		k := mild
		k.Terminals = raceway.Column(count(c, "column"))
		return Results{"demand": d.Current, "size": gauge(must(raceway.SmallestWire(d.Current, k)).Size)}
	},
	"B18": func(c Case) Results {
		i := must(raceway.TableCurrent(raceway.ThreePhase, In[unit.Power](c, "power"), In[unit.Voltage](c, "volts")))
		d := must(raceway.DemandFromTable(i))
		at60 := must(raceway.CheckConductor(d, wire(c, "size"), mild))
		warm := mild
		warm.Terminals = raceway.Column75
		at75 := must(raceway.CheckConductor(d, wire(c, "size"), warm))
		return Results{
			"current": i, "demand": d.Current, "least_at_60": gauge(must(raceway.SmallestWire(d.Current, mild)).Size),
			"at_60": at60.Ampacity.Usable, "enough_at_60": yes(at60.Enough), "at_75": at75.Ampacity.Usable, "enough_at_75": yes(at75.Enough),
		}
	},
	"B19": demandOfPart, "B20": demandOfPart,
	"B21": largestDevice, "B22": largestDevice, "B23": largestDevice, "B24": largestDevice,
	"B25": func(c Case) Results {
		fuse, breaker := devices(c)
		return Results{"fuse": fuse.Greatest, "fuse_rating": fuse.Last, "breaker": breaker.Greatest, "breaker_rating": breaker.Last}
	},
	"B28": func(c Case) Results {
		return Results{"least": must(raceway.DisconnectLeast(In[unit.Current](c, "table")))}
	},
	"B29": func(c Case) Results {
		return Results{"most": raceway.InSightMost, "in_sight": yes(In[unit.Length](c, "distance") <= raceway.InSightMost)}
	},
	"B31": func(c Case) Results {
		rating, circuit := In[unit.Current](c, "rating"), wire(c, "circuit")
		return Results{
			"copper":   gauge(must(raceway.GroundFor(rating, raceway.Copper, circuit, raceway.Edition2023)).Size),
			"aluminum": gauge(must(raceway.GroundFor(rating, raceway.Aluminum, circuit, raceway.Edition2023)).Size),
		}
	},
	"B32": func(c Case) Results {
		g := must(raceway.GroundFor(In[unit.Current](c, "rating"), raceway.Copper, wire(c, "circuit"), raceway.Edition2020))
		return Results{"table": gauge(g.Table), "size": gauge(g.Size)}
	},
	"B33": func(c Case) Results {
		return Results{"rating": must(raceway.StandardRating(In[unit.Current](c, "current"), raceway.InverseTimeBreaker, raceway.Edition2023))}
	},
	"B35": func(c Case) Results {
		load := must(airflow.LoadSlip(In[unit.Speed](c, "sync"), In[unit.Speed](c, "plate"), In[unit.Speed](c, "n")))
		return Results{"load": load, "output": In[unit.Power](c, "power") * unit.Power(load)}
	},
	"B38": func(c Case) Results {
		sync := must(drive.SynchronousSpeed(In[unit.Frequency](c, "f"), count(c, "poles")))
		return Results{"sync": sync, "behind": sync - In[unit.Speed](c, "n")}
	},
	"B54": func(c Case) Results {
		i := must(raceway.TableCurrent(raceway.ThreePhase, In[unit.Power](c, "power"), In[unit.Voltage](c, "volts")))
		o := must(raceway.LargestOvercurrent(i, raceway.NontimeFuse, raceway.SquirrelCage, raceway.Edition2023))
		return Results{"current": i, "demand": must(raceway.DemandFromTable(i)).Current, "fuse": o.Computed, "fuse_rating": o.Rating}
	},
	"R05": func(c Case) Results {
		i := must(raceway.TableCurrent(raceway.ThreePhase, In[unit.Power](c, "power"), In[unit.Voltage](c, "volts")))
		d := must(raceway.DemandFromTable(i))
		o := must(raceway.LargestOvercurrent(i, raceway.InverseTimeBreaker, raceway.SquirrelCage, raceway.Edition2023))
		return Results{
			"current": i, "demand": d.Current, "size": gauge(must(raceway.SmallestWire(d.Current, mild)).Size),
			"breaker": o.Computed, "breaker_rating": o.Rating,
		}
	},
	"R10": func(c Case) Results {
		return Results{"size": gauge(must(raceway.GroundRaised(wire(c, "ground"), wire(c, "needed"), wire(c, "installed"))))}
	},
	"R11": func(c Case) Results {
		return Results{"trip": must(raceway.InstantaneousTrip(In[unit.Current](c, "current"), raceway.SquirrelCage))}
	},
	"R13": func(c Case) Results {
		o := must(raceway.OvercurrentFromPlate(In[unit.Current](c, "most"), raceway.InverseTimeBreaker, raceway.Edition2023))
		return Results{"rating": o.Rating}
	},
	"R19": func(c Case) Results {
		return Results{"demand": must(raceway.DemandFromPlate(In[unit.Current](c, "minimum"))).Current}
	},
	"R07": func(c Case) Results {
		d := must(raceway.DemandFromTable(In[unit.Current](c, "table")))
		k := mild
		k.Terminals = raceway.Column(count(c, "column"))
		check := must(raceway.CheckConductor(d, wire(c, "size"), k))
		return Results{"demand": d.Current, "table_75": check.Ampacity.Usable, "enough": yes(check.Enough)}
	},

	"C01": ampacity, "C02": ampacity,
	"C04": ambientFactor, "C05": ambientFactor,
	"C06": func(c Case) Results {
		i, column, t := In[unit.Current](c, "current"), raceway.Column(count(c, "column")), In[unit.Temperature](c, "ambient")
		return Results{
			"equation": i * unit.Current(must(raceway.AmbientFactorByEquation(t, column))),
			"table":    i * unit.Current(must(raceway.AmbientFactor(t, column))),
		}
	},
	"C07": func(c Case) Results { return Results{"factor": must(raceway.AdjustmentFactor(count(c, "carrying")))} },
	"C09": rooftop, "C10": rooftop,
	"C11": func(c Case) Results {
		adder := must(raceway.RooftopAdderByHeight(In[unit.Length](c, "height"))).Difference
		t := In[unit.Temperature](c, "outdoor").Plus(adder)
		return Results{"adder": adder, "effective": t, "factor": float64(must(raceway.AmbientFactor(t, raceway.Column90)))}
	},
	"C12": func(c Case) Results {
		return Results{"adder": must(raceway.RooftopAdder(edition(c), In[unit.Length](c, "height"), raceway.Insulation(Word(c, "insulation")))).Difference}
	},
	"C13": func(c Case) Results {
		return Results{"most": must(raceway.SmallConductorLimit(wire(c, "size"), raceway.Copper, edition(c)))}
	},
	"C15": func(c Case) Results {
		return Results{"resistance": must(raceway.PropertyOf(wire(c, "size"), raceway.Build(Word(c, "build")))).Copper}
	},
	"C16": func(c Case) Results {
		return Results{"k": must(raceway.ResistivityOf(wire(c, "size"), raceway.Build(Word(c, "build")), raceway.Copper))}
	},
	"C17": func(c Case) Results {
		z := must(raceway.ImpedanceOf(wire(c, "size"), raceway.Copper, raceway.Wall(Word(c, "wall"))))
		return Results{"resistance": z.Resistance, "reactance": z.Reactance}
	},
	"C18": func(c Case) Results {
		return Results{"impedance": must(raceway.EffectiveImpedance(wire(c, "size"), raceway.Wall(Word(c, "wall"))))}
	},
	"C19": voltageDrop, "C21": voltageDrop,
	"C20": func(c Case) Results {
		return Results{"drop": must(raceway.VoltageDropByK(raceway.ThreePhase, In[unit.Current](c, "current"), In[unit.Length](c, "length"),
			In[unit.Resistivity](c, "k"), In[unit.Area](c, "area")))}
	},
	"C23": func(c Case) Results {
		a := must(raceway.AreaForDrop(raceway.SinglePhase, In[unit.Current](c, "current"), In[unit.Length](c, "length"),
			In[unit.Resistivity](c, "k"), 2*In[unit.Voltage](c, "drop")))
		return Results{"area": a, "size": gauge(must(raceway.WireForArea(a)))}
	},
	"C24": func(c Case) Results {
		r := must(raceway.ResistanceOf(In[unit.Resistivity](c, "k"), In[unit.Area](c, "area")))
		loop := 2 * float64(r) * float64(In[unit.Length](c, "length"))
		return Results{"ohms": loop / 2, "loop": loop, "short": unit.Current(float64(In[unit.Voltage](c, "volts")) / loop)}
	},
	"C25": func(c Case) Results {
		r := must(raceway.ResistanceAt(In[unit.LineImpedance](c, "each"), raceway.Coefficient(In[unit.Ratio](c, "alpha")),
			In[unit.Temperature](c, "base"), In[unit.Temperature](c, "t")))
		load := float64(In[unit.Voltage](c, "load")) / float64(In[unit.Current](c, "current")) // its resistance stays
		i := float64(In[unit.Voltage](c, "source")) / (load + 2*float64(r))
		return Results{"load": unit.Voltage(load * i), "drop": unit.Voltage(float64(r) * i)}
	},
	"C27": func(c Case) Results {
		return Results{"ratio": float64(must(raceway.GaugeArea(wire(c, "larger"))) / must(raceway.GaugeArea(wire(c, "size"))))}
	},
	"C28": func(c Case) Results {
		return Results{"resistance": must(raceway.ResistanceAt(In[unit.LineImpedance](c, "resistance"), raceway.CopperAt75,
			raceway.PropertyTemperature, In[unit.Temperature](c, "t")))}
	},

	"E01": func(c Case) Results { return Results{"y": In[unit.Flow](c, "x")} },
	"E02": func(c Case) Results { return Results{"y": In[unit.Pressure](c, "x")} },
	"E03": func(c Case) Results { return Results{"y": In[unit.Power](c, "x")} },
	"E05": func(c Case) Results { return Results{"y": In[unit.Force](c, "x")} },
	"E06": func(c Case) Results { return Results{"y": In[unit.Temperature](c, "x")} },
	"E08": gaugeArea, "E09": gaugeArea,
	"E10": func(c Case) Results {
		nearest, _, err := raceway.NearestMetric(In[unit.Area](c, "area"))
		return Results{"resistance": must(nearest, err).Resistance}
	},
	"E11": func(c Case) Results { return Results{"y": In[unit.Volume](c, "x")} },
}

// mild is what Table 310.16 is made for.
var mild = raceway.Conditions{
	Edition: raceway.Edition2023, Material: raceway.Copper, Insulation: raceway.THWN2, Location: raceway.Wet,
	Ambient: raceway.TableAmbient, Carrying: 3, Use: raceway.Run, Exposure: raceway.Shaded, Terminals: raceway.Column60,
}

func onRoof(c Case) raceway.Conditions {
	k := mild
	k.Edition, k.Insulation = edition(c), raceway.Insulation(Word(c, "insulation"))
	k.Ambient, k.Exposure, k.Height = In[unit.Temperature](c, "outdoor"), raceway.Rooftop, In[unit.Length](c, "height")
	return k
}

func rooftop(c Case) Results {
	a := must(raceway.AmpacityOf(wire(c, "size"), onRoof(c)))
	return Results{"effective": a.Effective, "factor": float64(a.Ambient), "corrected": a.Corrected}
}

func tableCurrent(c Case) Results {
	return Results{"current": must(raceway.TableCurrent(raceway.Phases(Word(c, "phases")), In[unit.Power](c, "power"), In[unit.Voltage](c, "volts")))}
}

// demandOfPart is of a part of 100 A.
func demandOfPart(c Case) Results {
	return Results{"demand": must(raceway.DemandFromTable(In[unit.Current](c, "part"))).Current}
}

func devices(c Case) (fuse, breaker raceway.Overcurrent) {
	i := In[unit.Current](c, "table")
	return must(raceway.LargestOvercurrent(i, raceway.TimeDelayFuse, raceway.SquirrelCage, raceway.Edition2023)),
		must(raceway.LargestOvercurrent(i, raceway.InverseTimeBreaker, raceway.SquirrelCage, raceway.Edition2023))
}

func largestDevice(c Case) Results {
	fuse, breaker := devices(c)
	return Results{"fuse": fuse.Computed, "fuse_rating": fuse.Rating, "breaker": breaker.Computed, "breaker_rating": breaker.Rating}
}

func ampacity(c Case) Results {
	return Results{"current": must(raceway.TableAmpacity(wire(c, "size"), raceway.Copper, raceway.Column(count(c, "column"))))}
}

func ambientFactor(c Case) Results {
	return Results{"factor": float64(must(raceway.AmbientFactor(In[unit.Temperature](c, "ambient"), raceway.Column(count(c, "column")))))}
}

func voltageDrop(c Case) Results {
	z := must(raceway.ImpedanceOf(wire(c, "size"), raceway.Copper, raceway.Wall(Word(c, "wall"))))
	u := must(raceway.VoltageDrop(raceway.ThreePhase, In[unit.Current](c, "current"), In[unit.Length](c, "length"), z, In[unit.Ratio](c, "pf")))
	return Results{"drop": u, "share": must(raceway.DropShare(u, In[unit.Voltage](c, "volts")))}
}

func gaugeArea(c Case) Results {
	a := must(raceway.GaugeArea(wire(c, "size")))
	nearest, atLeast, err := raceway.NearestMetric(a)
	return Results{"area": a, "cmil": a, "nearest": must(nearest, err).Area, "at_least": atLeast.Area}
}
