package phase_test

import (
	"testing"

	"roofside/calc/internal/hostile"
	"roofside/calc/phase"
	"roofside/calc/unit"
)

func TestHostileInput(t *testing.T) {
	words := []string{"", "three-phase", "drive", "two-speed", "lead-roll", "plate-volts", "rotation", "service-factor", "other"}
	hostile.Run(t, ".", words, map[string]any{
		"Unbalance":           phase.Unbalance[unit.Voltage],
		"UnbalanceRange":      phase.UnbalanceRange[unit.Current],
		"VoltageBalance":      phase.VoltageBalance,
		"CurrentBalance":      phase.CurrentBalance,
		"Amplification":       phase.Amplification,
		"SequenceFactor":      phase.SequenceFactor[unit.Voltage],
		"TriangleCheck":       phase.TriangleCheck[unit.Voltage],
		"ThroughClamp":        phase.ThroughClamp,
		"ClampOfTurns":        phase.ClampOfTurns,
		"LostPhase":           phase.LostPhase,
		"LostPhaseOnVolts":    phase.LostPhaseOnVolts,
		"OpenLine":            phase.OpenLine,
		"CombinedVariation":   phase.CombinedVariation,
		"AmpsWithOpenLine":    phase.AmpsWithOpenLine,
		"VoltageDerating":     phase.VoltageDerating,
		"DeratingOver":        phase.DeratingOver,
		"HeadroomLeft":        phase.HeadroomLeft,
		"ExtraHeating":        phase.ExtraHeating,
		"InsulationLife":      phase.InsulationLife,
		"TorqueShare":         phase.TorqueShare,
		"VoltsPerHertz":       phase.VoltsPerHertz,
		"VoltsAgainstPlate":   phase.VoltsAgainstPlate,
		"AmpsAgainstPlate":    phase.AmpsAgainstPlate,
		"ConnectionHint":      phase.ConnectionHint[unit.Current],
		"SystemOf":            phase.SystemOf,
		"SystemNear":          phase.SystemNear,
		"VoltsAtMotor":        phase.VoltsAtMotor,
		"PlateOnSystem":       phase.PlateOnSystem,
		"OverloadClassOf":     phase.OverloadClassOf,
		"OverloadOf":          phase.OverloadOf,
		"ProtectorTrip":       phase.ProtectorTrip,
		"Apparent":            phase.Apparent,
		"ApparentSinglePhase": phase.ApparentSinglePhase,
		"Real":                phase.Real,
		"ShaftByPower":        phase.ShaftByPower,
		"ShaftByLoad":         phase.ShaftByLoad,
		"ReversedBy":          phase.ReversedBy,
		"DirectionOf":         phase.DirectionOf,
		"CheckUse":            phase.CheckUse,
		"ClassifyRoll": func(first, second, third phase.Position, meter phase.Meter[unit.Current]) (phase.Roll, error) {
			return phase.ClassifyRoll([]phase.Position{first, second, third}, meter)
		},
	})
}
