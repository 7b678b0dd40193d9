package diagram_test

import (
	"fmt"
	"math"
	"sort"
	"strings"

	"legwork/harness/model"
	"legwork/render/diagram"
	"legwork/render/scene"
)

// report is what the checks found, by rule, and what they counted.
type report struct {
	errors                            []string
	cuts, wireCrossings, barCrossings int
}

func (r *report) add(rule, format string, args ...any) {
	r.errors = append(r.errors, rule+": "+fmt.Sprintf(format, args...))
}

// has reports whether a rule found something.
func (r *report) has(rule string) bool {
	for _, e := range r.errors {
		if strings.HasPrefix(e, rule+":") {
			return true
		}
	}
	return false
}

// judge reads all sheets back and compares them with the model.
func judge(m *model.Model, sheets []diagram.Sheet) (*report, error) {
	r := &report{}
	var all []*sheetMarks
	for _, s := range sheets {
		var b strings.Builder
		if err := scene.WriteSVG(&b, s.Scene); err != nil {
			return nil, err
		}
		marks, err := readSheet(b.String(), s.Scene.Look)
		if err != nil {
			return nil, err
		}
		all = append(all, marks)
		r.checkNames(marks)
		r.checkLines(marks)
		r.checkBoxes(marks)
		r.checkTexts(marks)
		r.checkLabels(marks)
	}
	r.checkModel(m, all)
	sort.Strings(r.errors)
	return r, nil
}

const touchMM = 0.2

// groupsOf joins terminals that are one point without a wire.
func groupsOf(m *model.Model) func(*model.Terminal) int {
	at := make([]int, len(m.Terminals))
	for i := range at {
		at[i] = i
	}
	for changed := true; changed; {
		changed = false
		for _, t := range m.Terminals {
			for _, u := range t.Bus {
				if lo := min(at[t.ID], at[u.ID]); at[t.ID] != lo || at[u.ID] != lo {
					at[t.ID], at[u.ID], changed = lo, lo, true
				}
			}
		}
	}
	return func(t *model.Terminal) int { return at[t.ID] }
}

// checkNames wants unique ids, title and description.
func (r *report) checkNames(s *sheetMarks) {
	for id, n := range s.ids {
		if n > 1 {
			r.add("id", "%s is used %d times", id, n)
		}
	}
	if s.title == "" || s.desc == "" {
		r.add("name", "the sheet has no title or description")
	}
}

// checkLines wants wires clear of symbols and of one another.
func (r *report) checkLines(s *sheetMarks) {
	for i, w := range s.wires {
		thin := w.line
		thin.width = 0.1
		for _, b := range s.bodies {
			if thin.box().Overlap(b.box.Grow(-0.15)) > 0 {
				r.add("through", "wire %s runs through %s", w.number, b.dev)
			}
		}
		for _, o := range s.wires[i+1:] {
			a, b := w.line.box(), o.line.box()
			if a.Overlap(b) <= 0.05 || w.id == o.id {
				continue
			}
			if (w.line.x1 == w.line.x2) == (o.line.x1 == o.line.x2) {
				r.add("over", "wire %s lies over wire %s", w.number, o.number)
				continue
			}
			if inner(w.line, o.line) {
				r.wireCrossings++
			}
		}
		for _, j := range s.joints {
			for _, b := range j.bars {
				x, y := w.line.x1, b.y1
				if w.line.x1 == w.line.x2 && x > b.x1+0.1 && x < b.x2-0.1 && y > math.Min(w.line.y1, w.line.y2)+0.3 && y < math.Max(w.line.y1, w.line.y2)-0.3 {
					r.barCrossings++
				}
			}
		}
	}
	for _, l := range s.rings {
		for _, b := range s.bodies {
			if l.box().Grow(0.05).Overlap(b.box) > 0.05 {
				r.add("box", "the ring of a cable lies over %s", b.dev)
			}
		}
	}
	for _, l := range s.leads {
		thin := l
		thin.width = 0.1
		for _, w := range s.wires {
			if thin.box().Overlap(w.line.box()) > 0.15 {
				r.add("over", "a line of a device lies over wire %s", w.number)
			}
		}
		for _, b := range s.bodies {
			if thin.box().Overlap(b.box.Grow(-0.15)) > 0 {
				r.add("through", "a line of a device runs through %s", b.dev)
			}
		}
	}
}

// checkBoxes wants the boxes of path numbers clear of wires, symbols and one
// another; a box may touch the wire that it ends.
func (r *report) checkBoxes(s *sheetMarks) {
	for i, x := range s.xrefs {
		in := x.box.Grow(-0.1)
		for _, w := range s.wires {
			if in.Overlap(w.line.box()) > 0.05 {
				r.add("box", "the box of %s%s lies over wire %s", x.wire, x.joint, w.number)
			}
		}
		for _, b := range s.bodies {
			if in.Overlap(b.box) > 0.05 {
				r.add("box", "the box of %s%s lies over %s", x.wire, x.joint, b.dev)
			}
		}
		for _, o := range s.xrefs[i+1:] {
			if in.Overlap(o.box) > 0.05 {
				r.add("box", "the box of %s%s lies over that of %s%s", x.wire, x.joint, o.wire, o.joint)
			}
		}
	}
	for i, a := range s.bodies {
		for _, b := range s.bodies[i+1:] {
			if a.box.Overlap(b.box) > 0.05 {
				r.add("box", "%s lies over %s", a.dev, b.dev)
			}
		}
	}
}

// inner reports whether a level and an upright line cross away from their ends.
func inner(a, b lineMark) bool {
	if a.x1 != a.x2 {
		a, b = b, a
	}
	return a.x1 > math.Min(b.x1, b.x2)+0.3 && a.x1 < math.Max(b.x1, b.x2)-0.3 && b.y1 > a.y1+0.3 && b.y1 < a.y2-0.3
}

// checkTexts wants every text readable: inside the frame, tall enough, and on
// nothing else.
func (r *report) checkTexts(s *sheetMarks) {
	frame := scene.Box{X1: 20, Y1: 10, X2: s.width - 10, Y2: s.high - 10}
	for i, t := range s.texts {
		least := 2.5
		if t.inside == "title-block" {
			least = 2.1
		}
		if t.size < least-1e-9 {
			r.add("size", "%q is %.2f mm", t.text, t.size)
		}
		if t.layer != "frame" && !t.box.Inside(frame) {
			r.add("frame", "%q is outside the frame", t.text)
		}
		for _, o := range s.texts[i+1:] {
			if t.box.Overlap(o.box) > 0.05 {
				r.add("text", "%q lies over %q", t.text, o.text)
			}
		}
		for _, w := range s.wires {
			if t.box.Overlap(w.line.box()) > 0.05 {
				r.add("text", "%q lies over wire %s", t.text, w.number)
			}
		}
		for _, b := range s.bodies {
			if t.dev != b.dev && t.box.Overlap(b.box) > 0.05 {
				r.add("text", "%q lies over %s", t.text, b.dev)
			}
		}
		for _, l := range s.borders {
			if t.box.Overlap(l.box()) > 0 || t.box.X1 < l.x1 && t.box.X2 > l.x1 && t.box.Y1 > l.y1 && t.box.Y2 < l.y2 {
				r.add("text", "%q lies over the border of a section", t.text)
			}
		}
		for _, l := range s.centers {
			l.width = 0.7
			if t.box.Overlap(l.box()) > 0.05 {
				r.add("text", "%q lies over a centering mark", t.text)
			}
		}
		for _, l := range s.rings {
			l.width = 0.25
			if t.box.Overlap(l.box()) > 0.05 {
				r.add("text", "%q lies over the ring of a cable", t.text)
			}
		}
		for _, l := range s.leads {
			l.width = 0.3
			if t.box.Overlap(l.box()) > 0.05 {
				r.add("text", "%q lies over the line of a device", t.text)
			}
		}
		for _, p := range s.pins {
			if t.box.Overlap(scene.Box{X1: p.x - 0.65, Y1: p.y - 0.65, X2: p.x + 0.65, Y2: p.y + 0.65}) > 0.05 {
				r.add("text", "%q lies over terminal %s", t.text, p.name)
			}
		}
		for _, j := range s.joints {
			for _, b := range j.bars {
				b.width = 0.7
				if t.box.Overlap(b.box()) > 0.05 {
					r.add("text", "%q lies over joint %s", t.text, j.name)
				}
			}
		}
	}
}

// checkLabels wants the label of each wire nearer to it than to any other.
func (r *report) checkLabels(s *sheetMarks) {
	for _, w := range s.wires {
		if !w.first {
			continue
		}
		labeled := false
		for _, t := range s.texts {
			if t.inside != "wl" || t.wire != w.number {
				continue
			}
			own, near := math.Inf(1), math.Inf(1) // to any leg of that number, to this one
			for _, k := range s.wires {
				if k.number == w.number {
					own = math.Min(own, t.box.Distance(k.line.box()))
				}
				if k.id == w.id {
					near = math.Min(near, t.box.Distance(k.line.box()))
				}
			}
			labeled = labeled || near <= 4
			if own > 4 {
				r.add("label", "label %q stands %.1f mm from wire %s", t.text, own, w.number)
			}
			for _, o := range s.wires {
				if o.number != w.number && t.box.Distance(o.line.box()) < own-1e-9 {
					r.add("label", "label %q of wire %s stands nearer to wire %s", t.text, w.number, o.number)
				}
			}
		}
		if !labeled {
			r.add("label", "wire %s has no label beside it", w.number)
		}
	}
}
