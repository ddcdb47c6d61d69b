package airflow_test

import (
	"fmt"

	"roofside/calc/airflow"
	"roofside/calc/unit"
)

const (
	cfm  = unit.CubicFootPerMinute
	inwg = unit.InchOfWater
	hp   = unit.Horsepower
	fpm  = unit.FootPerMinute
	std  = airflow.StandardDensity
)

func show(p airflow.Point, err error) {
	fmt.Printf("%.0f cfm, %.2f in wg, %.2f hp, %v\n", p.Flow.In(cfm), p.Pressure.In(inwg), p.Power.In(hp), err)
}

func ExampleAtSpeed() {
	show(airflow.AtSpeed(airflow.Point{Speed: 980, Flow: 2500 * cfm, Pressure: 1 * inwg, Power: 0.85 * hp, Density: std}, 1120, std))
	// Output: 2857 cfm, 1.31 in wg, 1.27 hp, <nil>
}

func ExampleAtWheel() {
	p := airflow.Point{Speed: 600, Flow: 20000 * cfm, Pressure: 3.5 * inwg, Power: 18.6 * hp, Density: std}
	show(airflow.AtWheel(p, 36*unit.Inch, 42*unit.Inch, 1150, 0.045*unit.PoundPerCubicFoot))
	// Output: 60872 cfm, 10.50 in wg, 169.84 hp, <nil>
}

func ExampleFlowAtSpeed() {
	q, err := airflow.FlowAtSpeed(2000*cfm, 800, 880)
	fmt.Printf("%.0f cfm, %v\n", q.In(cfm), err)
	// Output: 2200 cfm, <nil>
}

func ExamplePressureAtSpeed() {
	p, err := airflow.PressureAtSpeed(1*inwg, 800, 880, std, std)
	fmt.Printf("%.2f in wg, %v\n", p.In(inwg), err)
	// Output: 1.21 in wg, <nil>
}

// A refrigeration textbook's problem on density: air at 20 °C, then at 40 °C.
func ExamplePowerAtSpeed() {
	cold, err1 := airflow.Density(0, unit.Celsius(20))
	warm, err2 := airflow.Density(0, unit.Celsius(40))
	w, err3 := airflow.PowerAtSpeed(1.8*unit.Kilowatt, 1200, 1200, cold, warm)
	fmt.Printf("%.3f kW, %v %v %v\n", w.In(unit.Kilowatt), err1, err2, err3)
	// Output: 1.685 kW, <nil> <nil> <nil>
}

func ExampleSpeedForFlow() {
	n, err := airflow.SpeedForFlow(800, 2000*cfm, 2200*cfm)
	fmt.Printf("%.0f rpm, %v\n", n, err)
	// Output: 880 rpm, <nil>
}

func ExampleSpeedForPressure() {
	n, err := airflow.SpeedForPressure(800, 1*inwg, 1.21*inwg, std, std)
	fmt.Printf("%.0f rpm, %v\n", n, err)
	// Output: 880 rpm, <nil>
}

func ExampleSpeedForPower() {
	n, err := airflow.SpeedForPower(800, 1*hp, 1.331*hp, std, std)
	fmt.Printf("%.0f rpm, %v\n", n, err)
	// Output: 880 rpm, <nil>
}

func ExampleMaxSpeedForPower() {
	n, err := airflow.MaxSpeedForPower(1000, 1.6*hp, 2*hp)
	fmt.Printf("%.0f rpm, %v\n", n, err)
	// Output: 1077 rpm, <nil>
}

func ExampleSystemPressure() {
	p, err := airflow.SystemPressure(0.9*inwg, 2500*cfm, 2800*cfm)
	fmt.Printf("%.2f in wg, %v\n", p.In(inwg), err)
	// Output: 1.13 in wg, <nil>
}

// ASHRAE Fundamentals 2017, chapter 1, Table 1 prints 10.108.
func ExamplePressureAt() {
	p, err := airflow.PressureAt(10_000 * unit.Foot)
	fmt.Printf("%.2f psi, %v\n", p.In(unit.PSI), err)
	// Output: 10.11 psi, <nil>
}

// ASHRAE Fundamentals 2017, chapter 1, Table 1 prints 55.4.
func ExampleTemperatureAt() {
	t, err := airflow.TemperatureAt(1000 * unit.Foot)
	fmt.Printf("%.1f °F, %v\n", t.Fahrenheit(), err)
	// Output: 55.4 °F, <nil>
}

func ExampleDensityFactor() {
	f, err := airflow.DensityFactor(5000*unit.Foot, unit.Fahrenheit(70))
	fmt.Printf("%.3f, %v\n", f, err)
	// Output: 0.832, <nil>
}

func ExampleDensity() {
	rho, err := airflow.Density(0, unit.Fahrenheit(200))
	fmt.Printf("%.4f lb/ft³, %v\n", rho.In(unit.PoundPerCubicFoot), err)
	// Output: 0.0602 lb/ft³, <nil>
}

func ExampleMoistDensity() {
	rho, err := airflow.MoistDensity(14.175*unit.PSI, unit.Fahrenheit(86), 0.02)
	fmt.Printf("%.5f lb/ft³, %v\n", rho.In(unit.PoundPerCubicFoot), err)
	// Output: 0.06929 lb/ft³, <nil>
}

func ExampleLoadProportional() {
	load, err := airflow.LoadProportional(5.2, 6.5, 236, 230)
	fmt.Printf("%.1f %%, %v\n", load/unit.Percent, err)
	// Output: 82.1 %, <nil>
}

func ExampleAmpsProportional() {
	i, err := airflow.AmpsProportional(0.8, 6.5, 230, 230)
	fmt.Printf("%.1f A, %v\n", i, err)
	// Output: 5.2 A, <nil>
}

func ExampleLoadHalfNoLoad() {
	load, err := airflow.LoadHalfNoLoad(16.5, 9.3, 24)
	fmt.Printf("%.1f %%, %v\n", load/unit.Percent, err)
	// Output: 61.2 %, <nil>
}

func ExampleAmpsHalfNoLoad() {
	i, err := airflow.AmpsHalfNoLoad(1, 9.3, 24)
	fmt.Printf("%.1f A, %v\n", i, err)
	// Output: 24.0 A, <nil>
}

// A trade-press article's worked example, 100 hp.
func ExampleLoadFullNoLoad() {
	load, err := airflow.LoadFullNoLoad(100, 35, 120)
	fmt.Printf("%.1f hp, %v\n", 100*load, err)
	// Output: 76.5 hp, <nil>
}

func ExampleLoadPhasor() {
	load, err := airflow.LoadPhasor(16.5, 9.3, 24)
	fmt.Printf("%.1f %%, %v\n", load/unit.Percent, err)
	// Output: 61.6 %, <nil>
}

func ExampleLoadSlip() {
	load, err := airflow.LoadSlip(1800, 1750, 1770)
	fmt.Printf("%.0f %%, %v\n", load/unit.Percent, err)
	// Output: 60 %, <nil>
}

func ExampleLoadInput() {
	load, err := airflow.LoadInput(21.8*unit.Kilowatt, 40*hp, 0.93)
	fmt.Printf("%.0f %%, %v\n", load/unit.Percent, err)
	// Output: 68 %, <nil>
}

func ExampleInputPower() {
	p, err := airflow.InputPower(400, 75, 0.77)
	fmt.Printf("%.2f kW, %v\n", p.In(unit.Kilowatt), err)
	// Output: 40.01 kW, <nil>
}

func ExampleShaftPower() {
	p, err := airflow.ShaftPower(400, 75, 0.77, 0.90)
	fmt.Printf("%.2f hp, %v\n", p.In(hp), err)
	// Output: 48.29 hp, <nil>
}

func ExampleFanPower() {
	p, err := airflow.FanPower(3000*cfm, 1.25*inwg, 0.55)
	fmt.Printf("%.2f hp, %v\n", p.In(hp), err)
	// Output: 1.07 hp, <nil>
}

// A fluid-mechanics textbook's example 10.11 prints 59.
func ExampleFanEfficiency() {
	e, err := airflow.FanEfficiency(20000*cfm, 3.5*inwg, 18.6*hp)
	fmt.Printf("%.0f %%, %v\n", e/unit.Percent, err)
	// Output: 59 %, <nil>
}

func ExampleBeltEfficiency() {
	e, err := airflow.BeltEfficiency(1*hp, airflow.MediumLoss)
	fmt.Printf("%.1f %%, %v\n", e/unit.Percent, err)
	// Output: 90.9 %, <nil>
}

func ExampleBeltPartLoad() {
	e, err := airflow.BeltPartLoad(0.5)
	fmt.Printf("%.3f, %v\n", e, err)
	// Output: 0.951, <nil>
}

func ExampleVelocityPressure() {
	p, err := airflow.VelocityPressure(1500*fpm, std)
	fmt.Printf("%.2f in wg, %v\n", p.In(inwg), err)
	// Output: 0.14 in wg, <nil>
}

func ExampleVelocityFromPressure() {
	v, err := airflow.VelocityFromPressure(1*inwg, std)
	fmt.Printf("%.0f fpm, %v\n", v.In(fpm), err)
	// Output: 4009 fpm, <nil>
}

func ExampleDuctVelocity() {
	v, err := airflow.DuctVelocity(2000*cfm, 12*unit.Inch, 24*unit.Inch)
	fmt.Printf("%.0f fpm, %v\n", v.In(fpm), err)
	// Output: 1000 fpm, <nil>
}

func ExampleRoundDuctVelocity() {
	v, err := airflow.RoundDuctVelocity(785.398*cfm, 12*unit.Inch)
	fmt.Printf("%.0f fpm, %v\n", v.In(fpm), err)
	// Output: 1000 fpm, <nil>
}

func ExampleTipSpeed() {
	v, err := airflow.TipSpeed(18*unit.Inch, 1100)
	fmt.Printf("%.0f fpm, %v\n", v.In(fpm), err)
	// Output: 5184 fpm, <nil>
}

func ExampleHoodRate() {
	q, err := airflow.HoodRate(airflow.WallCanopy, airflow.Heavy)
	fmt.Printf("%.0f cfm per foot, %v\n", q.In(cfm), err)
	_, err = airflow.HoodRate(airflow.Eyebrow, airflow.Heavy)
	fmt.Println(err)
	// Output:
	// 400 cfm per foot, <nil>
	// duty: notAllowed
}

func ExampleHoodFlow() {
	q, err := airflow.HoodFlow(airflow.WallCanopy, 400*cfm, 8*unit.Foot)
	fmt.Printf("%.0f cfm, %v\n", q.In(cfm), err)
	// Output: 3200 cfm, <nil>
}

func ExampleHoodFlowByArea() {
	q, err := airflow.HoodFlowByArea(airflow.AreaRate, 8*unit.Foot, 4*unit.Foot)
	fmt.Printf("%.0f cfm, %v\n", q.In(cfm), err)
	// Output: 3200 cfm, <nil>
}
