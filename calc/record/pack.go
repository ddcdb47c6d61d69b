package record

import (
	"bytes"
	"compress/flate"
	"encoding/base64"
	"encoding/binary"
	"errors"
	"hash/crc32"
	"io"
	"strings"
	"unicode/utf8"
)

// The packed form of a link carries in one part, z1=…, what the plain form says
// in full, in about a seventh of the length: a phone's camera reads it off another
// phone. The part is base64url without padding (RFC 4648, section 5) of
//
//   - the CRC-32 (IEEE 802.3) of the short text, in four bytes, the highest first;
//   - the short text (see shorttext.go), deflated (RFC 1951) with z1.txt as its
//     preset dictionary.
//
// A later packing gets another number. What z1 means stays for ever.
const packedKey = "z1"

// ErrDamaged is of a packed part that isn't what was written; nothing of it is used.
var ErrDamaged = errors.New("cut short or altered")

// LongestSharedNote is how many characters a note may have to go into a link.
const LongestSharedNote = 120

// Pack returns the known places of f as a packed part, z1=…, and the keys of those
// that stay out: text that is no value, and notes of more than 120 characters. It
// fails with [ErrLong] where its reader would refuse it.
func (f *Fan) Pack() (part string, out []string, err error) {
	text, out := f.shortText()
	if len(text) > LongestLink {
		return "", out, ErrLong
	}
	b := bytes.NewBuffer(binary.BigEndian.AppendUint32(nil, crc32.ChecksumIEEE([]byte(text))))
	w, err := flate.NewWriterDict(b, flate.BestCompression, []byte(z1))
	if err != nil {
		return "", out, err
	}
	if _, err := io.WriteString(w, text); err != nil {
		return "", out, err
	}
	if err := w.Close(); err != nil {
		return "", out, err
	}
	return packedKey + "=" + base64.RawURLEncoding.EncodeToString(b.Bytes()), out, nil
}

// unpack reads a packed part, z1=… of this version. It stops where more than
// [LongestLink] comes out.
func unpack(key, packed string) (map[string]string, error) {
	if key != packedKey {
		return nil, ErrNewer
	}
	if strings.ContainsAny(packed, "\r\n") { // which the decoder passes over
		return nil, ErrDamaged
	}
	data, err := base64.RawURLEncoding.Strict().DecodeString(packed)
	if err != nil || len(data) < crc32.Size {
		return nil, ErrDamaged
	}
	deflated := bytes.NewReader(data[crc32.Size:])
	text, err := io.ReadAll(io.LimitReader(flate.NewReaderDict(deflated, []byte(z1)), LongestLink+1))
	switch {
	case len(text) > LongestLink:
		return nil, ErrLong
	case err != nil, deflated.Len() > 0, crc32.ChecksumIEEE(text) != binary.BigEndian.Uint32(data), !utf8.Valid(text):
		return nil, ErrDamaged
	}
	return readShort(string(text))
}

// isPacked tells whether a key is that of a packed part of any version.
func isPacked(key string) bool {
	digits, ok := strings.CutPrefix(key, "z")
	return ok && digits != "" && strings.Trim(digits, "0123456789") == ""
}
