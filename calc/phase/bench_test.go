package phase_test

import (
	"testing"
	"time"

	"roofside/calc/internal/check"
	"roofside/calc/phase"
	"roofside/calc/unit"
)

var bench = struct {
	roll []phase.Position
	clip phase.Meter[unit.Current]
	volt phase.Meter[unit.Voltage]
}{
	[]phase.Position{{L1: 10.8, L2: 10, L3: 9.2}, {L1: 10.8, L2: 9.9, L3: 9.3}, {L1: 10.7, L2: 10, L3: 9.3}},
	phase.UsualClamp, phase.UsualVoltmeter,
}

// Evaluated at every keystroke; none may allocate while its inputs are sound.
var hot = map[string]check.Call{
	"VoltageBalance":    func() error { _, err := phase.VoltageBalance(460, 467, 450, bench.volt); return err },
	"CurrentBalance":    func() error { _, err := phase.CurrentBalance(10.8, 10, 9.2, bench.clip, 0.8, 0.01); return err },
	"SequenceFactor":    func() error { _, err := phase.SequenceFactor[unit.Voltage](460, 467, 450); return err },
	"TriangleCheck":     func() error { _, err := phase.TriangleCheck(460, 467, 450, bench.volt); return err },
	"LostPhase":         func() error { _, err := phase.LostPhase(0.1, 17.5, 17.4, bench.clip); return err },
	"ClassifyRoll":      func() error { _, err := phase.ClassifyRoll(bench.roll, bench.clip); return err },
	"DeratingOver":      func() error { _, err := phase.DeratingOver(0.01, 0.02, 0.03); return err },
	"VoltsAgainstPlate": func() error { _, err := phase.VoltsAgainstPlate(208, bench.volt, 230); return err },
	"AmpsAgainstPlate":  func() error { _, err := phase.AmpsAgainstPlate(6.5, bench.clip, 6.8, 7.8); return err },
	"VoltsAtMotor":      func() error { _, err := phase.VoltsAtMotor(471, bench.volt, 480); return err },
	"OverloadOf":        func() error { _, err := phase.OverloadOf(6.8, phase.OverloadService); return err },
	"ShaftByPower":      func() error { _, err := phase.ShaftByPower(5000, 0.8, 0.85, 0.3); return err },
	"CheckUse":          func() error { _, err := phase.CheckUse(phase.CheckRoll, phase.TwoSpeed); return err },
}

func TestNoAllocations(t *testing.T) { check.Allocations(t, 0, hot) }

func BenchmarkFormulas(b *testing.B) { check.Speed(b, 10*time.Microsecond, hot) }
