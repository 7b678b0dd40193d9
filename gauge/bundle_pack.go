package gauge

import "math"

// disk is a wire seen from its end.
type disk struct{ x, y, r float64 }

const touchSlack = 1e-9

// packed is the diameter of a circle around wires of falling diameters that
// lie side by side: each goes where it touches two of those before it,
// nearest to the middle. It is a packing, so the tightest is no larger. The
// circle is drawn around the best of a few middles.
func packed(ds []float64) float64 {
	laid := []disk{{0, 0, ds[0] / 2}}
	for i := 1; i < len(ds); i++ {
		laid = append(laid, nearestSpot(laid, ds[i]/2))
	}
	return 2 * enclosing(laid)
}

// nearestSpot is where a disk of radius r touches two of those laid, clear of
// all others, with its far edge nearest to the middle of those laid.
func nearestSpot(laid []disk, r float64) disk {
	if len(laid) == 1 {
		return disk{laid[0].x + laid[0].r + r, laid[0].y, r}
	}
	mx, my := middle(laid)
	best, reach := disk{}, math.Inf(1)
	for i := range laid {
		for j := i + 1; j < len(laid); j++ {
			for _, spot := range spots(laid[i], laid[j], r) {
				if far := math.Hypot(spot.x-mx, spot.y-my) + r; far < reach && clear(spot, laid) {
					best, reach = spot, far
				}
			}
		}
	}
	return best
}

// middle is the centroid of the areas laid.
func middle(laid []disk) (x, y float64) {
	var area float64
	for _, d := range laid {
		w := d.r * d.r
		x, y, area = x+w*d.x, y+w*d.y, area+w
	}
	return x / area, y / area
}

// spots are the two places where a disk of radius r touches both a and b.
func spots(a, b disk, r float64) []disk {
	dx, dy := b.x-a.x, b.y-a.y
	gap := math.Hypot(dx, dy)
	ra, rb := a.r+r, b.r+r
	if gap > ra+rb || gap == 0 {
		return nil
	}
	along := (gap*gap + ra*ra - rb*rb) / (2 * gap)
	up := math.Sqrt(max(0, ra*ra-along*along))
	ux, uy := dx/gap, dy/gap
	return []disk{
		{a.x + along*ux - up*uy, a.y + along*uy + up*ux, r},
		{a.x + along*ux + up*uy, a.y + along*uy - up*ux, r},
	}
}

func clear(d disk, laid []disk) bool {
	for _, o := range laid {
		if math.Hypot(d.x-o.x, d.y-o.y) < (d.r+o.r)*(1-touchSlack) {
			return false
		}
	}
	return true
}

// enclosing is the radius of a circle around all disks: the middle walks
// toward the farthest edge in ever smaller steps. It never falls short, since
// the radius is measured at the end.
func enclosing(laid []disk) float64 {
	x, y := middle(laid)
	best := math.Inf(1)
	for step := 0.5; step > 1e-6; step *= 0.93 {
		far, at := 0.0, disk{}
		for _, d := range laid {
			if reach := math.Hypot(d.x-x, d.y-y) + d.r; reach > far {
				far, at = reach, d
			}
		}
		best = min(best, far)
		x, y = x+step*(at.x-x)*0.2, y+step*(at.y-y)*0.2
	}
	return best
}
