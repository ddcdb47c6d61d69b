package record

import (
	"cmp"
	"slices"
	"strconv"
	"strings"
)

const (
	trialPrefix = "trial."
	mostTrials  = 60
)

// trialOf returns the trial's id in a key such as trial.k3.speed. An id is one
// to eight lower-case letters and digits.
func trialOf(key string) (id string, ok bool) {
	rest, ok := strings.CutPrefix(key, trialPrefix)
	if !ok {
		return "", false
	}
	id, _, ok = strings.Cut(rest, ".")
	return id, ok && isID(id)
}

func isID(s string) bool {
	for _, c := range []byte(s) {
		if (c < 'a' || c > 'z') && (c < '0' || c > '9') {
			return false
		}
	}
	return 1 <= len(s) && len(s) <= 8
}

// Trial returns the trial with an id, or nil.
func (f *Fan) Trial(id string) *Trial {
	for _, t := range f.Trials {
		if t.ID == id {
			return t
		}
	}
	return nil
}

// earlier orders trials: an id that is shorter, or of the same length and
// alphabetically first, was given first.
func earlier(a, b string) int {
	return cmp.Or(cmp.Compare(len(a), len(b)), cmp.Compare(a, b))
}

// NewTrial starts a trial after all others. It returns nil beyond 60 trials.
func (f *Fan) NewTrial() *Trial {
	n := 1
	for _, t := range f.Trials {
		if k, err := strconv.Atoi(strings.TrimPrefix(t.ID, "t")); err == nil && k >= n {
			n = k + 1
		}
	}
	return f.addTrial("t" + strconv.Itoa(n))
}

// addTrial starts a trial, in the order of the ids. It returns nil for an id
// that can't be or is taken, and beyond 60 trials.
func (f *Fan) addTrial(id string) *Trial {
	if !isID(id) || f.Trial(id) != nil || len(f.Trials) >= mostTrials {
		return nil
	}
	t := &Trial{ID: id}
	f.Trials = append(f.Trials, t)
	slices.SortStableFunc(f.Trials, func(a, b *Trial) int { return earlier(a.ID, b.ID) })
	f.bind()
	return t
}

// RemoveTrial takes a trial out of the log.
func (f *Fan) RemoveTrial(id string) {
	for i, t := range f.Trials {
		if t.ID == id {
			f.Trials = append(f.Trials[:i:i], f.Trials[i+1:]...)
			return
		}
	}
}
