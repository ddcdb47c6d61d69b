//go:build e2e

package e2e

import "testing"

// A journal that opens late, on a device whose storage has lost the last changes: what it
// holds comes onto the screen, and what was typed meanwhile stays.
func TestALateJournalLosesNothing(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/drive/")
	tab.open("old")
	tab.Type("old.motor-speed", "1735")
	tab.Type("old.fan-sheave", "8.6")
	tab.Type("old.motor-sheave", "3.2")
	tab.Await(`new Promise((resolve) => {
		const open = indexedDB.open("roofside", 1);
		open.onsuccess = () => {
			const read = open.result.transaction("entries").objectStore("entries").get("fan/scratch");
			read.onsuccess = () => { open.result.close(); resolve(read.result?.text.includes("3.2 in")); };
		};
	})`)
	tab.Close()

	tab = p.NewTab()
	tab.before(`
		if (!sessionStorage.getItem("lost")) {
			sessionStorage.setItem("lost", "1");
			localStorage.setItem("roofside/fan/scratch", '{"form":1,"fan":{"old.motor-speed":"1700 rpm","old.fan-sheave":"8.6 in"}}');
			localStorage.setItem("roofside/last", "1");
		}
		const open = indexedDB.open.bind(indexedDB);
		Object.defineProperty(window, "indexedDB", { value: { open(...what) {
			const late = {};
			window.openJournal = () => {
				const now = open(...what);
				now.onsuccess = () => { late.result = now.result; late.onsuccess(); };
			};
			return late;
		} } });`)
	tab.Go("/drive/")
	tab.open("old")
	if got := tab.FieldText("old.motor-speed"); got != "1700" {
		t.Fatalf("before the journal is there the screen shows %q", got)
	}
	tab.Type("old.motor-sheave", "3.4") // over what only the journal had
	tab.Type("old.speed", "700")        // and what nobody had
	Eval[any](tab, `(openJournal(), null)`)
	tab.Await(`document.querySelector('[name="old.motor-speed"]').value === "1735"`)
	for field, want := range map[string]string{"old.motor-speed": "1735", "old.fan-sheave": "8.6", "old.motor-sheave": "3.4", "old.speed": "700"} {
		if got := tab.FieldText(field); got != want {
			t.Errorf("%s shows %q, want %q", field, got, want)
		}
	}
	tab.Type("old.motor-speed", "1740")
	tab.Reload()
	tab.open("old")
	if got := tab.FieldText("old.motor-sheave"); got != "3.4" {
		t.Errorf("after a reload the motor sheave is %q", got)
	}
}
