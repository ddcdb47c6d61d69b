package site

import (
	"bytes"
	"compress/gzip"
	"io"
	"path"

	"github.com/andybalholm/brotli"
)

// compressible names what shrinks. Pictures of the png kind do not.
var compressible = map[string]bool{
	".css": true, ".html": true, ".js": true, ".svg": true, ".txt": true, ".wasm": true, ".webmanifest": true,
}

// worthwhile is the size in bytes below which a file fits one packet as it is.
const worthwhile = 1400

// compress puts a .gz, and with a quality above 0 a .br, beside each file that
// gains from it. Neither form carries a time, so equal input gives equal bytes.
func (t tree) compress(quality int) error {
	for _, name := range t.paths() {
		content := t[name]
		if !compressible[path.Ext(name)] || len(content) < worthwhile {
			continue
		}
		var err error
		if name != programFile { // which is packed already
			if t[name+".gz"], err = squeeze(content, zip); err != nil {
				return err
			}
		}
		if quality == 0 {
			continue
		}
		if t[name+".br"], err = squeeze(content, func(w io.Writer) (io.WriteCloser, error) {
			return brotli.NewWriterOptions(w, brotli.WriterOptions{Quality: quality, LGWin: 24}), nil
		}); err != nil {
			return err
		}
	}
	return nil
}

func zip(w io.Writer) (io.WriteCloser, error) { return gzip.NewWriterLevel(w, gzip.BestCompression) }

func squeeze(content []byte, open func(io.Writer) (io.WriteCloser, error)) ([]byte, error) {
	var small bytes.Buffer
	w, err := open(&small)
	if err != nil {
		return nil, err
	}
	if _, err := w.Write(content); err != nil {
		return nil, err
	}
	if err := w.Close(); err != nil {
		return nil, err
	}
	return small.Bytes(), nil
}
