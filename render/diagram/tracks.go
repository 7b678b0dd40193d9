package diagram

import (
	"cmp"
	"slices"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/part"
)

// joinUnits lets the pins at the foot of a unit stand under those on top, in
// order, so that its fragments stay small.
func (p *plan) joinUnits() {
	type key struct {
		dev  *model.Device
		sect *section
		slot int
	}
	tops, feet := map[key][]*item{}, map[key][]*item{}
	var keys []key
	for _, it := range p.items {
		if !it.unit {
			continue
		}
		k := key{it.dev, it.sect, it.slot}
		if tops[k] == nil && feet[k] == nil {
			keys = append(keys, k)
		}
		if it.pins[0].up() {
			tops[k] = append(tops[k], it)
		} else {
			feet[k] = append(feet[k], it)
		}
	}
	for _, k := range keys {
		free := tops[k]
		for _, f := range feet[k] {
			for i, t := range free {
				if join(t.cols[0], f.cols[0]) {
					free = slices.Delete(free, i, i+1)
					break
				}
			}
		}
	}
}

func (p *plan) makeTracks(s *section) {
	s.tracks = nil
	at := func(c *col) *track {
		r := c.root()
		if r.at == nil {
			r.at = &track{order: r.order}
			s.tracks = append(s.tracks, r.at)
		}
		return r.at
	}
	for _, it := range s.items {
		for _, c := range it.cols {
			t := at(c)
			t.items = append(t.items, it)
		}
	}
	for _, d := range s.strands {
		t := at(d.col)
		t.strands = append(t.strands, d)
		if d.run.strap {
			d.second = &track{order: d.col.order}
			s.tracks = append(s.tracks, d.second)
		}
	}
	slices.SortStableFunc(s.tracks, func(a, b *track) int { return cmp.Compare(a.order, b.order) })
}

// track gives the track that the column belongs to.
func (c *col) track() *track { return c.root().at }

// sizeOf gives the size of a wire: as legwork sized it, or as the draft says.
func (p *plan) sizeOf(w *model.Wire) (gauge.Size, bool) {
	if s := p.in.Sizes; s != nil && w.ID < len(s.Wires) && s.Wires[w.ID].Conductor.Size.AreaMM2 > 0 {
		return s.Wires[w.ID].Conductor.Size, true
	}
	if w.Sized {
		return w.Size, true
	}
	if w.Circuit != nil && w.Circuit.Sized {
		return w.Circuit.Size, true
	}
	return gauge.Size{}, false
}

func (p *plan) areaOf(w *model.Wire) float64 {
	s, ok := p.sizeOf(w)
	if !ok {
		return 0
	}
	if s.Metric && s.Nominal > 0 {
		return s.Nominal
	}
	return s.AreaMM2
}

// isLoad reports whether the item stands where current is used.
func isLoad(it *item) bool { return it.form.row == part.LoadRow || it.form.row == part.SensorRow }
