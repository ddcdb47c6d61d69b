//go:build !wasm

package main

import (
	"errors"
	"flag"
	"fmt"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"time"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/page"
	"roofside/app/site"
	"roofside/app/text"
)

const usage = `Roofside is built and tried with:

  go run ./app site  [-out dist] [-base /] [-web web] [-wasm .build/app.wasm] [-brotli 11]
  go run ./app serve [-dir dist] [-addr localhost:8080]

but "make site" and "make run" know the compiler's flags too.`

func main() {
	if err := command(os.Args[1:]); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

func command(arguments []string) error {
	if len(arguments) == 0 {
		return errors.New(usage)
	}
	switch name, rest := arguments[0], arguments[1:]; name {
	case "site":
		return write(rest)
	case "serve":
		return serve(rest)
	default:
		return fmt.Errorf("no command %q\n\n%s", name, usage)
	}
}

// options says all about the site but where it goes. What is served is one for
// all readers: it says in English what must be said before the program knows
// whose language it speaks.
func options() site.Options {
	words := text.For("en")
	return site.Options{
		Base: "/", Web: "web", Wasm: ".build/app.wasm", Brotli: 11,
		Routes: routes(),
		// In the order of the job: a launcher shows the first few.
		Shortcuts: []site.Shortcut{
			{Name: words.T("tab.drive"), Route: "/drive/"}, {Name: words.T("tab.airflow"), Route: "/airflow/"},
			{Name: words.T("tab.belt"), Route: "/belt/"}, {Name: words.T("tab.power"), Route: "/power/"},
			{Name: words.T("tab.raceway"), Route: "/raceway/"}, {Name: words.T("tab.record"), Route: "/record/"},
		},
		Handler: &app.Handler{
			Name: "Roofside", ShortName: "Roofside", Title: "Roofside", Lang: words.Tag,
			Description:     words.T("site.about"),
			BackgroundColor: "#f4f1ea", ThemeColor: "#22303a",
			LoadingLabel: "{progress} %",
			Icon: app.Icon{
				SVG: "/web/icon.svg", Default: "/web/icon-192.png",
				Large: "/web/icon-512.png", Maskable: "/web/icon-maskable.png",
			},
			// iOS reads its own names for these.
			RawHeaders: []string{`<meta content="yes" name="apple-mobile-web-app-capable">`, `<meta content="Roofside" name="apple-mobile-web-app-title">`},
			Styles:     []string{"/web/loading.css", "/web/app.css", "/web/picture.css", "/web/print.css"},
			// Plain scripts run before go-app's, which are deferred.
			Scripts: []string{"/web/first/storage.js", "/web/first/journal.js", "/web/first/address.js", "/web/first/program.js", "/web/first/start.js", "/web/first/update.js", "/web/first/offline.js", "/web/first/ended.js", "/web/first/keys.js", "/web/first/files.js", "/web/first/frame.js"},
		},
	}
}

func write(arguments []string) error {
	o := options()
	flags := flag.NewFlagSet("site", flag.ExitOnError)
	flags.StringVar(&o.Out, "out", "dist", "write into this `folder`")
	flags.StringVar(&o.Base, "base", o.Base, "the `path` the site will stand at")
	flags.StringVar(&o.Web, "web", o.Web, "the `folder` of static files")
	flags.StringVar(&o.Wasm, "wasm", o.Wasm, "the compiled program")
	flags.IntVar(&o.Brotli, "brotli", o.Brotli, "`quality` of .br files, 1 to 11; 0 writes none")
	if err := flags.Parse(arguments); err != nil {
		return err
	}
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		return fmt.Errorf("asking the compiler where its wasm_exec.js is: %w", err)
	}
	goroot := strings.TrimSpace(string(root))
	o.Loader = filepath.Join(goroot, "lib", "wasm", "wasm_exec.js")
	program, err := os.ReadFile(o.Wasm)
	if err != nil {
		return fmt.Errorf("the program has to be compiled first: %w", err)
	}
	info, err := site.LinkedInto(program)
	if err != nil {
		return err
	}
	// Said from here: in the browser the compiler's own list costs 33 kB.
	parts := []string{"Go " + strings.TrimPrefix(runtime.Version(), "go")}
	for _, module := range info.Deps {
		parts = append(parts, module.Path+" "+module.Version)
	}
	o.Handler.Env = map[string]string{page.BuiltFrom: strings.Join(parts, "\n")}
	if o.Licenses, err = site.Licenses(info, goroot); err != nil {
		return err
	}
	if o.Headers, err = os.ReadFile("netlify.toml"); err != nil {
		return err
	}
	register()
	return site.Build(o)
}

func serve(arguments []string) error {
	flags := flag.NewFlagSet("serve", flag.ExitOnError)
	dir := flags.String("dir", "dist", "the site's `folder`")
	address := flags.String("addr", "localhost:8080", "listen at this `address`")
	if err := flags.Parse(arguments); err != nil {
		return err
	}
	headers, err := site.ReadHeaders("netlify.toml")
	if err != nil {
		return err
	}
	listener, err := net.Listen("tcp", *address)
	if err != nil {
		return err
	}
	fmt.Printf("Roofside is served at http://%s/\n", listener.Addr())
	server := &http.Server{Handler: site.Files{Dir: *dir, Headers: headers}, ReadHeaderTimeout: 10 * time.Second}
	return server.Serve(listener)
}
