//go:build e2e

package e2e

import (
	"context"
	"fmt"
	"math"
	"slices"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/performance"
	"github.com/chromedp/chromedp"
)

// Slow makes the processor so many times slower: 4 stands for a cheap phone.
func (t *Tab) Slow(times float64) {
	t.t.Helper()
	t.do("slowing down", command(emulation.SetCPUThrottlingRate, emulation.SetCPUThrottlingRateParams{Rate: times}))
}

// Strokes are what keystrokes cost, in milliseconds, one entry each.
type Strokes struct {
	Script []float64 // running scripts, the Go program among them
	Task   []float64 // all work of the page: scripts, style, layout, painting
	Answer []float64 // from the key to the last change of the page
}

// byThread counts the time that the page's thread was given, so that what else the
// machine does is not measured with it; Answer goes by the clock.
var byThread = performance.EnableParams{TimeDomain: performance.EnableTimeDomainThreadTicks}

// Until taps an element and gives the time of scripts and of all work of the page, in
// milliseconds, until a JavaScript condition holds and the screen shows it.
func (t *Tab) Until(selector, condition string) (script, task float64) {
	t.t.Helper()
	t.show(selector)
	t.Rest()
	t.do("measuring", command(performance.Enable, byThread))
	t.measured = t.metrics()
	return t.until(condition, fmt.Sprintf(`document.querySelector(%q).click()`, selector))
}

// Onward gives the same for what the page does by itself after that.
func (t *Tab) Onward(condition string) (script, task float64) {
	t.t.Helper()
	return t.until(condition, "look()")
}

func (t *Tab) until(condition, begin string) (script, task float64) {
	t.t.Helper()
	before := t.measured
	Eval[bool](t, fmt.Sprintf(`new Promise((resolve) => {
		const look = () => {
			if (!(%s)) return;
			watch.disconnect();
			requestAnimationFrame(() => setTimeout(() => resolve(true)));
		};
		const watch = new MutationObserver(look);
		watch.observe(document.body, { subtree: true, childList: true });
		%s;
	})`, condition, begin))
	after := t.metrics()
	t.measured = after
	return 1000 * (after["ScriptDuration"] - before["ScriptDuration"]), 1000 * (after["TaskDuration"] - before["TaskDuration"])
}

// Median and P95 sum up a measure.
func Median(ms []float64) float64 { return quantile(ms, 0.5) }
func P95(ms []float64) float64    { return quantile(ms, 0.95) }

func quantile(ms []float64, q float64) float64 {
	sorted := slices.Sorted(slices.Values(ms))
	return sorted[int(math.Ceil(q*float64(len(sorted))))-1] // the nearest rank
}

func (s Strokes) String() string {
	sum := func(ms []float64) string { return fmt.Sprintf("median %.1f, 95 %% %.1f ms", Median(ms), P95(ms)) }
	return fmt.Sprintf("%d keys: script %s; task %s; key to last change %s", len(s.Script), sum(s.Script), sum(s.Task), sum(s.Answer))
}

// show brings an element into the middle of the screen.
func (t *Tab) show(selector string) {
	t.t.Helper()
	t.Await(fmt.Sprintf(`(document.querySelector(%q)?.scrollIntoView({ block: "center" }), !!document.querySelector(%q))`, selector, selector))
}

// Strokes types a text at the end of what stands in a field and measures each
// key by itself. Each key has to be one that the field takes.
func (t *Tab) Strokes(name, text string) Strokes {
	t.t.Helper()
	t.focus(name)
	t.do("measuring", command(performance.Enable, byThread))
	var s Strokes
	for _, key := range text {
		t.Rest()
		Eval[bool](t, watch("input"))
		before := t.metrics()
		t.Keys(string(key))
		answer := Eval[float64](t, `window.strokeTest`)
		after := t.metrics()
		s.Script = append(s.Script, 1000*(after["ScriptDuration"]-before["ScriptDuration"]))
		s.Task = append(s.Task, 1000*(after["TaskDuration"]-before["TaskDuration"]))
		s.Answer = append(s.Answer, answer)
	}
	return s
}

// Taps taps one element after the other and measures each by itself.
func (t *Tab) Taps(selectors ...string) Strokes {
	t.t.Helper()
	t.do("measuring", command(performance.Enable, byThread))
	var s Strokes
	for _, selector := range selectors {
		t.show(selector)
		t.Rest()
		Eval[bool](t, watch("click"))
		before := t.metrics()
		// Not by the driver's own tap: it asks the page where the element is, which
		// would be measured too.
		Eval[any](t, fmt.Sprintf(`(document.querySelector(%q).click(), null)`, selector))
		answer := Eval[float64](t, `window.strokeTest`)
		after := t.metrics()
		s.Script = append(s.Script, 1000*(after["ScriptDuration"]-before["ScriptDuration"]))
		s.Task = append(s.Task, 1000*(after["TaskDuration"]-before["TaskDuration"]))
		s.Answer = append(s.Answer, answer)
	}
	return s
}

// watch promises the time from the next event of a kind to the last change of the
// page after it, 0 if nothing changed. It looks on without a clock of its own,
// which would be measured too: the page counts as done once a timer that every
// change sets anew has run out.
func watch(event string) string {
	return fmt.Sprintf(`(() => {
	window.strokeTest = new Promise((resolve) => {
		let key = 0, last = 0, timer;
		const wait = () => {
			clearTimeout(timer);
			timer = setTimeout(() => { watch.disconnect(); resolve(last - key); }, 150);
		};
		addEventListener(%q, (event) => { last = key = event.timeStamp; wait(); }, { capture: true, once: true });
		const watch = new MutationObserver(() => {
			if (!key) return;
			last = performance.now();
			wait();
		});
		watch.observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
	});
	return true;
})()`, event)
}

func (t *Tab) metrics() map[string]float64 {
	t.t.Helper()
	ctx, cancel := context.WithTimeout(t.ctx, patience)
	defer cancel()
	found, err := chromedp.Run(ctx, chromedp.Action[map[string]float64](func(ctx context.Context, target *chromedp.Target) (map[string]float64, error) {
		result, err := cdp.Call(ctx, target, performance.GetMetrics, cdp.Empty{})
		if err != nil {
			return nil, err
		}
		named := map[string]float64{}
		for _, m := range result.Metrics {
			named[m.Name] = m.Value
		}
		return named, nil
	}))
	if err != nil {
		t.t.Fatal(err)
	}
	return found
}
