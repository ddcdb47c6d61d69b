package site

import (
	"fmt"
	"net/http"
	"net/http/httptest"
)

// render asks go-app for its scripts and for each page. Pages become folders
// with an index.html, so that a plain file server answers /drive/ and sends
// /drive there.
func (o Options) render(t tree) error {
	h := o.Handler
	h.Resources = base(o.Base)
	h.Version = unversioned

	get := func(path string) ([]byte, error) {
		answer := httptest.NewRecorder()
		h.ServeHTTP(answer, httptest.NewRequest(http.MethodGet, path, nil))
		if answer.Code != http.StatusOK {
			return nil, fmt.Errorf("go-app answers %s with %d", path, answer.Code)
		}
		return answer.Body.Bytes(), nil
	}
	var err error
	for _, file := range []string{"app.js", "app.css"} {
		if t[file], err = get("/" + file); err != nil {
			return err
		}
	}
	for _, route := range o.Routes {
		raw, err := get(route)
		if err != nil {
			return err
		}
		if t[route[1:]+"index.html"], err = tidy(raw); err != nil {
			return fmt.Errorf("page %s: %w", route, err)
		}
	}
	return nil
}
