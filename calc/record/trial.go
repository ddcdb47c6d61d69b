package record

const mostTrials = 60

func trialID(t *Trial) string { return t.ID }

// Trial returns the trial with an id, or nil.
func (f *Fan) Trial(id string) *Trial {
	for _, t := range f.Trials {
		if t.ID == id {
			return t
		}
	}
	return nil
}

// NewTrial starts a trial after all others. It returns nil beyond 60 trials.
func (f *Fan) NewTrial() *Trial { return f.addTrial(nextID(f.Trials, "t", trialID)) }

// addTrial starts a trial, in the order of the ids. It returns nil for an id
// that can't be or is taken, and beyond 60 trials.
func (f *Fan) addTrial(id string) *Trial {
	if !isID(id) || f.Trial(id) != nil || len(f.Trials) >= mostTrials {
		return nil
	}
	t := &Trial{ID: id}
	f.Trials = place(f.Trials, t, trialID)
	f.bind()
	return t
}

// RemoveTrial takes a trial out of the log.
func (f *Fan) RemoveTrial(id string) {
	f.drop(trialPrefix + id)
	f.removeTrial(id)
}

func (f *Fan) removeTrial(id string) { f.Trials = without(f.Trials, f.Trial(id)) }
