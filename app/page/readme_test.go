package page

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"roofside/app/store"
)

// Keys and names are published in the README and kept.
func TestTheReadmeNamesEveryKeyAndAnswer(t *testing.T) {
	text, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	readme := string(text)
	b := newBench(store.Memory(), "en-US")
	b.Fan.NewTrial()
	b.Fan.NewWire()
	for k := range b.Fan.Places() {
		short := k
		for _, side := range []string{"old.", "new.", "trial.t1.", "wire.w1."} {
			short = strings.TrimPrefix(short, side)
		}
		if !strings.Contains(readme, "`"+short+"`") {
			t.Errorf("the README does not name %s", short)
		}
	}
	verdict := regexp.MustCompile(`data-of="([^"]+)"`)
	named := func(name string) bool {
		first, _, _ := strings.Cut(name, " ") // of a row of the table, or of conductors
		before, _, behind := strings.Cut(first, ".")
		return strings.Contains(readme, "`"+first+"`") || behind && strings.Contains(readme, "`"+before+".`") || b.words.Has("rule."+first) || first == "t1" || first == "t2"
	}
	output := regexp.MustCompile(`<output[^>]*name="([^"]+)"`)
	for _, state := range states {
		html := draw(t, state, nil)
		for _, found := range verdict.FindAllStringSubmatch(html, -1) {
			if !named(found[1]) {
				t.Errorf("the README does not name the verdict %s", found[1])
			}
		}
		for _, found := range output.FindAllStringSubmatch(html, -1) {
			if !strings.Contains(readme, "`"+found[1]+"`") {
				t.Errorf("the README does not name the answer %s", found[1])
			}
		}
	}
}
