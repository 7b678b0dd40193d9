package diagram

import (
	"cmp"
	"math"
	"slices"
)

func widthOf(tracks int, pitch float64) float64 {
	return leftRoom + rightRoom + float64(tracks-1)*pitch
}

// share puts the panels on as few sheets as possible, so that the fullest is
// as empty as can be. Small leftovers that would need a sheet of their own go
// to the last one with room for them.
func (p *plan) share(pitch float64) [][]*panel {
	room := p.paper.room()
	best := inOrder(p.panels, pitch, room)
	if less, ok := tuck(best, pitch, room); ok {
		return less
	}
	for limit := room - 5; limit > 0; limit -= 5 {
		if try := inOrder(p.panels, pitch, limit); len(try) == len(best) {
			best = try
		} else {
			break
		}
	}
	return best
}

// inOrder puts panels on sheets in their order.
func inOrder(all []*panel, pitch, limit float64) [][]*panel {
	var out [][]*panel
	used := math.Inf(1)
	for _, a := range all {
		w := widthOf(len(a.tracks), pitch)
		if used+w > limit+1e-9 {
			out, used = append(out, nil), 0
		}
		out[len(out)-1] = append(out[len(out)-1], a)
		used += w
	}
	return out
}

// tuck moves the panels of the last sheet to sheets before it, whole sections
// alone; ok is false where they don't all find room.
func tuck(sheets [][]*panel, pitch, room float64) (out [][]*panel, ok bool) {
	n := len(sheets) - 1
	if n < 1 {
		return sheets, false
	}
	for _, g := range sheets[:n] {
		out = append(out, slices.Clone(g))
	}
	for _, a := range sheets[n] {
		at := lastWithRoom(out, room-widthOf(len(a.tracks), pitch), pitch)
		if a.more || at < 0 {
			return sheets, false
		}
		out[at] = append(out[at], a)
	}
	return out, true
}

// lastWithRoom gives the last sheet whose panels are no wider than that.
func lastWithRoom(sheets [][]*panel, width, pitch float64) int {
	for i := len(sheets) - 1; i >= 0; i-- {
		used := 0.0
		for _, a := range sheets[i] {
			used += widthOf(len(a.tracks), pitch)
		}
		if used <= width+1e-9 {
			return i
		}
	}
	return -1
}

// widestPitch is how far tracks may stand apart where a sheet has few.
const widestPitch = 45.0

func (p *plan) pitchFor(g *page, least float64) float64 {
	for i, pitch := range pitches {
		w, gaps := 0.0, 0
		for _, a := range g.panels {
			w += widthOf(len(a.tracks), pitch)
			gaps += len(a.tracks) - 1
		}
		if w > p.paper.room()+1e-9 {
			continue
		}
		if i == 0 && gaps > 0 {
			pitch = min(widestPitch, pitch+max(p.paper.room()-w-mostGrow*float64(len(g.panels)), 0)/float64(gaps))
		}
		return pitch
	}
	return least
}

// place sets the tracks of a sheet; left-over width goes to the sections, at
// most 10 mm each.
func (p *plan) place(g *page) {
	w := 0.0
	for _, a := range g.panels {
		w += widthOf(len(a.tracks), g.pitch)
	}
	grow := min(max(p.paper.room()-w, 0)/float64(max(len(g.panels), 1)), mostGrow)
	x := drawLeft
	for i, a := range g.panels {
		a.x1, a.shade = x, i%2 == 0
		x += leftRoom + grow*0.35
		for k, t := range a.tracks {
			if k > 0 {
				x += g.pitch
			}
			t.x = x
		}
		x += rightRoom + grow*0.65
		a.x2 = x
	}
	g.right = x
}

// panelsOf lists the panels of a section, left to right.
func (p *plan) panelsOf(s *section) []*panel {
	var out []*panel
	for _, a := range p.panels {
		if a.sect == s {
			out = append(out, a)
		}
	}
	slices.SortStableFunc(out, func(a, b *panel) int { return cmp.Compare(a.tracks[0].index, b.tracks[0].index) })
	return out
}
