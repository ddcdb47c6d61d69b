package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"
	"golang.org/x/text/language"

	"roofside/app/desk"
	"roofside/app/text"
	"roofside/app/widget"
	"roofside/calc/number"
	"roofside/calc/unit"
)

// Settings chooses units, number format and appearance.
type Settings struct{ leaf }

// NewSettings returns the page.
func NewSettings() *Settings { return &Settings{leaf{route: "/settings/"}} }

// formats are the number formats offered by name; the browser's own comes
// first as "".
var formats = []string{"", "en-US", "es-MX", "es-ES", "de-DE", "fr-CA", "de-CH", "en-IN", "ar-EG"}

var (
	systems = map[string]unit.System{"us": unit.US, "si": unit.SI}
	looks   = []string{"", "light", "dark", "sun"} // the device's own first
)

// Render draws the page.
func (p *Settings) Render() app.UI {
	return p.draw(shared.T("settings.title"), func(b *bench) app.UI {
		return app.Div().Class("fields").Body(
			b.ready(),
			b.setting1("settings.units", []string{"us", "si"}, systemName(b.Settings.Units), func(s string) {
				b.ChangeUnits(systems[s])
			}),
			b.setting1("settings.language", append([]string{""}, text.Tags()...), b.Settings.Language, func(s string) {
				b.Change(func(t *desk.Settings) { t.Language = s })
				b.speak()
			}),
			b.setting1("settings.numbers", formats, b.Settings.Numbers, func(s string) {
				b.Change(func(t *desk.Settings) { t.Numbers = s })
			}),
			b.setting1("settings.look", looks, b.Settings.Look, func(s string) {
				b.Change(func(t *desk.Settings) { t.Look = s })
			}),
		)
	})
}

func (b *bench) setting1(key string, values []string, now string, take func(string)) app.UI {
	c := widget.Choice{Key: key, Label: b.T(key), OnTake: b.guardedText(take)}
	for _, v := range values {
		label := ""
		switch {
		case key == "settings.language" && v != "": // to be found by who can't read the others
			label = text.For(v).T("settings.language.own")
		case key == "settings.numbers" && v != "":
			label = v + "  " + number.For(language.MustParse(v)).WriteFixed(1234567.5, 1)
		default:
			label = b.T(key + "." + v)
		}
		c.Options = append(c.Options, widget.Option{Value: v, Label: label, Chosen: v == now})
	}
	return c.UI()
}
