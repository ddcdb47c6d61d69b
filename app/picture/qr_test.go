package picture

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// capacities in bytes of a version at levels L, M, Q and H, from memory of ISO/IEC
// 18004:2015, table 7.
var capacities = []struct {
	version    int
	l, m, q, h int
}{
	{1, 17, 14, 11, 7}, {2, 32, 26, 20, 14}, {5, 106, 84, 60, 44}, {9, 230, 180, 130, 98}, {10, 271, 213, 151, 119},
	{20, 858, 666, 482, 382}, {21, 929, 711, 509, 403}, {22, 1003, 779, 565, 439}, {23, 1091, 857, 611, 461}, {24, 1171, 911, 661, 511},
}

func TestTheLeastVersionIsTaken(t *testing.T) {
	for _, c := range capacities {
		for i, n := range []int{c.h, c.q, c.m, c.l, c.l + 1} {
			v, l, ok := QR{Text: strings.Repeat("x", n)}.shape()
			if c.version == largestQR && n > c.l {
				if ok {
					t.Errorf("%d bytes go into version %d", n, v)
				}
				continue
			}
			switch {
			case !ok:
				t.Errorf("%d bytes don't fit", n)
			case i == 3 && (int(v) != c.version || l != 0):
				t.Errorf("%d bytes go into %v-%v, want %d-L", n, v, l, c.version)
			case i == 4 && int(v) != c.version+1:
				t.Errorf("%d bytes go into version %d, want %d", n, v, c.version+1)
			case i < 3 && int(v) > c.version:
				t.Errorf("%d bytes go into version %d, want %d at most", n, v, c.version)
			}
		}
	}
	// 14 bytes fill 1-M, 11 fill 1-Q: the room left over goes to the correction.
	for n, want := range map[int]string{17: "L", 15: "L", 14: "M", 12: "M", 11: "Q", 7: "H"} {
		if v, l, _ := (QR{Text: strings.Repeat("x", n)}).shape(); v != 1 || l.String() != want {
			t.Errorf("%d bytes go into %v-%v, want 1-%s", n, v, l, want)
		}
	}
}

// drawn reads the modules back off the path.
func drawn(t *testing.T, q QR) [][]bool {
	t.Helper()
	markup := app.HTMLString(q.UI())
	if n := strings.Count(markup, "<path"); n != 1 {
		t.Fatalf("%d paths", n)
	}
	side, err := strconv.Atoi(regexp.MustCompile(`viewBox="0 0 (\d+) `).FindStringSubmatch(markup)[1])
	if err != nil {
		t.Fatal(err)
	}
	grid := make([][]bool, side)
	for y := range grid {
		grid[y] = make([]bool, side)
	}
	d := regexp.MustCompile(` d="([^"]*)"`).FindStringSubmatch(markup)[1]
	for box := range strings.SplitSeq(strings.TrimSuffix(d, "z"), "z") {
		var x, y, w, back int
		if _, err := fmt.Sscanf(box, "M%d %dh%dv1h%d", &x, &y, &w, &back); err != nil || back != -w {
			t.Fatalf("%q: %v", box, err)
		}
		for i := range w {
			grid[y][x+i] = true
		}
	}
	return grid
}

// What the standard fixes of a symbol: the quiet zone, the three finders, the
// timing between them.
func TestTheCodeIsDrawnAsTheStandardHasIt(t *testing.T) {
	for _, n := range []int{10, 200, 872, 1171} {
		grid := drawn(t, QR{Text: strings.Repeat("aB3-", n)[:n]})
		side := len(grid)
		for i := range side {
			for k := range quiet {
				if grid[k][i] || grid[side-1-k][i] || grid[i][k] || grid[i][side-1-k] {
					t.Fatalf("%d bytes: the quiet zone is broken at %d", n, i)
				}
			}
		}
		finder := []string{"1111111", "1000001", "1011101", "1011101", "1011101", "1000001", "1111111"}
		for _, corner := range [][2]int{{quiet, quiet}, {side - quiet - 7, quiet}, {quiet, side - quiet - 7}} {
			for y, row := range finder {
				for x, want := range row {
					if grid[corner[1]+y][corner[0]+x] != (want == '1') {
						t.Fatalf("%d bytes: the finder at %v is broken", n, corner)
					}
				}
			}
		}
		for i := 8; i < side-2*quiet-8; i++ {
			if dark := i%2 == 0; grid[quiet+6][quiet+i] != dark || grid[quiet+i][quiet+6] != dark {
				t.Fatalf("%d bytes: the timing is broken at %d", n, i)
			}
		}
	}
}

func TestACodeThatDoesNotFitIsNotDrawn(t *testing.T) {
	q := QR{Text: strings.Repeat("x", 1172)}
	if markup := app.HTMLString(q.UI()); q.Fits() || strings.Contains(markup, "svg") {
		t.Errorf("fits: %t, %s", q.Fits(), markup)
	}
}

func TestAHostileTextStaysText(t *testing.T) {
	markup := app.HTMLString(QR{Text: hostile, Title: hostile, Description: hostile}.UI())
	if strings.Contains(markup, "<script") || strings.Contains(markup, " onload=x ") {
		t.Error(markup[:300])
	}
}
