package belt_test

import (
	"testing"

	"roofside/calc/belt"
	"roofside/calc/internal/hostile"
)

func TestHostileInput(t *testing.T) {
	hostile.Run(t, ".", []string{"", "A", "B", "4L", "Q"}, map[string]any{
		"OpenLength": belt.OpenLength, "ApproximateLength": belt.ApproximateLength,
		"CenterFromLength": belt.CenterFromLength, "ApproximateCenter": belt.ApproximateCenter, "Span": belt.Span,
		"Arc": belt.Arc, "ArcSmall": belt.ArcSmall, "ArcByRule": belt.ArcByRule, "ArcFactor": belt.ArcFactor,
		"BaseTravel": belt.BaseTravel, "BaseTravelByRule": belt.BaseTravelByRule,
		"DatumLength": belt.DatumLength, "DatumNumber": belt.DatumNumber, "LengthTolerance": belt.LengthTolerance,
	})
}
