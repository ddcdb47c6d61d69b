package site

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"encoding/json"
	"fmt"
	"strings"
)

// worker fills the worker's template with the version and with the digest of
// every file, by the address it is fetched from, relative to the site's base.
func (t tree) worker(template []byte, version string) ([]byte, error) {
	digests := map[string]string{}
	for path, content := range t {
		if path == "404.html" {
			continue // only ever shown by a server
		}
		address := path
		if path == "index.html" || strings.HasSuffix(path, "/index.html") {
			address = strings.TrimSuffix(path, "index.html")
		}
		sum := sha256.Sum256(content)
		digests[address] = "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
	}
	files, err := json.MarshalIndent(digests, "", "  ") // sorts the keys
	if err != nil {
		return nil, err
	}
	for blank, value := range map[string][]byte{`"{{version}}"`: []byte(`"` + version + `"`), `"{{files}}"`: files} {
		if bytes.Count(template, []byte(blank)) != 1 {
			return nil, fmt.Errorf("web/worker.js: %s must stand in it once", blank)
		}
		template = bytes.Replace(template, []byte(blank), value, 1)
	}
	return template, nil
}
