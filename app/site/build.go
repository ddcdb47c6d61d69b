package site

import (
	"errors"
	"fmt"
	"os"
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// unversioned stands for the version until the content, and so the version, is
// known. No file may hold this text by chance.
const unversioned = "roofside-version-of-this-content"

// Options say what to build from, and where to.
type Options struct {
	Out    string // the folder to write; it is emptied first
	Base   string // the path that the site will stand at: / or /tools/fans/
	Web    string // the folder of static files
	Wasm   string // the compiled program
	Loader string // the wasm_exec.js of the compiler that made it
	Brotli int    // quality of the .br files, 1 to 11; 0 writes none

	Licenses []byte // of all that is shipped, in full
	Headers  []byte // the file that says what the host sends with the site: another policy is another version

	Routes    []string     // canonical addresses, each with its slash at the end
	Shortcuts []Shortcut   // pages offered by the icon's menu
	Handler   *app.Handler // names, words, styles and scripts; serves one build
}

// A Shortcut is a page offered by the menu of the installed icon.
type Shortcut struct{ Name, Route string }

// Build writes the site.
func Build(o Options) error {
	t, err := o.tree()
	if err != nil {
		return err
	}
	if err := t.compress(o.Brotli); err != nil {
		return err
	}
	return t.write(o.Out)
}

// tree makes every file of the site but the compressed twins.
func (o Options) tree() (tree, error) {
	if err := o.check(); err != nil {
		return nil, err
	}
	t, err := readTree(o.Web, "web/")
	if err != nil {
		return nil, err
	}
	worker, err := t.take("web/worker.js")
	if err != nil {
		return nil, err
	}
	start, ok := t["web/first/start.js"]
	if !ok {
		return nil, errors.New("no web/first/start.js")
	}
	if t[programFile], err = os.ReadFile(o.Wasm); err != nil {
		return nil, fmt.Errorf("the program has to be compiled first: %w", err)
	}
	if t[packedFile], err = squeeze(t[programFile], zip); err != nil {
		return nil, err
	}
	// go-app brings a copy of its own, made with some other compiler.
	if t["wasm_exec.js"], err = os.ReadFile(o.Loader); err != nil {
		return nil, err
	}
	t["licenses.txt"] = o.Licenses
	if t["manifest.webmanifest"], err = o.manifest(); err != nil {
		return nil, err
	}
	if t["404.html"], err = o.notFound(); err != nil {
		return nil, err
	}
	if err := t.join(o.Handler); err != nil {
		return nil, err
	}
	if err := o.render(t); err != nil {
		return nil, err
	}
	if err := o.joinTheirs(t); err != nil {
		return nil, err
	}
	if err := o.loadOurWay(t); err != nil {
		return nil, err
	}
	// The worker is part of what is versioned: a changed worker must not share
	// a cache with its forerunner. So are the headers, which are kept with each file.
	version := t.version(worker, o.Headers)
	t["app.js"] = []byte(strings.ReplaceAll(string(t["app.js"]), unversioned, version))
	t["app-worker.js"], err = t.worker(worker, start, version)
	return t, err
}

func (o Options) check() error {
	if !strings.HasPrefix(o.Base, "/") || !strings.HasSuffix(o.Base, "/") {
		return fmt.Errorf("base %q: must begin and end with a slash", o.Base)
	}
	for _, r := range o.Routes {
		if !strings.HasPrefix(r, "/") || !strings.HasSuffix(r, "/") {
			return fmt.Errorf("route %q: must begin and end with a slash", r)
		}
		// The resolver tells a path that has its prefix from one that still
		// needs it by the prefix alone.
		if o.Base != "/" && strings.HasPrefix(r, o.Base) {
			return fmt.Errorf("base %q: the route %q begins with it", o.Base, r)
		}
	}
	return nil
}
