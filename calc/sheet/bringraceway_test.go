package sheet_test

import "testing"

const large = "&wire.w1.size=4&raceway.size=1-1/4&opening.size=1-1/4" // from 4 AWG on a bushing is asked for: 300.4(G)

func TestPipeToBring(t *testing.T) {
	const toConduit = "&opening.kind=conduit&opening.size=1/2&opening.conduit="
	for name, c := range map[string]struct {
		more string
		want []string
	}{
		// 348.12(1): of what is there, not of what another opening was said to have.
		"a hub, and flexible metal left in the record": {"&opening.conduit=FMC&raceway.length=6 ft", []string{"bring 6 ft conduit 1/2 LFMC | conduit-new", "no conduit-wet"}},
		"liquidtight at the opening":                   {toConduit + "LFMC&raceway.length=6 ft", []string{"bring 6 ft conduit 1/2 LFMC | conduit-new", "no conduit-wet"}},

		"large wire in the box alone":                   {"&wire.w3.count=3&wire.w3.size=4&wire.w3.insulation=THWN-2&wire.w3.role=other&wire.w3.where=box", []string{"no insulating-bushing"}},
		"large wire, the conduit's size not told":       {large + "&raceway.size=", []string{"no insulating-bushing"}},
		"large wire, both ends":                         {large + "&raceway.length=6 ft", []string{"bring 2 insulating-bushing 1-1/4 | large-wire"}},
		"large wire in threaded conduit, which has one": {large + "&raceway.conduit=RMC&opening.kind=knockout&raceway.place=indoors", []string{"bring 1 insulating-bushing 1-1/4 | joint", "no large-wire"}},
		"the same, both ends":                           {large + "&raceway.conduit=RMC&opening.kind=knockout&raceway.place=indoors&raceway.length=6 ft", []string{"bring 2 insulating-bushing 1-1/4 | joint large-wire"}},

		"a conduit whose size is not told": {"&raceway.size=&raceway.length=6 ft", []string{"no conduit-new", "no conduit-stays", "no strap"}},
		"a size whose conduit is not told": {"&raceway.conduit=&raceway.length=6 ft", []string{"no conduit-new", "no conduit-stays", "no strap"}},
		"a length that can't be read":      {"&raceway.length=?", []string{"keep conduit 1/2 LFMC | conduit-stays | raceway.length", "no strap"}},
		"conduit on conduit":               {toConduit + "EMT&raceway.conduit=EMT&raceway.length=8 ft", []string{"bring 1 coupling 1/2 1/2 EMT wet | joint", "bring 1 connector 1/2 1/2 EMT wet | far-end"}},
		"conduit on other conduit":         {toConduit + "EMT&raceway.length=6 ft", []string{"bring 2 connector 1/2 1/2 LFMC wet | joint far-end", "bring 1 connector 1/2 1/2 EMT wet | joint"}},
		"threaded conduit on its own kind": {toConduit + "RMC&raceway.conduit=RMC&raceway.length=8 ft", []string{"bring 1 coupling 1/2 1/2 RMC wet | joint", "no far-end"}},
		"3/8, whose connectors are of 1/2": {"&raceway.size=3/8&raceway.length=4 ft", []string{"bring 2 connector 1/2 3/8 LFMC wet | joint far-end"}},
		"a size that is not made":          {"&raceway.conduit=EMT&raceway.size=3/8&raceway.length=8 ft", []string{"bring strap 3/8 EMT | held | !raceway.size"}}, // Chapter 9, Table 4
	} {
		has(t, name, demoRoof(t, c.more), c.want...)
	}
}

func TestWireToBring(t *testing.T) {
	const (
		small = "&new.minimum-circuit-ampacity=25 A&circuit.length=40 ft" // 10 AWG at 60 °C terminals
		boxed = "&wire.w3.count=3&wire.w3.size=14&wire.w3.insulation=THWN-2&wire.w3.role=circuit&wire.w3.where=box"
	)
	for name, c := range map[string]struct {
		more string
		want []string
	}{
		"a size that is none": {"&wire.w1.size=!thin", []string{"unsure wire | wire-unknown | !wire.w1.size"}},
		// 40 ft and 12 in at each end, three of them; what ends in the box is not run anew.
		"more of them in the box":                               {small + boxed, []string{"bring 3 126 ft wire 10 THWN-2 | ampacity cut", "no wire-connector 14"}},
		"what stays, and more in a box":                         {boxed, []string{"keep 3 wire 12 THWN-2 | wire-passes", "no wire 14"}},
		"by the whole circuit, not by the new conduit's length": {small + "&raceway.length=6 ft", []string{"bring 3 126 ft wire 10 THWN-2 | ampacity cut"}},
		"for dry places, how many not told":                     {"&wire.w1.insulation=THHN&wire.w1.count=&circuit.length=40 ft", []string{"bring wire | dry-only | wire.w1.count wire.w1.insulation"}},

		// Another circuit's wire passes by: it is joined to no lead of the motor.
		"another circuit's": {"&wire.w3.count=2&wire.w3.size=14&wire.w3.insulation=THWN-2&wire.w3.role=other", []string{"bring 4 wire-connector 12 wet | joints", "no wire-connector 14"}},
		// Table 250.122: 12 for a device of 20 A; the wires, of 10 as they have to be, stay.
		"a smaller ground beside larger wire": {"&new.minimum-circuit-ampacity=25 A&wire.w1.size=10&wire.w2.size=14&circuit.device-rating=20 A&circuit.length=40 ft", []string{
			"bring 1 42 ft ground-wire 12 | equipment-ground cut", "bring 3 wire-connector 10 wet | joints", "bring 1 wire-connector 12 wet | joints"}},
		"a ground that is told first": {"&wire.w1.role=ground&wire.w1.count=1&wire.w1.size=14&wire.w2.role=circuit&wire.w2.count=3&circuit.device-rating=20 A", []string{
			"bring 1 ground-wire 12 | equipment-ground | circuit.length", "bring 4 wire-connector 12 wet | joints"}},
		"a ground without print":        {"&wire.w2.insulation=unmarked&wire.w2.diameter=0.13in", []string{"unsure ground-wire | ground-unknown | wire.w2.insulation"}},
		"a ground of no known size":     {"&wire.w2.size=", []string{"unsure ground-wire | ground-unknown | wire.w2.size"}},
		"a rating that is none":         {"&circuit.device-rating=!big", []string{"unsure ground-wire | ground-unknown | !circuit.device-rating"}},
		"nothing in the box":            {"&box.size=square 4 x 1-1/2&box.clamps=no&box.devices=0&wire.w1.where=raceway&wire.w2.where=raceway", []string{"unsure box | box-unknown | !"}},
		"a guessed volume":              {"&box.volume=9 in3;within 2 in3&box.clamps=no&box.devices=0", []string{"unsure box | box-unknown | box.volume"}},
		"thousands beside it":           {"&wire.w3.count=10000&wire.w3.size=14&wire.w3.insulation=THWN-2&wire.w3.role=other", []string{"unsure wire | wire-unknown | !"}},
		"devices in a box that is none": {"&box.size=square 4 x 1-1/2&box.clamps=no&box.devices=!many", []string{"unsure box | box-unknown | !box.devices"}},
	} {
		has(t, name, demoRoof(t, c.more), c.want...)
	}
}
