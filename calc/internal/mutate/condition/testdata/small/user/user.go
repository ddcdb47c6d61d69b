// Package user asks what judge leaves to it.
package user

import "small/judge"

// Fine asks abroad.
func Fine(q int) bool { return judge.Abroad(q) }
