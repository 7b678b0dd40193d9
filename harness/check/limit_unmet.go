package check

import (
	"fmt"

	"legwork/harness/quantity"
	"legwork/harness/size"
)

// Unmet says why no size of the wires left open brings a path within its
// limit: the part that the draft fixes and that takes most, or these wires
// themselves. It is "" where the limit is met, or no wire is open.
func Unmet(s *size.Sizes, path size.Path) string {
	if !path.Unmet || !(path.DropV > path.LimitV) {
		return ""
	}
	volts := func(v float64) string { return quantity.Text(v, quantity.Voltage) }
	open := fmt.Sprintf("the wires left open take %s at the size where growth stops paying", volts(path.OpenV))
	fixed := path.Fixed.Volts + path.Fixed.JointV
	if fixed < path.OpenV/2 {
		return fmt.Sprintf("No size that goes into its ends meets the limit: %s.", open)
	}
	name := path.Fixed.Name()
	if w := path.Fixed.Wire; w != nil {
		name += ", given as " + s.Wires[w.ID].Conductor.Size.Name + ","
	}
	return fmt.Sprintf("No size of the open wires meets the limit: %s takes %s of the %s allowed; %s.",
		name, volts(fixed), volts(path.LimitV), open)
}
