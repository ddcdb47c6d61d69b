package source

var phaseMethods = []Method{
	{
		Key:     "phase.unbalance",
		Formula: "u = max |xᵢ − x̄| / x̄",
		Valid:   "Three readings by one meter, all phases alive.",
		Refs:    []Ref{UnbalanceSheet.At("page 1"), MotorStandard.At("14.36")},
		Known:   LookedUp,
	},
	{
		Key:     "phase.derating",
		Formula: "k(u)",
		Valid:   "0 to 5 % voltage unbalance; read from a graph, ± 0.02.",
		Refs:    []Ref{MotorStandard.At("Figure 14-1"), UnbalanceSheet.At("page 1, for no derating up to 1 %")},
		Known:   Memory,
	},
}
