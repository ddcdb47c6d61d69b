package picture

import (
	"math"
	"strings"
	"testing"
	"testing/quick"
)

func uneven() Legs {
	return Legs{
		Bars: [3]Bar{
			{Off: 0.18, Low: 0.13, High: 0.23, Far: true, Label: "Leg 1", ReadingText: "6.50 A", OffText: "+18.2 %"},
			{Off: -0.09, Low: -0.12, High: -0.06, Label: "Leg 2", ReadingText: "5.00 A", OffText: "−9.1 %"},
			{Off: -0.09, Low: -0.12, High: -0.06, Label: "Leg 3", ReadingText: "5.00 A", OffText: "−9.1 %"},
		},
		Limit: 0.1, Class: "watch", AverageText: "average 5.50 A", LimitText: "dashed: 10 % off the average",
		ReadingHead: "Reading", OffHead: "Off the average", Farthest: "farthest", Title: "Amps around their average", Description: "Three bars",
	}
}

// Bars, whiskers and limits share one scale, from the average on.
func TestLegsAreToScale(t *testing.T) {
	l := uneven()
	n := tree(t, l.UI())
	edge := func(class string, bar, corner int) float64 {
		return spots(t, all(n, "path", class)[bar])[corner].x - legsMiddle
	}
	scale := edge("picture-leg", 0, 1) / l.Bars[0].Off
	for i, b := range l.Bars {
		for what, pair := range map[string][2]float64{
			"bar": {edge("picture-leg", i, 1), b.Off}, "low": {edge("picture-whisker", i, 0), b.Low}, "high": {edge("picture-whisker", i, 1), b.High},
		} {
			if math.Abs(pair[0]-scale*pair[1]) > 0.11 {
				t.Errorf("%s of bar %d at %v, want %v", what, i, pair[0], scale*pair[1])
			}
		}
	}
	for corner, want := range map[int]float64{0: -l.Limit, 2: l.Limit} {
		if got := edge("picture-limit", 0, corner); math.Abs(got-scale*want) > 0.11 {
			t.Errorf("limit at %v, want %v", got, scale*want)
		}
	}
	if far := all(n, "path", "picture-leg-far"); len(far) != 1 {
		t.Errorf("%d bars are farthest off", len(far))
	}
}

// What the bars show stands in the table too, for those who can't see them.
func TestLegsSayTheSame(t *testing.T) {
	n := tree(t, uneven().UI())
	table := words(all(n, "table", "picture-table")[0])
	for _, text := range []string{"Leg 1", "6.50 A", "+18.2 %, farthest", "Leg 3", "−9.1 %"} {
		if !strings.Contains(table, text) {
			t.Errorf("the table lacks %q: %s", text, table)
		}
	}
}

func TestLegsStayInTheirDrawing(t *testing.T) {
	drawn := 0
	f := func(off, low, high [3]float64, limit float64) bool {
		l := uneven()
		l.Limit = frac(limit)
		for i := range l.Bars {
			l.Bars[i].Off, l.Bars[i].Low, l.Bars[i].High = 4*frac(off[i])-1, 4*frac(low[i])-1, 8*frac(high[i])-1
		}
		n := tree(t, l.UI())
		finite(t, n)
		for _, class := range []string{"picture-leg", "picture-whisker", "picture-limit"} {
			for _, p := range all(n, "path", class) {
				drawn++
				for _, q := range spots(t, p) {
					if q.x < legsMiddle-legsHalf-0.1 || q.x > legsMiddle+legsHalf+0.1 {
						t.Logf("%s at %v in %+v", class, q, l)
						return false
					}
				}
			}
		}
		return true
	}
	if err := quick.Check(f, &quick.Config{MaxCount: 300}); err != nil {
		t.Error(err)
	}
	if drawn < 1000 {
		t.Errorf("only %d shapes were drawn", drawn)
	}
}

func TestNoLegsFromNoNumbers(t *testing.T) {
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		for i := range 3 {
			l := uneven()
			*[]*float64{&l.Bars[1].Off, &l.Bars[1].Low, &l.Bars[1].High}[i] = x
			if len(all(tree(t, l.UI()), "svg", "")) != 0 {
				t.Errorf("%v is drawn", x)
			}
		}
	}
	l := uneven()
	for i := range l.Bars {
		l.Bars[i].Off, l.Bars[i].Low, l.Bars[i].High = 0, 0, 0
	}
	l.Limit = 0
	finite(t, tree(t, l.UI()))
}
