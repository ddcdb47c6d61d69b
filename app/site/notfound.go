package site

import (
	"bytes"
	_ "embed"
	"html/template"
)

//go:embed notfound.html
var notFoundPage string

// notFound makes the page that a static host shows for an address it does not
// know. It stands by itself: at an unknown depth, nothing relative would load.
func (o Options) notFound() ([]byte, error) {
	page, err := template.New("404.html").Parse(notFoundPage)
	if err != nil {
		return nil, err
	}
	type link struct{ Address, Name string }
	var links []link
	for _, r := range o.Routes {
		links = append(links, link{base(o.Base).Resolve(r), r})
	}
	var b bytes.Buffer
	err = page.Execute(&b, map[string]any{
		"Name": o.Handler.Name, "Links": links,
		"Style": base(o.Base).Resolve("/" + styleSheet), "Icon": base(o.Base).Resolve(o.Handler.Icon.SVG),
	})
	return b.Bytes(), err
}
