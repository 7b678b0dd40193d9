package diagram

import (
	"cmp"
	"slices"

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
	}
	slices.SortStableFunc(s.tracks, func(a, b *track) int { return cmp.Compare(a.order, b.order) })
}

// track gives the track that the column belongs to.
func (c *col) track() *track { return c.root().at }

// wireSize is the size of a wire as it is printed and drawn.
type wireSize struct {
	name    string // "14 AWG", "2.5 mm2"
	awg     int
	metric  bool
	areaMM2 float64 // nominal for metric sizes
}

// sizeOf gives the size of a wire: as legwork sized it, or as the draft says.
func (p *plan) sizeOf(w *model.Wire) (s wireSize, ok bool) {
	from := w.Size
	switch z := p.in.Sizes; {
	case z != nil && w.ID < len(z.Wires) && z.Wires[w.ID].Conductor.Size.AreaMM2 > 0:
		from = z.Wires[w.ID].Conductor.Size
	case w.Sized:
	case w.Circuit != nil && w.Circuit.Sized:
		from = w.Circuit.Size
	default:
		return s, false
	}
	s = wireSize{from.Name, from.AWG, from.Metric, from.AreaMM2}
	if from.Metric && from.Nominal > 0 {
		s.areaMM2 = from.Nominal
	}
	return s, true
}

func (p *plan) areaOf(w *model.Wire) float64 {
	s, _ := p.sizeOf(w)
	return s.areaMM2
}

// isLoad reports whether the item stands where current is used.
func isLoad(it *item) bool { return it.form.row == part.LoadRow || it.form.row == part.SensorRow }
