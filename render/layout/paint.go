package layout

import (
	"strconv"

	"legwork/harness/model"
	"legwork/render/scene"
)

func styles() []scene.Style {
	const ink = "#14181d"
	return []scene.Style{
		{Class: "bundle", Stroke: "none", Fill: "#cfd6dc"},
		{Class: "edge", Stroke: ink, WidthMM: 0.3, Fill: "none"},
		{Class: "rung", Stroke: ink, WidthMM: 0.18, Fill: "none"},
		{Class: "knot", Stroke: ink, WidthMM: 0.7, Fill: "#ffffff"},
		{Class: "lead", Stroke: "#59636e", WidthMM: 0.25, Fill: "none"},
		{Class: "card", Stroke: "none", Fill: "#f4f6f8"},
		{Class: "cavity", Stroke: ink, WidthMM: 0.18},
		{Class: "empty", Stroke: "#59636e", WidthMM: 0.18, Fill: "#ffffff"},
		{Class: "thin", Stroke: ink, WidthMM: 0.3, Fill: "#ffffff"},
		{Class: "full", Stroke: "none", Fill: ink},
		{Class: "old", Dash: []float64{0.6, 0.4}},
	}
}

// paint gives the nodes of the first sheet.
func (a *attempt) paint() []*scene.Node {
	legs, nodes, labels, cards := scene.G("legs"), scene.G("places"), scene.G("labels"), scene.G("cards")
	for _, s := range a.set {
		if r := a.radius(s.card.place.ID); s.leader.long() > r {
			from := s.leader.at(r / s.leader.long())
			n := scene.Line("lead", from.X, from.Y, s.leader.b.X, s.leader.b.Y)
			n.Data = []scene.Attr{{Name: "place", Value: s.card.place.Name}}
			cards.Add(n)
		}
	}
	for i := range a.p.tree.branches {
		legs.Add(a.leg(i))
	}
	for i, pl := range a.p.m.Places {
		g := scene.G("place", scene.Ring("knot", a.shape.at[i].X, a.shape.at[i].Y, a.radius(i)-0.35))
		g.ID, g.Title, g.Data = scene.ID("p-", pl.Name), "place "+pl.Name, []scene.Attr{{Name: "place", Value: pl.Name}}
		nodes.Add(g)
	}
	for _, b := range a.p.tree.branches {
		if b.stub != "" {
			p := a.shape.at[b.to]
			nodes.Add(scene.G("stub", scene.Frame("thin", p.X-stubBox, p.Y-stubBox, p.X+stubBox, p.Y+stubBox), scene.Words("t b", p.X, p.Y+0.9, scene.Middle, b.stub)))
		}
	}
	for _, m := range a.spots {
		nodes.Add(deviceMark(m.dev, markOf(m.dev), m.at.X, m.at.Y, 1.5))
	}
	for _, t := range a.texts {
		n := scene.Words(t.class, t.x, t.y, t.at, t.text)
		if t.leg >= 0 {
			n.Data = []scene.Attr{{Name: "leg", Value: a.p.m.Legs[t.leg].Name}}
		}
		labels.Add(n)
	}
	for _, s := range a.set {
		cards.Add(s.card.paint(s.box, s.cols, s.leader.b.Y >= (s.box.Y1+s.box.Y2)/2))
	}
	return []*scene.Node{legs, nodes, labels, cards, a.legend(), a.bar()}
}

// leg draws one branch: the bundle, its edges, the pattern of its covering,
// and a break mark where it is not to scale.
func (a *attempt) leg(i int) *scene.Node {
	b, s := a.p.tree.branches[i], a.shape.segs[i]
	if b.stub != "" {
		s.b = s.at(1 - stubBox/s.long())
	}
	g := scene.G("leg")
	g.ID = scene.ID("r-", b.leg.Name)
	if b.stub != "" && b.from != b.leg.A.ID {
		g.ID = scene.ID("r-", b.leg.Name+" far")
	}
	load := a.p.loads[b.leg.ID]
	w := a.p.words(b.leg)
	g.Title = "leg " + w[0] + ", " + w[1] + ", " + w[2]
	g.Data = []scene.Attr{
		{Name: "leg", Value: b.leg.Name}, {Name: "length-m", Value: strconv.FormatFloat(b.leg.LengthM, 'f', -1, 64)},
		{Name: "wires", Value: strconv.Itoa(len(load.wires))},
	}
	t := tube{s, s.wide / 2}
	g.Add(t.fill()).Add(t.pattern(b.leg.Covering)...)
	class := "edge"
	if load.old() {
		class += " old"
	}
	g.Add(t.along(class, -1), t.along(class, 1))
	if a.shape.faked[i] && b.stub == "" {
		g.Add(t.broken()...)
	}
	return g
}

// tube is a leg as a thick line: half is half its width.
type tube struct {
	seg
	half float64
}

// point is a spot at mm along the leg and off to its side, in half widths.
func (t tube) point(mm, off float64) (x, y float64) {
	long := max(t.long(), 1e-9)
	ux, uy := (t.b.X-t.a.X)/long, (t.b.Y-t.a.Y)/long
	return t.a.X + mm*ux - off*t.half*uy, t.a.Y + mm*uy + off*t.half*ux
}

func (t tube) line(class string, mm1, off1, mm2, off2 float64) *scene.Node {
	x1, y1 := t.point(mm1, off1)
	x2, y2 := t.point(mm2, off2)
	return scene.Line(class, x1, y1, x2, y2)
}

func (t tube) along(class string, off float64) *scene.Node {
	return t.line(class, 0, off, t.long(), off)
}

func (t tube) fill() *scene.Node { return t.area("bundle", 0, t.long(), 1) }

func (t tube) area(class string, from, to, off float64) *scene.Node {
	x1, y1 := t.point(from, -off)
	x2, y2 := t.point(to, -off)
	x3, y3 := t.point(to, off)
	x4, y4 := t.point(from, off)
	return scene.Area(class, x1, y1, x2, y2, x3, y3, x4, y4)
}

// pattern draws a covering so that it survives a photocopy: close rungs for
// conduit, rungs and a slit for split loom, leaning rungs for tape, a net for
// braid and sleeve, a clear band for heat-shrink, strands for bare wire.
func (t tube) pattern(covering string) []*scene.Node {
	var out []*scene.Node
	rungs := func(step, lean float64) {
		for mm := step; mm+max(lean, 0) < t.long() && mm+min(lean, 0) > -1; mm += step {
			if mm+lean > 0 {
				out = append(out, t.line("rung", mm, -1, mm+lean, 1))
			}
		}
	}
	switch covering {
	case "conduit":
		rungs(1.1, 0)
	case "split-loom":
		rungs(1.8, 0)
		out = append(out, t.along("rung", 0.35))
	case "tape":
		rungs(3.2, 1.6)
	case "braid":
		rungs(1.8, 1.8)
		rungs(1.8, -1.8)
	case "sleeve":
		rungs(3, 1.5)
		rungs(3, -1.5)
	case "heat-shrink":
		out = append(out, t.along("rung", -0.6), t.along("rung", 0.6))
	default:
		out = append(out, t.along("rung", -0.4), t.along("rung", 0), t.along("rung", 0.4))
	}
	return out
}

// breakOut is how far a break mark stands out beside its leg, mm.
const breakOut = 0.9

// broken draws the mark of a leg that is not to scale: a white gap between two
// slanted strokes, across its middle.
func (t tube) broken() []*scene.Node {
	m, off := t.long()/2, 1+breakOut/t.half
	x1, y1 := t.point(m-1.1, -off)
	x2, y2 := t.point(m+0.1, -off)
	x3, y3 := t.point(m+1.1, off)
	x4, y4 := t.point(m-0.1, off)
	return []*scene.Node{
		scene.Area("gap-fill", x1, y1, x2, y2, x3, y3, x4, y4), scene.Line("edge", x1, y1, x4, y4), scene.Line("edge", x2, y2, x3, y3),
	}
}

// deviceMark draws what tells things apart at a glance: a plug is two halves
// facing, a stud a ring with its thread, a splice a solid diamond, a box a
// square within a square, a device an open
// square, an end of a wire a line with a cap.
func deviceMark(d *model.Device, mark string, x, y, r float64) *scene.Node {
	g := scene.G("dev")
	g.ID, g.Title, g.Data = scene.ID("d-", d.Name), markWord(mark)+d.Name, []scene.Attr{{Name: "dev", Value: d.Name}}
	thin := "thin"
	if d.Existing {
		thin += " old"
	}
	switch mark {
	case "plug":
		g.Add(scene.Frame(thin, x-r, y-0.75*r, x-0.25*r, y+0.75*r), scene.Frame(thin, x+0.25*r, y-0.75*r, x+r, y+0.75*r),
			scene.Line("edge", x-0.25*r, y, x+0.25*r, y))
	case "stud":
		g.Add(scene.Ring(thin, x, y, 0.85*r), scene.Ring("full", x, y, 0.35*r))
	case "splice":
		g.Add(scene.Area("full", x-r, y, x, y-0.8*r, x+r, y, x, y+0.8*r))
	case "end":
		g.Add(scene.Line("edge", x-r, y, x+0.5*r, y), scene.Frame("full", x+0.2*r, y-0.5*r, x+r, y+0.5*r))
	case "box":
		g.Add(scene.Frame(thin, x-0.9*r, y-0.9*r, x+0.9*r, y+0.9*r), scene.Frame(thin, x-0.4*r, y-0.4*r, x+0.4*r, y+0.4*r))
	default:
		h := 0.7 * r
		g.Add(scene.Frame(thin, x-h, y-h, x+h, y+h))
	}
	return g
}

func markWord(mark string) string {
	switch mark {
	case "plug":
		return "connector "
	case "end":
		return "wire end "
	}
	return mark + " "
}
