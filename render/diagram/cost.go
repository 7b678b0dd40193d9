package diagram

import "slices"

func inverseOf(order []int) []int {
	inv := make([]int, len(order))
	for i, t := range order {
		inv[t] = i
	}
	return inv
}

// cost judges an order of tracks.
func (z *puzzle) cost(order []int) float64 {
	if z.inverse == nil {
		z.inverse = make([]int, z.n)
	}
	for i := range z.inverse {
		z.inverse[i] = -1
	}
	for i, t := range order {
		z.inverse[t] = i
	}
	c := 0.0
	for _, g := range z.groups {
		c += z.split(g)
	}
	for _, u := range z.units {
		c += fragCost * float64(z.pieces(u)-1)
	}
	for _, m := range z.mates {
		c += mateCost * float64(z.between(m[0], m[1]))
	}
	for _, b := range z.bars {
		c += z.barCost(b)
	}
	for _, s := range z.studs {
		lo, hi := z.reach(s)
		c += studCost * float64(hi-lo)
	}
	for i := range order {
		for k := i + 1; k < len(order); k++ {
			if order[i] > order[k] {
				c += habitCost
			}
		}
	}
	return c
}

// split judges the columns of one item: side by side in order is free, two
// columns may be mirrored.
func (z *puzzle) split(g set) float64 {
	up, down := true, true
	last := -1
	for _, t := range g {
		at := z.inverse[t]
		if at < 0 {
			continue
		}
		if last >= 0 {
			up, down = up && at == last+1, down && at == last-1
		}
		last = at
	}
	switch {
	case up:
		return 0
	case down && len(g) == 2:
		return mirrorCost
	}
	lo, hi := z.reach(g)
	return splitCost * float64(2+hi-lo)
}

func (z *puzzle) reach(s set) (lo, hi int) {
	lo, hi = z.n, -1
	for _, t := range s {
		if at := z.inverse[t]; at >= 0 {
			lo, hi = min(lo, at), max(hi, at)
		}
	}
	if hi < 0 {
		return 0, 0
	}
	return lo, hi
}

// pieces counts the runs of neighbors in a set.
func (z *puzzle) pieces(s set) int {
	var at []int
	for _, t := range s {
		if z.inverse[t] >= 0 {
			at = append(at, z.inverse[t])
		}
	}
	slices.Sort(at)
	n := 1
	for i := 1; i < len(at); i++ {
		if at[i] > at[i-1]+1 {
			n++
		}
	}
	return n
}

// between counts the tracks between two sets that should be neighbors.
func (z *puzzle) between(a, b set) int {
	best := z.n
	for _, t := range a {
		for _, u := range b {
			if i, k := z.inverse[t], z.inverse[u]; i >= 0 && k >= 0 {
				best = min(best, max(i-k, k-i)-1)
			}
		}
	}
	if best == z.n {
		return 0
	}
	return max(best, 0)
}

func (z *puzzle) barCost(b barSet) float64 {
	lo, hi := z.reach(b.tracks)
	c := barCost * float64(hi-lo)
	for _, t := range b.crossed {
		if at := z.inverse[t]; at > lo && at < hi {
			c += crossCost
		}
	}
	return c
}

// insert builds an order track by track, each at its cheapest place.
func (z *puzzle) insert(list []int) []int {
	var order []int
	for _, t := range list {
		var best []int
		cost := 0.0
		for at := len(order); at >= 0; at-- {
			try := slices.Insert(slices.Clone(order), at, t)
			if c := z.cost(try); best == nil || c < cost-1e-9 {
				best, cost = try, c
			}
		}
		order = best
	}
	return order
}

// improve goes once over all short stretches of tracks and puts each where it
// is cheapest, as it is or reversed.
func (z *puzzle) improve(order []int, cost float64) ([]int, float64) {
	for size := 1; size <= min(longestMove, len(order)); size++ {
		for from := 0; from+size <= len(order); from++ {
			order, cost = z.move(order, cost, from, size)
		}
	}
	return order, cost
}

func (z *puzzle) move(order []int, cost float64, from, size int) ([]int, float64) {
	best := order
	piece := slices.Clone(order[from : from+size])
	rest := append(slices.Clone(order[:from]), order[from+size:]...)
	turned := slices.Clone(piece)
	slices.Reverse(turned)
	for at := 0; at <= len(rest); at++ {
		for _, put := range [][]int{piece, turned} {
			try := slices.Insert(slices.Clone(rest), at, put...)
			if c := z.cost(try); c < cost-1e-9 {
				best, cost = try, c
			}
		}
	}
	return best, cost
}
