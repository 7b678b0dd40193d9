package shop

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// Volts lists what a meter reads at every terminal in every step, black lead
// on the battery's negative post. Terminals on which nothing lands are left
// out.
func Volts(s Source) Table {
	t := Table{
		Name: "volts", Title: "Volts sheet",
		Notes: []string{
			"Volts against the battery's negative post, everything connected, warm battery, places at their stated temperature, usual contacts.",
			"A terminal without a way to the battery shows nothing that you can trust: it is printed as open.",
		},
		Columns: []Column{{Key: "terminal", Name: "Terminal"}},
	}
	var shown []*solve.State
	for _, st := range s.Sizes.Usual.States {
		if st.Skipped != "" {
			t.Notes = append(t.Notes, "Step "+st.Step.Name+" is missing: "+st.Skipped+".")
			continue
		}
		shown = append(shown, st)
	}
	shown, note := differing(s.Model, shown)
	if note != "" {
		t.Notes = append(t.Notes, note)
	}
	for _, st := range shown {
		t.Columns = append(t.Columns, Column{Key: stepKey(st.Step.Name), Name: st.Step.Name, Unit: "V", Kind: Number})
	}
	left := 0
	for _, term := range s.Model.Terminals {
		if bare(term) {
			left++
			continue
		}
		t.Rows = append(t.Rows, voltsRow(term, shown))
	}
	if left > 0 {
		t.Notes = append(t.Notes, fmt.Sprintf("Left out: terminals on which nothing lands, %d of %d.", left, len(s.Model.Terminals)))
	}
	return t
}

func voltsRow(t *model.Terminal, shown []*solve.State) []Cell {
	row := []Cell{Word(t.Shown)}
	for _, st := range shown {
		if r := st.Shown(t); r.OK {
			row = append(row, Figure(r.Volts, 2))
		} else {
			row = append(row, NoFigure("open", r.Reason))
		}
	}
	return row
}

// restVolts is by how much a battery reads lower when a starter turns than at
// rest, and more: without a starter that is no difference.
const restVolts = 0.1

// differing leaves out, of a draft without a keyswitch and a starter, the usual
// steps that read at every terminal as the one before: they tell nothing that
// it does not. It gives a note on what is left out.
func differing(m *model.Model, all []*solve.State) (kept []*solve.State, note string) {
	for _, d := range m.Devices {
		if d.Kind.Name == "keyswitch" || d.Kind.Name == "starter" {
			return all, ""
		}
	}
	var same []string
	for _, st := range all {
		if n := len(kept); n > 0 && usual(st.Step.Name) && readAlike(m, kept[n-1], st) {
			same = append(same, st.Step.Name+" as "+kept[n-1].Step.Name)
			continue
		}
		kept = append(kept, st)
	}
	if len(same) == 0 {
		return all, ""
	}
	return kept, "No keyswitch and no starter: these steps read as the one before and are left out: " + strings.Join(same, ", ") + "."
}

func usual(step string) bool {
	return slices.ContainsFunc(model.UsualSteps(), func(s part.Step) bool { return s.Name == step })
}

// readAlike reports whether two steps print the same at every terminal.
func readAlike(m *model.Model, a, b *solve.State) bool {
	apart := 0.005
	if cranks(a.Step) != cranks(b.Step) {
		apart = restVolts
	}
	for _, t := range m.Terminals {
		x, y := a.Shown(t), b.Shown(t)
		if x.OK != y.OK || x.OK && math.Abs(x.Volts-y.Volts) > apart {
			return false
		}
	}
	return true
}

func cranks(s *model.Step) bool { return s.Engine == part.Locked || s.Engine == part.Turning }

// stepKey is the key of a step's column; a step may be called as one of the
// keys that every row has.
func stepKey(name string) string {
	if name == "terminal" || name == "no_value" {
		return name + "_step"
	}
	return name
}

// bare reports whether nothing lands on a terminal.
func bare(t *model.Terminal) bool {
	return len(t.Ends) == 0 && t.Metal == nil && len(t.Bus) == 0
}
