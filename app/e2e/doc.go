// Package e2e tries the built site in headless Chromium, as a technician's
// phone would use it. Its tests need the tag e2e, a site in dist/ and Chromium:
// "make test" sees to all three.
package e2e
