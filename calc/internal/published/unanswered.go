package published

// Unanswered are the cases that the library does not answer, by file, each with
// the reason.
var Unanswered = map[string]map[string]string{
	"mechanical": {
		"C02": "a machine's own table, no formula behind it",
		"C06": "a rule of thumb that the tool does not use",
	},
	"electrical-phase": {
		"A04": "a bill, no answer of the library",
		"A06": "one motor's test, no formula behind it",
		"A33": "one motor's typical curve, no formula behind it",
	},
	"electrical-raceway": {
		"B01": lockedRotor, "B02": lockedRotor, "B03": lockedRotor, "B53": lockedRotor,
		"B44": "a saving of energy, no answer of the library",
		"B45": "a loss of energy in wiring, no answer of the library",
		"B47": "a loss of energy in wiring, no answer of the library",
		"B48": "a bill, no answer of the library",
		"B51": "a rule for makers of motors, no formula behind it",
		"D38": "the table of terminal housings was not read; only this row is known",
		"D58": "another country's rule, which the tool does not use",
		"E04": "water at another temperature than that of the conventional inch, which the tool uses",
		"E12": "another country's guidance, which the tool does not use",
	},
}

const lockedRotor = "locked-rotor current is no answer of the library"
