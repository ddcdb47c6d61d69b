//go:build e2e

package e2e

import "testing"

const exampleMotor = "#new.motor-power=2hp&new.motor-volts=208V&new.motor-amps=6.6A&new.service-factor=1.15&new.service-factor-amps=7.6A&new.no-load-amps=2.2A&new.turns=3turns"

// A motor proven by typing: the supply said, volts read, rotation put right, uneven
// amps rolled to their cause.
func TestAProvingRun(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/power/" + exampleMotor)
	const plate = `output[name="power.next"]`
	tab.AwaitText(plate, "First: what feeds this motor?")
	tab.take("supply", "three-phase")
	tab.AwaitText(plate, "Next: start a reading.")
	tab.Click(`button[name="to add-reading"]`)
	tab.Click(`button[name="add reading"]`)
	tab.Await(`document.activeElement.name === "trial.t1.volts-12"`)
	tab.AwaitText(plate, "Next: read volts between all three lines.")
	tab.fill([][2]string{{"trial.t1.volts-12", "208.2"}, {"trial.t1.volts-23", "207.6"}, {"trial.t1.volts-31", "208.8"}})
	tab.AwaitValue("volts.unbalance", 0.6/208.2, 1e-9, "1")
	tab.AwaitValue("volts.of-plate", 208.2/208, 1e-9, "1")

	tab.AwaitText(plate, "Next: prove rotation.")
	tab.Click(`button[name="to power new.rotation"]`)
	tab.take("new.rotation", "reverse")
	tab.AwaitText(plate, "Next: reverse its rotation")
	tab.AwaitText(".below", "Exchange any two of the three leads")
	tab.Click(`button[name="exchanged"]`)
	tab.AwaitText(plate, "Next: prove rotation.")
	tab.take("new.rotation", "marked")
	tab.AwaitText(plate, "Then amps on all three legs.")

	tab.Click(`button[name="to power trial.t1.amps-1"]`)
	tab.Await(`document.activeElement.name === "trial.t1.amps-1"`)
	tab.fill([][2]string{{"trial.t1.amps-1", "6.5"}, {"trial.t1.amps-2", "5"}, {"trial.t1.amps-3", "5"}})
	tab.AwaitValue("amps.unbalance", 1/5.5, 1e-9, "1")
	tab.AwaitText(plate, "Next: roll the leads one place and read again.")
	tab.Shoot("power-roll")

	tab.Click(`button[name="to roll-next"]`)
	tab.AwaitText(`button[name="roll next"]`, "T3 T2 T1") // two leads have been exchanged: T2 T1 T3 stood there
	for _, reading := range []string{"t2", "t3"} {
		tab.Click(`button[name="roll next"]`)
		tab.Await(`document.activeElement.name === "trial.` + reading + `.amps-1"`)
		tab.fill([][2]string{{"trial." + reading + ".amps-1", "6.5"}, {"trial." + reading + ".amps-2", "5.1"}, {"trial." + reading + ".amps-3", "4.9"}})
	}
	tab.AwaitText(plate, "The supply: it stays with line L1.")
	tab.AwaitText(`output[name="roll.cause"]`, "The supply")
	tab.Shoot("power-cause")
	tab.Reload()
	tab.AwaitText(plate, "The supply: it stays with line L1.")

	// An exchange of two leads starts another roll.
	tab.open("rotation")
	tab.take("new.rotation", "reverse")
	tab.Click(`button[name="exchanged"]`)
	tab.take("new.rotation", "marked")
	tab.open("roll")
	tab.Await(`!document.querySelector('output[name="roll.cause"]')`)
	tab.AwaitText(`button[name="roll next"]`, "T2 T3 T1") // T3 T2 … once more
}

// What can't be is said beside its field and judged by nobody.
func TestBadReadings(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/power/" + exampleMotor + "&supply=three-phase&new.rotation=marked&trial.t1.volts-12=208.2V&trial.t1.volts-23=207.6V&trial.t1.volts-31=208.8V" +
		"&trial.t1.amps-1=5.6A&trial.t1.amps-2=5.7A&trial.t1.amps-3=5.5A")
	const plate = `output[name="power.next"]`
	tab.AwaitText(plate, "Within: amps 1.8 % apart")
	tab.open("readings")
	for _, c := range []struct{ field, typed, says string }{
		{"trial.t1.clamp-turns", "0", "more than zero"}, {"trial.t1.clamp-turns", "1.5", "a whole number of times"}, {"trial.t1.clamp-turns", "twice", "is not a number"},
		{"trial.t1.amps-2", "-5", "not be below zero"}, {"trial.t1.amps-2", "5,,7", ""}, {"trial.t1.amps-2", "5 V", "is a unit of something else"},
		{"trial.t1.volts-23", "1e3", "without an exponent"}, {"trial.t1.volts-23", "580", "can't belong together"},
	} {
		before := tab.FieldText(c.field)
		tab.Type(c.field, c.typed)
		tab.AwaitText(`[id="`+c.field[:5]+`-t1-`+c.field[9:]+`-note"]`, c.says)
		tab.AwaitText(plate, "Next: settle reading 1")
		tab.Type(c.field, before)
		tab.AwaitText(plate, "Within: amps 1.8 % apart")
	}
	tab.Type("trial.t1.amps-3", "")
	tab.AwaitText(plate, "Then amps on all three legs.")
	tab.AwaitNoValue("amps.unbalance")
	tab.Type("trial.t1.amps-3", "0")
	tab.AwaitText(plate, "Stop: lost phase on leg 3.")
	tab.Type("trial.t1.amps-3", "0.9")
	tab.AwaitText(plate, "Stop: leg 3 is open, or nearly.")
	tab.Type("trial.t1.amps-3", "5.5")
	tab.AwaitText(plate, "Within: amps 1.8 % apart")
}

// A link may bring other leads under a proof of rotation: it is asked for once more,
// and one tap on what was chosen gives it.
func TestAProofArrivesWithOtherLeads(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/power/" + exampleMotor + "&supply=three-phase&new.rotation=marked&new.leads=2-1-3&trial.t1.volts-12=208.2V&trial.t1.volts-23=207.6V&trial.t1.volts-31=208.8V")
	const plate = `output[name="power.next"]`
	tab.AwaitText(plate, "Next: prove rotation.")
	tab.AwaitText(".below", "Leads exchanged since it was bumped")
	tab.Click(`button[name="to power new.rotation"]`)
	tab.take("new.rotation", "marked")
	tab.AwaitText(plate, "Then amps on all three legs.")
	tab.Reload()
	tab.AwaitText(plate, "Then amps on all three legs.")
}
