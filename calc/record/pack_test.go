package record_test

import (
	"bytes"
	"compress/flate"
	"crypto/sha256"
	"encoding/base64"
	"encoding/binary"
	"encoding/hex"
	"errors"
	"hash/crc32"
	"maps"
	"os"
	"runtime"
	"slices"
	"strings"
	"testing"

	"roofside/calc/record"
)

// origin stands for a site's own address in a link's length.
const origin = "https://tools.example.org/fans/record/"

// complete reads an invented fan with every page filled in: two readings, two rows
// of conductors, every check, a note.
func complete(t testing.TB, file string) *record.Fan {
	t.Helper()
	data, err := os.ReadFile("testdata/" + file)
	if err != nil {
		t.Fatal(err)
	}
	texts := map[string]string{}
	for line := range strings.Lines(string(data)) {
		key, text, _ := strings.Cut(strings.TrimSuffix(line, "\n"), "=")
		texts[key] = text
	}
	f := record.NewFan()
	for _, p := range f.Apply(texts) {
		t.Errorf("%s: %+v", file, p)
	}
	if len(f.Texts()) != len(texts) {
		t.Errorf("%s: %d of %d values", file, len(f.Texts()), len(texts))
	}
	return f
}

// unpacked opens a packed part.
func unpacked(t *testing.T, part string) *record.Fan {
	t.Helper()
	texts, problems := record.ParseFragment("#" + part)
	f := record.NewFan()
	if problems = append(problems, f.Apply(texts)...); problems != nil {
		t.Fatalf("%.60s: %v", part, problems)
	}
	return f
}

// Every packed link ever made depends on this file. If this test fails, put the
// file back as it was.
func TestTheTableOfPackedLinksStaysAsItIs(t *testing.T) {
	data, err := os.ReadFile("z1.txt")
	if err != nil {
		t.Fatal(err)
	}
	sum := sha256.Sum256(data)
	if got := hex.EncodeToString(sum[:]); got != tableSum {
		t.Errorf("z1.txt has the sum %s, published with %s", got, tableSum)
	}
}

const tableSum = "b48101b0ab7d88f06721e94c8c373001bbc0b42c2e1b4487360256d0b15e5992"

// What z1 names must be there still: keys, units, options.
func TestTheTableOfPackedLinksIsUnderstood(t *testing.T) {
	data, err := os.ReadFile("z1.txt")
	if err != nil {
		t.Fatal(err)
	}
	f := everything()
	lines := 0
	for line := range strings.Lines(string(data)) {
		if lines++; line[0] == ';' {
			continue
		}
		key, what, _ := strings.Cut(strings.TrimSpace(line), " ")
		key = strings.NewReplacer("trial.*", "trial.t1", "wire.*", "wire.w1").Replace(key)
		switch p := f.Place(key).(type) {
		case nil:
			t.Errorf("%s is no place", key)
		case record.Selector:
			for o := range strings.SplitSeq(what, "|") {
				if !slices.Contains(p.Options(), o) {
					t.Errorf("%s no longer takes %s", key, o)
				}
			}
		case record.Measure:
			if what != "" {
				if _, ok := p.Kind().Unit(what); !ok {
					t.Errorf("%s is not measured in %s", key, what)
				}
			}
		default:
			if what != "" {
				t.Errorf("%s is text: %s", key, what)
			}
		}
	}
	if lines < 300 {
		t.Errorf("only %d places", lines)
	}
}

func TestACompleteFanFitsAShortLink(t *testing.T) {
	const most = 1100 // characters
	for _, file := range []string{"complete-fan.txt", "complete-fan-si.txt"} {
		f := complete(t, file)
		part, out, err := f.Pack()
		if err != nil || out != nil {
			t.Fatal(out, err)
		}
		n := len(origin) + len("#") + len(part)
		t.Logf("%s: %d values, %d characters packed, %d plain", file, len(f.Texts()), n, len(origin)+1+len(f.Fragment()))
		if n > most {
			t.Errorf("%s: %d characters, want at most %d", file, n, most)
		}
		equal(t, unpacked(t, part).Texts(), f.Texts())
	}
}

// Both forms of a link say the same, wherever a place can stand.
func TestPackedAndPlainSayTheSame(t *testing.T) {
	full := filled(t)
	full.NewTrial()
	full.NewWire()
	set(t, full.Place("trial.t2.speed"), "700 rpm; within 0.5 %")
	set(t, full.Place("trial.t2.at"), "2026-03-09T14:05:00-06:00")
	set(t, full.Place("wire.w2.size"), "4/0")
	odd := record.NewFan()
	for key, text := range map[string]string{
		"trial.zz9.alignment-gap": "1/32 in", "trial.b.turns": "?", "wire.a.insulation": "RHW-2*", "wire.a.role": "?", "box.volume": "340 cm3",
		"target.over": "0.05", "old.motor-sheave": "-3 in", "old.turns": "!two", "name": "12", "old.model": "A", "old.frame": "?",
		"new.belt-number": "A\x1f50", "handover.notes": "two\nlines", "handover.belt-due": "2026-03-23", "coldest-air": "-12 C",
	} {
		odd.Apply(map[string]string{key: text})
	}
	for name, f := range map[string]*record.Fan{"empty": record.NewFan(), "full": full, "odd": odd} {
		part, _, err := f.Pack()
		if err != nil {
			t.Fatal(name, err)
		}
		texts, problems := record.ParseFragment(f.Fragment())
		plain := record.NewFan()
		if problems = append(problems, plain.Apply(texts)...); problems != nil {
			t.Fatal(name, problems)
		}
		equal(t, unpacked(t, part).Texts(), plain.Texts())
	}
}

func TestWhatStaysOutOfAPackedLink(t *testing.T) {
	f := record.NewFan()
	set(t, &f.Name, "Hood line 2")
	set(t, &f.Old.Turns, "!two")
	set(t, &f.Handover.Notes, strings.Repeat("é", record.LongestSharedNote))
	part, out, err := f.Pack()
	if err != nil || !slices.Equal(out, []string{"old.turns"}) {
		t.Errorf("%q stay out, %v", out, err)
	}
	equal(t, unpacked(t, part).Texts(), map[string]string{"name": "Hood line 2", "handover.notes": f.Handover.Notes.Text()})
	set(t, &f.Handover.Notes, strings.Repeat("é", record.LongestSharedNote+1))
	part, out, err = f.Pack()
	if err != nil || !slices.Equal(out, []string{"old.turns", "handover.notes"}) {
		t.Errorf("%q stay out, %v", out, err)
	}
	equal(t, unpacked(t, part).Texts(), map[string]string{"name": "Hood line 2"})
}

// A record that its reader would refuse is not packed.
func TestTooLongToBePacked(t *testing.T) {
	f := record.NewFan()
	for range 50 {
		w := f.NewWire()
		set(t, &w.Count, "3; measured; within 0.000000000000000001 %")
	}
	for _, name := range record.CheckGroups() {
		for _, c := range name.Checks {
			set(t, &f.Check(c).Why, strings.Repeat("x", 120))
		}
	}
	for {
		tr := f.NewTrial()
		if tr == nil {
			break
		}
		for i := range tr.Reading.Amps {
			set(t, &tr.Reading.Amps[i], "4.40000000000000000001 A; computed; within 0.0000000000000000001 A")
		}
	}
	if part, _, err := f.Pack(); part != "" || !errors.Is(err, record.ErrLong) {
		t.Errorf("%d characters, %v", len(part), err)
	}
}

// packedAs packs a short text as it stands, without judging it.
func packedAs(t testing.TB, text string) string {
	t.Helper()
	table, err := os.ReadFile("z1.txt")
	if err != nil {
		t.Fatal(err)
	}
	b := bytes.NewBuffer(binary.BigEndian.AppendUint32(nil, crc32.ChecksumIEEE([]byte(text))))
	w, err := flate.NewWriterDict(b, flate.BestCompression, table)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := w.Write([]byte(text)); err != nil {
		t.Fatal(err)
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return "z1=" + base64.RawURLEncoding.EncodeToString(b.Bytes())
}

// Nothing of a packed part that was altered is used, and the rest of the link is.
func TestDamagedPackedLinks(t *testing.T) {
	part, _, err := complete(t, "complete-fan.txt").Pack()
	if err != nil {
		t.Fatal(err)
	}
	data, err := base64.RawURLEncoding.DecodeString(strings.TrimPrefix(part, "z1="))
	if err != nil {
		t.Fatal(err)
	}
	again := func(b []byte) string { return "z1=" + base64.RawURLEncoding.EncodeToString(b) }
	damaged := map[string]string{
		"empty": "z1=", "not base64": "z1=a+b/c", "padded": part + "=", "a line end": part[:40] + "\n" + part[40:], "escaped": part[:40] + "%20" + part[40:],
		"one character": "z1=A", "the sum alone": part[:len("z1=")+6], "lower case": strings.ToLower(part), "trailing byte": again(append(slices.Clone(data), 0)),
		"trailing character": part + "A", "spare bits set": "z1=AAAAAAB",
		"another sum": again(append([]byte{data[0] ^ 1}, data[1:]...)),
		"no step":     packedAs(t, "Hood line 2"), "empty value": packedAs(t, "\x0b\x0b"), "no such line": packedAs(t, strings.Repeat("\x1d", 400)+"\x0bx"),
		"far with a value": packedAs(t, "\x1dx"), "no such list": packedAs(t, "\x1ewall.w1\x0bx"), "no such id": packedAs(t, "\x1etrial.T-1\x0bx"), "no row": packedAs(t, "\x1etrial\x0bx"),
		"no such option": packedAs(t, "\x0bname\x0bZ"), "two options": packedAs(t, "\x0bname\x0bAB"), "key without text": packedAs(t, "\x1fname"), "key twice": packedAs(t, "\x0ba\x1fname=b"),
		"line of a list outside its rows": packedAs(t, strings.Repeat("\x1d", 8)+"\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1\x0b1"),
		"another list's row":              packedAs(t, "\x1ewire.w1\x1d\x1d\x1d\x0b1\x1etrial.t1"+strings.Repeat("\x1d", 3)+"\x0bx"),
		"not UTF-8":                       packedAs(t, "\x0ba\xff"),
	}
	for cut := range len(part) - len("z1=") {
		damaged["cut by "+part[len(part)-cut-1:]] = part[:len(part)-cut-1]
	}
	for at := 3; at < len(part); at += 7 {
		b := []byte(part)
		if b[at] = 'A'; part[at] == 'A' {
			b[at] = 'B'
		}
		damaged["altered at "+part[at:]] = string(b)
	}
	for name, d := range damaged {
		texts, problems := record.ParseFragment("#" + d + "&name=fan")
		if !maps.Equal(texts, map[string]string{"name": "fan"}) || len(problems) != 1 || problems[0].Key != "z1" || !errors.Is(problems[0].Err, record.ErrDamaged) {
			t.Errorf("%.40s: %d texts, %v", name, len(texts), problems)
		}
	}
}

func TestOtherFaultsOfPackedLinks(t *testing.T) {
	for name, c := range map[string]struct {
		fragment string
		texts    int
		err      error
	}{
		"later version":   {"z2=AAAA&name=fan", 1, record.ErrNewer},
		"much later":      {"z123=%zz&name=fan", 1, record.ErrNewer},
		"unpacks to more": {packedAs(t, "\x0b"+strings.Repeat("x", record.LongestLink)) + "&same-wheel=yes", 1, record.ErrLong},
		"given beside it": {packedAs(t, "\x0bfan") + "&name=other", 1, record.ErrTwice},
		"given before":    {"name=other&" + packedAs(t, "\x0bfan"), 1, record.ErrTwice},
		"packed twice":    {packedAs(t, "\x0bfan") + "&" + packedAs(t, "\x0bfan"), 1, record.ErrTwice},
	} {
		texts, problems := record.ParseFragment(c.fragment)
		if len(texts) != c.texts || len(problems) != 1 || !errors.Is(problems[0].Err, c.err) {
			t.Errorf("%s: %q, %v", name, texts, problems)
		}
	}
	// Just short enough: the whole length is used.
	if texts, problems := record.ParseFragment(packedAs(t, "\x0b"+strings.Repeat("x", record.LongestLink-1))); len(texts["name"]) != record.LongestLink-1 || problems != nil {
		t.Errorf("%d characters, %v", len(texts["name"]), problems)
	}
}

// Of 8 MB that fit a link, no more is unpacked than may come out.
func TestABombInALink(t *testing.T) {
	bomb := packedAs(t, "\x0b"+strings.Repeat("x", 8<<20))
	if len(bomb) > record.LongestLink {
		t.Fatalf("%d characters would be refused unread", len(bomb))
	}
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	texts, problems := record.ParseFragment(bomb)
	runtime.ReadMemStats(&after)
	if len(texts) != 0 || len(problems) != 1 || !errors.Is(problems[0].Err, record.ErrLong) {
		t.Errorf("%d texts, %v", len(texts), problems)
	}
	if took := after.TotalAlloc - before.TotalAlloc; took > 1<<20 {
		t.Errorf("took %d bytes of memory", took)
	}
}

func BenchmarkPack(b *testing.B) {
	f := complete(b, "complete-fan.txt")
	b.ReportAllocs()
	for b.Loop() {
		if _, _, err := f.Pack(); err != nil {
			b.Fatal(err)
		}
	}
}
