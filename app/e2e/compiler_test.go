//go:build e2e && !speed && !startup

package e2e

// compiler has the engine compile the program once, quickly, and leave it at that: to
// compile it again for speed takes a quarter of the processor, and no test here lives
// long enough to have it back.
const compiler = "--liftoff-only"
