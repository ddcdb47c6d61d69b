package source

var fitMethods = []Method{
	{
		Key:     "fit.clearance",
		Formula: "Δ = b − c;  0 < Δ ≤ 1 in",
		Valid:   "Base measured inside, curb outside, both ways; square to each other.",
		Known:   CommonPractice,
	},
}
