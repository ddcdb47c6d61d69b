package published_test

import (
	"math/cmplx"

	"roofside/calc/airflow"
	. "roofside/calc/internal/published"
	"roofside/calc/phase"
	"roofside/calc/unit"
)

var phaseAnswers = map[string]answer{
	"A01": unbalanceAndLeg, "A09": unbalanceAndLeg,
	"A02": func(c Case) Results {
		rise := In[unit.TemperatureDifference](c, "balanced_rise")
		extra := rise * unit.TemperatureDifference(must(phase.ExtraHeating(In[unit.Ratio](c, "unbalance"))))
		return Results{"extra": extra, "total": rise + extra}
	},
	"A05": func(c Case) Results {
		return Results{"ratio": must(phase.Amplification(In[unit.Ratio](c, "current"), In[unit.Ratio](c, "voltage")))}
	},
	"A08": func(c Case) Results {
		return Results{"life": must(phase.InsulationLife(In[unit.TemperatureDifference](c, "extra")))}
	},
	"A10": func(c Case) Results { return Results{"unbalance": must(phase.Unbalance(volts(c)))} },
	"A11": func(c Case) Results {
		var v [3]complex128
		for i, leg := range []string{"a", "b", "c"} {
			v[i] = cmplx.Rect(float64(In[unit.Voltage](c, "V"+leg)), float64(In[unit.Angle](c, "A"+leg)))
		}
		line := func(i, j int) unit.Voltage { return unit.Voltage(cmplx.Abs(v[i] - v[j])) }
		return Results{"factor": must(phase.SequenceFactor(line(0, 1), line(1, 2), line(2, 0)))}
	},
	"A12": sequenceFactor,
	"A13": bothUnbalances, "A14": bothUnbalances, "A15": bothUnbalances,
	"A16": bothUnbalances, "A17": bothUnbalances, "A18": bothUnbalances,
	"A19": func(c Case) Results {
		_, err := phase.VoltageDerating(In[unit.Ratio](c, "unbalance"))
		return Results{"run": yes(err == nil)}
	},
	"A20": func(Case) Results { return Results{"most": phase.SupplyUnbalanceMost} },
	"A21": derating, "A22": derating, "A23": derating, "A24": derating,
	"U01": derating, "U02": derating, "U03": derating, "U04": derating, "U05": derating,
	"A25": ampBalance, "A26": ampBalance,
	"A27": leadRoll, "A28": leadRoll,
	"A29": func(c Case) Results {
		way := must(phase.DirectionOf(count(c, "l1"), count(c, "l2"), count(c, "l3")))
		for line, name := range []string{"l1", "l2", "l3"} {
			if int(phase.LeadOn(phase.Leg(line+1), 1)) != count(c, name) {
				panic("the lead roll's second position is another")
			}
		}
		return Results{"same": yes(way == phase.SameWay)}
	},
	"A31": func(c Case) Results {
		a, b, cc := amps(c)
		lost := must(phase.LostPhase(a, b, cc, phase.UsualClamp))
		return Results{
			"lost": yes(lost.Loss == phase.LossOpen), "leg": float64(lost.Leg),
			"ratio": must(phase.AmpsAgainstPlate((b+cc)/2, phase.UsualClamp, In[unit.Current](c, "plate"), In[unit.Current](c, "plate"))).Value,
		}
	},
	"A32": func(c Case) Results {
		return Results{"live": must(phase.AmpsWithOpenLine(In[unit.Current](c, "running")))}
	},
	"B26": overload, "B27": overload,
	"B54": func(c Case) Results { return Results{"trip": overload(c)["trip"]} },
	"B34": inputPower, "B49": inputPower,
	"B37": func(c Case) Results {
		return Results{"load": must(airflow.LoadInput(In[unit.Power](c, "input"), In[unit.Power](c, "plate"), In[unit.Ratio](c, "efficiency")))}
	},
	"B39": func(c Case) Results {
		return Results{"change": must(phase.TorqueShare(In[unit.Voltage](c, "v"), In[unit.Voltage](c, "plate"))) - 1}
	},
	"B40": func(c Case) Results {
		return Results{"torque": must(phase.TorqueShare(In[unit.Voltage](c, "v"), In[unit.Voltage](c, "plate")))}
	},
	"B42": func(c Case) Results {
		plate := In[unit.Voltage](c, "plate")
		return Results{"low": plate * unit.Voltage(1-phase.PlateTolerance), "high": plate * unit.Voltage(1+phase.PlateTolerance)}
	},
	"B43": func(c Case) Results {
		v, plate := In[unit.Voltage](c, "v"), In[unit.Voltage](c, "plate")
		s := must(phase.VoltsAgainstPlate(v, phase.Meter[unit.Voltage]{}, plate))
		return Results{
			"share": s.Value, "within": yes(s.Standing == phase.Within),
			"room":  v - plate*unit.Voltage(1-phase.PlateTolerance),
			"watch": yes(must(phase.PlateOnSystem(plate, v)) == phase.Watch),
		}
	},
	"B50": func(c Case) Results {
		out := must(phase.ShaftByPower(apparent(c), In[unit.Ratio](c, "pf"), In[unit.Ratio](c, "efficiency"), 0))
		return Results{"input": inputPower(c)["input"], "output": out.Value}
	},
	"P01": systemMotor, "P02": systemMotor, "P03": systemMotor,
	"P06": func(c Case) Results {
		return Results{"apparent": must(phase.ApparentSinglePhase(In[unit.Voltage](c, "v"), In[unit.Current](c, "i")))}
	},
	"P07": func(c Case) Results {
		n := count(c, "turns")
		m := must(phase.ClampOfTurns(phase.Meter[unit.Current]{Share: In[unit.Ratio](c, "share"), Floor: In[unit.Current](c, "floor")}, n))
		return Results{"current": must(phase.ThroughClamp(In[unit.Current](c, "reading"), n)), "share": m.Share, "floor": m.Floor}
	},
	"P08": func(c Case) Results {
		d := must(phase.DeratingOver(In[unit.Ratio](c, "low"), In[unit.Ratio](c, "unbalance"), In[unit.Ratio](c, "high")))
		return Results{"factor": d.Factor, "least": d.Low, "greatest": d.High}
	},
	"P09": func(c Case) Results {
		h := must(phase.HeadroomLeft(In[unit.Ratio](c, "load"),
			phase.Derating{Factor: In[unit.Ratio](c, "factor"), Low: In[unit.Ratio](c, "low"), High: In[unit.Ratio](c, "high")}))
		return Results{"left": h.Value, "least": h.Low, "greatest": h.High}
	},
	"P10": protector, "P11": protector, "P12": protector,
	"P13": func(c Case) Results {
		e := must(phase.ShaftByLoad(In[unit.Power](c, "plate"), In[unit.Ratio](c, "low"), In[unit.Ratio](c, "high")))
		return Results{"low": e.Low, "high": e.High}
	},
	"P14": func(c Case) Results {
		near := func(n string) unit.Voltage { return must(phase.SystemNear(In[unit.Voltage](c, n))).Nominal }
		return Results{"a": near("a"), "b": near("b")}
	},
	"P15": func(c Case) Results {
		a, b, cc := amps(c)
		none := phase.Meter[unit.Current]{}
		return Results{
			"open":   yes(must(phase.TriangleCheck(a, b, cc, none)) == phase.ClosesNot),
			"closes": yes(must(phase.TriangleCheck(In[unit.Current](c, "d"), b, cc, none)) == phase.Closes),
		}
	},
	"P16": func(c Case) Results {
		a, b, cc := volts(c)
		s := must(phase.VoltageBalance(a, b, cc, phase.Meter[unit.Voltage]{}))
		return Results{"unbalance": s.Value, "watch": yes(s.Standing == phase.Watch)}
	},
	"P17": func(c Case) Results {
		is := func(n string, want phase.Standing) float64 {
			v := must(phase.VoltsAtMotor(In[unit.Voltage](c, n), phase.Meter[unit.Voltage]{}, In[unit.Voltage](c, "nominal")))
			return yes(v.Standing == want)
		}
		return Results{"within": is("a", phase.Within), "watch": is("b", phase.Watch), "stop": is("c", phase.Stop)}
	},
	"P05": func(Case) Results {
		return Results{"low": phase.AmplificationLow, "high": phase.AmplificationHigh}
	},
	"P19": func(c Case) Results {
		return Results{"share": must(phase.VoltsPerHertz(In[unit.Voltage](c, "v"), In[unit.Frequency](c, "f"), In[unit.Voltage](c, "plate_volts"), In[unit.Frequency](c, "plate_frequency")))}
	},
	"P20": func(c Case) Results {
		a, b, cc := amps(c)
		l := must(phase.LostPhaseOnVolts(a, b, cc, phase.Meter[unit.Current]{}, In[unit.Ratio](c, "volts")))
		return Results{"winding": yes(l.Loss == phase.LossWinding), "leg": float64(l.Leg), "ratio": l.Over}
	},
	"P21": func(c Case) Results {
		return Results{"off": must(phase.CombinedVariation(In[unit.Voltage](c, "v"), In[unit.Frequency](c, "f"), In[unit.Voltage](c, "plate_volts"), In[unit.Frequency](c, "plate_frequency")))}
	},
	"P22": func(c Case) Results {
		a, b, cc := amps(c)
		m := phase.Meter[unit.Current]{Share: In[unit.Ratio](c, "share"), Floor: In[unit.Current](c, "floor")}.Alike(In[unit.Ratio](c, "repeats"))
		s := must(phase.UnbalanceRange(a, b, cc, m))
		return Results{"unbalance": s.Value, "least": s.Low, "greatest": s.High}
	},
	"P18": func(c Case) Results { return Results{"most": phase.IdleMost(In[unit.Ratio](c, "volts"))} },
	"P04": func(c Case) Results {
		v := In[unit.Voltage](c, "v")
		return Results{"unbalance": must(phase.Unbalance(v, v, v*unit.Voltage(1+In[unit.Ratio](c, "off"))))}
	},
}

func yes(b bool) float64 {
	if b {
		return 1
	}
	return 0
}

func count(c Case, name string) int { return int(In[unit.Ratio](c, name)) }

func volts(c Case) (unit.Voltage, unit.Voltage, unit.Voltage) {
	return In[unit.Voltage](c, "a"), In[unit.Voltage](c, "b"), In[unit.Voltage](c, "c")
}

func amps(c Case) (unit.Current, unit.Current, unit.Current) {
	return In[unit.Current](c, "a"), In[unit.Current](c, "b"), In[unit.Current](c, "c")
}

func unbalanceAndLeg(c Case) Results {
	a, b, cc := volts(c)
	s := must(phase.UnbalanceRange(a, b, cc, phase.Meter[unit.Voltage]{}))
	return Results{"unbalance": s.Value, "leg": float64(s.Leg)}
}

func sequenceFactor(c Case) Results {
	return Results{"factor": must(phase.SequenceFactor(In[unit.Voltage](c, "ab"), In[unit.Voltage](c, "bc"), In[unit.Voltage](c, "ca")))}
}

func bothUnbalances(c Case) Results {
	return Results{"unbalance": must(phase.Unbalance(volts(c))), "factor": must(phase.SequenceFactor(volts(c)))}
}

func derating(c Case) Results {
	return Results{"factor": must(phase.VoltageDerating(In[unit.Ratio](c, "unbalance"))).Factor}
}

func ampBalance(c Case) Results {
	a, b, cc := amps(c)
	s := must(phase.CurrentBalance(a, b, cc, phase.Meter[unit.Current]{}, 1, 0.01))
	return Results{"unbalance": s.Value, "within": yes(s.Standing == phase.Within)}
}

func leadRoll(c Case) Results {
	var at []phase.Position
	for _, p := range []string{"p1", "p2", "p3"} {
		at = append(at, phase.Position{L1: In[unit.Current](c, p+"L1"), L2: In[unit.Current](c, p+"L2"), L3: In[unit.Current](c, p+"L3")})
	}
	r := must(phase.ClassifyRoll(at, phase.Meter[unit.Current]{Share: 0.02}))
	if r.Confidence != phase.Firm {
		panic("not firm")
	}
	leg := r.Line
	if r.Cause == phase.CauseMotor {
		leg = r.Lead
	}
	return Results{"supply": yes(r.Cause == phase.CauseSupply), "motor": yes(r.Cause == phase.CauseMotor), "leg": float64(leg)}
}

func overload(c Case) Results {
	o := must(phase.OverloadOf(In[unit.Current](c, "plate"), must(phase.OverloadClassOf(In[unit.Ratio](c, "service_factor")))))
	if o.Dial != In[unit.Current](c, "plate") {
		panic("the dial is not plate amps")
	}
	return Results{"trip": o.Trip, "after_failure": o.AfterFailure}
}

func protector(c Case) Results {
	return Results{"trip": must(phase.ProtectorTrip(In[unit.Current](c, "table")))}
}

func apparent(c Case) unit.ApparentPower {
	return must(phase.Apparent(In[unit.Voltage](c, "v"), In[unit.Current](c, "i")))
}

func inputPower(c Case) Results {
	return Results{"input": must(phase.Real(apparent(c), In[unit.Ratio](c, "pf")))}
}

func systemMotor(c Case) Results {
	return Results{"motor": must(phase.SystemOf(In[unit.Voltage](c, "nominal"))).Motor}
}
