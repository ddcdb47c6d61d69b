package source

var materialMethods = []Method{
	{
		Key:     "materials",
		Formula: "2 · N;  2 · (w + l);  n = Σ n",
		Valid:   "A spare for each belt; a gasket around the curb, measured outside; a connector for each conductor that is joined to the motor; shims to level.",
		Known:   CommonPractice,
	},
}
