package check

import (
	"math"
	"slices"

	"legwork/harness/model"
	"legwork/harness/part"
)

// workedContact is a contact that the key or a coil works, with the steps in
// which it is closed. Two that are never closed together make no way.
type workedContact struct {
	device *model.Device
	index  int
	closed []bool // by index of the states
}

// work gives the number of a contact among the worked ones, 0 where it counts
// as closed at all times: a hand may close it in any step, and one that no
// step closes is not known.
func (o *openCircuit) work(p *Pass, d *model.Device, i int, c part.Contact) int {
	if c.By != "key" && c.CoilA == "" {
		return 0
	}
	w := workedContact{device: d, index: i}
	for _, s := range states(p.Sizes.Hot) {
		w.closed = append(w.closed, closedIn(s, d, i, c))
	}
	if !slices.Contains(w.closed, true) {
		return 0
	}
	o.worked = append(o.worked, w)
	return len(o.worked)
}

// measure finds the least unfused length to every terminal, nearest first, in
// each step whose contacts stand in another way, and then gathers what each
// terminal leads to, farthest first.
func (o *openCircuit) measure(p *Pass) {
	for i := range o.distM {
		o.distM[i], o.parent[i], o.by[i], o.leads[i], o.near[i] = math.Inf(1), -1, nil, 0, 0
		if t := p.Model.Terminals[i]; isBattery(t) {
			o.distM[i], o.root[i] = 0, i
		}
	}
	done := map[string]bool{}
	for i := range states(p.Sizes.Hot) {
		if key := o.stand(i); !done[key] {
			done[key] = true
			o.measureIn(p.Model, i)
		}
	}
	for _, id := range o.farthestFirst() {
		o.leads[id] |= o.own(p.Model.Terminals[id])
		o.near[id] |= o.own(p.Model.Terminals[id])
		up := o.parent[id]
		if up < 0 {
			continue
		}
		o.leads[up] |= o.leads[id]
		if o.by[id] == o.by[up] {
			o.near[up] |= o.near[id]
		}
	}
}

// stand tells how the worked contacts stand in a state.
func (o *openCircuit) stand(state int) string {
	key := make([]byte, len(o.worked))
	for i, w := range o.worked {
		if w.closed[state] {
			key[i] = 1
		}
	}
	return string(key)
}

// measureIn takes up what the ways of one state make shorter.
func (o *openCircuit) measureIn(m *model.Model, state int) {
	dist := make([]float64, len(o.distM))
	var q lengths
	for i := range dist {
		if dist[i] = math.Inf(1); isBattery(m.Terminals[i]) {
			dist[i] = 0
			q.push(lengthTo{0, i})
		}
	}
	for len(q) > 0 {
		at := q.pop()
		if at.lengthM > dist[at.id] {
			continue
		}
		for _, w := range o.next[at.id] {
			d := at.lengthM + w.lengthM
			if w.contact > 0 && !o.worked[w.contact-1].closed[state] || !(d < dist[w.to]) {
				continue
			}
			dist[w.to] = d
			q.push(lengthTo{d, w.to})
			o.take(at.id, w, d)
		}
	}
}

// take keeps a way to a terminal if it is the shortest of all states so far.
func (o *openCircuit) take(from int, w openWay, lengthM float64) {
	if !(lengthM < o.distM[w.to]) {
		return
	}
	o.distM[w.to], o.parent[w.to], o.root[w.to] = lengthM, from, o.root[from]
	if o.by[w.to] = w.wire; w.wire == nil {
		o.by[w.to] = o.by[from]
	}
}

// farthestFirst orders what the batteries reach, each before its parent.
func (o *openCircuit) farthestFirst() []int {
	depth := make([]int, len(o.parent))
	var list []int
	for id := range o.parent {
		if math.IsInf(o.distM[id], 1) {
			continue
		}
		list = append(list, id)
		for up := o.parent[id]; up >= 0; up = o.parent[up] {
			depth[id]++
		}
	}
	slices.SortStableFunc(list, func(a, b int) int { return depth[b] - depth[a] })
	return list
}

// reached reports whether a battery feeds a terminal without a fuse.
func (o *openCircuit) reached(t *model.Terminal) bool { return !math.IsInf(o.distM[t.ID], 1) }

// isReturn reports whether a terminal is the negative one of a battery.
func isReturn(t *model.Terminal) bool {
	if t.Device.Kind.Supplies == nil {
		return false
	}
	return slices.ContainsFunc(t.Device.Supplies(), func(s part.Supply) bool { return s.Battery && s.Minus == t.Name })
}
