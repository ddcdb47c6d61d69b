package page

import (
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// What was measured at the hood is judged beside its figure; a plan is not.
func TestTheHoodIsJudgedBesideItsFigure(t *testing.T) {
	const label = demoFan + "&hood.listing=listed&hood.label-airflow=3000cfm"
	for state, want := range map[string]string{
		label + "&hood.airflow=2000cfm": "level stop",
		label + "&hood.airflow=3600cfm": "level within",
		label:                           "",
	} {
		draw(t, state, nil)
		html := whole(t, app.Composer(NewRecord()))
		_, row, found := strings.Cut(html, shared.T("figure.hood"))
		row, _, _ = strings.Cut(row, "</th>")
		if !found || want == "" && strings.Contains(row, `"level`) || want != "" && !strings.Contains(row, want) {
			t.Errorf("%s: %s", state[len(demoFan):], row)
		}
	}
}
