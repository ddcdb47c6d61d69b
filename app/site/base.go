package site

import "strings"

// base is the path that a site stands at. It is go-app's resource resolver in
// place of the built-in prefix resolver, which forgets the slash at the end and
// prefixes a path twice.
type base string

// Resolve puts the base before a rooted path, once.
func (b base) Resolve(location string) string {
	if b == "/" || !strings.HasPrefix(location, "/") || strings.HasPrefix(location, "//") || strings.HasPrefix(location, string(b)) {
		return location
	}
	return string(b) + location[1:]
}
