package harness

import (
	"legwork/gauge"
	"legwork/harness/check"
	"legwork/harness/size"
)

// unmetOn says that a limit on the way of a wire can't be met by any size, and
// what is in the way: then the wire stands where growth stops paying.
func (r *Result) unmetOn(s size.Wire) []gauge.Step {
	if s.Governs != gauge.FloorDrop {
		return nil
	}
	var steps []gauge.Step
	for _, p := range r.Sizes.Through(s.Wire) {
		if why := check.Unmet(r.Sizes, p); why != "" {
			steps = append(steps, gauge.Step{Text: loadName(p) + " in " + p.Step.Name + ": " + why, Source: gauge.NodeLaw})
		}
	}
	return steps
}
