package scenario

import (
	"strings"
	"testing"
	"testing/fstest"
)

const (
	header = "id,page,link,plate,says,order,authority,why\n"
	good   = "a-1,drive,supply=drive,watch|stop,new.amps=5.98 A ±0.1; set:watch; at.airflow=none,!set 5|open,common practice,So it is.\n"
)

func load(t *testing.T, files ...string) ([]Scenario, error) {
	t.Helper()
	folder := fstest.MapFS{}
	for i, text := range files {
		folder[string(rune('a'+i))+".csv"] = &fstest.MapFile{Data: []byte(text)}
	}
	return Load(folder)
}

func TestLoad(t *testing.T) {
	all, err := load(t, header+good)
	if err != nil || len(all) != 1 {
		t.Fatal(all, err)
	}
	s := all[0]
	if s.ID != "a-1" || len(s.Plate) != 2 || len(s.Says) != 3 || s.Says[0].Value != "5.98 A" || s.Says[0].Tolerance != "0.1 A" || s.Says[1].Levels[0] != "watch" || !s.Says[2].None || s.Where != "a.csv:2" {
		t.Errorf("%+v", s)
	}
	if half, err := saying("x=712 rpm"); err != nil || half.Tolerance != "0.5 rpm" {
		t.Errorf("%+v, %v", half, err)
	}
	if half, err := saying("x=0.25"); err != nil || half.Tolerance != "0.005" {
		t.Errorf("%+v, %v", half, err)
	}
}

// What is not of the form is refused, not passed over.
func TestLoadIsStrict(t *testing.T) {
	for name, files := range map[string][]string{
		"another column":  {strings.Replace(header, "plate", "level", 1) + good},
		"a column more":   {header + strings.TrimSuffix(good, "\n") + ",more\n"},
		"no level":        {header + strings.Replace(good, "watch|stop", "watch|halt", 1)},
		"no such level":   {header + strings.Replace(good, "set:watch", "set:bad", 1)},
		"no page":         {header + strings.Replace(good, "drive", "home", 1)},
		"twice":           {header + good, header + good},
		"no value":        {header + strings.Replace(good, "5.98 A ±0.1", "much", 1)},
		"no tolerance":    {header + strings.Replace(good, "±0.1", "±x", 1)},
		"another unit":    {header + strings.Replace(good, "±0.1", "±0.1 V", 1)},
		"neither":         {header + strings.Replace(good, "set:watch", "set", 1)},
		"no order":        {header + strings.Replace(good, "!set 5", "turn it", 1)},
		"of another page": {header + strings.Replace(good, "!set 5", "press", 1)},
		"no authority":    {header + strings.Replace(good, "common practice", "", 1)},
		"no id":           {header + strings.Replace(good, "a-1", "A 1", 1)},
		"no link":         {header + strings.Replace(good, "supply=drive", "", 1)},
	} {
		if all, err := load(t, files...); err == nil {
			t.Errorf("%s: %+v", name, all)
		}
	}
}

func TestMeets(t *testing.T) {
	for _, c := range []struct {
		order  Order
		do, to string
		want   bool
	}{
		{Order{}, "open", "3", true},
		{Order{Any: []string{"set 3"}}, "open", "3", true},
		{Order{Any: []string{"set 3"}}, "stay", "3", true},
		{Order{Any: []string{"set 3"}}, "open", "2.5", false},
		{Order{Any: []string{"set 3"}}, "frequency", "3", false},
		{Order{Any: []string{"set 2.5", "stay"}}, "close", "2.5", true},
		{Order{Any: []string{"none"}}, "other-sheave", "", true},
		{Order{Any: []string{"other-sheave"}}, "none", "", false},
		{Order{Any: []string{"close", "set 1"}, Not: true}, "close", "2", false},
		{Order{Any: []string{"close", "set 1"}, Not: true}, "open", "1", false},
		{Order{Any: []string{"close", "set 1"}, Not: true}, "open", "2", true},
	} {
		if got := c.order.Meets(c.do, c.to); got != c.want {
			t.Errorf("%s of %s to %s: %v", c.order, c.do, c.to, got)
		}
	}
}
