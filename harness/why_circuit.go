package harness

import (
	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/shop"
)

// whyCircuit lists the wires of a circuit with what decided each of them.
func (r *Result) whyCircuit(c *model.Circuit) Working {
	title := "circuit " + c.Name
	if c.Label != "" {
		title += " (" + c.Label + ")"
	}
	limit := Group{Title: "Drop"}
	switch {
	case c.DropFrac > 0:
		limit.Steps = []gauge.Step{{Text: "allowed for loads that a wire of this circuit feeds, by the draft", Value: 100 * c.DropFrac, Unit: "%", Source: "stated"}}
	default:
		limit.Steps = []gauge.Step{
			{Text: "allowed by profile " + r.Profile.Name + " for controllers, pumps and ignition", Value: 100 * r.Profile.DropCritical, Unit: "%", Source: "drop-3"},
			{Text: "allowed by profile " + r.Profile.Name + " for other loads", Value: 100 * r.Profile.DropOther, Unit: "%", Source: "drop-10"},
		}
	}
	t := shop.Table{Columns: []shop.Column{
		{Key: "wire", Name: "Wire"}, {Key: "from", Name: "From"}, {Key: "to", Name: "To"}, {Key: "size", Name: "Size"},
		{Key: "governs", Name: "Decided by"},
		{Key: "length", Name: "Length"},
		{Key: "amps", Name: "most", Unit: "A", Kind: shop.Number},
		{Key: "step", Name: "Step"},
		{Key: "drop_mv", Name: "loses", Unit: "mV", Kind: shop.Number},
	}}
	for _, w := range c.Wires {
		s := r.Sizes.Wires[w.ID]
		by := s.Governs
		if !s.Chosen {
			by = "the draft"
		}
		t.Rows = append(t.Rows, []shop.Cell{
			shop.Word(w.Number), shop.Word(w.From.Shown), shop.Word(w.To.Shown), shop.Word(s.Conductor.Size.Name), shop.Word(by),
			shop.Word(quantity.LengthText(s.Conductor.LengthM, r.Model.Metric)),
			shop.Figure(s.DesignA, 2), shop.Word(s.At), shop.Figure(1000*s.DropV, 1),
		})
	}
	return withGroups(Working{Title: title}, limit, Group{Title: "Wires; why NUMBER shows the working of one", Table: &t})
}
