package published_test

import (
	"roofside/calc/drive"
	. "roofside/calc/internal/published"
	"roofside/calc/unit"
)

var driveAnswers = map[string]answer{
	"A01": plateSlip("n", "n_sync"),
	"A02": func(c Case) Results {
		return Results{"pd_fan": must(drive.DrivenSheave(In[unit.Speed](c, "n_motor"), In[unit.Speed](c, "n_fan"), In[unit.Length](c, "pd_motor")))}
	},
	"A03": drivenSpeed, "A05": drivenSpeed, "A07": drivenSpeed, "A08": drivenSpeed, "A10": drivenSpeed,
	"A12": func(c Case) Results {
		poles := int(In[unit.Ratio](c, "poles"))
		sync := must(drive.SynchronousSpeed(In[unit.Frequency](c, "f"), poles))
		behind := must(drive.SynchronousSpeed(In[unit.Frequency](c, "f_rotor"), poles)) // the field as the rotor sees it
		return Results{"slip": must(drive.Slip(sync, sync-behind)), "n": sync - behind}
	},
	"A13": func(c Case) Results {
		sync := must(drive.SynchronousSpeed(In[unit.Frequency](c, "f"), int(In[unit.Ratio](c, "poles"))))
		return Results{"n": must(drive.SpeedAtSlip(sync, In[unit.Ratio](c, "slip")))}
	},
	"A14": outside, "A15": outside,
	"A16": func(c Case) Results {
		r := Results{}
		for _, s := range []drive.Section{drive.SectionA, drive.SectionAX, drive.SectionB, drive.SectionBX} {
			if d, ok := drive.MinimumDatum(s, drive.GrooveType(Word(c, "groove"))); ok {
				r["min_datum_"+string(s)] = d
			}
		}
		return r
	},
	"A18": func(c Case) Results {
		return Results{"pd2": must(drive.SheaveForFlow(In[unit.Length](c, "pd1"), In[unit.Flow](c, "q1"), In[unit.Flow](c, "q2")))}
	},
	"A19": plateSlip("n_fl", "n_sync"), "A20": plateSlip("n_fl", "n_sync"), "A21": plateSlip("n_fl", "n_sync"),
	"A22": plateSlip("n_fl", "n_sync"), "A23": plateSlip("n_fl", "n_sync"),
	"A24": func(c Case) Results {
		plate, from, f := In[unit.Speed](c, "n_plate"), In[unit.Frequency](c, "f_plate"), In[unit.Frequency](c, "f")
		poles := int(In[unit.Ratio](c, "poles"))
		return Results{
			"n":                must(drive.OnDrive(plate, from, f, poles)),
			"n_proportional":   must(drive.OnDriveProportional(plate, from, f, poles)),
			"n_const_slip_rpm": must(drive.OnDriveConstantSlip(plate, from, f, poles)),
		}
	},
	"A25": func(c Case) Results {
		n, d, D := In[unit.Speed](c, "n_driver"), In[unit.Length](c, "pd_driver"), In[unit.Length](c, "pd_driven")
		return Results{"n_no_slip": must(drive.Driven(n, d, D)), "n_driven": must(drive.DrivenWithSlip(n, d, D, In[unit.Ratio](c, "belt_slip")))}
	},
	"A26": func(c Case) Results {
		d, D := In[unit.Length](c, "pd_driver"), In[unit.Length](c, "pd_driven")
		section, groove := drive.Section(Word(c, "section")), drive.GrooveType(Word(c, "groove"))
		right := must(drive.Ratio(d, D))
		wrong := must(drive.Ratio(must(drive.OutsideFromPitch(d, section, groove)), must(drive.OutsideFromPitch(D, section, groove))))
		return Results{"ratio_true": right, "ratio_OD": wrong, "error": wrong/right - 1}
	},
	"A27": opening, "A28": opening, "A29": opening, "A30": opening,
	"A31": func(c Case) Results {
		lead := must(drive.LeadForTravel(In[unit.Length](c, "dPD_total"), unit.Turns(In[unit.Ratio](c, "turns")), In[unit.Angle](c, "groove_angle")))
		return Results{"lead": lead, "threads_per_inch": float64(unit.Inch / lead)}
	},
	"A33": func(c Case) Results {
		return Results{"creep": must(drive.Creep(In[unit.Speed](c, "expected"), In[unit.Speed](c, "measured")))}
	},
	"A34": func(c Case) Results {
		ratio, band, err := drive.Count(In[unit.Turns](c, "fan_turns"), In[unit.Turns](c, "motor_turns"), In[unit.Turns](c, "reading"))
		return Results{"ratio": must(ratio, err), "band": band}
	},
	"A35": func(c Case) Results {
		n, N, d, D := In[unit.Speed](c, "n_driver"), In[unit.Speed](c, "n_driven"), In[unit.Length](c, "pd_driver"), In[unit.Length](c, "pd_driven")
		return Results{"pd_driver": must(drive.DriverSheave(n, N, D)), "n_driver": must(drive.MotorSpeedFor(N, d, D))}
	},
	"A36": func(c Case) Results {
		return Results{"smaller": must(drive.GapChange(In[unit.Length](c, "change"), In[unit.Angle](c, "groove_angle")))}
	},
	"A37": func(c Case) Results {
		return Results{"pitch_d": must(drive.PitchFromGap(In[unit.Length](c, "outside_d"), In[unit.Length](c, "gap"),
			drive.Section(Word(c, "section")), In[unit.Angle](c, "groove_angle")))}
	},
	"A38": func(c Case) Results {
		s := must(drive.NewAdjustable(In[unit.Turns](c, "t1"), In[unit.Length](c, "d1"), In[unit.Turns](c, "t2"), In[unit.Length](c, "d2")))
		return Results{
			"pd": must(s.Pitch(In[unit.Turns](c, "turns"))), "turns": must(s.Turns(In[unit.Length](c, "pd"))), "per_turn": s.PerTurn(),
		}
	},
	"A39": func(c Case) Results {
		return Results{"shift": must(drive.CenterShift(In[unit.Turns](c, "turns"), lead(c)))}
	},
	"A40": func(c Case) Results {
		is := func(n string, m drive.Multiple) float64 {
			return yes(must(drive.Harmonic(In[unit.Speed](c, "expected"), In[unit.Speed](c, n))) == m)
		}
		return Results{"twice": is("n1", drive.Twice), "half": is("n2", drive.Half), "neither": is("n3", drive.Plain)}
	},
	"A56": func(c Case) Results {
		low := func(n string) float64 {
			return yes(must(drive.LowSpeed(In[unit.Speed](c, "expected"), In[unit.Speed](c, n))))
		}
		return Results{"two_windings": low("n1"), "one_winding": low("n2"), "neither": low("n3")}
	},
	"A57": func(c Case) Results {
		can := func(n string) float64 {
			return yes(must(drive.MotorReading(In[unit.Speed](c, "field"), In[unit.Speed](c, "slip"), In[unit.Speed](c, n))))
		}
		return Results{"breakdown": can("n1"), "idle": can("n2"), "below": can("n3"), "twice": can("n4"), "half": can("n5")}
	},
	"A41": leastSheaves, "A47": leastSheaves,
	"A48": func(c Case) Results {
		r := Results{}
		for _, n := range []string{"1", "2", "3"} {
			d, ok, err := drive.MinimumMotorOutside(In[unit.Power](c, "p"+n), count(c, "poles_"+n))
			if must(ok, err) {
				r["d"+n] = d
			}
		}
		return r
	},
	"A49": func(c Case) Results {
		section := drive.Section(Word(c, "section"))
		return Results{"pitch": must(drive.PitchFromOutside(In[unit.Length](c, "outside"), section, drive.Standard)), "spread": drive.NarrowSpread(section)}
	},
	"A42": func(Case) Results {
		r := Results{}
		for _, s := range []drive.Section{drive.Section3V, drive.Section3VX, drive.Section5V, drive.Section5VX} {
			if d, ok := drive.MinimumOutside(s); ok {
				r["least_"+string(s)] = d
			}
		}
		return r
	},
	"A43": func(c Case) Results {
		slowest, fastest, err := drive.PlateBand(In[unit.Speed](c, "sync"), In[unit.Speed](c, "plate"))
		return Results{"slowest": must(slowest, err), "fastest": fastest}
	},
	"A44": func(c Case) Results {
		return Results{"n": must(drive.SpeedUnderLoad(In[unit.Speed](c, "sync"), In[unit.Speed](c, "plate"), In[unit.Ratio](c, "load")))}
	},
	"A45": func(c Case) Results {
		r := Results{}
		for _, n := range []string{"a", "b"} {
			least, _ := drive.UsualLeastTurns(drive.Section(Word(c, n)))
			most, _ := drive.UsualMostTurns(drive.Section(Word(c, n)))
			r["least_"+n], r["most_"+n] = least, most
		}
		return r
	},
	"A46": func(c Case) Results {
		return Results{"f": must(drive.FrequencyFor(In[unit.Speed](c, "n_plate"), In[unit.Frequency](c, "f_plate"), In[unit.Speed](c, "n"), count(c, "poles")))}
	},
	"A32": func(c Case) Results {
		stages := func(slip unit.Ratio) unit.Speed {
			n := must(drive.DrivenWithSlip(In[unit.Speed](c, "n1"), In[unit.Length](c, "d1"), In[unit.Length](c, "d2"), slip))
			return must(drive.DrivenWithSlip(n, In[unit.Length](c, "d3"), In[unit.Length](c, "d4"), slip))
		}
		return Results{"n_no_slip": stages(0), "n_slip": stages(In[unit.Ratio](c, "slip"))}
	},
	"B25": func(c Case) Results {
		return Results{"v": must(drive.BeltSpeed(In[unit.Speed](c, "n"), In[unit.Length](c, "pd")))}
	},
	"B26": func(c Case) Results {
		return Results{"pd_max": must(drive.PitchAtBeltSpeed(drive.BeltSpeedLimit, In[unit.Speed](c, "n")))}
	},
	"D32": func(Case) Results { return Results{"range_about_nominal": drive.AdjustableRange} },
}

func plateSlip(plate, field string) answer {
	return func(c Case) Results {
		f, n := In[unit.Frequency](c, "f"), In[unit.Speed](c, plate)
		poles := must(drive.Poles(f, n))
		if poles != int(In[unit.Ratio](c, "poles")) {
			panic("poles not found from the plate")
		}
		sync := must(drive.SynchronousSpeed(f, poles))
		return Results{field: sync, "slip": must(drive.Slip(sync, n))}
	}
}

func drivenSpeed(c Case) Results {
	return Results{"n_driven": must(drive.Driven(In[unit.Speed](c, "n_driver"), In[unit.Length](c, "pd_driver"), In[unit.Length](c, "pd_driven")))}
}

func outside(c Case) Results {
	section, groove := drive.Section(Word(c, "section")), drive.GrooveType(Word(c, "groove"))
	od := must(drive.OutsideFromPitch(In[unit.Length](c, "datum_d"), section, groove))
	return Results{
		"outside_d":    od,
		"pitch_d":      must(drive.PitchFromOutside(od, section, groove)),
		"groove_angle": must(drive.GrooveOf(section, groove)).Flank(od).Angle,
	}
}

func leastSheaves(c Case) Results {
	r := Results{}
	for _, n := range []string{"1", "2", "3", "4", "5"} {
		d, ok, err := drive.MinimumMotorSheave(In[unit.Power](c, "p"+n), count(c, "poles"))
		if must(ok, err) {
			r["d"+n] = d
		}
	}
	return r
}

func lead(c Case) unit.Length { return unit.Inch / unit.Length(In[unit.Ratio](c, "threads_per_inch")) }

func opening(c Case) Results {
	per := must(drive.PitchPerTurn(lead(c), In[unit.Angle](c, "groove_angle")))
	const closed = 4 * unit.Inch
	sheave := must(drive.NewAdjustableRate(0, closed, per))
	return Results{
		"dPD_per_turn": per,
		"dPD_5_turns":  closed - must(sheave.Pitch(5)),
		"dPD_6_turns":  closed - must(sheave.Pitch(6)),
	}
}
