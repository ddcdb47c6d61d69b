package record

import (
	"encoding/json"
	"strings"
)

// Glance returns name and step of a fan as [Fan.Marshal] stores it, without reading
// the rest: a list of many fans shows no more at first. What is not stored so gives
// neither, and is for [Unmarshal] to refuse.
func Glance(stored string) (name Word, step Choice[Stage]) {
	_ = name.Set(glance(stored, "name")) // text that is refused is kept as garbled
	_ = step.Set(glance(stored, "step"))
	return name, step
}

// glance returns the text of a key. Within a text each quote is escaped, so that a
// name in bare quotes before a colon is a key and nothing else.
func glance(stored, key string) (text string) {
	_, rest, ok := strings.Cut(stored, `"`+key+`":"`)
	if !ok {
		return ""
	}
	end := 0
	for end < len(rest) && rest[end] != '"' {
		if rest[end] == '\\' {
			end++
		}
		end++
	}
	if end >= len(rest) || json.Unmarshal([]byte(`"`+rest[:end]+`"`), &text) != nil {
		return ""
	}
	return text
}
