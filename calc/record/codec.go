package record

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"maps"
	"slices"
	"strings"
)

// Texts returns every place that is not unknown, as key and canonical text, and what
// is carried along for a later version.
func (f *Fan) Texts() map[string]string {
	m := map[string]string{}
	for k, p := range f.Places() {
		if p.State() != Unknown {
			m[k] = p.Text()
		}
	}
	maps.Copy(m, f.carried())
	return m
}

// A Problem is a part of foreign text that was not taken.
type Problem struct {
	Key  string
	Text string
	Err  error
}

// Problems of a key: no place has it; or its row is one more than the list
// holds.
var (
	ErrKey  = errors.New("unknown key")
	ErrFull = errors.New("the list is full")
)

// Apply puts canonical texts into their places and reports what could not be
// taken, in the order of the keys; a place whose text is refused stays as it
// was. A bare key of a side means the old one's. Rows that don't exist are
// started. What a later version may have written is carried along, and reported with
// [ErrLater].
func (f *Fan) Apply(texts map[string]string) []Problem {
	var problems []Problem
	keys := slices.Sorted(maps.Keys(texts))
	started := map[string]bool{}
	for _, k := range keys {
		if row := rowOf(k); f.startRow(row) {
			started[row] = true
		}
	}
	index := maps.Collect(f.Places())
	for _, k := range keys {
		p, key := index[k], k
		if p == nil && index["old."+k] != nil {
			key = "old." + k
			p = index[key]
		}
		if p == nil {
			err := ErrKey
			switch {
			case f.full(rowOf(k)):
				err = ErrFull
			case f.carry(k, texts[k]):
				err = ErrLater
			}
			problems = append(problems, Problem{k, clip(texts[k], longestWord), err})
			continue
		}
		before := p.Text()
		if err := p.Set(texts[k]); err != nil {
			if ofLater(err) && f.carry(key, texts[k]) {
				before, err = "", ErrLater
			}
			problems = append(problems, Problem{k, clip(texts[k], longestWord), err})
			restore(p, before)
			continue
		}
		if p.State() != Unknown {
			delete(started, rowOf(k)) // it holds something and stays
		}
	}
	for row := range started {
		f.removeRow(row)
	}
	return problems
}

// restore gives a place a text it had before, which it therefore takes.
func restore(p Place, text string) {
	if err := p.Set(text); err != nil {
		panic(fmt.Sprintf("record: %q was taken before: %v", text, err))
	}
}

// stored is the outer shape of a stored fan.
type stored struct {
	Form int               `json:"form"`
	Fan  map[string]string `json:"fan"`
}

// largest is the size of the largest stored fan that is read.
const largest = 256 << 10

// Errors of a stored fan that can't be read at all.
var (
	ErrTooLarge = errors.New("record: too large")
	ErrForm     = errors.New("record: no form")
)

// Marshal returns the stored form of f: JSON with keys in order. It refuses a
// fan of a later form.
func (f *Fan) Marshal() ([]byte, error) {
	if f.ReadOnly() {
		return nil, fmt.Errorf("%w: %d can be read only", ErrForm, f.form)
	}
	known := make([]text, 0, 128)
	for k, t := range f.carried() {
		known = append(known, text{k, t})
	}
	for k, p := range f.Places() {
		if p.State() != Unknown {
			known = append(known, text{k, p.Text()})
		}
	}
	slices.SortFunc(known, func(a, b text) int { return strings.Compare(a.key, b.key) })
	data := fmt.Appendf(make([]byte, 0, 32*(len(known)+1)), `{"form":%d,"fan":{`, Form)
	for i, t := range known {
		if i > 0 {
			data = append(data, ',')
		}
		data = append(append(append(data, '"'), t.key...), `":`...)
		data = appendJSON(data, t.text)
	}
	return append(data, "}}"...), nil
}

type text struct{ key, text string }

// appendJSON appends a text as JSON. Most hold nothing to be escaped, and a record is
// written at every stroke.
func appendJSON(data []byte, text string) []byte {
	for i := range len(text) {
		if c := text[i]; c < ' ' || c > '~' || c == '"' || c == '\\' || c == '<' || c == '>' || c == '&' {
			escaped, _ := json.Marshal(text) // a text can always be written
			return append(data, escaped...)
		}
	}
	data = append(append(data, '"'), text...)
	return append(data, '"')
}

// Unmarshal reads a stored fan and reports the parts that were not taken. A
// fan of a later form is read as far as it is understood and is read-only.
func Unmarshal(data []byte) (*Fan, []Problem, error) {
	if len(data) > largest {
		return nil, nil, ErrTooLarge
	}
	var s stored
	d := json.NewDecoder(bytes.NewReader(data))
	if err := d.Decode(&s); err != nil {
		return nil, nil, fmt.Errorf("record: %w", err)
	}
	if _, err := d.Token(); err != io.EOF {
		return nil, nil, errors.New("record: more than one value")
	}
	if s.Form < 1 || s.Fan == nil {
		return nil, nil, ErrForm
	}
	f := NewFan()
	problems := f.Apply(s.Fan)
	f.form = s.Form
	return f, problems, nil
}

// Clone returns a copy of f.
func (f *Fan) Clone() *Fan {
	c := NewFan()
	c.applyOwn(f.Texts())
	c.form = f.form
	return c
}

// applyOwn is [Fan.Apply] of texts that a fan of this library has given.
func (f *Fan) applyOwn(texts map[string]string) {
	for _, p := range f.Apply(texts) {
		if p.Err != ErrLater {
			panic("record: own text refused: " + p.Key + " " + p.Err.Error())
		}
	}
}

// Empty tells whether nothing is known of f, and nothing carried along.
func (f *Fan) Empty() bool {
	if len(f.later) > 0 {
		return false
	}
	for _, p := range f.Places() {
		if p.State() != Unknown {
			return false
		}
	}
	return true
}

// Fragment returns the known places as the fragment of a link, without "#":
// key=text&key=text, in the order of [Fan.Places], and behind them what is carried along
// for a later version. Garbled text stays out, and notes of more than 120 characters.
func (f *Fan) Fragment() string {
	var b strings.Builder
	put := func(key, text string) {
		if b.Len() > 0 {
			b.WriteByte('&')
		}
		b.WriteString(key)
		b.WriteByte('=')
		b.WriteString(escape(text))
	}
	for k, p := range f.Places() {
		if p.State() != Unknown && isShared(p) {
			put(k, p.Text())
		}
	}
	carried := f.carried()
	for _, k := range slices.Sorted(maps.Keys(carried)) {
		if isSharedText(carried[k]) {
			put(k, carried[k])
		}
	}
	return b.String()
}
