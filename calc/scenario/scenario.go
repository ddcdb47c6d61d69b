// Package scenario reads what a page must say of a record: a link, the level that the
// page's plate must carry, answers and verdicts that must stand there, what the hand
// must be told, and by whose authority. It is for tests.
package scenario

import (
	"encoding/csv"
	"fmt"
	"io/fs"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// A Scenario is one row.
type Scenario struct {
	ID, Page, Link string
	Plate          []string // levels, of which the plate must carry one
	Says           []Said
	Order          Order
	Authority, Why string
	Where          string // file and line
}

// A Said is an answer with its value, or with none, or a verdict with its level.
type Said struct {
	Name      string
	None      bool
	Value     string   // a number and its unit
	Tolerance string   // the same
	Levels    []string // of a verdict, of which it must carry one
}

// An Order is what the hand must be told, or must not be.
type Order struct {
	Any []string // one of them; none when that is not tested
	Not bool     // none of them
}

var (
	columns = []string{"id", "page", "link", "plate", "says", "order", "authority", "why"}
	levels  = []string{"within", "unjudged", "watch", "stop"}
	orders  = map[string][]string{
		"drive":   {"stay", "open", "close", "none", "other-sheave", "tension", "check", "hold", "frequency", "fixed", "ask"},
		"belt":    {"press", "away", "toward", "other", "leave", "halt", "ask"},
		"power":   {"supply", "reading", "lost", "verdict", "exchange", "fault", "volts", "rotation", "amps", "roll", "cause"},
		"airflow": {}, "raceway": {}, "record": {},
	}
	named  = regexp.MustCompile(`^[a-z][a-z0-9.-]*( [a-z0-9]+)?$`)
	valued = regexp.MustCompile(`^(-?[0-9][0-9./-]*)( [^ ±]+)? ?(?:± ?([0-9.]+)( [^ ]+)?)?$`)
	set    = regexp.MustCompile(`^set ([0-9]+(?:\.[0-9]+)?)$`)
)

// Load reads every file of a folder. Errors: a file can't be read, or a row is not as
// the form has it, or an id stands twice; file and line are named.
func Load(folder fs.FS) ([]Scenario, error) {
	files, err := fs.Glob(folder, "*.csv")
	if err != nil {
		return nil, err
	}
	var all []Scenario
	seen := map[string]string{}
	for _, file := range files {
		rows, err := read(folder, file)
		if err != nil {
			return nil, err
		}
		for _, s := range rows {
			if first, twice := seen[s.ID]; twice {
				return nil, fmt.Errorf("%s: %s stands at %s already", s.Where, s.ID, first)
			}
			seen[s.ID] = s.Where
			all = append(all, s)
		}
	}
	return all, nil
}

func read(folder fs.FS, path string) ([]Scenario, error) {
	f, err := folder.Open(path)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	c := csv.NewReader(f)
	c.FieldsPerRecord = len(columns)
	header, err := c.Read()
	if err != nil {
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	if !slices.Equal(header, columns) {
		return nil, fmt.Errorf("%s: the columns are %v, not %v", path, header, columns)
	}
	var all []Scenario
	for {
		row, err := c.Read()
		if row == nil {
			return all, nil
		}
		line, _ := c.FieldPos(0)
		where := fmt.Sprintf("%s:%d", path, line)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", where, err)
		}
		s, err := parse(row)
		if err != nil {
			return nil, fmt.Errorf("%s: %s: %w", where, row[0], err)
		}
		s.Where = where
		all = append(all, s)
	}
}

func parse(row []string) (Scenario, error) {
	s := Scenario{ID: row[0], Page: row[1], Link: row[2], Plate: strings.Split(row[3], "|"), Authority: row[6], Why: row[7]}
	tokens, page := orders[s.Page]
	switch {
	case !regexp.MustCompile(`^[a-z0-9]+(-[a-z0-9]+)*$`).MatchString(s.ID):
		return s, fmt.Errorf("no id: %q", s.ID)
	case !page:
		return s, fmt.Errorf("no page: %q", s.Page)
	case s.Link == "" || strings.Contains(s.Link, "#"):
		return s, fmt.Errorf("no fragment: %q", s.Link)
	case s.Authority == "" || s.Why == "":
		return s, fmt.Errorf("authority and why are wanted")
	}
	if err := leveled(s.Plate); err != nil {
		return s, err
	}
	for part := range strings.SplitSeq(row[4], ";") {
		if part = strings.TrimSpace(part); part == "" {
			continue
		}
		said, err := saying(part)
		if err != nil {
			return s, err
		}
		s.Says = append(s.Says, said)
	}
	text := row[5]
	if text == "" {
		return s, nil
	}
	text, s.Order.Not = strings.CutPrefix(text, "!")
	for token := range strings.SplitSeq(text, "|") {
		token = strings.TrimPrefix(token, "!")
		if !slices.Contains(tokens, token) && !(s.Page == "drive" && set.MatchString(token)) {
			return s, fmt.Errorf("no order of %s: %q", s.Page, token)
		}
		s.Order.Any = append(s.Order.Any, token)
	}
	return s, nil
}

func leveled(all []string) error {
	for _, l := range all {
		if !slices.Contains(levels, l) {
			return fmt.Errorf("no level: %q", l)
		}
	}
	return nil
}

// saying reads name=value unit ±tolerance, name=none or of:level.
func saying(part string) (Said, error) {
	if name, value, ok := strings.Cut(part, "="); ok {
		s := Said{Name: name, None: value == "none"}
		if !named.MatchString(name) {
			return s, fmt.Errorf("no name of an answer: %q", name)
		}
		if s.None {
			return s, nil
		}
		m := valued.FindStringSubmatch(value)
		if m == nil || m[4] != "" && m[4] != m[2] {
			return s, fmt.Errorf("%s: %q is no value with its unit and a tolerance in that", name, value)
		}
		s.Value, s.Tolerance = m[1]+m[2], m[3]+m[2]
		if m[3] == "" { // half of the last digit
			_, decimals, _ := strings.Cut(m[1], ".")
			s.Tolerance = "0." + strings.Repeat("0", len(decimals)) + "5" + m[2]
		}
		return s, nil
	}
	name, level, ok := strings.Cut(part, ":")
	s := Said{Name: name, Levels: strings.Split(level, "|")}
	if !ok || !named.MatchString(name) {
		return s, fmt.Errorf("neither an answer nor a verdict: %q", part)
	}
	return s, leveled(s.Levels)
}

// Meets tells whether what the hand is told is what an order wants: the word, and the
// setting in turns open where it is one.
func (o Order) Meets(do, to string) bool {
	if len(o.Any) == 0 {
		return true
	}
	meets := slices.ContainsFunc(o.Any, func(token string) bool {
		if m := set.FindStringSubmatch(token); m != nil {
			want, err := strconv.ParseFloat(m[1], 64)
			got, err2 := strconv.ParseFloat(to, 64)
			return err == nil && err2 == nil && slices.Contains([]string{"open", "close", "stay"}, do) && want-got < 1e-6 && got-want < 1e-6
		}
		return token == do || token == "none" && do == "other-sheave" // no setting of this one is ordered
	})
	return meets != o.Not
}

func (o Order) String() string {
	s := strings.Join(o.Any, " or ")
	if o.Not {
		s = "not " + s
	}
	return s
}
