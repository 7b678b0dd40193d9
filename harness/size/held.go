package size

import "legwork/harness/model"

// netSet is a set of nets by index.
type netSet map[int]bool

// heldNets are the nets that a device keeps at volts of its own, such as a
// controller's sensor reference. What hangs there loses nothing that the
// system's volts could be held against.
func heldNets(m *model.Model) netSet {
	nets := netSet{}
	for _, d := range m.Devices {
		for _, h := range d.Holds() {
			if t := d.Terminal(h.Pin); t != nil {
				nets[m.Nets().Of[t.ID]] = true
			}
		}
	}
	return nets
}

// has reports whether a terminal lies on one of the nets.
func (s netSet) has(m *model.Model, t *model.Terminal) bool {
	return len(s) > 0 && t != nil && s[m.Nets().Of[t.ID]]
}
