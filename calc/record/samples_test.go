package record_test

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"strings"
	"testing"

	"roofside/calc/record"
)

var anyRow = regexp.MustCompile(`^(trial|wire)\.[a-z0-9]+\.`)

// sampled returns what is read by open of every stored sample, by its file.
func sampled(t *testing.T, pattern string, open func(data []byte) (fans []*record.Fan, again []byte, err error)) map[string]bool {
	t.Helper()
	files, err := filepath.Glob(pattern)
	if err != nil || len(files) == 0 {
		t.Fatal(files, err)
	}
	seen := map[string]bool{}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		fans, again, err := open(data)
		if err != nil {
			t.Errorf("%s: %v", file, err)
			continue
		}
		var was, is any
		if json.Unmarshal(data, &was) != nil || json.Unmarshal(again, &is) != nil || !reflect.DeepEqual(was, is) {
			t.Errorf("%s is written as\n%s", file, again)
		}
		for _, f := range fans {
			for key := range f.Texts() {
				seen[anyRow.ReplaceAllString(key, "$1.row.")] = true
			}
		}
	}
	return seen
}

// lacking are the keys that no sample holds.
func lacking(seen map[string]bool) (keys []string) {
	for key := range everything().Places() {
		if !seen[anyRow.ReplaceAllString(key, "$1.row.")] {
			keys = append(keys, key)
		}
	}
	return keys
}

// further writes one more sample; those that are there stay as they are.
func further(t *testing.T, pattern string, data []byte) {
	t.Helper()
	for n := 2; ; n++ {
		name := fmt.Sprintf(pattern, n)
		if _, err := os.Stat(name); err == nil {
			continue
		}
		if err := os.WriteFile(name, append(data, '\n'), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
}

// A stored record and a roof's file with each place that was ever published are kept,
// open without a complaint, and are written with the same texts. A new place comes with one
// more of each.
func TestEveryPlaceIsInAStoredRecord(t *testing.T) {
	for _, c := range []struct {
		files, next string
		open        func([]byte) ([]*record.Fan, []byte, error)
		write       func(*record.Fan) ([]byte, error)
	}{
		{"../../testdata/records/form1-*.json", "../../testdata/records/form1-every-place-%d.json",
			func(data []byte) ([]*record.Fan, []byte, error) {
				f, problems, err := record.Unmarshal(data)
				if err != nil || len(problems) > 0 {
					return nil, nil, fmt.Errorf("%v %w", problems, err)
				}
				again, err := f.Marshal()
				return []*record.Fan{f}, again, err
			},
			func(f *record.Fan) ([]byte, error) { return f.Marshal() }},
		{"../../testdata/roofs/form1-*.json", "../../testdata/roofs/form1-every-place-%d.json",
			func(data []byte) ([]*record.Fan, []byte, error) {
				r, problems, err := record.UnmarshalRoof(data)
				for _, p := range problems {
					if len(p) > 0 && err == nil {
						err = fmt.Errorf("%v", p)
					}
				}
				if err != nil {
					return nil, nil, err
				}
				again, err := r.Marshal()
				return r.Fans, again, err
			},
			func(f *record.Fan) ([]byte, error) {
				return (&record.Roof{Name: "Every place", Fans: []*record.Fan{f}}).Marshal()
			}},
	} {
		missing := lacking(sampled(t, c.files, c.open))
		if len(missing) > 0 && *update {
			data, err := c.write(filled(t))
			if err != nil {
				t.Fatal(err)
			}
			further(t, c.next, data)
			missing = lacking(sampled(t, c.files, c.open))
		}
		if len(missing) > 0 {
			t.Errorf("%s: none holds %s: run with -update, which adds one", c.files, strings.Join(missing, ", "))
		}
	}
}
