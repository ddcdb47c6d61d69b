package phase_test

import (
	"testing"

	"roofside/calc/internal/hostile"
	"roofside/calc/phase"
	"roofside/calc/unit"
)

func TestHostileInput(t *testing.T) {
	hostile.Run(t, ".", nil, map[string]any{
		"Unbalance":       phase.Unbalance[unit.Voltage],
		"VoltageDerating": phase.VoltageDerating,
	})
}
