package deck

import (
	"fmt"
	"strings"

	"legwork/harness/circuit"
)

// Name says what a generated name of the decks stands for.
type Name struct {
	In string // the name in the decks: "n12", "R7"
	Of string // in the user's words: terminals of one point, a wire, a device
}

// Names lists nodes, then elements, then states of all steps' decks, in order.
// The same element may go by another first letter where its law is written
// otherwise: it is found by its number.
func (d *Decks) Names() []Name {
	at := make([][]string, d.points.count)
	for _, t := range d.history.Model.Terminals {
		n := d.points.terminal[t.ID]
		at[n] = append(at[n], fullName(t))
	}
	for _, m := range d.history.Model.Metals {
		n := d.points.metal[m.ID]
		at[n] = append(at[n], "metal "+m.Name)
	}
	var list []Name
	for n, all := range at {
		list = append(list, Name{nodeName(n), strings.Join(all, ", ")})
	}
	for i := range d.parts {
		e := &d.parts[i]
		list = append(list, Name{fmt.Sprint(letter(e), i), e.name})
	}
	for r := range d.states {
		list = append(list, Name{fmt.Sprint("k", r), d.states[r].Name + " is in"})
	}
	return list
}

func letter(e *element) string {
	switch e.law.Kind {
	case circuit.Resistor:
		return "R"
	case circuit.Source, circuit.Warming:
		return "V"
	}
	return "B"
}
