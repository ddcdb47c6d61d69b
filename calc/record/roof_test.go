package record_test

import (
	"encoding/json"
	"errors"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"roofside/calc/record"
)

func TestRoofFileComesBack(t *testing.T) {
	r := &record.Roof{Name: "West wing <&> \u2028 2", Fans: []*record.Fan{filled(t), record.NewFan(), filled(t)}}
	set(t, &r.Fans[0].Old.MotorPower, "!two horses")
	data, err := r.Marshal()
	if err != nil {
		t.Fatal(err)
	}
	again, problems, err := record.UnmarshalRoof(append([]byte("\ufeff"), data...))
	if err != nil || len(again.Fans) != 3 || again.Name != r.Name {
		t.Fatalf("%v %+v", err, again)
	}
	for i := range r.Fans {
		if len(problems[i]) > 0 {
			t.Errorf("fan %d: %v", i, problems[i])
		}
		same(t, again.Fans[i], r.Fans[i])
	}
}

// A key that stands twice is reported; a name with marks that turn the direction of
// writing is shown without them.
func TestRoofFileWithTricks(t *testing.T) {
	r, problems, err := record.UnmarshalRoof([]byte(`{"form":1,"roof":"a \u202eb\u2069","fans":[{"name":"A","old.motor-speed":"1750 rpm","name":"B","supply":null}]}`))
	if err != nil || r.Name != "a b" || r.Fans[0].Name.Text() != "A" || r.Fans[0].Old.MotorSpeed.Text() != "1750 rpm" {
		t.Fatalf("%v %+v", err, r)
	}
	if len(problems[0]) != 1 || problems[0][0] != (record.Problem{Key: "name", Text: "B", Err: record.ErrTwice}) {
		t.Errorf("problems %v", problems)
	}
}

func TestRoofFilesThatAreRefused(t *testing.T) {
	fan := `{"name":"` + strings.Repeat("x", 1000) + `"}`
	for _, c := range []struct {
		name, data string
		want       error // nil for any
	}{
		{"nothing", ``, nil},
		{"a picture", "\x89PNG\r\n", nil},
		{"cut off", `{"form":1,"roof":"R","fans":[{"name":"A`, nil},
		{"trailing data", `{"form":1,"roof":"R","fans":[]} {}`, nil},
		{"another file", `{"roofs":[]}`, record.ErrForm},
		{"a fan's entry", `{"form":1,"fan":{}}`, record.ErrForm},
		{"no fans", `{"form":1,"roof":"R"}`, record.ErrForm},
		{"fans of no texts", `{"form":1,"roof":"R","fans":[7]}`, nil},
		{"a fan of nothing", `{"form":1,"roof":"R","fans":[null]}`, record.ErrForm},
		{"a fan in a fan", `{"form":1,"roof":"R","fans":[{"name":{"name":"A"}}]}`, record.ErrForm},
		{"a later form", `{"form":2,"roof":"R","fans":[],"more":1}`, record.ErrNewer},
		{"too large", `{"form":1,"roof":"R","fans":[` + fan + strings.Repeat(","+fan, 8400) + `]}`, record.ErrTooLarge},
		{"too many", `{"form":1,"roof":"R","fans":[{}` + strings.Repeat(",{}", 200) + `]}`, record.ErrTooLarge},
	} {
		r, problems, err := record.UnmarshalRoof([]byte(c.data))
		if err == nil || r != nil || problems != nil || c.want != nil && !errors.Is(err, c.want) {
			t.Errorf("%s: %v %v, want only the error %v", c.name, r, err, c.want)
		}
	}
	later, _, err := record.Unmarshal([]byte(`{"form":2,"fan":{}}`))
	if err != nil {
		t.Fatal(err)
	}
	if _, err := (&record.Roof{Fans: []*record.Fan{later}}).Marshal(); !errors.Is(err, record.ErrNewer) {
		t.Errorf("a fan of a later form is written: %v", err)
	}
}

// schema is the JSON Schema of a roof's file, with every key in it; a row's id
// stands as a pattern.
func schema(t *testing.T) string {
	t.Helper()
	f := everything()
	row := regexp.MustCompile(`^([a-z]+)\.[a-z]*[0-9]+\.`)
	properties := map[string]any{}
	patterns := map[string]any{}
	text := map[string]any{"type": "string", "maxLength": 300}
	for k := range f.Places() {
		if m := row.FindStringSubmatch(k); m != nil {
			k = "^" + m[1] + `\.[a-z0-9]{1,8}\.` + regexp.QuoteMeta(strings.TrimPrefix(k, m[0])) + "$"
			patterns[k] = text
			continue
		}
		properties[k] = text
		if k == "handover.notes" {
			properties[k] = map[string]any{"type": "string", "maxLength": record.LongestNote}
		}
	}
	data, err := json.MarshalIndent(map[string]any{
		"$schema":     "https://json-schema.org/draft/2020-12/schema",
		"title":       "A roof of Roofside",
		"description": "The fans of one roof in serving order. Each fan is a list of keys with canonical text, as the README describes: a number with its unit, one word of a choice, ? for what can't be read, ! before what is no value.",
		"type":        "object",
		"required":    []string{"form", "roof", "fans"},
		"properties": map[string]any{
			"form": map[string]any{"const": record.Form},
			"roof": map[string]any{"type": "string"},
			"fans": map[string]any{"type": "array", "maxItems": 200, "items": map[string]any{
				"type": "object", "properties": properties, "patternProperties": patterns, "additionalProperties": false,
			}},
		},
	}, "", "\t")
	if err != nil {
		t.Fatal(err)
	}
	return string(data) + "\n"
}

func TestTheSchemaIsPublished(t *testing.T) {
	const file = "../../web/roof.schema.json"
	want := schema(t)
	if *update {
		if err := os.WriteFile(file, []byte(want), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	have, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if string(have) != want {
		t.Error("the published schema is not that of the keys: run with -update")
	}
	for _, key := range []string{`"old.motor-speed"`, `"^trial\\.[a-z0-9]{1,8}\\.speed$"`} {
		if !strings.Contains(want, key) {
			t.Errorf("it lacks %s", key)
		}
	}
}

func FuzzUnmarshalRoof(f *testing.F) {
	files, err := filepath.Glob("../../testdata/roofs/*.json")
	if err != nil || len(files) == 0 {
		f.Fatal("no samples", err)
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(data)
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		r, _, err := record.UnmarshalRoof(data)
		if err != nil {
			if r != nil {
				t.Error("a roof beside an error")
			}
			return
		}
		for _, fan := range r.Fans {
			for k, p := range fan.Places() {
				sound(t, k, p)
			}
		}
		stored, err := r.Marshal()
		if err != nil {
			t.Fatal(err)
		}
		again, problems, err := record.UnmarshalRoof(stored)
		if err != nil || len(again.Fans) != len(r.Fans) {
			t.Fatalf("its own file is refused: %v", err)
		}
		for i := range r.Fans {
			if len(problems[i]) > 0 {
				t.Error(problems[i])
			}
			same(t, again.Fans[i], r.Fans[i])
		}
	})
}

// What is written can be read: as many fans as a file holds, with every place filled, and
// not one more.
func TestEveryRoofWrittenCanBeRead(t *testing.T) {
	data, err := os.ReadFile("../../testdata/records/form1-every-place-5.json")
	if err != nil {
		t.Fatal(err)
	}
	f, _, err := record.Unmarshal(data)
	if err != nil {
		t.Fatal(err)
	}
	r := &record.Roof{Name: "North"}
	for range record.MostFans {
		r.Fans = append(r.Fans, f)
	}
	file, err := r.Marshal()
	if err != nil {
		t.Fatal(err)
	}
	back, _, err := record.UnmarshalRoof(file)
	if err != nil || len(back.Fans) != record.MostFans {
		t.Fatal(err)
	}
	equal(t, back.Fans[0].Texts(), f.Texts())
	r.Fans = append(r.Fans, f)
	if _, err := r.Marshal(); !errors.Is(err, record.ErrTooLarge) {
		t.Errorf("a fan too many is written: %v", err)
	}
}
