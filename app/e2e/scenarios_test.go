//go:build e2e

package e2e

import (
	"fmt"
	"math"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"roofside/calc/number"
	"roofside/calc/scenario"
	"roofside/calc/unit"
)

// A stood is what a page shows of a record, as a machine reads it.
type stood struct {
	Plate    string              `json:"plate"` // its level
	Of       string              `json:"of"`
	Do       string              `json:"do"`
	To       string              `json:"to"`
	Verdicts map[string]string   `json:"verdicts"`
	Answers  map[string][]string `json:"answers"` // value and unit; none without a value
	Problems string              `json:"problems"`
}

// readPage follows a link on the page that is open, lays out every section, and reads
// it once it is at rest.
const readPage = `(async () => {
	const calm = () => new Promise((resolve) => {
		let still = 0;
		const watch = new MutationObserver(() => { still = 0; });
		watch.observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
		const frame = () => {
			if (++still < 3) return requestAnimationFrame(frame);
			watch.disconnect();
			resolve();
		};
		requestAnimationFrame(frame);
	});
	if (%[1]q !== "") location.hash = %[1]q;
	for (let waited = 0; location.hash !== "" && waited < 500; waited++) await new Promise(requestAnimationFrame);
	await calm();
	for (let turn = 0; turn < 4; turn++) {
		const shut = document.querySelectorAll(".answers button.section-head[aria-expanded=false], .answers button[name='section job'][aria-expanded=false], .inputs #overload button.section-head[aria-expanded=false]");
		if (shut.length === 0) break;
		for (const head of shut) head.click();
		await calm();
	}
	const plate = document.querySelector("[data-plate]"), order = plate?.querySelector("[data-do]");
	const shown = { plate: plate?.dataset.verdict ?? "", of: plate?.dataset.of ?? "", do: order?.dataset.do ?? "", to: order?.dataset.to ?? "", verdicts: {}, answers: {}, problems: location.hash };
	const bad = ["within", "unjudged", "watch", "stop"];
	for (const v of document.querySelectorAll("[data-of][data-verdict]")) {
		const before = shown.verdicts[v.dataset.of];
		if (before === undefined || bad.indexOf(v.dataset.verdict) > bad.indexOf(before)) shown.verdicts[v.dataset.of] = v.dataset.verdict;
	}
	for (const o of document.querySelectorAll("output[name]")) {
		const data = o.querySelector("data");
		shown.answers[o.name] = data ? [data.value, data.dataset.unit ?? ""] : [];
	}
	return shown;
})()`

// Every scenario is opened by its link on the built site, and the page says what it
// must: its plate, its answers, its verdicts, what the hand is told. A framed page keeps
// its record in memory, so that nothing piles up.
func TestScenarios(t *testing.T) {
	all, err := scenario.Load(os.DirFS(filepath.Join(top, "testdata", "scenarios")))
	if err != nil {
		t.Fatal(err)
	}
	published := publishedAnswers(t)
	byPage := map[string][]scenario.Scenario{}
	for _, s := range all {
		byPage[s.Page] = append(byPage[s.Page], s)
	}
	tab := NewPhone(t).NewTab()
	answers, verdicts := 0, 0
	for page, rows := range byPage {
		tab.Go("/" + page + "/?embed")
		for _, s := range rows {
			got := Eval[stood](tab, fmt.Sprintf(readPage, fragment(s.Link)))
			if !slices.Contains(s.Plate, got.Plate) || !s.Order.Meets(got.Do, got.To) { // a busy machine draws late
				got = Eval[stood](tab, fmt.Sprintf(readPage, ""))
			}
			fail := func(format string, a ...any) {
				t.Errorf("%s, %s: %s: %s (%s)", s.ID, s.Where, fmt.Sprintf(format, a...), s.Why, s.Authority)
			}
			if got.Problems != "" {
				fail("the link was not followed")
				continue
			}
			if got.Of != "plate" || !slices.Contains(s.Plate, got.Plate) {
				fail("the plate is %q, not %s", got.Plate, strings.Join(s.Plate, " or "))
			}
			if !s.Order.Meets(got.Do, got.To) {
				fail("ordered is %q %s, not %s", got.Do, got.To, s.Order)
			}
			for _, said := range s.Says {
				switch level, drawn := got.Verdicts[said.Name]; {
				case said.Levels != nil && !drawn: // the library holds it; here it may be one of several behind the worst
				case said.Levels != nil:
					if verdicts++; !slices.Contains(said.Levels, level) {
						fail("%s is %s, not %s", said.Name, level, strings.Join(said.Levels, " or "))
					}
				case !published[page][said.Name]: // of another page
				default:
					answers++
					if why := differs(got.Answers[said.Name], said); why != "" {
						fail("%s %s", said.Name, why)
					}
				}
			}
		}
	}
	if answers < len(all)/10 || verdicts == 0 {
		t.Errorf("only %d answers and %d verdicts were read on %d pages", answers, verdicts, len(all))
	}
}

// fragment is a link's fragment as an address bar has it.
func fragment(link string) string {
	u := url.URL{Fragment: strings.ReplaceAll(link, "%25", "%")}
	return u.EscapedFragment()
}

// publishedAnswers are the names that the README publishes, by page.
func publishedAnswers(t *testing.T) map[string]map[string]bool {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(top, "README.md"))
	if err != nil {
		t.Fatal(err)
	}
	_, section, _ := strings.Cut(string(text), "### Answers")
	section, _, _ = strings.Cut(section, "\n#")
	pages := map[string]map[string]bool{}
	for _, row := range regexp.MustCompile("(?m)^\\| `/([a-z]+)/` \\| (.*) \\|$").FindAllStringSubmatch(section, -1) {
		pages[row[1]] = map[string]bool{}
		for _, m := range regexp.MustCompile("`([a-z0-9.-]+)`").FindAllStringSubmatch(row[2], -1) {
			pages[row[1]][m[1]] = true
		}
	}
	if len(pages) < 6 {
		t.Fatalf("only %d pages are published", len(pages))
	}
	return pages
}

// kinds are those that answers are of.
var kinds = []*unit.Kind{
	unit.Length(0).Kind(), unit.Speed(0).Kind(), unit.Velocity(0).Kind(), unit.Flow(0).Kind(), unit.Pressure(0).Kind(), unit.Power(0).Kind(), unit.Force(0).Kind(),
	unit.Voltage(0).Kind(), unit.Current(0).Kind(), unit.Frequency(0).Kind(), unit.Temperature(0).Kind(), unit.Density(0).Kind(), unit.ApparentPower(0).Kind(),
	unit.Angle(0).Kind(), unit.Volume(0).Kind(), unit.Ratio(0).Kind(), unit.Turns(0).Kind(), unit.Count(0).Kind(),
}

// differs says how an answer on a page is another than what is said of it; "" where it
// is not. A value is that of the first kind that has both its unit and the page's.
func differs(shown []string, said scenario.Said) string {
	if said.None || len(shown) != 2 {
		if said.None != (len(shown) != 2) {
			return fmt.Sprintf("is %v", shown)
		}
		return ""
	}
	var value float64
	if _, err := fmt.Sscan(shown[0], &value); err != nil {
		return err.Error()
	}
	for _, k := range kinds {
		want, _, err := number.ParseQuantity(said.Value, k)
		within, _, err2 := number.ParseQuantity(said.Tolerance, k)
		if err != nil || err2 != nil || k.Data.Symbol != shown[1] && !(k.Data.Symbol == "turns" && shown[1] == "1") {
			continue
		}
		if zero, _, err := number.ParseQuantity(strings.Replace(said.Tolerance, strings.Fields(said.Tolerance)[0], "0", 1), k); err == nil {
			within -= zero
		}
		if got := k.Data.Base(value); math.Abs(got-want) > within+1e-9*math.Abs(want) {
			return fmt.Sprintf("is %s %s, not %s ± %s", shown[0], shown[1], said.Value, said.Tolerance)
		}
		return ""
	}
	return fmt.Sprintf("is in %q, which %s is not", shown[1], said.Value)
}
