package page

import (
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// Where no setting may be run and a sheave of another pitch would reach the target, that
// comes first; where the target itself must not be, none is named.
func TestASheaveIsNamedBeforeMotorAndWheel(t *testing.T) {
	for _, c := range []struct{ target, wheel, says string }{
		{"699 rpm", "703 rpm", "another motor sheave, of"},
		{"760 rpm", "700 rpm", "another motor or wheel, or another target."},
	} {
		state, says := c.target, c.says
		draw(t, strings.NewReplacer("target.speed=712 rpm", "target.speed="+c.target, "wheel-max-speed=1080 rpm", "wheel-max-speed="+c.wheel).Replace(demoFan), nil)
		html := whole(t, app.Composer(NewDrive()))
		if !strings.Contains(html, says) || strings.Contains(html, "motor sheave, of") != strings.Contains(says, "sheave") {
			t.Errorf("%s: %q is not said, or more", state, says)
		}
	}
}
