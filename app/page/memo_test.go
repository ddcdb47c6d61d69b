package page

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/calc/record"
)

// What is not drawn again at a stroke must be what it would be if it were: a page that
// has lived through changes is the page drawn from nothing.
func TestNothingOnAPageIsStale(t *testing.T) {
	before := shared
	t.Cleanup(func() { shared = before })
	for _, p := range []struct {
		name  string
		draw  func() app.UI
		every int // so many keys apart: a page with all of it open takes a while to draw
	}{
		{"drive", NewDrive().Render, 9}, {"airflow", NewAirflow().Render, 9},
		{"belt", NewBelt().Render, 9}, {"power", NewPower().Render, 9},
		{"raceway", NewRaceway().Render, 9}, {"record", NewRecord().Render, 3},
	} {
		t.Run(p.name, func(t *testing.T) {
			shared = newBench(store.Memory(), "en-US")
			b := shared
			b.Follow(strings.ReplaceAll(demoFan+leftAs+"&wire.w1.count=3&wire.w1.size=12", " ", "%20"))
			everything(b)
			var keys []string
			for k := range b.Fan.Places() {
				keys = append(keys, k)
			}
			lived, e := &living{draw: p.draw}, app.NewTestEngine()
			if err := e.Load(lived); err != nil {
				t.Fatal(err)
			}
			e.ConsumeAll()
			for i, key := range keys {
				if i%p.every > 0 && !(p.name == "record" && strings.HasPrefix(key, "new.") && record.Silent(key)) {
					continue
				}
				for second := range 2 {
					lived.ctx.Dispatch(func(app.Context) { change(b, key, second) })
					e.ConsumeAll()
					got := inOrder(app.HTMLString(lived))
					clear(b.fieldsDrawn)
					b.reckoning, b.matching = nil, nil
					want := inOrder(whole(t, &living{draw: p.draw}))
					if got != want {
						from, to := apart(got, want)
						t.Fatalf("after %s the page shows\n%s\nand drawn from nothing\n%s", key, from, to)
					}
				}
			}
		})
	}
}

// living is a page that is drawn again where go-app finds that it has changed.
type living struct {
	app.Compo
	draw func() app.UI
	ctx  app.Context
}

func (l *living) OnPreRender(ctx app.Context) { l.ctx = ctx }
func (l *living) Render() app.UI              { return l.draw() }

// change makes one of two changes to a place, as a hand would.
func change(b *bench, key string, second int) {
	switch place := b.place(key).(type) {
	case nil: // its row is gone
	case record.Selector:
		options := place.Options()
		b.take(key, options[second*(len(options)-1)])
	default:
		b.typing = key
		b.Type(key, place, [2]string{"12", "13"}[second])
	}
}

var (
	tag        = regexp.MustCompile(`<[^>]*>`)
	attributes = regexp.MustCompile(` [\w-]+(="[^"]*")?`)
)

// inOrder puts the attributes of each tag in order: go-app writes them in any.
func inOrder(html string) string {
	return tag.ReplaceAllStringFunc(html, func(tag string) string {
		all := attributes.FindAllString(tag, -1)
		slices.Sort(all)
		return attributes.ReplaceAllString(tag, "") + strings.Join(all, "")
	})
}

// apart returns where two texts begin to differ.
func apart(a, b string) (string, string) {
	i := 0
	for i < len(a) && i < len(b) && a[i] == b[i] {
		i++
	}
	from := max(0, i-200)
	return a[from:min(len(a), i+200)], b[from:min(len(b), i+200)]
}
