package source

var boxMethods = []Method{
	{
		Key:     "raceway.box",
		Formula: "V",
		Valid:   "Trade sizes of metal boxes.",
		Refs:    []Ref{ElectricalCode.At("Table 314.16(A)")},
		Known:   LookedUp,
	},
	{
		Key:     "raceway.box.allowance",
		Formula: "n = ⌊V / v⌋",
		Valid:   "Sizes 18 to 6, nothing else in the box.",
		Refs:    []Ref{ElectricalCode.At("Table 314.16(B)(1)")},
		Known:   LookedUp,
	},
	{
		Key:     "raceway.box.fill",
		Formula: "Σ v ≤ V",
		Valid:   "Conductors 1, clamps 1, supports 1 each, yokes 2, grounds 1 for four and 1/4 for each more (2020 on), terminal blocks 1 (2023 on). The single allowance for grounds to 2017 is from memory.",
		Refs:    []Ref{ElectricalCode.At("314.16(B)(1) to (6)"), ModelCode2020.At("314.16(B)(5)")},
		Known:   LookedUp,
	},
	{
		Key:     "raceway.box.body",
		Formula: "A ≥ 2 · A(raceway)",
		Valid:   "Conduit bodies for conductors 6 and smaller.",
		Refs:    []Ref{ElectricalCode.At("314.16(C)(1)")},
		Known:   LookedUp,
	},
	{
		Key:     "raceway.bushing",
		Formula: "from size 4 on",
		Valid:   "Conductors entering an enclosure.",
		Refs:    []Ref{ModelCode2020.At("300.4(G)")},
		Known:   LookedUp,
	},
}
