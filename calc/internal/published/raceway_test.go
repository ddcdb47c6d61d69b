package published_test

import (
	"slices"
	"strconv"
	"strings"

	. "roofside/calc/internal/published"
	"roofside/calc/raceway"
	"roofside/calc/unit"
)

var racewayAnswers = map[string]answer{
	"D01": insideOf, "D02": insideOf, "D04": insideOf, "D05": insideOf, "D06": insideOf,
	"D08": func(c Case) Results {
		return Results{"area": must(raceway.ConductorOf(wire(c, "size"), raceway.Insulation(Word(c, "insulation")))).Area}
	},
	"D09": func(c Case) Results {
		return Results{
			"covered": must(raceway.ConductorOf(wire(c, "size"), raceway.RHW)).Area,
			"plain":   must(raceway.ConductorOf(wire(c, "size"), raceway.RHWPlain)).Area,
		}
	},
	"D10": mostAlike, "D12": mostAlike, "D13": mostAlike, "D14": mostAlike, "D16": mostAlike, "D17": mostAlike,
	"D18": func(c Case) Results {
		r := raceway.Raceway{Conduit: raceway.FMC, Size: raceway.Size3by8, Use: raceway.Run, Fittings: raceway.Fittings(Word(c, "fittings"))}
		insulation := raceway.Insulation(Word(c, "insulation"))
		most := must(raceway.MostAlike(r, wire(c, "wire"), insulation)).Inch
		f := must(raceway.Fill(r, []raceway.Row{
			{Size: wire(c, "wire"), Insulation: insulation, Count: most, Role: raceway.Circuit},
			{Size: wire(c, "wire"), Insulation: insulation, Count: 1, Role: raceway.Ground},
		}))
		return Results{"most": float64(most), "with_ground": yes(f.Fits)}
	},
	"D20": mixedFill, "D21": mixedFill, "D22": mixedFill, "D23": mixedFill,
	"D24": func(c Case) Results {
		return Results{
			"a": float64(must(raceway.RoundCount(float64(In[unit.Ratio](c, "a"))))),
			"b": float64(must(raceway.RoundCount(float64(In[unit.Ratio](c, "b"))))),
		}
	},
	"D25": func(c Case) Results {
		return Results{"limit": must(raceway.FillLimit(5, must(raceway.UseOf(In[unit.Length](c, "length")))))}
	},
	"D26": jam, "D27": jam, "D28": jam,
	"D29": func(c Case) Results {
		v := must(raceway.BoxOf(raceway.Shape(Word(c, "shape")), Word(c, "size"))).Volume
		return Results{"inch": v, "metric": v}
	},
	"D31": func(c Case) Results { return Results{"volume": must(raceway.Allowance(wire(c, "wire")))} },
	"D32": func(c Case) Results {
		v := must(raceway.BoxOf(raceway.Shape(Word(c, "shape")), Word(c, "size"))).Volume
		return Results{"most": float64(must(raceway.MostConductors(v, wire(c, "wire"))))}
	},
	"D33": func(c Case) Results {
		f := must(raceway.FillBox(In[unit.Volume](c, "volume"), []raceway.BoxRow{
			{Item: raceway.BoxConductor, Size: wire(c, "wire"), Count: count(c, "count")},
			{Item: raceway.BoxGround, Size: wire(c, "wire"), Count: count(c, "grounds")},
		}, edition(c)))
		return Results{"needed": f.Needed, "fits": yes(f.Fits)}
	},
	"D34": groundsInBox, "D35": groundsInBox,
	"D36": func(c Case) Results {
		f := must(raceway.BoxNeeded([]raceway.BoxRow{
			{Item: raceway.BoxConductor, Size: wire(c, "wire"), Count: 2},
			{Item: raceway.BoxDevice, Size: wire(c, "wire"), Count: 1},
		}, edition(c)))
		return Results{"device": f.Devices}
	},
	"D39": func(c Case) Results {
		return Results{"least": must(raceway.ConduitBodyLeast(conduit(c), trade(c, "size")))}
	},
	"S01": support, "S02": support, "S03": support, "S04": support, "S05": support, "S06": support, "S07": support, "S08": support, "S09": support,
	"S10": straps, "S11": straps, "S12": straps,
	"S13": func(c Case) Results {
		return Results{"sticks": float64(must(raceway.Sticks(In[unit.Length](c, "length"))))}
	},
	"S14": func(c Case) Results { return Results{"cut": must(raceway.WireCut(In[unit.Length](c, "run")))} },
	"D40": hangingFree, "D41": hangingFree,
	"D43": groundPath, "D44": groundPath, "D45": groundPath,
	"D47": func(c Case) Results {
		return Results{"wet": yes(must(raceway.Interior(raceway.Place(Word(c, "place")))) == raceway.Wet)}
	},
	"D48": func(Case) Results { return Results{"least": raceway.DrainLeast, "most": raceway.DrainMost} },
	"D49": func(c Case) Results {
		return Results{"asked": yes(must(raceway.BushingAsked(wire(c, "wire")))), "asked_larger": yes(must(raceway.BushingAsked(wire(c, "larger"))))}
	},
	"D51": pipeThread, "D52": pipeThread, "D53": pipeThread,
	"D54": func(c Case) Results {
		t := must(raceway.ThreadOf(trade(c, "size")))
		return Results{"small": t.Small, "effective": t.Effective}
	},
	"D55": func(c Case) Results {
		h := must(raceway.HoleOf(trade(c, "size")))
		return Results{"least": h.Least, "nominal": h.Nominal, "most": h.Most}
	},
	"D56": func(c Case) Results {
		h := must(raceway.HoleOf(trade(c, "size")))
		return Results{"least": h.Least, "nominal": h.Nominal}
	},
	"D59": func(Case) Results { return Results{"least": raceway.FreeConductor} },
	"D60": func(c Case) Results {
		a := must(raceway.Join(raceway.End{Kind: raceway.Hub, Size: trade(c, "hub")}, raceway.End{Kind: raceway.FittingEnd, Size: trade(c, "fitting")},
			raceway.Indoors, raceway.UpTo250))
		if len(a.Parts) != 1 || a.Parts[0].Kind != raceway.ReducingBushing || a.Parts[0].From.Face != raceway.Male || a.Parts[0].To.Face != raceway.Female {
			panic("not one bushing, male to female")
		}
		male, female := a.Parts[0].From.Thread, a.Parts[0].To.Thread
		smaller := false
		for _, k := range a.Conditions {
			smaller = smaller || k == raceway.SmallerRules
		}
		return Results{
			"male_per_inch": male.PerInch, "male": male.Outside,
			"female_per_inch": female.PerInch, "female": female.Outside, "smaller_rules": yes(smaller),
		}
	},
	"D61": func(c Case) Results {
		size := wire(c, "wire")
		f := must(raceway.Fill(raceway.Raceway{Conduit: conduit(c), Size: trade(c, "size"), Use: raceway.Run}, []raceway.Row{
			{Size: size, Insulation: raceway.THWN2, Count: 3, Role: raceway.Circuit},
			{Size: size, Insulation: raceway.THWN2, Count: 1, Role: raceway.Ground},
		}))
		k := onRoof(c)
		at60 := must(raceway.AmpacityOf(size, k))
		k.Terminals = raceway.Column75
		at75 := must(raceway.AmpacityOf(size, k))
		return Results{"fill": f.Fill, "factor": float64(at60.Ambient), "corrected": at60.Corrected, "at_60": at60.Usable, "at_75": at75.Usable}
	},
	"R01": func(c Case) Results {
		rows := []raceway.Row{like(c, "a", raceway.THHN), like(c, "b", raceway.THHN), like(c, "c", raceway.THHN)}
		choice := must(raceway.Smallest(conduit(c), raceway.Run, rows))
		each := must(raceway.SmallestOfEach(raceway.Run, rows))
		if !slices.ContainsFunc(each, func(k raceway.Choice) bool { return k.Conduit == choice.Conduit && k.Size == choice.Size }) {
			panic("the smallest of each type is another")
		}
		below := must(raceway.Fill(raceway.Raceway{Conduit: conduit(c), Size: raceway.Size1by2, Use: raceway.Run}, rows))
		inches := map[raceway.TradeSize]float64{raceway.Size1by2: 0.5, raceway.Size3by4: 0.75, raceway.Size1: 1}
		return Results{"size": inches[choice.Size], "fits_below": yes(below.Fits)}
	},
	"R02": func(c Case) Results {
		return Results{"nipple": must(raceway.BoreOf(conduit(c), trade(c, "size"))).Nipple}
	},
	"R03": func(c Case) Results {
		insulation := raceway.Insulation(Word(c, "insulation"))
		f := must(raceway.Fill(raceway.Raceway{Conduit: conduit(c), Size: trade(c, "size"), Use: raceway.Nipple},
			[]raceway.Row{like(c, "a", insulation), like(c, "b", insulation)}))
		return Results{"area": f.Area, "fits": yes(f.Fits)}
	},
	"R04": func(c Case) Results {
		f := must(raceway.FillBox(21*unit.CubicInch, []raceway.BoxRow{
			{Item: raceway.BoxConductor, Size: wire(c, "wire"), Count: count(c, "conductors")},
			{Item: raceway.BoxDevice, Size: wire(c, "wire"), Count: count(c, "devices")},
			{Item: raceway.BoxGround, Size: wire(c, "wire"), Count: count(c, "grounds")},
		}, edition(c)))
		return Results{"needed": f.Needed}
	},
	"R08": func(c Case) Results {
		r := Results{}
		for name := range c.Inputs {
			n := must(raceway.Designator(trade(c, name)))
			if must(raceway.SizeOf(n)) != trade(c, name) {
				panic("the designator does not lead back to the size")
			}
			r[name] = float64(n)
		}
		return r
	},
	"R09": func(c Case) Results { return Results{"diameter": must(raceway.GaugeDiameter(wire(c, "size")))} },
	"R12": func(c Case) Results {
		r := Results{}
		for name, k := range map[string]raceway.Conduit{"emt": raceway.EMT, "imc": raceway.IMC, "rmc": raceway.RMC} {
			r[name] = must(raceway.OutsideOf(k, trade(c, "size")))
		}
		return r
	},
	"R14": func(c Case) Results {
		rating := func(name string, l raceway.Location) float64 {
			return float64(must(raceway.RatingOf(raceway.Insulation(Word(c, name)), l)))
		}
		return Results{"wet": rating("wet", raceway.Wet), "dry": rating("dry", raceway.Dry)}
	},
	"R15": func(c Case) Results {
		insulation := raceway.Insulation(Word(c, "insulation"))
		r := raceway.Raceway{Conduit: conduit(c), Size: trade(c, "size"), Use: raceway.Run}
		rows := []raceway.Row{{Size: wire(c, "wire"), Insulation: insulation, Count: count(c, "count"), Role: raceway.Circuit}}
		return Results{"more": float64(must(raceway.Room(r, rows, wire(c, "wire"), insulation, raceway.Circuit)))}
	},
	"R16": func(c Case) Results {
		return Results{"volume": must(raceway.SmallestBox(In[unit.Volume](c, "volume"), raceway.Shape(Word(c, "shape")))).Volume}
	},
	"R17": func(c Case) Results {
		b, f, err := raceway.SmallestBoxFor(raceway.Shape(Word(c, "shape")), []raceway.BoxRow{
			{Item: raceway.BoxConductor, Size: wire(c, "wire"), Count: count(c, "count")},
			{Item: raceway.BoxGround, Size: wire(c, "wire"), Count: count(c, "grounds")},
		}, edition(c))
		return Results{"volume": must(b, err).Volume, "needed": f.Needed}
	},
	"R18": func(c Case) Results {
		over := func(name string) float64 {
			return yes(must(raceway.ToGroundOf(In[unit.Voltage](c, name))) == raceway.Over250)
		}
		return Results{"over_a": over("a"), "over_b": over("b")}
	},
	"R06": func(c Case) Results {
		insulation := raceway.Insulation(Word(c, "insulation"))
		area := func(name string) unit.Area { return must(raceway.ConductorOf(wire(c, name), insulation)).Area }
		return Results{"three": 3 * area("a_size"), "b": area("b_size"), "c": area("c_size")}
	},
}

// like is a row of as many conductors as an input says.
func like(c Case, name string, insulation raceway.Insulation) raceway.Row {
	return raceway.Row{Size: wire(c, name+"_size"), Insulation: insulation, Count: count(c, name), Role: raceway.Circuit}
}

func wire(c Case, name string) raceway.WireSize   { return raceway.WireSize(Word(c, name)) }
func trade(c Case, name string) raceway.TradeSize { return raceway.TradeSize(Word(c, name)) }
func conduit(c Case) raceway.Conduit              { return raceway.Conduit(Word(c, "conduit")) }
func edition(c Case) raceway.Edition              { return raceway.Edition(Word(c, "edition")) }

// gauge returns the number of a wire size, 0 for 1/0 and -1 for 2/0.
func gauge(w raceway.WireSize) float64 {
	text, zeros := strings.CutSuffix(string(w), "/0")
	n, err := strconv.Atoi(text)
	if err != nil {
		panic(err)
	}
	if zeros {
		n = 1 - n
	}
	return float64(n)
}

func insideOf(c Case) Results {
	b := must(raceway.BoreOf(conduit(c), trade(c, "size")))
	r := Results{"inside": b.Inside, "area": b.Area}
	for _, e := range c.Expected {
		if e.Name == "over_two" {
			r["over_two"] = b.OverTwo
		}
	}
	return r
}

func mostAlike(c Case) Results {
	r := raceway.Raceway{Conduit: conduit(c), Size: trade(c, "size"), Use: raceway.Run}
	return Results{"most": float64(must(raceway.MostAlike(r, wire(c, "wire"), raceway.Insulation(Word(c, "insulation")))).Inch)}
}

func mixedFill(c Case) Results {
	f := must(raceway.Fill(raceway.Raceway{Conduit: conduit(c), Size: trade(c, "size"), Use: raceway.Use(Word(c, "use"))}, []raceway.Row{
		{Size: wire(c, "wire"), Insulation: raceway.THHN, Count: count(c, "count"), Role: raceway.Circuit},
		{Size: wire(c, "ground"), Insulation: raceway.THHN, Count: 1, Role: raceway.Ground},
	}))
	return Results{"area": f.Area, "fill": f.Fill, "limit": f.Limit, "fits": yes(f.Fits)}
}

func jam(c Case) Results {
	b := must(raceway.BoreOf(conduit(c), trade(c, "size")))
	w := must(raceway.ConductorOf(wire(c, "wire"), raceway.THHN))
	j := must(raceway.JamRatio(b.Inside, w.Diameter))
	return Results{"plain": float64(j.Plain), "oval": float64(j.Oval), "likely": yes(j.PlainLikely)}
}

func groundsInBox(c Case) Results {
	f := must(raceway.FillBox(21*unit.CubicInch, []raceway.BoxRow{{Item: raceway.BoxGround, Size: wire(c, "wire"), Count: count(c, "grounds")}}, edition(c)))
	return Results{"grounds": f.Grounds}
}

func hangingFree(c Case) Results {
	return Results{"most": must(raceway.UnsecuredMost(conduit(c), trade(c, "size")))}
}

func support(c Case) Results {
	s := must(raceway.SupportOf(conduit(c), trade(c, "size")))
	r := Results{"spacing": s.Spacing, "ends": s.Ends}
	if s.Free > 0 && c.ID > "S07" { // the source of the others names none
		r["free"] = s.Free
	}
	return r
}

func straps(c Case) Results {
	return Results{"straps": float64(must(raceway.Straps(conduit(c), trade(c, "size"), In[unit.Length](c, "length"), raceway.Mounting(Word(c, "mounting")))))}
}

func groundPath(c Case) Results {
	p := must(raceway.FlexAsGround(conduit(c), trade(c, "size"), In[unit.Current](c, "rating"), In[unit.Length](c, "length"), raceway.Mounting(Word(c, "mounting"))))
	return Results{"wire": yes(p.Wire)}
}

func pipeThread(c Case) Results {
	t := must(raceway.ThreadOf(trade(c, "size")))
	return Results{"per_inch": t.PerInch, "outside": t.Outside}
}
