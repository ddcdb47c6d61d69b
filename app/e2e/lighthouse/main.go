// Command lighthouse asks Lighthouse, as for a phone, about pages of the served
// site, and fails where a page is not wholly accessible, in good practice and to
// be found. How fast it is, on this machine, is told and not judged.
package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"log"
	"net/http/httptest"
	"os"
	"os/exec"

	"roofside/app/site"
)

var (
	pages  = []string{"/", "/drive/", "/record/"}
	judged = []string{"accessibility", "best-practices", "seo"}
)

const told = "performance"

func main() {
	if len(os.Args) != 3 {
		log.Fatal("lighthouse SITE LIGHTHOUSE-COMMAND")
	}
	headers, err := site.ReadHeaders("netlify.toml")
	if err != nil {
		log.Fatal(err)
	}
	server := httptest.NewServer(site.Files{Dir: os.Args[1], Headers: headers})
	good := true
	for _, page := range pages {
		r, err := examine(os.Args[2], server.URL+page)
		if err != nil {
			log.Fatal(page, ": ", err)
		}
		good = r.say(page) && good
	}
	server.Close()
	if !good {
		log.Fatal("Lighthouse finds fault")
	}
}

// A report is what is read of Lighthouse's own.
type report struct {
	RuntimeError *struct{ Message string }
	Categories   map[string]struct {
		Score     *float64
		AuditRefs []struct {
			ID     string
			Weight float64
		}
	}
	Audits map[string]struct {
		Title, DisplayValue string
		Score               *float64
		Details             json.RawMessage
	}
}

func examine(lighthouse, address string) (r report, err error) {
	// Chromium's sandbox refuses to run as root, as tests may.
	command := exec.Command(lighthouse, address, "--output=json", "--quiet", "--max-wait-for-load=90000",
		"--chrome-flags=--headless --no-sandbox --disable-gpu --disable-quic --disable-component-update")
	command.Stderr = os.Stderr
	chromium, err := exec.LookPath("chromium")
	if err != nil {
		return r, err
	}
	command.Env = append(os.Environ(), "CHROME_PATH="+chromium)
	out, err := command.Output()
	if err != nil {
		return r, err
	}
	if err := json.Unmarshal(out, &r); err != nil {
		return r, err
	}
	if r.RuntimeError != nil {
		return r, errors.New(r.RuntimeError.Message)
	}
	return r, nil
}

// say prints a page's scores and what was found, and tells whether it is good.
func (r report) say(page string) bool {
	good := true
	line := page
	var faults []string
	for _, name := range append([]string{told}, judged...) {
		category, asked := r.Categories[name]
		if !asked || category.Score == nil {
			line, good = line+fmt.Sprintf("  %s not known", name), false
			continue
		}
		line += fmt.Sprintf("  %s %.0f", name, 100**category.Score)
		if name == told || *category.Score == 1 {
			continue
		}
		good = false
		for _, ref := range category.AuditRefs {
			if a := r.Audits[ref.ID]; ref.Weight > 0 && a.Score != nil && *a.Score < 1 {
				faults = append(faults, fmt.Sprintf("  %s: %s %.600s", ref.ID, a.Title, a.Details))
			}
		}
	}
	fmt.Println(line)
	for _, f := range faults {
		fmt.Println(f)
	}
	for _, id := range []string{"first-contentful-paint", "largest-contentful-paint", "total-blocking-time", "cumulative-layout-shift"} {
		fmt.Printf("  %s %s\n", r.Audits[id].Title, r.Audits[id].DisplayValue)
	}
	return good
}
