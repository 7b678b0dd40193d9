package shop

import (
	"legwork/harness/solve"
)

// Volts lists what a meter reads at every terminal in every step, black lead
// on the battery's negative post.
func Volts(s Source) Table {
	t := Table{
		Name: "volts", Title: "Volts sheet",
		Notes: []string{
			"Volts against the battery's negative post, everything connected, warm battery, places at their stated temperature, usual contacts.",
			"A terminal without a way to the battery reads nothing you can trust: it is printed as open.",
		},
		Columns: []Column{{Key: "terminal", Name: "Terminal"}},
	}
	var shown []*solve.State
	for _, st := range s.Sizes.Usual.States {
		if st.Skipped == "" {
			shown = append(shown, st)
			t.Columns = append(t.Columns, Column{Key: st.Step.Name, Name: st.Step.Name, Unit: "V", Kind: Number})
		}
	}
	for _, term := range s.Model.Terminals {
		row := []Cell{text(term.Shown)}
		for _, st := range shown {
			if r := st.Reading(term); r.OK {
				row = append(row, number(r.Volts, 2))
			} else {
				row = append(row, text("open"))
			}
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
