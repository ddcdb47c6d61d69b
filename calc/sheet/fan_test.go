package sheet_test

import (
	"math"
	"os"
	"strconv"
	"testing"

	"roofside/calc/number"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// demo is the fan of the demonstration: seized, its ratio counted, a balance
// report for the target, another motor speed and fan sheave on the new one.
func demo(t testing.TB) *record.Fan {
	t.Helper()
	data, err := os.ReadFile("../../testdata/records/form1-counted-ratio.json")
	if err != nil {
		t.Fatal(err)
	}
	f, problems, err := record.Unmarshal(data)
	if err != nil || problems != nil {
		t.Fatal(err, problems)
	}
	return f
}

// fan returns the fan of a link's fragment, in which spaces may stand.
func fan(t testing.TB, fragment string) *record.Fan {
	t.Helper()
	texts, problems := record.ParseFragment(fragment)
	f := record.NewFan()
	if problems = append(problems, f.Apply(texts)...); problems != nil {
		t.Fatal(problems)
	}
	return f
}

// made returns a fan with keys and texts, those that are no values included.
func made(t testing.TB, texts ...string) *record.Fan {
	t.Helper()
	f := record.NewFan()
	set(t, f, texts...)
	return f
}

// set puts texts into places: key, text, key, text. Text that is no value is
// kept as garbled.
func set(t testing.TB, f *record.Fan, texts ...string) {
	t.Helper()
	for i := 0; i < len(texts); i += 2 {
		f.Apply(map[string]string{texts[i]: texts[i+1]})
		if p := f.Place(texts[i]); p == nil || p.State() == record.Unknown && texts[i+1] != "" {
			t.Fatalf("%s does not take %q", texts[i], texts[i+1])
		}
	}
}

// near reports a number that is not the wanted one to nine digits.
func near[Q ~float64](t testing.TB, what string, got Q, want float64) {
	t.Helper()
	if !(math.Abs(float64(got)-want) <= 1e-9*math.Max(math.Abs(want), 1e-3)) {
		t.Errorf("%s is %.12g, want %.12g", what, float64(got), want)
	}
}

// value reports an answer that is not the wanted value.
func value[Q unit.Quantity](t testing.TB, what string, a sheet.Answer[Q], want float64) {
	t.Helper()
	if !a.Known() {
		t.Errorf("%s is not known: wanted %v, fault %+v", what, a.Wanted, a.Fault)
		return
	}
	near(t, what, a.Value, want)
}

// wants reports an answer that does not ask for the places with these keys
// first and carry no value.
func wants[Q unit.Quantity](t testing.TB, f *record.Fan, what string, a sheet.Answer[Q], keys ...string) {
	t.Helper()
	if a.Known() || a.Fault != nil || a.Value != 0 || a.Band != 0 {
		t.Errorf("%s is %v ± %v, fault %+v", what, a.Value, a.Band, a.Fault)
	}
	if len(a.Wanted) < len(keys) {
		t.Errorf("%s asks for %d places, want %v", what, len(a.Wanted), keys)
		return
	}
	for i, k := range keys {
		if got := f.KeyOf(a.Wanted[i]); got != k {
			t.Errorf("%s asks for %s, want %s", what, got, k)
		}
	}
}

// faulty reports an answer that is not stopped by the place with this key.
func faulty[Q unit.Quantity](t testing.TB, f *record.Fan, what string, a sheet.Answer[Q], key string) {
	t.Helper()
	if a.Known() || a.Fault == nil || a.Value != 0 || a.Band != 0 {
		t.Errorf("%s is %v ± %v, wanted %v, no fault", what, a.Value, a.Band, a.Wanted)
		return
	}
	if got := f.KeyOf(a.Fault.Place); got != key {
		t.Errorf("%s is stopped by %q, %v, want %s", what, got, a.Fault.Err, key)
	}
}

func canonical(base float64, u unit.Unit) string { return number.Canonical(base, u, 12) }

// fixedPoint writes a number out for canonical text.
func fixedPoint(x float64) string { return strconv.FormatFloat(x, 'f', 12, 64) }
