package record_test

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"roofside/calc/record"
)

// tomorrow is a fan as a version that doesn't exist yet may store it: places, rows,
// options and ways of knowing that this one has none of.
const tomorrow = `{"form":1,"fan":{` +
	`"check.crane-booked":"done","mount":"gear","name":"Line 1","old.bearing-noise":"3 dB; heard","old.fan-sheave":"8.4 in; scanned",` +
	`"photo.p1.caption":"as found\nfrom the north","supply":"steam","trial.t1.later":"1","trial.t1.turns":"3 turns","trial.t2.sound":"61 dB"}}`

var unknownHere = []string{"check.crane-booked", "mount", "old.bearing-noise", "old.fan-sheave", "photo.p1.caption", "supply", "trial.t1.later", "trial.t2.sound"}

func TestWhatALaterVersionWroteIsKept(t *testing.T) {
	f, problems, err := record.Unmarshal([]byte(tomorrow))
	if err != nil {
		t.Fatal(err)
	}
	var keys []string
	for _, p := range problems {
		if p.Err != record.ErrLater {
			t.Errorf("%s: %v", p.Key, p.Err)
		}
		keys = append(keys, p.Key)
	}
	if !slices.Equal(keys, unknownHere) || !slices.Equal(f.Later(), unknownHere) {
		t.Errorf("reported %v, carried %v", keys, f.Later())
	}
	if f.Supply.State() != record.Unknown || f.Old.FanSheave.State() != record.Unknown || len(f.Trials) != 1 {
		t.Error("a value is taken that this version does not know")
	}
	stored := func(f *record.Fan) string {
		data, err := f.Marshal()
		if err != nil {
			t.Fatal(err)
		}
		return string(data)
	}
	if got := stored(f); got != tomorrow {
		t.Errorf("stored as\n%s, want\n%s", got, tomorrow)
	}
	if got := stored(f.Clone()); got != tomorrow {
		t.Errorf("a copy is stored as\n%s", got)
	}

	set(t, &f.Name, "Line 2") // a key typed by this version
	if got := stored(f); got != strings.Replace(tomorrow, "Line 1", "Line 2", 1) {
		t.Errorf("after a change it is stored as\n%s", got)
	}
	set(t, &f.Supply, "three-phase") // what is entered stands in the place of what was carried
	if got := f.Texts(); got["supply"] != "three-phase" || slices.Contains(f.Later(), "supply") {
		t.Errorf("the supply entered is %q", got["supply"])
	}
	f.RemoveTrial("t1")
	if _, has := f.Texts()["trial.t1.later"]; has {
		t.Error("a trial that was removed leaves something")
	}
}

func TestWhatIsCarriedGoesIntoLinksAndFiles(t *testing.T) {
	f, _, err := record.Unmarshal([]byte(tomorrow))
	if err != nil {
		t.Fatal(err)
	}
	packed, _, err := f.Pack()
	if err != nil {
		t.Fatal(err)
	}
	for _, link := range []string{f.Fragment(), packed} {
		texts, _ := record.ParseFragment(link)
		g := record.NewFan()
		g.Apply(texts)
		equal(t, g.Texts(), f.Texts())
	}
	file, err := (&record.Roof{Name: "North", Fans: []*record.Fan{f}}).Marshal()
	if err != nil {
		t.Fatal(err)
	}
	r, _, err := record.UnmarshalRoof(file)
	if err != nil {
		t.Fatal(err)
	}
	equal(t, r.Fans[0].Texts(), f.Texts())

	twin := f.Twin() // a way of knowing that is not known here may be a measurement
	if got := strings.Join(twin.Later(), " "); got != "mount old.bearing-noise photo.p1.caption supply" {
		t.Errorf("a twin carries %s", got)
	}
}

func TestNotEverythingIsCarried(t *testing.T) {
	f := record.NewFan()
	for _, p := range f.Apply(map[string]string{
		"Old.speed": "1", "old..speed": "1", "-x": "1", "x y": "1", strings.Repeat("x", 121): "1", // no keys
		"later": " padded", "later.tab": "a\tb", "later.long": strings.Repeat("x", 5000), // no texts
		"target.speed": "fast", "old.fan-sheave": "8.4 in; stamped; measured", // known, and wrong
	}) {
		if p.Err == record.ErrLater {
			t.Errorf("%q=%.20q is carried", p.Key, p.Text)
		}
	}
	if !f.Empty() || len(f.Later()) > 0 {
		t.Errorf("carried %v", f.Later())
	}
	many := map[string]string{}
	for i := range 400 {
		many["later.k"+strings.Repeat("a", i%50)+strings.Repeat("b", i/50)] = "1"
	}
	f.Apply(many)
	if n := len(f.Later()); n != 300 {
		t.Errorf("%d texts are carried", n)
	}
	data, err := f.Marshal()
	if err != nil || !json.Valid(data) {
		t.Errorf("%v: %.80s", err, data)
	}
}
