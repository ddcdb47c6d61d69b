// Package hostile throws numbers at formulas that no technician would type:
// zero, negative, subnormal, huge, NaN, infinite. It is for tests.
package hostile

import (
	"errors"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"math/rand/v2"
	"os"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"roofside/calc/limit"
)

var floats = []float64{0, -1, 1, 0.5, 3.4, 1750, 1e-308, 5e-324, 1e308, -1e308, math.MaxFloat64, math.NaN(), math.Inf(1), math.Inf(-1)}
var ints = []int{0, -1, 1, 2, 4, 240, math.MaxInt, math.MinInt}

const most = 60_000 // argument lists for each function

// Run calls every function with hostile arguments and reports a result that is
// not finite, a NaN or an infinity accepted without an error, an error that is
// no [limit.Error] or names no parameter, and a result given beside an error.
// Words are tried for string parameters. Every exported function of the
// directory that can return an error must be among the functions; names with a
// dot are further ones, of methods.
func Run(t *testing.T, dir string, words []string, functions map[string]any) {
	t.Helper()
	declared := parameters(t, dir)
	for name := range declared {
		if functions[name] == nil {
			t.Errorf("%s is not tried", name)
		}
	}
	for name, f := range functions {
		names, ok := declared[name]
		if !ok && !strings.Contains(name, ".") {
			t.Errorf("%s is not an exported function of %s with an error", name, dir)
			continue
		}
		t.Run(name, func(t *testing.T) { try(t, reflect.ValueOf(f), names, words) })
	}
}

// parameters returns the parameter names of the exported functions of a
// directory that return an error; fields of a struct parameter by their names.
func parameters(t *testing.T, dir string) map[string][]string {
	t.Helper()
	files, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	found := map[string][]string{}
	for _, entry := range files {
		if !strings.HasSuffix(entry.Name(), ".go") || strings.HasSuffix(entry.Name(), "_test.go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), dir+"/"+entry.Name(), nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range file.Decls {
			f, ok := d.(*ast.FuncDecl)
			if !ok || f.Recv != nil || !f.Name.IsExported() || f.Type.Results == nil {
				continue
			}
			last, ok := f.Type.Results.List[len(f.Type.Results.List)-1].Type.(*ast.Ident)
			if !ok || last.Name != "error" {
				continue
			}
			found[f.Name.Name] = []string{}
			for _, field := range f.Type.Params.List {
				for _, name := range field.Names {
					found[f.Name.Name] = append(found[f.Name.Name], name.Name)
				}
			}
		}
	}
	return found
}

func try(t *testing.T, f reflect.Value, names, words []string) {
	var slots []reflect.Value // settable numbers and words of all arguments
	var args []reflect.Value
	for i := range f.Type().NumIn() {
		arg := reflect.New(f.Type().In(i)).Elem()
		args = append(args, arg)
		if arg.Kind() == reflect.Struct {
			for j := range arg.NumField() {
				slots = append(slots, arg.Field(j))
				names = append(slices.Clip(names), arg.Type().Field(j).Name)
			}
			continue
		}
		slots = append(slots, arg)
	}
	total := 1
	for _, s := range slots {
		total *= choices(s, words)
		if total > most {
			break
		}
	}
	random := rand.New(rand.NewPCG(1, 2))
	faults := 0
	for n := range min(total, most) {
		rest := n
		finite := true
		for _, s := range slots {
			k := choices(s, words)
			pick := rest % k
			rest /= k
			if total > most {
				pick = random.IntN(k)
			}
			finite = set(s, pick, words) && finite
		}
		if fault := verdict(f.Call(args), finite, names); fault != "" {
			t.Errorf("%v: %s", show(slots), fault)
			if faults++; faults == 5 {
				return
			}
		}
	}
}

func choices(s reflect.Value, words []string) int {
	switch s.Kind() {
	case reflect.Float64:
		return len(floats)
	case reflect.Int:
		return len(ints)
	}
	return len(words)
}

// set puts a value into s and reports whether it is a finite one.
func set(s reflect.Value, pick int, words []string) bool {
	switch s.Kind() {
	case reflect.Float64:
		s.SetFloat(floats[pick])
		return !math.IsNaN(floats[pick]) && !math.IsInf(floats[pick], 0)
	case reflect.Int:
		s.SetInt(int64(ints[pick]))
	default:
		s.SetString(words[pick])
	}
	return true
}

func verdict(out []reflect.Value, finite bool, names []string) string {
	failed, _ := out[len(out)-1].Interface().(error)
	if failed == nil && !finite {
		return "accepted"
	}
	if failed != nil {
		var e *limit.Error
		if !errors.As(failed, &e) {
			return "error of another type: " + failed.Error()
		}
		if names != nil && e.Parameter != "" && !slices.Contains(names, e.Parameter) {
			return "error names no parameter: " + e.Parameter
		}
	}
	for _, o := range out[:len(out)-1] {
		for _, x := range numbers(o) {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				return "result is not finite"
			}
			if failed != nil && x != 0 {
				return "result beside an error: " + failed.Error()
			}
		}
	}
	return ""
}

func numbers(v reflect.Value) []float64 {
	switch v.Kind() {
	case reflect.Float64:
		return []float64{v.Float()}
	case reflect.Int:
		return []float64{float64(v.Int())}
	case reflect.Struct:
		var all []float64
		for i := range v.NumField() {
			all = append(all, numbers(v.Field(i))...)
		}
		return all
	}
	return nil
}

func show(slots []reflect.Value) []string {
	var all []string
	for _, s := range slots {
		switch s.Kind() {
		case reflect.String:
			all = append(all, strconv.Quote(s.String()))
		default:
			all = append(all, fmt.Sprint(s.Interface()))
		}
	}
	return all
}
