package main

import (
	"fmt"
	"go/ast"
	"slices"
	"strconv"
)

var validator = module{
	path:    "github.com/go-playground/validator/v10",
	version: "v10.30.6",
	sum:     "h1:E+mymlPNRzAMNz1FShrRvLeGWcprF5w305eLLgWieuo=",
	source:  ".",
	cut:     cutValidator,
}

// rules are those that the record's bounds name. A bound that named another
// would end the program where it is checked.
var rules = []string{"gt", "gte", "lte"}

// cutValidator takes the other rules out of the list of those that come with
// validator, then whatever only they called.
func cutValidator(source string) error {
	p, err := parse(source)
	if err != nil {
		return err
	}
	list, ok := p.value("bakedInValidators").(*ast.CompositeLit)
	if !ok {
		return fmt.Errorf("no list of rules")
	}
	kept := 0
	for i, e := range list.Elts {
		name, err := strconv.Unquote(e.(*ast.KeyValueExpr).Key.(*ast.BasicLit).Value)
		if err != nil {
			return err
		}
		if slices.Contains(rules, name) {
			kept++
			continue
		}
		next := list.Rbrace
		if i+1 < len(list.Elts) {
			next = list.Elts[i+1].Pos()
		}
		p.cut(e.Pos(), next)
	}
	if kept != len(rules) {
		return fmt.Errorf("%d of the rules %q", kept, rules)
	}
	return p.prune()
}
