//go:build e2e

package e2e

import (
	"fmt"
	"math"
	"strings"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// field is the CSS of the control with a name: an input, a choice or a text.
func field(name string) string {
	return fmt.Sprintf(`:is(input, select, textarea)[name=%q]`, name)
}

// Type replaces what stands in the field by a text, key by key.
func (t *Tab) Type(name, text string) {
	t.t.Helper()
	t.focus(name)
	t.do("emptying "+name, chromedp.KeyEvent("a", chromedp.KeyModifiers(chromedp.ModifierCtrl)), chromedp.KeyEvent(kb.Backspace))
	t.Keys(text)
}

// Keys presses keys wherever the focus is.
func (t *Tab) Keys(text string) {
	t.t.Helper()
	t.do("typing "+text, chromedp.KeyEvent(text))
}

// focus goes to a field. It is found and gone to in one breath: between two, the
// page may be drawn anew.
func (t *Tab) focus(name string) {
	t.t.Helper()
	t.Await(fmt.Sprintf(`(() => {
		const found = document.querySelector(%q);
		found?.scrollIntoView({ block: "center" });
		found?.focus();
		return !!found && document.activeElement === found;
	})()`, field(name)))
}

// Click taps the first element that fits a CSS selector, where it has come to
// rest in the middle of the screen. What covers it for good is a failure, as it
// would be for a thumb. A tap that would go elsewhere, because the page was drawn
// anew in that moment, does not reach the page, and is made again.
func (t *Tab) Click(selector string) {
	t.t.Helper()
	var last string
	for deadline := time.Now().Add(patience); time.Now().Before(deadline); time.Sleep(10 * time.Millisecond) {
		// Between two pages there is nothing to ask; that is no failure yet.
		at, err := eval[aim](t, fmt.Sprintf(aimAt, selector))
		if err != nil || at.Fault != "" {
			last = fmt.Sprint(at.Fault, err)
			continue
		}
		t.do("clicking "+selector, chromedp.MouseClickXY(at.X, at.Y))
		// Where the tap has led to another page, no miss is known.
		if missed, err := eval[bool](t, `!!window.missedTest`); err != nil || !missed {
			return
		}
		last = "the tap would have gone elsewhere"
	}
	t.t.Fatalf("clicking %s: %s", selector, last)
}

type aim struct {
	X     float64 `json:"x"`
	Y     float64 `json:"y"`
	Fault string  `json:"fault"`
}

// aimAt brings an element into the middle of the screen, as a thumb would, for at
// its edges lie the plate that stays in view and the tabs. It says where the element
// is once it has held still for three frames, and lets the next tap reach nothing
// else.
const aimAt = `new Promise((resolve) => {
	const find = () => document.querySelector(%q);
	let at = {}, calm = 0, frames = 0;
	const frame = () => {
		const found = find(), before = at;
		if (calm === 0) found?.scrollIntoView({ block: "center" });
		const box = found?.getClientRects()[0];
		at = box ? { x: box.x + box.width / 2, y: box.y + box.height / 2 } : { fault: found ? "it has no place on the page" : "it is not there" };
		if (box && !found.contains(document.elementFromPoint(at.x, at.y))) at.fault = "something lies on top of it";
		calm = at.fault || at.x !== before.x || at.y !== before.y ? 0 : calm + 1;
		if (calm === 2) {
			guard();
			return resolve(at);
		}
		if (++frames === 60) return resolve({ fault: "it does not hold still", ...at });
		requestAnimationFrame(frame);
	};
	const guard = () => {
		const kinds = ["pointerdown", "mousedown", "pointerup", "mouseup", "click"];
		window.missedTest = false;
		const watch = (event) => {
			if (event.type === "pointerdown") window.missedTest = !find()?.contains(event.target);
			if (window.missedTest) {
				event.preventDefault();
				event.stopImmediatePropagation();
			}
			if (event.type === "click" || !window.missedTest) for (const kind of kinds) removeEventListener(kind, watch, true);
		};
		for (const kind of kinds) addEventListener(kind, watch, true);
	};
	frame();
})`

// Choose sets a choice to one of its values, as a finger would.
func (t *Tab) Choose(name, value string) {
	t.t.Helper()
	t.Await(fmt.Sprintf(`(() => {
		const choice = document.querySelector(%q);
		if (![...choice?.options ?? []].some((o) => o.value === %q)) return false;
		choice.focus();
		choice.value = %q;
		for (const kind of ["input", "change"]) choice.dispatchEvent(new Event(kind, { bubbles: true }));
		return true;
	})()`, field(name), value, value))
}

// FieldText is what stands in the field, once the page is at rest.
func (t *Tab) FieldText(name string) string {
	t.t.Helper()
	t.Rest()
	return Eval[string](t, fmt.Sprintf(`document.querySelector(%q).value`, field(name)))
}

// AwaitText waits until the first element that fits a selector shows a text.
func (t *Tab) AwaitText(selector, text string) {
	t.t.Helper()
	t.Await(fmt.Sprintf(`document.querySelector(%q)?.innerText.includes(%q) || "it says: " + document.querySelector(%q)?.innerText && false`, selector, text, selector))
}

// Text is what the first element that fits a selector shows, once the page is
// at rest.
func (t *Tab) Text(selector string) string {
	t.t.Helper()
	t.Rest()
	return Eval[string](t, fmt.Sprintf(`document.querySelector(%q).innerText`, selector))
}

// answer is the JavaScript for an output's data element, or undefined.
func answer(output string) string {
	return fmt.Sprintf(`document.querySelector('output[name=%q] data[value]')`, output)
}

// Value is the number that an output holds, in the unit it names, once the page
// is at rest. An output without an answer fails the test.
func (t *Tab) Value(output string) (value float64, unit string) {
	t.t.Helper()
	t.Rest()
	read, ok := t.value(output)
	if !ok {
		t.t.Fatalf("output %s holds no answer: %s", output, t.outputText(output))
	}
	return read.Value, read.Unit
}

// AwaitValue waits until an output holds a number within a tolerance.
func (t *Tab) AwaitValue(output string, want, tolerance float64, unit string) {
	t.t.Helper()
	var last reading
	for deadline := time.Now().Add(patience); time.Now().Before(deadline); time.Sleep(10 * time.Millisecond) {
		read, ok := t.value(output)
		if last = read; ok && math.Abs(read.Value-want) <= tolerance && read.Unit == unit {
			return
		}
	}
	t.t.Fatalf("output %s: want %v ± %v %s, last %+v: %s", output, want, tolerance, unit, last, t.outputText(output))
}

// AwaitNoValue waits until an output is there and holds no answer.
func (t *Tab) AwaitNoValue(output string) {
	t.t.Helper()
	t.Await(fmt.Sprintf(`document.querySelector('output[name=%q]') && !%s`, output, answer(output)))
}

type reading struct {
	Value float64 `json:"value"`
	Unit  string  `json:"unit"`
}

func (t *Tab) value(output string) (reading, bool) {
	t.t.Helper()
	read := Eval[[]reading](t, fmt.Sprintf(`(() => {
		const data = %s;
		return data && data.value !== "" ? [{ value: Number(data.value), unit: data.dataset.unit ?? "" }] : [];
	})()`, answer(output)))
	if len(read) == 0 {
		return reading{}, false
	}
	return read[0], true
}

func (t *Tab) outputText(output string) string {
	t.t.Helper()
	return strings.TrimSpace(Eval[string](t, fmt.Sprintf(`document.querySelector('output[name=%q]')?.innerText ?? "there is no such output"`, output)))
}

// Rest waits until the page has not changed for some frames: go-app renders on
// a clock of its own, so the answer to a key comes a little after it.
func (t *Tab) Rest() {
	t.t.Helper()
	Eval[bool](t, rest)
}

const rest = `new Promise((resolve) => {
	let calm = 0;
	const watch = new MutationObserver(() => { calm = 0; });
	watch.observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
	const frame = () => {
		if (++calm < 6) return requestAnimationFrame(frame);
		watch.disconnect();
		resolve(true);
	};
	requestAnimationFrame(frame);
})`
