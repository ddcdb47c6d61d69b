package phase_test

import (
	"fmt"

	"roofside/calc/phase"
	"roofside/calc/unit"
)

// Motor Systems Tip Sheet 7, page 1.
func ExampleUnbalance() {
	u, err := phase.Unbalance[unit.Voltage](462, 463, 455)
	fmt.Printf("%.1f %%, %v\n", u/unit.Percent, err)
	// Output: 1.1 %, <nil>
}

func ExampleVoltageDerating() {
	d, err := phase.VoltageDerating(2 * unit.Percent)
	fmt.Printf("%.2f (%.2f to %.2f), %v\n", d.Factor, d.Low, d.High, err)
	_, err = phase.VoltageDerating(5.2 * unit.Percent)
	fmt.Println(err)
	// Output:
	// 0.95 (0.93 to 0.96), <nil>
	// unbalance: tooUnbalanced
}
