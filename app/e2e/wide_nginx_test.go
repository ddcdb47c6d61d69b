//go:build e2e && wide

package e2e

import (
	"bytes"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/network"
)

const nginxConf = `
daemon off;
master_process off;
pid nginx.pid;
%s
events {}
http {
	include /etc/nginx/mime.types;
	access_log off;
	client_body_temp_path tmp; proxy_temp_path tmp; fastcgi_temp_path tmp; uwsgi_temp_path tmp; scgi_temp_path tmp;
	server {
		listen %s;
		root site;
		gzip_static %s;
		error_page 404 %s404.html;
	}
}
`

// nginx serves a folder as plain files at a base until the test ends.
func nginx(t *testing.T, site, base, packed string) (url string) {
	t.Helper()
	dir := t.TempDir()
	below := filepath.Join(dir, "site", filepath.FromSlash(base))
	if err := os.CopyFS(below, os.DirFS(site)); err != nil {
		t.Fatal(err)
	}
	if err := os.Mkdir(filepath.Join(dir, "tmp"), 0o755); err != nil {
		t.Fatal(err)
	}
	free, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	address := free.Addr().String()
	if err := free.Close(); err != nil {
		t.Fatal(err)
	}
	user := ""
	if os.Geteuid() == 0 {
		user = "user root;" // else it reads as someone who may not look in here
	}
	conf := filepath.Join(dir, "nginx.conf")
	if err := os.WriteFile(conf, fmt.Appendf(nil, nginxConf, user, address, packed, base), 0o644); err != nil {
		t.Fatal(err)
	}
	var said bytes.Buffer
	server := exec.Command("nginx", "-p", dir, "-c", conf, "-e", "stderr")
	server.Stderr = &said
	if err := server.Start(); err != nil {
		t.Fatal("app/e2e/install-nginx brings it: ", err)
	}
	t.Cleanup(func() {
		if err := server.Process.Kill(); err != nil {
			t.Error(err)
		}
		_ = server.Wait() // says that it was killed
	})
	for deadline := time.Now().Add(patience); ; time.Sleep(10 * time.Millisecond) {
		connection, err := net.Dial("tcp", address)
		if err == nil {
			if err := connection.Close(); err != nil {
				t.Error(err)
			}
			return "http://" + address
		}
		if time.Now().After(deadline) {
			t.Fatalf("nginx does not answer: %v\n%s", err, &said)
		}
	}
}

// A host that knows nothing but files answers to every form of every page, at
// the root and below it, whether it may send packed copies or not; and the page
// computes. The program is the same everywhere.
func TestWideNginx(t *testing.T) {
	below := t.TempDir()
	buildSite(t, "-base", "/tools/fans/", "-out", below)
	for _, name := range []string{"app.wasm", "app.wasm.gz"} {
		one, err := os.ReadFile(filepath.Join(dist, "web", name))
		if err != nil {
			t.Fatal(err)
		}
		if other, err := os.ReadFile(filepath.Join(below, "web", name)); err != nil || !bytes.Equal(one, other) {
			t.Fatalf("below the root another %s is served: %v", name, err)
		}
	}
	for base, dir := range map[string]string{"/": dist, "/tools/fans/": below} {
		for _, packed := range []string{"on", "off"} {
			t.Run(base+" gzip_static "+packed, func(t *testing.T) {
				url := nginx(t, dir, base, packed)
				unknownAtNginx(t, url, base, dir)
				p := NewPhone(t)
				p.Hold()
				tab := p.NewTab()
				// Each page comes from the host, none from the device.
				tab.do("going past the worker", command(network.SetBypassServiceWorker, network.SetBypassServiceWorkerParams{Bypass: true}))
				for _, route := range pages(t) {
					for _, form := range forms(route) {
						answersAtNginx(t, url+strings.TrimSuffix(base, "/")+form, filepath.Join(dir, filepath.FromSlash(route), "index.html"))
						if strings.Contains(form, "?") {
							continue // which a plain file server does not read
						}
						tab.Visit("about:blank") // else a change of the fragment alone loads nothing
						tab.Visit(url + strings.TrimSuffix(base, "/") + form)
						tab.AwaitMounted()
						tab.computes(route, form)
					}
				}
				if encoded := Eval[bool](tab, `performance.getEntriesByType("resource").some((r) => r.name.endsWith("/app.wasm.gz"))`); encoded != (packed == "off") {
					t.Errorf("the packed copy was asked for by name: %v", encoded)
				}
				own := p.NewTab()
				own.Visit(url + base + "nowhere/")
				own.Expect("404")
				own.AwaitText("h1", "No such page")
				own.Click(fmt.Sprintf(`a[href="%sdrive/"]`, base))
				own.AwaitMounted()
			})
		}
	}
}

// answersAtNginx asks once, as a bookmark or a search engine would.
func answersAtNginx(t *testing.T, url, file string) {
	t.Helper()
	body, status := get(t, url)
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if status != http.StatusOK || !bytes.Equal(body, want) {
		t.Errorf("%s: %d, and not %s", url, status, file)
	}
}

func unknownAtNginx(t *testing.T, url, base, dir string) {
	t.Helper()
	want, err := os.ReadFile(filepath.Join(dir, "404.html"))
	if err != nil {
		t.Fatal(err)
	}
	for _, path := range []string{"nowhere", "nowhere/", "drive/nowhere", "drive/nowhere/index.html"} {
		if body, status := get(t, url+base+path); status != http.StatusNotFound || !bytes.Equal(body, want) {
			t.Errorf("%s%s: %d %.60q", base, path, status, body)
		}
	}
}

func get(t *testing.T, url string) (body []byte, status int) {
	t.Helper()
	url, _, _ = strings.Cut(url, "#")
	answer, err := http.Get(url)
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	if body, err = io.ReadAll(answer.Body); err != nil {
		t.Fatal(err)
	}
	return body, answer.StatusCode
}
