package layout

import "legwork/render/scene"

// center moves the whole drawing into the middle of its room.
func (a *attempt) center() {
	b := spread(a.shape.at).Grow(4)
	add := func(o scene.Box) {
		b = scene.Box{X1: min(b.X1, o.X1), Y1: min(b.Y1, o.Y1), X2: max(b.X2, o.X2), Y2: max(b.Y2, o.Y2)}
	}
	for _, t := range a.texts {
		add(t.box)
	}
	for _, c := range a.set {
		add(c.box)
	}
	r := a.blank.Room
	dx, dy := (r.X1+r.X2-b.X1-b.X2)/2, (r.Y1+r.Y2-b.Y1-b.Y2)/2
	move := func(p scene.Point) scene.Point { return scene.Point{X: p.X + dx, Y: p.Y + dy} }
	for i, p := range a.shape.at {
		a.shape.at[i] = move(p)
	}
	for i, s := range a.shape.segs {
		a.shape.segs[i].a, a.shape.segs[i].b = move(s.a), move(s.b)
	}
	for i, m := range a.spots {
		a.spots[i].at = move(m.at)
	}
	for i := range a.texts {
		a.texts[i].x += dx
		a.texts[i].y += dy
	}
	for i := range a.set {
		s := &a.set[i]
		s.leader.a, s.leader.b = move(s.leader.a), move(s.leader.b)
		s.box = scene.Box{X1: s.box.X1 + dx, Y1: s.box.Y1 + dy, X2: s.box.X2 + dx, Y2: s.box.Y2 + dy}
	}
}
