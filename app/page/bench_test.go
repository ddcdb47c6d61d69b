package page

import (
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
)

// BenchmarkKeystroke is what one stroke costs before the browser is touched:
// text to record, record to storage, answers, and the page built anew.
func BenchmarkKeystroke(b *testing.B) {
	for _, c := range []struct {
		name, state, open, key string
		page                   interface{ Render() app.UI }
		texts                  [2]string
	}{
		{"drive", demoFan, "target", "target.speed", NewDrive(), [2]string{"71", "712"}},
		{"airflow", demoFan, "reference", "target.airflow", NewAirflow(), [2]string{"320", "3200"}},
		{"belt", demoFan, "base", "new.center-distance", NewBelt(), [2]string{"15.7", "15.75"}},
		{"power", powerDemo + evenAmps + proven, "readings", "trial.t1.amps-1", NewPower(), [2]string{"5.", "5.5"}}, // every stroke moves the bars
		{"raceway", demoFan, "circuit", "circuit.length", NewRaceway(), [2]string{"15", "150"}},
		{"record", demoFan + leftAs, "closing", "handover.notes", NewRecord(), [2]string{"Curb out of leve", "Curb out of level"}},
		{"record, fit", demoFan + leftAs, "fit", "new.weight", NewRecord(), [2]string{"18", "185"}},
	} {
		b.Run(c.name, func(b *testing.B) {
			shared = newBench(store.Memory(), "en-US")
			shared.Follow(strings.ReplaceAll(c.state, " ", "%20"))
			shared.open[c.open] = true
			b.ReportAllocs()
			for i := 0; b.Loop(); i++ {
				shared.Type(c.key, shared.place(c.key), c.texts[i%2])
				c.page.Render()
			}
		})
	}
}
