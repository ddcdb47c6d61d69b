//go:build e2e

package e2e

import (
	"fmt"
	"testing"
)

// Where the browser does not promise to keep what is stored, that is said once; where
// it does, never.
func TestTheReminderComesOnce(t *testing.T) {
	t.Parallel()
	for granted, times := range map[bool]int{false: 1, true: 0} {
		t.Run(fmt.Sprint(granted), func(t *testing.T) {
			tab := NewPhone(t).NewTab()
			tab.before(fmt.Sprintf(`navigator.storage.persist = async () => { window.asked = (window.asked ?? 0) + 1; return %v; };`, granted))
			tab.Go("/")
			const reminders = `document.querySelectorAll('button[name="reminded"]').length`
			start := func(nth int) {
				t.Helper()
				tab.Click(`button[name^="start"]`)
				tab.Await(fmt.Sprintf(`document.querySelectorAll(".fan").length === %d && window.asked > 0`, nth))
				tab.Rest()
			}
			start(1)
			tab.Await(fmt.Sprintf(`%s === %d`, reminders, times))
			if times > 0 {
				tab.AwaitText(".home", "does not promise to keep")
				tab.Click(`button[name="reminded"]`)
			}
			tab.Await(reminders + ` === 0`)
			start(2)
			tab.Await(reminders + ` === 0`)
			tab.Reload()
			start(3)
			tab.Await(reminders + ` === 0`)
		})
	}
}
