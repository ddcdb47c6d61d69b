package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

// A label speaks for a listed hood: it is what the listing was given for. Of a hood
// that is said to be unlisted the code's table holds, whatever is stuck to it
// (mechanical code 507; the rate from memory: 400 cfm for each foot).
func TestALabelSpeaksForAListedHoodOnly(t *testing.T) {
	const hood = "hood.label-airflow=1000cfm&hood.kind=wall&hood.duty=heavy&hood.length=7ft"
	for listing, want := range map[string]float64{"": 1000, "listed": 1000, "unlisted": 2800} {
		f := fan(t, hood+"&hood.listing="+listing)
		value(t, "listing "+listing, sheet.HoodLeast(f), want*cfm)
	}
}

// Where neither the least nor the airflow is known, what the least hangs on is asked
// for first: an airflow measured would be held against nothing.
func TestAHoodOfNothingAsksForItsListing(t *testing.T) {
	f := fan(t, report+"&hood.kind=wall&hood.duty=heavy&hood.length=7ft")
	v := hoodVerdict(f)
	if v.Level != sheet.Unjudged || len(v.Wanted) == 0 || f.KeyOf(v.Wanted[0]) != "hood.listing" {
		t.Errorf("%+v", v)
	}
}
