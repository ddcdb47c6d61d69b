package record

import (
	"errors"
	"math"

	"github.com/go-playground/validator/v10"

	"roofside/calc/number"
)

// Rules that a number can break by its size, whatever it measures.
const (
	RuleNotPositive number.Rule = "not positive"
	RuleNegative    number.Rule = "negative"
	RuleAboveBound  number.Rule = "above bound"
	RuleBelowBound  number.Rule = "below bound"
	RuleNotWhole    number.Rule = "not whole"
)

var bounds = validator.New()

// bound checks a number against a validator tag. A tag names both bounds, so
// that infinity passes none.
func bound(x float64, tag string) error {
	err := bounds.Var(x, tag)
	var broken validator.ValidationErrors
	if !errors.As(err, &broken) {
		return err
	}
	rule := map[string]number.Rule{"gt": RuleNotPositive, "gte": RuleBelowBound, "lte": RuleAboveBound}[broken[0].Tag()]
	if rule == RuleBelowBound && broken[0].Param() == "0" {
		rule = RuleNegative
	}
	return &number.Error{Rule: rule, Text: broken[0].Param()}
}

// Check tells whether a place with this fact can hold a base value.
func (f *Fact) Check(base float64) error {
	if f == nil {
		return nil
	}
	if f.Whole && base != math.Trunc(base) {
		return &number.Error{Rule: RuleNotWhole}
	}
	return bound(base, f.Bounds)
}
