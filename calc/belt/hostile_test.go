package belt_test

import (
	"testing"

	"roofside/calc/belt"
	"roofside/calc/internal/hostile"
)

func TestHostileInput(t *testing.T) {
	hostile.Run(t, ".", []string{"", "A", "B", "4L", "5VX", "Q", "standard", "combination"}, map[string]any{
		"OpenLength": belt.OpenLength, "ApproximateLength": belt.ApproximateLength,
		"CenterFromLength": belt.CenterFromLength, "ApproximateCenter": belt.ApproximateCenter, "Span": belt.Span,
		"Arc": belt.Arc, "ArcSmall": belt.ArcSmall, "ArcByRule": belt.ArcByRule, "ArcFactor": belt.ArcFactor,
		"BaseTravel": belt.BaseTravel, "BaseTravelByRule": belt.BaseTravelByRule,
		"StandardNumbers": belt.StandardNumbers, "PitchLength": belt.PitchLength, "NearestSizes": belt.NearestSizes,
		"Choices": belt.Choices, "TravelAllowance": belt.TravelAllowance, "BaseReach": belt.BaseReach,
		"EffectivePull": belt.EffectivePull, "TensionRatio": belt.TensionRatio, "Strands": belt.Strands, "StrandsAt": belt.StrandsAt,
		"StaticTension": belt.StaticTension, "CentrifugalTension": belt.CentrifugalTension, "DesignPower": belt.DesignPower,
		"DeflectionDistance": belt.DeflectionDistance, "DeflectionByMetricRule": belt.DeflectionByMetricRule, "DeflectionError": belt.DeflectionError,
		"DeflectionMark": belt.DeflectionMark, "ForceAt": belt.ForceAt,
		"DeflectionForce": belt.DeflectionForce, "TensionFromForce": belt.TensionFromForce, "DeflectionForceExact": belt.DeflectionForceExact,
		"StretchShare": belt.StretchShare, "ForceBands": belt.ForceBands, "ListedBand": belt.ListedBand, "ListedNewBand": belt.ListedNewBand,
		"TensionFromFrequency": belt.TensionFromFrequency, "FrequencyFromTension": belt.FrequencyFromTension,
		"ShaftLoadStatic": belt.ShaftLoadStatic, "ShaftLoadRunning": belt.ShaftLoadRunning, "OverhungLoad": belt.OverhungLoad,
		"ReadForce": belt.ReadForce, "ReadFrequency": belt.ReadFrequency, "Judge": belt.Judge,
		"AlignmentOffset": belt.AlignmentOffset, "JudgeAlignment": belt.JudgeAlignment, "BeltShift": belt.BeltShift,
		"SectionInGroove": belt.SectionInGroove, "BeltsNeeded": belt.BeltsNeeded, "BeltCapacity": belt.BeltCapacity,
		"DatumLength": belt.DatumLength, "DatumNumber": belt.DatumNumber, "LengthTolerance": belt.LengthTolerance,
	})
}
