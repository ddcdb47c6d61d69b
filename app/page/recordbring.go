package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/app/widget"
	"roofside/calc/sheet"
)

// bring is what to take along: for this fan, or for every fan of its roof.
func (v *recordView) bring() app.UI {
	return v.section("bring", v.T("section.bring"), v.T("section.bring.sub"), func() app.UI {
		roof := v.open["bring roof"]
		scope := func(name, label string, whole bool) app.UI {
			return widget.Button(name, label, "choice", v.guarded(func() { v.open["bring roof"] = whole })).Aria("pressed", boolean(roof == whole))
		}
		return app.Div().Body(
			app.If(v.ID != store.Scratch, func() app.UI {
				return app.Div().Class("choices").Body(scope("bring fan", v.T("bring.fan"), false), scope("bring roof", v.T("bring.roof"), true))
			}),
			v.lists(roof),
			widget.Button("copy materials", v.T("bring.copy"), "wide", v.guarded(func() { v.copyText(v.listed()) })),
			app.Div().Body(app.If(v.copied != "", func() app.UI {
				return app.Textarea().Class("field-input lines").Rows(6).ReadOnly(true).Aria("label", v.T("bring.copied")).Text(v.copied)
			})),
		)
	})
}

// lists draws the list of the one fan or of all.
func (v *recordView) lists(roof bool) app.UI {
	if roof { // another tab may have changed its fans
		return v.materials(v.wholeRoof())
	}
	return v.standing("bring", func() app.UI { return v.materials(sheet.Materials(v.Fan)) }, v.Fits())
}

// listed is the list as text; it is made when it is asked for.
func (b *bench) listed() string {
	if b.open["bring roof"] {
		return b.materialsText((&recordView{bench: b}).wholeRoof())
	}
	return b.materialsText(sheet.Materials(b.Fan))
}

// wholeRoof sums what all fans of the open fan's roof ask for.
func (v *recordView) wholeRoof() []sheet.Material {
	roofs := v.Fans.Roofs()
	i := store.RoofOf(roofs, v.ID)
	if i < 0 {
		return sheet.Materials(v.Fan)
	}
	var lists [][]sheet.Material
	for _, id := range roofs[i].Fans {
		f := v.Fan
		if id != v.ID {
			var err error
			if f, _, err = v.Fans.Load(id); err != nil {
				continue // what can't be read is set aside, and handed out on the page of the fans
			}
		}
		lists = append(lists, sheet.Materials(f))
	}
	return sheet.Sum(lists)
}

// copyText hands text to the clipboard, and shows it where the browser has none for
// this page.
func (b *bench) copyText(text string) {
	b.copied = text
	clipboard(text)
}
