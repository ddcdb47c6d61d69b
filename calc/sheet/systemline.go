package sheet

import (
	"math"

	"roofside/calc/record"
	"roofside/calc/unit"
)

// nominals are the systems' nominal volts between two lines, or a line and neutral.
var nominals = [...]unit.Voltage{120, 208, 240, 480, 600}

// nearTo returns between which readings a nominal voltage is the one meant: those nearer
// to it in proportion than to another, up to 15 % off, which holds what a system brings
// at its worst and leaves out 277 V, a line and neutral of 480.
func nearTo(i int) (low, high unit.Voltage) {
	const most = 1.15
	n := nominals[i]
	low, high = n/most, n*most
	if i > 0 {
		low = max(low, unit.Voltage(math.Sqrt(float64(n*nominals[i-1]))))
	}
	if i+1 < len(nominals) {
		high = min(high, unit.Voltage(math.Sqrt(float64(n*nominals[i+1]))))
	}
	return low, high
}

// nominal returns the nominal volts of the system that a reading tells, 0 for none.
func nominal(read unit.Voltage) unit.Voltage {
	for i, n := range nominals {
		if low, high := nearTo(i); read > low && read <= high {
			return n
		}
	}
	return 0
}

// A lineVolts is a reading of the circuit's volts, with the nominal volts that it tells, and
// those that it may tell within its error.
type lineVolts struct {
	Given[unit.Voltage]
	now unit.Voltage
	may []unit.Voltage
}

func lineVoltsOf(read Given[unit.Voltage]) *lineVolts {
	l := &lineVolts{Given: read, now: nominal(read.V())}
	low, high := unit.Voltage(read.Base-read.Band), unit.Voltage(read.Base+read.Band)
	for i, n := range nominals {
		if from, to := nearTo(i); high > from && low <= to {
			l.may = append(l.may, n)
		}
	}
	if nominal(low) == 0 || nominal(high) == 0 {
		l.may = append(l.may, 0)
	}
	return l
}

// solveOver is [Solve] for a formula that goes by the nominal volts of lines: a line's
// error counts as far as it lets it be of another system.
func solveOver[Q unit.Quantity](a *Ask, lines []*lineVolts, from From, method string, at At, formula func() (Q, error)) Answer[Q] {
	bands := make([]float64, len(lines))
	for i, l := range lines {
		bands[i], l.Band = l.Band, 0
	}
	r := Solve(a, from, method, at, formula)
	for i, l := range lines {
		l.Band = bands[i]
		if !r.Known() {
			continue
		}
		now := l.now
		for _, n := range l.may {
			l.now = n
			l.Weight = max(l.Weight, change(formula, r.Value))
		}
		l.now = now
		r.Band += Q(l.Weight)
	}
	return r
}

// leastSystem returns the lowest nominal volts that the motor may lie across: three
// lines are of no system of 120 V, so that such a reading was against ground.
func leastSystem(f *record.Fan) unit.Voltage {
	if f.Supply.Value() == record.SinglePhase {
		return nominals[0]
	}
	return nominals[1]
}

// lineReadings are the readings that may have volts of the circuit's own system: of both
// fans, which hang on the same one, but not at a drive's output.
func lineReadings(f *record.Fan) []*record.Reading {
	if f.Supply.Value() == record.Inverter {
		return nil
	}
	all := []*record.Reading{&f.Old.Reading, &f.New.Reading}
	for _, t := range f.Trials {
		all = append(all, &t.Reading)
	}
	return all
}

// highest returns the highest of the pairs that were read: with a line lost or a pair
// not read the others still tell the system. nil where none was.
func highest(r *record.Reading) *record.Entry[unit.Voltage] {
	var best *record.Entry[unit.Voltage]
	for i := range r.Volts {
		if v := &r.Volts[i]; v.State() == record.Known && (best == nil || v.Value() > best.Value()) {
			best = v
		}
	}
	return best
}

// systemVolts asks for the volts of each reading, by which the column of the motor
// tables goes: 430.250 and 430.248 are for system volts.
func systemVolts(a *Ask, f posed) []*lineVolts {
	var all []*lineVolts
	if f.on208 {
		all = append(all, lineVoltsOf(Take(a, "U₁", nominals[1])))
	}
	for _, r := range lineReadings(f.Fan) {
		for i := range r.Volts {
			a.mind(&r.Volts[i])
		}
		if v := highest(r); v != nil {
			all = append(all, lineVoltsOf(Want(a, "U₁", v)))
		}
	}
	return all
}

// voltsPlace is where the system's volts are to be read next.
func voltsPlace(f *record.Fan) *record.Entry[unit.Voltage] {
	if n := len(f.Trials); n > 0 {
		return &f.Trials[n-1].Reading.Volts[0]
	}
	return &f.Old.Reading.Volts[0]
}
