package sheet_test

import (
	"fmt"
	"slices"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

const boxOfThree = "code-edition=2023&wire.w1.count=3&wire.w1.size=12&wire.w1.insulation=THWN-2&wire.w1.role=circuit&wire.w1.where=box"

// What takes volume stands in the working, each once, and what is not there does not:
// NFPA 70, 314.16(B)(1), (2), (4), (5).
func TestBoxVolumesInTheWorking(t *testing.T) {
	for _, c := range []struct {
		more string
		want []string
	}{
		{"&box.devices=0&box.clamps=no", []string{"v"}},
		{"&box.devices=1&box.clamps=no", []string{"v", "2v"}},
		{"&box.devices=0&box.clamps=yes", []string{"v", "1v"}},
		{"&box.devices=0&box.clamps=no&wire.w2.count=1&wire.w2.size=12&wire.w2.insulation=THWN-2&wire.w2.role=ground&wire.w2.where=box", []string{"v", "v(g)"}},
	} {
		f := fan(t, boxOfThree+c.more)
		a := sheet.BoxNeeded(f)
		if !a.Known() {
			t.Fatalf("%s: %v %v", c.more, a.Wanted, a.Fault)
		}
		var got []string
		for _, x := range a.Steps.Terms {
			got = append(got, x.Symbol)
		}
		if fmt.Sprint(got) != fmt.Sprint(c.want) {
			t.Errorf("%s: %v, want %v", c.more, got, c.want)
		}
	}
}

// A guessed count of conductors settles nothing; where the box itself isn't known
// either, that is what is asked for.
func TestBoxOfAGuessedCount(t *testing.T) {
	f := fan(t, boxOfThree+"&box.devices=0&box.clamps=no")
	set(t, f, "wire.w1.count", "3; guessed")
	v := sheet.BoxVerdict(f)
	if v.Level != sheet.Unjudged || !slices.Contains(v.Wanted, record.Place(&f.Box.Size)) {
		t.Errorf("no box: %+v", v)
	}
	set(t, f, "box.volume", "20 in3")
	v = sheet.BoxVerdict(f)
	if v.Level != sheet.Unjudged || len(v.Wanted) != 1 || f.KeyOf(v.Wanted[0]) != "wire.w1.count" {
		t.Errorf("guessed: %+v", v)
	}
	set(t, f, "wire.w1.count", "3")
	if v = sheet.BoxVerdict(f); v.Level != sheet.Within { // 3 · 2.25 of 20
		t.Errorf("counted: %+v", v)
	}
}

// What is known of a box may fill it by itself: three of 12 take 6.75 in³ (Table
// 314.16(B)(1)), whatever else is in it. Otherwise what isn't told is asked for.
func TestBoxThatIsFullAlready(t *testing.T) {
	for _, c := range []struct {
		more  string
		level sheet.Level
		wants string
	}{
		{"&box.volume=6in3", sheet.Stop, ""},
		{"&box.volume=6in3&box.devices=0", sheet.Stop, ""},
		{"&box.volume=6in3&box.clamps=no", sheet.Stop, ""},
		{"&box.volume=6in3&box.devices=?&box.clamps=no", sheet.Stop, ""},
		{"&box.volume=20in3", sheet.Unjudged, "box.devices box.clamps"},
		{"&box.volume=20in3&box.devices=0&box.clamps=no", sheet.Within, ""},
		{"&box.volume=6in3&box.devices=0&box.clamps=no", sheet.Stop, ""},
		{"&box.volume=6.8in3;within 0.2in3&box.devices=0&box.clamps=no", sheet.Unjudged, "box.volume"},
		{"&box.devices=0&box.clamps=no", sheet.Unjudged, "box.size"},
	} {
		f := fan(t, boxOfThree+c.more)
		if v := sheet.BoxVerdict(f); v.Level != c.level || wantedOf(f, v) != c.wants {
			t.Errorf("%s: %s, wants %q", c.more, levelNames[v.Level], wantedOf(f, v))
		}
	}
	f := fan(t, boxOfThree+"&box.volume=6in3&box.clamps=no")
	set(t, f, "box.devices", "!many")
	if v := sheet.BoxVerdict(f); v.Level != sheet.Unjudged || v.Fault == nil {
		t.Errorf("devices that are no number: %+v", v)
	}
}
