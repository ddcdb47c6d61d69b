package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/record"
)

// amps asks what the old motor drew, and plate what the new one may.
func (b *bench) amps() app.UI {
	return b.section("amps", b.T("section.amps"), b.T("section.amps.sub"), func() app.UI {
		keys := []string{"old.motor-power", "old.motor-volts", "old.motor-amps", "old.amps-1"}
		if b.Fan.Supply.Value() != record.SinglePhase {
			keys = append(keys, "old.amps-2", "old.amps-3", "old.volts-12", "old.volts-23", "old.volts-31")
		} else {
			keys = append(keys, "old.volts-12")
		}
		keys = append(keys, "old.no-load-amps", "old.air-temperature", "old.tipped-up")
		if b.Fan.Supply.Value() == record.TwoSpeed {
			keys = append(keys, "old.run-at")
		}
		return b.fields(keys...)
	})
}

func (b *bench) plate() app.UI {
	return b.section("plate", b.T("section.plate"), b.T("section.plate.sub"), func() app.UI {
		keys := []string{"new.motor-power", "new.motor-volts", "new.motor-amps", "new.service-factor-amps", "new.service-factor", "new.motor-speed"}
		if b.Fan.Supply.Value() == record.Inverter {
			keys = append(keys, "new.motor-frequency", "new.frequency")
		}
		return b.fields(append(keys, "new.wheel-max-speed", "new.no-load-amps", "coldest-air")...)
	})
}

// cautions stand where the hand is about to go in.
func (b *bench) cautions(which ...string) app.UI {
	return b.memo("cautions", func() app.UI {
		return app.Aside().Class("cautions").Aria("label", b.T("cautions")).Body(
			app.H2().Text(b.T("cautions")),
			app.Ul().Body(app.Range(which).Slice(func(i int) app.UI { return app.Li().Text(b.T("caution." + which[i])) })),
		)
	}, append(which, b.words.Tag)...)
}
