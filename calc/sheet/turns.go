package sheet

import (
	"cmp"
	"slices"

	"roofside/calc/record"
	"roofside/calc/unit"
)

// A Mark says what a row of the turns table stands for.
type Mark uint8

// The marks.
const (
	MarkFound   Mark = 1 << iota // nearest to the old fan's speed as found
	MarkShipped                  // the new sheave as shipped
	MarkNow                      // as it is set now
	MarkTarget                   // nearest to the target
	MarkSet                      // the row to set: the nearest at or above the target
)

// A Maybe is a number of a row that may not be known.
type Maybe[Q ~float64] struct {
	V     Q
	Known bool
}

func some[Q ~float64](v Q) Maybe[Q] { return Maybe[Q]{v, true} }

// A Row is the new drive at one setting of its motor sheave.
type Row struct {
	Turns    unit.Turns
	Pitch    unit.Length
	Speed    unit.Speed
	OfTarget Maybe[unit.Ratio] // speed, and so airflow, as a share of the target's
	Power    Maybe[unit.Ratio] // as a share of that at the target
	AmpsLow  Maybe[unit.Current]
	AmpsHigh Maybe[unit.Current]
	LoadLow  Maybe[unit.Ratio] // of plate amps
	LoadHigh Maybe[unit.Ratio]
	Beyond   bool               // amps so far over the plate that no method tells them: LoadHigh is a least value
	Base     Maybe[unit.Length] // how far the motor base moves from where it stands, away from the fan positive
	Shift    unit.Length        // how far the belt's center moves sideways from now
	Marks    Mark
	Verdicts []Verdict // those that are not within
	band     float64   // of the speed, as a share
	judged   bool
}

// Verdict returns the worst of the row's verdicts.
func (r Row) Verdict() Verdict { return Worst(r.Verdicts) }

// A Table is the new drive at every half turn, and as it stands.
type Table struct {
	Rows   []Row
	Set    int     // the row to set; -1 for none,
	Why    Why     // and why there is none
	Barred Verdict // of the setting that would reach the target and must not be run
	Now    int     // the row as it is set now; -1 when that is not known
	From   From
	Band   unit.Ratio // of the speed at the setting the table starts from
	Target Answer[unit.Speed]
	Basis  *Basis
	Speed  Answer[unit.Speed] // at the setting the table starts from, under full load unless read; what is wanted stands here
	Alarms []Held             // see [Alarms]
	line   *line
	trials *trials
	missed int           // the row nearest to a target that none reaches; -1 for none
	last   *record.Trial // that it goes by, see [LastReading]
}

const (
	mostRows = 24
	halfTurn = 0.5
)

// TurnsTable answers with the new fan's drive at every half turn of its motor
// sheave, or, in Speed, with what is wanted for it.
func TurnsTable(f *record.Fan) Table { return turnsTable(f, true) }

// TableToSet is [TurnsTable] where only the row to set matters: the others are not
// judged, and what was found is not marked.
func TableToSet(f *record.Fan) Table { return turnsTable(f, false) }

func turnsTable(f *record.Fan, whole bool) Table {
	s := trialsOf(f)
	b := fanBasis(f, s)
	t := Table{Set: -1, Now: -1, missed: -1, Basis: b, Target: TargetSpeed(f), Alarms: alarms(f, s), trials: s, last: s.last()}
	l, speed := newLine(f, b, t.last)
	t.Speed = speed
	if l == nil {
		return t
	}
	t.From, t.Band, t.line = speed.From, unit.Ratio(l.band), l
	w := newWorksheet(f, l, &t)
	for _, turns := range w.settings() {
		row, err := w.row(turns)
		if err != nil {
			break // so far open that no diameter is left
		}
		if whole {
			w.judge(&row)
		}
		t.Rows = append(t.Rows, row)
	}
	w.mark(&t, whole)
	return t
}

// settings lists every half turn, and where the sheave stands between two of them.
func (w *worksheet) settings() []unit.Turns {
	last := w.lastTurns()
	all := make([]unit.Turns, 0, int(last/halfTurn)+2)
	for i := 0; i < mostRows && float64(i)*halfTurn <= float64(last); i++ {
		all = append(all, unit.Turns(i)*halfTurn)
	}
	if now := w.now; now.Known() {
		i, there := slices.BinarySearchFunc(all, now.Value, func(a, b unit.Turns) int {
			if abs(float64(a-b)) <= slack {
				return 0
			}
			return cmp.Compare(a, b)
		})
		if !there {
			all = slices.Insert(all, i, now.Value)
		}
	}
	return all
}

func (w *worksheet) mark(t *Table, whole bool) {
	put := func(i int, m Mark) {
		if i >= 0 {
			t.Rows[i].Marks |= m
		}
	}
	if whole {
		if found := FanSpeed(w.f, &w.f.Old); found.Known() {
			put(nearest(t.Rows, found.Value), MarkFound)
		}
	}
	if s := &w.f.New.Turns; s.State() == record.Known {
		put(rowAt(t.Rows, s.Value()), MarkShipped)
	}
	if w.now.Known() {
		t.Now = rowAt(t.Rows, w.now.Value)
		put(t.Now, MarkNow)
	}
	if t.Target.Known() {
		put(nearest(t.Rows, t.Target.Value), MarkTarget)
		w.choose(t)
		put(t.Set, MarkSet)
	}
}

// rowAt returns the row of a setting, -1 for none.
func rowAt(rows []Row, turns unit.Turns) int {
	return slices.IndexFunc(rows, func(r Row) bool { return abs(float64(r.Turns-turns)) <= slack })
}

// nearest returns the row whose speed is nearest to n; -1 for a speed that lies
// further outside the table than a half turn goes.
func nearest(rows []Row, n unit.Speed) int {
	best := -1
	for i, r := range rows {
		if best < 0 || abs(float64(r.Speed-n)) < abs(float64(rows[best].Speed-n)) {
			best = i
		}
	}
	if len(rows) > 1 && abs(float64(rows[best].Speed-n)) > abs(float64(rows[0].Speed-rows[1].Speed)) {
		return -1
	}
	return best
}
