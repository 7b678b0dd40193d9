package model

import (
	"legwork/harness/diag"
	"legwork/harness/part"
)

// givens is where the settings of a statement are given. There are a few.
type givens []given

// given is a setting and where it stands.
type given struct {
	setting *part.Setting
	at      diag.Span
}

// at gives where a setting is given; ok is false where it is not.
func (g givens) at(s *part.Setting) (at diag.Span, ok bool) {
	for i := range g {
		if g[i].setting == s {
			return g[i].at, true
		}
	}
	return diag.Span{}, false
}

// set notes where a setting is given; a later place takes that of an earlier.
func (g *givens) set(s *part.Setting, at diag.Span) {
	for i := range *g {
		if (*g)[i].setting == s {
			(*g)[i].at = at
			return
		}
	}
	*g = append(*g, given{s, at})
}

// formRoom is the room for what is read into one form after the other.
type formRoom struct {
	values []part.Value
	given  givens
}
