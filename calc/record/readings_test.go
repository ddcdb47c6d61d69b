package record_test

import (
	"encoding/csv"
	"slices"
	"strings"
	"testing"

	"roofside/calc/record"
	"roofside/calc/unit"
)

func TestReadingsForASpreadsheet(t *testing.T) {
	f := record.NewFan()
	f.Apply(map[string]string{
		"name": "=HYPERLINK(\"x\"), west", "old.speed": "1,000", "old.amps-1": "5 A", "old.air-temperature": "23 F",
		"trial.t1.turns": "2-1/2 turns", "trial.t1.speed": "700 rpm", "trial.t1.at": "2026-03-09T14:05:00Z", "trial.t1.accepted": "yes",
		"trial.t2.amps-3": "?", "trial.t2.belt-force": "2 lbf", "trial.t2.belt-age": "new", "trial.t2.turns": "3 turns",
	})
	quiet := record.NewFan()
	var b strings.Builder
	if err := (&record.Roof{Fans: []*record.Fan{f, quiet}}).WriteReadings(&b, unit.SI, '.'); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(strings.NewReader(strings.TrimPrefix(b.String(), "\ufeff"))).ReadAll()
	if err != nil || len(rows) != 4 {
		t.Fatalf("%v in %d rows:\n%s", err, len(rows), b.String())
	}
	at := func(row int, column string) string {
		i := slices.Index(rows[0], column)
		if i < 0 {
			t.Fatalf("no column %q in %q", column, rows[0])
		}
		return rows[row][i]
	}
	for _, c := range []struct {
		row          int
		column, want string
	}{
		{1, "fan", "'=HYPERLINK(\"x\"), west"}, {1, "reading", "as found"}, {1, "amps-1 (A)", "5"}, {1, "air-temperature (C)", "-5"}, {1, "speed (rpm)", ""},
		{2, "reading", "t1"}, {2, "at", "2026-03-09T14:05:00Z"}, {2, "accepted", "yes"}, {2, "turns open", "2.5"}, {2, "speed (rpm)", "700"},
		{3, "amps-3 (A)", ""}, {3, "turns open", "3"}, {3, "belt-force (N)", "8.89644"}, {3, "belt-age", "new"}, {1, "belt-force (N)", ""},
	} {
		if got := at(c.row, c.column); got != c.want {
			t.Errorf("row %d, %s: %q, want %q", c.row, c.column, got, c.want)
		}
	}
}

// A spreadsheet of a language with decimal commas parts cells by semicolons.
func TestReadingsForASpreadsheetOfCommas(t *testing.T) {
	f := record.NewFan()
	f.Apply(map[string]string{"name": "Hood; \"west\"", "trial.t1.turns": "2-1/2 turns", "trial.t1.speed": "700.5 rpm"})
	var b strings.Builder
	if err := (&record.Roof{Fans: []*record.Fan{f}}).WriteReadings(&b, unit.US, ','); err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(b.String(), "\r\n")
	if want := `"Hood; ""west""";"t1";"";"";"2,5";"700,5";`; len(lines) != 3 || !strings.HasPrefix(lines[1], want) {
		t.Errorf("%q does not begin with %s", lines, want)
	}
	if !strings.HasPrefix(lines[0], "\ufeff\"fan\";") {
		t.Errorf("the head begins with %.20q", lines[0])
	}
}

func TestNoNameIsAFormula(t *testing.T) {
	for _, name := range []string{"=1+1", "+1", "-1", "@x", "＝1", "＋1", "－1", "＠x"} {
		f := record.NewFan()
		f.Apply(map[string]string{"name": name, "old.speed": "700 rpm"})
		var b strings.Builder
		if err := (&record.Roof{Fans: []*record.Fan{f}}).WriteReadings(&b, unit.US, '.'); err != nil {
			t.Fatal(err)
		}
		if !strings.Contains(b.String(), "\r\n\"'"+name+"\",") {
			t.Errorf("%s is written as it is: %q", name, b.String())
		}
	}
}
