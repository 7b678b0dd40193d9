package diag

import (
	"cmp"
	"slices"
)

// Rest is how many findings of one rule were left out.
type Rest struct {
	Rule  string
	Count int
}

// Few gives the findings that a person can take in: at most alike of one rule
// and most in all, the worst first to stay, in list order. What is left out is
// counted by rule, the largest count first. The list itself is not changed.
func (l List) Few(alike, most int) (few List, rest []Rest) {
	if len(l) <= min(alike, most) {
		return l, nil
	}
	order := make([]int, len(l))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(l[b].Severity, l[a].Severity) })
	shown, left := map[string]int{}, map[string]int{}
	keep := order[:0]
	for _, i := range order {
		rule := l[i].Rule
		if shown[rule] >= alike || len(keep) >= most {
			left[rule]++
			continue
		}
		shown[rule]++
		keep = append(keep, i)
	}
	slices.Sort(keep)
	for _, i := range keep {
		few = append(few, l[i])
	}
	for rule, n := range left {
		rest = append(rest, Rest{rule, n})
	}
	slices.SortFunc(rest, func(a, b Rest) int {
		return cmp.Or(cmp.Compare(b.Count, a.Count), cmp.Compare(a.Rule, b.Rule))
	})
	return few, rest
}
