package page

import (
	"time"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/calc/record"
	"roofside/calc/sheet"
)

// A brief is what the list of fans says of one, kept with the text that it was
// read from: a roof of many fans is drawn at every stroke.
type brief struct {
	text    string
	name    string
	stage   record.Stage
	weighed bool // what follows is known
	worst   sheet.Verdict
	judged  bool
}

// briefOf returns what the list says of a kept fan: at once its name and step, and how
// it stands once it has been weighed.
func (b *bench) briefOf(id string) brief {
	text := b.Fans.Text(id)
	s, ok := b.briefs[id]
	if !ok || s.text != text {
		name, step := record.Glance(text)
		s = brief{text: text, name: name.Text(), stage: step.Value()}
		if app.IsServer {
			s.weigh(b, id)
		}
		b.briefs[id] = s
	}
	return s
}

// weigh reads the whole fan. One that can't be read is set aside.
func (s *brief) weigh(b *bench, id string) {
	s.weighed = true
	f, _, err := b.Fans.Load(id)
	if err != nil {
		b.Damaged = true
		return
	}
	s.name, s.stage = f.Name.Text(), f.Step.Value()
	s.worst, s.judged = sheet.Overall(f)
}

// overall returns how the open fan stands. On the page with the fans only its name and
// its step are changed, which nothing is judged by.
func (b *bench) overall() brief {
	if o := &b.weighed; o.of != b.Fan || o.loads != b.Loads() {
		o.of, o.loads = b.Fan, b.Loads()
		o.worst, o.judged = sheet.Overall(b.Fan)
	}
	return b.weighed.brief
}

// To weigh all fans of a roof takes a slow phone seconds. It is done a little at a
// time, with the hand let in between.
const (
	weighFor  = 20 * time.Millisecond
	weighRest = 30 * time.Millisecond
)

// weighLater weighs the fans that have not been weighed, the first ones first.
func (b *bench) weighLater(roofs []store.Roof) {
	if b.weighing || !b.live {
		return
	}
	var due []string
	for _, r := range roofs {
		for _, id := range r.Fans {
			if s, drawn := b.briefs[id]; drawn && !s.weighed && id != b.ID {
				due = append(due, id)
			}
		}
	}
	if len(due) == 0 {
		return
	}
	b.weighing = true
	b.ctx.After(weighRest, func(app.Context) {
		b.weighing = false
		for end := time.Now().Add(weighFor); len(due) > 0 && time.Now().Before(end); due = due[1:] {
			s := b.briefs[due[0]]
			s.weigh(b, due[0])
			b.briefs[due[0]] = s
		}
	})
}
