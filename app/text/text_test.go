package text

import (
	"maps"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"roofside/calc/source"
)

var gap = regexp.MustCompile(`\{[a-zA-Z]+\}`)

func gaps(s string) []string {
	found := gap.FindAllString(s, -1)
	slices.Sort(found)
	return found
}

// Every language says the same things with the same gaps.
func TestCatalogsAgree(t *testing.T) {
	for _, c := range catalogs[1:] {
		for key, s := range english {
			own, ok := c.words[key]
			if !ok {
				t.Errorf("%s: no sentence for %q", c.Tag, key)
			} else if !slices.Equal(gaps(own), gaps(s)) {
				t.Errorf("%s: %q has the gaps %v, not %v", c.Tag, key, gaps(own), gaps(s))
			}
		}
		for key := range c.words {
			if _, ok := english[key]; !ok {
				t.Errorf("%s: %q is in no other language", c.Tag, key)
			}
		}
	}
}

// alike are the sentences that are the same in both languages.
var alike = []string{"units.si", "settings.units.si", "col.speed", "air.motor", "option.no", "fault", "picture.motor",
	"power.verdict", "option.1-2-3", "option.3-1-2", "option.2-3-1", "option.2-1-3", "option.3-2-1", "option.1-3-2",
	"nipple.us", "nipple.si", "option.60", "option.75", "option.90", "shape.octagonal"}

func TestNothingIsLeftInEnglish(t *testing.T) {
	for key, s := range english {
		if spanish[key] == s && !slices.Contains(alike, key) {
			t.Errorf("%q says %q in both languages", key, s)
		}
	}
	for _, key := range alike {
		if spanish[key] != english[key] {
			t.Errorf("%q is not the same in both languages", key)
		}
	}
}

// symbols are the letters in the register that are no words of a language:
// units, functions, subscripts, marks on parts.
var symbols = strings.Fields("in ft lb lbf psi rpm hp mm sin cos tan asin atan ln exp min max tmax Pmin Pmax Pd Pr Pp Te Ts Ac Do Vp Va Vb Vc Vd Mp xp np ns nsp Ir uI uV Ta Tc pv pf Pin OD FLA SFA FLC VUF AX BX VX fp wg Qm Qt pm ps")

// worded tells whether a text of the register holds words.
func worded(s string) bool {
	for _, w := range strings.FieldsFunc(s, func(r rune) bool { return r > unicode.MaxASCII || !unicode.IsLetter(r) }) {
		if len(w) > 1 && !slices.Contains(symbols, w) {
			return true
		}
	}
	return false
}

// Every method is worded, and nothing that the register no longer has.
func TestEveryMethodIsWorded(t *testing.T) {
	for _, c := range catalogs[1:] {
		stale := maps.Clone(c.methods)
		word := func(what, key, own string, must bool) {
			s, ok := c.methods[what+"."+key]
			delete(stale, what+"."+key)
			if must && !ok {
				t.Errorf("%s: no words for %s.%s: %s", c.Tag, what, key, own)
			}
			if ok && s == own {
				t.Errorf("%s: %s.%s is the register's own: %s", c.Tag, what, key, own)
			}
		}
		for _, m := range source.Methods() {
			word("valid", m.Key, m.Valid, worded(m.Valid))
			word("formula", m.Key, m.Formula, worded(m.Formula))
			for _, r := range m.Refs {
				word("where", r.Where, r.Where, strings.Contains(r.Where, "memory") || strings.Contains(r.Where, ", for "))
			}
		}
		for key := range stale {
			t.Errorf("%s: the register has no %s", c.Tag, key)
		}
	}
}

// The figures of a method are the same in every language.
func TestMethodsKeepTheirFigures(t *testing.T) {
	figures := regexp.MustCompile(`[0-9]+([./][0-9]+)?`)
	for _, c := range catalogs[1:] {
		for _, m := range source.Methods() {
			for what, own := range map[string]string{"valid": m.Valid, "formula": m.Formula} {
				says := c.Method(what, m.Key, own)
				if got, want := figures.FindAllString(says, -1), figures.FindAllString(own, -1); !slices.Equal(sorted(got), sorted(want)) {
					t.Errorf("%s: %s.%s has the figures %v, not %v", c.Tag, what, m.Key, got, want)
				}
			}
		}
	}
}

func sorted(s []string) []string {
	slices.Sort(s)
	return s
}

func TestCatalogOfATag(t *testing.T) {
	for tag, want := range map[string]string{"es-MX": "es", "ES": "es", "es": "es", "en-US": "en", "de-DE": "en", "": "en"} {
		if got := For(tag).Tag; got != want {
			t.Errorf("%q is shown %s, not %s", tag, got, want)
		}
	}
	for tag, want := range map[string]bool{"es-MX": true, "EN": true, "de": false, "": false, "e": false} {
		if got := Knows(tag); got != want {
			t.Errorf("%q is known: %v", tag, got)
		}
	}
}
