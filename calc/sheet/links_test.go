package sheet_test

import (
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"roofside/calc/record"
)

func TestPublishedLinks(t *testing.T) {
	data, err := os.ReadFile("../../testdata/links.txt")
	if err != nil {
		t.Fatal(err)
	}
	var f *record.Fan
	var link string
	var left map[string]string // what the link set and no line has told of yet
	var refused []string
	links, effects := 0, 0
	finish := func() {
		if len(left) > 0 || len(refused) > 0 {
			t.Errorf("%s also sets %v and refuses %v", link, left, refused)
		}
	}
	for line := range strings.Lines(string(data)) {
		line = strings.TrimRight(line, "\n")
		switch {
		case line == "" || line[0] == '#':
			continue
		case line[0] == '/':
			finish()
			links++
			link = line
			_, fragment, _ := strings.Cut(line, "#")
			texts, problems := record.ParseFragment(fragment)
			f = record.NewFan()
			problems = append(problems, f.Apply(texts)...)
			left, refused = f.Texts(), nil
			for _, p := range problems {
				refused = append(refused, p.Key)
			}
			for _, key := range f.Later() { // refused, and carried along
				delete(left, key)
			}
			continue
		}
		effects++
		key, text, _ := strings.Cut(strings.TrimSpace(line), " ")
		switch key {
		case "refused":
			i := slices.Index(refused, text)
			if i < 0 {
				t.Errorf("%s takes %s", link, text)
				continue
			}
			refused = slices.Delete(refused, i, i+1)
		case "answer":
			text, _, _ = strings.Cut(text, "=")
			name, number, _ := strings.Cut(strings.TrimSpace(text), " ")
			want, err := strconv.ParseFloat(number, 64)
			answer, ok := answerOf(name)
			if err != nil || !ok {
				t.Fatalf("%s: %s %q", link, name, number)
			}
			_, decimals, _ := strings.Cut(number, ".")
			got := answer(ask(f))
			if !got.known || math.Abs(got.base-want) > 0.5*math.Pow(10, -float64(len(decimals)))+1e-12 {
				t.Errorf("%s: %s is %v, known %v, want %s", link, name, got.base, got.known, number)
			}
		default:
			if left[key] != text {
				t.Errorf("%s sets %s to %q, want %q", link, key, left[key], text)
			}
			delete(left, key)
		}
	}
	finish()
	if links < 7 || effects < 30 {
		t.Errorf("%d links with %d effects", links, effects)
	}
}
