package drive_test

import (
	"testing"

	"roofside/calc/drive"
	"roofside/calc/internal/hostile"
	"roofside/calc/unit"
)

func TestHostileInput(t *testing.T) {
	words := []string{"", "A", "BX", "4L", "3V", "Q", "standard", "combination"}
	hostile.Run(t, ".", words, map[string]any{
		"Driven": drive.Driven, "DrivenWithSlip": drive.DrivenWithSlip, "DriverSheave": drive.DriverSheave,
		"DrivenSheave": drive.DrivenSheave, "MotorSpeedFor": drive.MotorSpeedFor, "Ratio": drive.Ratio,
		"SheaveForFlow": drive.SheaveForFlow, "BeltSpeed": drive.BeltSpeed, "PitchAtBeltSpeed": drive.PitchAtBeltSpeed,
		"SynchronousSpeed": drive.SynchronousSpeed, "Poles": drive.Poles, "Slip": drive.Slip, "SpeedAtSlip": drive.SpeedAtSlip,
		"SpeedUnderLoad": drive.SpeedUnderLoad, "PlateBand": drive.PlateBand,
		"OnDrive": drive.OnDrive, "FrequencyFor": drive.FrequencyFor, "OnDriveConstantSlip": drive.OnDriveConstantSlip, "OnDriveProportional": drive.OnDriveProportional,
		"Count": drive.Count, "Creep": drive.Creep, "Harmonic": drive.Harmonic, "LowSpeed": drive.LowSpeed, "MotorReading": drive.MotorReading,
		"GrooveOf": drive.GrooveOf, "PitchFromOutside": drive.PitchFromOutside, "OutsideFromPitch": drive.OutsideFromPitch,
		"PitchFromGap": drive.PitchFromGap, "GapChange": drive.GapChange,
		"NewAdjustable": drive.NewAdjustable, "NewAdjustableRate": drive.NewAdjustableRate,
		"PitchPerTurn": drive.PitchPerTurn, "LeadForTravel": drive.LeadForTravel, "CenterShift": drive.CenterShift,
		"MinimumMotorSheave": drive.MinimumMotorSheave, "MinimumMotorOutside": drive.MinimumMotorOutside,
		"Adjustable.Pitch": func(turns, at unit.Turns, pitch, perTurn unit.Length) (unit.Length, error) {
			a, err := drive.NewAdjustableRate(at, pitch, perTurn)
			if err != nil {
				return 0, err
			}
			return a.Pitch(turns)
		},
		"Adjustable.Turns": func(want unit.Length, at unit.Turns, pitch, perTurn unit.Length) (unit.Turns, error) {
			a, err := drive.NewAdjustableRate(at, pitch, perTurn)
			if err != nil {
				return 0, err
			}
			return a.Turns(want)
		},
	})
}
