package size

import (
	"math"
	"slices"

	"legwork/gauge"
	"legwork/harness/model"
)

// Smaller is what a smaller fuse would save: the fuse that the draft states
// sets the size of a wire, and its load asks for less of a fuse.
type Smaller struct {
	Fuse   Fuse
	RatedA float64    // standard rating that would still serve the load
	Size   gauge.Size // the wire that would do behind it
	Fewer  int        // how many sizes thinner that is
}

// Smaller tells what a smaller fuse would save on a wire; ok is false where
// its size is given, where protection does not govern it, or where the load
// needs the fuse. A fuse ahead of others has to be larger than they are,
// whatever its load: it is left alone.
func (s *Sizes) Smaller(w *model.Wire, p gauge.Profile) (out Smaller, ok bool) {
	is, g := s.Wires[w.ID], s.Guards[w.ID]
	if !is.Chosen || is.Governs != gauge.FloorProtection || g.Fuse == nil {
		return out, false
	}
	for _, f := range s.Fuses {
		if f.Device == g.Fuse && f.Index == g.Index {
			out.Fuse = f
		}
	}
	if out.Fuse.Device == nil || out.Fuse.Chosen || out.Fuse.LoadA < leastLoadA || s.feedsFuses(g) {
		return out, false
	}
	out.RatedA, _, ok = gauge.ChooseFuse(g.Fuse.Protects()[g.Index].Family, out.Fuse.LoadA, p)
	if !ok || out.RatedA >= out.Fuse.RatedA {
		return out, false
	}
	out.Size, out.Fewer = s.thinnerBehind(is, out.RatedA)
	return out, out.Fewer > 0
}

// feedsFuses reports whether a wire with the same guard leads to another fuse.
func (s *Sizes) feedsFuses(g Guard) bool {
	other := func(t *model.Terminal) bool { return t.Device != g.Fuse && len(t.Device.Protects()) > 0 }
	for i, o := range s.Guards {
		if o.Fuse != g.Fuse || o.Index != g.Index {
			continue
		}
		for _, t := range []*model.Terminal{s.Wires[i].Wire.From, s.Wires[i].Wire.To} {
			if other(t) || slices.ContainsFunc(t.Bus, other) {
				return true
			}
		}
	}
	return false
}

// leastLoadA is the load from which a fuse has one: below flow leaks.
const leastLoadA = 1e-3

// thinnerBehind finds the size that every wire of a chain with the same fuse
// could have behind another rating, and how many sizes that saves.
func (s *Sizes) thinnerBehind(is Wire, ratedA float64) (down gauge.Size, fewer int) {
	var chain []gauge.WireCase
	for _, o := range s.Wires {
		if o.Chain != is.Chain || !o.Chosen {
			continue
		}
		k := o.Judgement.Case
		if k.FuseA > 0 {
			k.FuseA = math.Min(k.FuseA, ratedA)
		}
		chain = append(chain, k)
	}
	down = is.Conductor.Size
	ladder := gauge.Ladder(down.Metric)
	for i := len(ladder) - 1; i >= 0; i-- {
		if ladder[i].AreaMM2 >= is.Conductor.Size.AreaMM2 {
			continue
		}
		if !fitsEvery(chain, ladder[i]) {
			break
		}
		down = ladder[i]
		fewer++
	}
	return down, fewer
}

func fitsEvery(chain []gauge.WireCase, size gauge.Size) bool {
	for _, k := range chain {
		if k.Family.Name == gauge.FamilyFor(k.Size).Name {
			k.Family = gauge.FamilyFor(size)
		}
		k.Size = size
		if !gauge.Fits(k) {
			return false
		}
	}
	return true
}
