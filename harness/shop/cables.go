package shop

import (
	"strings"

	"legwork/harness/model"
	"legwork/harness/quantity"
)

// existingOf names the wires that are in the vehicle already.
func existingOf(m *model.Model) string {
	var list []string
	for _, w := range m.Wires {
		if w.Existing {
			list = append(list, w.Number)
		}
	}
	return strings.Join(list, ", ")
}

// cableNote says what is cut for a cable: one length, the longest of its
// cores, with the allowance of a wire.
func cableNote(s Source, k *model.Cable) string {
	var cores []string
	most := 0.0
	for _, w := range k.Cores {
		name := w.Number
		if w.Drain {
			name = "drain " + name
		}
		cores = append(cores, name)
		most = max(most, cutM(s, w))
	}
	return "Cut cable " + k.Name + " as one, " + quantity.LengthText(most, s.Model.Metric) + ": cores " + strings.Join(cores, ", ") + "."
}
