// Package site writes Roofside as a static site and serves such a site as
// plain files. It runs on the machine that builds, never in the browser.
//
// A site is a tree of files: one page per route, rendered by go-app and then
// made tidy; the files of web/; the program; and a service worker that knows
// every file by its SHA-256, so that a phone holds one whole version or none.
package site
