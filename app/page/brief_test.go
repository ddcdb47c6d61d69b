package page

import (
	"strings"
	"testing"

	"roofside/app/store"
	"roofside/calc/record"
)

// What the list says of a fan is kept, and not beyond a change of its entry, whoever
// makes it.
func TestABriefEndsWithItsEntry(t *testing.T) {
	b := newBench(store.Memory(), "en-US")
	fan := record.NewFan()
	said := func(name string) {
		t.Helper()
		if got := b.briefOf("a").name; got != name {
			t.Errorf("the list says %q of %q", got, name)
		}
	}
	for _, name := range []string{"North", "South"} {
		if err := fan.Name.Set(name); err != nil {
			t.Fatal(err)
		}
		if err := b.Fans.Save("a", fan); err != nil {
			t.Fatal(err)
		}
		said(name)
	}
	b.Take("a")
	b.Do("name", func() { b.must(b.Fan.Name.Set("West")) })
	b.Take(store.Scratch)
	said("West")
	back, err := b.Fans.Remove("a")
	if err != nil {
		t.Fatal(err)
	}
	said("")
	if err := back(); err != nil {
		t.Fatal(err)
	}
	said("West")
}

// How the open fan stands is kept while nothing changes that it is judged by.
func TestTheOpenFanIsWeighedAnew(t *testing.T) {
	b := newBench(store.Memory(), "en-US")
	b.Start("", record.NewFan())
	if b.overall(false).judged {
		t.Fatal("an empty fan is judged")
	}
	b.Follow(strings.ReplaceAll(demoFan+leftAs, " ", "%20"))
	if b.overall(true).weighed {
		t.Error("another fan's standing is taken for this one's")
	}
	if !b.overall(false).judged || !b.overall(true).judged {
		t.Error("a fan with readings is not judged")
	}
	b.Start("", record.NewFan())
	if b.overall(false).judged {
		t.Error("the next one is judged by them")
	}
}
