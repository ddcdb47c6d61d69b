package site

import (
	"bytes"
	"fmt"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// A page asks for one script of ours and for one style sheet: each request costs a slow
// line a wait, and a slow phone the time of its worker. Apart they are easier to read.
const (
	firstScript = "web/first.js"
	styleSheet  = "web/style.css"
)

// join makes one file of the scripts and one of the style sheets that the handler
// names, each in its order, and has the handler name those. A script that fails is
// reported, and takes none of the others with it.
func (t tree) join(h *app.Handler) error {
	for _, j := range []struct {
		parts            *[]string
		whole            string
		head, begin, end string
	}{
		{&h.Scripts, firstScript, "\"use strict\";\n", "try { // %s\n", "} catch (error) { setTimeout(() => { throw error; }); }\n"},
		{&h.Styles, styleSheet, "", "/* %s */\n", ""},
	} {
		whole := bytes.NewBufferString(j.head)
		for _, address := range *j.parts {
			name := address[1:]
			content, err := t.take(name)
			if err != nil {
				return err
			}
			fmt.Fprintf(whole, j.begin, name)
			whole.Write(content)
			whole.WriteString(j.end)
		}
		t[j.whole], *j.parts = whole.Bytes(), []string{"/" + j.whole}
	}
	return nil
}

// joinTheirs puts go-app's style sheet before ours. In the pages the first script takes
// the place of its link: a script waits for the style sheets before it, and this one
// asks for the program.
func (o Options) joinTheirs(t tree) error {
	theirs, err := t.take("app.css")
	if err != nil {
		return err
	}
	t[styleSheet] = append(theirs, t[styleSheet]...)
	link := fmt.Appendf(nil, `    <link href="%s" rel="stylesheet" type="text/css">`+"\n", base(o.Base).Resolve("/app.css"))
	script := fmt.Appendf(nil, `    <script src="%s"></script>`+"\n", base(o.Base).Resolve("/"+firstScript))
	for _, route := range o.Routes {
		page := route[1:] + "index.html"
		if sheets, scripts := bytes.Count(t[page], link), bytes.Count(t[page], script); sheets != 1 || scripts != 1 {
			return fmt.Errorf("page %s holds go-app's style sheet %d times and our script %d times, not once", route, sheets, scripts)
		}
		t[page] = bytes.Replace(t[page], script, nil, 1)
		t[page] = bytes.Replace(t[page], link, script, 1)
	}
	return nil
}
