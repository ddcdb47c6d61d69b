package record_test

import (
	"encoding/json"
	"errors"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"roofside/calc/number"
	"roofside/calc/record"
)

func TestStoredFanComesBack(t *testing.T) {
	f := filled(t)
	set(t, &f.Old.MotorOutside, "3-1/2 in; measured; within 1/16 in")
	set(t, &f.Old.MotorAmps, "?")
	set(t, &f.Old.MotorPower, "!2 horses <&> \u2028 or so")
	data, err := f.Marshal()
	if err != nil {
		t.Fatal(err)
	}
	g, problems, err := record.Unmarshal(data)
	if err != nil || problems != nil {
		t.Fatal(err, problems)
	}
	equal(t, g.Texts(), f.Texts())
	if w := g.Old.MotorOutside.Band(); w != 0.0254/16 {
		t.Errorf("band is %v m, want 1/16 in", w)
	}
	if s := g.Old.MotorAmps.State(); s != record.Illegible {
		t.Errorf("%q reads as %v", "?", s)
	}
	if typed := record.Typed(&g.Old.MotorPower); typed != "2 horses <&> \u2028 or so" {
		t.Errorf("typed text came back as %q", typed)
	}
	equal(t, f.Clone().Texts(), f.Texts())
	again, err := g.Marshal()
	if err != nil || string(again) != string(data) {
		t.Errorf("stored twice, %v:\n%s\n%s", err, data, again)
	}
}

func TestUnmarshalRefuses(t *testing.T) {
	for _, c := range []struct {
		name, data string
		want       error // nil for any
	}{
		{"nothing", ``, nil},
		{"no JSON", `fan`, nil},
		{"cut off", `{"form":1,"fan":{"name":"A`, nil},
		{"trailing data", `{"form":1,"fan":{}} {}`, nil},
		{"trailing bracket", `{"form":1,"fan":{}}]`, nil},
		{"no form", `{"fan":{}}`, record.ErrForm},
		{"form 0", `{"form":0,"fan":{}}`, record.ErrForm},
		{"form -1", `{"form":-1,"fan":{}}`, record.ErrForm},
		{"form 1.5", `{"form":1.5,"fan":{}}`, nil},
		{"form as text", `{"form":"1","fan":{}}`, nil},
		{"no fan", `{"form":1}`, record.ErrForm},
		{"fan null", `{"form":1,"fan":null}`, record.ErrForm},
		{"fan a list", `{"form":1,"fan":[]}`, nil},
		{"a number for text", `{"form":1,"fan":{"old.motor-speed":1750}}`, nil},
		{"null", `null`, record.ErrForm},
		{"too large", `{"form":1,"fan":{"name":"` + strings.Repeat("x", 256<<10) + `"}}`, record.ErrTooLarge},
	} {
		f, problems, err := record.Unmarshal([]byte(c.data))
		if err == nil || f != nil || problems != nil || c.want != nil && !errors.Is(err, c.want) {
			t.Errorf("%s: %v %v %v, want only the error %v", c.name, f, problems, err, c.want)
		}
	}
}

func TestLaterFormIsReadOnly(t *testing.T) {
	f, problems, err := record.Unmarshal([]byte(`{"form":2,"fan":{"old.motor-speed":"1725 rpm","old.smell":"burnt"},"more":[1]}`))
	if err != nil || len(problems) != 1 || problems[0].Key != "old.smell" || problems[0].Err != record.ErrLater {
		t.Fatal(err, problems)
	}
	if !f.ReadOnly() || !f.Clone().ReadOnly() || f.Old.MotorSpeed.Value() != 1725 {
		t.Error("not read as a later form")
	}
	if data, err := f.Marshal(); data != nil || !errors.Is(err, record.ErrForm) {
		t.Errorf("written as %s, %v", data, err)
	}
	if record.NewFan().ReadOnly() {
		t.Error("a new fan can't be written")
	}
}

func TestApplyKeepsWhatItHadAndReportsInOrder(t *testing.T) {
	f := record.NewFan()
	before := map[string]string{"old.motor-speed": "1725 rpm", "old.motor-amps": "?", "supply": "three-phase", "trial.a.at": "2026-03-09T14:05:00Z", "old.fan-sheave": "!eight"}
	if p := f.Apply(before); p != nil {
		t.Fatal(p)
	}
	bad := map[string]string{
		"zz": "1", "old.motor-speed": "fast", "old.motor-amps": "-3 A", "supply": "steam",
		"trial.a.at": "yesterday", "old.fan-sheave": "0 in", "target.speed": "1e308 rpm", "motor-volts": "208 furlongs",
	}
	problems := f.Apply(bad)
	before["zz"], before["supply"] = "1", "steam" // which a later version may know
	equal(t, f.Texts(), before)
	if f.Supply.State() != record.Unknown {
		t.Errorf("steam is taken for %s", f.Supply.Value())
	}
	var keys []string
	for _, p := range problems {
		keys = append(keys, p.Key)
		if p.Text != bad[p.Key] || p.Err == nil {
			t.Errorf("%s: reported %q, %v", p.Key, p.Text, p.Err)
		}
	}
	want := "motor-volts old.fan-sheave old.motor-amps old.motor-speed supply target.speed trial.a.at zz"
	if got := strings.Join(keys, " "); got != want {
		t.Errorf("reported %s, want %s", got, want)
	}
	rules := map[string]number.Rule{"motor-volts": number.RuleUnit, "old.fan-sheave": record.RuleNotPositive, "old.motor-amps": record.RuleNotPositive,
		"trial.a.at": record.RuleMoment, "target.speed": number.RuleExponent}
	for _, p := range problems {
		var e *number.Error
		if want, ok := rules[p.Key]; ok && (!errors.As(p.Err, &e) || e.Rule != want) {
			t.Errorf("%s: %v, want the rule %q", p.Key, p.Err, want)
		}
	}
}

func TestBareKeysMeanTheOldFan(t *testing.T) {
	f := record.NewFan()
	if p := f.Apply(map[string]string{"motor-speed": "1725rpm", "name": "West", "speed": "690 rpm"}); p != nil {
		t.Fatal(p)
	}
	equal(t, f.Texts(), map[string]string{"old.motor-speed": "1725 rpm", "name": "West", "old.speed": "690 rpm"})
}

func TestEmpty(t *testing.T) {
	f := record.NewFan()
	if !f.Empty() || len(f.Texts()) != 0 || f.Fragment() != "" {
		t.Error("a new fan knows something")
	}
	set(t, &f.New.Section, "?")
	if f.Empty() || f.Fragment() != "new.section=?" {
		t.Errorf("an illegible place counts for nothing: %q", f.Fragment())
	}
}

// Records of the first form, as shops have them in files, open for ever.
func TestStoredSamplesOpen(t *testing.T) {
	files, err := filepath.Glob("../../testdata/records/form1-*.json")
	if err != nil || len(files) < 3 {
		t.Fatal(files, err)
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		f, problems, err := record.Unmarshal(data)
		if err != nil || problems != nil || f.ReadOnly() || f.Empty() {
			t.Errorf("%s: %v %v", file, err, problems)
			continue
		}
		again, err := f.Marshal()
		if err != nil || string(again) != strings.TrimSpace(string(data)) {
			t.Errorf("%s, %v, is written as\n%s", file, err, again)
		}
	}
}

// What is written by hand is what the standard library writes.
func TestStoredIsJSON(t *testing.T) {
	f := filled(t)
	set(t, &f.Name, "<b> & \"quotes\" \\ ½ \u2028 \u007f é")
	set(t, &f.Old.MotorPower, "!two\thorses\n")
	for _, f := range []*record.Fan{f, record.NewFan()} {
		want, err := json.Marshal(map[string]any{"form": record.Form, "fan": f.Texts()})
		if err != nil {
			t.Fatal(err)
		}
		got, err := f.Marshal()
		if err != nil {
			t.Fatal(err)
		}
		var a, b any
		if json.Unmarshal(got, &a) != nil || json.Unmarshal(want, &b) != nil || !reflect.DeepEqual(a, b) {
			t.Errorf("%s\nwant %s", got, want)
		}
		_, fan, _ := strings.Cut(string(got), `"fan":`)
		texts, err := json.Marshal(f.Texts())
		if err != nil || fan != string(texts)+"}" {
			t.Errorf("the order or the escapes are others:\n%s\n%s", fan, texts)
		}
	}
}

// A row's keys go by its id.
func TestKeysOfARowGoByItsID(t *testing.T) {
	f := record.NewFan()
	w := f.NewWire()
	set(t, &w.Count, "3")
	equal(t, f.Texts(), map[string]string{"wire.w1.count": "3"})
	w.ID = "w7"
	equal(t, f.Texts(), map[string]string{"wire.w7.count": "3"})
	for range f.Places() { // one that is broken off keeps no half of them
		break
	}
	equal(t, f.Texts(), map[string]string{"wire.w7.count": "3"})
	if w = f.NewWire(); f.Place("wire."+w.ID+".count") != &w.Count || f.Place("wire."+w.ID+".box-count") != &w.InBox || f.Place("wire."+w.ID+".where") != &w.Where {
		t.Error("a row that was broken off lost its keys")
	}
	if n := testing.AllocsPerRun(20, func() { f.Empty() }); n > 60 {
		t.Errorf("the keys are joined again: %v allocations for listing them", n)
	}
}
