package page

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"golang.org/x/net/html"

	"roofside/app/store"
	"roofside/calc/record"
)

// racewayOf draws the page from a link.
func racewayOf(t *testing.T, link string) *html.Node {
	t.Helper()
	before := shared
	t.Cleanup(func() { shared = before })
	shared = newBench(store.Memory(), "en-US")
	shared.Follow(strings.ReplaceAll(link, " ", "%20"))
	if len(shared.Problems) > 0 {
		t.Fatal(shared.Problems)
	}
	everything(shared)
	n, err := html.Parse(strings.NewReader(whole(t, NewRaceway())))
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// find returns the first element with a tag and an attribute, or nil.
func find(n *html.Node, tag, name, value string) *html.Node {
	for d := range n.Descendants() {
		if d.Type == html.ElementNode && d.Data == tag {
			for _, a := range d.Attr {
				if a.Key == name && a.Val == value {
					return d
				}
			}
		}
	}
	return nil
}

func says(n *html.Node) string {
	if n == nil {
		return ""
	}
	var b strings.Builder
	for d := range n.Descendants() {
		if d.Type == html.TextNode {
			b.WriteString(d.Data)
		}
	}
	return b.String()
}

func TestThePlateSaysWhatToTakeAlong(t *testing.T) {
	for link, want := range map[string]string{
		"":      "What opening, and what conduit?",
		rewired: "Take along: 3/4 × 1/2 reducing bushing, 1/2 LFMC connector.",
		"opening.kind=hub&opening.size=1/2&raceway.conduit=LFMC&raceway.size=3/4":                           "Take along: 1/2 × 3/4 enlarger, 3/4 LFMC connector.",
		"opening.kind=hub&opening.size=3/4&raceway.conduit=RMC&raceway.size=3/4":                            "Nothing to take along: the thread fits as it is.",
		"opening.kind=fitting&opening.size=1&raceway.conduit=RMC&raceway.size=3/4":                          "Take along: 1 threaded coupling, 1 × 3/4 reducing bushing.",
		"opening.kind=conduit&opening.conduit=EMT&opening.size=3/4&raceway.conduit=EMT&raceway.size=3/4":    "Take along: 3/4 EMT coupling.",
		"opening.kind=knockout&opening.size=3/4&raceway.conduit=EMT&raceway.size=1/2":                       "Take along: 3/4 sealed hub, 3/4 × 1/2 reducing bushing, 1/2 EMT connector.",
		"opening.kind=knockout&opening.size=3/4&raceway.conduit=EMT&raceway.size=1/2&raceway.place=indoors": "Take along: pair of 3/4 × 1/2 reducing washers, 1/2 locknut, 1/2 EMT connector.",
		"opening.kind=knockout&opening.size=3/4&raceway.conduit=RMC&raceway.size=3/4&raceway.place=indoors": "Take along: 3/4 insulating bushing, two 3/4 locknuts.",
		"opening.kind=knockout&opening.size=3/4&raceway.conduit=RMC&raceway.size=3/4":                       "Take along: 3/4 sealed hub.",
		"opening.kind=hub&opening.size=3/8&raceway.conduit=EMT&raceway.size=1/2":                            "Size of the opening: The table has no such row.",
	} {
		if got := says(find(racewayOf(t, link), "output", "name", "take-along")); got != want {
			t.Errorf("%q: %q, want %q", link, got, want)
		}
	}
}

// What stands on the plate is what the answers say.
func TestVerdictsOnThePlate(t *testing.T) {
	for _, c := range []struct{ link, of, level string }{
		{rewired, "fill", "within"}, {rewired, "wires", "within"},
		{rewired + "&wire.w3.count=6&wire.w3.size=12&wire.w3.insulation=TW&wire.w3.role=other", "fill", "stop"},
		{strings.ReplaceAll(rewired, "THWN-2", "THHN"), "wires", "stop"},
		{rewired + "&wire.w3.count=1&wire.w3.size=14&wire.w3.insulation=XHH&wire.w3.role=other", "wires", "stop"},
		{strings.Replace(rewired, "size=12&wire.w2.insulation=THWN-2", "size=12&wire.w2.insulation=unmarked", 1), "wires", "unjudged"},
		{rewired + "&circuit.length=700ft", "wires", "watch"}, {rewired + "&circuit.length=40ft", "wires", "within"},
		{strings.Replace(rewired, "w1.count=3", "w1.count=2", 1), "wires", "watch"}, {rewired + "&new.minimum-circuit-ampacity=3A", "wires", "watch"},
		{rewired, "joint", "within"},
		{strings.ReplaceAll(rewired, "LFMC", "FMC"), "joint", "stop"}, {"raceway.conduit=FMC", "joint", "stop"},
		{strings.Replace(rewired, "kind=hub", "kind=ring-knockout", 1), "joint", "within"},
		{strings.NewReplacer("kind=hub", "kind=ring-knockout", "208V", "460V").Replace(rewired), "joint", "watch"},
		{strings.NewReplacer("kind=hub", "kind=ring-knockout", "&new.motor-volts=208V", "").Replace(rewired), "joint", "unjudged"},
		{strings.Replace(rewired, "kind=hub", "kind=knockout", 1), "joint", "within"}, // a hub stands where washers would
		{rewired + "&box.volume=8in3&box.devices=0&box.clamps=no", "box", "stop"},
	} {
		v := find(racewayOf(t, c.link), "p", "data-of", c.of)
		if v == nil || !strings.Contains(attribute(v, "class"), c.level) {
			t.Errorf("%q: %s is %q", c.link, c.of, says(v))
		}
	}
	// Before any wire is entered both say that they can't judge, and nothing is held
	// against the page.
	n := racewayOf(t, "")
	plate := find(n, "section", "data-plate", "raceway")
	if got := strings.Join(strings.Fields(says(plate)), " "); !strings.Contains(got, "Fill: can't judge") || !strings.Contains(got, "Wire: can't judge") {
		t.Errorf("before any wire: %q", got)
	}
	for _, of := range []string{"fill", "wires"} {
		if v := find(n, "p", "data-of", of); v != nil {
			t.Errorf("before any wire %s stands on the plate: %q", of, says(v))
		}
	}
}

// What stands on the plate stands in words too, with its figures and where the rule is.
func TestRulesOfTheRacewayAreSaid(t *testing.T) {
	const bare = "&wire.w2.where=box"
	for _, c := range []struct{ link, of, level, says string }{
		{rewired + "&new.motor-amps=24A", "plate-table", "watch", "24.00 A on its plate, 7.50 A in the table"},
		{rewired + "&circuit.device-rating=5A", "circuit.overcurrent", "stop", "5.00 A can't carry a motor of 7.50 A"},
		{strings.NewReplacer("w1.size=12", "w1.size=10", "height=1/2in", "height=12in").Replace(rewired) + "&circuit.device-rating=20A", "circuit.ground", "watch", "a qualified person may find it enough"},
		{rewired + bare + "&raceway.length=10ft", "circuit.ground", "stop", "10.0 ft of conduit that bends is no ground beyond 6.0 ft (250.118)"},
		{rewired + bare + "&circuit.device-rating=25A", "circuit.ground", "stop", "behind 25.00 A this conduit is no ground: up to 20.00 A"},
		{rewired + bare + "&new.hinge=far", "circuit.ground", "stop", "this fan tips up"},
		{strings.Replace(rewired, "LFMC", "EMT", 1) + bare, "circuit.ground", "within", "a listed ground itself (250.118)"},
		{strings.Replace(rewired, "raceway.size=1/2", "raceway.size=3/8", 1) + "&raceway.length=10ft", "small-long", "stop", "10.0 ft: 3/8 to a motor or equipment is at most 6.0 ft long (348.20, 350.20)"},
		{strings.Replace(rewired, "LFMC", "LFNC-A", 1) + "&raceway.length=20ft", "flex-long", "watch", "secured every 3 ft"},
		{rewired + "&raceway.use=nipple&raceway.length=10ft", "nipple-long", "watch", "10.0 ft is no nipple"},
		{strings.NewReplacer("new.phases=3&", "", "2hp", "3hp").Replace(rewired), "circuit.ampacity", "unjudged", "needs new fan: phases"},
		{strings.NewReplacer("THWN-2", "THWN", "height=1/2in", "height=13/16in;within 0in").Replace(rewired), "circuit.ampacity", "unjudged", "needs edition of the electrical code"},
	} {
		v := find(racewayOf(t, c.link), "p", "data-of", c.of)
		if v == nil {
			t.Errorf("%s: no %s", c.says, c.of)
			continue
		}
		if !strings.Contains(attribute(v, "class"), c.level) || !strings.Contains(says(v), c.says) {
			t.Errorf("%s is %q, %s, not %q", c.of, says(v), attribute(v, "class"), c.says)
		}
	}
}

// The plate names what is wrong where several things may be.
func TestThePlateNamesWhatStops(t *testing.T) {
	n := racewayOf(t, strings.NewReplacer("LFMC", "FMC", "w2.insulation=THWN-2", "w2.insulation=THHN").Replace(rewired))
	unread := racewayOf(t, strings.NewReplacer("insulation=THWN-2", "insulation=unmarked", "height=1/2in", "height=12in").Replace(rewired))
	if got := says(find(unread, "p", "data-of", "wires")); !strings.HasSuffix(strings.Join(strings.Fields(got), " "), "Wire: can't judge, wire without print") {
		t.Errorf("%q", got)
	}
	for of, want := range map[string]string{"wires": "Wire: stop, wire for dry places", "joint": "Joint: stop, conduit outdoors"} {
		if got := says(find(n, "p", "data-of", of)); !strings.HasSuffix(strings.Join(strings.Fields(got), " "), want) {
			t.Errorf("%s: %q", of, got)
		}
	}
}

// A ground judged by a device that is not read says so.
func TestTheGroundSaysByWhichDevice(t *testing.T) {
	const by = "type in the rating that is there"
	if says := says(racewayOf(t, rewired)); !strings.Contains(says, by) {
		t.Error("no rating, and not said")
	}
	if says := says(racewayOf(t, rewired+"&circuit.device-rating=20A")); strings.Contains(says, by) {
		t.Error("said of a rating that is there")
	}
}

// The cautions of another circuit's wires, of aluminum and of a box outdoors are
// said where they are there.
func TestCautionsOfTheWires(t *testing.T) {
	plain, all := says(racewayOf(t, rewired)), says(racewayOf(t, strings.Replace(rewired, "copper", "aluminum", 1)+"&wire.w3.count=2&wire.w3.role=other&box.devices=0"))
	for _, part := range []string{"stay live when the fan's is locked out", "loosens and burns", "box and cover listed for wet places"} {
		if strings.Contains(plain, part) || !strings.Contains(all, part) {
			t.Errorf("%q", part)
		}
	}
}

// What is said of one row names the row, beside its field too; what can't be
// judged says what to do instead.
func TestARowIsNamed(t *testing.T) {
	n := racewayOf(t, strings.NewReplacer("&hottest-air=104F", "", "w2.insulation=THWN-2", "w2.insulation=XHH").Replace(rewired))
	if got := says(find(n, "p", "data-of", "dry-only w2")); !strings.Contains(got, "Wire 2: this insulation is for dry places") {
		t.Errorf("%q", got)
	}
	if got := says(find(n, "p", "id", "wire-w2-insulation-note")); !strings.Contains(got, "For dry places only") {
		t.Errorf("beside the field: %q", got)
	}
	n = racewayOf(t, strings.NewReplacer("insulation=THWN-2", "insulation=unmarked", "height=1/2in", "height=12in").Replace(rewired))
	for _, of := range []string{"circuit.ampacity", "unmarked-wire w2"} {
		if got := says(find(n, "p", "data-of", of)); !strings.Contains(got, "can't be judged") || !strings.Contains(got, "Next best") || strings.Contains(got, "too close") {
			t.Errorf("%s: %q", of, got)
		}
	}
}

func attribute(n *html.Node, name string) string {
	for _, a := range n.Attr {
		if a.Key == name {
			return a.Val
		}
	}
	return ""
}

// A row that can't be is said beside its field, and beside no other.
func TestBadRowsAreSaidBesideTheirFields(t *testing.T) {
	n := racewayOf(t, "raceway.conduit=LFMC&raceway.size=1/2&wire.w1.count=!0&wire.w1.size=18&wire.w1.insulation=XHHW&wire.w2.count=1&wire.w2.size=12&wire.w2.insulation=TW")
	if got := says(find(n, "p", "id", "wire-w1-count-note")); got != "Must be more than zero." {
		t.Errorf("a count of 0: %q", got)
	}
	n = racewayOf(t, "raceway.conduit=LFMC&raceway.size=1/2&wire.w1.count=3&wire.w1.size=18&wire.w1.insulation=XHHW&wire.w2.count=1&wire.w2.size=12&wire.w2.insulation=TW")
	if got := says(find(n, "p", "id", "wire-w1-size-note")); got != "The table has no such row." {
		t.Errorf("18 XHHW: %q", got)
	}
	if other := find(n, "p", "id", "wire-w2-size-note"); other != nil {
		t.Errorf("12 TW: %q", says(other))
	}
	if find(n, "data", "data-unit", "1") != nil {
		t.Error("a figure is given all the same")
	}
}

// Whatever a row lacks, or holds that is no value, neither fill nor wires read
// within.
func TestARowThatIsNotWholeIsNotWithin(t *testing.T) {
	for _, with := range []string{
		"&wire.w3.count=1", "&wire.w3.count=1&wire.w3.size=14", "&wire.w3.count=!0&wire.w3.size=14&wire.w3.insulation=THWN-2&wire.w3.role=other",
		"&wire.w3.count=1&wire.w3.insulation=THWN-2&wire.w3.role=circuit", "&wire.w3.role=other&wire.w3.count=1", "&wire.w3.role=ground&wire.w3.count=1&wire.w3.size=12",
		"&wire.w3.role=ground&wire.w3.size=12&wire.w3.insulation=bare", "&wire.w3.count=!-3&wire.w3.size=12&wire.w3.insulation=bare&wire.w3.role=ground",
		"&wire.w3.count=!2.5&wire.w3.size=12&wire.w3.insulation=TW&wire.w3.role=other", "&wire.w3.count=!99999&wire.w3.size=12&wire.w3.insulation=TW&wire.w3.role=other",
	} {
		n := racewayOf(t, strings.Replace(rewired, "height=1/2in", "height=12in", 1)+with)
		for _, of := range []string{"fill", "wires"} {
			if v := find(n, "p", "data-of", of); v == nil || strings.Contains(attribute(v, "class"), "within") {
				t.Errorf("%q: %s is %q", with, of, says(v))
			}
		}
	}
}

// A link with a row too many, or with a size that is none, is told so.
func TestALinkWithRowsTooMany(t *testing.T) {
	before := shared
	t.Cleanup(func() { shared = before })
	shared = newBench(store.Memory(), "en-US")
	link := "wire.k0.size=13"
	for i := range record.MostWires + 1 {
		link += "&wire.k" + strconv.Itoa(i) + ".count=1"
	}
	shared.Follow(link)
	n := racewayPage(t)
	if got := says(n); !strings.Contains(got, "no room for another row: 50 are the most") || !strings.Contains(got, "wire.k0.size=13") || len(shared.Fan.Wires) != record.MostWires {
		t.Errorf("%d rows; %d problems", len(shared.Fan.Wires), len(shared.Problems))
	}
}

func TestFiftyRowsAreTheMost(t *testing.T) {
	racewayOf(t, "")
	for range record.MostWires {
		if find(racewayPage(t), "button", "name", "add wire") == nil {
			t.Fatal("no way to add a row")
		}
		(&racewayView{bench: shared}).addWire()
	}
	n := racewayPage(t)
	if find(n, "button", "name", "add wire") != nil || !strings.Contains(says(n), "50 rows are the most") {
		t.Error("the list takes a row more, or does not say why it takes none")
	}
	if r := shared.Fan.Wires[0].Role.Value(); r != record.MotorCircuit {
		t.Errorf("the first row is %q", r)
	}
	if r := shared.Fan.Wires[1].Role.Value(); r != record.Grounding {
		t.Errorf("the second row is %q", r)
	}
	if r := shared.Fan.Wires[2].Role.Value(); r != "" {
		t.Errorf("the third row is %q", r)
	}
}

func racewayPage(t *testing.T) *html.Node {
	t.Helper()
	n, err := html.Parse(strings.NewReader(whole(t, NewRaceway())))
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// Few words are laid out to be tapped; many stand in the device's own list,
// which shows the one that is chosen.
func TestManyWordsAreAList(t *testing.T) {
	n := racewayOf(t, rewired)
	list := find(n, "select", "name", "wire.w1.insulation")
	if list == nil {
		t.Fatal("no list of insulations")
	}
	chosen := 0
	for d := range list.Descendants() {
		if has := slices.ContainsFunc(d.Attr, func(a html.Attribute) bool { return a.Key == "selected" }); has {
			chosen++
			if attribute(d, "value") != "THWN-2" {
				t.Errorf("%q is chosen", attribute(d, "value"))
			}
		}
	}
	if chosen != 1 {
		t.Errorf("%d lines are chosen", chosen)
	}
	if find(n, "select", "name", "raceway.conduit") != nil || find(n, "button", "value", "LFNC-B") == nil {
		t.Error("the nine conduits are no chips")
	}
}
