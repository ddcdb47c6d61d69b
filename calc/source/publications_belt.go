package source

// Publications on belts and their sheaves.
var (
	BeltGuide   = Publication{"belt-guide", "Installation guide for industrial belts, with tensioning tables", "stored copy", LookedUp}
	BeltManual  = Publication{"tm-5-4310-339", "US Army TM 5-4310-339-15", "", LookedUp}
	SheaveSheet = Publication{"sheave-sheet", "Engineering data: sheave sizes and motor frames, after NEMA MG 1, 14.42", "stored copy", LookedUp}
)

func beltPublications() []Publication {
	return []Publication{BeltGuide, BeltManual, SheaveSheet}
}
