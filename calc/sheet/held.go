package sheet

// A Held is a verdict where it stands.
type Held struct {
	Name  string // of what it stands beside, as the pages and the README have it
	About string // the item of a handover that it speaks about; "" for none
	Verdict
}

// A Leveled is a verdict, wherever it stands.
type Leveled interface{ level() Level }

func (v Verdict) level() Level { return v.Level }

// Worst returns the verdict that decides a roll-up, the first of the highest
// level.
func Worst[V Leveled](vs []V) V {
	var w V
	for i, v := range vs {
		if i == 0 || v.level() > w.level() {
			w = v
		}
	}
	return w
}

// Named returns the verdict that stands under a name, or false where none does.
func Named(all []Held, name string) (Verdict, bool) {
	for _, h := range all {
		if h.Name == name {
			return h.Verdict, true
		}
	}
	return Verdict{}, false
}

// wrong leaves out what is in order or can't be judged.
func wrong(all ...Held) (kept []Held) {
	for _, h := range all {
		if h.Level >= Watch {
			kept = append(kept, h)
		}
	}
	return kept
}

// judged leaves out what can't be judged.
func judged(all ...Held) (kept []Held) {
	for _, h := range all {
		if h.Level != Unjudged {
			kept = append(kept, h)
		}
	}
	return kept
}

// The items of a handover that verdicts speak about, see [Handover].
const (
	aboutRotation  = "rotation"
	aboutAlignment = "alignment"
	aboutTension   = "tension"
	aboutVolts     = "volts"
	aboutAmps      = "amps"
	aboutSpeed     = "speed"
	aboutHood      = "hood-airflow"
	aboutOverload  = "overload-set"
	aboutPlate     = "plate-matches"
	aboutBase      = "base-fits"
)
