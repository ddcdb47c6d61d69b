package site

import (
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// What go-app writes on the left, and what a browser must read on the right.
func TestTidy(t *testing.T) {
	for name, c := range map[string]struct{ wrote, want string }{
		"quoted as in Go":      {`<a title="3/8\" bolt\tand nut">x</a>`, "<a title=\"3/8&#34; bolt\tand nut\">x</a>"},
		"sorted":               {`<a b="2" a="1" c>x</a>`, `<a a="1" b="2" c>x</a>`},
		"ampersand and angle":  {`<a title="R&D <1>">x</a>`, `<a title="R&amp;D &lt;1&gt;">x</a>`},
		"beyond ASCII":         {`<a title="3½ °">x</a>`, `<a title="3½ °">x</a>`},
		"false boolean":        {`<button disabled="false" hidden>x</button>`, `<button hidden>x</button>`},
		"false that is a word": {`<a aria-expanded="false">x</a>`, `<a aria-expanded="false">x</a>`},
		"true spelled out":     {`<a aria-expanded>x</a>`, `<a aria-expanded="true">x</a>`},
		"drawing":              {`<svg viewBox="0 0 9 9"><path d="M0 0"/></svg>`, `<svg viewBox="0 0 9 9"><path d="M0 0"/></svg>`},
		"comment":              {`<!-- a > b -->x`, `<!-- a > b -->x`},
		"picture of loading":   {`<img id="app-wasm-loader-icon" alt="wasm loader icon">`, `<img alt="" id="app-wasm-loader-icon">`},
		"tags for strangers":   {"<p>a</p>\n  <meta property=\"og:url\" content=\"https:///\">\n<meta name=\"author\" content>", "<p>a</p>"},
	} {
		got, err := tidy([]byte(c.wrote))
		if err != nil || string(got) != c.want {
			t.Errorf("%s: %s\n got %s, %v\nwant %s", name, c.wrote, got, err, c.want)
		}
	}
}

func TestTidyRefuses(t *testing.T) {
	for name, wrote := range map[string]string{
		"no quotes":     `<a title=bolt>`,
		"single quotes": `<a title='bolt'>`,
		"entity":        `<a title="a &quot; b">`,
		"cut off":       `<a title="b"`,
		"cut off end":   `<p>a</p`,
		"nameless":      `<a ="b">`,
	} {
		if got, err := tidy([]byte(wrote)); err == nil {
			t.Errorf("%s: %s became %s", name, wrote, got)
		}
	}
}

// An HTML parser reads back exactly the values that went in.
func FuzzTidyKeepsValues(f *testing.F) {
	for _, value := range []string{`plain`, `3/8" bolt`, `a\b`, `<&>'`, "tab\tline\n", `½ °`} {
		f.Add(value)
	}
	f.Fuzz(func(t *testing.T, value string) {
		if entity.MatchString(value) || strings.ContainsAny(value, "\x00\r") || strings.ToValidUTF8(value, "") != value {
			return // refused, or not to be had in HTML
		}
		tag := tag{name: "a", values: map[string]string{"title": value}}
		token := html.NewTokenizer(strings.NewReader(tag.String()))
		token.Next()
		if got := token.Token().Attr[0].Val; got != value {
			t.Errorf("%q is read as %q", value, got)
		}
	})
}
