package source

var loadMethods = []Method{
	{
		Key:     "air.load.proportional",
		Formula: "P / Pp = I / FLA · V / Vp",
		Valid:   "Three phases at plate frequency; reads high at part load, no use under half.",
		Known:   Memory,
	},
	{
		Key:     "air.load.half",
		Formula: "P / Pp = (2I − I₀) / (2FLA − I₀)",
		Valid:   "40 to 100 % of load; no-load current with the belt off.",
		Refs:    []Ref{EnergyHandbook.At("example, for the range and data; the formula is from memory")},
		Known:   Memory,
	},
	{
		Key:     "air.load.full",
		Formula: "P / Pp = (I − I₀) / (FLA − I₀)",
		Valid:   "Reads low at part load. For comparison.",
		Refs:    []Ref{LoadArticle.At("worked example")},
		Known:   LookedUp,
	},
	{
		Key:     "air.load.phasor",
		Formula: "P / Pp = √((I² − I₀²) / (FLA² − I₀²))",
		Valid:   "Constant magnetizing current at right angles to load current. For comparison.",
		Known:   Derived,
	},
	{
		Key:     "air.load.slip",
		Formula: "P / Pp = (ns − n) / (ns − np)",
		Valid:   "Rough: plate slip holds to ± 20 %. For comparison.",
		Refs:    []Ref{LoadSheet.At("slip method")},
		Known:   LookedUp,
	},
	{
		Key:     "air.load.input",
		Formula: "P / Pp = Pin · η / Pp",
		Valid:   "Input power from a wattmeter; efficiency at full load.",
		Refs:    []Ref{LoadSheet.At("input power method")},
		Known:   LookedUp,
	},
}
