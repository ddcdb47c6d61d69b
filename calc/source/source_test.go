package source_test

import (
	"go/ast"
	"go/doc"
	"go/parser"
	"go/token"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"roofside/calc/source"
)

// formulas are the packages whose comments cite methods.
var formulas = []string{"../drive", "../belt", "../airflow", "../phase", "../raceway"}

var cited = regexp.MustCompile(`(?m)^Method: ([a-z0-9.]+)\.$`)

func parse(t *testing.T, dir string) (code, tests []*ast.File) {
	t.Helper()
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if !strings.HasSuffix(e.Name(), ".go") {
			continue
		}
		f, err := parser.ParseFile(token.NewFileSet(), dir+"/"+e.Name(), nil, parser.ParseComments)
		if err != nil {
			t.Fatal(err)
		}
		if strings.HasSuffix(e.Name(), "_test.go") {
			tests = append(tests, f)
		} else {
			code = append(code, f)
		}
	}
	return code, tests
}

func TestFormulasAndMethodsAgree(t *testing.T) {
	used := map[string]bool{}
	for _, dir := range formulas {
		code, _ := parse(t, dir)
		for _, file := range code {
			for _, group := range file.Comments {
				for _, m := range cited.FindAllStringSubmatch(group.Text(), -1) {
					used[m[1]] = true
					if _, ok := source.Lookup(m[1]); !ok {
						t.Errorf("%s cites %s, which is not registered", dir, m[1])
					}
				}
			}
			for _, d := range file.Decls {
				f, ok := d.(*ast.FuncDecl)
				if !ok || !f.Name.IsExported() || f.Recv != nil || !returnsError(f) {
					continue
				}
				if !cited.MatchString(f.Doc.Text()) {
					t.Errorf("%s: %s cites no method", dir, f.Name.Name)
				}
			}
		}
	}
	for _, key := range named(t, "../sheet") {
		used[key] = true
	}
	for _, m := range source.Methods() {
		if !used[m.Key] {
			t.Errorf("method %s is cited by no formula and no answer", m.Key)
		}
	}
}

// named returns the text literals of a package's code: answers name their
// methods by key.
func named(t *testing.T, dir string) []string {
	code, _ := parse(t, dir)
	var all []string
	for _, file := range code {
		ast.Inspect(file, func(n ast.Node) bool {
			if l, ok := n.(*ast.BasicLit); ok && l.Kind == token.STRING {
				all = append(all, strings.Trim(l.Value, "\""))
			}
			return true
		})
	}
	return all
}

func TestEveryFormulaHasAnExample(t *testing.T) {
	for _, dir := range formulas {
		code, tests := parse(t, dir)
		have := map[string]bool{}
		for _, e := range doc.Examples(tests...) {
			if e.Output == "" {
				t.Errorf("%s: Example%s prints nothing to compare", dir, e.Name)
			}
			have[e.Name] = true
		}
		for _, file := range code {
			for _, d := range file.Decls {
				f, ok := d.(*ast.FuncDecl)
				if ok && f.Name.IsExported() && f.Recv == nil && returnsError(f) && !have[f.Name.Name] {
					t.Errorf("%s: %s has no example", dir, f.Name.Name)
				}
			}
		}
	}
}

func returnsError(f *ast.FuncDecl) bool {
	if f.Type.Results == nil {
		return false
	}
	last, ok := f.Type.Results.List[len(f.Type.Results.List)-1].Type.(*ast.Ident)
	return ok && last.Name == "error"
}

func TestMethodsAreComplete(t *testing.T) {
	known := []source.Known{source.LookedUp, source.Derived, source.CommonPractice, source.Memory}
	keys := map[string]bool{}
	for _, m := range source.Methods() {
		if keys[m.Key] {
			t.Errorf("%s is registered twice", m.Key)
		}
		keys[m.Key] = true
		if m.Formula == "" || m.Valid == "" || !slices.Contains(known, m.Known) {
			t.Errorf("%s lacks its formula, validity or how it is known", m.Key)
		}
		if m.Known == source.LookedUp && len(m.Refs) == 0 {
			t.Errorf("%s is looked up nowhere", m.Key)
		}
		for _, r := range m.Refs {
			if r.Where == "" || !slices.Contains(source.Publications(), r.Publication) {
				t.Errorf("%s cites a place or a publication that is not there: %+v", m.Key, r)
			}
			if m.Known == source.LookedUp && len(m.Refs) == 1 && r.Known != source.LookedUp {
				t.Errorf("%s is looked up in what was not read: %s", m.Key, r.Title)
			}
		}
	}
	if _, ok := source.Lookup("drive.nothing"); ok {
		t.Error("found a method that does not exist")
	}
}

func TestPublicationsAreUsedOnce(t *testing.T) {
	cited := map[string]bool{}
	for _, m := range source.Methods() {
		for _, r := range m.Refs {
			cited[r.Key] = true
		}
	}
	keys, titles := map[string]bool{}, map[string]bool{}
	for _, p := range source.Publications() {
		if p.Key == "" || p.Title == "" || p.Known == "" {
			t.Errorf("incomplete: %+v", p)
		}
		if keys[p.Key] || titles[p.Title] {
			t.Errorf("%s is entered twice", p.Key)
		}
		keys[p.Key], titles[p.Title] = true, true
		if !cited[p.Key] {
			t.Errorf("%s is cited by no method", p.Key)
		}
	}
}
