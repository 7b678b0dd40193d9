package diagram

import (
	"math"
	"slices"
)

// panel is a section, or a part of one that is too wide, on its sheet.
type panel struct {
	sect   *section
	tracks []*track
	more   bool // goes on from the sheet before
	x1, x2 float64
	page   *page
	shade  bool
}

// page is one sheet.
type page struct {
	number int
	panels []*panel
	pitch  float64
	first  int // path numbers
	last   int
	right  float64 // end of the last section
	tall   *tallness
}

// paginate cuts sections that are too wide, fills sheets with them, evenly,
// and gives every track its place and number.
func (p *plan) paginate() {
	p.paper = papersFor(p.in.Paper)[0]
	p.fill()
}

func (p *plan) fill() {
	least := p.leastPitch()
	p.panels, p.sheets = nil, nil
	for _, s := range p.sections {
		p.panels = append(p.panels, p.cutSection(s, p.paper.mostTracks(least))...)
	}
	for _, group := range p.share(least) {
		p.sheets = append(p.sheets, &page{number: len(p.sheets) + 1, panels: group})
	}
	if len(p.sheets) == 0 {
		p.sheets = []*page{{number: 1}}
	}
	path := 0
	for _, g := range p.sheets {
		g.pitch = p.pitchFor(g, least)
		p.place(g)
		g.first = path + 1
		for _, a := range g.panels {
			a.page = g
			for _, t := range a.tracks {
				path++
				t.path, t.page, t.panel = path, g, a
			}
		}
		g.last = path
	}
}

// leastPitch is the smallest distance of tracks that leaves room for the
// longest label beside a wire. The state view keeps the tracks of the plain one.
func (p *plan) leastPitch() float64 {
	need := 0.0
	for _, r := range p.runs {
		for _, l := range p.plainLabel(r.w) {
			need = max(need, l.width())
		}
	}
	for i := len(pitches) - 1; i >= 0; i-- {
		if pitches[i] >= need+4.5 {
			return pitches[i]
		}
	}
	return pitches[0]
}

// cutSection gives the section as one panel, or as several of about the same
// width, cut where the fewest joints go across and never through an item.
func (p *plan) cutSection(s *section, most int) []*panel {
	if len(s.tracks) == 0 {
		return nil
	}
	parts := (len(s.tracks) + most - 1) / most
	var out []*panel
	from := 0
	for k := range parts {
		to := len(s.tracks)
		if left := parts - k; left > 1 {
			low := max(from+1, to-most*(left-1)) // the rest has to fit
			to = p.bestCut(s, low, from+int(math.Ceil(float64(to-from)/float64(left))), min(from+most, to-1))
		}
		out = append(out, &panel{sect: s, tracks: s.tracks[from:to], more: from > 0})
		from = to
	}
	for from < len(s.tracks) {
		to := min(from+most, len(s.tracks))
		out = append(out, &panel{sect: s, tracks: s.tracks[from:to], more: true})
		from = to
	}
	return out
}

func (p *plan) bestCut(s *section, low, aim, high int) int {
	best, cost := high, math.Inf(1)
	for at := max(low, aim-6); at <= high; at++ {
		c := 0.4 * math.Abs(float64(at-aim))
		for _, it := range s.items {
			lo, hi := len(s.tracks), -1
			for _, q := range it.cols {
				lo, hi = min(lo, q.track().index), max(hi, q.track().index)
			}
			if lo < at && hi >= at {
				c += 1000
			}
			if it.mate != nil && it.mate.sect == s && (it.cols[0].track().index < at) != (it.mate.cols[0].track().index < at) {
				c += 20
			}
		}
		for _, j := range p.joints {
			if b := j.barIn(s); b != nil {
				set := b.trackSet()
				if len(set) > 0 && slices.Min(set) < at && slices.Max(set) >= at {
					c += 5
				}
			}
		}
		if c < cost {
			best, cost = at, c
		}
	}
	return best
}
