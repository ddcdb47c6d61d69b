package user

import "testing"

func TestFine(t *testing.T) {
	if !Fine(4) || Fine(5) || Fine(6) {
		t.Error("fine")
	}
}
