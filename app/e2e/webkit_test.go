//go:build e2e && engines

package e2e

import (
	"bytes"
	"encoding/base64"
	"encoding/json"
	"fmt"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"
)

// webkit is WebKitGTK under a screen of its own, by WebDriver over HTTP:
// https://www.w3.org/TR/webdriver2/.
type webkit struct{ session string }

func newWebKit(t *testing.T) driver {
	t.Helper()
	browsers, err := filepath.Glob("/usr/lib/*/webkit2gtk-4.*/MiniBrowser")
	if err != nil || len(browsers) == 0 {
		t.Fatal("no WebKitGTK; app/e2e/install-engines brings it ", err)
	}
	// A window is as wide as its buttons need: without space around them, they
	// need less than a phone has.
	look := t.TempDir()
	if err := os.MkdirAll(filepath.Join(look, "gtk-3.0"), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(look, "gtk-3.0", "gtk.css"), []byte("* { padding: 0; margin: 0; min-width: 0; border-width: 0; }"), 0o600); err != nil {
		t.Fatal(err)
	}
	port := freePort(t)
	run(t, nil, "Xvfb", display, "-screen", "0", "1024x1024x24", "-nolisten", "tcp")
	run(t, []string{
		"DISPLAY=" + display, "MESA_SHADER_CACHE_DISABLE=true", "XDG_CONFIG_HOME=" + look, "XDG_DATA_HOME=" + t.TempDir(), "XDG_CACHE_HOME=" + t.TempDir(),
		"LC_ALL=en_US.UTF-8",                         // also where the machine lacks it; with C, the page's language would be "C"
		"WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS=1", // tests may run as root, which the sandbox refuses
	}, "WebKitWebDriver", "--port="+port)

	base := "http://127.0.0.1:" + port
	var session struct{ SessionID string }
	wanted := source{"capabilities": source{"alwaysMatch": source{
		"webkitgtk:browserOptions": source{"binary": browsers[0], "args": []string{"--automation"}},
	}}}
	for deadline := time.Now().Add(patience); ; time.Sleep(100 * time.Millisecond) {
		if err = call(http.MethodPost, base+"/session", wanted, &session); err == nil {
			break
		}
		if time.Now().After(deadline) {
			t.Fatal("no session: ", err)
		}
	}
	w := &webkit{base + "/session/" + session.SessionID}
	t.Cleanup(func() {
		if err := call(http.MethodDelete, w.session, nil, nil); err != nil {
			t.Error(err)
		}
	})
	if err := w.size(360, 740); err != nil {
		t.Fatal(err)
	}
	return w
}

// display is far from those that a desk uses.
const display = ":94"

// run starts a program that goes on until the test ends.
func run(t *testing.T, environment []string, name string, arguments ...string) {
	t.Helper()
	program := exec.Command(name, arguments...)
	program.Env = append(os.Environ(), environment...)
	if err := program.Start(); err != nil {
		t.Fatal(err, "; app/e2e/install-engines brings it")
	}
	t.Cleanup(func() {
		_ = program.Process.Kill() // says by an error that it was killed
		_ = program.Wait()
	})
}

func freePort(t *testing.T) string {
	t.Helper()
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer listener.Close()
	_, port, err := net.SplitHostPort(listener.Addr().String())
	if err != nil {
		t.Fatal(err)
	}
	return port
}

// size gives the page a size: the window's, less what the window puts around it.
// A window that isn't up yet tells sizes of its own.
func (w *webkit) size(width, height int) error {
	around := 0
	for deadline := time.Now().Add(patience); time.Now().Before(deadline); time.Sleep(50 * time.Millisecond) {
		if err := w.post("/window/rect", source{"x": 0, "y": 0, "width": width, "height": height + around}, nil); err != nil {
			return err
		}
		text, err := w.evaluate(`Promise.resolve(JSON.stringify([innerWidth, innerHeight, outerHeight]))`)
		if err != nil {
			return err
		}
		var now [3]int
		if err := json.Unmarshal([]byte(text), &now); err != nil {
			return err
		}
		if now[0] == width && now[1] == height {
			return nil
		}
		around = max(0, now[2]-now[1])
	}
	return fmt.Errorf("the window does not take %d by %d", width, height)
}

// call asks the driver; its answer is an object with a value.
func call(method, address string, body, result any) error {
	var content bytes.Buffer
	if body != nil {
		if err := json.NewEncoder(&content).Encode(body); err != nil {
			return err
		}
	}
	request, err := http.NewRequest(method, address, &content)
	if err != nil {
		return err
	}
	response, err := (&http.Client{Timeout: patience}).Do(request)
	if err != nil {
		return err
	}
	defer response.Body.Close()
	var answer struct{ Value json.RawMessage }
	if err := json.NewDecoder(response.Body).Decode(&answer); err != nil {
		return err
	}
	if response.StatusCode != http.StatusOK {
		return fmt.Errorf("%s: %s", address, answer.Value)
	}
	if result == nil {
		return nil
	}
	return json.Unmarshal(answer.Value, result)
}

func (w *webkit) post(command string, body, result any) error {
	return call(http.MethodPost, w.session+command, body, result)
}

func (w *webkit) visit(address string) error { return w.post("/url", source{"url": address}, nil) }

func (w *webkit) reload() error { return w.post("/refresh", source{}, nil) }

func (w *webkit) evaluate(expression string) (string, error) {
	var answer struct{ Text, Error string }
	err := w.post("/execute/async", source{
		"script": "const done = arguments[0]; (" + expression + `).then((text) => done({ text }), (error) => done({ error: String(error) }));`,
		"args":   []any{},
	}, &answer)
	if err == nil && answer.Error != "" {
		err = fmt.Errorf("%s", answer.Error)
	}
	return answer.Text, err
}

func (w *webkit) act(sources ...source) error {
	return w.post("/actions", source{"actions": sources}, nil)
}

func (w *webkit) picture() ([]byte, error) {
	var data string
	if err := call(http.MethodGet, w.session+"/screenshot", nil, &data); err != nil {
		return nil, err
	}
	return base64.StdEncoding.DecodeString(data)
}
