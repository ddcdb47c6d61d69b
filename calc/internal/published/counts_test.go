package published_test

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"maps"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

var formulas = []string{"drive", "belt", "airflow", "phase", "raceway"}

// withoutCase are the exported functions that no case calls, with the reason.
var withoutCase = map[string]string{
	"drive.Grooves":   list,
	"phase.Lost.Dead": list, "phase.Lost.Sure": word,
	"belt.Judge": word, "belt.JudgeAlignment": word, "belt.SectionInGroove": word,
	"phase.Checks":     list,
	"phase.OpenLine":   word,
	"phase.BeforeRoll": word, "phase.CheckUse": word, "phase.ConnectionHint": word, "phase.ReversedBy": word,
	"raceway.Boxes": list, "raceway.Columns": list, "raceway.Conduits": list, "raceway.Devices": list, "raceway.Editions": list,
	"raceway.EndKinds": list, "raceway.Insulations": list, "raceway.Items": list, "raceway.JointConditions": list,
	"raceway.Materials": list, "raceway.MetricWires": list, "raceway.Shapes": list, "raceway.TradeSizes": list, "raceway.WireSizes": list,
	"raceway.Conduit.Flexible": word, "raceway.Conduit.Metallic": word, "raceway.Conduit.Threaded": word, "raceway.WallOf": word,
	"raceway.Part.Sizes":      word,
	"raceway.Allowed":         "one sentence of the code, and no figure; tested in its package",
	"raceway.MarkedTerminals": "one sentence of the code, and no figure; tested in its package",
	"raceway.MotorWires":      "two or three, which is no figure to look up; tested in its package",
	"raceway.Row.Conductor":   "leans on ConductorOf, which has cases; tested in its package",
	"raceway.RowError.Error":  text, "raceway.RowError.Unwrap": text,
}

const (
	list = "lists what is there; its counts and order are tested in its package"
	word = "answers with a word, not a figure; tested in its package"
	text = "an error's sentence"
)

// Counts of the cases that call each exported function of the formulas, by how
// the case is known; go test -run Counts -v prints them. A function that no case
// calls has a reason.
func TestCounts(t *testing.T) {
	exported := map[string][]string{}
	for _, pkg := range formulas {
		exported[pkg] = functions(t, pkg)
	}
	cases := map[string]map[string]int{} // by function, by class
	calls := callsByCase(t, exported)
	for _, k := range collections {
		for _, c := range k.load(t) {
			for name := range calls[k.file+" "+c.ID] {
				if cases[name] == nil {
					cases[name] = map[string]int{}
				}
				cases[name][c.Class]++
			}
		}
	}
	var out strings.Builder
	for _, pkg := range formulas {
		total := map[string]int{}
		fmt.Fprintf(&out, "\n%-36s %9s %9s %9s\n", pkg, "published", "derived", "memory")
		for _, name := range exported[pkg] {
			n, why := cases[name], withoutCase[name]
			fmt.Fprintf(&out, "%-36s %9d %9d %9d  %s\n", strings.TrimPrefix(name, pkg+"."), n["published"], n["derived"], n["memory"], why)
			switch {
			case n == nil && why == "":
				t.Errorf("%s: no case calls it, and nothing says why", name)
			case n != nil && why != "":
				t.Errorf("%s: cases call it, and it is said to have none", name)
			}
			total["all"]++
			switch {
			case n["published"] > 0:
				total["published"]++
			case n != nil:
				total["derived"]++
			}
		}
		fmt.Fprintf(&out, "%d functions: %d with a published case, %d with derived or recalled ones alone, %d with none\n",
			total["all"], total["published"], total["derived"], total["all"]-total["published"]-total["derived"])
	}
	if testing.Verbose() {
		t.Log(out.String())
	}
	for name := range withoutCase {
		pkg, _, _ := strings.Cut(name, ".")
		if !slices.Contains(exported[pkg], name) {
			t.Errorf("%s is no exported function", name)
		}
	}
}

// functions returns the exported functions of a package, and its exported
// methods as package.Type.Method.
func functions(t *testing.T, pkg string) (names []string) {
	t.Helper()
	for _, f := range parsed(t, "../../"+pkg+"/*.go", false) {
		for _, d := range f.Decls {
			d, ok := d.(*ast.FuncDecl)
			if !ok || !d.Name.IsExported() {
				continue
			}
			name := pkg + "."
			if d.Recv != nil {
				receiver, _, _ := strings.Cut(fmt.Sprint(typeName(d.Recv.List[0].Type)), "[")
				if !ast.IsExported(receiver) {
					continue
				}
				name += receiver + "."
			}
			names = append(names, name+d.Name.Name)
		}
	}
	slices.Sort(names)
	return names
}

func typeName(e ast.Expr) string {
	switch e := e.(type) {
	case *ast.StarExpr:
		return typeName(e.X)
	case *ast.IndexExpr:
		return typeName(e.X)
	case *ast.Ident:
		return e.Name
	}
	return ""
}

// parsed returns the files of a pattern that are tests, or those that are not.
func parsed(t *testing.T, pattern string, tests bool) (files []*ast.File) {
	t.Helper()
	names, err := filepath.Glob(pattern)
	if err != nil || len(names) == 0 {
		t.Fatal(pattern, err)
	}
	for _, name := range names {
		if strings.HasSuffix(name, "_test.go") != tests {
			continue
		}
		f, err := parser.ParseFile(token.NewFileSet(), name, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		files = append(files, f)
	}
	return files
}

// callsByCase returns the functions that each case's answer calls, itself or
// through helpers here. A case is named by its file and its ID.
func callsByCase(t *testing.T, exported map[string][]string) map[string]map[string]bool {
	t.Helper()
	methods := map[string][]string{}
	for _, names := range exported {
		for _, name := range names {
			if parts := strings.Split(name, "."); len(parts) == 3 {
				methods[parts[2]] = append(methods[parts[2]], name)
			}
		}
	}
	uses := map[string]map[string]bool{} // by helper or case: functions of the library, helpers here
	file := map[string]string{}          // of cases, by the variable that answers them
	for variable, name := range map[string]string{
		"driveAnswers": "mechanical", "beltAnswers": "mechanical", "tensionAnswers": "mechanical", "airAnswers": "mechanical",
		"phaseAnswers": "electrical-phase", "racewayAnswers": "electrical-raceway", "wireAnswers": "electrical-raceway",
	} {
		file[variable] = name
	}
	note := func(name string, n ast.Node) {
		found := map[string]bool{}
		ast.Inspect(n, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.SelectorExpr:
				if x, ok := n.X.(*ast.Ident); ok && slices.Contains(formulas, x.Name) {
					found[x.Name+"."+n.Sel.Name] = true
					return false
				}
				for _, m := range methods[n.Sel.Name] {
					found[m] = true
				}
			case *ast.Ident:
				found[n.Name] = true
			}
			return true
		})
		uses[name] = found
	}
	for _, f := range parsed(t, "*.go", true) {
		for _, d := range f.Decls {
			switch d := d.(type) {
			case *ast.FuncDecl:
				note(d.Name.Name, d.Body)
			case *ast.GenDecl:
				for _, s := range d.Specs {
					v, ok := s.(*ast.ValueSpec)
					if !ok || file[v.Names[0].Name] == "" {
						continue
					}
					for _, e := range v.Values[0].(*ast.CompositeLit).Elts {
						e := e.(*ast.KeyValueExpr)
						id, err := strconv.Unquote(e.Key.(*ast.BasicLit).Value)
						if err != nil {
							t.Fatal(err)
						}
						note(file[v.Names[0].Name]+" "+id, e.Value)
					}
				}
			}
		}
	}
	all := map[string]map[string]bool{}
	for name := range uses {
		if strings.Contains(name, " ") {
			seen := map[string]bool{}
			var reach func(string)
			reach = func(name string) {
				for _, n := range slices.Sorted(maps.Keys(uses[name])) {
					if !seen[n] {
						seen[n] = true
						reach(n)
					}
				}
			}
			reach(name)
			all[name] = seen
		}
	}
	return all
}
