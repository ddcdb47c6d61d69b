package source

var readingMethods = []Method{
	{
		Key:     "mean",
		Formula: "x̄ = Σ xᵢ / N",
		Valid:   "Of the legs that were read.",
		Known:   Derived,
	},
	{
		Key:     "spread",
		Formula: "(min + max) / 2 ± (max − min) / 2",
		Valid:   "Several methods for one figure, none of them the right one.",
		Known:   Derived,
	},
}
