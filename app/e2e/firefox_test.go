//go:build e2e && engines

package e2e

import (
	"bufio"
	"encoding/base64"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"golang.org/x/net/websocket"
)

// firefox speaks WebDriver BiDi: https://www.w3.org/TR/webdriver-bidi/.
type firefox struct {
	socket *websocket.Conn
	page   string
	calls  int
}

func newFirefox(t *testing.T) driver {
	t.Helper()
	profile := t.TempDir()
	// A phone's scroll bar takes no room.
	const prefs = `user_pref("intl.accept_languages", "en-US"); user_pref("ui.useOverlayScrollbars", 1);`
	if err := os.WriteFile(filepath.Join(profile, "user.js"), []byte(prefs), 0o600); err != nil {
		t.Fatal(err)
	}
	const origin = "http://localhost/"
	browser := exec.Command("firefox-esr", "--headless", "--no-remote", "--profile", profile,
		"--remote-debugging-port", "0", "--remote-allow-origins", strings.TrimSuffix(origin, "/"))
	output, err := browser.StderrPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := browser.Start(); err != nil {
		t.Fatal(err, "; app/e2e/install-engines brings it")
	}
	t.Cleanup(func() {
		// It has nothing to save, and says by an error that it was killed.
		_ = browser.Process.Kill()
		_ = browser.Wait()
	})
	address := make(chan string, 1)
	go func() {
		for lines := bufio.NewScanner(output); lines.Scan(); {
			if _, url, found := strings.Cut(lines.Text(), "BiDi listening on "); found {
				address <- url
			}
		}
	}()
	f := &firefox{}
	select {
	case url := <-address:
		if f.socket, err = websocket.Dial(url+"/session", "", origin); err != nil {
			t.Fatal(err)
		}
	case <-time.After(patience):
		t.Fatal("Firefox tells no address")
	}
	var tree struct{ Contexts []struct{ Context string } }
	err = errors.Join(f.call("session.new", source{"capabilities": source{}}, nil), f.call("browsingContext.getTree", source{}, &tree))
	if err != nil || len(tree.Contexts) == 0 {
		t.Fatal("no page: ", err)
	}
	f.page = tree.Contexts[0].Context
	if err := f.call("browsingContext.setViewport", source{"context": f.page, "viewport": source{"width": 360, "height": 740}, "devicePixelRatio": 2}, nil); err != nil {
		t.Fatal(err)
	}
	return f
}

// call sends a command and waits for its answer; events are passed over.
func (f *firefox) call(method string, params source, result any) error {
	f.calls++
	if err := f.socket.SetDeadline(time.Now().Add(patience)); err != nil {
		return err
	}
	if err := websocket.JSON.Send(f.socket, source{"id": f.calls, "method": method, "params": params}); err != nil {
		return err
	}
	for {
		var answer struct {
			ID             int
			Error, Message string
			Result         json.RawMessage
		}
		if err := websocket.JSON.Receive(f.socket, &answer); err != nil {
			return err
		}
		switch {
		case answer.ID != f.calls:
		case answer.Error != "":
			return fmt.Errorf("%s: %s: %s", method, answer.Error, answer.Message)
		case result == nil:
			return nil
		default:
			return json.Unmarshal(answer.Result, result)
		}
	}
}

func (f *firefox) visit(address string) error {
	return f.call("browsingContext.navigate", source{"context": f.page, "url": address, "wait": "interactive"}, nil)
}

func (f *firefox) reload() error {
	return f.call("browsingContext.reload", source{"context": f.page, "wait": "interactive"}, nil)
}

func (f *firefox) evaluate(expression string) (string, error) {
	var answer struct {
		Result           struct{ Value json.RawMessage }
		ExceptionDetails *struct{ Text string }
	}
	if err := f.call("script.evaluate", source{"expression": expression, "awaitPromise": true, "target": source{"context": f.page}}, &answer); err != nil {
		return "", err
	}
	if answer.ExceptionDetails != nil {
		return "", errors.New(answer.ExceptionDetails.Text)
	}
	var text string
	return text, json.Unmarshal(answer.Result.Value, &text)
}

func (f *firefox) act(sources ...source) error {
	return f.call("input.performActions", source{"context": f.page, "actions": sources}, nil)
}

func (f *firefox) picture() ([]byte, error) {
	var answer struct{ Data string }
	if err := f.call("browsingContext.captureScreenshot", source{"context": f.page}, &answer); err != nil {
		return nil, err
	}
	return base64.StdEncoding.DecodeString(answer.Data)
}
