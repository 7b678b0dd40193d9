package diagram

import (
	"cmp"
	"slices"
)

// wholeSearch is the largest number of tracks that are put in order as one;
// wideBar the largest bar that then still ties its tracks together.
const (
	wholeSearch = 48
	wideBar     = 12
)

// solveParts puts a wide section in order piece by piece: what has to stand
// together is one piece, pieces follow each other as in the draft.
func (z *puzzle) solveParts() []int {
	var order []int
	for _, piece := range z.pieceList() {
		sub := z.only(piece)
		if sub.n > wholeSearch {
			order = append(order, z.glued(piece)...)
			continue
		}
		for _, i := range sub.solve() {
			order = append(order, piece[i])
		}
	}
	return order
}

// pieceList groups the tracks that items, coils and short bars tie together.
func (z *puzzle) pieceList() []set {
	at := make([]int, z.n)
	for i := range at {
		at[i] = i
	}
	var find func(int) int
	find = func(i int) int {
		if at[i] != i {
			at[i] = find(at[i])
		}
		return at[i]
	}
	tie := func(s set) {
		for _, t := range s {
			a, b := find(s[0]), find(t)
			at[max(a, b)] = min(a, b)
		}
	}
	for _, g := range z.groups {
		tie(g)
	}
	for _, m := range z.mates {
		tie(append(slices.Clone(m[0]), m[1]...))
	}
	for _, b := range z.bars {
		if len(b.tracks) <= wideBar {
			tie(b.tracks)
		}
	}
	members := make([]set, z.n)
	for i := range z.n {
		members[find(i)] = append(members[find(i)], i)
	}
	return slices.DeleteFunc(members, func(s set) bool { return len(s) == 0 })
}

// only states the puzzle of some of the tracks.
func (z *puzzle) only(piece set) *puzzle {
	to := map[int]int{}
	for i, t := range piece {
		to[t] = i
	}
	pick := func(s set) set {
		var out set
		for _, t := range s {
			if i, ok := to[t]; ok {
				out = append(out, i)
			}
		}
		return out
	}
	sub := &puzzle{n: len(piece)}
	for _, g := range z.groups {
		if g = pick(g); len(g) > 1 {
			sub.groups = append(sub.groups, g)
		}
	}
	for _, u := range z.units {
		if u = pick(u); len(u) > 1 {
			sub.units = append(sub.units, u)
		}
	}
	for _, m := range z.mates {
		if a, b := pick(m[0]), pick(m[1]); len(a) > 0 && len(b) > 0 {
			sub.mates = append(sub.mates, [2]set{a, b})
		}
	}
	for _, b := range z.bars {
		if t := pick(b.tracks); len(t) > 1 {
			sub.bars = append(sub.bars, barSet{t, pick(b.crossed)})
		}
	}
	for _, s := range z.studs {
		if s = pick(s); len(s) > 1 {
			sub.studs = append(sub.studs, s)
		}
	}
	return sub
}

// glued keeps the order of the draft, save that the columns of one item
// follow each other.
func (z *puzzle) glued(piece set) []int {
	first := map[int]int{}
	for _, g := range z.groups {
		for i, t := range g {
			if _, ok := first[t]; !ok {
				first[t] = slices.Min(g)*64 + i
			}
		}
	}
	key := func(t int) int {
		if k, ok := first[t]; ok {
			return k
		}
		return t * 64
	}
	out := slices.Clone(piece)
	slices.SortStableFunc(out, func(a, b int) int { return cmp.Compare(key(a), key(b)) })
	return out
}
