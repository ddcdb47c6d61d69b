package sheet_test

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// altered is the fan in order after a change, as a fault has it.
func altered(t *testing.T, with string) *record.Fan {
	t.Helper()
	link := inOrder
	if rest, is := strings.CutPrefix(with, unread); is {
		link, with = strings.Replace(link, readings, "", 1), rest
	}
	if rest, is := strings.CutPrefix(with, unwired); is {
		link, with = link[:strings.Index(link, "&wire.")], rest
	}
	f := linkedFan(t, link)
	for part := range strings.SplitSeq(with, "&") {
		if key, text, is := strings.Cut(part, "="); is {
			set(t, f, key, strings.Replace(text, "%25", "%", 1))
		}
	}
	ticked(t, f)
	return f
}

func TestAFanInOrder(t *testing.T) {
	f := altered(t, "")
	stands := sheet.JobOf(f, sixteenth, false).Stands(sheet.OfRecord)
	for _, on := range sheet.Subjects() {
		if p := sheet.JobOf(f, sixteenth, false).Plate(on); p.Level != sheet.Within {
			t.Errorf("the plate of %s is %s by %s (%s)", on, levelNames[p.Level], p.Name, p.Rule)
		}
	}
	for _, c := range faultsOfPages {
		if s := stateOf(f, stands, c.item); c.item != "" && s != sheet.Done {
			t.Errorf("%s is in state %d", c.item, s)
		}
	}
}

// What is wrong stands by its name on its page, whose plate is no better; on the plate of
// the record and in the list of fans; and it takes back what was ticked or read of what it
// speaks about.
func TestWhatStandsAnywhereStandsOnThePlate(t *testing.T) {
	for _, c := range faultsOfPages {
		t.Run(c.page+" "+c.name+" "+c.with, func(t *testing.T) {
			f := altered(t, c.with)
			job := sheet.JobOf(f, sixteenth, false)
			whole := job.Stands(sheet.OfRecord)
			v, ok := sheet.Named(job.Stands(sheet.Subject(c.page)), c.name)
			if !ok || levelNames[v.Level] != c.level {
				t.Errorf("stands %v, %s (%s): %s", ok, levelNames[v.Level], v.Rule, c.why)
			}
			worst, _ := sheet.Overall(f)
			for of, level := range map[string]sheet.Level{c.page: job.Plate(sheet.Subject(c.page)).Level, "record": sheet.Plated(whole).Level, "list": worst.Level} {
				if level < v.Level && !(of != c.page && c.name == "power.next") { // what was not begun is held against its page alone
					t.Errorf("%s is %s", of, levelNames[level])
				}
			}
			if c.item == "" {
				return
			}
			if s := stateOf(f, whole, c.item); s == sheet.Done || v.Level == sheet.Stop && s != sheet.Failed {
				t.Errorf("%s is in state %d", c.item, s)
			}
		})
	}
}

// stateOf is the state of an item of the handover, once it has heard what stands.
func stateOf(f *record.Fan, stands []sheet.Held, item string) sheet.ItemState {
	for _, p := range sheet.Handover(f, stands...) {
		for _, i := range p.Items {
			if i.Name == item {
				return i.State
			}
		}
	}
	return -1
}

// Each verdict that the README publishes has a fault here.
func TestEachPublishedVerdictHasAFault(t *testing.T) {
	text, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	_, table, _ := strings.Cut(string(text), "Every other verdict of what was begun")
	table, _, _ = strings.Cut(table, "\nThe same may be worded again")
	names := 0
	for line := range strings.Lines(table) {
		line, _, _ = strings.Cut(line, "; beside its figures")
		cells := strings.Split(line, "|")
		if len(cells) < 3 || strings.HasPrefix(cells[1], " ---") {
			continue
		}
		pages := []string{strings.Trim(cells[1], " `/")}
		if pages[0] == "all" {
			pages = []string{"drive", "airflow", "belt"}
		}
		for _, found := range regexp.MustCompile("`([a-z.-]+)`").FindAllStringSubmatch(cells[2], -1) {
			if names++; found[1] == "motor.headroom" || found[1] == "ask.half-amps" { // no verdict, and a question that is never more than one
				continue
			}
			for _, page := range pages {
				if !slices.ContainsFunc(faultsOfPages, func(c pageFault) bool {
					return c.page == page && strings.HasPrefix(c.name, found[1])
				}) {
					t.Errorf("%s of %s has no fault", found[1], page)
				}
			}
		}
	}
	if names < 50 {
		t.Errorf("%d names", names)
	}
}
