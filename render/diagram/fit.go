package diagram

import "slices"

// railsOn lists the rails that take height: all of them where sheets share
// their heights, those in use where a sheet stands by itself.
func (p *plan) railsOn(sheets []*page) []*joint {
	if len(sheets) == len(p.sheets) {
		return p.rails
	}
	var out []*joint
	for _, j := range p.rails {
		for _, g := range sheets {
			if p.uses(g, j) {
				out = append(out, j)
				break
			}
		}
	}
	return out
}

// uses reports whether anything on the sheet ends at the rail.
func (p *plan) uses(g *page, j *joint) bool {
	for _, s := range p.strands {
		if s.col.track().page == g && (s.upper.joint == j || s.lower.joint == j) {
			return true
		}
	}
	for _, q := range p.pinsOf(j) {
		if q.item.cols[q.col].track().page == g && q.up() {
			return true
		}
	}
	return false
}

// heightOf gives the height of a rail.
func (t *tallness) heightOf(j *joint) float64 {
	return firstRail + railPitch*float64(max(slices.Index(t.rails, j), 0))
}

// whole reports whether every symbol stands on one panel: paper that is too
// narrow for the widest of them cuts it.
func (p *plan) whole() bool {
	for _, it := range p.items {
		for _, q := range it.cols {
			if q.track().panel != it.cols[0].track().panel {
				return false
			}
		}
	}
	return true
}
