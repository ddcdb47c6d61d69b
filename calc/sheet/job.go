package sheet

import (
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A Job is a fan's record with what is made of it: the turns table, the next move,
// the belt, the proof, the circuit. Each is made when it is first asked for, and once,
// so that a page and what stands on it go by the same. It holds for the record as it
// stands.
type Job struct {
	f     *record.Fan
	mark  unit.Length
	whole bool

	table   lazily[Table]
	move    lazily[toMove]
	sheaves lazily[Sheaves]
	air     lazily[Blown]
	belt    lazily[Belted]
	set     lazily[*Tension]
	proof   lazily[Proof]
	circuit lazily[*Circuit]
	adapter lazily[Finding[raceway.Adapter]]
	joint   lazily[[]Verdict]
	fill    lazily[Verdict]
	box     lazily[Verdict]
	drive   lazily[[]Held]
}

type toMove struct {
	Move
	wanted []record.Place
}

type lazily[T any] struct {
	made  bool
	value T
}

func (l *lazily[T]) get(make func() T) T {
	if !l.made {
		l.value, l.made = make(), true
	}
	return l.value
}

// JobOf returns the job of a record. Belts are pressed in by whole marks of a rule;
// with whole, every row of the turns table is judged, else the one to set alone.
func JobOf(f *record.Fan, mark unit.Length, whole bool) *Job {
	return &Job{f: f, mark: mark, whole: whole}
}

// anyMark is the mark of the rule that a tension is judged by where no force is shown:
// force and edges go with it alike.
const anyMark = unit.Inch / 16

// Table is the turns table; none of a fan that is driven by no belt.
func (j *Job) Table() Table {
	return j.table.get(func() Table {
		if !j.belted() {
			return Table{Set: -1, Now: -1}
		}
		return turnsTable(j.f, j.whole)
	})
}

// belted tells whether the fan is driven by a belt.
func (j *Job) belted() bool { return !j.f.DirectDrive() }

// Move is [NextMove].
func (j *Job) Move() (Move, []record.Place) {
	m := j.move.get(func() toMove {
		m, wanted := NextMove(j.f, j.Table())
		return toMove{m, wanted}
	})
	return m.Move, m.wanted
}

// Sheaves is [SheavesFor].
func (j *Job) Sheaves() Sheaves { return j.sheaves.get(func() Sheaves { return SheavesFor(j.f) }) }

// A Blown is the air at the speed that is planned or asked about, with what is held
// against it.
type Blown struct {
	Basis  *Basis
	Alarms []Held
	At     Point

	Motor, Wheel      Verdict // there
	Hood, Duct, Space Verdict
	Volts             Verdict // their unbalance
	Exhaust           Answer[unit.Flow]
	Velocity          Answer[unit.Velocity] // in the duct
}

// Air is the point that Airflow shows.
func (j *Job) Air() Blown {
	return j.air.get(func() Blown {
		f, t := j.f, j.Table()
		if !j.belted() { // its motor has limits all the same
			t = TableToSet(f)
		}
		speed := PlannedSpeed(f, t)
		if g := f.Want.Goal.Value(); g != "" && g != record.GoalSpeed {
			speed = SpeedFor(f)
		}
		b := Blown{Basis: t.Basis, Alarms: t.Alarms, At: PointAt(f, speed, PlannedAir(f))}
		b.Motor, b.Wheel = MotorVerdict(f, t.Basis, speed), WheelVerdict(f, speed)
		b.Exhaust = HoodAirflow(f, b.At)
		b.Velocity = DuctVelocity(f, b.Exhaust)
		b.Hood, b.Duct, b.Space = HoodVerdict(f, b.Exhaust), DuctVerdict(b.Velocity), SpaceVerdict(f)
		b.Volts = UnbalanceVerdict(f)
		return b
	})
}

// A Belted is the new drive's belt where it is to be set, with what stands against
// running it and what was read at it last.
type Belted struct {
	Run  Run
	Fits []Fit
	Bars []Held
	Last *record.Trial // see [TensionNow]
	Read *Tension
	Taut Tautness

	aligned *record.Trial
	gap     Verdict
}

// Belt is the belt at the setting that the move leads to.
func (j *Job) Belt() Belted {
	return j.belt.get(func() (b Belted) {
		f, t := j.f, j.Table()
		m, _ := j.Move()
		b.Run = RunAt(f, SetTurns(f, t, m), nil)
		b.Fits = Fits(f, b.Run)
		b.Bars = BeltBars(f, m, b.Run, b.Fits)
		b.Last, b.Read, b.Taut = TensionNow(f, t, m, j.mark)
		b.aligned, b.gap = AlignmentNow(f)
		return b
	})
}

// Set is what the belt should take there.
func (j *Job) Set() *Tension {
	return j.set.get(func() *Tension {
		t, run := j.Table(), j.Belt().Run
		return TensionAt(j.f, t.Basis, run, SetSpeed(j.f, t, run.Turns), j.mark)
	})
}

// Proof is [Prove].
func (j *Job) Proof() *Proof {
	j.proof.get(func() Proof { return Prove(j.f) })
	return &j.proof.value
}

// Circuit is [CircuitOf].
func (j *Job) Circuit() *Circuit { return j.circuit.get(func() *Circuit { return CircuitOf(j.f) }) }

// Adapter is [Adapter].
func (j *Job) Adapter() Finding[raceway.Adapter] {
	return j.adapter.get(func() Finding[raceway.Adapter] { return Adapter(j.f) })
}

// Joint is [JointVerdicts].
func (j *Job) Joint() []Verdict {
	return j.joint.get(func() []Verdict { return JointVerdicts(j.f, j.Adapter()) })
}

// Fill is [FillVerdict].
func (j *Job) Fill() Verdict { return j.fill.get(func() Verdict { return FillVerdict(j.f) }) }

// Box is [BoxVerdict].
func (j *Job) Box() Verdict { return j.box.get(func() Verdict { return BoxVerdict(j.f) }) }
