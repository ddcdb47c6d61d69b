package source

var fittingMethods = []Method{
	{
		Key:     "raceway.thread",
		Formula: "E₀ = D − (0.05 D + 1.1) p;  L₂ = (0.80 D + 6.8) p;  1 : 16",
		Valid:   "Threads per inch and diameters looked up; formulas and L₁ from memory.",
		Refs:    []Ref{PipeThreads.At("tables")},
		Known:   LookedUp,
	},
	{
		Key:     "raceway.knockout",
		Formula: "least, nominal, most",
		Valid:   "1/2 to 2.",
		Refs:    []Ref{KnockoutBulletin.At("table")},
		Known:   Memory,
	},
	{
		Key:     "raceway.adapter",
		Formula: "nothing, locknut, washers, hub, bushing, enlarger, coupling, nipple, connector",
		Valid:   "Parts by thread and size; reducing washers never outdoors. Which parts exist is common practice.",
		Refs:    []Ref{ElectricalCode.At("250.97, 300.6(A), 314.15"), ModelCode2020.At("356.60, 358.42")},
		Known:   CommonPractice,
	},
}
