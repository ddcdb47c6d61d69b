package sheet_test

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"roofside/calc/drive"
	"roofside/calc/record"
	"roofside/calc/sheet"
)

// varied yields records like those of the scenarios, with some places put to other usual
// values: targets all over, limits entered or not, readings that fit and that don't.
func varied(t testing.TB, rounds int, yield func(id string, f *record.Fan)) {
	all := corpus(t)
	for seed := range uint64(rounds) {
		r := rand.New(rand.NewPCG(seed, 11))
		c := all[r.IntN(len(all))]
		if !strings.Contains(c.link, "anchor") {
			continue
		}
		f := c.open(t)
		put := func(key string, texts ...string) {
			if p := f.Place(key); p != nil && r.IntN(3) == 0 {
				p.Set(texts[r.IntN(len(texts))])
			}
		}
		put("target.speed", fixedPoint(300+900*r.Float64())+" rpm", fixedPoint(600+200*r.Float64())+" rpm", fixedPoint(690+40*r.Float64())+" rpm; within 2 %")
		put("target.over", "0 %", "2 %", "10 %", "")
		put("new.most-turns", "3 turns", "4 turns", "5 turns", "6 turns", "")
		put("new.section", "A", "B", "AX", "BX", "")
		put("new.turns", "0 turns", "1 turns", "2-1/4 turns", "5 turns")
		put("supply", "three-phase", "drive", "two-speed")
		put("new.wheel-max-speed", "500 rpm", "700 rpm", "720 rpm", "2000 rpm")
		put("new.motor-power", "1/2 hp", "1 hp", "2 hp", "5 hp")
		put("new.motor-amps", "2 A", "4 A", "6.6 A", "14 A")
		put("trial.t1.speed", fixedPoint(600+200*r.Float64())+" rpm", "")
		put("trial.t1.belt-force", "0.5 lbf", "3 lbf", "12 lbf", "")
		if r.IntN(4) == 0 {
			f.Supply.Set("drive")
			f.New.Reading.Frequency.Set("45 Hz")
			put("trial.t1.frequency", "45 Hz", "60 Hz", "")
		}
		yield(c.id, f)
	}
}

// An order keeps the limits it knows.
func TestAnOrderKeepsTheLimitsItKnows(t *testing.T) {
	said := map[sheet.Do]int{}
	varied(t, 6000, func(id string, f *record.Fan) {
		j := sheet.JobOf(f, anyMark, true)
		m, _ := j.Move()
		table := j.Table()
		said[m.Do]++
		fail := func(why string) { t.Errorf("%s: %s %v: %s\n%s", id, m.Do, m.To, why, f.Fragment()) }
		most := &f.New.MostTurns
		switch m.Do {
		case sheet.DoOpen, sheet.DoClose, sheet.DoStay:
			row := table.Rows[table.Set]
			if most.State() == record.Known && m.To > most.Value()+1e-9 {
				fail("past the most turns entered")
			}
			if usual, ok := drive.UsualMostTurns(drive.Section(f.New.Section.Value())); ok && most.State() != record.Known && m.To > usual+0.5+1e-9 {
				fail("more than half a turn past the usual most")
			}
			if least, ok := drive.UsualLeastTurns(drive.Section(f.New.Section.Value())); ok && m.To < least-1e-9 {
				fail("below the section's least")
			}
			if row.Verdict().Level == sheet.Stop {
				fail("its row is a stop by " + string(row.Verdict().Rule))
			}
			if _, _, taut := sheet.TensionNow(f, table, sheet.Move{}, anyMark); m.Do == sheet.DoClose && taut.Verdict.Rule == sheet.RuleLoose {
				fail("the belt is loose")
			}
			if last := sheet.LastReading(f); m.Do == sheet.DoClose && last != nil && last == f.Trials[len(f.Trials)-1] {
				if v := sheet.TrialVerdict(f, last); v.Level == sheet.Watch && v.Rule != sheet.RuleLowSpeed && v.Rule != sheet.RuleMotorReading && len(f.Trials) == 1 {
					fail("the reading stays behind the drive: " + string(v.Rule))
				}
			}
		case sheet.DoFrequency:
			if f.Supply.Value() != record.Inverter {
				fail("there is no drive")
			}
			if base := sheet.PlateFrequency(&f.New); !base.Known() || m.Frequency > base.Value*(1+1e-9) {
				fail("above the plate's frequency")
			}
		case sheet.DoNone:
			if m.Sheave == "" {
				break
			}
			h := sheet.SheavesFor(f)
			own := h.MotorVerdict
			if m.Sheave == sheet.FanSheave {
				own = h.FanVerdict
			}
			motor, wheel := sheet.MotorVerdict(f, table.Basis, table.Target), sheet.WheelVerdict(f, table.Target)
			if own.Level == sheet.Stop || wheel.Level == sheet.Stop {
				fail("the sheave offered is itself a stop")
			}
			if motor.Level >= sheet.Watch {
				fail("the sheave offered overloads the motor")
			}
		}
	})
	for _, do := range []sheet.Do{sheet.DoOpen, sheet.DoClose, sheet.DoStay, sheet.DoNone, sheet.DoFrequency, sheet.DoTension, sheet.DoFixed} {
		if said[do] < 3 && do != sheet.DoFixed {
			t.Errorf("%s was ordered %d times: the records don't try it", do, said[do])
		}
	}
}

// Orders don't swing: whoever sets what is ordered and reads there what was predicted,
// within the tachometer's half a per cent, is told to leave it; and amps typed after that
// which stay within change nothing.
func TestOrdersDontSwing(t *testing.T) {
	tried := 0
	varied(t, 6000, func(id string, f *record.Fan) {
		if len(f.Trials) > 0 || f.Supply.Value() == record.Inverter {
			return
		}
		m := order(f)
		if m.Do != sheet.DoOpen && m.Do != sheet.DoClose && m.Do != sheet.DoStay {
			return
		}
		target := sheet.TargetSpeed(f).Value
		tried++
		for _, off := range []float64{1, 1.004, 0.9985} {
			n := float64(m.Speed) * off
			if over := n / float64(target); over < 0.996 || over > 1.045 {
				continue
			}
			g := fan(t, f.Fragment())
			trial := g.NewTrial()
			trial.Turns.Set(fixedPoint(float64(m.To)) + " turns")
			trial.Reading.Speed.Set(fixedPoint(n) + " rpm")
			if g.Target.Over.State() == record.Known && n > float64(target)*(1+float64(g.Target.Over.Value())) {
				continue
			}
			then := order(g)
			if then.Why == sheet.MustNotBe { // what the reading has made sure
				continue
			}
			if then.Do != sheet.DoStay && then.Do != sheet.DoTension && then.Do != sheet.DoCheck && then.Do != sheet.DoHold {
				t.Errorf("%s: set to %v as ordered and read %.1f rpm for %.1f: %s to %v\n%s", id, m.To, n, target, then.Do, then.To, g.Fragment())
			}
			if full := g.New.MotorAmps; then.Do == sheet.DoStay && full.State() == record.Known {
				for i := range trial.Reading.Amps {
					trial.Reading.Amps[i].Set(fixedPoint(0.6*float64(full.Value())+0.01*float64(i)) + " A")
				}
				if again := order(g); again.Do != sheet.DoStay || math.Abs(float64(again.To-then.To)) > 1e-9 {
					t.Errorf("%s: amps within move the sheave: %s to %v\n%s", id, again.Do, again.To, g.Fragment())
				}
			}
		}
	})
	if tried < 100 {
		t.Errorf("%d orders", tried)
	}
}

// One question, one answer: a fixed drive's speed is the same on Drive and on Airflow.
func TestAFixedDriveHasOneSpeed(t *testing.T) {
	tried := 0
	for _, c := range corpus(t) {
		f := c.open(t)
		if f.New.Sheave.Value() != record.Fixed || len(f.Trials) > 0 || f.Want.Speed.State() == record.Known || f.Want.Goal.State() == record.Known {
			continue
		}
		j := sheet.JobOf(f, anyMark, false)
		onDrive, onAirflow := j.Table().Speed, j.Air().At.Speed
		if !onDrive.Known() {
			continue
		}
		tried++
		if onDrive.Value != onAirflow.Value || onDrive.Band != onAirflow.Band || j.Table().AsShipped(f).Value != onDrive.Value {
			t.Errorf("%s: %v ± %v on Drive, %v ± %v on Airflow", c.id, onDrive.Value, onDrive.Band, onAirflow.Value, onAirflow.Band)
		}
	}
	if tried < 3 {
		t.Errorf("%d fixed drives", tried)
	}
}
