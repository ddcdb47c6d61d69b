package sheet_test

import (
	"fmt"
	"strconv"
	"testing"

	"roofside/calc/internal/published"
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// typed writes a case's input as a record takes it.
func wordOf(c published.Case, name string) string {
	v := c.Inputs[name]
	switch {
	case v.Word != "":
		return v.Word
	case v.Unit == "" || v.Unit == "1":
		return strconv.FormatFloat(v.Number, 'f', -1, 64)
	}
	return strconv.FormatFloat(v.Number, 'f', -1, 64) + " " + v.Unit
}

// dry is a circuit indoors at the 30 °C of the table, its wires copper THWN-2.
const dry = "supply=three-phase&raceway.place=indoors&raceway.conduit=EMT&raceway.size=1&circuit.material=copper&hottest-air=30C"

// row writes one row of conductors.
func row(id, count, size, insulation, role string) string {
	return fmt.Sprintf("&wire.%s.count=%s&wire.%s.size=%s&wire.%s.insulation=%s&wire.%s.role=%s", id, count, id, size, id, insulation, id, role)
}

// motor is a motor's circuit with three wires of a size.
func wiredMotor(c published.Case, size string) string {
	return dry + "&new.motor-power=" + wordOf(c, "power") + "&new.motor-volts=" + wordOf(c, "volts") + row("a", "3", size, "THWN-2", "circuit")
}

func truth(b bool) float64 {
	if b {
		return 1
	}
	return 0
}

// racewayCases answer published cases from a record. They are those whose
// inputs a record holds; the formulas have been held against all of them.
var racewayCases = map[string]func(t *testing.T, c published.Case) published.Results{
	"B06": tableCurrent, "B09": tableCurrent, "B10": tableCurrent, "B13": tableCurrent,
	"B15": func(t *testing.T, c published.Case) published.Results {
		f := fan(t, wiredMotor(c, "12")+"&new.motor-speed=1725rpm")
		set(t, f, "supply", "single-phase")
		return published.Results{"current": sheet.CircuitOf(f).Current.Value}
	},
	"B18": func(t *testing.T, c published.Case) published.Results {
		f := fan(t, wiredMotor(c, wordOf(c, "size"))+"&new.phases=3")
		at60 := sheet.CircuitOf(f).Carried
		enough60 := sheet.CircuitOf(f).WireVerdict.Level == sheet.Within
		least := sheet.CircuitOf(f).Least
		set(t, f, "circuit.terminals", "75")
		at75 := sheet.CircuitOf(f).Carried
		return published.Results{
			"current": sheet.CircuitOf(f).Current.Value, "demand": sheet.CircuitOf(f).Demand.Value,
			"at_60": at60.Value, "enough_at_60": truth(enough60), "at_75": at75.Value, "enough_at_75": truth(sheet.CircuitOf(f).WireVerdict.Level == sheet.Within),
			"least_at_60": gauge(t, string(least.Value.Size)),
		}
	},
	"R05": func(t *testing.T, c published.Case) published.Results {
		f := fan(t, wiredMotor(c, "12")+"&circuit.device=inverse-time-breaker")
		return published.Results{
			"current": sheet.CircuitOf(f).Current.Value, "demand": sheet.CircuitOf(f).Demand.Value, "size": gauge(t, string(sheet.CircuitOf(f).Least.Value.Size)),
			"breaker": sheet.CircuitOf(f).Current.Value * unit.Current(term(t, sheet.CircuitOf(f).Device.Steps, "p")), "breaker_rating": sheet.CircuitOf(f).Device.Value,
		}
	},
	"C09": onRoof, "C10": onRoof,
	"C19": drop, "C21": drop,
	"D20": mixedFill, "D21": mixedFill, "D22": mixedFill, "D23": mixedFill,
	"D10": mostAlike, "D12": mostAlike, "D13": mostAlike, "D17": mostAlike,
	"D26": jam, "D27": jam, "D28": jam,
	"D33": func(t *testing.T, c published.Case) published.Results {
		f := fan(t, "code-edition="+wordOf(c, "edition")+"&box.volume="+wordOf(c, "volume")+"&box.devices=0&box.clamps=no"+
			row("a", wordOf(c, "count"), wordOf(c, "wire"), "THHN", "circuit")+row("b", wordOf(c, "grounds"), wordOf(c, "wire"), "bare", "ground"))
		return published.Results{"needed": sheet.BoxNeeded(f).Value, "fits": truth(sheet.BoxVerdict(f).Level == sheet.Within)}
	},
	"R04": func(t *testing.T, c published.Case) published.Results {
		f := fan(t, "code-edition="+wordOf(c, "edition")+"&box.clamps=no&box.devices="+wordOf(c, "devices")+
			row("a", wordOf(c, "conductors"), wordOf(c, "wire"), "THHN", "circuit")+row("b", wordOf(c, "grounds"), wordOf(c, "wire"), "THHN", "ground"))
		return published.Results{"needed": sheet.BoxNeeded(f).Value}
	},
	"D40": hangingFree, "D41": hangingFree,
	"D60": func(t *testing.T, c published.Case) published.Results {
		f := fan(t, "new.motor-volts=208V&opening.kind=hub&opening.size="+wordOf(c, "hub")+"&raceway.conduit=RMC&raceway.size="+wordOf(c, "fitting"))
		a := sheet.Adapter(f)
		if !a.Known() || len(a.Value.Parts) != 1 || a.Value.Parts[0].Kind != raceway.ReducingBushing {
			t.Fatalf("%+v", a)
		}
		male, female := a.Value.Parts[0].From.Thread, a.Value.Parts[0].To.Thread
		smaller := false
		for _, k := range a.Value.Conditions {
			smaller = smaller || k == raceway.SmallerRules
		}
		return published.Results{"male_per_inch": male.PerInch, "male": male.Outside, "female_per_inch": female.PerInch, "female": female.Outside, "smaller_rules": truth(smaller)}
	},
	"D61": func(t *testing.T, c published.Case) published.Results {
		f := fan(t, "supply=three-phase&circuit.material=copper&raceway.exposure=rooftop&raceway.use=run&raceway.conduit="+wordOf(c, "conduit")+"&raceway.size="+wordOf(c, "size")+
			"&code-edition="+wordOf(c, "edition")+"&hottest-air="+wordOf(c, "outdoor")+"&raceway.height="+wordOf(c, "height")+";within 0in"+
			row("a", "3", wordOf(c, "wire"), wordOf(c, "insulation"), "circuit")+row("b", "1", wordOf(c, "wire"), wordOf(c, "insulation"), "ground"))
		at60 := sheet.CircuitOf(f).Carried
		set(t, f, "circuit.terminals", "75")
		at75 := sheet.CircuitOf(f).Carried
		set(t, f, "circuit.terminals", "90")
		corrected := sheet.CircuitOf(f).Carried // the cap of 30 A is above it
		return published.Results{
			"fill": sheet.FillShare(f).Value, "factor": term(t, at60.Steps, "k(t)"), "corrected": corrected.Value, "at_60": at60.Value, "at_75": at75.Value,
		}
	},
}

func TestPublishedCasesFromARecord(t *testing.T) {
	cases, err := published.Load("../../testdata/published/electrical-raceway.csv")
	if err != nil {
		t.Fatal(err)
	}
	run := 0
	for _, c := range cases {
		answer := racewayCases[c.ID]
		if answer == nil {
			continue
		}
		run++
		t.Run(c.ID, func(t *testing.T) {
			for _, err := range published.Compare(c, answer(t, c)) {
				t.Errorf("%s: %v", c.Source, err)
			}
		})
	}
	if run != len(racewayCases) {
		t.Errorf("%d cases run, %d answered here", run, len(racewayCases))
	}
}

func tableCurrent(t *testing.T, c published.Case) published.Results {
	return published.Results{"current": sheet.CircuitOf(fan(t, wiredMotor(c, "12"))).Current.Value}
}

func onRoof(t *testing.T, c published.Case) published.Results {
	f := fan(t, "code-edition="+wordOf(c, "edition")+"&circuit.material=copper&circuit.terminals=90&raceway.exposure=rooftop&raceway.height="+wordOf(c, "height")+";within 0in&hottest-air="+wordOf(c, "outdoor")+
		row("a", "3", wordOf(c, "size"), wordOf(c, "insulation"), "circuit"))
	carried := sheet.CircuitOf(f).Carried
	adder := unit.TemperatureDifference(term(t, carried.Steps, "Δt"))
	return published.Results{
		"effective": published.In[unit.Temperature](c, "outdoor").Plus(adder), "factor": term(t, carried.Steps, "k(t)"), "corrected": carried.Value,
	}
}

// drop is asked by a motor whose plate stands for the current: one on a drive.
func drop(t *testing.T, c published.Case) published.Results {
	f := fan(t, "supply=drive&circuit.material=copper&raceway.conduit=EMT&new.motor-amps="+wordOf(c, "current")+"&new.motor-volts="+wordOf(c, "volts")+
		"&circuit.length="+wordOf(c, "length")+row("a", "3", wordOf(c, "size"), "THWN-2", "circuit"))
	return published.Results{"drop": sheet.CircuitOf(f).Drop.Value, "share": sheet.CircuitOf(f).DropShare.Value}
}

func mixedFill(t *testing.T, c published.Case) published.Results {
	f := fan(t, "raceway.conduit="+wordOf(c, "conduit")+"&raceway.size="+wordOf(c, "size")+"&raceway.use="+wordOf(c, "use")+"&raceway.length=24in"+
		row("a", wordOf(c, "count"), wordOf(c, "wire"), "THHN", "circuit")+row("b", "1", wordOf(c, "ground"), "THHN", "ground"))
	filling := sheet.Filling(f)
	return published.Results{
		"area": filling.Value.Area, "fill": sheet.FillShare(f).Value, "limit": filling.Value.Limit, "fits": truth(sheet.FillVerdict(f).Level == sheet.Within),
	}
}

// mostAlike is one and the room beside it.
func mostAlike(t *testing.T, c published.Case) published.Results {
	f := fan(t, "raceway.conduit="+wordOf(c, "conduit")+"&raceway.size="+wordOf(c, "size")+row("a", "1", wordOf(c, "wire"), wordOf(c, "insulation"), "circuit"))
	more, like := sheet.Room(f)
	if like == nil || like.ID != "a" {
		t.Fatalf("more of %v", like)
	}
	return published.Results{"most": 1 + float64(more.Value)}
}

func jam(t *testing.T, c published.Case) published.Results {
	f := fan(t, "raceway.conduit="+wordOf(c, "conduit")+"&raceway.size="+wordOf(c, "size")+row("a", "3", wordOf(c, "wire"), "THHN", "circuit"))
	ratio, verdict, three := sheet.Jam(f)
	if !three {
		t.Fatal("no three alike")
	}
	return published.Results{"plain": float64(ratio.Value), "oval": verdict.Limit.Base, "likely": truth(verdict.Level == sheet.Watch)}
}

func hangingFree(t *testing.T, c published.Case) published.Results {
	return published.Results{"most": sheet.HangingFree(fan(t, "raceway.conduit="+wordOf(c, "conduit")+"&raceway.size="+wordOf(c, "size"))).Value}
}

// term is a value put into a working.
func term(t *testing.T, s sheet.Steps, symbol string) float64 {
	t.Helper()
	for _, put := range s.Terms {
		if put.Symbol == symbol {
			return put.Base
		}
	}
	t.Fatalf("no %s in the working", symbol)
	return 0
}

func gauge(t *testing.T, size string) float64 {
	t.Helper()
	n, err := strconv.ParseFloat(size, 64)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// The record's words are the formulas' own.
func TestWordsOfWiringAreTheFormulas(t *testing.T) {
	same := func(name string, have []string, want ...string) {
		t.Helper()
		if fmt.Sprint(have) != fmt.Sprint(want) {
			t.Errorf("%s: %q, want %q", name, have, want)
		}
	}
	var boxes []string
	for _, b := range raceway.Boxes() {
		boxes = append(boxes, string(b.Shape)+" "+b.Size)
	}
	same("openings", record.OpeningKind("").Options(), words(raceway.EndKinds())...)
	same("trade sizes", record.TradeSize("").Options(), words(raceway.TradeSizes())...)
	same("conduits", record.Conduit("").Options(), words(raceway.Conduits())...)
	same("sites", record.Site("").Options(), string(raceway.Indoors), string(raceway.Outdoors))
	same("uses", record.RacewayUse("").Options(), string(raceway.Run), string(raceway.Nipple))
	same("fittings", record.Fittings("").Options(), string(raceway.FittingsInside), string(raceway.FittingsOutside))
	same("exposures", record.Exposure("").Options(), string(raceway.Shaded), string(raceway.Rooftop))
	same("wire sizes", record.WireSize("").Options(), words(raceway.WireSizes())...)
	same("insulations", record.Insulation("").Options(), words(raceway.Insulations())...)
	same("boxes", record.BoxSize("").Options(), boxes...)
	same("materials", record.Material("").Options(), words(raceway.Materials())...)
	same("devices", record.Device("").Options(), string(raceway.InverseTimeBreaker), string(raceway.TimeDelayFuse), string(raceway.NontimeFuse))
	same("editions", record.Edition("").Options(), words(raceway.Editions())...)
	var columns []string
	for _, c := range raceway.Columns() {
		columns = append(columns, strconv.Itoa(int(c)))
	}
	same("terminals", record.Terminals("").Options(), columns...)
}

func words[S ~string](all []S) []string {
	var s []string
	for _, x := range all {
		s = append(s, string(x))
	}
	return s
}
