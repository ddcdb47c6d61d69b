package record_test

import (
	"maps"
	"math"
	"os"
	"path/filepath"
	"slices"
	"testing"
	"unicode/utf8"

	"roofside/calc/record"
)

// sound reports a place that holds what no place may.
func sound(t *testing.T, key string, p record.Place) {
	t.Helper()
	if !utf8.ValidString(p.Text()) {
		t.Errorf("%s holds broken text %q", key, p.Text())
	}
	m, ok := p.(record.Measure)
	if !ok {
		return
	}
	for _, x := range []float64{m.Base(), m.Band()} {
		if math.IsNaN(x) || math.IsInf(x, 0) || p.State() != record.Known && x != 0 {
			t.Errorf("%s %q in state %v holds %v", key, p.Text(), p.State(), x)
		}
	}
	if p.State() == record.Known && m.Fact().Check(m.Base()) != nil {
		t.Errorf("%s holds %v, out of bounds", key, m.Base())
	}
}

// same reports two fans that say different things.
func same(t *testing.T, a, b *record.Fan) {
	t.Helper()
	if !maps.Equal(a.Texts(), b.Texts()) {
		t.Errorf("%q is not %q", a.Texts(), b.Texts())
	}
}

func FuzzUnmarshal(f *testing.F) {
	files, err := filepath.Glob("../../testdata/records/*.json")
	if err != nil || len(files) == 0 {
		f.Fatal("no samples", err)
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(data)
	}
	f.Add([]byte(`{"form":2,"fan":{"old.motor-sheave":"!\u0000 ","trial.a.turns":"?","trial.b.at":"1e9"}}`))
	f.Add([]byte(`{"form":1,"fan":{"speed":"1 rpm","old.speed":"2 rpm"}}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		fan, _, err := record.Unmarshal(data)
		if err != nil {
			if fan != nil {
				t.Error("a fan beside an error")
			}
			return
		}
		for k, p := range fan.Places() {
			sound(t, k, p)
		}
		same(t, fan.Clone(), fan)
		stored, err := fan.Marshal()
		if fan.ReadOnly() {
			if err == nil {
				t.Error("wrote a later form")
			}
			return
		}
		back, problems, err := record.Unmarshal(stored)
		if err != nil || problems != nil {
			t.Fatalf("own form refused: %v %v\n%s", err, problems, stored)
		}
		same(t, back, fan)
	})
}

func FuzzFragment(f *testing.F) {
	f.Add("#old.motor-speed=1750rpm&old.motor-sheave=3.4in&old.fan-sheave=8.6in")
	f.Add("name=a%20b%26c&trial.a.turns=2-1/2&trial.a.at=2026-03-09T14:05:00Z&trial.a.speed=?")
	f.Add("a=%zz&=&x&motor-speed=1,750rpm&old.turns=!%20&new.turns=1;%20guessed;%20within%202%25")
	f.Fuzz(func(t *testing.T, fragment string) {
		texts, _ := record.ParseFragment(fragment)
		fan := record.NewFan()
		fan.Apply(texts)
		for k, p := range fan.Places() {
			sound(t, k, p)
		}
		link := fan.Fragment()
		again, problems := record.ParseFragment(link)
		if problems != nil && len(link) <= 16<<10 {
			t.Fatalf("own link %s: %v", link, problems)
		}
		back := record.NewFan()
		if p := back.Apply(again); p != nil {
			t.Fatalf("own link %s: %v", link, p)
		}
		want := fan.Texts()
		maps.DeleteFunc(want, func(k, _ string) bool { return fan.Place(k).State() == record.Garbled })
		if len(link) <= 16<<10 && !maps.Equal(back.Texts(), want) {
			t.Errorf("%s gives %q, want %q", link, back.Texts(), want)
		}
	})
}

func FuzzEntrySet(f *testing.F) {
	keys := []string{"old.motor-sheave", "old.speed", "coldest-air", "target.over", "new.turns", "old.count-motor-turns", "old.volts-12",
		"hood.space-pressure", "altitude", "new.groove-angle", "new.service-factor", "name", "supply", "trial.t1.at"}
	for i, text := range []string{"3-1/2 in; measured; within 1/16 in", "690rpm; within 2 %", "5 F; within 9 F", "5 %", "2.5", "?", "!three",
		"0.02 inwg", "-1 ft 3-1/2 in", "34 deg; guessed", "1.15; stamped", " a\tb ", "drive", "2026-03-09T14:05:00Z", "1/0 in", "999999999999999 in; within 100 %"} {
		f.Add(uint8(i), text)
	}
	f.Fuzz(func(t *testing.T, i uint8, text string) {
		key := keys[int(i)%len(keys)]
		p := everything().Place(key)
		err := p.Set(text)
		sound(t, key, p)
		if err != nil && p.State() != record.Garbled {
			t.Errorf("%s: %q is refused, %v, in state %v", key, text, err, p.State())
		}
		first, state := p.Text(), p.State()
		if err := p.Set(first); err != nil || p.Text() != first || p.State() != state {
			t.Errorf("%s: %q settles to %q, then %q, %v", key, text, first, p.Text(), err)
		}
	})
}

// Whatever stands behind z1= is refused whole, or read into a fan that is packed
// again and comes back the same.
func carriedAlong(p record.Problem) bool { return p.Err == record.ErrLater }

func FuzzPacked(f *testing.F) {
	for _, file := range []string{"complete-fan.txt", "complete-fan-si.txt"} {
		part, _, err := complete(f, file).Pack()
		if err != nil {
			f.Fatal(err)
		}
		f.Add(part[len("z1="):], "")
	}
	f.Add("AAAAAAMA", "")
	f.Add("", "\x0bHood line 2\x0bJ\x1etrial.t1\x0b3\x0e2026-03-09T14:05:00Z\x1etrial.t2\x0b2-1/2\x1fnew.later=1 in; guessed")
	f.Add("", "\x1d\x1d\x0c6.8\x0b!x\x0b?\x0b1.15\x0b\xff")
	f.Fuzz(func(t *testing.T, packed, short string) {
		part := "z1=" + packed
		if packed == "" {
			part = packedAs(t, short)
		}
		texts, _ := record.ParseFragment(part)
		fan := record.NewFan()
		fan.Apply(texts)
		for k, p := range fan.Places() {
			sound(t, k, p)
		}
		again, out, err := fan.Pack()
		if err != nil {
			return // too long
		}
		texts, problems := record.ParseFragment(again)
		back := record.NewFan()
		problems = append(problems, back.Apply(texts)...)
		if problems = slices.DeleteFunc(problems, carriedAlong); len(problems) > 0 {
			t.Fatalf("own link %s of %q: %v", again, fan.Texts(), problems)
		}
		want := fan.Texts()
		for _, k := range out {
			delete(want, k)
		}
		if len(again) <= record.LongestLink && !maps.Equal(back.Texts(), want) {
			t.Errorf("%q comes back as %q", want, back.Texts())
		}
	})
}
