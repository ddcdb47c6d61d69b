//go:build e2e

package e2e

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// pages are the routes of the site, read off its folders.
func pages(t *testing.T) []string {
	t.Helper()
	found, err := filepath.Glob(filepath.Join(dist, "*", "index.html"))
	if err != nil || len(found) == 0 {
		t.Fatal("dist/ holds no pages: ", err)
	}
	routes := []string{"/"}
	for _, file := range found {
		routes = append(routes, "/"+filepath.Base(filepath.Dir(file))+"/")
	}
	return routes
}

// forms are those that a bookmark or a link may have. The last one's fragment
// breaks an escape off.
func forms(route string) []string {
	all := []string{route, route + "?from=home", route + "?embed", route + "index.html"}
	if bare := strings.TrimSuffix(route, "/"); bare != "" {
		all = append(all, bare, bare+"?embed")
	}
	for i := range all {
		all[i] += link(route)
	}
	return append(all, route+"#note=50%")
}

// link is a fan of which the page of a route has something to compute.
func link(route string) string {
	switch route {
	case "/airflow/":
		return demo + "&want.goal=speed&want.speed=600rpm"
	case "/power/":
		return demo + read
	default:
		return demo
	}
}

// computes fails the test unless the tab shows the page of a route, and an
// answer that can't stand in the file.
func (t *Tab) computes(route, form string) {
	t.t.Helper()
	page, err := os.ReadFile(filepath.Join(dist, filepath.FromSlash(route), "index.html"))
	if err != nil {
		t.t.Fatal(err)
	}
	heading := Eval[string](t, `document.querySelector("h1").innerHTML`)
	if !strings.Contains(string(page), heading) {
		t.t.Errorf("%s shows %q", form, heading)
	}
	if !strings.Contains(form, demo) {
		return
	}
	switch route {
	case "/airflow/": // airflow goes with speed: first fan law
		t.AwaitValue("at.airflow", 3200*600/712.0*cfm, 1e-9*cfm*3200, "m3/s")
	case "/belt/": // as in belt_test.go
		t.AwaitValue("set.center", 16.19*inch, 0.02*inch, "m")
	case "/power/": // farthest off the average, by the average
		t.AwaitValue("volts.unbalance", 0.6/208.2, 1e-9, "1")
	case "/raceway/": // 125 % of 7.5 A, as in raceway_test.go
		t.AwaitValue("circuit.demand", 1.25*7.5, 1e-9, "A")
	case "/record/":
		t.AwaitValue("record.speed.target", 712, 0, "rpm")
		t.AwaitValue("record.speed.found", 1725*20/48.25, 0.5, "rpm")
	default:
		// The other pages have no answer of their own, and no way on in a frame.
		if route != "/drive/" && strings.Contains(form, "?embed") {
			return
		}
		if route != "/drive/" {
			t.Click(`a[href$="/drive/"]`)
		}
		t.AwaitValue("old.fan-speed", 1725*20/48.25, 1e-9, "rpm") // wheel turns by motor turns
	}
}

// read is what was read at the new motor.
const read = "&new.rotation=marked&new.no-load-amps=2.2A&trial.t1.turns=3turns&trial.t1.volts-12=208.2V&trial.t1.volts-23=207.6V&trial.t1.volts-31=208.8V" +
	"&trial.t1.amps-1=5.6A&trial.t1.amps-2=5.7A&trial.t1.amps-3=5.5A"

const (
	inch = 0.0254
	cfm  = 0.3048 * 0.3048 * 0.3048 / 60
)
