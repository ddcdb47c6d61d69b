package source

var fitMethods = []Method{
	{
		Key:     "fit.clearance",
		Formula: "Δ = b − c;  0 < Δ ≤ 1 in",
		Valid:   "Base measured inside, curb outside, both ways; square to each other.",
		Known:   CommonPractice,
	},
	{
		Key:     "fit.alike",
		Formula: "|b − a| ≤ k · max(a, b) + Δa + Δb",
		Valid:   "One thing of the old fan and of the new. k: amps and weight 2 %; motor power 1 %; wheel and motor speed 0.5 %; volts, frequency, service factor and pitch diameters 0.1 %; else 0. Words: but for spaces, hyphens and capitals.",
		Known:   CommonPractice,
	},
	{
		Key:     "fit.volts",
		Formula: "0.9 ≤ V₂ / V₁ ≤ 1.1",
		Valid:   "What a motor bears of its plate's volts; the line is taken to be as the old plate says, until it is measured.",
		Refs:    []Ref{VoltageSheet.At("page 1"), MotorGuide.At("9.9.1")},
		Known:   LookedUp,
	},
	{
		Key:     "fit.discharge",
		Formula: "discharge = up",
		Valid:   "Exhaust of grease ducts ends upward and away from the roof, whatever the old fan did. To be confirmed in the adopted code.",
		Refs:    []Ref{HoodStandard.At("rooftop terminations")},
		Known:   Memory,
	},
}
