package record

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
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
	Form int                 `json:"form"`
	Roof *string             `json:"roof"`
	Fans []map[string]string `json:"fans"`
}

const (
	largestRoof = 2 << 20
	mostFans    = 200
)

// ErrNewer is returned for a file of a later form: its reader would lose what it
// doesn't know.
var ErrNewer = errors.New("record: written by a later version")

// Marshal returns the file of r, in lines, with keys in order. It refuses fans
// of a later form, which would be cut short.
func (r *Roof) Marshal() ([]byte, error) {
	file := roofFile{Form: Form, Roof: &r.Name, Fans: []map[string]string{}}
	for _, f := range r.Fans {
		if f.ReadOnly() {
			return nil, fmt.Errorf("%w: form %d", ErrNewer, f.form)
		}
		file.Fans = append(file.Fans, f.Texts())
	}
	return json.MarshalIndent(file, "", "\t")
}

// UnmarshalRoof reads the file of a roof, of at most 2 MB and 200 fans, and
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
	case len(file.Fans) > mostFans:
		return nil, nil, ErrTooLarge
	}
	r := &Roof{Name: clip(*file.Roof, longestWord)}
	var problems [][]Problem
	for _, texts := range file.Fans {
		f := NewFan()
		problems = append(problems, f.Apply(texts))
		r.Fans = append(r.Fans, f)
	}
	return r, problems, nil
}
