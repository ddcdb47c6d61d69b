package record

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strings"
)

// A Roof is the fans of one roof in the order they are served in, as a file
// carries them from one device to another. The file's schema is published as
// web/roof.schema.json.
type Roof struct {
	Name string
	Fans []*Fan
}

// roofFile is the shape of the file.
type roofFile struct {
	Form int     `json:"form"`
	Roof *string `json:"roof"`
	Fans []texts `json:"fans"`
}

// texts are the keys and canonical texts of one fan in a file; a key that stands
// twice is reported, and the first is used.
type texts struct {
	held  map[string]string
	twice []Problem
}

// MarshalJSON writes the keys in order.
func (t texts) MarshalJSON() ([]byte, error) { return json.Marshal(t.held) }

// UnmarshalJSON reads an object of texts.
func (t *texts) UnmarshalJSON(data []byte) error {
	if err := json.Unmarshal(data, &t.held); err != nil || t.held == nil { // the shape, and that each is a text
		return errors.Join(ErrForm, err)
	}
	d := json.NewDecoder(bytes.NewReader(data))
	seen := map[string]bool{}
	var tokens [2]json.Token
	for i := -1; ; i++ {
		token, err := d.Token()
		if err != nil || token == json.Delim('}') {
			return err
		}
		if i < 0 { // the bracket
			continue
		}
		if tokens[i%2] = token; i%2 == 0 {
			continue
		}
		key := tokens[0].(string)
		text, _ := tokens[1].(string) // null is no text, as above
		if seen[key] {
			t.twice = append(t.twice, Problem{clip(key, longestWord), clip(text, longestWord), ErrTwice})
			continue
		}
		seen[key], t.held[key] = true, text
	}
}

// MostFans is how many fans the file of a roof holds.
const MostFans = 200

// largestRoof is the size of the largest file that is written or read: that of so many
// fans with every place filled.
const largestRoof = 8 << 20

// ErrNewer is returned for a file of a later form: its reader would lose what it
// doesn't know.
var ErrNewer = errors.New("record: written by a later version")

// Marshal returns the file of r, in lines, with keys in order. It refuses fans
// of a later form, which would be cut short, and what its reader would refuse.
func (r *Roof) Marshal() ([]byte, error) {
	file := roofFile{Form: Form, Roof: &r.Name, Fans: []texts{}}
	for _, f := range r.Fans {
		if f.ReadOnly() {
			return nil, fmt.Errorf("%w: form %d", ErrNewer, f.form)
		}
		file.Fans = append(file.Fans, texts{held: f.Texts()})
	}
	data, err := json.MarshalIndent(file, "", "\t")
	if len(file.Fans) > MostFans || len(data) > largestRoof {
		return nil, fmt.Errorf("%w: %d fans, %d bytes", ErrTooLarge, len(file.Fans), len(data))
	}
	return data, err
}

// UnmarshalRoof reads the file of a roof, of at most 8 MB and 200 fans, and
// reports the parts of each fan that were not taken.
func UnmarshalRoof(data []byte) (*Roof, [][]Problem, error) {
	if len(data) > largestRoof {
		return nil, nil, ErrTooLarge
	}
	var file roofFile
	d := json.NewDecoder(bytes.NewReader(bytes.TrimPrefix(data, []byte("\ufeff")))) // as editors put it before a file
	if err := d.Decode(&file); err != nil {
		return nil, nil, fmt.Errorf("record: %w", err)
	}
	if _, err := d.Token(); err != io.EOF {
		return nil, nil, errors.New("record: more than one value")
	}
	switch {
	case file.Form > Form:
		return nil, nil, ErrNewer
	case file.Form < 1 || file.Roof == nil || file.Fans == nil:
		return nil, nil, ErrForm
	case len(file.Fans) > MostFans:
		return nil, nil, ErrTooLarge
	}
	r := &Roof{Name: strings.TrimSpace(clip(cleaned(*file.Roof), longestWord))}
	var problems [][]Problem
	for _, t := range file.Fans {
		f := NewFan()
		problems = append(problems, append(t.twice, f.Apply(t.held)...))
		r.Fans = append(r.Fans, f)
	}
	return r, problems, nil
}
