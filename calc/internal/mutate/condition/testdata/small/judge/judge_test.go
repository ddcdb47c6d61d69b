package judge

import (
	"fmt"
	"os"
	"testing"
)

func TestHeld(t *testing.T) {
	for _, c := range []struct {
		x, most float64
		want    string
	}{{-1, 3, "refused"}, {0, 3, "within"}, {3, 3, "within"}, {4, 3, "above"}, {0, 0, "above"}} {
		if got := Held(c.x, c.most); got != c.want {
			t.Error(c, got)
		}
	}
}

func TestLoose(t *testing.T) {
	if !Loose(4, true) || Loose(2, true) {
		t.Error("loose")
	}
}

func TestEither(t *testing.T) {
	if Either(false, false) || !Either(true, true) {
		t.Error("either")
	}
}

func ExampleLarger() {
	fmt.Println(Larger(1, 2), Larger(2, 1), Larger(2, 2))
	// Output: 2 2 2
}

func TestCount(t *testing.T) {
	if Count(3) != 3 || os.Getenv("SMALL_FAILS") != "" {
		t.Error("count")
	}
}

func TestOf(t *testing.T) {
	if !Of(0) || !Of(1) || !bool(Named(1, 2)) {
		t.Error("of")
	}
}
