// Package calc is the root of a library for replacing belt-drive fans: drive
// speed, fan laws, belts, three-phase readings and raceways. It holds no code
// of its own; its packages are the rooms.
//
//   - unit: typed quantities in SI and the units they are written in
//   - number: numbers and quantities read and written in a language
//   - source: every publication that a formula or a table rests on
//   - limit: how a formula refuses an input: the parameter and the rule
//   - drive, airflow, belt, phase, raceway: the formulas, one package for each subject
//   - record: what is known of a fan, each value in one place
//   - sheet: answers drawn from a record, with verdict and working
//
// Every package is pure: no browser, no clock, no state shared between calls.
package calc
