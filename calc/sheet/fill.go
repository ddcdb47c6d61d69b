package sheet

import (
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// pipe asks for the raceway. One whose length is not said is no nipple, whose
// limit is higher.
func pipe(a *Ask, f posed, at At) raceway.Raceway {
	r := &f.Raceway
	a.Need(&r.Conduit)
	a.Need(&r.Size)
	p := raceway.Raceway{
		Conduit: raceway.Conduit(r.Conduit.Value()), Size: raceway.TradeSize(r.Size.Value()),
		Use: use(a, f), Fittings: raceway.Fittings(r.Fittings.Value()),
	}
	if p.Conduit == raceway.FMC && p.Size == raceway.Size3by8 {
		a.Need(&r.Fittings)
	}
	at["Conduit"], at["Size"], at["Fittings"] = &Term{Place: &r.Conduit}, &Term{Place: &r.Size}, &Term{Place: &r.Fittings}
	return p
}

func use(a *Ask, f posed) raceway.Use {
	a.mind(&f.Raceway.Use)
	if !f.run && (f.nipple || IsNipple(f.Fan)) {
		return raceway.Nipple
	}
	return raceway.Run
}

// IsNipple tells whether the conduit is said to be a nipple, and no length says that it
// is longer than one may be.
func IsNipple(f *record.Fan) bool {
	length := Read("L", FromPlace, &f.Raceway.Length)
	return f.Raceway.Use.Value() == record.Nipple && !(length.Known() && length.High() > raceway.NippleMost*(1+slack))
}

// Filling answers with how the conductors fill the raceway.
func Filling(f *record.Fan) Finding[raceway.Filling] { return fillingOf(posed{Fan: f}) }

func fillingOf(f posed) Finding[raceway.Filling] {
	var a Ask
	b := conductors(&a, f.Fan)
	p := pipe(&a, f, b.at)
	return Find(&a, "raceway.fill", b.at, func() (raceway.Filling, error) {
		filling, err := raceway.Fill(p, b.now())
		return filling, inRow(err)
	})
}

// FillShare answers with the part of the raceway that its conductors fill.
func FillShare(f *record.Fan) Answer[unit.Ratio] {
	var a Ask
	b := conductors(&a, f)
	p := pipe(&a, posed{Fan: f}, b.at)
	b.show(&a)
	if bore, err := raceway.BoreOf(p.Conduit, p.Size); err == nil {
		Take(&a, "A", bore.Area)
	}
	return Solve(&a, FromPlace, "raceway.fill", b.at, func() (unit.Ratio, error) {
		filling, err := raceway.Fill(p, b.now())
		return filling.Fill, inRow(err)
	})
}

// FillVerdict judges the fill by the rule that decides it: the area allowed; a
// count of like conductors; or the table of 3/8 flexible conduit. A guessed
// count is judged by none, nor is a measured diameter whose band decides, or a length's
// whether it is a nipple.
func FillVerdict(f *record.Fan) Verdict { return amidWays(f, nippleUnsaid(f), fillVerdict) }

func fillVerdict(f posed) Verdict {
	var a Ask
	b := conductors(&a, f.Fan)
	p := pipe(&a, f, b.at)
	filling := fillingOf(f)
	fill := filling.Value
	v := Verdict{Rule: RuleFill, Method: "raceway.fill"}
	if !filling.Known() {
		v.Level, v.Wanted, v.Fault = Unjudged, filling.open(), filling.Fault
		return v
	}
	switch fill.Rule {
	case raceway.ByCount:
		v.Rule, v.Method = RuleFillCount, "raceway.fill.count"
		v.Value, v.Limit = Figure{&unit.Tally, float64(fill.Count)}, Figure{&unit.Tally, float64(fill.Most.Inch)}
	case raceway.BySmall:
		v.Rule = RuleFillSmall
		v.Limit = Figure{&unit.Tally, float64(fill.Most.Inch)}
	default:
		v.Value, v.Limit = Figure{&unit.Share, float64(fill.Fill)}, Figure{&unit.Share, float64(fill.Limit)}
	}
	if !fill.Fits {
		v.Level = Stop
	}
	for _, sign := range [2]unit.Length{-1, 1} {
		if len(b.measured) == 0 {
			break
		}
		if edge, err := raceway.Fill(p, b.atEdge(sign)); err != nil || edge.Fits != fill.Fits {
			v.Level = Unjudged
			share := FillShare(f.Fan)
			if place := share.Steps.Unsettled(); place != nil {
				v.Wanted = []record.Place{place}
			}
		}
	}
	if fill.Edge {
		v.Level = Unjudged
	}
	if count := guessed(f.Fan); count != nil {
		v.Level, v.Wanted = Unjudged, []record.Place{count}
	}
	return v
}

// SmallestRaceway answers with the smallest size of the conduit's type that
// takes the conductors.
func SmallestRaceway(f *record.Fan) Finding[raceway.Choice] {
	var a Ask
	b := conductors(&a, f)
	a.Need(&f.Raceway.Conduit)
	b.at["conduit"] = &Term{Place: &f.Raceway.Conduit}
	how := use(&a, posed{Fan: f})
	return Find(&a, "raceway.fill.search", b.at, func() (raceway.Choice, error) {
		choice, err := raceway.Smallest(raceway.Conduit(f.Raceway.Conduit.Value()), how, b.now())
		return choice, inRow(err)
	})
}

// Room answers with how many more conductors like those of a row go in. The row
// is the first of the motor's circuit, or the first; nil where there is none
// whose print can be read.
func Room(f *record.Fan) (more Answer[unit.Count], like *record.Wire) {
	var a Ask
	b := conductors(&a, f)
	p := pipe(&a, posed{Fan: f}, b.at)
	var row raceway.Row
	for i, w := range b.of {
		if w.Insulation.Value() == "" || w.Insulation.Value() == record.Unmarked {
			continue
		}
		if like == nil || carriesMotor(w) && !carriesMotor(like) {
			like, row = w, b.rows[i]
		}
	}
	if like == nil {
		return Answer[unit.Count]{}, nil
	}
	b.show(&a)
	return Solve(&a, FromPlace, "raceway.fill.room", b.at, func() (unit.Count, error) {
		n, err := raceway.Room(p, b.now(), row.Size, row.Insulation, row.Role)
		return unit.Count(n), inRow(err)
	}), like
}

// Jam answers with the ratio at which three like conductors of the motor's
// circuit may wedge in a bend; it reports false where there are no three.
func Jam(f *record.Fan) (ratio Answer[unit.Ratio], verdict Verdict, three bool) {
	var a Ask
	b := conductors(&a, f)
	at := At{}
	p := pipe(&a, posed{Fan: f}, at)
	for i, w := range b.of {
		if b.rows[i].Count != 3 || !carriesMotor(w) {
			continue
		}
		wire, err := b.now()[i].Conductor()
		bore, err2 := raceway.BoreOf(p.Conduit, p.Size)
		if err != nil || err2 != nil {
			break
		}
		inside := Take(&a, "D", bore.Inside)
		each := Take(&a, "d", wire.Diameter)
		if d, ok := b.measured[i]; ok {
			each.Band = d.Band
		}
		at["conductor"] = &Term{Place: &w.Size}
		ratio = Solve(&a, FromPlace, "raceway.jam", at, func() (unit.Ratio, error) {
			jam, err := raceway.JamRatio(inside.V(), each.V())
			return jam.Plain, err
		})
		if !ratio.Known() {
			break
		}
		jam, err := raceway.JamRatio(bore.Inside, wire.Diameter)
		verdict = Verdict{Rule: RuleJam, Method: "raceway.jam", Value: Figure{&unit.Factor, float64(jam.Plain)}, Limit: Figure{&unit.Factor, float64(jam.Oval)}}
		if err == nil && (jam.PlainLikely || jam.OvalLikely) {
			verdict.Level = Watch
		}
		return ratio, verdict, true
	}
	return Answer[unit.Ratio]{}, Verdict{}, false
}

// A Disc is a number of like conductors in the raceway's section.
type Disc struct {
	Wire     *record.Wire
	Count    int
	Diameter unit.Length
}

// Section answers with the raceway's inside diameter and its conductors, as far
// as they are known, for a drawing; it reports false without a raceway.
func Section(f *record.Fan) (inside unit.Length, discs []Disc, ok bool) {
	var a Ask
	b := conductors(&a, f)
	bore, err := raceway.BoreOf(raceway.Conduit(f.Raceway.Conduit.Value()), raceway.TradeSize(f.Raceway.Size.Value()))
	for i, r := range b.now() {
		if c, err := r.Conductor(); err == nil && r.Count > 0 {
			discs = append(discs, Disc{b.of[i], r.Count, c.Diameter})
		}
	}
	return bore.Inside, discs, err == nil
}
