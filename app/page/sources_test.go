package page

import (
	"regexp"
	"strings"
	"testing"
)

// Every answer and every verdict that names a source leads to its entry, and what a
// difference of old and new rests on is named; a frame has no way back, and no such
// links.
func TestSourcesLeadToTheirEntries(t *testing.T) {
	link := regexp.MustCompile(`<a[^>]*href="[^"]*/sources/#([^"]+)"`)
	entry := regexp.MustCompile(`id="(m-[^"]+)"`)
	bare := regexp.MustCompile(`<small[^>]*class="source"`)
	html := draw(t, differing("old", "new")+leftAs, nil)
	entries := map[string]bool{}
	for _, m := range entry.FindAllStringSubmatch(html, -1) {
		entries[m[1]] = true
	}
	led := map[string]bool{}
	for _, m := range link.FindAllStringSubmatch(html, -1) {
		if led[m[1]] = true; !entries[m[1]] || !entryOf(m[1]) {
			t.Errorf("%s leads nowhere", m[1])
		}
	}
	for _, key := range []string{"m-fit.alike", "m-fit.volts", "m-fit.clearance", "m-air.laws", "m-drive.speed"} {
		if !led[key] {
			t.Errorf("nothing leads to %s", key)
		}
	}
	if bare.MatchString(html) {
		t.Error("a source is named without its link")
	}
	for _, words := range []string{"Alike within 2.0 %.", "Alike within 0.1 %.", "Alike within the error of the readings."} {
		if !strings.Contains(strings.ReplaceAll(html, "\u00a0", " "), words) {
			t.Errorf("%q is not said", words)
		}
	}
	framed := draw(t, differing("old", "new")+leftAs, func(b *bench) { b.embedded = true })
	if link.MatchString(framed) || !bare.MatchString(framed) {
		t.Error("in a frame sources are to be named without links")
	}
}

// A fragment that leads to a method is no record, and nothing else leads to one.
func TestAnEntryIsNoRecord(t *testing.T) {
	for fragment, want := range map[string]bool{"m-drive.speed": true, "m-nothing": false, "name=m-drive.speed": false, "": false, "drive.speed": false} {
		if entryOf(fragment) != want {
			t.Errorf("%q is taken wrongly", fragment)
		}
	}
}
