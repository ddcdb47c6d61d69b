package source

// Publications on conductors, raceways and boxes. Of the code's editions the
// text of 2023 was read, that of 2020 as a state's model text, and that of 2017.
var (
	ModelCode2020    = Publication{"nfpa-70-2020", "NFPA 70 of 2020", "as adopted by a state code of 2022, stored transcription", LookedUp}
	Code2017         = Publication{"nfpa-70-2017-text", "NFPA 70 of 2017", "stored transcription", LookedUp}
	ConduitTables    = Publication{"nfpa-70-2017", "NFPA 70, Chapter 9 and Annex C of 2017", "tables in public data files", LookedUp}
	ResidentialCode  = Publication{"irc", "International Residential Code, electrical tables", "2018, in part", LookedUp}
	SolarTables      = Publication{"solar-tables", "Tables of NFPA 70, 2008 to 2014, in a solar design method", "public data file", LookedUp}
	WiringText       = Publication{"commercial-wiring", "Modern Commercial Wiring", "2018, reprint of Chapter 9, Table 8", LookedUp}
	ImpedanceReprint = Publication{"table-9", "NFPA 70, Chapter 9, Table 9", "reprint without an edition", LookedUp}
	PipeThreads      = Publication{"b1-20-1", "ASME B1.20.1: pipe threads, general purpose", "1983 and 2013, threads and diameters as quoted elsewhere", LookedUp}
	KnockoutBulletin = Publication{"eb-71", "NEMA engineering bulletin 71 with UL 514B: knockouts", "2004, reaffirmed 2011", Memory}
	ConduitStandards = Publication{"c80", "ANSI C80 and NEMA TC 2: conduit and tubing", "", Memory}
	ConductorClasses = Publication{"iec-60228", "IEC 60228: conductors of insulated cables", "2004, resistances as quoted elsewhere", LookedUp}
	GaugeStandard    = Publication{"b258", "ASTM B258: wire gauge sizes", "", Memory}
)

func electricalPublications() []Publication {
	return []Publication{
		ModelCode2020, Code2017, ConduitTables, ResidentialCode, SolarTables, WiringText, ImpedanceReprint,
		PipeThreads, KnockoutBulletin, ConduitStandards, ConductorClasses, GaugeStandard,
	}
}
