//go:build e2e

package e2e

import (
	"net"
	"net/http"
	"path/filepath"
	"sync/atomic"
	"testing"

	"roofside/app/site"
)

// A Server serves a folder as plain files, with the headers of netlify.toml. It
// can go and come back at the same address, and publish another folder.
type Server struct {
	URL string // without a slash at the end

	t       *testing.T
	address string
	server  *http.Server
	handler atomic.Pointer[http.Handler]
}

// NewServer serves dir until the test ends.
func NewServer(t *testing.T, dir string) *Server {
	s := &Server{t: t, address: "127.0.0.1:0"}
	s.Publish(dir)
	s.Start()
	t.Cleanup(s.Stop)
	return s
}

// hosted serves a folder as plain files, with the headers of netlify.toml.
func hosted(t *testing.T, dir string) http.Handler {
	t.Helper()
	headers, err := site.ReadHeaders(filepath.Join(top, "netlify.toml"))
	if err != nil {
		t.Fatal(err)
	}
	return site.Files{Dir: dir, Headers: headers}
}

// Publish serves another folder from now on.
func (s *Server) Publish(dir string) {
	s.t.Helper()
	s.Handle(hosted(s.t, dir))
}

// PublishBut serves another folder from now on, but for the path that it leaves to
// one handler; the other answer tells whether it was asked for.
func (s *Server) PublishBut(dir, path string, one http.HandlerFunc) (asked *atomic.Bool) {
	s.t.Helper()
	rest := hosted(s.t, dir)
	asked = new(atomic.Bool)
	s.Handle(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.URL.Path == path {
			asked.Store(true)
			one(w, r)
			return
		}
		rest.ServeHTTP(w, r)
	}))
	return asked
}

// hangUp breaks the connection off.
func hangUp(http.ResponseWriter, *http.Request) { panic(http.ErrAbortHandler) }

// Handle answers with h from now on.
func (s *Server) Handle(h http.Handler) { s.handler.Store(&h) }

// Start listens, at the address it had before if there was one.
func (s *Server) Start() {
	s.t.Helper()
	listener, err := net.Listen("tcp", s.address)
	if err != nil {
		s.t.Fatal(err)
	}
	s.address = listener.Addr().String()
	s.URL = "http://" + s.address
	s.server = &http.Server{Handler: http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		(*s.handler.Load()).ServeHTTP(w, r)
	})}
	// Serve always ends with an error: that of Stop.
	go func(server *http.Server) { _ = server.Serve(listener) }(s.server)
}

// Stop closes the door and every connection: the server is gone.
func (s *Server) Stop() {
	s.t.Helper()
	if s.server == nil {
		return
	}
	if err := s.server.Close(); err != nil {
		s.t.Error(err)
	}
	s.server = nil
}
