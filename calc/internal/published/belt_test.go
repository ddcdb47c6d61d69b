package published_test

import (
	"roofside/calc/belt"
	"roofside/calc/drive"
	. "roofside/calc/internal/published"
	"roofside/calc/unit"
)

var beltAnswers = map[string]answer{
	"B01": func(c Case) Results {
		return Results{"L": must(belt.ApproximateLength(In[unit.Length](c, "d"), In[unit.Length](c, "D"), In[unit.Length](c, "C")))}
	},
	"B02": func(c Case) Results {
		return Results{"C": must(belt.ApproximateCenter(In[unit.Length](c, "d"), In[unit.Length](c, "D"), In[unit.Length](c, "L")))}
	},
	"B04": func(c Case) Results {
		d, D, C := In[unit.Length](c, "d"), In[unit.Length](c, "D"), In[unit.Length](c, "C")
		return Results{
			"theta_d": must(belt.Arc(d, D, C)),
			"theta_D": must(belt.Arc(D, d, C)),
			"L":       must(belt.OpenLength(d, D, C)),
		}
	},
	"B05": arcFactor, "B07": arcFactor, "B08": arcFactor, "B10": arcFactor, "B12": arcFactor,
	"B13": datum, "B14": datum, "B16": datum, "B18": datum, "B19": datum,
	"B20": func(c Case) Results {
		tolerance, matching, err := belt.LengthTolerance(int(In[unit.Ratio](c, "designation")))
		return Results{"tolerance": must(tolerance, err), "matching_limit": matching}
	},
	"B21": exactAndShort, "B22": exactAndShort, "B23": exactAndShort,
	"B24": func(c Case) Results {
		d, D := In[unit.Length](c, "d"), In[unit.Length](c, "D")
		L := must(belt.DatumLength(drive.Section(Word(c, "section")), int(In[unit.Ratio](c, "designation"))))
		return Results{"C_exact": must(belt.CenterFromLength(d, D, L)), "C_short": must(belt.ApproximateCenter(d, D, L))}
	},
	"B27": func(c Case) Results {
		before, after := In[unit.Length](c, "d1"), In[unit.Length](c, "d2")
		return Results{
			"dC":      must(belt.BaseTravel(before, after, In[unit.Length](c, "D"), In[unit.Length](c, "L"))),
			"dC_rule": must(belt.BaseTravelByRule(before, after)),
		}
	},
	"B28": func(c Case) Results {
		design, rating := In[unit.Power](c, "design"), In[unit.Power](c, "rating")
		n := must(belt.BeltsNeeded(design, rating))
		capacity, share, err := belt.BeltCapacity(design, rating, n)
		if must(capacity, err) != belt.CapacityEnough {
			panic("as many belts as needed are not enough")
		}
		return Results{"belts": float64(n), "share": share}
	},
	"B29": func(c Case) Results {
		return Results{"shift": must(belt.BeltShift(lead(c), In[unit.Turns](c, "before"), In[unit.Turns](c, "after")))}
	},
	"B30": func(c Case) Results {
		most, aim, err := belt.AlignmentOffset(In[unit.Length](c, "span"))
		return Results{"most": must(most, err), "aim": aim}
	},
	"B31": func(c Case) Results {
		b := must(belt.BaseReach(In[unit.Length](c, "move"), In[unit.Length](c, "toward"), In[unit.Length](c, "away"),
			belt.Allowance{Toward: In[unit.Length](c, "need_toward"), Away: In[unit.Length](c, "need_away")}))
		return Results{"toward": b.Toward, "away": b.Away, "enough": yes(b.Reach == belt.ReachGood)}
	},
	"B32": func(c Case) Results {
		shorter, longer, err := belt.NearestSizes(drive.Section(Word(c, "section")), In[unit.Length](c, "length"))
		a, _, errA := belt.StandardNumbers(drive.SectionA)
		b, _, errB := belt.StandardNumbers(drive.SectionB)
		return Results{
			"shorter": float64(must(shorter, err).Number), "longer": float64(longer.Number),
			"count": float64(len(must(a, errA))), "count_b": float64(len(must(b, errB))),
		}
	},
	"B33": func(c Case) Results {
		shorter, longer, err := belt.Choices(drive.Section(Word(c, "section")), In[unit.Length](c, "d"), In[unit.Length](c, "D"), In[unit.Length](c, "C"))
		return Results{
			"shorter": float64(must(shorter, err).Number), "C_shorter": shorter.Center,
			"longer": float64(longer.Number), "C_longer": longer.Center, "move": longer.Move,
		}
	},
	"B34": func(c Case) Results {
		length := func(n string) unit.Length {
			return must(belt.PitchLength(drive.Section(Word(c, n)), count(c, "number_"+n)))
		}
		return Results{"a": length("a"), "b": length("b")}
	},
	"B35": func(c Case) Results {
		spread := func(n string) unit.Length { return belt.NumberSpread(drive.Section(Word(c, n))) }
		return Results{"a": spread("a"), "b": spread("b"), "c": spread("c")}
	},
	"C10": func(c Case) Results {
		return Results{
			"Ac180": must(belt.ArcFactor(In[unit.Angle](c, "arc_1"))),
			"Ac120": must(belt.ArcFactor(In[unit.Angle](c, "arc_2"))),
			"Ac83":  must(belt.ArcFactor(In[unit.Angle](c, "arc_3"))),
		}
	},
}

// arcFactor takes any center: the arc depends on (D − d)/C alone.
func arcFactor(c Case) Results {
	const C, d = 20 * unit.Inch, 4 * unit.Inch
	arc := must(belt.ArcSmall(d, d+C*unit.Length(In[unit.Ratio](c, "x")), C))
	return Results{"theta_small": arc, "factor": must(belt.ArcFactor(arc))}
}

func datum(c Case) Results {
	section, number := drive.Section(Word(c, "section")), int(In[unit.Ratio](c, "designation"))
	L := must(belt.DatumLength(section, number))
	if n := must(belt.DatumNumber(section, L)); n != number {
		panic("the length does not lead back to the number")
	}
	return Results{"datum_length": L}
}

func exactAndShort(c Case) Results {
	d, D, C := In[unit.Length](c, "d"), In[unit.Length](c, "D"), In[unit.Length](c, "C")
	return Results{
		"L_exact":     must(belt.OpenLength(d, D, C)),
		"L_short":     must(belt.ApproximateLength(d, D, C)),
		"theta_exact": must(belt.ArcSmall(d, D, C)),
		"theta_57":    must(belt.ArcByRule(d, D, C, belt.RuleOf57)),
		"theta_60":    must(belt.ArcByRule(d, D, C, belt.RuleOf60)),
		"span":        must(belt.Span(d, D, C)),
	}
}
