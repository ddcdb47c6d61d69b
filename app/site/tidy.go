package site

import (
	"bytes"
	"errors"
	"fmt"
	"html"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// tidy turns go-app's rendering into HTML. go-app writes attribute values as
// quoted Go strings, in random order, writes the text "true" as a bare name and
// keeps booleans that are false. It also writes social-network tags, whose
// addresses are wrong where the host's name is not known, and an English name
// for the picture that turns while the program loads: the progress beside it
// says all.
func tidy(page []byte) ([]byte, error) {
	var out bytes.Buffer
	for len(page) > 0 {
		open := bytes.IndexByte(page, '<')
		if open < 0 {
			out.Write(page)
			break
		}
		out.Write(page[:open])
		page = page[open:]
		if len(page) > 1 && (page[1] == '/' || page[1] == '!') {
			end := bytes.IndexByte(page, '>')
			if end < 0 {
				return nil, fmt.Errorf("unclosed tag at %.40q", page)
			}
			out.Write(page[:end+1])
			page = page[end+1:]
			continue
		}
		t, rest, err := readTag(string(page))
		if err != nil {
			return nil, fmt.Errorf("%w at %.80q", err, page)
		}
		page = []byte(rest)
		if t.useless() {
			out.Truncate(len(bytes.TrimRight(out.Bytes(), " \n")))
			continue
		}
		if t.values["id"] == "app-wasm-loader-icon" {
			t.values["alt"] = ""
		}
		out.WriteString(t.String())
	}
	return out.Bytes(), nil
}

// A tag is a start tag; a bare attribute is one without a value.
type tag struct {
	name   string
	values map[string]string
	bare   map[string]bool
	closed bool // ends in />, as drawings do
}

const nameEnds = " \t\r\n=/>"

func readTag(s string) (tag, string, error) {
	t := tag{values: map[string]string{}, bare: map[string]bool{}}
	t.name, s = cutName(s[1:])
	for {
		s = strings.TrimLeft(s, " \t\r\n")
		switch {
		case strings.HasPrefix(s, "/>"):
			t.closed = true
			return t, s[2:], nil
		case strings.HasPrefix(s, ">"):
			return t, s[1:], nil
		}
		var name, value string
		if name, s = cutName(s); name == "" {
			return t, s, errors.New("no attribute name")
		}
		if !strings.HasPrefix(s, "=") {
			t.bare[name] = true
			continue
		}
		quoted, err := strconv.QuotedPrefix(s[1:])
		if err != nil || quoted[0] != '"' {
			return t, s, fmt.Errorf("attribute %s: not in double quotes", name)
		}
		if value, err = strconv.Unquote(quoted); err != nil {
			return t, s, err
		}
		// In go-app's attributes this would be plain text, in raw markup an
		// entity: nothing here can tell which was meant.
		if entity.MatchString(value) {
			return t, s, fmt.Errorf("attribute %s: write the character itself, not %s", name, entity.FindString(value))
		}
		t.values[name], s = value, s[1+len(quoted):]
	}
}

var entity = regexp.MustCompile(`&#?[0-9a-zA-Z]+;`)

func cutName(s string) (name, rest string) {
	end := strings.IndexAny(s, nameEnds)
	if end < 0 {
		return "", s
	}
	return s[:end], s[end:]
}

// useless tells a meta element that says nothing, or says it of a host whose
// name is not known.
func (t tag) useless() bool {
	if t.name != "meta" {
		return false
	}
	_, said := t.values["content"]
	return strings.HasPrefix(t.values["property"], "og:") || strings.HasPrefix(t.values["name"], "twitter:") ||
		t.values["name"] != "" && !said
}

func (t tag) String() string {
	var attributes []string
	for name := range t.bare {
		if strings.HasPrefix(name, "aria-") || enumerated[name] {
			attributes = append(attributes, name+`="true"`)
		} else {
			attributes = append(attributes, name)
		}
	}
	for name, value := range t.values {
		if value == "false" && boolean[name] {
			continue
		}
		attributes = append(attributes, name+`="`+html.EscapeString(value)+`"`)
	}
	slices.Sort(attributes)
	end := ">"
	if t.closed {
		end = "/>"
	}
	return strings.Join(append([]string{"<" + t.name}, attributes...), " ") + end
}

// enumerated attributes need their "true" spelled out.
var enumerated = map[string]bool{"contenteditable": true, "draggable": true, "spellcheck": true}

// boolean attributes hold by being there, whatever they say. These are the ones
// that go-app sets as booleans in the browser.
var boolean = map[string]bool{
	"async": true, "autofocus": true, "autoplay": true, "checked": true, "default": true, "defer": true,
	"disabled": true, "hidden": true, "ismap": true, "loop": true, "multiple": true, "muted": true, "open": true,
	"readonly": true, "required": true, "reversed": true, "selected": true,
}
