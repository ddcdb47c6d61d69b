package source

var limitMethods = []Method{
	{
		Key:     "wheel.max",
		Formula: "n ≤ n(wheel)",
		Valid:   "The greatest speed that the wheel's maker states, at the air's temperature; no formula gives it.",
		Known:   CommonPractice,
	},
	{
		Key:     "motor.limits",
		Formula: "I ≤ k(u) · FLA (watch);  I ≤ SFA (stop)",
		Valid:   "Amps as plated. The service factor gives nothing over 1 % voltage unbalance, above 3300 ft, above 40 °C or on a drive.",
		Known:   CommonPractice,
	},
}
