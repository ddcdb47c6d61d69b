package record_test

import (
	"os"
	"path/filepath"
	"testing"

	"roofside/calc/record"
)

func TestGlanceSeesWhatIsStored(t *testing.T) {
	for _, texts := range []map[string]string{
		nil,
		{"name": "Line 2"},
		{"step": "set"},
		{"name": `"name":"x" \ "step":"wired"`, "step": "wired", "handover.notes": `{"name":"y","step":"set"}`},
		{"old.model": `"name":"x"`, "old.frame": `\`},
		{"name": "½ <b> & ñ\\", "step": "?", "supply": "direct"},
		{"step": "!upside down"},
	} {
		f := record.NewFan()
		f.Apply(texts)
		data, err := f.Marshal()
		if err != nil {
			t.Fatal(err)
		}
		name, step := record.Glance(string(data))
		if name.Text() != f.Name.Text() || step.Text() != f.Step.Text() || step.Value() != f.Step.Value() {
			t.Errorf("%s: %q, %q", data, name.Text(), step.Text())
		}
	}
	for _, broken := range []string{"", "{", `{"name":"`, `{"name":"a`, `{"name":"a\`, `{"name":7,"step":"no step"}`, `{"name":"\q"}`} {
		if name, step := record.Glance(broken); name.Text() != "" || step.Value() != "" {
			t.Errorf("%s: %q, %q", broken, name.Text(), step.Value())
		}
	}
}

func FuzzGlance(f *testing.F) {
	files, err := filepath.Glob("../../testdata/records/*.json")
	if err != nil || len(files) == 0 {
		f.Fatal("no samples", err)
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(string(data))
	}
	f.Fuzz(func(t *testing.T, stored string) {
		fan, _, err := record.Unmarshal([]byte(stored))
		if err != nil {
			record.Glance(stored)
			return
		}
		data, err := fan.Marshal()
		if err != nil {
			return
		}
		if name, step := record.Glance(string(data)); name.Text() != fan.Name.Text() || step.Text() != fan.Step.Text() {
			t.Errorf("%s: %q, %q", data, name.Text(), step.Text())
		}
	})
}
