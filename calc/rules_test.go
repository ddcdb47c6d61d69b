package calc_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"roofside/calc/source"
)

const module = "roofside/calc/"

// may lists, for every package of the library, which others of it may be
// imported. The arrows point one way, so that a formula can be taken out and
// used without a record, and a record without answers.
var may = map[string][]string{
	"unit":               {},
	"source":             {},
	"limit":              {},
	"number":             {"unit"},
	"drive":              {"unit", "source", "limit"},
	"belt":               {"unit", "source", "limit", "drive"}, // a belt number's section
	"airflow":            {"unit", "source", "limit"},
	"phase":              {"unit", "source", "limit"},
	"raceway":            {"unit", "source", "limit"},
	"record":             {"unit", "source", "limit", "number"},
	"sheet":              {"unit", "source", "limit", "number", "drive", "belt", "airflow", "phase", "raceway", "record"},
	"scenario":           {}, // what tests, of the pages too, hold the answers to
	"internal/published": {"unit", "source", "limit", "number", "drive", "belt", "airflow", "phase", "raceway"},
	"internal/hostile":   {"limit"},
	"internal/check":     {"limit"},

	"internal/mutate/condition": {},
	"internal/mutate":           {"internal/published", "unit", "internal/mutate/condition"},
}

// outside lists the imports from other modules, by file or folder.
var outside = map[string]string{
	"golang.org/x/text/":                     "number/",
	"github.com/go-playground/validator/v10": "record/check.go",
}

// barred are packages of the standard library that a pure one has no use for.
var barred = map[string]string{
	"os":           "reads no files: tables are part of the code",
	"net/http":     "knows no server",
	"syscall/js":   "knows no browser",
	"math/rand":    "the same answer to the same question",
	"math/rand/v2": "the same answer to the same question",
	"unsafe":       "no need",
	"html":         "knows no page",
}

type parsed struct {
	file string // relative to calc
	*ast.File
}

// code parses every Go file of the library that is no test.
func code(t *testing.T) []parsed {
	t.Helper()
	var all []parsed
	err := fs.WalkDir(os.DirFS("."), ".", func(name string, d fs.DirEntry, err error) error {
		if err == nil && d.Name() == "testdata" {
			return fs.SkipDir // as the go command has it
		}
		if err != nil || d.IsDir() || !strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go") {
			return err
		}
		f, err := parser.ParseFile(token.NewFileSet(), filepath.FromSlash(name), nil, parser.ParseComments)
		all = append(all, parsed{name, f})
		return err
	})
	if err != nil || len(all) < 30 {
		t.Fatal(len(all), err)
	}
	return all
}

func TestImportsPointOneWay(t *testing.T) {
	for _, f := range code(t) {
		home := path.Dir(f.file)
		allowed, listed := may[home]
		if !listed && home != "." {
			t.Errorf("%s: no rule says what it may import", home)
		}
		for _, spec := range f.Imports {
			name, err := strconv.Unquote(spec.Path.Value)
			if err != nil {
				t.Fatal(err)
			}
			switch inside, ours := strings.CutPrefix(name, module); {
			case ours:
				if !slices.Contains(allowed, inside) {
					t.Errorf("%s imports %s", f.file, inside)
				}
			case strings.HasPrefix(name, "roofside"):
				t.Errorf("%s imports %s: the library stands alone", f.file, name)
			case strings.Contains(strings.Split(name, "/")[0], "."):
				if !permitted(f.file, name) {
					t.Errorf("%s imports %s", f.file, name)
				}
			case barred[name] != "" && !strings.HasPrefix(home, "internal/"):
				t.Errorf("%s imports %s: %s", f.file, name, barred[name])
			}
		}
	}
}

func permitted(file, name string) bool {
	for prefix, place := range outside {
		if strings.HasPrefix(name, prefix) && strings.HasPrefix(file, place) {
			return true
		}
	}
	return false
}

func TestEveryPackageHasOneComment(t *testing.T) {
	comments := map[string]int{}
	for _, f := range code(t) {
		home := path.Dir(f.file)
		comments[home] += 0
		if f.Doc != nil {
			comments[home]++
			if !strings.HasPrefix(f.Doc.Text(), "Package "+f.Name.Name+" ") {
				t.Errorf("%s: a package comment begins with Package %s", f.file, f.Name.Name)
			}
		}
	}
	for home, n := range comments {
		if n != 1 {
			t.Errorf("%s has %d package comments", home, n)
		}
	}
}

// An answer shows its source by the method's key.
func TestAnswersNameRegisteredMethods(t *testing.T) {
	named := 0
	check := func(file string, e ast.Expr) {
		l, ok := e.(*ast.BasicLit)
		if !ok {
			return
		}
		key, err := strconv.Unquote(l.Value)
		if err != nil {
			t.Fatal(err)
		}
		if key == "" {
			return // read from a place, no formula
		}
		named++
		if _, ok := source.Lookup(key); !ok {
			t.Errorf("%s names %s, which is not registered", file, key)
		}
	}
	for _, f := range code(t) {
		if path.Dir(f.file) != "sheet" {
			continue
		}
		ast.Inspect(f.File, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.CallExpr:
				if id, ok := n.Fun.(*ast.Ident); ok && (id.Name == "Solve" && len(n.Args) == 5 || id.Name == "fixed" && len(n.Args) == 2) {
					check(f.file, n.Args[len(n.Args)/2]) // the third of Solve, the second of fixed
				}
			case *ast.KeyValueExpr:
				if id, ok := n.Key.(*ast.Ident); ok && strings.EqualFold(id.Name, "method") {
					check(f.file, n.Value)
				}
			case *ast.AssignStmt:
				for i, left := range n.Lhs {
					if s, ok := left.(*ast.SelectorExpr); ok && strings.EqualFold(s.Sel.Name, "method") && i < len(n.Rhs) {
						check(f.file, n.Rhs[i])
					}
				}
			}
			return true
		})
	}
	if named < 60 {
		t.Errorf("only %d methods are named", named)
	}
}
