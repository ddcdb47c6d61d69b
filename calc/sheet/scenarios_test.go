package sheet_test

import (
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"roofside/calc/number"
	"roofside/calc/record"
	"roofside/calc/scenario"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

var levelNames = map[sheet.Level]string{sheet.Within: "within", sheet.Unjudged: "unjudged", sheet.Watch: "watch", sheet.Stop: "stop"}

func scenarios(t testing.TB) []scenario.Scenario {
	t.Helper()
	all, err := scenario.Load(os.DirFS("../../testdata/scenarios"))
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// linkedFan is the record that a link opens; a part that is refused fails.
func linkedFan(t testing.TB, link string) *record.Fan {
	t.Helper()
	texts, problems := record.ParseFragment(link)
	f := record.NewFan()
	for _, p := range append(problems, f.Apply(texts)...) {
		t.Errorf("%s=%s: %v", p.Key, p.Text, p.Err)
	}
	return f
}

func TestScenarios(t *testing.T) {
	for _, s := range scenarios(t) {
		t.Run(s.ID, func(t *testing.T) {
			a := ask(linkedFan(t, s.Link))
			on := sheet.Subject(s.Page)
			stands := a.Stands(on)
			if worst := sheet.Plated(stands); !slices.Contains(s.Plate, levelNames[worst.Level]) {
				t.Errorf("the plate is %s by %s (%s), not %s", levelNames[worst.Level], worst.Name, worst.Rule, strings.Join(s.Plate, " or "))
			}
			for _, said := range s.Says {
				if said.Levels != nil {
					heard(t, a, stands, said)
				} else {
					spoken(t, a, said)
				}
			}
			order := a.Order(on)
			to := ""
			if order.Setting {
				to = strconv.FormatFloat(float64(order.To), 'g', -1, 64)
			}
			if !s.Order.Meets(order.Do, to) {
				t.Errorf("ordered is %s %s, not %s", order.Do, to, s.Order)
			}
			if t.Failed() {
				t.Logf("%s: %s (%s)", s.Where, s.Why, s.Authority)
			}
		})
	}
}

// heard holds a verdict to its level.
func heard(t *testing.T, a asked, stands []sheet.Held, said scenario.Said) {
	v, ok := sheet.Named(stands, said.Name)
	if !ok {
		v, ok = sheet.Named(a.Stands(sheet.OfRecord), said.Name)
	}
	switch {
	case !ok:
		t.Errorf("%s does not stand", said.Name)
	case ok && !slices.Contains(said.Levels, levelNames[v.Level]):
		t.Errorf("%s is %s (%s), not %s", said.Name, levelNames[v.Level], v.Rule, strings.Join(said.Levels, " or "))
	}
}

// spoken holds an answer to its value.
func spoken(t *testing.T, a asked, said scenario.Said) {
	answer, ok := answerOf(said.Name)
	if !ok {
		t.Errorf("no answer is named %s", said.Name)
		return
	}
	got := answer(a)
	if said.None || !got.known {
		if said.None == got.known {
			t.Errorf("%s is known %v: %v", said.Name, got.known, got.base)
		}
		return
	}
	want, _, err := number.ParseQuantity(said.Value, got.kind)
	if err != nil {
		t.Errorf("%s: %v", said.Name, err)
		return
	}
	within, err := tolerance(said.Tolerance, got.kind)
	if err != nil {
		t.Errorf("%s: %v", said.Name, err)
		return
	}
	if math.Abs(got.base-want) > within+1e-9*math.Abs(want) {
		_, symbol, _ := strings.Cut(said.Value, " ")
		u, _ := got.kind.Unit(symbol)
		if u.Size == 0 {
			u.Size = 1
		}
		t.Errorf("%s is %.5g, not %s ± %s", said.Name, u.Of(got.base), said.Value, said.Tolerance)
	}
}

// tolerance reads a difference of a kind in one of its units.
func tolerance(text string, k *unit.Kind) (float64, error) {
	x, _, err := number.ParseQuantity(text, k)
	if err != nil {
		return 0, err
	}
	zero, _, err := number.ParseQuantity(strings.Replace(text, strings.Fields(text)[0], "0", 1), k)
	return x - zero, err
}

// A test of this size sees what examples by hand don't.
func TestScenariosAreMany(t *testing.T) {
	pages, within, all := map[string]int{}, 0, scenarios(t)
	for _, s := range all {
		switch pages[s.Page]++; s.Page {
		case "airflow":
			pages["drive"]++
		}
		if slices.Equal(s.Plate, []string{"within"}) {
			within++
		}
	}
	if len(all) < 250 || 3*within < len(all) {
		t.Errorf("%d scenarios, %d of them in order", len(all), within)
	}
	for _, page := range []string{"drive", "belt", "power", "raceway"} { // drive with its air
		if pages[page] < 60 {
			t.Errorf("%d of %s", pages[page], page)
		}
	}
}
