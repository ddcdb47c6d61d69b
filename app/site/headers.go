package site

import (
	"fmt"
	"net/http"
	"strings"

	"github.com/BurntSushi/toml"
)

// Headers are the response headers that the host's file asks for, so that what
// is tried on this machine is what the host will send.
type Headers []rule

type rule struct {
	For    string            `toml:"for"`
	Values map[string]string `toml:"values"`
}

// ReadHeaders reads the [[headers]] of a netlify.toml.
func ReadHeaders(file string) (Headers, error) {
	var host struct{ Headers Headers }
	if _, err := toml.DecodeFile(file, &host); err != nil {
		return nil, err
	}
	for _, r := range host.Headers {
		if i := strings.IndexByte(r.For, '*'); i >= 0 && i != len(r.For)-1 {
			return nil, fmt.Errorf("%s: headers for %q: a star is read at the end only", file, r.For)
		}
	}
	return host.Headers, nil
}

func (h Headers) set(answer http.Header, path string) {
	for _, r := range h {
		start, open := strings.CutSuffix(r.For, "*")
		if path == start || open && strings.HasPrefix(path, start) {
			for name, value := range r.Values {
				answer.Set(name, value)
			}
		}
	}
}
