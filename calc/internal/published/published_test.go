package published

import (
	"strings"
	"testing"

	"roofside/calc/unit"
)

const head = "id,topic,inputs,expected,tolerance,source,how_known,class\n"

func read(t *testing.T, row string) Case {
	t.Helper()
	cases, err := Read(strings.NewReader("# remark\n" + head + row + "\n"))
	if err != nil {
		t.Fatal(err)
	}
	return cases[0]
}

func TestReadRefuses(t *testing.T) {
	for name, text := range map[string]string{
		"other columns":        "id,topic\nA,b\n",
		"no unit":              head + "A,t,x=1[in],y=1,abs=1,s,derived,derived\n",
		"word expected":        head + "A,t,x=1[in],y=large,abs=1,s,derived,derived\n",
		"no tolerance":         head + "A,t,x=1[in],y=1[in],,s,derived,derived\n",
		"negative tolerance":   head + "A,t,x=1[in],y=1[in],abs=-1,s,derived,derived\n",
		"unknown tolerance":    head + "A,t,x=1[in],y=1[in],about=1,s,derived,derived\n",
		"tolerance of nothing": head + "A,t,x=1[in],y=1[in],z:abs=1,s,derived,derived\n",
		"no source":            head + "A,t,x=1[in],y=1[in],abs=1,,derived,derived\n",
		"open bracket":         head + "A,t,x=1[in,y=1[in],abs=1,s,derived,derived\n",
		"input twice":          head + "A,t,x=1[in];x=2[in],y=1[in],abs=1,s,derived,derived\n",
		"case twice":           head + strings.Repeat("A,t,x=1[in],y=1[in],abs=1,s,derived,derived\n", 2),
	} {
		if _, err := Read(strings.NewReader(text)); err == nil {
			t.Errorf("%s: read without an error", name)
		}
	}
}

func TestCompare(t *testing.T) {
	c := read(t, "A,t,x=2[in],y=50[mm];z=3[1],y:abs=1;z:rel=0.1,s,derived,derived")
	if x := In[unit.Length](c, "x"); x != 2*unit.Inch {
		t.Errorf("x = %v", x)
	}
	for _, test := range []struct {
		name   string
		got    Results
		faults int
	}{
		{"within", Results{"y": 2 * unit.Inch, "z": 3.2}, 0},
		{"on the edge", Results{"y": 51 * unit.Millimeter, "z": 3.3}, 0},
		{"outside absolute", Results{"y": 51.1 * unit.Millimeter, "z": 3.0}, 1},
		{"outside relative", Results{"y": 50 * unit.Millimeter, "z": 3.4}, 1},
		{"missing", Results{"y": 50 * unit.Millimeter}, 1},
		{"not asked for", Results{"y": 50 * unit.Millimeter, "z": 3.0, "q": 1.0}, 1},
		{"another kind", Results{"y": 50 * unit.RPM, "z": 3.0}, 1},
		{"bare for a length", Results{"y": 0.05, "z": 3.0}, 1},
	} {
		if wrong := Compare(c, test.got); len(wrong) != test.faults {
			t.Errorf("%s: %d faults %v, want %d", test.name, len(wrong), wrong, test.faults)
		}
	}
}
