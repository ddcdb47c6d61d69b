//go:build e2e

package e2e

import (
	"bytes"
	"context"
	"regexp"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// left is the example's fan as it was left, with what fits and what does not.
const left = "&trial.t1.accepted=yes&trial.t1.amps-2=4.5A&trial.t1.amps-3=4.6A&trial.t1.volts-12=208V&trial.t1.volts-23=207V&trial.t1.volts-31=208V&trial.t1.belt-age=used&trial.t1.belt-frequency=31Hz" +
	"&trial.t1.alignment-gap=1/32in&new.rotation=marked&hood.airflow=3200cfm&old.weight=160lb&new.weight=185lb&old.curb-width=24in&new.curb-width=23in&old.hinge=left&new.hinge=far" +
	"&handover.by=N.%20N.&handover.on=2026-03-09&handover.belt-due=2026-03-23&handover.notes=Curb%20out%20of%20level"

// The record: checks are ticked and set aside with a reason, differences lead to the
// page that settles them, notes and days outlast a reload.
func TestTheRecord(t *testing.T) {
	t.Parallel()
	tab := NewPhone(t).Open("/record/" + filled + left + "&old.motor-power=2hp&old.motor-volts=208V&old.motor-amps=?")
	tab.AwaitValue("record.speed.target", 712, 0, "rpm")
	tab.AwaitValue("record.speed.left", 700, 0, "rpm")
	tab.AwaitText(".figures", "−1.7 %")
	tab.AwaitText(".dataplate", "Stop")
	tab.open("like")
	tab.AwaitText("#like", "160 lb → 185 lb")
	tab.AwaitText("#like", "does not go over")
	tab.AwaitText("#like", "Tips up another way")

	tab.AwaitText(`output[name="record.next"]`, "Still open: new plate's volts")
	tab.Click(`button[name^="to item"]`)
	tab.Await(`document.activeElement.id === "check-plate-matches"`)
	tab.Click(`button[name="check.plate-matches done"]`)
	tab.AwaitText(`output[name="record.next"]`, "Still open: rotation mark")
	tab.open("part crane")
	tab.Click(`button[name="check.wind not-applicable"]`)
	tab.AwaitText("#part\\ crane", "Say why")
	tab.Type("check.wind-why", "Carried up")
	tab.AwaitText("#part\\ crane", "Does not apply")

	tab.open("closing")
	tab.Type("handover.notes", "First line\nsecond <b>line")
	tab.Reload()
	tab.open("closing")
	if got := tab.FieldText("handover.notes"); got != "First line\nsecond <b>line" {
		t.Errorf("notes came back as %q", got)
	}
	if got := tab.FieldText("handover.belt-due"); got != "2026-03-23" {
		t.Errorf("the day came back as %q", got)
	}
}

// paper prints the page as it stands.
func (t *Tab) paper(params cdppage.PrintToPDFParams) (pdf []byte) {
	t.t.Helper()
	t.do("printing", func(ctx context.Context, target *chromedp.Target) (chromedp.Void, error) {
		out, err := cdp.Call(ctx, target, cdppage.PrintToPDF, params)
		pdf = out.Data
		return chromedp.Void{}, err
	})
	return pdf
}

// A sheet is one side of letter and of A4, also of the longest record; a label is one
// of its own size.
func TestOnPaper(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name, what, path string
		width, height    float64 // inches; 0 for the page's own
	}{
		{"sheet, letter", "sheet", "/record/", 8.5, 11},
		{"sheet, A4, Spanish", "sheet", "/record/?lang=es", 8.27, 11.69},
		{"label", "label", "/record/", 0, 0},
		{"label, Spanish", "label", "/record/?lang=es&look=dark", 0, 0},
	} {
		tab := NewPhone(t).Open(c.path + filled + proving + left[len("&trial.t1.accepted=yes&trial.t1.amps-2=4.5A&trial.t1.amps-3=4.6A&trial.t1.volts-12=208V&trial.t1.volts-23=207V&trial.t1.volts-31=208V"):])
		Eval[bool](tab, `(window.print = () => { window.printed = true; }, true)`)
		tab.Click(`button[name="print ` + c.what + `"]`)
		tab.Await(`window.printed`)
		own := c.width == 0
		params := cdppage.PrintToPDFParams{PreferCSSPageSize: &own}
		if !own {
			params.PaperWidth, params.PaperHeight = c.width, c.height
		}
		pdf := tab.paper(params)
		if n := len(regexp.MustCompile(`/Type\s*/Page\b`).FindAll(pdf, -1)); n != 1 || !bytes.HasPrefix(pdf, []byte("%PDF")) {
			t.Errorf("%s: %d pages", c.name, n)
		}
		tab.Close()
	}
}

// All fans of a roof go on paper in one go, a side each, and nothing else of the page.
func TestARoofOnPaper(t *testing.T) {
	for _, c := range []struct {
		path          string
		width, height float64
	}{{"/", 8.5, 11}, {"/?lang=es&look=dark", 8.27, 11.69}} {
		tab := NewPhone(t).Open(c.path)
		tab.Click(`button[name="demo"]`)
		tab.Await(`document.querySelectorAll(".fan").length === 4`)
		tab.Click(`.roof:last-child .roof-head button`)
		Eval[bool](tab, `(window.print = () => { window.printed = document.querySelectorAll(".paper .sheet").length; }, true)`)
		tab.Click(`button[name^="print "]`)
		tab.Await(`window.printed === 4`)
		if shown := Eval[float64](tab, `document.querySelector(".paper").getBoundingClientRect().height`); shown != 0 {
			t.Errorf("%s: the paper is seen on the screen", c.path)
		}
		own := false
		pdf := tab.paper(cdppage.PrintToPDFParams{PreferCSSPageSize: &own, PaperWidth: c.width, PaperHeight: c.height})
		if n := len(regexp.MustCompile(`/Type\s*/Page\b`).FindAll(pdf, -1)); n != 4 {
			t.Errorf("%s: %d pages", c.path, n)
		}
		tab.Click(`button[name="step next"]`)
		tab.Await(`!document.querySelector(".paper")`)
		tab.Close()
	}
}
