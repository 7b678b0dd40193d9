package shop

import (
	"fmt"

	"legwork/harness/model"
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
		if r := st.Reading(t); r.OK {
			row = append(row, Figure(r.Volts, 2))
		} else {
			row = append(row, NoFigure("open", r.Reason))
		}
	}
	return row
}

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
