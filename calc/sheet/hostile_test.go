package sheet_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"strings"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// everything asks a fan every question that the pages ask.
func everything(f *record.Fan) map[string]any {
	table := sheet.TurnsTable(f)
	b := sheet.FanBasis(f)
	speed, air := sheet.PlannedSpeed(f, table), sheet.PlannedAir(f)
	at := sheet.PointAt(f, speed, air)
	q := sheet.HoodAirflow(f, at)
	duct := sheet.DuctVelocity(f, q)
	move, wanted := sheet.NextMove(f, table)
	limits := sheet.SpeedLimits(f, b)
	all := map[string]any{
		"table": table, "move": move, "wanted": wanted, "over": sheet.SettingVerdict(f, table), "sheaves": sheet.SheavesFor(f), "pitch for target": sheet.PitchForTarget(f, table),
		"target": sheet.TargetSpeed(f), "targets": sheet.Targets(f), "origins": sheet.TargetVerdict(f),
		"planned speed": speed, "planned air": air, "point": at, "speed for": sheet.SpeedFor(f), "reference": sheet.ReferencePoint(f), "density": sheet.Density(f, air),
		"old power": sheet.OldPower(f), "old load": sheet.OldAmpsLoad(f), "new amps": sheet.NewAmps(f, b, speed, air), "new load": sheet.NewLoad(f, b, speed, air),
		"motor": sheet.MotorVerdict(f, b, speed), "wheel": sheet.WheelVerdict(f, speed), "limits": limits,
		"unbalance": sheet.VoltageUnbalance(f), "unbalance verdict": sheet.UnbalanceVerdict(f),
		"hood": sheet.HoodVerdict(f, q), "hood least": sheet.HoodLeast(f), "airflow": q, "duct": duct, "duct verdict": sheet.DuctVerdict(duct),
		"adapter": sheet.Adapter(f), "hanging free": sheet.HangingFree(f),
		"filling": sheet.Filling(f), "fill": sheet.FillShare(f), "fill verdict": sheet.FillVerdict(f), "smallest raceway": sheet.SmallestRaceway(f),
		"box volume": sheet.BoxVolume(f), "box needed": sheet.BoxNeeded(f), "box share": sheet.BoxShare(f), "box verdict": sheet.BoxVerdict(f), "smallest box": sheet.SmallestBox(f),
		"circuit": sheet.CircuitOf(f),
		"make-up": sheet.MakeUpBalance(f, q), "space": sheet.SpaceVerdict(f), "now": sheet.NowTurns(f),
	}
	for name, s := range map[string]*record.Side{"old": &f.Old, "new": &f.New} {
		all[name+" speed"], all[name+" ratio"], all[name+" pitch"] = sheet.FanSpeed(f, s), sheet.Ratio(s), sheet.MotorPitch(s)
		all[name+" belt speed"], all[name+" arc"], all[name+" belt"] = sheet.BeltSpeed(f, s), sheet.Arc(s), sheet.BeltLength(s)
		all[name+" mismatch"], all[name+" mismatch verdict"] = sheet.Mismatch(f, s), sheet.MismatchVerdict(f, s)
		all[name+" frequency"], all[name+" sync"] = sheet.PlateFrequency(s), sheet.Synchronous(s, &s.Reading)
		all[name+" load"], all[name+" volts"], all[name+" amps"] = sheet.OldLoad(f, s), sheet.VoltsMean(&s.Reading), sheet.AmpsMean(&s.Reading)
		all[name+" belt number"], all[name+" swapped"] = sheet.BeltNumberVerdict(s), sheet.SwappedVerdict(s)
	}
	belts := func(name string, turns sheet.Answer[unit.Turns], speed sheet.Answer[unit.Speed], t *record.Trial) {
		run := sheet.RunAt(f, turns, nil)
		x := sheet.TensionAt(f, b, run, speed, unit.Inch/16)
		most, aim := sheet.AlignmentGap(run)
		edge := x.Edges(record.NewBelt).Most
		all[name+" tension"], all[name+" frequency"], all[name+" shaft"] = *x, x.Frequency(edge), x.ShaftLoad(edge)
		all[name+" fits"], all[name+" length"], all[name+" gap"], all[name+" aim"] = sheet.Fits(f, run), sheet.LengthFor(f, run), most, aim
		all[name+" shift"] = sheet.BeltShift(f, turns)
		all[name+" capacity"], all[name+" belts"] = sheet.Capacity(f, x.Power()), sheet.BeltsNeeded(f, x.Plate.Power)
		if t != nil {
			all[name+" force"], all[name+" plucked"], all[name+" taut"] = x.ReadForce(t), x.ReadFrequency(t), x.Taut(t)
			all[name+" aligned"] = sheet.AlignmentVerdict(t, run)
		}
	}
	set := sheet.SetTurns(f, table, move)
	belts("set", set, sheet.SetSpeed(f, table, set), nil)
	all["groove"] = sheet.GrooveVerdict(&f.New)
	if more, like := sheet.Room(f); like != nil {
		all["room"] = more
	}
	if ratio, verdict, three := sheet.Jam(f); three {
		all["jam"], all["jam verdict"] = ratio, verdict
	}
	for _, t := range f.Trials {
		all["trial "+t.ID] = sheet.TrialVerdict(f, t)
		belts(t.ID, sheet.TrialTurns(t), sheet.SpeedOf(f, table, t), t)
	}
	all["clearance"], all["clearance along"], all["like for like"], all["handover"] = sheet.Clearance(f, false), sheet.Clearance(f, true), sheet.LikeForLike(f), sheet.Handover(f)
	all["materials"] = sheet.Materials(f)
	electrical(f, all)
	return all
}

func electrical(f *record.Fan, all map[string]any) {
	proof := sheet.Prove(f)
	all["proof"], all["roll"] = append(proof.Asks, proof.Worst, proof.OfLegs, proof.OfRotation), sheet.LeadRoll(f)
	s, r := &f.New, &f.Old.Reading
	if judged, ok := sheet.JudgedReading(f); ok {
		s, r = judged.Side, judged.Reading
	}
	volts, amps, system := sheet.VoltsUnbalance(r), sheet.AmpsUnbalance(f, s, r), sheet.SystemVolts(f, r)
	plate, load, derating := sheet.PlateVolts(f, s, r), sheet.Load(f, s, r), sheet.Derating(volts)
	left := sheet.Headroom(load, derating)
	for name, a := range map[string]any{
		"volts": volts, "amps": amps, "system": system, "plate volts": plate, "plate volts verdict": sheet.PlateVoltsVerdict(plate),
		"system verdict": sheet.SystemVerdict(f, r), "plate on system": sheet.PlateSystemVerdict(s, system), "lost": sheet.LostPhase(r),
		"load": load, "derating": derating, "headroom": left, "amplification": sheet.Amplification(volts, amps),
		"line volts": sheet.LineVolts(f, r), "line amps": sheet.LineAmps(f, r), "leg": sheet.LegAmps(r, 1),
		"apparent": sheet.Apparent(f, r), "real": sheet.RealPower(f, s, r), "shaft": sheet.ShaftPower(f, s, r), "overload": sheet.OverloadOf(f).Verdict,
	} {
		all[name] = a
	}
}

// sane reports numbers that are none, values beside a reason for having none,
// and answers that say nothing at all. What was seen is not looked at again.
func sane(t *testing.T, name string, v reflect.Value, seen map[any]bool) {
	switch v.Kind() {
	case reflect.Float64:
		open := math.IsInf(v.Float(), 1) && boundless(name) // nothing bounds it
		if x := v.Float(); math.IsNaN(x) || math.IsInf(x, 0) && !open {
			t.Errorf("%s is %v", name, x)
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			sane(t, fmt.Sprintf("%s[%d]", name, i), v.Index(i), seen)
		}
	case reflect.Pointer:
		if path := v.Type().Elem().PkgPath(); !v.IsNil() && strings.HasSuffix(path, "/sheet") && !seen[v.UnsafePointer()] {
			seen[v.UnsafePointer()] = true // answers share their working
			sane(t, name, v.Elem(), seen)
		}
	case reflect.Struct:
		if strings.HasPrefix(v.Type().Name(), "Answer[") {
			answered(t, name, v)
		}
		if strings.HasPrefix(v.Type().Name(), "Finding[") {
			found(t, name, v)
		}
		for i := range v.NumField() {
			if strings.HasSuffix(v.Type().PkgPath(), "/sheet") {
				sane(t, name+"."+v.Type().Field(i).Name, v.Field(i), seen)
			}
		}
	}
}

// boundless tells whether a number may be infinite: a band, or what makes it so.
func boundless(name string) bool {
	name = strings.ToLower(name[strings.LastIndex(name, ".")+1:])
	return name == "band" || name == "weight"
}

func answered(t *testing.T, name string, v reflect.Value) {
	value, band := v.FieldByName("Value").Float(), v.FieldByName("Band").Float()
	known := v.FieldByName("Steps").FieldByName("done").Bool()
	reasons := v.FieldByName("Wanted").Len()
	if !v.FieldByName("Fault").IsNil() {
		reasons++
	}
	switch {
	case known && (reasons > 0 || band < 0):
		t.Errorf("%s is %v ± %v and has %d reasons not to be", name, value, band, reasons)
	case !known && (value != 0 || band != 0):
		t.Errorf("%s holds %v ± %v and is not known", name, value, band)
	case !known && reasons == 0 && !strings.HasSuffix(name, "asis.Air"):
		t.Errorf("%s is not known for no reason", name)
	}
}

func found(t *testing.T, name string, v reflect.Value) {
	reasons := v.FieldByName("Wanted").Len()
	if !v.FieldByName("Fault").IsNil() {
		reasons++
	}
	if known := v.FieldByName("done").Bool(); known != (reasons == 0) || !known && !v.FieldByName("Value").IsZero() {
		t.Errorf("%s is known %v, holds %v and has %d reasons not to be", name, known, v.FieldByName("Value"), reasons)
	}
}

func check(t *testing.T, f *record.Fan) {
	t.Helper()
	seen := map[any]bool{}
	for name, a := range everything(f) {
		sane(t, name, reflect.ValueOf(a), seen)
	}
	wellListed(t, sheet.Materials(f))
	table := sheet.TurnsTable(f)
	for i, r := range table.Rows {
		if r.Speed <= 0 || r.Pitch <= 0 || i > 0 && r.Speed > table.Rows[i-1].Speed {
			t.Errorf("row %d: %v rpm on %v", i, r.Speed, r.Pitch)
		}
		if r.AmpsLow.V > r.AmpsHigh.V {
			t.Errorf("row %d: %v to %v A", i, r.AmpsLow.V, r.AmpsHigh.V)
		}
	}
	if len(table.Rows) > 24 {
		t.Errorf("%d rows", len(table.Rows))
	}
}

var counts = []string{"0", "0.000000000001", "0.001", "0.25", "0.999999", "1", "1.15", "2", "3.4", "5", "34", "59.999", "60", "208", "350", "712", "1750", "1800", "9999", "99999", "9999999", "-1", "-499"}
var remarks = []string{"", "", "", "; guessed", "; measured", "; within 0 %", "; within 100 %", "; stamped; within 50 %"}

// throw puts something hostile into a place, as far as it can hold it.
func throw(r *rand.Rand, p record.Place) {
	switch m := p.(type) {
	case record.Measure:
		for range 6 {
			u := m.Kind().Units[r.IntN(len(m.Kind().Units))]
			if p.Set(counts[r.IntN(len(counts))]+" "+u.Symbol+remarks[r.IntN(len(remarks))]) == nil {
				return
			}
		}
	case record.Selector:
		p.Set(m.Options()[r.IntN(len(m.Options()))])
	default:
		p.Set([]string{"A50", "B240", "AX", "A99999999999999999999", "2026-03-09T14:05:00Z", "-"}[r.IntN(6)])
	}
	switch r.IntN(12) {
	case 0:
		p.Set("?")
	case 1:
		p.Set("!x")
	}
}

func TestHostileRecords(t *testing.T) {
	rounds := 2000
	if testing.Short() {
		rounds = 500
	}
	for seed := range uint64(rounds) {
		r := rand.New(rand.NewPCG(seed, 7))
		f := record.NewFan()
		switch seed % 3 {
		case 0:
			f = demo(t) // a sound record with some places spoilt
		case 1:
			f = fan(t, bench+"&old.speed=690rpm&old.amps-1=5.5A&old.motor-power=2hp&old.motor-amps=6.6A")
		}
		for range r.IntN(3) {
			f.NewTrial()
			f.NewWire()
		}
		spoil := 0.05 + r.Float64()*0.9
		for _, p := range f.Places() {
			if r.Float64() < spoil*spoil {
				throw(r, p)
			}
		}
		check(t, f)
		if t.Failed() {
			t.Fatalf("seed %d: %s", seed, f.Fragment())
		}
	}
}

// A place spoilt one at a time: every answer keeps to its states.
func TestEveryPlaceSpoilt(t *testing.T) {
	for key := range demo(t).Places() {
		for _, text := range []string{"", "?", "!x"} {
			f := demo(t)
			f.NewTrial()
			f.NewWire()
			f.Place(key).Set(text)
			check(t, f)
			if t.Failed() {
				t.Fatalf("%s %q", key, text)
			}
		}
	}
}

func FuzzSheet(f *testing.F) {
	f.Add(demo(f).Fragment())
	f.Add(bench + "&trial.a.turns=2.5&trial.a.speed=691rpm&trial.a.amps-1=5A")
	f.Add(swap + "&want.speed=760rpm&want.goal=power&want.power=1hp&coldest-air=-20F")
	f.Add(everyOrigin + "&hood.listing=unlisted&hood.kind=wall&hood.duty=light&hood.length=7ft")
	f.Add(link)
	f.Add(checked + "&new.belt-number=A48&new.travel-toward=1in&new.travel-away=1in&new.belt-rating=1hp&trial.a.belt-age=new&trial.a.belt-force=3lbf&trial.a.belt-deflection=3/16in&trial.a.belt-frequency=40Hz&trial.a.alignment-gap=0.1in")
	f.Fuzz(func(t *testing.T, fragment string) {
		texts, _ := record.ParseFragment(fragment)
		fan := record.NewFan()
		fan.Apply(texts)
		check(t, fan)
	})
}
