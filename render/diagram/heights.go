package diagram

import "strings"

// tallness is where rows, gaps and rails stand, the same on every sheet.
type tallness struct {
	sheets []*page               // that it belongs to
	room   float64               // height of a wire with its label
	slotY  [lastSlot + 2]float64 // middle of a row
	slotH  [lastSlot + 2]float64 // half height of a row, 0 where nothing stands
	merged [lastSlot + 1]int     // gap -> merged gap
	gaps   []gapRoom
	segs   []*segment
	rails  []*joint
	railY  float64 // lowest rail
	studY  float64
	metalY float64
	baseY  float64
}

// gapRoom is one merged gap: from y1 to y2, its lanes from lane0 down.
type gapRoom struct {
	need       float64
	lanes      int
	pitch      float64
	above      float64 // room over the first lane
	below      float64
	y1, y2, y0 float64
}

// Room in a gap, mm.
const (
	linkRoom = 4.5  // a thin line alone
	stubRoom = 17.5 // a stub with its box
	mostGap  = 60.0
)

// labelRooms are the heights that a wire with its two-line label may get,
// from comfortable to tight.
var labelRooms = []float64{10, 8.5, 7.2, 6.4}

// heights stacks rails, rows and gaps: the same on all sheets if they fit so,
// else on every sheet what it needs, else on larger paper.
func (p *plan) heights() {
	all := papersFor(p.in.Paper)
	for i, s := range all {
		if i > 0 {
			p.paper = s
			p.fill()
		}
		auto := i == 0 && papersFor(p.in.Paper)[0] == isoA4 && !strings.EqualFold(p.in.Paper, "a4")
		if i < len(all)-1 && (!p.whole() || auto && len(p.sheets) > 1) {
			continue
		}
		for _, room := range labelRooms {
			if p.stack(p.sheets, room) {
				return
			}
		}
		if p.stackEach() {
			return
		}
	}
}

// stackEach gives every sheet heights of its own.
func (p *plan) stackEach() bool {
	all := true
	for _, g := range p.sheets {
		ok := false
		for _, room := range labelRooms {
			if ok = p.stack([]*page{g}, room); ok {
				break
			}
		}
		all = all && ok
	}
	return all
}

// stack finds common heights for some sheets and reports whether they fit.
func (p *plan) stack(sheets []*page, room float64) bool {
	t := &tallness{room: room, sheets: sheets, rails: p.railsOn(sheets)}
	t.railY = firstRail + railPitch*float64(max(len(t.rails)-1, 0))
	if len(t.rails) == 0 {
		t.railY = 24
	}
	for _, g := range sheets {
		g.tall = t
	}
	for _, it := range p.items {
		if t.shows(it.cols[0].track()) {
			t.slotH[it.slot] = max(t.slotH[it.slot], it.form.half*module)
		}
	}
	n, sum := 0, 0.0
	for s := 1; s <= lastSlot; s++ {
		if t.slotH[s] > 0 {
			n++
		}
		t.merged[s] = n
		sum += 2 * t.slotH[s]
	}
	t.gaps = make([]gapRoom, n+1)
	p.fillLanes(t)
	for i := range t.gaps {
		p.needOf(t, i)
		sum += t.gaps[i].need
	}
	t.baseY = p.paper.baseLine()
	t.metalY = t.baseY - railToBase
	t.studY = t.metalY - studToRail
	return t.spreadRows(t.studY - t.railY - sum)
}

// shows reports whether the track is on one of the sheets.
func (t *tallness) shows(k *track) bool {
	for _, g := range t.sheets {
		if k.page == g {
			return true
		}
	}
	return false
}

// spreadRows shares spare height out to the gaps; what is left over moves the
// foot up. It reports whether the height was enough.
func (t *tallness) spreadRows(spare float64) bool {
	ok := spare >= -0.01
	grow := make([]float64, len(t.gaps))
	for left := len(t.gaps); left > 0 && spare > 0.01; {
		share := spare / float64(left)
		left = 0
		for i := range t.gaps {
			g := min(share, mostGap-t.gaps[i].need-grow[i])
			if g > 0 {
				grow[i] += g
				spare -= g
				left++
			}
		}
	}
	if spare < 0 {
		for i := range grow {
			grow[i] = spare / float64(len(grow))
		}
		spare = 0
	}
	t.baseY, t.metalY, t.studY = t.baseY-spare, t.metalY-spare, t.studY-spare
	y, gap := t.railY, 0
	put := func() {
		g := &t.gaps[gap]
		g.y1, g.y2 = y, y+g.need+grow[gap]
		g.y0 = g.y1 + g.above + (g.y2-g.y1-g.need)*share(g.above, g.below)
		y = g.y2
		gap++
	}
	put()
	for s := 1; s <= lastSlot; s++ {
		if t.slotH[s] > 0 {
			t.slotY[s] = y + t.slotH[s]
			y += 2 * t.slotH[s]
			put()
		}
	}
	for _, s := range t.segs {
		s.y = t.gaps[s.gap].y0 + float64(s.lane)*t.gaps[s.gap].pitch
	}
	return ok
}

func share(a, b float64) float64 {
	if a+b == 0 {
		return 0.5
	}
	return a / (a + b)
}
