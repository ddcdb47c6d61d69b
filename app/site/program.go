package site

import (
	"bytes"
	"encoding/json"
	"fmt"
)

const (
	programFile = "web/app.wasm"
	packedFile  = programFile + ".gz"
)

// A program tells page and worker how the program may be fetched.
type program struct {
	Address    string `json:"address,omitempty"` // below the host's root, for the page alone
	File       string `json:"file"`              // below the site's base
	Size       int    `json:"size"`              // in bytes, unpacked
	PackedSize int    `json:"packedSize"`
	Packed     string `json:"packed"` // the packed copy's digest
}

func (t tree) program() program {
	return program{File: programFile, Size: len(t[programFile]), PackedSize: len(t[packedFile]), Packed: digest(t[packedFile])}
}

// loadOurWay puts the call of web/first/program.js into go-app's script, in place
// of its own, which takes whatever the host sends. The program is asked for at the end
// of the first script, while go-app's are still to come.
func (o Options) loadOurWay(t tree) error {
	about := t.program()
	about.Address = base(o.Base).Resolve("/" + programFile)
	said, err := json.Marshal(about)
	if err != nil {
		return err
	}
	theirs := fmt.Appendf(nil, "fetchWithProgress(%q, showProgress)", about.Address)
	if n := bytes.Count(t["app.js"], theirs); n != 1 {
		return fmt.Errorf("go-app's app.js holds %s %d times, not once", theirs, n)
	}
	t["app.js"] = bytes.Replace(t["app.js"], theirs, []byte("roofside.program(showProgress)"), 1)
	t[firstScript] = fmt.Appendf(t[firstScript], "roofside.begin(%s);\n", said)
	return nil
}
