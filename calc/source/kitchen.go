package source

var kitchenMethods = []Method{
	{
		Key:     "air.hood",
		Formula: "Q = q · L",
		Valid:   "Unlisted hoods; a listed hood's label rules. A double island's is for each side. A dishwasher's 100 ft³/min is from memory. The code adopted on the site decides.",
		Refs:    []Ref{StateMechanical.At("507.5, cooking appliances by duty"), MechanicalCode.At("507.5")},
		Known:   LookedUp,
	},
	{
		Key:     "air.hood.area",
		Formula: "Q = q · A",
		Valid:   "Older method; wall and double-island hoods.",
		Refs:    []Ref{KitchenSpec.At("2.7.8.1")},
		Known:   LookedUp,
	},
	{
		Key:     "air.duct.minimum",
		Formula: "v ≥ 500 ft/min",
		Valid:   "Grease ducts; older guidance asks 1500 ft/min.",
		Refs:    []Ref{HoodPermit.At("citing 506.3.4 and 506.3.13"), DuctVelocityRecord.At("NFPA 96 lowered it from 1500 ft/min in 2002"), HospitalManual.At("3.12.7.1")},
		Known:   LookedUp,
	},
	{
		Key:     "air.makeup",
		Formula: "|p| ≤ 0.02 in wg",
		Valid:   "Negative pressure in the space of a kitchen hood.",
		Refs:    []Ref{ReplacementAir.At("0.02 in wg, 4.98 Pa")},
		Known:   LookedUp,
	},
	{
		Key:     "air.balance",
		Formula: "± 5 % (fan);  ± 10 % (outlet)",
		Valid:   "One public specification; the job's own rules.",
		Refs:    []Ref{BalanceSpec.At("3.3 G")},
		Known:   LookedUp,
	},
	{
		Key:     "air.hood.label",
		Formula: "Q ≥ Q(label)",
		Valid:   "Listed hoods: the label of the hood at hand.",
		Refs:    []Ref{MechanicalCode.At("507, for the rule that a listing stands before the table")},
		Known:   Memory,
	},
	{
		Key:     "air.makeup.balance",
		Formula: "Q − Qm − Qt",
		Valid:   "What neither make-up nor transfer air replaces leaks in.",
		Known:   Derived,
	},
}
