package condition

import (
	"fmt"
	"go/token"
	"go/types"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// asked holds each kind of condition, within another.
const asked = `a && (b || x < y) && y != 1 || !(c == (x >= 2)) || x > y && x <= 1`

// program prints what asked comes to for all that it may be asked of, in one line.
const program = `package main

func f(a, b, c bool, x, y int) bool {
	if %s {
		return true
	}
	return false
}

func main() {
	for _, a := range []bool{false, true} {
		for _, b := range []bool{false, true} {
			for _, c := range []bool{false, true} {
				for x := range 3 {
					for y := range 3 {
						print(f(a, b, c, x, y), " ")
					}
				}
			}
		}
	}
}
`

// A mutant in the schema does what its words say, by the type checker's evaluation
// of constants, and without one the text does what it did.
func TestMutantsDoWhatTheyAreCalled(t *testing.T) {
	t.Parallel()
	dir := t.TempDir()
	next := 0
	all, text, err := schemaOf("main.go", fmt.Appendf(nil, program, asked), &next, func(int) bool { return false })
	if err != nil {
		t.Fatal(err)
	}
	// Of && and ||, 6 to exchange and 3 + 2 + 3 + 2 operands; 6 comparisons; and the whole.
	if len(all) != 6+10+6+1 {
		t.Errorf("%d mutants", len(all))
	}
	for name, text := range map[string]string{"main.go": string(text), "called.go": fmt.Sprintf(helper, "main", next+1), "go.mod": "module main\n\ngo 1.26.0\n"} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	build := exec.Command("go", "build", "-o", "main", ".")
	build.Dir = dir
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s\n%s", err, out, text)
	}
	for _, m := range append(all, Mutant{From: "a", To: "a"}) {
		// What changes stands in brackets, as the tree has it.
		if strings.Count(asked, m.From) == 0 {
			t.Fatalf("%s is no part of it", m.From)
		}
		changed := strings.Replace(asked, m.From, "("+m.To+")", 1)
		run := exec.Command(filepath.Join(dir, "main"))
		run.Env = append(os.Environ(), fmt.Sprintf("MUTANT=%d", m.id))
		got, err := run.CombinedOutput()
		if err != nil {
			t.Fatal(err)
		}
		if want := evaluated(t, changed); string(got) != want {
			t.Errorf("%s for %s:\n%s, want\n%s", m.To, m.From, got, want)
		}
	}
}

func evaluated(t *testing.T, expression string) string {
	t.Helper()
	var all strings.Builder
	bools := []string{"false", "true"}
	for _, a := range bools {
		for _, b := range bools {
			for _, c := range bools {
				for x := range 3 {
					for y := range 3 {
						e := strings.NewReplacer("a ", a+" ", "b ", b+" ", "c ", c+" ", "b)", b+")", "a)", a+")", "x", fmt.Sprint(x), "y", fmt.Sprint(y)).Replace(expression + " ")
						v, err := types.Eval(token.NewFileSet(), nil, token.NoPos, e)
						if err != nil {
							t.Fatal(err, e)
						}
						fmt.Fprint(&all, v.Value, " ")
					}
				}
			}
		}
	}
	return all.String()
}

func TestConstantsAreLeftAlone(t *testing.T) {
	const text = "package p\n\nconst a = 1 < 2\n\nvar b [len(\"x\" + \"y\")]int\n\nfunc (p *P[Q]) f() bool {\n\tconst c = 3 != 4 && a\n\treturn true\n}\n"
	next := 0
	all, got, err := schemaOf("p.go", []byte(text), &next, func(int) bool { return false })
	if err != nil || len(all) != 0 || string(got) != text {
		t.Error(all, err, string(got))
	}
}

func TestFunctionsAreCalledByTheirTypes(t *testing.T) {
	const text = "package p\n\nfunc (p *P[Q]) f() bool { return a == 1 }\nfunc (p P[Q, R]) g() bool { return a == 1 }\nfunc h() bool { return a == 1 }\nvar i, j = func() bool { return a == 1 }, 1\n"
	next := 0
	all, _, err := schemaOf("p.go", []byte(text), &next, func(int) bool { return false })
	var in []string
	for _, m := range all {
		in = append(in, m.In)
	}
	if got := strings.Join(in, " "); err != nil || got != "P.f P.g h i" {
		t.Error(got, err)
	}
}

func TestBrokenTextIsSaid(t *testing.T) {
	next := 0
	if _, _, err := schemaOf("p.go", []byte("package p\nfunc {"), &next, nil); err == nil {
		t.Error("taken")
	}
}
