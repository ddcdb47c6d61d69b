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
		Formula: "nothing, locknut, two locknuts with an end bushing, washers, hub, bushing, enlarger, coupling, nipple, connector",
		Valid:   "Parts by thread and size; reducing washers never outdoors. Which parts exist is common practice, so are two locknuts on threaded conduit and a sealed hub outdoors.",
		Refs:    []Ref{ElectricalCode.At("250.97, 300.6(A), 314.15, 342.46 and 344.46"), ModelCode2020.At("300.4(G), 348.20, 356.60, 358.42")},
		Known:   CommonPractice,
	},
	{
		Key:     "raceway.support",
		Formula: "n = 1 + ⌈(L − e₁ − e₂) / s⌉",
		Valid:   "Sizes 3/8 to 2, straight between two ends: e 3 ft, s 10 ft; PVC s 3 ft to size 1, 5 ft to 2; flexible e 12 in, s 4-1/2 ft (metal) or 3 ft, hanging free as it may where it must flex.",
		Refs:    []Ref{ElectricalCode.At("342.30, 344.30, 348.30, 350.30, 352.30 with its table, 356.30, 358.30")},
		Known:   LookedUp,
	},
	{
		Key:     "raceway.sticks",
		Formula: "n = ⌈L / 10 ft⌉",
		Valid:   "Conduit and tubing that does not bend.",
		Known:   CommonPractice,
	},
	{
		Key:     "raceway.cut",
		Formula: "l = L + 2 · (6 in + 6 in)",
		Valid:   "At each end 6 in left free at the box, and 6 in for making it up, which is common practice.",
		Refs:    []Ref{ElectricalCode.At("300.14")},
		Known:   CommonPractice,
	},
}
