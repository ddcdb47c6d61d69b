package condition

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"time"
)

// A binary is the compiled tests of a package.
type binary struct {
	dir, path string
	tests     []*test
}

// A test is one that go test would run, with the mutants that it has met, whether
// it can tell them or not.
type test struct {
	binary *binary
	name   string
	takes  time.Duration
	met    map[int]bool
}

// slow is how long a test takes that runs by itself, after all others.
const slow = 300 * time.Millisecond

// memory is how much a test may have, in KiB of addresses: a loop that no longer
// ends must not take the machine's.
const memory = 8 << 20

// runs starts tests of one binary, all at once, and tells whether they failed.
// Out of time is failed too: in a loop that no longer ends, nothing is told.
func (r Run) runs(env string, limit time.Duration, tests ...*test) (failed, late bool, text string, err error) {
	var names []string
	for _, t := range tests {
		names = append(names, regexp.QuoteMeta(t.name))
	}
	b := tests[0].binary
	ctx, cancel := context.WithTimeout(context.Background(), limit)
	defer cancel()
	args := []string{"-c", fmt.Sprintf(`ulimit -v %d; exec "$0" "$@"`, memory), b.path,
		"-test.run", "^(" + strings.Join(names, "|") + ")$", "-test.failfast"}
	if r.Short {
		args = append(args, "-test.short")
	}
	c := exec.CommandContext(ctx, "sh", args...)
	c.Dir, c.Env, c.WaitDelay = b.dir, append(os.Environ(), env), time.Second
	out, err := c.CombinedOutput()
	if ctx.Err() != nil {
		return true, true, string(out), nil
	}
	var exit *exec.ExitError
	if errors.As(err, &exit) {
		return true, false, string(out), nil
	}
	return false, false, string(out), err
}

// meet runs each test without any change, by itself, for how long it takes and what
// it meets: what another test has done before it must not hide a condition.
func (r Run) meet(b *binary) error {
	c := exec.Command(b.path, "-test.list", ".")
	c.Dir = b.dir
	list, err := c.Output()
	if err != nil {
		return fmt.Errorf("%s: %w", b.dir, err)
	}
	for _, name := range strings.Fields(string(list)) {
		if !strings.HasPrefix(name, "Benchmark") && (r.Skip == nil || !r.Skip.MatchString(name)) {
			b.tests = append(b.tests, &test{binary: b, name: name, met: map[int]bool{}})
		}
	}
	err = r.each(len(b.tests), func(i int) error {
		t := b.tests[i]
		file := fmt.Sprintf("%s-%d.met", b.path, i)
		start := time.Now()
		failed, _, text, err := r.runs("MUTANT_MET="+file, 10*time.Minute, t)
		t.takes = time.Since(start)
		if failed {
			err = fmt.Errorf("%s: %s fails before anything is changed\n%s", b.dir, t.name, text)
		}
		if err != nil {
			return err
		}
		met, err := os.ReadFile(file)
		for _, word := range strings.Fields(string(met)) {
			id, err := strconv.Atoi(word)
			if err != nil {
				return fmt.Errorf("%s: %w", filepath.Base(file), err)
			}
			t.met[id] = true
		}
		return err
	})
	slices.SortStableFunc(b.tests, func(s, t *test) int { return cmp.Compare(s.takes, t.takes) })
	return err
}

// An end is how a mutant fared.
type end int

const (
	found    end = iota
	late         // a test that ran out of time
	survived     // tests met it and none failed
	unmet        // in no test would it have made a difference
)

// try runs the tests that have met a mutant: the quick ones of each package
// together, then the slow ones by themselves.
func (r Run) try(m Mutant, all []*binary) (end, error) {
	var rounds, last [][]*test
	for _, b := range all {
		var quick []*test
		for _, t := range b.tests {
			switch {
			case !t.met[m.id]:
			case t.takes < slow:
				quick = append(quick, t)
			default:
				last = append(last, []*test{t})
			}
		}
		if len(quick) > 0 {
			rounds = append(rounds, quick)
		}
	}
	slices.SortStableFunc(last, func(a, b []*test) int { return cmp.Compare(a[0].takes, b[0].takes) })
	rounds = append(rounds, last...)
	if len(rounds) == 0 {
		return unmet, nil
	}
	for _, tests := range rounds {
		limit := r.grace
		for _, t := range tests {
			limit += 10 * t.takes
		}
		switch failed, out, _, err := r.runs(fmt.Sprintf("MUTANT=%d", m.id), limit, tests...); {
		case err != nil:
			return survived, err
		case out:
			return late, nil
		case failed:
			return found, nil
		}
	}
	return survived, nil
}
