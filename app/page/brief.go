package page

import (
	"time"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/calc/record"
	"roofside/calc/sheet"
)

// A brief is what the list of fans says of one. It holds until the fan's entry is
// changed: a roof of many fans is drawn at every stroke.
type brief struct {
	name  string
	stage record.Stage
	standing
}

// A standing is the worst that is said of a fan.
type standing struct {
	weighed bool // what follows is known
	worst   sheet.Verdict
	judged  bool
}

func weigh(f *record.Fan) standing {
	worst, judged := sheet.Overall(f)
	return standing{true, worst, judged}
}

// briefOf returns what the list says of a kept fan: at once its name and step, and how
// it stands once it has been weighed.
func (b *bench) briefOf(id string) brief {
	s, ok := b.briefs[id]
	if !ok {
		name, step := record.Glance(b.Fans.Text(id))
		s = brief{name: name.Text(), stage: step.Value()}
		if app.IsServer {
			s.weigh(b, id)
		}
		b.briefs[id] = s
	}
	return s
}

// outdated drops the brief of a fan whose entry was changed, here or in another tab.
func (b *bench) outdated(key string) {
	if id := store.FanOf(key); id != "" {
		delete(b.briefs, id)
	}
}

// weigh reads the whole fan. One that can't be read is set aside.
func (s *brief) weigh(b *bench, id string) {
	s.weighed = true
	f, _, err := b.Fans.Load(id)
	if err != nil {
		b.Damaged = true
		return
	}
	s.name, s.stage, s.standing = f.Name.Text(), f.Step.Value(), weigh(f)
}

// weighed is how the open fan stands, and when that was known: since then nothing has
// been changed that it is judged by.
type weighed struct {
	standing
	of             *record.Fan
	loads, figures int
}

// overall returns how the open fan stands. While the page with the fans opens, it may be
// left unweighed; later it may not, for the hand is on what stands below. On that page
// only name and step are changed, which nothing is judged by.
func (b *bench) overall(opening bool) standing {
	o := &b.weighed
	if o.of != b.Fan || o.loads != b.Loads() && o.figures != b.Figures() {
		*o = weighed{of: b.Fan, standing: b.briefs[b.ID].standing}
	}
	if !o.weighed && !opening {
		o.standing = weigh(b.Fan)
	}
	o.loads, o.figures = b.Loads(), b.Figures()
	return o.standing
}

// To weigh all fans of a roof takes a slow phone seconds. It is done a little at a
// time.
const weighFor = 20 * time.Millisecond

// weighing returns the way to weigh some of the fans that have not been weighed, the
// first ones first. It is nil once all are.
func (b *bench) weighing(roofs []store.Roof) func() {
	var due []string
	for _, r := range roofs {
		for _, id := range r.Fans {
			if s, drawn := b.briefs[id]; drawn && !s.weighed && id != b.ID {
				due = append(due, id)
			}
		}
	}
	if len(due) == 0 {
		return nil
	}
	return func() {
		for end := time.Now().Add(weighFor); len(due) > 0 && time.Now().Before(end); due = due[1:] {
			s := b.briefs[due[0]]
			s.weigh(b, due[0])
			b.briefs[due[0]] = s
		}
	}
}
