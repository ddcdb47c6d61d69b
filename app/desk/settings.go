package desk

import (
	"encoding/json"

	"golang.org/x/text/language"

	"roofside/app/store"
	"roofside/calc/number"
	"roofside/calc/unit"
)

// Settings is how the user wants values and the screen to look. Language and
// number format are separate choices; "" follows the browser.
type Settings struct {
	Units    unit.System            `json:"units"`
	Fields   map[string]unit.System `json:"fields,omitempty"`
	Numbers  string                 `json:"numbers,omitempty"`
	Language string                 `json:"language,omitempty"`
	Look     string                 `json:"look,omitempty"` // "", light, dark, sun
	Reminded bool                   `json:"reminded,omitempty"`

	browser string
}

const settingsEntry = "settings"

func readSettings(shelf store.Shelf, browserLanguage string) Settings {
	s := Settings{Units: systemOf(browserLanguage)}
	if text, ok := shelf.Get(settingsEntry); ok {
		if err := json.Unmarshal([]byte(text), &s); err != nil {
			s = Settings{Units: systemOf(browserLanguage)} // settings can be made again; a fan can't wait for them
		}
	}
	if s.Fields == nil {
		s.Fields = map[string]unit.System{}
	}
	s.browser = browserLanguage
	return s
}

// systemOf returns the habit of a browser's language: SI where a region is
// named that isn't the United States.
func systemOf(tag string) unit.System {
	t, err := language.Parse(tag)
	if err != nil {
		return unit.US
	}
	if region, sure := t.Region(); sure == language.Exact && region.String() != "US" {
		return unit.SI
	}
	return unit.US
}

func (s Settings) numberTag() language.Tag {
	for _, tag := range []string{s.Numbers, s.browser} {
		if t, err := language.Parse(tag); err == nil && tag != "" {
			return t
		}
	}
	return language.AmericanEnglish
}

// TextTag returns the language of the words on the screen.
func (s Settings) TextTag() string {
	if s.Language != "" {
		return s.Language
	}
	return s.browser
}

// Change changes the settings and shows the record by them.
func (d *Desk) Change(act func(*Settings)) {
	act(&d.kept)
	d.keepSettings()
	d.Ask(act)
}

// Ask shows the record by other settings until the program ends; those that are
// kept stay.
func (d *Desk) Ask(act func(*Settings)) {
	act(&d.Settings)
	d.Locale = number.For(d.Settings.numberTag())
	d.Reload()
}

// ChangeUnits switches every field to a system.
func (d *Desk) ChangeUnits(y unit.System) {
	d.Change(func(s *Settings) {
		s.Units = y
		clear(s.Fields)
	})
}

func (d *Desk) keepSettings() {
	text, err := json.Marshal(d.kept)
	if err == nil {
		err = d.Fans.Shelf.Put(settingsEntry, string(text))
	}
	d.note(err)
}
