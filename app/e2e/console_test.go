//go:build e2e

package e2e

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync"
	"time"

	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

// A console holds what a page has said, errors apart. Violations of the
// content policy, files that are missing and exceptions are errors.
type console struct {
	mu     sync.Mutex
	lines  []string
	errors []string
}

func (t *Tab) hear(event any) {
	switch e := event.(type) {
	case *runtime.EventConsoleAPICalled:
		var words []string
		for _, argument := range e.Args {
			if argument.Description != "" {
				words = append(words, argument.Description)
			} else {
				words = append(words, strings.Trim(string(argument.Value), `"`))
			}
		}
		bad := e.Type == runtime.ConsoleAPICalledTypeError || e.Type == runtime.ConsoleAPICalledTypeWarning
		t.console.add(string(e.Type)+": "+strings.Join(words, " "), bad)
	case *runtime.EventExceptionThrown:
		t.console.add("exception: "+(&chromedp.ExceptionError{ExceptionDetails: e.ExceptionDetails}).Error(), true)
	case *log.EventEntryAdded:
		bad := e.Entry.Level == log.EntryLevelError || e.Entry.Level == log.EntryLevelWarning
		t.console.add(fmt.Sprintf("%s %s: %s %s", e.Entry.Source, e.Entry.Level, e.Entry.Text, e.Entry.URL), bad)
	}
}

func (c *console) add(line string, bad bool) {
	c.mu.Lock()
	defer c.mu.Unlock()
	c.lines = append(c.lines, line)
	if bad {
		c.errors = append(c.errors, line)
	}
}

// holds is true when each of the texts is part of an error or a warning.
func (c *console) holds(texts []string) bool {
	c.mu.Lock()
	defer c.mu.Unlock()
	for _, text := range texts {
		if !slices.ContainsFunc(c.errors, func(line string) bool { return strings.Contains(line, text) }) {
			return false
		}
	}
	return true
}

// Expect says that an error or warning holding this text is part of the test.
// The test fails if it does not come.
func (t *Tab) Expect(text string) { t.expected = append(t.expected, text) }

// Allow says that an error or warning holding this text may come or not.
func (t *Tab) Allow(text string) { t.allowed = append(t.allowed, text) }

// judge fails the test for every error that was not expected, and for every
// expected one that did not come.
func (t *Tab) judge() {
	// What was expected may still be on its way.
	for deadline := time.Now().Add(5 * time.Second); !t.console.holds(t.expected) && time.Now().Before(deadline); {
		time.Sleep(10 * time.Millisecond)
	}
	t.console.mu.Lock()
	defer t.console.mu.Unlock()
	came := map[string]bool{}
	for _, line := range t.console.errors {
		known := slices.ContainsFunc(t.allowed, func(text string) bool { return strings.Contains(line, text) })
		for _, text := range t.expected {
			if strings.Contains(line, text) {
				came[text], known = true, true
			}
		}
		if !known {
			t.t.Errorf("the console says: %s", line)
		}
	}
	for _, text := range t.expected {
		if !came[text] {
			t.t.Errorf("the console was to say %q and did not", text)
		}
	}
}

// keep saves what the tab shows and has said, for someone to look at.
func (t *Tab) keep(number int) {
	name := filepath.Join(failures, fmt.Sprintf("%s-%d", unsafe.ReplaceAllString(t.t.Name(), "-"), number))
	if err := os.MkdirAll(failures, 0o755); err != nil {
		t.t.Error(err)
		return
	}
	t.console.mu.Lock()
	text := strings.Join(t.console.lines, "\n")
	t.console.mu.Unlock()
	if err := os.WriteFile(name+".txt", []byte(text+"\n"), 0o644); err != nil {
		t.t.Error(err)
	}
	if t.closed {
		return
	}
	if err := t.shoot(name + ".png"); err != nil {
		t.t.Logf("no picture of tab %d: %v", number, err)
		return
	}
	t.t.Logf("kept %s.png and .txt", name)
}

var unsafe = regexp.MustCompile(`[^A-Za-z0-9]+`)

func (t *Tab) shoot(file string) error {
	// A tab that hangs has no picture to give; the failure is told anyway.
	ctx, cancel := context.WithTimeout(t.ctx, 5*time.Second)
	defer cancel()
	picture, err := chromedp.Run(ctx, chromedp.CaptureScreenshot())
	if err != nil {
		return err
	}
	return os.WriteFile(file, picture, 0o644)
}

// Shoot saves a picture of what the tab shows under .build/, for people.
func (t *Tab) Shoot(name string) {
	t.t.Helper()
	if err := t.shoot(filepath.Join(top, ".build", name+".png")); err != nil {
		t.t.Fatal(err)
	}
}
