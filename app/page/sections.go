package page

import (
	"slices"
	"strings"

	"roofside/calc/record"
)

// A part is a section of a page with its fields in order.
type part struct {
	id     string
	fields []string
}

// wiredMotor are the fields of the new motor that its circuit goes by.
var wiredMotor = []string{"supply", "new.phases", "new.motor-power", "new.motor-volts", "new.motor-amps", "new.motor-speed"}

// parts lists which field stands in which section, so that a way to a field
// can open the section it stands in.
var parts = []part{
	{"job", []string{"name", "supply", "mount", "same-wheel"}},
	{"target", []string{"target.speed", "target.tag-speed", "target.rated-speed", "target.use", "target.over", "old.belt-healthy"}},
	{"old", []string{"old.motor-speed", "old.motor-frequency", "old.frequency", "old.motor-tachometer", "old.speed",
		"old.count-fan-turns", "old.count-motor-turns", "old.section", "old.groove", "old.sheave",
		"old.motor-sheave", "old.motor-sheave-outside", "old.motor-sheave-gap", "old.groove-angle",
		"old.anchor-turns", "old.anchor-pitch", "old.second-anchor-turns", "old.second-anchor-pitch", "old.turns",
		"old.fan-sheave", "old.fan-sheave-outside", "old.center-distance"}},
	{"amps", []string{"old.motor-power", "old.motor-volts", "old.motor-amps", "old.no-load-amps",
		"old.amps-1", "old.amps-2", "old.amps-3", "old.volts-12", "old.volts-23", "old.volts-31", "old.air-temperature", "old.tipped-up", "old.run-at", "old.clamp-turns", "old.service-factor-amps", "old.service-factor"}},
	{"plate", []string{"new.motor-power", "new.motor-volts", "new.motor-amps", "new.service-factor-amps", "new.service-factor", "new.motor-speed",
		"new.power-factor", "new.efficiency", "new.motor-frequency", "new.frequency", "new.motor-tachometer", "new.no-load-amps", "new.wheel-max-speed", "coldest-air"}},
	{"new", []string{"new.section", "new.sheave", "new.anchor-turns", "new.anchor-pitch", "new.second-anchor-turns", "new.second-anchor-pitch",
		"new.turns", "new.most-turns", "new.flange-lead", "new.motor-sheave", "new.motor-sheave-outside", "new.motor-sheave-gap", "new.groove-angle",
		"new.fan-sheave", "new.fan-sheave-outside"}},
	{"base", []string{"new.center-distance", "new.travel-toward", "new.travel-away", "new.belt-number"}},
	{"rotation", []string{"new.rotation", "new.rotation-low"}},
	{"roll", []string{"new.leads"}},
	{"overload", []string{"new.protection", "new.restart", "new.overload-dial", "new.rise-40"}},
	{"meters", []string{"meter.voltmeter-accuracy", "meter.voltmeter-digits", "meter.clamp-accuracy", "meter.clamp-digits"}},
	{"reference", []string{"target.rated-power", "target.airflow", "target.pressure", "target.power", "target.air-temperature", "old.airflow", "old.pressure", "altitude"}},
	{"belt", []string{"new.belt-number", "new.belts", "new.groove", "new.belt-listed-force", "new.belt-rating", "new.belt-mass"}},
	{"shaft", []string{"same-wheel", "target.speed", "target.power", "target.rated-speed", "target.rated-power", "target.air-temperature"}},
	{"want", []string{"want.goal", "want.speed", "want.airflow", "want.pressure", "want.power", "want.air-temperature"}},
	{"hood", []string{"hood.listing", "hood.label-airflow", "hood.kind", "hood.duty", "hood.length", "hood.airflow",
		"hood.duct-width", "hood.duct-height", "hood.duct-diameter", "hood.makeup-airflow", "hood.transfer-airflow", "hood.space-pressure"}},
	{"opening", []string{"opening.kind", "opening.conduit", "opening.size", "raceway.conduit", "raceway.size", "raceway.fittings", "raceway.place", "raceway.use", "raceway.length"}},
	{"circuit", []string{"new.minimum-circuit-ampacity", "new.maximum-overcurrent", "circuit.material", "circuit.terminals", "hottest-air",
		"raceway.exposure", "raceway.height", "circuit.device", "circuit.device-rating", "circuit.length", "code-edition"}},
	{"fit", fitKeys()},
	{"closing", []string{"name", "handover.by", "handover.on", "handover.belt-due", "handover.notes"}},
	{"wired-motor", wiredMotor},
	{"box", []string{"box.size", "box.volume", "box.devices", "box.clamps"}},
}

// fitKeys are the fields that decide whether the new fan fits, of both fans.
func fitKeys() (keys []string) {
	for _, name := range fitNames {
		keys = append(keys, "old."+name, "new."+name)
	}
	return keys
}

// wireOf returns the row of conductors that a key belongs to.
func wireOf(key string) (id string, ok bool) {
	rest, ok := strings.CutPrefix(key, "wire.")
	id, _, _ = strings.Cut(rest, ".")
	return id, ok
}

// sectionsOf returns the sections that the field with a key stands in: pages have
// their own, and a field may stand on more than one.
func sectionsOf(key string) []string {
	if rest, ok := strings.CutPrefix(key, "trial."); ok {
		id, _, _ := strings.Cut(rest, ".")
		return []string{"readings", "reading " + id}
	}
	if name, ok := strings.CutPrefix(key, "check."); ok {
		for _, g := range record.CheckGroups() {
			if slices.Contains(g.Checks, strings.TrimSuffix(name, "-why")) {
				return []string{"part " + g.Name}
			}
		}
	}
	if row, ok := wireOf(key); ok {
		if name := fieldName(key); name == "where" || name == "box-count" {
			return []string{"box"}
		}
		return []string{"wires", "wire " + row}
	}
	var ids []string
	for _, p := range parts {
		if slices.Contains(p.fields, key) {
			ids = append(ids, p.id)
		}
	}
	return ids
}

// unfold opens the sections that a field stands in.
func (b *bench) unfold(key string) {
	for _, id := range sectionsOf(key) {
		b.open[id] = true
	}
}
