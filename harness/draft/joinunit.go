package draft

import (
	"slices"
	"strings"
	"sync"

	"legwork/harness/quantity"
)

// unitWords are all units that quantity reads, as they are spelled.
var unitWords = sync.OnceValue(func() map[string]bool {
	set := map[string]bool{}
	for d := quantity.None; d <= quantity.Thread; d++ {
		for _, u := range quantity.UnitsOf(d) {
			set[u] = true
		}
	}
	return set
})

// places gives how many items of a statement are names in fixed places, where
// a number is a name and never a figure.
func places(s *Stmt) int {
	switch s.Word() {
	case "bus", "spare", "together":
		return len(s.Items)
	case "wire", "lead", "core", "drain", "strap":
		return 3
	case "leg":
		return 2
	}
	if s.ParentWord() == "keyswitch" {
		n := slices.IndexFunc(s.Items, func(i Item) bool { return i.Is("lasts") })
		if n < 0 {
			n = len(s.Items)
		}
		return n
	}
	if s.ParentWord() == "module" || s.ParentWord() == "connector" {
		return 0
	}
	return 1
}

// joined gives the items as printed, each figure from item first on with the
// unit that was written apart from it.
func joined(s *Stmt, first int) []string {
	out := make([]string, 0, len(s.Items))
	feet := false // the last one is feet that were joined right now
	for i := 0; i < len(s.Items); i++ {
		w := s.Items[i].print()
		if i >= first && i+1 < len(s.Items) && isNumber(w) && joins(s, i+1, feet) {
			unit := s.Items[i+1].Raw
			i++
			if feet && unit == "in" {
				out[len(out)-1] += w + unit
				feet = false
				continue
			}
			feet = unit == "ft"
			out = append(out, w+unit)
			continue
		}
		feet = false
		out = append(out, w)
	}
	return out
}

// joins reports whether item n is a unit for the number before it. "in" is a
// word of its own before the name of a box.
func joins(s *Stmt, n int, feet bool) bool {
	unit := s.Items[n].Word()
	if unit == "" || unit != s.Items[n].Raw || !unitWords()[unit] {
		return false
	}
	if unit != "in" || feet || n == len(s.Items)-1 {
		return true
	}
	switch s.Word() {
	case "wire", "lead", "core", "drain", "strap", "leg", "cable":
		return true
	}
	return false
}

// isNumber reports whether a word is digits, perhaps with a sign, a decimal
// part or a denominator.
func isNumber(w string) bool {
	w = strings.TrimLeft(w, "+-")
	whole, part, two := strings.Cut(w, ".")
	if !two {
		whole, part, two = strings.Cut(w, "/")
	}
	return digits(whole) && (!two || digits(part))
}

func digits(w string) bool {
	return w != "" && strings.Trim(w, "0123456789") == ""
}
