//go:build e2e

package e2e

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// completeTexts are the keys and texts of an invented fan with every page filled in.
func completeTexts(t *testing.T) map[string]string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(top, "calc/record/testdata/complete-fan.txt"))
	if err != nil {
		t.Fatal(err)
	}
	texts := map[string]string{}
	for line := range strings.Lines(string(data)) {
		key, text, _ := strings.Cut(strings.TrimSuffix(line, "\n"), "=")
		texts[key] = text
	}
	return texts
}

// stock lays a roof of complete fans on the device and opens one of them. The ids
// are f1, f2 and on.
func (t *Tab) stock(fans int, open string) {
	t.t.Helper()
	texts := completeTexts(t.t)
	var ids []string
	for i := range fans {
		id := fmt.Sprintf("f%d", i+1)
		texts["name"] = fmt.Sprintf("Fan %d", i+1)
		t.layJSON("fan/"+id, map[string]any{"form": 1, "fan": texts})
		ids = append(ids, id)
	}
	t.layJSON("index", map[string]any{"roofs": []any{map[string]any{"id": "r", "name": "Long roof", "fans": ids}}})
	t.lay("open", open)
	Eval[any](t, `(sessionStorage.removeItem("roofside/open"), null)`) // so that the tab begins as a new one
}

// layJSON lays an entry on the device as JSON.
func (t *Tab) layJSON(key string, value any) {
	t.t.Helper()
	text, err := json.Marshal(value)
	if err != nil {
		t.t.Fatal(err)
	}
	t.lay(key, string(text))
}

// lay lays an entry on the device as it is.
func (t *Tab) lay(key, text string) {
	t.t.Helper()
	Eval[any](t, fmt.Sprintf(`(localStorage.setItem(%q, %s), null)`, "roofside/"+key, quoted(text)))
}

// laid is an entry as the device has it, "" for none.
func (t *Tab) laid(key string) string {
	t.t.Helper()
	return Eval[string](t, fmt.Sprintf(`localStorage.getItem(%q) ?? ""`, "roofside/"+key))
}

// quoted is a text as JavaScript writes it.
func quoted(text string) string {
	q, err := json.Marshal(text)
	if err != nil {
		panic(err) // a text can always be written
	}
	return string(q)
}
