package page

import (
	"net/url"
	"os"
	"strings"
	"testing"

	"roofside/app/store"
	"roofside/calc/record"
)

// completeFan is an invented fan with every page filled in, as a link.
func completeFan(t *testing.T) string {
	t.Helper()
	data, err := os.ReadFile("../../calc/record/testdata/complete-fan.txt")
	if err != nil {
		t.Fatal(err)
	}
	var parts []string
	for line := range strings.Lines(string(data)) {
		key, text, _ := strings.Cut(strings.TrimSuffix(line, "\n"), "=")
		parts = append(parts, key+"="+url.PathEscape(text))
	}
	return strings.Join(parts, "&")
}

// sharing draws the Drive page with the share section open, and nothing else.
func sharing(t *testing.T, state string, prepare func(*bench)) string {
	t.Helper()
	before := shared
	t.Cleanup(func() { shared = before })
	shared = newBench(store.Memory(), "en-US")
	shared.Follow(state)
	shared.open["share"] = true
	if prepare != nil {
		prepare(shared)
	}
	return whole(t, NewDrive())
}

func qr(b *bench) { b.open["qr"] = true }

func TestWhatIsSaidOfAShare(t *testing.T) {
	long := func(b *bench) {
		b.open["qr"] = true
		for _, g := range record.CheckGroups() {
			for i, c := range g.Checks { // no two alike, or they would pack well
				b.must(b.Fan.Check(c).Why.Set(strings.Repeat(c[:3]+string(rune('a'+i))+" 7x", 14)))
			}
		}
		for tr := b.Fan.NewTrial(); tr != nil; tr = b.Fan.NewTrial() {
			b.must(tr.Reading.Speed.Set(exact(float64(700+7*len(b.Fan.Trials))+0.31) + " rpm"))
		}
	}
	endless := func(b *bench) {
		for tr := b.Fan.NewTrial(); tr != nil; tr = b.Fan.NewTrial() {
			for i := range tr.Reading.Amps {
				b.must(tr.Reading.Amps[i].Set("4.40000000000000000001 A; computed; within 0.0000000000000000001 A"))
				b.must(tr.Reading.Volts[i].Set("207.400000000000000001 V; computed; within 0.0000000000000000001 V"))
			}
		}
	}
	for name, c := range map[string]struct {
		state   string
		prepare func(*bench)
		says    []string
		not     []string
	}{
		"folded code": {completeFan(t), nil, []string{"never sent to a server", "The short link has"}, []string{"picture-qr", "Not in a link"}},
		"complete":    {completeFan(t), qr, []string{"<svg", "picture-qr-ink", "needs no signal"}, []string{"Too much", "too long"}},
		"what stays out": {"old.turns=2turns", func(b *bench) {
			b.must(b.Fan.Old.Turns.Set("!two"))
			b.must(b.Fan.Handover.Notes.Set(strings.Repeat("x", 121)))
		}, []string{"Not in a link: Old fan: turns open, ", "more than 120 characters"}, nil},
		"too much":     {completeFan(t), long, []string{"Too much for a QR code", "Save the roof as a file"}, []string{"picture-qr-ink", "too long for a link"}},
		"far too much": {completeFan(t), endless, []string{"too long for a link. Save its roof as a file"}, []string{"picture-qr", "The short link has"}},
	} {
		html := sharing(t, c.state, c.prepare)
		for _, s := range c.says {
			if !strings.Contains(html, s) {
				t.Errorf("%s: %q is not said", name, s)
			}
		}
		for _, s := range c.not {
			if strings.Contains(html, s) {
				t.Errorf("%s: %q is said", name, s)
			}
		}
	}
}

// A copied link is shown for as long as it says what the record says.
func TestACopiedLinkGoesWithTheRecord(t *testing.T) {
	state := "old.motor-speed=1750rpm"
	copied := func(b *bench) { b.link, _ = b.plainLink("/drive/") }
	if html := sharing(t, state, copied); !strings.Contains(html, "#old.motor-speed=1750%20rpm") {
		t.Error("the link is not shown")
	}
	changed := func(b *bench) {
		copied(b)
		b.must(b.Fan.Old.MotorSpeed.Set("1160 rpm"))
	}
	if html := sharing(t, state, changed); strings.Contains(html, "1750%20rpm") {
		t.Error("a link to other values is still shown")
	}
}

// A packed link opens as any other: on the scratch record, and what stood there is
// kept as a fan first.
func TestAPackedLinkOpensOnTheScratchRecord(t *testing.T) {
	from := newBench(store.Memory(), "en-US")
	from.Follow(completeFan(t))
	link, out, err := from.shortLink("/drive/")
	if err != nil || out != nil {
		t.Fatal(out, err)
	}
	_, fragment, _ := strings.Cut(link, "#")

	b := newBench(store.Memory(), "en-US")
	b.Type("name", &b.Fan.Name, "Mine")
	b.Follow(fragment)
	if b.ID != store.Scratch || b.Problems != nil || b.Fan.Fragment() != from.Fan.Fragment() {
		t.Errorf("%s is open with %v", b.ID, b.Problems)
	}
	ids := b.Fans.IDs()
	if len(ids) != 1 {
		t.Fatalf("kept: %v", ids)
	}
	if mine, _, err := b.Fans.Load(ids[0]); err != nil || mine.Name.Text() != "Mine" {
		t.Errorf("what stood there is lost: %v", err)
	}

	b.Take(ids[0])
	b.Follow(fragment[:len(fragment)-9]) // as a message cuts it
	if mine, _, err := b.Fans.Load(ids[0]); err != nil || mine.Name.Text() != "Mine" {
		t.Errorf("a kept fan was changed: %v", err)
	}
	if b.ID != store.Scratch || !b.Fan.Empty() || len(b.Problems) != 1 || b.problem(b.Problems[0]) != "z1: cut short or altered; nothing of it is used" {
		t.Errorf("%s is open, %v", b.ID, b.Problems)
	}
	b.Follow("z2=AAAA")
	if len(b.Problems) != 1 || b.problem(b.Problems[0]) != "z2: packed by a later version of this program" {
		t.Errorf("%v", b.Problems)
	}
}
