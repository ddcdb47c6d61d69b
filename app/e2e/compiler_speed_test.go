//go:build e2e && (speed || startup)

package e2e

// compiler leaves the engine as it is, where it is what is measured.
const compiler = ""
