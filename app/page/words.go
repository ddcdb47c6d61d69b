package page

import (
	"errors"
	"strings"
	"unicode"
	"unicode/utf8"

	"roofside/app/widget"
	"roofside/calc/limit"
	"roofside/calc/number"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// label names a place without whose it is: the last part of its key, or the
// whole key where that would be ambiguous.
func (b *bench) label(key string) string {
	if name, ok := strings.CutPrefix(key, "check."); ok {
		if strings.HasSuffix(name, "-why") {
			return b.T("record.why")
		}
		return b.T("item." + name)
	}
	if b.words.Has("place." + key) {
		return b.T("place." + key)
	}
	return b.T("place." + key[strings.LastIndexByte(key, '.')+1:])
}

// counted is a sentence with a count in it, which is another for one.
func (b *bench) counted(one, many string, n int, pairs ...string) string {
	if n == 1 {
		return b.T(one, pairs...)
	}
	return b.T(many, append(pairs, "n", b.whole(n))...)
}

// side names whose value a key is.
func (b *bench) side(key string) string {
	prefix, rest, ok := strings.Cut(key, ".")
	if !ok {
		return ""
	}
	if prefix == "trial" {
		id, _, _ := strings.Cut(rest, ".")
		for i, t := range b.Fan.Trials {
			if t.ID == id {
				return b.T("side.trial", "n", b.Locale.WriteFixed(float64(i+1), 0))
			}
		}
	}
	if id, ok := wireOf(key); ok {
		for i, w := range b.Fan.Wires {
			if w.ID == id {
				return b.T("side.wire", "n", b.Locale.WriteFixed(float64(i+1), 0))
			}
		}
	}
	if !b.words.Has("side." + prefix) {
		return ""
	}
	return b.T("side." + prefix)
}

// full names a place with whose it is.
func (b *bench) full(key string) string {
	if s := b.side(key); s != "" {
		return s + ": " + lowerFirst(b.label(key))
	}
	return b.label(key)
}

// lowerFirst makes a label part of a sentence; what is all capitals stays.
func lowerFirst(s string) string {
	first, size := utf8.DecodeRuneInString(s)
	if second, _ := utf8.DecodeRuneInString(s[size:]); unicode.IsLower(second) {
		return string(unicode.ToLower(first)) + s[size:]
	}
	return s
}

// fault words an error of a number or of a formula.
func (b *bench) fault(err error) string {
	var n *number.Error
	var l *limit.Error
	switch {
	case errors.As(err, &n):
		return b.T("number."+string(n.Rule), "text", n.Text)
	case errors.As(err, &l):
		return b.T("limit." + string(l.Rule))
	case errors.Is(err, record.ErrKey):
		return b.T("problem.key")
	case errors.Is(err, record.ErrFull):
		return b.T("problem.full", "n", b.Locale.WriteFixed(record.MostWires, 0))
	case errors.Is(err, record.ErrEscape):
		return b.T("problem.escape")
	case errors.Is(err, record.ErrPart):
		return b.T("problem.part")
	case errors.Is(err, record.ErrTwice):
		return b.T("problem.twice")
	case errors.Is(err, record.ErrLong):
		return b.T("problem.long")
	case errors.Is(err, record.ErrDamaged):
		return b.T("problem.damaged")
	case errors.Is(err, record.ErrNewer):
		return b.T("problem.newer")
	}
	return err.Error()
}

func (b *bench) problem(p record.Problem) string {
	key := p.Key
	if p.Text != "" {
		key += "=" + p.Text
	}
	return key + ": " + b.fault(p.Err)
}

var levels = map[sheet.Level]widget.Level{sheet.Within: widget.Within, sheet.Unjudged: widget.Unjudged, sheet.Watch: widget.Watch, sheet.Stop: widget.Stop}

// verdict words a verdict.
func (b *bench) verdict(name string, v sheet.Verdict) *widget.Verdict {
	level := levels[v.Level]
	return &widget.Verdict{Name: name, Level: level, Word: b.T("level." + string(level)), Reason: b.reason(v), Source: b.sourceOf(v.Method), Link: b.entry(v.Method)}
}

// brief words a verdict for the plate that stays in view, where there is no room
// for the reason: the level, and which limit decides it.
func (b *bench) brief(name string, v sheet.Verdict) *widget.Verdict {
	w := b.verdict(name, v)
	w.Reason, w.Source = "", ""
	if v.Level != sheet.Within {
		w.Reason = b.T("rule." + string(v.Rule))
	}
	return w
}

func (b *bench) reason(v sheet.Verdict) string {
	if v.Of != nil {
		of := v.Of
		v.Of = nil
		return b.side(b.keyOf(&of.Size)) + ": " + lowerFirst(b.reason(v))
	}
	if v.Level == sheet.Unjudged {
		s := b.unjudged(v)
		if v.Less && v.Limit.Scale != nil {
			s += " " + b.T("derated")
		}
		return s
	}
	key := "rule." + string(v.Rule) + "." + string(levels[v.Level])
	s := b.T(key, "value", b.figure(v.Value), "limit", b.figure(v.Limit), "left", b.figure(v.Left))
	if v.Most.Scale != nil {
		s += " " + b.T("derate.amps", "most", b.figure(v.Most))
	}
	if v.Near {
		s += " " + b.T("near")
	}
	if v.Cold {
		s += " " + b.T("cold")
	}
	if v.Less {
		s += " " + b.T("derated")
	}
	if len(v.Wanted) > 0 {
		s += " " + b.missing(v.Wanted)
	}
	return s
}

// missing says what is not there yet; where everything is, that surer figures are
// wanted. What is there is not asked for beside what isn't.
func (b *bench) missing(wanted []record.Place) string {
	if known(wanted) {
		return b.T("settled", "places", b.list(wanted))
	}
	var open []record.Place
	for _, p := range wanted {
		if p.State() != record.Known {
			open = append(open, p)
		}
	}
	return b.T("wanted", "places", b.list(open))
}

// unjudged says why nothing is said: something is wrong, or missing, or the band
// reaches across the limit.
func (b *bench) unjudged(v sheet.Verdict) string {
	what, missing := b.T("rule."+string(v.Rule)), ""
	if v.Fault != nil {
		return what + ": " + b.faulty(v.Fault)
	}
	if len(v.Wanted) > 0 {
		missing = b.missing(v.Wanted)
	}
	switch own := "rule." + string(v.Rule) + ".unjudged"; {
	case v.Rule == sheet.RuleReadings:
		return b.T(own, "force", b.figure(v.Value), "frequency", b.figure(v.Limit))
	case v.Value.Scale != nil && v.Limit.Scale != nil:
		return strings.TrimSpace(b.T("unjudged.close", "what", what, "value", b.figure(v.Value), "limit", b.figure(v.Limit)) + " " + missing)
	case missing != "":
		return what + ": " + lowerFirst(missing)
	case b.words.Has(own):
		return b.T(own)
	}
	return b.T("unjudged.band", "what", what)
}

func (b *bench) figure(f sheet.Figure) string {
	if f.Scale == nil {
		return ""
	}
	s, label := b.Figure(f.Scale, f.Base)
	return strings.TrimSpace(s + " " + label)
}

// Figure writes a computed value as the desk does, its unit in the language.
func (b *bench) Figure(s *unit.Scale, base float64) (figure, label string) {
	figure, label = b.Desk.Figure(s, base)
	if label == "turns" && base > 0 && base <= 1 {
		label = "turn"
	}
	return figure, b.unit(label)
}

// unit words the label of a unit; a sign is the same in every language.
func (b *bench) unit(label string) string {
	if b.words.Has("unit." + label) {
		return b.T("unit." + label)
	}
	return label
}

// amount writes canonical text in the language.
func (b *bench) amount(canonical string) string {
	s := b.Locale.Localize(canonical)
	at := strings.LastIndexByte(s, ' ') + 1
	return s[:at] + b.unit(s[at:])
}

// list names places, at most three.
func (b *bench) list(ps []record.Place) string {
	var names []string
	for _, p := range ps[:min(len(ps), 3)] {
		names = append(names, b.named(p))
	}
	return strings.Join(names, ", ") + b.others(len(ps)-3)
}

// named names a place within a sentence.
func (b *bench) named(p record.Place) string { return lowerFirst(question(b.full(b.keyOf(p)))) }

// question takes the mark off a label that asks.
func question(label string) string { return strings.Trim(label, "?¿") }

// known tells whether all of some places hold something, so that only a surer
// value would help.
func known(ps []record.Place) bool {
	for _, p := range ps {
		if p.State() != record.Known {
			return false
		}
	}
	return len(ps) > 0
}

// others says how many were left out.
func (b *bench) others(n int) string {
	if n <= 0 {
		return ""
	}
	return " " + b.T("wanted.more", "n", b.Locale.WriteFixed(float64(n), 0))
}

// first names the first place that is wanted, where there is no room for all.
func (b *bench) first(ps []record.Place) string {
	if len(ps) == 0 {
		return ""
	}
	return lowerFirst(question(b.label(b.keyOf(ps[0])))) + b.others(len(ps)-1)
}

func (b *bench) formula(m source.Method) string { return b.words.Method("formula", m.Key, m.Formula) }
func (b *bench) valid(m source.Method) string {
	s := b.words.Method("valid", m.Key, m.Valid)
	if d := source.DecisionOf(m.Key); d != source.NoLimit {
		s += " " + b.T("decision."+string(d))
	}
	return s
}

// entries begins the fragments that lead to a method on the page of sources.
const entries = "m-"

// entry is the address of a method in the register. A frame has no way back from it.
func (b *bench) entry(method string) string {
	if method == "" || b.embedded {
		return ""
	}
	return href("/sources/#" + entries + method)
}

// entryOf tells whether a fragment leads to a method, and carries no record.
func entryOf(fragment string) bool {
	key, ok := strings.CutPrefix(fragment, entries)
	if ok {
		_, ok = source.Lookup(key)
	}
	return ok
}

// sourceOf names where a method stands, and how that is known.
func (b *bench) sourceOf(method string) string {
	m, ok := source.Lookup(method)
	if !ok {
		return ""
	}
	var refs []string
	for _, r := range m.Refs {
		refs = append(refs, strings.TrimSuffix(r.Title+", "+b.words.Method("where", r.Where, r.Where), ", "))
	}
	known := b.T("known." + string(m.Known))
	if len(refs) == 0 {
		return known
	}
	return strings.Join(refs, "; ") + " (" + known + ")"
}
