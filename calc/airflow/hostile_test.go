package airflow_test

import (
	"testing"

	"roofside/calc/airflow"
	"roofside/calc/internal/hostile"
)

func TestHostileInput(t *testing.T) {
	words := []string{"", "wall", "eyebrow", "dishwasher", "light", "heavy", "Q"}
	hostile.Run(t, ".", words, map[string]any{
		"AtSpeed": airflow.AtSpeed, "AtWheel": airflow.AtWheel, "FlowAtSpeed": airflow.FlowAtSpeed,
		"PressureAtSpeed": airflow.PressureAtSpeed, "PowerAtSpeed": airflow.PowerAtSpeed,
		"SpeedForFlow": airflow.SpeedForFlow, "SpeedForPressure": airflow.SpeedForPressure, "SpeedForPower": airflow.SpeedForPower,
		"MaxSpeedForPower": airflow.MaxSpeedForPower, "SystemPressure": airflow.SystemPressure,
		"PressureAt": airflow.PressureAt, "TemperatureAt": airflow.TemperatureAt,
		"DensityFactor": airflow.DensityFactor, "Density": airflow.Density, "MoistDensity": airflow.MoistDensity,
		"LoadProportional": airflow.LoadProportional, "AmpsProportional": airflow.AmpsProportional,
		"LoadHalfNoLoad": airflow.LoadHalfNoLoad, "AmpsHalfNoLoad": airflow.AmpsHalfNoLoad,
		"LoadFullNoLoad": airflow.LoadFullNoLoad, "LoadPhasor": airflow.LoadPhasor, "LoadSlip": airflow.LoadSlip, "LoadInput": airflow.LoadInput,
		"InputPower": airflow.InputPower, "ShaftPower": airflow.ShaftPower, "FanPower": airflow.FanPower, "FanEfficiency": airflow.FanEfficiency,
		"BeltEfficiency": airflow.BeltEfficiency, "BeltPartLoad": airflow.BeltPartLoad,
		"VelocityPressure": airflow.VelocityPressure, "VelocityFromPressure": airflow.VelocityFromPressure,
		"DuctVelocity": airflow.DuctVelocity, "RoundDuctVelocity": airflow.RoundDuctVelocity, "TipSpeed": airflow.TipSpeed,
		"HoodRate": airflow.HoodRate, "HoodFlow": airflow.HoodFlow, "HoodFlowByArea": airflow.HoodFlowByArea,
	})
}
