package main

import "roofside/calc/internal/mutate/condition"

// sameAnyway are changed conditions that make no difference, as a survivor is
// reported.
var sameAnyway = []condition.Indifferent{}
