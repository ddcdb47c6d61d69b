package raceway

import (
	"encoding/csv"
	"io/fs"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
)

func cells(t *testing.T, text string) [][]string {
	t.Helper()
	r := csv.NewReader(strings.NewReader(text))
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

// Every column of figures adds up to what the transcription adds up to, so that
// none was changed by a slip of the hand.
func TestColumnsAddUp(t *testing.T) {
	text, err := os.ReadFile("testdata/sums.csv")
	if err != nil {
		t.Fatal(err)
	}
	type total struct {
		figures int
		sum     float64
	}
	want := map[string]total{}
	for _, row := range cells(t, string(text))[1:] {
		n, err := strconv.Atoi(row[2])
		if err != nil {
			t.Fatal(err)
		}
		sum, err := strconv.ParseFloat(row[3], 64)
		if err != nil {
			t.Fatal(err)
		}
		want[row[0]+" "+row[1]] = total{n, sum}
	}
	names, err := fs.Glob(files, "tables/*.csv")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range names {
		text, err := files.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		rows := cells(t, string(text))
		for i, column := range rows[0] {
			name := strings.TrimSuffix(strings.TrimPrefix(file, "tables/"), ".csv") + " " + column
			var got total
			figures := true
			for _, row := range rows[1:] {
				if row[i] == "" {
					continue
				}
				x, err := strconv.ParseFloat(row[i], 64)
				if err != nil {
					figures = false // names, or sizes with fractions
					break
				}
				got.figures++
				got.sum += x
			}
			w, listed := want[name]
			delete(want, name)
			if figures != listed || listed && (got.figures != w.figures || math.Abs(got.sum-w.sum) > 1e-9*math.Max(1, w.sum)) {
				t.Errorf("%s: %d figures with sum %v, want %d with %v", name, got.figures, got.sum, w.figures, w.sum)
			}
		}
	}
	for name := range want {
		t.Errorf("%s is in no table", name)
	}
}
