package main

import (
	"go/ast"
	"go/token"
	"slices"
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
	take := func(tag ast.Expr) {
		text, ok := tag.(*ast.BasicLit)
		if !ok || text.Kind != token.STRING {
			t.Errorf("%s: bounds that can't be read here", record.set.Position(tag.Pos()))
			return
		}
		for _, rule := range strings.FieldsFunc(strings.Trim(text.Value, `"`), func(r rune) bool { return r == ',' || r == '|' }) {
			name, _, _ := strings.Cut(rule, "=")
			named = append(named, name)
		}
	}
	for _, file := range record.files {
		ast.Inspect(file, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.KeyValueExpr:
				if name, ok := n.Key.(*ast.Ident); ok && name.Name == "Bounds" {
					take(n.Value)
				}
			case *ast.CallExpr:
				if name, ok := n.Fun.(*ast.Ident); ok && name.Name == "bound" {
					if field, ok := n.Args[1].(*ast.SelectorExpr); !ok || field.Sel.Name != "Bounds" {
						take(n.Args[1])
					}
				}
			}
			return true
		})
	}
	slices.Sort(named)
	if named = slices.Compact(named); !slices.Equal(named, rules) {
		t.Errorf("the bounds name %q, %q stay", named, rules)
	}
}
