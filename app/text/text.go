// Package text holds every word on the screen, one catalog for each language.
// A catalog maps keys to sentences; {name} in a sentence is a gap to be filled.
package text

import (
	"maps"
	"slices"
	"strings"
)

// A Catalog is the words of one language.
type Catalog struct {
	Tag     string
	words   map[string]string
	methods map[string]string // in place of the English of the register of methods
}

// catalogs lists the languages, the one for readers of none of them first.
var catalogs = []Catalog{{"en", english, nil}, {"es", spanish, spanishMethods}}

// Tags lists the languages.
func Tags() []string {
	var tags []string
	for _, c := range catalogs {
		tags = append(tags, c.Tag)
	}
	return tags
}

// Knows tells whether there is a catalog for a language tag.
func Knows(tag string) bool {
	language, _, _ := strings.Cut(tag, "-")
	return strings.EqualFold(For(tag).Tag, language)
}

// For returns the catalog of a language tag such as es-MX, English by default.
func For(tag string) *Catalog {
	language, _, _ := strings.Cut(tag, "-")
	for i := range catalogs {
		if strings.EqualFold(catalogs[i].Tag, language) {
			return &catalogs[i]
		}
	}
	return &catalogs[0]
}

// T returns the sentence of a key with its gaps filled by pairs of name and
// value. A key that is missing is shown in brackets, so that a test and a
// reader see it.
func (c *Catalog) T(key string, pairs ...string) string {
	s, ok := c.words[key]
	if !ok {
		return "⟦" + key + "⟧"
	}
	for i := 0; i+1 < len(pairs); i += 2 {
		s = strings.ReplaceAll(s, "{"+pairs[i]+"}", pairs[i+1])
	}
	return s
}

// Method words what the register of methods says of itself: "valid" or
// "formula" with a method's key, "where" with the place in a publication. What
// has no words of its own in the language is left as it is.
func (c *Catalog) Method(what, key, own string) string {
	if s, ok := c.methods[what+"."+key]; ok {
		return s
	}
	return own
}

// Keys lists the keys.
func (c *Catalog) Keys() []string { return slices.Sorted(maps.Keys(c.words)) }

// Has tells whether the catalog has a key.
func (c *Catalog) Has(key string) bool {
	_, ok := c.words[key]
	return ok
}
