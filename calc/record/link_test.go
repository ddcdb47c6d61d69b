package record_test

import (
	"errors"
	"maps"
	"strings"
	"testing"

	"roofside/calc/record"
)

func TestMalformedPartsAreNamedAndTheRestIsUsed(t *testing.T) {
	texts, problems := record.ParseFragment("#old.motor-speed=1750rpm&&nonsense&=3&a=%zz&b=%4&c=%&e=1%FF7&old.motor-speed=1160rpm&name=100%25%20A%26B=C+D&d=")
	want := map[string]string{"old.motor-speed": "1750rpm", "name": "100% A&B=C+D", "d": ""}
	if !maps.Equal(texts, want) {
		t.Errorf("read %q, want %q", texts, want)
	}
	wanted := []record.Problem{
		{Key: "nonsense", Err: record.ErrPart}, {Key: "=3", Err: record.ErrPart},
		{Key: "a", Text: "%zz", Err: record.ErrEscape}, {Key: "b", Text: "%4", Err: record.ErrEscape}, {Key: "c", Text: "%", Err: record.ErrEscape}, {Key: "e", Text: "1%7", Err: record.ErrEscape},
		{Key: "old.motor-speed", Text: "1160rpm", Err: record.ErrTwice},
	}
	if len(problems) != len(wanted) {
		t.Fatalf("%v", problems)
	}
	for i, p := range problems {
		if p.Key != wanted[i].Key || p.Text != wanted[i].Text || !errors.Is(p.Err, wanted[i].Err) {
			t.Errorf("%+v, want %+v", p, wanted[i])
		}
	}
}

func TestFragmentsAreLimited(t *testing.T) {
	const most = 16 << 10
	fits := "name=" + strings.Repeat("x", most-len("name="))
	if texts, problems := record.ParseFragment("#" + fits); len(texts) != 1 || problems != nil {
		t.Errorf("16 kB: %d texts, %v", len(texts), problems)
	}
	texts, problems := record.ParseFragment(fits + "x")
	if len(texts) != 0 || len(problems) != 1 || problems[0].Err != record.ErrLong || len(problems[0].Text) > 120 {
		t.Errorf("over 16 kB: %d texts, %v", len(texts), problems)
	}
	for _, empty := range []string{"", "#", "&", "#&&"} {
		if texts, problems := record.ParseFragment(empty); len(texts) != 0 || problems != nil {
			t.Errorf("%q: %v %v", empty, texts, problems)
		}
	}
}

func TestALinkCarriesTheFan(t *testing.T) {
	f := filled(t)
	set(t, &f.Old.MotorAmps, "?")
	set(t, &f.Old.MotorPower, "!2 horses")
	fragment := f.Fragment()
	if strings.Trim(fragment, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-._~!$&'()*,;=:@/?%") != "" {
		t.Errorf("not a fragment of RFC 3986: %s", fragment)
	}
	texts, problems := record.ParseFragment(fragment)
	if problems != nil {
		t.Fatal(problems)
	}
	g := record.NewFan()
	if problems := g.Apply(texts); problems != nil {
		t.Fatal(problems)
	}
	want := f.Texts()
	delete(want, "old.motor-power") // what is no value stays out of a link
	equal(t, g.Texts(), want)
}
