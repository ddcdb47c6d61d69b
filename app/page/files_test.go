package page

import (
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/calc/record"
)

// A roof says before it holds more fans than its file can.
func TestARoofSaysThatItIsNearlyFull(t *testing.T) {
	before := shared
	t.Cleanup(func() { shared = before })
	shared = newBench(store.Memory(), "en-US")
	f := record.NewFan()
	f.Apply(map[string]string{"name": "One of many"})
	home := func(fans int) string {
		for len(shared.Fans.IDs()) < fans {
			shared.Start("", f.Clone())
		}
		return whole(t, app.Composer(NewHome()))
	}
	const said = "its file holds 200"
	if strings.Contains(home(189), said) {
		t.Error("said of 189 fans")
	}
	if shown := home(190); !strings.Contains(shown, "190 fans stand on this roof, and "+said) || !strings.Contains(shown, `"start `) {
		t.Error("nothing said of 190 fans, or no further one offered")
	}
	if shown := home(200); strings.Contains(shown, `"start `) {
		t.Error("another fan is offered beside 200")
	}
}
