// Package number reads and writes numbers and quantities: in a language, for
// people, and in canonical text, for records and links.
//
// Canonical text belongs to no language. A number is ASCII digits with an
// optional leading minus and decimal point (1750, -0.5), a fraction (1/2) or a
// mixed number (3-1/2); it has no exponent and no grouping. A quantity is a
// number, one space and the symbol of a unit (90 mm, 2 %); a ratio that counts
// ones is the number alone; a length may be whole feet and inches
// (5 ft 6-1/2 in). Canonical text keeps the digits as they were typed, because
// what is shared is what was typed: 3.40 in stays 3.40 in.
//
// A mark is what may stand between digits: a decimal mark or a grouping mark.
// A reading is what was typed, as canonical text and as a value, with what a
// person should be shown when the marks could be meant otherwise.
//
// Rounding goes half away from zero and looks at the shortest decimal that
// stands for the float: 2.675 rounds to 2.68, as a person with a pencil has
// it, though the float nearest to 2.675 lies a little below.
package number
