package shop

import (
	"legwork/harness/model"
)

// Pins lists every terminal of the harness with the wires that land there
// and where each of them goes, and the terminals that stay empty.
func Pins(s Source) Table {
	t := Table{
		Name: "pins", Title: "Pin list",
		Columns: []Column{
			{Key: "device", Name: "Device"},
			{Key: "label", Name: "What it is"},
			{Key: "terminal", Name: "Terminal"},
			{Key: "wire", Name: "Wire"},
			{Key: "size", Name: "Size"},
			{Key: "color", Name: "Color"},
			{Key: "far_end", Name: "Far end"},
		},
	}
	for _, d := range s.Model.Devices {
		for _, term := range d.Terminals {
			t.Rows = append(t.Rows, pinRows(s, d, term)...)
		}
	}
	return t
}

func pinRows(s Source, d *model.Device, term *model.Terminal) [][]Cell {
	head := []Cell{text(d.Name), text(d.Label), text(term.Shown)}
	if len(term.Ends) == 0 {
		return [][]Cell{append(head, text(unwired(term)), text(""), text(""), text(""))}
	}
	var rows [][]Cell
	for _, e := range term.Ends {
		far := e.Wire.To
		if !e.From {
			far = e.Wire.From
		}
		row := append([]Cell{}, head...)
		rows = append(rows, append(row,
			text(e.Wire.Number), text(s.Sizes.Wires[e.Wire.ID].Conductor.Size.Name), text(e.Wire.Color.Shown), text(far.Shown)))
	}
	return rows
}

// unwired says what a terminal without a wire is.
func unwired(t *model.Terminal) string {
	switch {
	case t.Metal != nil:
		return "(to " + t.Metal.Name + ")"
	case len(t.Bus) > 0:
		return "(on the bus)"
	}
	return "(empty)"
}
