package page

import (
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
)

// powerDemo is the example's new motor, 6.6 A on its plate and idling on 2.2 A,
// with what was read at it.
const powerDemo = demoFan + "&new.no-load-amps=2.2 A&new.service-factor=1.15&trial.t1.turns=3turns&trial.t1.volts-12=208.2V&trial.t1.volts-23=207.6V&trial.t1.volts-31=208.8V"

const (
	evenAmps   = "&trial.t1.amps-1=5.6A&trial.t1.amps-2=5.7A&trial.t1.amps-3=5.5A"
	unevenAmps = "&trial.t1.amps-1=6.5A&trial.t1.amps-2=5.0A&trial.t1.amps-3=5.0A"
	rolledOnce = "&trial.t1.leads=1-2-3&trial.t2.leads=3-1-2&trial.t2.amps-1=6.5A&trial.t2.amps-2=5.0A&trial.t2.amps-3=5.0A&new.leads=3-1-2"
	proven     = "&new.rotation=marked"
)

var powerStates = []string{
	powerDemo + evenAmps + proven + "&new.overload-dial=7A&new.protection=overload-relay&new.restart=automatic&new.power-factor=0.8&new.efficiency=84%",
	powerDemo + unevenAmps + proven + rolledOnce + "&trial.t3.leads=2-3-1&trial.t3.amps-1=6.4A&trial.t3.amps-2=5.1A&trial.t3.amps-3=5.0A&new.service-factor=1&new.motor-power=1hp",
	powerDemo + "&trial.t1.amps-1=0A&trial.t1.amps-2=9.4A&trial.t1.amps-3=9.5A&new.protection=thermal-protector",
	"supply=two-speed&new.rotation=reverse&new.rotation-low=marked&trial.t1.volts-12=230V&trial.t1.volts-23=231V&trial.t1.volts-31=232V&new.motor-volts=460V&trial.t1.amps-1=13A&trial.t1.amps-2=13A&trial.t1.amps-3=13A&new.motor-amps=6.5A&new.protection=heaters",
	"supply=single-phase&trial.t1.volts-12=114V&trial.t1.amps-1=9.1A&trial.t1.clamp-turns=2turns&new.motor-volts=115V&new.motor-amps=9A&new.service-factor=1.15&new.power-factor=0.7&new.efficiency=70%&new.overload-dial=20A",
	"supply=drive&trial.t1.volts-12=480V&trial.t1.volts-23=479V&trial.t1.volts-31=478V&trial.t1.amps-1=3A&trial.t1.amps-2=3A&trial.t1.amps-3=3.1A&new.motor-volts=230V&new.rotation=marked",
}

// powerOf draws the page in a state, with its sections open.
func powerOf(t *testing.T, state string) string {
	t.Helper()
	before := shared
	t.Cleanup(func() { shared = before })
	shared = newBench(store.Memory(), "en-US")
	shared.Follow(strings.ReplaceAll(state, " ", "%20"))
	everything(shared)
	html := whole(t, app.Composer(NewPower()))
	if shared.crash != "" {
		t.Errorf("drawing failed in %.60q: %s", state, shared.crash)
	}
	return html
}

// What the plate says in each state, and what must not be there.
func TestPowerPlate(t *testing.T) {
	for _, c := range []struct {
		name, state, says string
		never             []string
	}{
		{"nothing known", "", "First: what feeds this motor?", []string{"Add a reading", "Voltage unbalance"}},
		{"supply said", "supply=three-phase", "Next: start a reading", []string{"Current unbalance"}},
		{"a reading begun", "supply=three-phase&trial.t1.turns=1turns", "Next: read volts between all three lines.", nil},
		{"one pair of three", "supply=three-phase&trial.t1.volts-12=208V", "Next: read volts between all three lines.", nil},
		{"volts read", powerDemo, "Next: prove rotation.", nil},
		{"turned wrong", powerDemo + "&new.rotation=reverse", "Next: reverse its rotation", nil},
		{"proven", powerDemo + proven, "Next: belt on, aligned, tensioned, guard on. Then amps on all three legs.", nil},
		{"even", powerDemo + evenAmps + proven, "Within: amps 1.8 % apart, volts 0.3 %.", []string{"lost phase"}},
		{"uneven", powerDemo + unevenAmps + proven, "Next: roll the leads one place and read again.", nil},
		{"uneven, rotation not proven", powerDemo + unevenAmps, "Next: prove rotation.", []string{"button name=\"roll next\""}},
		{"two positions", powerDemo + unevenAmps + proven + rolledOnce, "Next: roll the leads one place", []string{"The supply:"}},
		{"three positions", powerStates[1], "The supply: it stays with line L1.", nil},
		{"a dead leg", powerStates[2], "Stop: lost phase on leg 1.", []string{"Next:"}},
		{"a failing leg at light load", powerDemo + proven + "&trial.t1.amps-1=2.4A&trial.t1.amps-2=0.4A&trial.t1.amps-3=2.4A", "Stop: leg 2 is open, or nearly.", []string{"Next:", "Under half load"}},
		{"far apart at light load", powerDemo + proven + "&trial.t1.amps-1=2.4A&trial.t1.amps-2=1.2A&trial.t1.amps-3=2.4A", "Watch: current unbalance.", nil},
		{"1 : 1 : 2", powerDemo + "&trial.t1.amps-1=4A&trial.t1.amps-2=8.1A&trial.t1.amps-3=4A", "Stop: open winding or joint in the motor.", nil},
		{"1 : 1 : 2, volts not read", "supply=three-phase&trial.t1.amps-1=4A&trial.t1.amps-2=8.1A&trial.t1.amps-3=4A", "Stop: phase lost ahead of the transformer.", nil},
		{"half the plate's volts", powerStates[3], "Stop: plate volts.", nil},
		{"no triangle", "supply=three-phase&trial.t1.volts-12=480V&trial.t1.volts-23=200V&trial.t1.volts-31=200V", "Next: settle reading 1: volts, 1–2.", nil},
		{"turns that are none", powerDemo + evenAmps + proven + "&trial.t1.clamp-turns=1.5turns", "Next: settle reading 1: turns through the clamp.", nil},
		{"three legs of nothing", powerDemo + proven + "&trial.t1.amps-1=0A&trial.t1.amps-2=0A&trial.t1.amps-3=0A", "Stop: no leg carries anything.", []string{"Next:", " %."}},
		{"two legs of nothing", powerDemo + proven + "&trial.t1.amps-1=5A&trial.t1.amps-2=0A&trial.t1.amps-3=0A", "Stop: legs 2 and 3 carry nothing.", []string{"Next:", " %."}},
		{"the outer legs of nothing", powerDemo + proven + "&trial.t1.amps-1=0A&trial.t1.amps-2=5A&trial.t1.amps-3=0A", "Stop: legs 1 and 3 carry nothing.", nil},
		{"three pairs of nothing", "supply=three-phase&trial.t1.volts-12=0V&trial.t1.volts-23=0V&trial.t1.volts-31=0V", "Next: settle reading 1: volts, 1–2.", nil},
		{"one pair of nothing", "supply=three-phase&trial.t1.volts-12=0V&trial.t1.volts-23=208V&trial.t1.volts-31=208V", "Stop: voltage unbalance.", nil},
		{"one leg of three missing", powerDemo + proven + "&trial.t1.amps-1=5A&trial.t1.amps-3=5A", "Next: belt on, aligned, tensioned, guard on. Then amps on all three legs.", []string{"button name=\"roll next\""}},
		{"two positions, rotation not proven", powerDemo + unevenAmps + rolledOnce, "Next: prove rotation.", []string{"button name=\"roll next\"", "The supply:"}},
		{"garbled leg", powerDemo + proven + "&trial.t1.amps-1=5.6A&trial.t1.amps-2=!5,,7&trial.t1.amps-3=5.6A", "Next: settle reading 1: amps, leg 2.", nil},
		{"single-phase", powerStates[4] + proven, "Stop: overload dial.", []string{"Current unbalance", "Lead roll", "Leg 2"}},
		{"drive", powerStates[5], "Stop: plate volts.", []string{"Lead roll", "Apparent power"}},
		{"drive, in order", "supply=drive&new.motor-volts=480V&new.motor-amps=4A&new.rotation=marked&trial.t1.volts-12=480V&trial.t1.volts-23=479V&trial.t1.volts-31=478V&trial.t1.amps-1=3A&trial.t1.amps-2=3A&trial.t1.amps-3=3.1A", "Within: amps 2.2 % apart, volts 0.2 %.", nil},
		{"a plate of 60 Hz on 50", powerDemo + evenAmps + proven + "&new.motor-frequency=60Hz&trial.t1.frequency=50Hz", "Stop: frequency.", nil},
		{"a plate of 50 Hz on 60", powerDemo + evenAmps + proven + "&new.motor-frequency=50Hz&trial.t1.frequency=60Hz", "Watch: frequency.", nil},
		{"three phases from one", "supply=single-phase&new.phases=3", "Stop: plate&#39;s phases.", []string{"Next:"}},
		{"one phase from a drive", "supply=drive&new.phases=1", "Stop: plate&#39;s phases.", []string{"Next:"}},
		{"one phase on three", "supply=three-phase&new.phases=1", "Next: start a reading", nil},
		{"as found", "supply=three-phase&old.amps-1=0A&old.amps-2=9A&old.amps-3=9A", "Stop: lost phase on leg 1.", nil},
	} {
		html := powerOf(t, c.state)
		_, plate, _ := strings.Cut(html, `power.next`)
		plate, _, _ = strings.Cut(plate, "</output>")
		if !strings.Contains(plate, c.says) {
			t.Errorf("%s: the plate says %s", c.name, plate[max(0, strings.IndexByte(plate, '>')):])
		}
		for _, n := range c.never {
			if strings.Contains(html, n) {
				t.Errorf("%s: %q is shown", c.name, n)
			}
		}
	}
}

// A proof that comes with other leads, by a link or a file, is none; one more tap
// proves it for the leads as they are.
func TestAProofIsForItsLeads(t *testing.T) {
	b := newBench(store.Memory(), "en-US")
	b.Follow("supply=three-phase&new.rotation=marked&new.leads=2-1-3")
	if v := sheet.RotationVerdict(b.Fan); v.Level != sheet.Unjudged {
		t.Errorf("exchanged: %+v", v)
	}
	if html := powerOf(t, "supply=three-phase&new.rotation=marked&new.leads=2-1-3&trial.t1.volts-12=208V&trial.t1.volts-23=208V&trial.t1.volts-31=208V"); strings.Count(html, "Leads exchanged since it was bumped") != 2 || !strings.Contains(html, "Next: prove rotation.") {
		t.Error("it is not said")
	}
	b.take("new.rotation", "marked")
	if v := sheet.RotationVerdict(b.Fan); v.Level != sheet.Within || b.Fan.New.RotationLeads.Value() != "2-1-3" {
		t.Errorf("bumped again: %+v, with %s", v, b.Fan.New.RotationLeads.Value())
	}
	b.take("new.rotation", "marked")
	if got := b.Fan.New.Rotation.Value(); got != "" {
		t.Errorf("the chosen one again leaves %s", got)
	}
}

// A lead exchanged by choice takes back the proof of rotation; one moved on keeps it.
func TestExchangedLeadsTakeTheProofBack(t *testing.T) {
	for leads, kept := range map[string]bool{"2-3-1": true, "2-1-3": false} {
		b := newBench(store.Memory(), "en-US")
		b.Follow("supply=three-phase&new.rotation=marked")
		b.take("new.leads", leads)
		if got := b.Fan.New.Rotation.Value() == record.MarkedWay; got != kept {
			t.Errorf("%s: the proof is kept: %v", leads, got)
		}
	}
}

// A verdict names the limit for what it is.
func TestPowerNamesItsLimits(t *testing.T) {
	const poor = "supply=three-phase&new.motor-power=2hp&new.motor-volts=208V&new.motor-amps=6.6A&new.service-factor-amps=7.6A&trial.t1.volts-12=204V&trial.t1.volts-23=208V&trial.t1.volts-31=212V"
	for name, c := range map[string]struct{ state, says string }{
		"lessened plate":        {poor + evenAmps, "That is the plate's less what unbalanced volts take off."},
		"near service amps":     {powerDemo + "&new.service-factor-amps=7.6A&trial.t1.amps-1=7.7A&trial.t1.amps-2=7A&trial.t1.amps-3=7A", "Whether above the service-factor amps of 7.60 A can't be judged"},
		"dial under the amps":   {powerDemo + evenAmps + "&new.overload-dial=5A", "5.00 A is under the 5.70 A that a leg draws"},
		"power that can't be":   {powerDemo + evenAmps + "&new.power-factor=0.5&new.efficiency=84%25", "by the plate at most 84.0 %: amps, power factor or plate is wrong."},
		"real power in kW":      {powerStates[0], "kW"},
		"three legs of nothing": {powerDemo + proven + "&trial.t1.amps-1=0A&trial.t1.amps-2=0A&trial.t1.amps-3=0A", "The motor does not run, or the clamp read nothing: one conductor in the jaws, not the whole cable. Don't take it for dead;"},
		"two legs of nothing":   {powerDemo + proven + "&trial.t1.amps-1=0A&trial.t1.amps-2=5A&trial.t1.amps-3=0A", "Look for a fault to ground on leg 2, then for what opens the other two."},
		"one leg of nothing":    {powerDemo + proven + "&trial.t1.amps-1=5A&trial.t1.amps-2=0A&trial.t1.amps-3=5A", "Leg 2 carries next to nothing: look no further at percentages."},
		"three phases from one": {"supply=single-phase&new.phases=3", "It needs a phase converter or a drive listed for it, or another motor."},
		"one phase on three":    {"supply=three-phase&new.phases=1", "lies across two of its lines"},
		"failing leg, its part": {powerDemo + "&trial.t1.amps-1=0.8A&trial.t1.amps-2=5A&trial.t1.amps-3=5A", "One leg carries 16.0 % of what the others do; under 25.0 % no light load explains it."},
	} {
		if html := powerOf(t, c.state); !strings.Contains(html, strings.ReplaceAll(c.says, "'", "&#39;")) {
			t.Errorf("%s: %q is not said", name, c.says)
		}
	}
}

// A leg below zero is no reading: it is said beside the field and on the plate.
func TestALegBelowZero(t *testing.T) {
	b := newBench(store.Memory(), "en-US")
	b.Follow(strings.ReplaceAll(powerDemo+evenAmps+proven, " ", "%20"))
	b.Type("trial.t1.amps-2", b.place("trial.t1.amps-2"), "-5.7")
	before := shared
	t.Cleanup(func() { shared = before })
	shared = b
	everything(b)
	html := whole(t, app.Composer(NewPower()))
	for _, says := range []string{"Next: settle reading 1: amps, leg 2.", b.T("limit.negative")} {
		if !strings.Contains(html, says) {
			t.Errorf("%q is not said", says)
		}
	}
}

// A two-speed motor's other speed is not what the figures are for.
func TestTwoSpeedsAreSaidToBeTwo(t *testing.T) {
	for name, draw := range map[string]func() app.Composer{
		"drive":   func() app.Composer { return NewDrive() },
		"belt":    func() app.Composer { return NewBelt() },
		"airflow": func() app.Composer { return NewAirflow() },
	} {
		for supply, want := range map[string]bool{"two-speed": true, "three-phase": false} {
			before := shared
			t.Cleanup(func() { shared = before })
			shared = newBench(store.Memory(), "en-US")
			shared.Follow("supply=" + supply)
			if got := strings.Contains(whole(t, draw()), shared.T("two-speed")); got != want {
				t.Errorf("%s, %s: it is said: %v", name, supply, got)
			}
		}
	}
}

// What a verdict asks for, or is about, stands in a field of the page.
func TestEveryWayOnPowerLeadsToAField(t *testing.T) {
	const found = "supply=three-phase&old.amps-1=5A&old.amps-2=6A&old.amps-3=7A&old.volts-12=208V&old.volts-23=208V&old.volts-31=208V"
	for _, state := range append(powerStates, found, found+"&old.motor-amps=6A", found+"&old.motor-amps=6A&old.motor-volts=208V&old.service-factor=1.15",
		powerDemo+evenAmps+proven+"&new.overload-dial=5A", powerDemo+evenAmps+proven+"&new.power-factor=0.5", powerDemo+evenAmps+proven+"&new.motor-frequency=60Hz&trial.t1.frequency=50Hz") {
		html := powerOf(t, state)
		b := newBench(store.Memory(), "en-US")
		b.Follow(strings.ReplaceAll(state, " ", "%20"))
		v := newPowerView(b)
		all := append(append(v.p.Wanted, v.p.Worst.Wanted...), v.about(v.p.Worst)...)
		for _, p := range all {
			if key := b.keyOf(p); !strings.Contains(html, `id="`+widget.ID(key)+`"`) {
				t.Errorf("%.60q: no field for %s", state, key)
			}
		}
		if _, plate, _ := strings.Cut(html, "power.next"); len(v.about(v.p.Worst)) > 0 && v.p.Next == sheet.StepVerdict && !strings.Contains(plate[:strings.Index(plate, "</section>")], "to power "+b.keyOf(v.about(v.p.Worst)[0])) {
			t.Errorf("%.60q: the plate leads elsewhere", state)
		}
	}
}
