package condition

import (
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"regexp"
	"slices"
	"sync"
	"time"
)

// A Run says what is tried, and how.
type Run struct {
	Root        string         // of the module
	Each        int            // how many conditions of a package are turned about; 0 for all
	Seed        uint64         // by which they are drawn
	Jobs        int            // how many run at once
	Short       bool           // leaves long tests out, as go test -short does
	Skip        *regexp.Regexp // tests that are left out, or nil: for a quick look
	Only        func(file string, line int) bool
	Indifferent []Indifferent
	Out         io.Writer

	grace time.Duration // for tests, besides ten times what they take unchanged
}

// An Indifferent is a change that makes no difference, and why. It is named by what
// changes, and in which function, as a survivor is reported; it stands for all that
// read alike there.
type Indifferent struct{ File, In, From, To, Why string }

func (i Indifferent) is(m Mutant) bool {
	return i.File == m.File && i.In == m.In && i.From == m.From && i.To == m.To
}

// A Tally is what became of a package's changes.
type Tally struct {
	Changed, Found, Late int // Found includes those Late, found by running out of time
	Survived             []Mutant
	Named                int      // survived, and named as indifferent
	Left                 int      // did not compile
	Wrong                []string // names of indifferent ones that name nothing, or one that is found
}

// Package turns a package's conditions about, one at a time. The folder is from the
// root, with slashes.
func (r Run) Package(folder string) (t Tally, err error) {
	if r.grace == 0 {
		r.grace = 10 * time.Second // a busy machine is no endless loop
	}
	dir, err := os.MkdirTemp("", "conditions")
	if err != nil {
		return Tally{}, err
	}
	defer os.RemoveAll(dir)
	all, binaries, left, err := r.build(folder, dir)
	if err != nil {
		return Tally{}, err
	}
	t.Left = left
	for _, i := range r.Indifferent {
		if r.in(i, folder) && !slices.ContainsFunc(all, i.is) {
			t.Wrong = append(t.Wrong, fmt.Sprintf("%s: %s: no condition stands so: %s for %s", i.File, i.In, i.To, i.From))
		}
	}
	for _, b := range binaries {
		if err := r.meet(b); err != nil {
			return Tally{}, err
		}
	}
	all = r.drawn(all)
	var mu sync.Mutex
	err = r.each(len(all), func(i int) error {
		e, err := r.try(all[i], binaries)
		if err != nil {
			return err
		}
		mu.Lock()
		defer mu.Unlock()
		t.take(all[i], e, r)
		return nil
	})
	fmt.Fprintln(r.Out, t.line(folder))
	for _, w := range t.Wrong {
		fmt.Fprintln(r.Out, w)
	}
	return t, err
}

// in tells whether a name is of a file of the folder itself.
func (r Run) in(i Indifferent, folder string) bool {
	return len(i.File) > len(folder) && i.File[:len(folder)+1] == folder+"/"
}

// drawn returns the mutants to be tried, in the order they stand in.
func (r Run) drawn(all []Mutant) []Mutant {
	if r.Only != nil {
		all = slices.DeleteFunc(all, func(m Mutant) bool { return !r.Only(m.File, m.Line) })
	}
	if r.Each <= 0 || r.Each >= len(all) {
		return all
	}
	order := rand.New(rand.NewPCG(r.Seed, 0)).Perm(len(all))[:r.Each]
	slices.Sort(order)
	some := make([]Mutant, len(order))
	for i, at := range order {
		some[i] = all[at]
	}
	return some
}

// take counts a mutant in, and reports it at once where there is something to say:
// the whole of a large package takes long.
func (t *Tally) take(m Mutant, e end, r Run) {
	t.Changed++
	named := slices.IndexFunc(r.Indifferent, func(i Indifferent) bool { return i.is(m) })
	where := fmt.Sprintf("%s:%d: %s: %s for %s", m.File, m.Line, m.In, m.To, m.From)
	switch {
	case (e == found || e == late) && named >= 0:
		t.Found++
		t.Wrong = append(t.Wrong, where+": named as indifferent, and found")
	case e == found:
		t.Found++
	case e == late:
		t.Found++
		t.Late++
		fmt.Fprintf(r.Out, "out of time: %s\n", where)
	case named >= 0:
		t.Named++
	case e == unmet:
		t.Survived = append(t.Survived, m)
		fmt.Fprintf(r.Out, "survived, met by no test: %s\n", where)
	default:
		t.Survived = append(t.Survived, m)
		fmt.Fprintf(r.Out, "survived: %s\n", where)
	}
}

func (t Tally) line(folder string) string {
	s := fmt.Sprintf("%-32s %4d changed, %4d found, %2d survived", "conditions of "+folder, t.Changed, t.Found, len(t.Survived))
	if t.Late > 0 {
		s += fmt.Sprintf("; %d found by running out of time", t.Late)
	}
	if t.Named > 0 {
		s += fmt.Sprintf("; %d named as indifferent", t.Named)
	}
	if t.Left > 0 {
		s += fmt.Sprintf("; %d that don't compile left out", t.Left)
	}
	return s
}

// each does a number of things, Jobs at a time, and returns the first error, after
// which it begins nothing more.
func (r Run) each(n int, do func(i int) error) error {
	next := make(chan int, n)
	for i := range n {
		next <- i
	}
	close(next)
	var group sync.WaitGroup
	var mu sync.Mutex
	var first error
	for range max(r.Jobs, 1) {
		group.Go(func() {
			for i := range next {
				mu.Lock()
				stop := first != nil
				mu.Unlock()
				if stop {
					return
				}
				if err := do(i); err != nil {
					mu.Lock()
					first = err
					mu.Unlock()
				}
			}
		})
	}
	group.Wait()
	return first
}
