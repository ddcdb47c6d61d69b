package page

import (
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/record"
)

// Where no setting may be run and a sheave of another pitch would reach the target, that
// comes first; where the target itself must not be, none is named.
func TestASheaveIsNamedBeforeMotorAndWheel(t *testing.T) {
	for _, c := range []struct{ target, wheel, says string }{
		{"705 rpm", "710 rpm", "Another motor sheave, of"},
		{"760 rpm", "700 rpm", "No sheave helps: another motor, wheel or target."},
	} {
		state, says := c.target, c.says
		draw(t, strings.NewReplacer("target.speed=712 rpm", "target.speed="+c.target, "wheel-max-speed=1080 rpm", "wheel-max-speed="+c.wheel).Replace(demoFan), nil)
		html := whole(t, app.Composer(NewDrive()))
		if !strings.Contains(html, says) || strings.Contains(html, "motor sheave, of") != strings.Contains(says, "motor sheave, of") {
			t.Errorf("%s: %q is not said, or more", state, says)
		}
	}
}

// plateOf is the data plate of a page, as it is drawn.
func plateOf(t *testing.T, state string, p app.Composer) string {
	t.Helper()
	draw(t, state, nil)
	_, html, _ := strings.Cut(whole(t, p), "dataplate")
	html, _, _ = strings.Cut(html, "</section>")
	return html
}

// What says stop is on the plate: with no speed known, beside other stops, and where
// nothing else is left to do.
func TestThePlateSaysStop(t *testing.T) {
	const deep = "hood.space-pressure=0.05inwg"
	if plate := plateOf(t, deep, NewAirflow()); !strings.Contains(plate, "Negative pressure") {
		t.Errorf("no stop on the plate of Airflow: %s", plate)
	}
	for state, says := range map[string]string{
		deep:                             "Negative pressure",
		"new.discharge=down":             "Old against new",
		deep + "&new.discharge=down":     "and 1 more",
		settled(t, demoFan+leftAs):       "Nothing is open: ready to hand over.",
		settled(t, demoFan+leftAs, deep): "Settle the stop before you hand over.",
	} {
		if plate := plateOf(t, state, NewRecord()); !strings.Contains(plate, says) {
			t.Errorf("%.40s: %q is not on the plate of the record: %s", state, says, plate)
		}
	}
}

// A wheel that turns the wrong way is on every plate that says how the new drive does;
// what Power orders is to reverse it.
func TestThePlatesSayTheWrongWay(t *testing.T) {
	for _, state := range []string{demoFan, demoFan + leftAs} {
		for name, p := range map[string]app.Composer{"Drive": NewDrive(), "Airflow": NewAirflow(), "Belt": NewBelt(), "Record": NewRecord()} {
			state = strings.Replace(state, "&new.rotation=marked", "", 1)
			if plate := plateOf(t, state+"&new.rotation=reverse", p); !strings.Contains(plate, "Rotation") && !strings.Contains(plate, "wrong way") || !strings.Contains(plate, "stop") {
				t.Errorf("not on the plate of %s: %s", name, plate)
			}
		}
	}
}

// The open fan says what stands against it; from the proof of rotation on, a stop is
// passed by knowing it.
func TestAStepPastAStop(t *testing.T) {
	for _, c := range []struct {
		step, rotation, because, done string
	}{
		{"set", "reverse", "Rotation", "Done"},
		{"wired", "reverse", "Rotation", "Done all the same"},
		{"run-in", "reverse", "Rotation", "Done all the same"},
		{"wired", "marked", "", "Done"},
	} {
		draw(t, demoFan+"&step="+c.step+"&new.rotation="+c.rotation, nil)
		shared.Keep()
		_, open, _ := strings.Cut(whole(t, app.Composer(NewHome())), `"fan open"`)
		_, because, _ := strings.Cut(open, `"because"`)
		because = strings.Join(strings.Fields(because), "")
		_, button, _ := strings.Cut(open, `"step next"`)
		button, _, _ = strings.Cut(button, "</button>")
		if strings.HasPrefix(because, ">Rotation") != (c.because != "") || !strings.HasSuffix(strings.TrimSpace(button), c.done) {
			t.Errorf("%+v: because %.60q, button %q", c, because, button)
		}
	}
}

// settled is a fan of which every item is done.
func settled(t *testing.T, link string, more ...string) string {
	t.Helper()
	for _, g := range record.CheckGroups() {
		for _, c := range g.Checks {
			link += "&check." + c + "=done"
		}
	}
	link = strings.Replace(link, "belt-frequency=31Hz", "belt-frequency=49Hz", 1) + "&handover.by=N. N.&handover.on=2026-03-09&handover.belt-due=2026-03-23"
	return strings.Join(append([]string{link}, more...), "&")
}

// Drive and Record say the same of the new fan as it came.
func TestAsShippedIsOneSpeed(t *testing.T) {
	for _, state := range []string{demoFan, demoFan + leftAs, strings.Replace(demoFan, "new.sheave=adjustable", "new.sheave=fixed&new.motor-sheave=3.4in", 1)} {
		draw(t, state, nil)
		drive, kept := valueOf(whole(t, app.Composer(NewDrive())), "shipped.fan-speed"), valueOf(whole(t, app.Composer(NewRecord())), "record.speed.shipped")
		if drive == "" || drive != kept {
			t.Errorf("%q on Drive, %q in the record", drive, kept)
		}
	}
}

// valueOf is the value that an output of a page holds.
func valueOf(html, output string) string {
	_, rest, _ := strings.Cut(html, `name="`+output+`"`)
	rest, _, _ = strings.Cut(rest, "</output>")
	_, rest, _ = strings.Cut(rest, ` value="`)
	rest, _, _ = strings.Cut(rest, `"`)
	return rest
}
