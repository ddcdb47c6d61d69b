package page

import (
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
)

// All fans of a roof are printed as each is by itself, in their order; what is not asked
// for, or has changed since, is not drawn.
func TestARoofOnPaper(t *testing.T) {
	before := shared
	t.Cleanup(func() { shared = before })
	shared = newBench(store.Memory(), "en-US")
	b := shared
	b.startDemo()
	roofs := b.Fans.Roofs()
	r := roofs[len(roofs)-1]
	home := func() string { return whole(t, app.Composer(NewHome())) }
	if html := home(); strings.Contains(html, `class="sheet"`) {
		t.Fatal("sheets are drawn that nobody asked for")
	}
	b.putOnPaper(printRoof + r.ID)
	html := home()
	open := b.ID
	_, rest, _ := strings.Cut(html, `class="paper"`)
	for i, id := range r.Fans {
		b.Take(id)
		alone := whole(t, &list{ui: func() app.UI { return newRecordView(b).sheet() }})
		start, end := strings.Index(alone, "<article"), strings.LastIndex(alone, "</article>")
		sheet, after, found := strings.Cut(rest, "</article>")
		if sheet = sheet[max(0, strings.Index(sheet, "<article")):]; !found || bare(sheet) != bare(alone[start:end]) {
			t.Errorf("sheet %d is not that of %s:\n%s", i+1, id, sheet)
		}
		rest = after
	}
	if len(r.Fans) != 4 || strings.Contains(rest, "<article") {
		t.Error("more sheets than fans")
	}
	if b.crash != "" {
		t.Error(b.crash)
	}

	b.Take(open)
	b.putOnPaper(printRoof + r.ID)
	b.stand("surveyed")
	if strings.Contains(home(), `class="sheet"`) {
		t.Error("the sheets outlast a change")
	}
	b.putOnPaper(printRoof + "another")
	if strings.Contains(home(), `class="sheet"`) {
		t.Error("the sheets of another roof are drawn")
	}
}

// bare leaves out how deep lines are indented, and in which order attributes stand.
func bare(html string) string { return strings.Join(strings.Fields(inOrder(html)), " ") }

// The sheet says what is held against the fan, and the label what starts by itself.
func TestPaperSaysStop(t *testing.T) {
	for state, want := range map[string][]string{
		strings.Replace(demoFan, "new.discharge=up", "new.discharge=down", 1) + "&hood.space-pressure=0.05inwg": {"Stop", "Negative pressure, Old against new"},
		demoFan + "&new.restart=automatic": {"lock out before reaching in"},
	} {
		draw(t, state, nil)
		html := whole(t, &list{ui: func() app.UI {
			v := newRecordView(shared)
			return app.Div().Body(v.sheet(), v.coverLabel())
		}})
		for _, s := range want {
			if !strings.Contains(html, s) {
				t.Errorf("%q is not on paper", s)
			}
		}
		if strings.Contains(html, " · <") {
			t.Error("a roof without a name is set off from the fan's")
		}
	}
}
