package published_test

import (
	"roofside/calc/belt"
	"roofside/calc/drive"
	. "roofside/calc/internal/published"
	"roofside/calc/unit"
)

var tensionAnswers = map[string]answer{
	"C01": func(c Case) Results {
		return Results{"deflection": must(belt.DeflectionDistance(In[unit.Length](c, "span")))}
	},
	"C03": func(c Case) Results {
		// The case gives the arc factor itself; the arc that has it is found first.
		arc := arcOfFactor(In[unit.Ratio](c, "factor"))
		t := must(belt.StaticTension(unit.Horsepower, 1000*unit.FootPerMinute, arc, 1, 0, belt.TensionByStatics))
		return Results{"K": t.In(unit.PoundForce)}
	},
	"C04": func(c Case) Results {
		f := must(belt.ForceBands(In[unit.Force](c, "tension"), In[unit.Force](c, "stiffness")))
		if f.New.Low != f.RunIn.High {
			panic("a new belt's band does not begin where the other ends")
		}
		return Results{"P_min": f.RunIn.Low, "P_max": f.RunIn.High, "P_initial": f.New.High}
	},
	"C05": func(Case) Results {
		slow := must(belt.ListedBand(10*unit.PoundForce, 2999*unit.FootPerMinute))
		fast := must(belt.ListedBand(10*unit.PoundForce, 3001*unit.FootPerMinute))
		return Results{"factor_above_3000fpm": float64(fast.Low / slow.Low), "upper_band": float64(slow.High / slow.Low)}
	},
	"C07": staticTension(belt.TensionByStatics),
	"C08": staticTension(belt.TensionByTrade),
	"C09": func(c Case) Results {
		power, v, arc := tensionDrive(c)
		tight, slack, err := belt.Strands(power, v, arc)
		return Results{
			"Te":  must(belt.EffectivePull(power, v)),
			"R":   must(belt.TensionRatio(arc)),
			"Tst": must(belt.StaticTension(power, v, arc, 1, 0, belt.TensionByStatics)),
			"T1":  must(tight, err), "T2": slack,
		}
	},
	"C11": func(c Case) Results {
		t := In[unit.Force](c, "tension")
		return Results{"P_small_angle": must(belt.DeflectionForce(t, 0)), "P_exact": must(belt.DeflectionForceExact(t))}
	},
	"C12": spanFrequency, "C13": spanFrequency,
	"C14": func(c Case) Results {
		m := In[unit.LinearMass](c, "mass")
		return Results{
			"Tc":          must(belt.CentrifugalTension(m, In[unit.Velocity](c, "v"))),
			"M_per_kfpm2": must(belt.CentrifugalTension(m, 1000*unit.FootPerMinute)).In(unit.PoundForce),
		}
	},
	"M01": func(c Case) Results {
		m, ok := belt.TypicalMass(drive.Section(Word(c, "section")))
		if !ok {
			panic("no usual mass")
		}
		return Results{"Tc": must(belt.CentrifugalTension(m, In[unit.Velocity](c, "v")))}
	},
	"C15": func(c Case) Results {
		return Results{"F": must(belt.ShaftLoadStatic(In[unit.Force](c, "tension"), int(In[unit.Ratio](c, "belts")), In[unit.Angle](c, "arc")))}
	},
	"C16": func(c Case) Results {
		const half = 180 * unit.Degree
		tight, slack, err := belt.Strands(unit.Horsepower, unit.MeterPerSecond, half)
		load := must(belt.ShaftLoadRunning(must(tight, err), slack, half))
		pull := must(belt.EffectivePull(unit.Horsepower, unit.MeterPerSecond))
		return Results{
			"OHL":            must(belt.OverhungLoad(In[unit.Power](c, "power"), In[unit.Length](c, "pd"), In[unit.Speed](c, "n"), In[unit.Ratio](c, "factor"))),
			"factor_from_R5": float64(load / pull),
		}
	},
	"C18": func(c Case) Results {
		return Results{"f": must(belt.FrequencyFromTension(In[unit.LinearMass](c, "mass"), In[unit.Length](c, "span"), In[unit.Force](c, "tension")))}
	},
	"C19": func(c Case) Results {
		m := unit.LinearMass(float64(In[unit.Area](c, "area")) * float64(In[unit.Density](c, "density")))
		return Results{"Tc": must(belt.CentrifugalTension(m, must(drive.BeltSpeed(In[unit.Speed](c, "n"), In[unit.Length](c, "d")))))}
	},
	"C20": func(c Case) Results {
		tight, slack, err := belt.StrandsAt(In[unit.Force](c, "tension"), count(c, "belts"), In[unit.Force](c, "pull"))
		return Results{"tight": must(tight, err), "slack": slack}
	},
	"C21": func(c Case) Results {
		return Results{"tension": must(belt.TensionFromForce(In[unit.Force](c, "force"), In[unit.Force](c, "stiffness")))}
	},
	"C22": func(c Case) Results {
		return Results{"share": must(belt.StretchShare(In[unit.Force](c, "stiffness"), In[unit.Length](c, "span"), In[unit.Length](c, "L")))}
	},
	"C23": func(c Case) Results {
		return Results{"error": must(belt.DeflectionError(In[unit.Length](c, "span"), In[unit.Length](c, "off")))}
	},
	"C24": func(c Case) Results {
		return Results{"design": must(belt.DesignPower(In[unit.Power](c, "power"), In[unit.Ratio](c, "factor")))}
	},
	"C25": func(c Case) Results {
		travel := func(n string) belt.Allowance {
			return must(belt.TravelAllowance(drive.Section(Word(c, n)), count(c, "number_"+n)))
		}
		return Results{"toward_a": travel("a").Toward, "away_a": travel("a").Away, "toward_b": travel("b").Toward, "away_b": travel("b").Away}
	},
	"C26": func(Case) Results {
		r := Results{}
		for _, s := range drive.Sections() {
			if m, ok := belt.TypicalMass(s); ok {
				r[string(s)] = m
			}
		}
		return r
	},
	"C32": func(Case) Results {
		r := Results{}
		for _, s := range drive.Sections() {
			if y, ok := belt.TypicalStiffness(s); ok {
				r[string(s)] = y
			}
		}
		return r
	},
	"C33": func(c Case) Results {
		return Results{"P_min": must(belt.DeflectionForce(In[unit.Force](c, "tension"), In[unit.Force](c, "stiffness")))}
	},
	"C34": func(c Case) Results {
		slow, fast := must(belt.ListedNewBand(In[unit.Force](c, "force"), In[unit.Velocity](c, "v"))), must(belt.ListedNewBand(In[unit.Force](c, "force"), In[unit.Velocity](c, "faster")))
		return Results{"low": slow.Low, "high": slow.High, "high_fast": fast.High}
	},
	"C27": func(c Case) Results {
		return spread(must(belt.ReadForce(In[unit.Force](c, "force"), In[unit.Force](c, "force_off"),
			In[unit.Length](c, "deflection"), In[unit.Length](c, "deflection_off"), In[unit.Length](c, "span"))))
	},
	"C28": func(c Case) Results {
		return spread(must(belt.ReadFrequency(In[unit.LinearMass](c, "mass"), In[unit.Ratio](c, "spread"), In[unit.Length](c, "span"),
			In[unit.Frequency](c, "f"), In[unit.Frequency](c, "f_off"), In[unit.Force](c, "stiffness"))))
	},
	"C29": mark, "C30": mark,
	"C31": func(c Case) Results {
		return Results{"at": must(belt.ForceAt(In[unit.Force](c, "force"), In[unit.Length](c, "deflection"), In[unit.Length](c, "span")))}
	},
	"C17": func(c Case) Results {
		exact, rule := must(belt.DeflectionDistance(In[unit.Length](c, "span"))), must(belt.DeflectionByMetricRule(In[unit.Length](c, "span")))
		return Results{"exact": exact, "rule": rule, "difference": unit.Ratio(rule/exact) - 1}
	},
}

func mark(c Case) Results {
	return Results{"mark": must(belt.DeflectionMark(In[unit.Length](c, "span"), In[unit.Length](c, "step")))}
}

func spread(r belt.Reading) Results {
	return Results{"low": r.Low, "value": r.Value, "high": r.High}
}

// arcOfFactor halves its way to the arc with an arc factor.
func arcOfFactor(factor unit.Ratio) unit.Angle {
	low, high := unit.Angle(0), 180*unit.Degree
	for range 100 {
		if mid := (low + high) / 2; must(belt.ArcFactor(mid)) < factor {
			low = mid
		} else {
			high = mid
		}
	}
	return high
}

func tensionDrive(c Case) (unit.Power, unit.Velocity, unit.Angle) {
	d := In[unit.Length](c, "d")
	return In[unit.Power](c, "design"), must(drive.BeltSpeed(In[unit.Speed](c, "n"), d)), must(belt.ArcSmall(d, In[unit.Length](c, "D"), In[unit.Length](c, "C")))
}

func staticTension(k belt.TensionConstant) answer {
	return func(c Case) Results {
		if float64(k) != float64(In[unit.Ratio](c, "constant")) {
			panic("another constant")
		}
		power, v, arc := tensionDrive(c)
		return Results{
			"theta": arc, "Ac": must(belt.ArcFactor(arc)), "V": v,
			"Tst": must(belt.StaticTension(power, v, arc, int(In[unit.Ratio](c, "belts")), 0, k)),
		}
	}
}

func spanFrequency(c Case) Results {
	m, t, f := In[unit.LinearMass](c, "mass"), In[unit.Length](c, "span"), In[unit.Frequency](c, "f")
	return Results{"T": must(belt.TensionFromFrequency(m, t, f))}
}
