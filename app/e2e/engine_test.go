//go:build e2e && engines

package e2e

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// A driver is how an engine other than Chromium is told what to do. Both
// protocols take the same hand: the actions of WebDriver.
type driver interface {
	visit(address string) error
	reload() error
	evaluate(expression string) (text string, err error) // of a promise of a text
	act(sources ...source) error
	picture() ([]byte, error)
}

// A source is a hand on the keys or on the pointer.
type source map[string]any

type move map[string]any

// An Engine is one page of such a browser, 360 by 740, and the server of the site.
type Engine struct {
	Site *Server

	t *testing.T
	driver
}

// drivers lists the engines; each starts with a fresh profile, set to American English.
var drivers = map[string]func(t *testing.T) driver{"firefox": newFirefox, "webkit": newWebKit}

func newEngine(t *testing.T, name string) *Engine {
	t.Helper()
	e := &Engine{Site: NewServer(t, listening(t)), t: t, driver: drivers[name](t)}
	t.Cleanup(func() {
		if t.Failed() {
			e.Shoot("failed")
		}
	})
	return e
}

// Go opens a path of the site and waits until the program shows it.
func (e *Engine) Go(path string) {
	e.t.Helper()
	e.must("opening "+path, e.visit(e.Site.URL+path))
	e.awaitMounted()
}

// Reload loads the page anew.
func (e *Engine) Reload() {
	e.t.Helper()
	e.must("reloading", e.reload())
	e.awaitMounted()
}

func (e *Engine) awaitMounted() {
	e.t.Helper()
	e.Await(`document.readyState === "complete" && !document.getElementById("app-wasm-loader")`)
}

// Await waits until a JavaScript expression, or what it promises, is true.
func (e *Engine) Await(expression string) {
	e.t.Helper()
	var last string
	var err error
	for deadline := time.Now().Add(patience); time.Now().Before(deadline); time.Sleep(20 * time.Millisecond) {
		if last, err = e.evaluate("(async () => { const v = await (" + expression + `); return v ? "true" : String(v); })()`); err == nil && last == "true" {
			return
		}
	}
	e.t.Fatalf("this did not come true: %s\nlast: %v %v", expression, last, err)
}

// ask reads the value of a JavaScript expression, or of what it promises.
func ask[T any](e *Engine, expression string) (value T) {
	e.t.Helper()
	text, err := e.evaluate("(async () => JSON.stringify(await (" + expression + ")))()")
	e.must(expression, err)
	e.must(expression, json.Unmarshal([]byte(text), &value))
	return value
}

// AwaitText waits until the first element that fits a selector shows a text.
func (e *Engine) AwaitText(selector, text string) {
	e.t.Helper()
	e.Await(fmt.Sprintf(`document.querySelector(%q)?.innerText.includes(%q) || "it says: " + document.querySelector(%q)?.innerText && false`, selector, text, selector))
}

// AwaitValue waits until an output holds a number, up to a relative tolerance.
func (e *Engine) AwaitValue(output string, want, tolerance float64, unit string) {
	e.t.Helper()
	e.Await(fmt.Sprintf(`((d) => !!d && d.value !== "" && d.dataset.unit === %q && Math.abs(d.value - %v) <= %v)(%s)`,
		unit, want, tolerance*math.Abs(want), answer(output)))
}

// FieldText is what stands in the field.
func (e *Engine) FieldText(name string) string {
	e.t.Helper()
	return ask[string](e, fmt.Sprintf(`document.querySelector(%q).value`, field(name)))
}

// Click taps the first element that fits a CSS selector; another one on top of
// it is a failure, as it would be for a thumb.
func (e *Engine) Click(selector string) {
	e.t.Helper()
	e.Rest() // what was done before may still move the page
	e.Await(fmt.Sprintf(`(() => {
		const found = document.querySelector(%q);
		found?.scrollIntoView({ block: "center" });
		return !!found;
	})()`, selector))
	at := ask[[]int](e, fmt.Sprintf(`new Promise((done) => requestAnimationFrame(() => {
		const found = document.querySelector(%q);
		const box = found.getBoundingClientRect();
		const x = Math.round(box.x + box.width / 2), y = Math.round(box.y + box.height / 2);
		const top = document.elementFromPoint(x, y);
		done(found.contains(top) || top?.contains(found) ? [x, y] : []);
	}))`, selector))
	if len(at) != 2 {
		e.t.Fatalf("%s is covered", selector)
	}
	e.must("tapping "+selector, e.act(source{"type": "pointer", "id": "finger", "actions": []move{
		{"type": "pointerMove", "x": at[0], "y": at[1], "origin": "viewport"},
		{"type": "pointerDown", "button": 0}, {"type": "pointerUp", "button": 0},
	}}))
}

// Keys presses keys wherever the focus is.
func (e *Engine) Keys(text string) {
	e.t.Helper()
	var steps []move
	for _, key := range text {
		steps = append(steps, move{"type": "keyDown", "value": string(key)}, move{"type": "keyUp", "value": string(key)})
	}
	e.must("typing "+text, e.act(source{"type": "key", "id": "keys", "actions": steps}))
}

// Type replaces what stands in the field by a text, key by key.
func (e *Engine) Type(name, text string) {
	e.t.Helper()
	e.Click(field(name))
	e.Await(fmt.Sprintf(`document.activeElement?.name === %q`, name))
	const control, backspace = "\uE009", "\uE003"
	e.must("emptying "+name, e.act(source{"type": "key", "id": "keys", "actions": []move{
		{"type": "keyDown", "value": control}, {"type": "keyDown", "value": "a"}, {"type": "keyUp", "value": "a"}, {"type": "keyUp", "value": control},
		{"type": "keyDown", "value": backspace}, {"type": "keyUp", "value": backspace},
	}}))
	e.Keys(text)
	e.Await(fmt.Sprintf(`document.querySelector(%q).value === %q`, field(name), text))
}

// Open opens a section, or closes it.
func (e *Engine) Open(section string) {
	e.t.Helper()
	head := fmt.Sprintf(`button[name="section %s"]`, section)
	expanded := fmt.Sprintf(`document.querySelector(%q).ariaExpanded`, head)
	e.Rest()
	before := ask[string](e, expanded)
	e.Click(head)
	e.Await(fmt.Sprintf(`%s !== %q`, expanded, before))
}

// Take sets a choice.
func (e *Engine) Take(choice, value string) {
	e.t.Helper()
	e.Click(fmt.Sprintf(`button[name=%q][value=%q]`, choice, value))
}

// Fill types a list of fields.
func (e *Engine) Fill(values [][2]string) {
	e.t.Helper()
	for _, v := range values {
		e.Type(v[0], v[1])
	}
}

// Rest waits until the page has not changed for some frames.
func (e *Engine) Rest() {
	e.t.Helper()
	ask[bool](e, rest)
}

// Shoot saves a picture under .build/, for people.
func (e *Engine) Shoot(name string) {
	e.t.Helper()
	picture, err := e.picture()
	if err == nil {
		err = os.WriteFile(filepath.Join(top, ".build", unsafe.ReplaceAllString(e.t.Name()+"-"+name, "-")+".png"), picture, 0o644)
	}
	if err != nil {
		e.t.Error("no picture: ", err)
	}
}

// Heard fails the test for what has been complained of since the tab was opened.
func (e *Engine) Heard() {
	e.t.Helper()
	for _, line := range ask[[]string](e, `JSON.parse(sessionStorage.getItem("heard") ?? '["nobody listened"]')`) {
		e.t.Error("the page says: ", strings.TrimSpace(line))
	}
}

func (e *Engine) must(what string, err error) {
	e.t.Helper()
	if err != nil {
		e.t.Fatalf("%s: %v", what, err)
	}
}
