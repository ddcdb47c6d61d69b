package source

// Publications. Where only quoted text or stored copies were read, and not the
// work itself, the edition says so. "Title not seen" marks works known by their
// data alone.
var (
	MachineryHandbook  = Publication{"machinery-handbook", "Machinery's Handbook", "31st edition", LookedUp}
	ClassicalBelts     = Publication{"ip-20", "ANSI/RMA IP-20: drives with classical V-belts and sheaves", "1988, as tabulated in Machinery's Handbook", LookedUp}
	NarrowBelts        = Publication{"ip-22", "ANSI/RMA IP-22: drives with narrow V-belts and sheaves", "", Memory}
	LightBelts         = Publication{"ip-23", "ANSI/RMA IP-23: drives with light-duty V-belts", "", Memory}
	ProcessMachinery   = Publication{"process-machinery", "Practical Machinery Management for Process Plants: Major Process Equipment Maintenance and Repair, chapter on V-belts", "stored copy", LookedUp}
	PlantHandbook      = Publication{"plant-handbook", "Plant Engineering Handbook, chapter 58", "stored copy", LookedUp}
	EquipmentManual    = Publication{"tm-5-3820", "US Army TM 5-3820-233-12/1", "", LookedUp}
	MaintenanceManual  = Publication{"hdbk-1164", "MIL-HDBK-1164", "title not seen", LookedUp}
	MachineElements    = Publication{"machine-elements", "Machine Elements in Mechanical Design", "4th edition", LookedUp}
	MechanicalDesign   = Publication{"mechanical-design", "Mechanical Engineering Design, solutions manual, chapter 17", "stored copy", LookedUp}
	VentilationManual  = Publication{"mo-114", "Maintenance and Operation of Ventilation Systems", "NAVFAC MO-114, volume 3", LookedUp}
	ElectricalScience  = Publication{"hdbk-1011", "DOE Fundamentals Handbook: Electrical Science, volume 4", "DOE-HDBK-1011/4", LookedUp}
	MachineryCourse    = Publication{"machinery-course", "Solutions of a university course in electric machinery", "title not seen", LookedUp}
	ElectricalMachines = Publication{"electrical-machines", "Electrical Machines-2, textbook examples", "inputs of the examples only", LookedUp}
	MotorStandard      = Publication{"mg-1", "NEMA MG 1: Motors and Generators", "", Memory}
	MotorGuide         = Publication{"mg-1-condensed", "NEMA MG 1, condensed: information guide", "2011, sections 9.9 and 9.10 in part", LookedUp}
	VoltageSheet       = Publication{"tip-sheet-9", "Motor Systems Tip Sheet 9", "DOE/GO-102012-3736, 2012", LookedUp}
	CircuitsText       = Publication{"electric-circuits", "Lessons In Electric Circuits", "open textbook", LookedUp}
	TransmissionText   = Publication{"transmission", "Electric Power Transmission System Engineering", "example 9.1, in a companion set of examples", LookedUp}
	SupplyStandard     = Publication{"c84-1", "ANSI C84.1: electric power systems and equipment, voltage ratings", "2011 to 2020", Memory}
	SequenceStandard   = Publication{"iec-60034-26", "IEC 60034-26: rotating machines, effects of unbalanced voltages", "", Memory}
	ElectricalCode     = Publication{"nfpa-70", "NFPA 70: National Electrical Code", "2023, stored transcription", LookedUp}
	UnbalanceSheet     = Publication{"tip-sheet-7", "Motor Systems Tip Sheet 7", "DOE/GO-102012-3733, 2012", LookedUp}
	LoadSheet          = Publication{"motor-load", "Determining Electric Motor Load and Efficiency, US DOE fact sheet", "figures of its example as quoted elsewhere", LookedUp}
	EnergyHandbook     = Publication{"energy-management", "Energy-management handbook, part on electric motors", "title not seen; data of its example only", LookedUp}
	LoadArticle        = Publication{"motor-load-article", "Article on estimating motor load, trade press", "", LookedUp}
	FluidMechanics     = Publication{"fluid-mechanics", "Fluid-mechanics textbook, example 10.11", "title not seen; data of the example only", LookedUp}
	Refrigeration      = Publication{"refrigeration", "Refrigeration and air-conditioning textbook, chapter on fans and ducts", "title not seen; problem and printed answer", LookedUp}
	DrivesGuide        = Publication{"drives-guide", "Natural Resources Canada: guide to variable frequency drives", "Appendix D", LookedUp}
	Fundamentals       = Publication{"fundamentals", "ASHRAE Handbook: Fundamentals", "2017, chapter 1, values as quoted elsewhere", LookedUp}
	EnergyReference    = Publication{"energy-reference", "Engineering reference of the US DOE's building-energy program, air system fans", "", LookedUp}
	MechanicalCode     = Publication{"imc", "International Mechanical Code", "sections 506 and 507; the code's own text not read", Memory}
	HoodPermit         = Publication{"hood-permit", "City of Everett, Washington: worksheet for a Type I hood permit", "", LookedUp}
	HospitalManual     = Publication{"va-hvac", "US Department of Veterans Affairs: HVAC design manual for hospitals", "", LookedUp}
	KitchenSpec        = Publication{"ufgs-11400a", "UFGS-11400A: food service equipment", "", LookedUp}
	BalanceSpec        = Publication{"balance-spec", "Marion County, Oregon: project specification, testing and balancing", "", LookedUp}
	HoodStandard       = Publication{"nfpa-96", "NFPA 96: ventilation control and fire protection of commercial cooking", "", Memory}
)

// Publications returns every publication of the register.
func Publications() []Publication {
	return append([]Publication{
		MachineryHandbook, ClassicalBelts, NarrowBelts, LightBelts, MachineElements, MechanicalDesign,
		VentilationManual, ElectricalScience, MachineryCourse, ElectricalMachines, MotorStandard,
		UnbalanceSheet, LoadSheet, EnergyHandbook, LoadArticle, FluidMechanics, Refrigeration, DrivesGuide,
		Fundamentals, EnergyReference, MechanicalCode, HoodPermit, HospitalManual, KitchenSpec,
		BalanceSpec, HoodStandard, ProcessMachinery, PlantHandbook, EquipmentManual, MaintenanceManual,
		MotorGuide, VoltageSheet, CircuitsText, TransmissionText, SupplyStandard, SequenceStandard, ElectricalCode,
	}, append(append(electricalPublications(), printedPublications()...), beltPublications()...)...)
}
