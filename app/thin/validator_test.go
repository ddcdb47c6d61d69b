package main

import (
	"go/ast"
	"go/token"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// The rules that stay are those that the record's bounds name, no fewer and no
// more: validator panics at one that it doesn't know.
func TestTheRulesAreThoseOfTheBounds(t *testing.T) {
	record, err := parse("../../calc/record")
	if err != nil {
		t.Fatal(err)
	}
	var named []string
	for _, file := range record.files {
		ast.Inspect(file, func(n ast.Node) bool {
			field, ok := n.(*ast.KeyValueExpr)
			if !ok {
				return true
			}
			if key, ok := field.Key.(*ast.Ident); !ok || key.Name != "Bounds" {
				return true
			}
			text, ok := field.Value.(*ast.BasicLit)
			if !ok || text.Kind != token.STRING {
				t.Errorf("%s: bounds that can't be read here", record.set.Position(field.Pos()))
				return true
			}
			tag, err := strconv.Unquote(text.Value)
			if err != nil {
				t.Fatal(err)
			}
			for _, rule := range strings.FieldsFunc(tag, func(r rune) bool { return r == ',' || r == '|' }) {
				name, _, _ := strings.Cut(rule, "=")
				named = append(named, name)
			}
			return true
		})
	}
	slices.Sort(named)
	if named = slices.Compact(named); !slices.Equal(named, rules) {
		t.Errorf("the bounds name %q, %q stay", named, rules)
	}
}
