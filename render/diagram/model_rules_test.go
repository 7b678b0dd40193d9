package diagram_test

import (
	"math"

	"legwork/harness/model"
)

// checkModel wants every wire of the model, with both ends where they belong.
func (r *report) checkModel(m *model.Model, all []*sheetMarks) {
	group := groupsOf(m)
	byName := map[string]*model.Terminal{}
	for _, t := range m.Terminals {
		byName[full(t)] = t
	}
	lands := func(s *sheetMarks, x, y float64, t *model.Terminal) bool {
		for _, p := range s.pins {
			if p.name == full(t) && math.Hypot(p.x-x, p.y-y) < touchMM {
				return true
			}
		}
		for _, j := range s.joints {
			o := byName[j.name]
			if o == nil || group(o) != group(t) {
				continue
			}
			for _, b := range j.bars {
				if x > math.Min(b.x1, b.x2)-touchMM && x < math.Max(b.x1, b.x2)+touchMM && math.Abs(y-b.y1) < touchMM {
					return true
				}
			}
		}
		return false
	}
	for _, w := range m.Wires {
		if w.From == nil || w.To == nil {
			continue
		}
		var found []int // ends that land: from, to
		n := 0
		for _, s := range all {
			for _, k := range s.wires {
				if k.number != w.Number {
					continue
				}
				if k.first {
					n++
				}
				for _, e := range k.ends() {
					from, to := lands(s, e[0], e[1], w.From), lands(s, e[0], e[1], w.To)
					switch {
					case from && !seen(found, 0):
						found = append(found, 0)
					case to:
						found = append(found, 1)
					case !s.boxed(w.Number, e[0], e[1]):
						r.add("end", "wire %s ends loose at %.1f, %.1f", w.Number, e[0], e[1])
					}
				}
			}
		}
		switch {
		case n == 0:
			r.add("missing", "wire %s is not drawn", w.Number)
		case n > 2:
			r.add("missing", "wire %s is drawn %d times", w.Number, n)
		case n == 2:
			r.cuts++
		}
		if n > 0 && (!seen(found, 0) || !seen(found, 1)) {
			r.add("end", "wire %s does not reach both of its ends", w.Number)
		}
	}
	r.checkTerminals(m, all, group, byName)
}

// ends gives the ends of the leg that are ends of its wire.
func (k wireMark) ends() (out [][2]float64) {
	if k.first {
		out = append(out, [2]float64{k.line.x1, k.line.y1})
	}
	if k.last {
		out = append(out, [2]float64{k.line.x2, k.line.y2})
	}
	return out
}

func seen(list []int, v int) bool {
	for _, x := range list {
		if x == v {
			return true
		}
	}
	return false
}

// boxed reports whether a loose end stands at a cross-reference of its wire.
func (s *sheetMarks) boxed(wire string, x, y float64) bool {
	for _, b := range s.xrefs {
		if b.wire == wire && x > b.box.X1 && x < b.box.X2 && (math.Abs(y-b.box.Y1) < touchMM || math.Abs(y-b.box.Y2) < touchMM) {
			return true
		}
	}
	return false
}

// checkTerminals wants every terminal with a wire on paper, and a line from
// each terminal that is part of a joint to a bar of that joint.
func (r *report) checkTerminals(m *model.Model, all []*sheetMarks, group func(*model.Terminal) int, byName map[string]*model.Terminal) {
	drawn := map[int]bool{}
	joined := map[int]bool{}
	for _, s := range all {
		for _, j := range s.joints {
			t := byName[j.name]
			if t == nil {
				r.add("joint", "joint %q is not in the model", j.name)
				continue
			}
			joined[group(t)], drawn[t.ID] = true, true
		}
	}
	for _, s := range all {
		for _, p := range s.pins {
			t := byName[p.name]
			if t == nil {
				r.add("joint", "terminal %q is not in the model", p.name)
				continue
			}
			drawn[t.ID] = true
			if joined[group(t)] && !s.leadTo(p, t, group, byName) {
				r.add("lead", "terminal %s has no line to its joint", p.name)
			}
		}
	}
	for _, t := range m.Terminals {
		if len(t.Ends) > 0 && !drawn[t.ID] && !(joined[group(t)] && t.Metal != nil) {
			r.add("missing", "terminal %s is not drawn", full(t))
		}
	}
}

func (s *sheetMarks) leadTo(p pinMark, t *model.Terminal, group func(*model.Terminal) int, byName map[string]*model.Terminal) bool {
	for _, l := range s.leads {
		if math.Abs(l.x1-p.x) > touchMM || math.Abs(l.y1-p.y) > touchMM {
			continue
		}
		for _, x := range s.xrefs {
			if o := byName[x.joint]; o != nil && group(o) == group(t) && l.x2 > x.box.X1 && l.x2 < x.box.X2 && (math.Abs(l.y2-x.box.Y1) < touchMM || math.Abs(l.y2-x.box.Y2) < touchMM) {
				return true
			}
		}
		for _, j := range s.joints {
			if o := byName[j.name]; o == nil || group(o) != group(t) {
				continue
			}
			for _, b := range j.bars {
				if math.Abs(b.y1-l.y2) < touchMM && l.x2 > b.x1-touchMM && l.x2 < b.x2+touchMM {
					return true
				}
			}
		}
	}
	return false
}

func full(t *model.Terminal) string {
	if t.Shown != "" {
		return t.Shown
	}
	if t.Device.Kind.Self {
		return t.Device.Name
	}
	return t.Device.Name + "." + t.Name
}
