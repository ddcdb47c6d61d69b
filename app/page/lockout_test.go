package page

import (
	"strings"
	"testing"

	"roofside/app/store"
)

// An order that sends the hand to sheave, belt or base says to lock out first, in every
// language; one that runs the belt, to put the guard on.
func TestOrdersLockOutFirst(t *testing.T) {
	b := newBench(store.Memory(), "en-US")
	for language, words := range map[string][2]string{"en-US": {"Lock out first.", "Guard on"}, "es-US": {"Primero el candadeo.", "Ponga la guarda"}} {
		b.Settings.Language = language
		b.speak()
		for _, key := range []string{"move.open", "move.close", "move.tension", "move.check", "belt.order", "belt.told.loose", "belt.told.loose.maybe", "belt.told.tight", "belt.told.tight.maybe", "belt.halt.alignment"} {
			if !strings.HasSuffix(b.T(key), words[0]) {
				t.Errorf("%s: %q", key, b.T(key))
			}
		}
		for _, key := range []string{"belt.run", "belt.speed", "belt.told.taut.new", "belt.told.taut.maybe.new"} {
			if !strings.Contains(b.T(key), words[1]) {
				t.Errorf("%s: %q", key, b.T(key))
			}
		}
	}
}
