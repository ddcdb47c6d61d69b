package source

// Publications that print what a standard says: other editions, reprints of its
// tables, handbooks and articles. What was read is the print; the standard itself
// is named in the place.
var (
	OlderCode          = Publication{"nfpa-70-2008", "NFPA 70 of 2008", "article 430, stored transcription", LookedUp}
	GroundReprint      = Publication{"table-250-122", "NFPA 70, Table 250.122", "reprint without an edition", LookedUp}
	GroundArticle      = Publication{"table-250-122-article", "Article on what changed in Table 250.122 in 2020, code school", "March 2021", LookedUp}
	PlateArticle       = Publication{"plate-article", "Article on how far a motor may be from its plate, trade press", "June 2013", LookedUp}
	PlateNote          = Publication{"plate-note", "Technical note on plate speed and actual speed, motor shop", "", LookedUp}
	UnbalanceTable     = Publication{"unbalance-table", "Table of derating by voltage imbalance, polyphase motors", "open tables of engineering data", LookedUp}
	SheaveTable        = Publication{"sheave-table", "Table of the least motor sheaves, after NEMA MG 1, 14.42 and 14.43", "open reprint; motor makers' data where the standard has none", LookedUp}
	NarrowTable        = Publication{"ip-22-2007", "ARPM (RMA) IP-22, Table I-1: groove dimensions", "2007, reprint", LookedUp}
	PowerHandbook      = Publication{"power-handbook", "Industrial Power Engineering and Applications Handbook", "stored copy", LookedUp}
	AlignmentSheet     = Publication{"v-belt-sheet", "V-belt drive installation and maintenance manual", "open copy", LookedUp}
	BeltGlossary       = Publication{"belt-glossary", "Glossary of power transmission, belt slip", "trade press", LookedUp}
	VoltageStatement   = Publication{"voltage-ranges", "An electric utility's statement of its voltages, after ANSI C84.1", "", LookedUp}
	StateMechanical    = Publication{"fbc-m", "Florida Building Code, Mechanical", "2023, rates of 507.5 in a public data file", LookedUp}
	ReplacementAir     = Publication{"nfpa-96-8-3", "NFPA 96, 8-3: replacement air", "as quoted in a hood's installation manual", LookedUp}
	DuctVelocityRecord = Publication{"grease-velocity", "ASHRAE Journal 44/11: new rules for kitchen exhaust", "November 2002, abstract", LookedUp}
)

func printedPublications() []Publication {
	return []Publication{
		OlderCode, GroundReprint, GroundArticle, PlateArticle, PlateNote, UnbalanceTable, SheaveTable, NarrowTable,
		PowerHandbook, AlignmentSheet, BeltGlossary, VoltageStatement, StateMechanical, ReplacementAir, DuctVelocityRecord,
	}
}
