package published_test

import (
	"math"

	"roofside/calc/airflow"
	"roofside/calc/drive"
	. "roofside/calc/internal/published"
	"roofside/calc/unit"
)

var airAnswers = map[string]answer{
	"D01": func(c Case) Results { return Results{"P2": warmer(c).Power} },
	"D02": func(c Case) Results { p := warmer(c); return Results{"Q2": p.Flow, "p2": p.Pressure} },
	"D03": fanEfficiency, "D04": fanEfficiency,
	"D06": otherWheel, "D07": otherWheel,
	"D09": atmosphere, "D10": atmosphere, "D12": atmosphere, "D13": atmosphere,
	"D14": func(c Case) Results { return airOf(c, 0) },
	"D15": func(c Case) Results { return airOf(c, In[unit.Ratio](c, "W")) },
	"D27": func(c Case) Results {
		// The source's inch of water is that of water at 70 °F (case D52).
		const inch70 = 248.58575040179997 * unit.Pascal
		rho := In[unit.Density](c, "rho")
		vp := must(airflow.VelocityPressure(In[unit.Velocity](c, "V"), rho))
		return Results{
			"VP":         vp / inch70 * unit.InchOfWater,
			"V_at_1inwg": must(airflow.VelocityFromPressure(inch70, rho)),
		}
	},
	"D33": func(c Case) Results {
		return Results{
			"T1000":  must(airflow.TemperatureAt(In[unit.Length](c, "Z1"))),
			"T10000": must(airflow.TemperatureAt(In[unit.Length](c, "Z2"))),
			"T30000": must(airflow.TemperatureAt(In[unit.Length](c, "Z3"))),
		}
	},
	"D40": func(c Case) Results {
		p := must(airflow.AtSpeed(airflow.Point{
			Speed: In[unit.Speed](c, "n1"), Flow: In[unit.Flow](c, "Q1"), Pressure: In[unit.Pressure](c, "SP1"),
			Power: In[unit.Power](c, "bhp1"), Density: airflow.StandardDensity,
		}, In[unit.Speed](c, "n2"), airflow.StandardDensity))
		return Results{"Q2": p.Flow, "SP2": p.Pressure, "bhp2": p.Power}
	},
	"D41": func(c Case) Results {
		n := must(airflow.SpeedForFlow(1000, 1, unit.Flow(In[unit.Ratio](c, "ratio"))))
		const rho = airflow.StandardDensity
		return Results{
			"SP_ratio":  float64(must(airflow.PressureAtSpeed(1, 1000, n, rho, rho))),
			"bhp_ratio": float64(must(airflow.PowerAtSpeed(1, 1000, n, rho, rho))),
		}
	},
	"D42": func(c Case) Results {
		return Results{"max_speed_ratio": float64(must(airflow.MaxSpeedForPower(1, In[unit.Power](c, "P1"), In[unit.Power](c, "P2"))))}
	},
	"D43": standardAir, "D44": standardAir, "D45": standardAir, "D46": standardAir,
	"D47": func(c Case) Results {
		const n = 1000 * unit.RPM // any: only density changes
		rho := must(airflow.Density(In[unit.Length](c, "Z"), In[unit.Temperature](c, "T")))
		return Results{
			"SP_equiv_std": must(airflow.PressureAtSpeed(In[unit.Pressure](c, "SP_actual"), n, n, rho, airflow.StandardDensity)),
			"bhp_actual":   must(airflow.PowerAtSpeed(In[unit.Power](c, "bhp_table"), n, n, airflow.StandardDensity, rho)),
		}
	},
	"D48": func(c Case) Results {
		rho := must(airflow.MoistDensity(In[unit.Pressure](c, "p"), In[unit.Temperature](c, "T"), 0))
		return Results{"rho": rho, "vs_0.075": unit.Ratio(rho/airflow.StandardDensity) - 1}
	},
	"D49": flowConstant, "D50": flowConstant, "D51": flowConstant, "D52": flowConstant,
	"D53": func(c Case) Results {
		perCubicFoot := In[unit.Density](c, "water").In(unit.PoundPerCubicFoot) // pounds weigh pounds-force
		inch := unit.Pressure(perCubicFoot*float64(unit.PoundForce)/float64(unit.Foot*unit.Foot)) / 12
		return Results{"K": constantOf(inch)}
	},
	"D54": func(c Case) Results {
		// The formula's 6356 fixes its inch of water.
		inch := unit.Pressure(float64(unit.Horsepower) / float64(unit.CubicFootPerMinute) / 6356)
		p := inch * unit.Pressure(In[unit.Pressure](c, "TP").In(unit.InchOfWater))
		return Results{"bhp": must(airflow.FanPower(In[unit.Flow](c, "Q"), p, In[unit.Ratio](c, "eta")))}
	},
	"D55": func(c Case) Results {
		return Results{"v_tip": must(airflow.TipSpeed(In[unit.Length](c, "D"), In[unit.Speed](c, "n")))}
	},
	"D57": func(c Case) Results {
		return Results{"SP2": must(airflow.SystemPressure(In[unit.Pressure](c, "SP1"), In[unit.Flow](c, "Q1"), In[unit.Flow](c, "Q2")))}
	},

	"D63": otherSpeed, "D66": otherSpeed, "D67": otherSpeed,
	"D64": func(c Case) Results {
		p := must(airflow.AtWheel(standardPoint(c), In[unit.Length](c, "D1"), In[unit.Length](c, "D2"), In[unit.Speed](c, "n2"), airflow.StandardDensity))
		return Results{"Q2": p.Flow, "p2": p.Pressure, "P2": p.Power}
	},
	"D65": func(c Case) Results {
		p := standardPoint(c)
		return Results{
			"n_flow":     must(airflow.SpeedForFlow(p.Speed, p.Flow, In[unit.Flow](c, "Q2"))),
			"n_pressure": must(airflow.SpeedForPressure(p.Speed, p.Pressure, In[unit.Pressure](c, "p2"), p.Density, p.Density)),
			"n_power":    must(airflow.SpeedForPower(p.Speed, p.Power, In[unit.Power](c, "P2"), p.Density, p.Density)),
		}
	},
	"D68": func(c Case) Results {
		d := In[unit.Length](c, "d1")
		q := unit.Flow(float64(In[unit.Velocity](c, "v1")) * math.Pi / 4 * float64(d*d))
		v := must(airflow.RoundDuctVelocity(q, In[unit.Length](c, "d2")))
		return Results{"v2": v, "VP": must(airflow.VelocityPressure(v, In[unit.Density](c, "rho")))}
	},
	"D69": func(c Case) Results {
		return Results{"v": must(airflow.DuctVelocity(In[unit.Flow](c, "q"), In[unit.Length](c, "width"), In[unit.Length](c, "height")))}
	},
	"D70": func(c Case) Results {
		return Results{"Q": must(airflow.HoodFlow(airflow.WallCanopy, In[unit.Flow](c, "per_foot"), In[unit.Length](c, "length")))}
	},
	"D71": func(c Case) Results {
		load, fla := In[unit.Ratio](c, "load"), In[unit.Current](c, "FLA")
		return Results{
			"linear":  must(airflow.AmpsProportional(load, fla, In[unit.Voltage](c, "V"), In[unit.Voltage](c, "Vnp"))),
			"half_NL": must(airflow.AmpsHalfNoLoad(load, In[unit.Current](c, "I0"), fla)),
		}
	},

	"D17": func(c Case) Results {
		load := must(airflow.LoadFullNoLoad(In[unit.Current](c, "I"), In[unit.Current](c, "I0"), In[unit.Current](c, "FLA")))
		return Results{"hp_est": In[unit.Power](c, "hp") * unit.Power(load)}
	},
	"D18": func(c Case) Results {
		load := must(airflow.LoadHalfNoLoad(In[unit.Current](c, "I"), In[unit.Current](c, "I0"), In[unit.Current](c, "FLA")))
		return Results{"load": load, "hp_est": In[unit.Power](c, "hp") * unit.Power(load)}
	},
	"D19": func(c Case) Results {
		i, i0, fla := In[unit.Current](c, "I"), In[unit.Current](c, "I0"), In[unit.Current](c, "FLA")
		return Results{
			"linear":  must(airflow.LoadProportional(i, fla, 460, 460)),
			"half_NL": must(airflow.LoadHalfNoLoad(i, i0, fla)),
			"full_NL": must(airflow.LoadFullNoLoad(i, i0, fla)),
			"phasor":  must(airflow.LoadPhasor(i, i0, fla)),
		}
	},
	"D20": func(c Case) Results {
		v, i, pf, eff := In[unit.Voltage](c, "V"), In[unit.Current](c, "I"), In[unit.Ratio](c, "PF"), In[unit.Ratio](c, "eff")
		shaft := must(airflow.ShaftPower(v, i, pf, eff))
		speed := must(drive.BeltSpeed(In[unit.Speed](c, "n"), In[unit.Length](c, "pulley_d")))
		const kilogramForce = 9.80665 // N
		return Results{
			"P_in":      must(airflow.InputPower(v, i, pf)),
			"P_shaft":   shaft,
			"belt_pull": float64(shaft) / float64(speed) / kilogramForce,
		}
	},
	"D21": beltEfficiency, "D22": beltEfficiency, "D23": beltEfficiency, "D24": beltEfficiency, "D25": beltEfficiency,
	"D72": beltEfficiency, "D73": beltEfficiency, "D74": beltEfficiency,
	"D26": partLoad, "D75": partLoad, "D76": partLoad, "D77": partLoad, "D78": partLoad,
	"D56": func(c Case) Results {
		shaft := must(airflow.ShaftPower(In[unit.Voltage](c, "V"), In[unit.Current](c, "I"), In[unit.Ratio](c, "PF"), In[unit.Ratio](c, "eff")))
		return Results{"bhp_746": shaft / 746 * unit.Horsepower} // the case counts 746 W to the horsepower
	},
	"D58": func(c Case) Results {
		load := must(airflow.LoadProportional(In[unit.Current](c, "I"), In[unit.Current](c, "FLA"), In[unit.Voltage](c, "V"), In[unit.Voltage](c, "Vnp")))
		return Results{"bhp": In[unit.Power](c, "hp") * unit.Power(load)}
	},
	"D59": func(c Case) Results {
		load := must(airflow.LoadSlip(In[unit.Speed](c, "n_sync"), In[unit.Speed](c, "n_np"), In[unit.Speed](c, "n")))
		return Results{"load": load, "hp_est": In[unit.Power](c, "hp") * unit.Power(load)}
	},
	"D60": func(c Case) Results {
		input := must(airflow.InputPower(In[unit.Voltage](c, "V"), In[unit.Current](c, "I"), In[unit.Ratio](c, "PF")))
		load := must(airflow.LoadInput(input, In[unit.Power](c, "hp"), In[unit.Ratio](c, "eff")))
		return Results{"P_in": input, "P_rated_in": input / unit.Power(load), "load": load}
	},

	"D28": func(Case) Results {
		return Results{"v_min": airflow.GreaseDuctMinimumVelocity, "outlet_above_roof": airflow.OutletAboveRoof, "to_air_intake": airflow.OutletToIntake}
	},
	"D29": func(Case) Results {
		return Results{
			"v_min": airflow.GreaseDuctOlderVelocity, "v_min_SI": airflow.GreaseDuctOlderVelocity,
			"outlet_above_roof": airflow.OutletAboveRoof, "to_inlets": airflow.OutletToIntake,
		}
	},
	"D30": func(c Case) Results {
		return Results{"Q": must(airflow.HoodFlowByArea(airflow.AreaRate, In[unit.Length](c, "length"), In[unit.Length](c, "width")))}
	},
	"D31": func(Case) Results {
		return Results{"fan_tol": airflow.FanTolerance, "outlet_tol": airflow.OutletTolerance}
	},
	"D61": hoodRates, "D62": hoodRates, "H01": hoodRates, "H02": hoodRates, "H03": hoodRates,
}

// warmer is the fan of D01 at its speed in warmer air of the same pressure.
func warmer(c Case) airflow.Point {
	n := In[unit.Speed](c, "n")
	cold := must(airflow.Density(0, In[unit.Temperature](c, "T1")))
	warm := must(airflow.Density(0, In[unit.Temperature](c, "T2")))
	return must(airflow.AtSpeed(airflow.Point{
		Speed: n, Flow: In[unit.Flow](c, "Q1"), Pressure: In[unit.Pressure](c, "p1"), Power: In[unit.Power](c, "P1"), Density: cold,
	}, n, warm))
}

// standardPoint is a case's first point, in standard air.
func standardPoint(c Case) airflow.Point {
	return airflow.Point{
		Speed: In[unit.Speed](c, "n1"), Flow: In[unit.Flow](c, "Q1"), Pressure: In[unit.Pressure](c, "p1"),
		Power: In[unit.Power](c, "P1"), Density: airflow.StandardDensity,
	}
}

// otherSpeed answers by the laws one by one, which must agree with all at once
// and with the system curve.
func otherSpeed(c Case) Results {
	p, n := standardPoint(c), In[unit.Speed](c, "n2")
	q := must(airflow.FlowAtSpeed(p.Flow, p.Speed, n))
	one := airflow.Point{
		Speed: n, Flow: q, Pressure: must(airflow.PressureAtSpeed(p.Pressure, p.Speed, n, p.Density, p.Density)),
		Power: must(airflow.PowerAtSpeed(p.Power, p.Speed, n, p.Density, p.Density)), Density: p.Density,
	}
	all := must(airflow.AtSpeed(p, n, p.Density))
	system := must(airflow.SystemPressure(p.Pressure, p.Flow, q))
	for _, pair := range [][2]float64{
		{float64(one.Flow), float64(all.Flow)}, {float64(one.Pressure), float64(all.Pressure)}, {float64(one.Power), float64(all.Power)},
		{float64(one.Pressure), float64(system)},
	} {
		if math.Abs(pair[0]/pair[1]-1) > 1e-12 {
			panic("the laws one by one are not the laws together")
		}
	}
	return Results{"Q2": one.Flow, "p2": one.Pressure, "P2": one.Power}
}

func fanEfficiency(c Case) Results {
	return Results{"eta": must(airflow.FanEfficiency(In[unit.Flow](c, "Q"), In[unit.Pressure](c, "p"), In[unit.Power](c, "P")))}
}

func otherWheel(c Case) Results {
	p := must(airflow.AtWheel(airflow.Point{
		Speed: In[unit.Speed](c, "N1"), Flow: In[unit.Flow](c, "Q1"), Pressure: In[unit.Pressure](c, "p1"),
		Power: In[unit.Power](c, "P1"), Density: In[unit.Density](c, "rho1"),
	}, In[unit.Length](c, "D1"), In[unit.Length](c, "D2"), In[unit.Speed](c, "N2"), In[unit.Density](c, "rho2")))
	return Results{"Q2": p.Flow, "p2": p.Pressure, "P2": p.Power}
}

func atmosphere(c Case) Results {
	return Results{"p": must(airflow.PressureAt(In[unit.Length](c, "Z")))}
}

func airOf(c Case, humidity unit.Ratio) Results {
	rho := must(airflow.MoistDensity(In[unit.Pressure](c, "p"), In[unit.Temperature](c, "T"), humidity))
	return Results{"rho": rho, "volume": float64(1+humidity) / rho.In(unit.PoundPerCubicFoot)} // of a pound of dry air
}

func standardAir(c Case) Results {
	Z, T := In[unit.Length](c, "Z"), In[unit.Temperature](c, "T")
	f := must(airflow.DensityFactor(Z, T))
	return Results{"factor": f, "rho": must(airflow.Density(Z, T)), "inverse": 1 / f}
}

func flowConstant(c Case) Results {
	return Results{"K": constantOf(In[unit.Pressure](c, "inch_of_water"))}
}

// constantOf is the flow in cfm against one inch of water that takes 1 hp.
func constantOf(inch unit.Pressure) float64 {
	return 1 / must(airflow.FanPower(unit.CubicFootPerMinute, inch, 1)).In(unit.Horsepower)
}

func beltEfficiency(c Case) Results {
	loss, ok := map[string]airflow.DriveLoss{"low": airflow.LowLoss, "medium": airflow.MediumLoss, "high": airflow.HighLoss}[Word(c, "class")]
	if !ok {
		panic("no such class")
	}
	return Results{"eta_belt_max": must(airflow.BeltEfficiency(In[unit.Power](c, "power"), loss))}
}

func partLoad(c Case) Results {
	return Results{"ratio": must(airflow.BeltPartLoad(In[unit.Ratio](c, "torque")))}
}

func hoodRates(c Case) Results {
	r := Results{}
	for name, duty := range map[string]airflow.Duty{"light": airflow.Light, "medium": airflow.Medium, "heavy": airflow.Heavy, "extra": airflow.ExtraHeavy} {
		if rate, err := airflow.HoodRate(airflow.Hood(Word(c, "hood")), duty); err == nil { // a duty that is not allowed has none
			r[name] = rate
		}
	}
	return r
}
