package layout

import (
	"math"

	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/render/scene"
)

// spotMark is something part way along a leg.
type spotMark struct {
	dev  *model.Device
	at   scene.Point
	text string
}

// placeMarks keeps the nodes clear and puts what lies along legs in its place.
func (a *attempt) placeMarks() {
	for n := range a.p.m.Places {
		a.solid = append(a.solid, boxAround(a.shape.at[n], a.radius(n)))
	}
	for n := len(a.p.m.Places); n < a.p.tree.nodes; n++ {
		b := boxAround(a.shape.at[n], stubBox)
		a.solid = append(a.solid, b)
	}
	for i, s := range a.shape.segs {
		if a.shape.faked[i] && a.p.tree.branches[i].stub == "" {
			a.solid = append(a.solid, boxAround(s.at(0.5), s.wide/2+breakOut))
		}
	}
	for _, d := range a.p.m.Devices {
		if d.Spot.Leg == nil || d.In != nil {
			continue
		}
		i, t := a.p.along(d.Spot)
		m := spotMark{d, a.shape.segs[i].at(t), ""}
		near := "from " + d.Spot.Leg.A.Name
		off := d.Spot.OffsetM
		if off > d.Spot.Leg.LengthM/2 {
			near, off = "from "+d.Spot.Leg.B.Name, d.Spot.Leg.LengthM-off
		}
		m.text = d.Name + ", " + quantity.LengthText(off, a.p.m.Metric) + " " + near
		if d.Option != nil {
			m.text += ", option " + d.Option.Name
		}
		if d.Existing {
			m.text += ", existing"
		}
		a.spots = append(a.spots, m)
		a.solid = append(a.solid, boxAround(m.at, 1.8))
	}
}

// along gives the branch that a spot on a leg lies on, and how far, 0 to 1. On
// a closing leg it is the stub of the nearer end.
func (p *plan) along(s model.Spot) (branch int, t float64) {
	t = s.OffsetM / s.Leg.LengthM
	for i, b := range p.tree.branches {
		switch {
		case b.leg != s.Leg:
		case b.stub == "":
			if b.from != s.Leg.A.ID {
				return i, 1 - t
			}
			return i, t
		case (t <= 0.5) == (b.from == s.Leg.A.ID):
			return i, 0.3 + 0.4*min(t, 1-t)*2
		}
	}
	return 0, 0
}

// put tries places for lines of text that stand one below the other and takes
// the first that is free.
func (a *attempt) put(lines []line, leg int, gap float64, tries []try) bool {
	for _, t := range tries {
		var set []text
		ok := true
		y := t.y
		for i, l := range lines {
			if i > 0 {
				y += 3.1
			}
			b := scene.TextBox(l.text, t.x, y, t.at, l.size, l.bold)
			ok = ok && a.free(b, gap)
			set = append(set, text{l.class(), t.x, y, t.at, l.text, b, leg})
		}
		if ok {
			a.texts = append(a.texts, set...)
			return true
		}
	}
	return false
}

// try is where the first base line of a text may start.
type try struct {
	x, y float64
	at   scene.Anchor
}

type line struct {
	text string
	size float64
	bold bool
	mut  bool
}

func (l line) class() string {
	c := "t"
	if l.size == large {
		c += " t3"
	}
	if l.bold {
		c += " b"
	}
	if l.mut {
		c += " mut"
	}
	return c
}

// around gives places for n lines around a point, nearest first.
func around(p scene.Point, r float64, n int, size float64) []try {
	var out []try
	high := 3.1*float64(n-1) + 0.95*size
	for _, d := range []float64{r, r + 2.5, r + 6, r + 10, r + 15} {
		up, down, mid := p.Y-d-high+0.74*size, p.Y+d+0.74*size, p.Y-high/2+0.74*size
		// Straight above and below come last: lines to lists run there.
		out = append(out,
			try{p.X + 0.7*d, up, scene.Start}, try{p.X - 0.7*d, up, scene.End}, try{p.X + 0.7*d, down, scene.Start}, try{p.X - 0.7*d, down, scene.End},
			try{p.X + d, mid, scene.Start}, try{p.X - d, mid, scene.End}, try{p.X, up, scene.Middle}, try{p.X, down, scene.Middle})
	}
	return out
}

// placeNames writes the name at each node, the letter and the far end at each
// stub, and the name of what lies along legs.
func (a *attempt) placeNames() {
	for i, pl := range a.p.m.Places {
		l := []line{{pl.Name, large, true, false}}
		if !a.put(l, -1, 0.5, around(a.shape.at[i], a.radius(i)+0.8, 1, large)) {
			a.failed++
		}
	}
	for _, b := range a.p.tree.branches {
		if b.stub == "" {
			continue
		}
		far := b.leg.A
		if b.from == b.leg.A.ID {
			far = b.leg.B
		}
		if !a.put([]line{{"to " + far.Name + ", leg goes on at " + b.stub, small, false, false}}, -1, 0.5, around(a.shape.at[b.to], 3, 1, small)) {
			a.failed++
		}
	}
	for _, m := range a.spots {
		if !a.put([]line{{m.text, small, false, false}}, -1, 0.5, around(m.at, 3, 1, small)) {
			a.failed++
		}
	}
}

// placeLabels writes length, load and covering beside each leg; those of a
// closing leg at its first stub.
func (a *attempt) placeLabels() {
	done := map[int]bool{}
	for i, b := range a.p.tree.branches {
		if done[b.leg.ID] {
			continue
		}
		done[b.leg.ID] = true
		w := a.p.words(b.leg)
		if a.shape.faked[i] && b.stub == "" {
			w[0] += " (short)"
		}
		lines := []line{{w[0], small, true, false}, {w[1], small, false, false}, {w[2], small, false, true}}
		if !a.put(lines, b.leg.ID, 0.6, beside(a.shape.segs[i], 3, small)) {
			a.failed++
		}
	}
}

// beside gives places for n lines along a leg, from its middle outward.
func beside(s seg, n int, size float64) []try {
	high := 3.1*float64(n-1) + 0.95*size
	dx, dy := s.b.X-s.a.X, s.b.Y-s.a.Y
	long := max(math.Hypot(dx, dy), 1e-9)
	level := math.Abs(dx) > 0.8*long
	var out []try
	for _, d := range []float64{1.2, 2.5, 5, 9, 14} {
		for _, t := range []float64{0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82} {
			p, r := s.at(t), s.wide/2+d
			if level {
				slope := math.Abs(dy) / long * 12
				out = append(out, try{p.X, p.Y - r - slope - high + 0.74*size, scene.Middle}, try{p.X, p.Y + r + slope + 0.74*size, scene.Middle})
				continue
			}
			mid := p.Y - high/2 + 0.74*size
			lean := r * long / max(math.Abs(dy), 1e-9)
			if math.Abs(dx) > 0.1*long {
				lean += high / 2 * math.Abs(dx) / max(math.Abs(dy), 1e-9)
			}
			out = append(out, try{p.X + lean, mid, scene.Start}, try{p.X - lean, mid, scene.End})
		}
	}
	return out
}
