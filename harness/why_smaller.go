package harness

import (
	"fmt"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

// tellFewer is how many sizes thinner a wire has to get before the working of
// a wire and of its fuse speak of a smaller fuse.
const tellFewer = 2

// smallerFuse says on a wire that its fuse, not its load, makes it thick.
func (r *Result) smallerFuse(w *model.Wire) Group {
	s, ok := r.Sizes.Smaller(w, r.Profile)
	if !ok || s.Fewer < tellFewer {
		return Group{}
	}
	return Group{Title: "A smaller fuse would do", Steps: smallerSteps(s, r.Sizes.Wires[w.ID])}
}

// smallerThan says the same on the fuse, for the wire that would save most.
func (r *Result) smallerThan(f size.Fuse) Group {
	var most size.Smaller
	var wire *model.Wire
	for i, g := range r.Sizes.Guards {
		if g.Fuse != f.Device || g.Index != f.Index {
			continue
		}
		w := r.Sizes.Wires[i].Wire
		if s, ok := r.Sizes.Smaller(w, r.Profile); ok && s.Fewer > most.Fewer {
			most, wire = s, w
		}
	}
	if most.Fewer < tellFewer {
		return Group{}
	}
	return Group{Title: "A smaller one would do", Steps: smallerSteps(most, r.Sizes.Wires[wire.ID])}
}

func smallerSteps(s size.Smaller, w size.Wire) []gauge.Step {
	return []gauge.Step{
		{Text: fmt.Sprintf("%s is rated %s and has to carry, in %s", s.Fuse.Device.Name,
			quantity.Text(s.Fuse.RatedA, quantity.Current), s.Fuse.At), Value: s.Fuse.LoadA, Unit: "A", Source: gauge.NodeLaw},
		{Text: "smallest standard rating that serves this load", Value: s.RatedA, Unit: "A", Source: "fuse-margin"},
		{Text: fmt.Sprintf("behind it wire %s could be %s in place of %s: sizes saved",
			w.Wire.Number, s.Size.Name, w.Conductor.Size.Name), Value: float64(s.Fewer)},
	}
}
