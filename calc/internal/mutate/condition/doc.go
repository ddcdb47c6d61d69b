// Package condition tries whether tests hold judgments, not only figures: it turns
// the conditions of a package about, one at a time, by the syntax tree, and runs the
// tests that stand on it. A change that no test finds is a survivor.
//
// && and || are exchanged, == and !=, < and <=, > and >=; the condition of an if,
// and of a switch without a tag, is negated; an operand of && or || is dropped.
//
// All changes stand in one text and are called by number, so that each test binary
// is built once; which tests can tell a change from the text as it is, is known
// from one run of each without any, and only those run again, the quick ones first.
// Why no module is used for it: of those that the proxy has, gremlins 0.6.0 copies the
// module and compiles anew for each change, drops no operand and negates no whole
// condition, can't name a change as indifferent, and takes a text that does not
// compile for one that a test has found.
package condition
