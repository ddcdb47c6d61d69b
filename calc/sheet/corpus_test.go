package sheet_test

import (
	"encoding/csv"
	"flag"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// A known is a record that properties are held to, by its scenario's name.
type corpusFan struct{ id, link string }

// corpus lists the records of all scenarios.
func corpus(t testing.TB) (all []corpusFan) {
	t.Helper()
	paths, err := filepath.Glob("../../testdata/scenarios/*.csv")
	if err != nil || len(paths) == 0 {
		t.Fatal(err, paths)
	}
	for _, path := range paths {
		file, err := os.Open(path)
		if err != nil {
			t.Fatal(err)
		}
		rows, err := csv.NewReader(file).ReadAll()
		file.Close()
		if err != nil {
			t.Fatal(path, err)
		}
		id, link := slices.Index(rows[0], "id"), slices.Index(rows[0], "link")
		for _, r := range rows[1:] {
			all = append(all, corpusFan{r[id], r[link]})
		}
	}
	if len(all) < 250 {
		t.Fatalf("%d records", len(all))
	}
	return all
}

// every asks for all records where some do from day to day.
var every = flag.Bool("every", false, "hold the slow rules to every record")

// sampled tells whether the record at i is looked at: one in so many.
func sampled(i, of int) bool { return *every || i%of == 0 }

// open returns the record of a scenario.
func (c corpusFan) open(t testing.TB) *record.Fan {
	t.Helper()
	return fan(t, c.link)
}

const anyMark = unit.Inch / 16

// standing lists what stands on all pages of a record, by page and name.
func standing(f *record.Fan) map[string]sheet.Verdict {
	all := map[string]sheet.Verdict{}
	j := sheet.JobOf(f, anyMark, false)
	for _, on := range sheet.Subjects() {
		if on == sheet.OfRecord {
			continue
		}
		for _, h := range j.Stands(on) {
			key := string(on) + " " + h.Name
			if was, has := all[key]; !has || was.Level < h.Level {
				all[key] = h.Verdict
			}
		}
	}
	return all
}

// order is the next move of a record.
func order(f *record.Fan) sheet.Move {
	m, _ := sheet.JobOf(f, anyMark, false).Move()
	return m
}
