package number

import (
	"maps"
	"slices"
	"unicode/utf8"
)

// A Rule names what a text broke. It is a key: an application turns it into a
// sentence in its own language.
type Rule string

// The rules of numbers and quantities.
const (
	RuleEmpty       Rule = "empty"
	RuleTooLong     Rule = "too long"
	RuleTooLarge    Rule = "too large"
	RuleNoNumber    Rule = "no number"
	RuleExponent    Rule = "exponent"
	RuleTwoMarks    Rule = "two decimal marks"
	RuleMarksMixed  Rule = "marks mixed"
	RuleGrouping    Rule = "grouping"
	RuleFraction    Rule = "fraction"
	RuleDenominator Rule = "zero denominator"
	RuleFeet        Rule = "feet and inches"
	RuleNoUnit      Rule = "no unit"
	RuleUnit        Rule = "unknown unit"
	RuleWrongKind   Rule = "wrong kind of unit"
)

var english = map[Rule]string{
	RuleEmpty:       "nothing is written",
	RuleTooLong:     "is too long for a number",
	RuleTooLarge:    "is too large",
	RuleNoNumber:    "is not a number",
	RuleExponent:    "has an exponent; write the number out",
	RuleTwoMarks:    "has two decimal marks",
	RuleMarksMixed:  "mixes marks in a way this language does not",
	RuleGrouping:    "is not grouped in thousands",
	RuleFraction:    "is not a whole number and a proper fraction",
	RuleDenominator: "has a fraction of zero parts",
	RuleFeet:        "is not whole feet and less than 12 inches",
	RuleNoUnit:      "has no unit",
	RuleUnit:        "is not a known unit",
	RuleWrongKind:   "is a unit of something else",
}

// Rules returns every rule of this package.
func Rules() []Rule { return slices.Sorted(maps.Keys(english)) }

// An Error says which rule a text broke. Text is the part at fault as it was
// typed: the unit for a rule about units, otherwise all of it.
type Error struct {
	Rule Rule
	Text string
}

func (e *Error) Error() string {
	sentence, ok := english[e.Rule]
	if !ok {
		sentence = string(e.Rule) // a rule of another package
	}
	if e.Text == "" {
		return sentence
	}
	return `"` + e.Text + `" ` + sentence
}

// quotable is how many runes of a text that is too long an error repeats.
const quotable = 20

func clip(text string) string {
	n := 0
	for i := range text {
		if n == quotable {
			return text[:i] + "…"
		}
		n++
	}
	return text
}

func tooLong(text string, runes int) bool {
	return len(text) > runes*utf8.UTFMax || utf8.RuneCountInString(text) > runes
}
