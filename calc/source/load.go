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
	{
		Key:     "air.noload",
		Formula: "I₀ = 0.3 … 0.6 · FLA",
		Valid:   "Small four-pole motors, where no-load current was not read.",
		Known:   Memory,
	},
	{
		Key:     "air.shaft",
		Formula: "P = Pp · L",
		Valid:   "Motor output, belt loss included.",
		Known:   Derived,
	},
	{
		Key:     "air.load.new",
		Formula: "L₂ = P₁ / Pp · (n₂ / n₁)³ · ρ₂ / ρ₁",
		Valid:   "Same wheel, same system; the belt loses the same share.",
		Refs:    []Ref{FluidMechanics.At("example 10.11, for the laws")},
		Known:   Derived,
	},
	{
		Key:     "air.amps",
		Formula: "P₂ = P₁ · (n₂ / n₁)³ · ρ₂ / ρ₁;  I = FLA · P₂ / Pp · Vp / V … I₀ / 2 + P₂ / Pp · (FLA − I₀ / 2)",
		Valid:   "Three phases at plate frequency; lowest and highest of the methods that load is told by.",
		Known:   Derived,
	},
	{
		Key:     "air.limit",
		Formula: "n₂ = n₁ · ∛(L(I) / L₁ · ρ₁ / ρ₂)",
		Valid:   "The speed at which amps reach I, by the method that gets there first.",
		Known:   Derived,
	},
}
