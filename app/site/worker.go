package site

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"encoding/json"
	"fmt"
	"strings"
)

// worker fills the worker's template with the version, with the digest of every
// file, by the address it is fetched from, relative to the site's base, and with
// what it has to know of the program and of the script that says why it can't start.
func (t tree) worker(template, start []byte, version string) ([]byte, error) {
	digests := map[string]string{}
	for path, content := range t {
		if path == "404.html" || path == packedFile {
			continue // one stands in the worker, and one is kept unpacked
		}
		address := path
		if path == "index.html" || strings.HasSuffix(path, "/index.html") {
			address = strings.TrimSuffix(path, "index.html")
		}
		digests[address] = digest(content)
	}
	files, err := json.MarshalIndent(digests, "", "  ") // sorts the keys
	if err != nil {
		return nil, err
	}
	about, err := json.Marshal(t.program())
	if err != nil {
		return nil, err
	}
	alone, err := json.Marshal(string(start))
	if err != nil {
		return nil, err
	}
	nowhere, err := json.Marshal(string(t["404.html"]))
	if err != nil {
		return nil, err
	}
	for blank, value := range map[string][]byte{
		`"{{version}}"`: []byte(`"` + version + `"`), `"{{files}}"`: files, `"{{program}}"`: about,
		`"{{first}}"`: []byte(`"` + firstScript + `"`), `"{{start}}"`: alone, `"{{nowhere}}"`: nowhere,
	} {
		if bytes.Count(template, []byte(blank)) != 1 {
			return nil, fmt.Errorf("web/worker.js: %s must stand in it once", blank)
		}
		template = bytes.Replace(template, []byte(blank), value, 1)
	}
	return template, nil
}

// digest is a file's SHA-256 as browsers write it.
func digest(content []byte) string {
	sum := sha256.Sum256(content)
	return "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
}
