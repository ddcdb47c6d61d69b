package page

import (
	"io/fs"
	"net/url"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"roofside/app/store"
	"roofside/app/text"
	"roofside/calc/record"
	"roofside/calc/source"
)

// sources reads the program's and the library's own files, without tests and
// without the catalogs.
func sources(t *testing.T, folders ...string) string {
	t.Helper()
	var all strings.Builder
	for _, folder := range folders {
		err := fs.WalkDir(os.DirFS(folder), ".", func(path string, entry fs.DirEntry, err error) error {
			if err != nil || entry.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") || strings.HasPrefix(path, "text/") {
				return err
			}
			source, err := os.ReadFile(folder + "/" + path)
			all.Write(source)
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	return all.String()
}

var (
	literal = regexp.MustCompile(`"((?:[^"\\\n]|\\.)*)"`)
	prefix  = regexp.MustCompile(`"([a-z]+\.(?:[a-z-]+\.)*)" ?\+|setting1\("([^"]+)"`) // of keys that are put together
)

// A sentence is in use if its key stands in the program, or if it is put
// together there from a prefix and words that stand in the program or the
// library.
func TestNoSentenceIsUnused(t *testing.T) {
	program := sources(t, "..")
	written, words := map[string]bool{}, map[string]bool{"": true}
	for _, m := range literal.FindAllStringSubmatch(program, -1) {
		written[m[1]] = true
	}
	for _, m := range literal.FindAllStringSubmatch(program+sources(t, "../../calc"), -1) {
		for _, part := range strings.Split(m[1], ".") {
			words[part] = true
		}
	}
	prefixes := map[string]bool{}
	for _, m := range prefix.FindAllStringSubmatch(program, -1) {
		prefixes[m[1]] = m[1] != ""
		prefixes[m[2]+"."] = m[2] != ""
	}
	unused := func(key string) bool {
		for p, real := range prefixes {
			rest, ok := strings.CutPrefix(key, p)
			if real && ok && !slices.ContainsFunc(strings.Split(rest, "."), func(part string) bool { return !words[part] }) {
				return false
			}
		}
		return !written[key]
	}
	for _, tag := range text.Tags() {
		for _, key := range text.For(tag).Keys() {
			if unused(key) {
				t.Errorf("%s: nothing says %q", tag, key)
			}
		}
	}
	for _, key := range []string{"place.nonsense", "rule.nonsense.stop", "nonsense"} {
		if !unused(key) {
			t.Errorf("%q passes for used", key)
		}
	}
}

// A key that is written out has a sentence in every language.
func TestEveryWrittenKeyHasASentence(t *testing.T) {
	call := regexp.MustCompile(`\bT\("([^"]+[^". ])"[,)]`)
	found := call.FindAllStringSubmatch(sources(t, ".."), -1)
	if len(found) < 100 {
		t.Fatalf("only %d keys are found", len(found))
	}
	for _, tag := range text.Tags() {
		for _, m := range found {
			if !text.For(tag).Has(m[1]) {
				t.Errorf("%s: no sentence for %q", tag, m[1])
			}
		}
	}
}

var (
	word   = regexp.MustCompile(`\pL{4,}`)
	spoken = regexp.MustCompile(`(?:aria-label|title|alt)="([^"]*)"`)
	tags   = regexp.MustCompile(`(?s)<code[^>]*>.*?</code>|<[^>]*>`)
	entity = regexp.MustCompile(`&[#\w]+;`)
)

// vocabulary is every word of four letters and more.
func vocabulary(texts ...string) map[string]bool {
	all := map[string]bool{}
	for _, s := range texts {
		for _, w := range word.FindAllString(s, -1) {
			all[strings.ToLower(w)] = true
		}
	}
	return all
}

// A page in Spanish says no word that only English has. Titles of publications
// keep their language.
func TestNoEnglishIsLeftOnTheSpanishPages(t *testing.T) {
	var english, spanish, printed []string
	es := text.For("es")
	for _, m := range source.Methods() {
		for what, own := range map[string]string{"formula": m.Formula, "valid": m.Valid} {
			if said := es.Method(what, m.Key, own); said != own {
				english, spanish = append(english, own), append(spanish, said)
			}
		}
		for _, r := range m.Refs {
			printed = append(printed, es.Method("where", r.Where, r.Where), r.Title)
		}
	}
	for _, key := range text.For("en").Keys() {
		english = append(english, text.For("en").T(key))
		spanish = append(spanish, es.T(key))
	}
	said := map[string]bool{}
	slices.SortFunc(printed, func(a, b string) int { return len(b) - len(a) })
	foreign, own := vocabulary(append(english, "turns feet inches")...), vocabulary(append(spanish, "English")...)
	for _, state := range states {
		html := draw(t, state, func(b *bench) { b.words = es })
		if strings.Contains(html, "⟦") {
			t.Errorf("a sentence is missing in state %.60q", state)
		}
		attributes := spoken.FindAllString(html, -1)
		if len(attributes) < 10 {
			t.Errorf("only %d attributes are read in state %.60q", len(attributes), state)
		}
		html = tags.ReplaceAllString(html, " ")
		for _, a := range attributes {
			_, a, _ = strings.Cut(a, "=")
			html += " " + a
		}
		html = entity.ReplaceAllString(html, "'")
		for _, p := range printed {
			if len(p) > 3 {
				html = strings.ReplaceAll(html, p, "")
			}
		}
		typed := vocabulary(state)
		for w := range vocabulary(html) {
			if foreign[w] && !own[w] && !typed[w] && !said[w] {
				t.Errorf("%q is on a Spanish page in state %.60q", w, state)
				said[w] = true
			}
		}
	}
}

// What is shown comes from the catalogs, not from the program.
func TestNoWordIsInTheProgram(t *testing.T) {
	shows := regexp.MustCompile(`(?:\.(?:Text|Title|Alt|Placeholder)\(|Aria\("label", |(?:Label|Help|Title): +)"[^"\n]*\pL{2,}[^"\n]*"`)
	if !shows.MatchString(`app.P().Text("some words")`) || !shows.MatchString(`Aria("label", "some words")`) {
		t.Fatal("words in the program would not be seen")
	}
	for _, found := range shows.FindAllString(sources(t, ".", "../widget", "../picture", "../desk"), -1) {
		t.Errorf("words in the program: %s", found)
	}
}

func TestSpanishSentences(t *testing.T) {
	b := newBench(store.Memory(), "es-MX")
	b.Follow(strings.ReplaceAll(demoFan, " ", "%20"))
	for key, want := range map[string]string{
		"old.motor-sheave":    "Ventilador viejo: polea motriz, diámetro de paso",
		"old.groove-angle":    "Ventilador viejo: ángulo de la ranura",
		"new.wheel-max-speed": "Ventilador nuevo: RPM máximas de la rueda",
	} {
		if got := b.full(key); got != want {
			t.Errorf("%s is called %q, not %q", key, got, want)
		}
	}
	for canonical, want := range map[string]string{"48.25 turns": "48.25 vueltas", "3 1/2 in": "3 1/2 in", "208 V": "208 V", "": ""} {
		if got := b.amount(canonical); got != want {
			t.Errorf("%q is written %q, not %q", canonical, got, want)
		}
	}
}

func TestAnAddressChoosesWordsUnitsAndLooks(t *testing.T) {
	for query, want := range map[string][3]string{
		"":                             {"", "us", ""},
		"embed":                        {"", "us", ""},
		"lang=es&units=si&look=sun":    {"es", "si", "sun"},
		"lang=es-MX":                   {"es", "us", ""},
		"lang=xx&units=both&look=pink": {"", "us", ""},
		"lang=&units=&look=":           {"", "us", ""},
	} {
		q, err := url.ParseQuery(query)
		if err != nil {
			t.Fatal(err)
		}
		b := newBench(store.Memory(), "en-US")
		b.asked(q)
		if got := [3]string{b.Settings.Language, systemName(b.Settings.Units), b.Settings.Look}; got != want {
			t.Errorf("?%s gives %v, not %v", query, got, want)
		}
	}
}

// In mid-sentence a place's name begins small, and what stands is not asked for.
func TestWhatIsMissingIsSaidInASentence(t *testing.T) {
	before := shared
	t.Cleanup(func() { shared = before })
	shared = newBench(store.Memory(), "en-US")
	shared.Follow("old.count-motor-turns=47turns")
	b := shared
	b.place("name") // the places are known by their keys
	count, groove, tach := record.Place(&b.Fan.Old.CountMotor), record.Place(&b.Fan.New.Groove), record.Place(&b.Fan.Old.Reading.MotorTach)
	for _, c := range []struct {
		wanted []record.Place
		says   string
	}{
		{[]record.Place{groove}, "Needs new fan: groove."},
		{[]record.Place{count, tach}, "Needs old fan: motor speed, tachometer."},
		{[]record.Place{count}, "Surer figures would settle it: old fan: motor turns counted."},
	} {
		if got := b.missing(c.wanted); got != c.says {
			t.Errorf("it says %q, want %q", got, c.says)
		}
	}
	if got := b.first([]record.Place{groove, tach}); got != "groove and 1 more" {
		t.Errorf("the first is named %q", got)
	}
}
