package sheet

import (
	"strings"

	"roofside/calc/airflow"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// HoodAirflow answers with what the hood exhausts: measured there, for a speed
// alone proves no airflow; else what the planned point moves.
func HoodAirflow(f *record.Fan, at Point) Answer[unit.Flow] {
	if known(&f.Hood.Airflow) {
		return Read("Q", FromTachometer, &f.Hood.Airflow)
	}
	return at.Airflow
}

// DuctVelocity answers with the air's speed in the grease duct.
func DuctVelocity(f *record.Fan, q Answer[unit.Flow]) Answer[unit.Velocity] {
	var a Ask
	h := &f.Hood
	flow := Use(&a, "Q", q)
	if known(&h.DuctDiameter) {
		d := Want(&a, "d", &h.DuctDiameter)
		return Solve(&a, FromPlace, "air.velocity", At{"q": flow.Term, "diameter": d.Term}, func() (unit.Velocity, error) {
			return airflow.RoundDuctVelocity(flow.V(), d.V())
		})
	}
	w, b := Want(&a, "a", &h.DuctWidth), Want(&a, "b", &h.DuctHeight)
	return Solve(&a, FromPlace, "air.velocity", At{"q": flow.Term, "width": w.Term, "height": b.Term}, func() (unit.Velocity, error) {
		return airflow.DuctVelocity(flow.V(), w.V(), b.V())
	})
}

// DuctVerdict judges the air's speed in a grease duct against the least.
func DuctVerdict(v Answer[unit.Velocity]) Verdict {
	return limitOf[unit.Velocity]{rule: RuleDuct, method: "air.duct.minimum", scale: &unit.Airspeed, level: Watch, least: true}.
		hold(v, fixed(airflow.GreaseDuctMinimumVelocity, "air.duct.minimum"))
}

// HoodLeast answers with the least airflow of the hood: what a listed hood's
// own label asks for; the code's table by length only for an unlisted one.
func HoodLeast(f *record.Fan) Answer[unit.Flow] {
	h := &f.Hood
	if known(&h.LabelAirflow) && h.Listing.Value() != record.Unlisted {
		return Read("Q", FromStamp, &h.LabelAirflow)
	}
	var a Ask
	switch h.Listing.Value() {
	case record.Listed:
		return Read("Q", FromStamp, &h.LabelAirflow)
	case "":
		a.miss(&h.Listing)
	}
	a.Need(&h.Kind)
	if h.Kind.Value() != "dishwasher" {
		a.Need(&h.Duty)
	}
	length := Want(&a, "L", &h.Length)
	hood := airflow.Hood(codeWord(h.Kind.Text()))
	rate, err := airflow.HoodRate(hood, airflow.Duty(codeWord(h.Duty.Text())))
	q := Take(&a, "q", rate)
	at := At{"hood": {Place: &h.Kind}, "duty": {Place: &h.Duty}, "length": length.Term}
	return Solve(&a, FromPlace, "air.hood", at, func() (unit.Flow, error) {
		if err != nil {
			return 0, err
		}
		return airflow.HoodFlow(hood, q.V(), length.V())
	})
}

func codeWord(option string) string { return strings.ReplaceAll(option, "-", "_") }

// HoodVerdict judges the hood's airflow against its least. The code's table is
// never a stop unless the hood is said to be unlisted.
func HoodVerdict(f *record.Fan, q Answer[unit.Flow]) Verdict {
	least := HoodLeast(f)
	l := limitOf[unit.Flow]{rule: RuleLabelAirflow, method: "air.hood.label", scale: &unit.Airflow, level: Stop, least: true}
	if f.Hood.Listing.Value() == record.Unlisted {
		l.rule, l.method = RuleTableAirflow, "air.hood"
	}
	if !known(&f.Hood.Airflow) && least.Known() { // speed alone proves no airflow
		return Verdict{Level: Unjudged, Rule: l.rule, Method: l.method, Wanted: []record.Place{&f.Hood.Airflow}}
	}
	return l.hold(q, least)
}

// MakeUpBalance answers with the exhaust that neither make-up nor transfer air
// replaces.
func MakeUpBalance(f *record.Fan, q Answer[unit.Flow]) Answer[unit.Flow] {
	var a Ask
	out, in := Use(&a, "Q", q), Want(&a, "Qₘ", &f.Hood.MakeUp)
	if known(&f.Hood.Transfer) {
		over := Want(&a, "Qₜ", &f.Hood.Transfer)
		return Solve(&a, FromPlace, "air.makeup.balance", nil, func() (unit.Flow, error) { return out.V() - in.V() - over.V(), nil })
	}
	return Solve(&a, FromPlace, "air.makeup.balance", nil, func() (unit.Flow, error) { return out.V() - in.V(), nil })
}

// SpaceVerdict judges the negative pressure measured at the hood's space.
func SpaceVerdict(f *record.Fan) Verdict {
	return limitOf[unit.Pressure]{rule: RuleSpacePressure, method: "air.makeup", scale: &unit.AirPressure, level: Stop}.
		hold(Read("p", FromPlace, &f.Hood.SpacePressure), fixed(airflow.MakeUpLimit, "air.makeup"))
}
