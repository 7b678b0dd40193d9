package diagram

// latest finds, from the foot up, the lowest row at which everything below
// still fits.
func latest(order []*vertex) {
	for i := len(order) - 1; i >= 0; i-- {
		v := order[i]
		v.late = lastSlot
		for _, l := range v.next {
			v.late = min(v.late, l.to.late-l.diff)
		}
		if v.item != nil {
			if v.item.mate != nil {
				v.late = min(v.late, v.want)
			}
			v.late = floorOf(v.may, v.late)
		}
	}
}

// earliest goes from the top down and gives each item the allowed row nearest
// to the one it wants.
func earliest(order []*vertex) {
	low := map[*vertex]int{}
	for _, v := range order {
		if v.bar != nil {
			v.place = low[v]
		} else {
			v.place = nearest(v.may, v.want, max(low[v], 1), v.late)
			v.item.slot = v.place
		}
		for _, l := range v.next {
			low[l.to] = max(low[l.to], v.place+l.diff)
		}
	}
}

// closeUp moves bars that hang over their members down to them, from the foot
// up.
func (p *plan) closeUp(order []*vertex) {
	for i := len(order) - 1; i >= 0; i-- {
		v := order[i]
		if v.bar == nil {
			continue
		}
		if v.hangs {
			to := lastSlot
			for _, l := range v.next {
				to = min(to, l.to.place-l.diff)
			}
			v.place = max(v.place, to)
		}
		v.bar.gap = v.place
	}
}

// violations lists the links whose lower end does not stand below the upper.
func (p *plan) violations(vs []*vertex) []link {
	var bad []link
	for _, v := range vs {
		for _, l := range v.next {
			if v.place+l.diff > l.to.place && (l.strand == nil || !l.strand.run.cut) {
				bad = append(bad, l)
			}
		}
	}
	return bad
}

// floorOf gives the largest allowed row up to limit, or the smallest of all.
func floorOf(may []int, limit int) int {
	best := may[0]
	for _, m := range may {
		if m <= limit {
			best = max(best, m)
		}
	}
	return best
}

// nearest gives the allowed row from low to high that is nearest to want; with
// none in range, the first at or below low.
func nearest(may []int, want, low, high int) int {
	best, gap := 0, 1<<30
	for _, m := range may {
		d := max(m-want, want-m) * 4
		if m < low {
			d += 1 << 20
		}
		if m > high {
			d += 1 << 10
		}
		if d < gap {
			best, gap = m, d
		}
	}
	return best
}
