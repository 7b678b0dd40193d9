package harness

import (
	"fmt"
	"strings"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/shop"
	"legwork/harness/solve"
)

// terminalsOf gives the volts of every wired terminal of a device in every
// step of the usual case.
func (r *Result) terminalsOf(d *model.Device) Group {
	if len(d.Terminals) == 0 {
		return Group{}
	}
	t := shop.Table{Columns: []shop.Column{{Key: "terminal", Name: "Terminal"}}}
	var shown []*solve.State
	for _, s := range r.Sizes.Usual.States {
		if s.Skipped == "" {
			shown = append(shown, s)
			t.Columns = append(t.Columns, shop.Column{Key: s.Step.Name, Name: s.Step.Name, Kind: shop.Number})
		}
	}
	for _, term := range d.Terminals {
		row := []shop.Cell{shop.Word(term.Shown)}
		for _, s := range shown {
			row = append(row, voltsCell(s.Reading(term)))
		}
		t.Rows = append(t.Rows, row)
	}
	return Group{Title: "Volts at its terminals against the battery's negative post, warm, usual contacts", Table: &t}
}

func voltsCell(reading solve.Reading) shop.Cell {
	if !reading.OK {
		return shop.NoFigure("open", reading.Reason)
	}
	return shop.Figure(reading.Volts, 2)
}

// whyTerminal gives the volts of a terminal in the three cases that are
// solved, and what lands on it.
func (r *Result) whyTerminal(term *model.Terminal) Working {
	t := shop.Table{Columns: []shop.Column{
		{Key: "step", Name: "Step"},
		{Key: "usual_v", Name: "warm, usual contacts", Unit: "V", Kind: shop.Number},
		{Key: "hot_v", Name: "warm, sure figures", Unit: "V", Kind: shop.Number},
		{Key: "cold_v", Name: "cold start, sure figures", Unit: "V", Kind: shop.Number},
	}}
	volts := Group{Title: "Volts against the battery's negative post", Steps: []gauge.Step{
		{Text: "a meter should read the first column; sizes and verdicts rest on the others", Source: gauge.NodeLaw},
	}}
	reasons := map[string]bool{}
	for i, s := range r.Sizes.Usual.States {
		if s.Skipped != "" {
			volts.Steps = append(volts.Steps, gauge.Step{Text: s.Step.Name + " is missing: " + s.Skipped})
			continue
		}
		row := []shop.Cell{shop.Word(s.Step.Name)}
		for _, h := range []*solve.History{r.Sizes.Usual, r.Sizes.Hot, r.Sizes.Cold} {
			reading := h.States[i].Reading(term)
			row = append(row, voltsCell(reading))
			if text := "open: " + reading.Reason; !reading.OK && !reasons[text] {
				reasons[text] = true
				volts.Steps = append(volts.Steps, gauge.Step{Text: text + " (first in " + s.Step.Name + ")"})
			}
		}
		t.Rows = append(t.Rows, row)
	}
	volts.Table = &t
	return withGroups(Working{Title: "terminal " + term.Shown}, landing(term), volts)
}

// landing names what is joined to a terminal.
func landing(t *model.Terminal) Group {
	g := Group{Title: "What lands there"}
	add := func(format string, args ...any) {
		g.Steps = append(g.Steps, gauge.Step{Text: fmt.Sprintf(format, args...)})
	}
	for _, e := range t.Ends {
		far := e.Wire.To
		if !e.From {
			far = e.Wire.From
		}
		add("wire %s from %s", e.Wire.Number, far.Shown)
	}
	if t.Metal != nil {
		add("metal %s", t.Metal.Name)
	}
	if len(t.Bus) > 0 {
		var names []string
		for _, o := range t.Bus {
			names = append(names, o.Shown)
		}
		add("bus: %s", strings.Join(names, ", "))
	}
	if len(g.Steps) == 0 {
		add("nothing")
	}
	return g
}
