package shop

import (
	"strconv"
	"strings"

	"legwork/harness/model"
	"legwork/harness/part"
)

// Pins lists every terminal of the harness, device by device in draft order:
// what it is for, the cavity that it mates with, the wires that land there and
// where each of them goes. A terminal with several wires has a row for each;
// one without a wire says what it is instead.
func Pins(s Source) Table {
	t := Table{
		Name: "pins", Title: "Pin list",
		Columns: []Column{
			{Key: "device", Name: "Device"},
			{Key: "label", Name: "What it is"},
			{Key: "terminal", Name: "Terminal"},
			{Key: "role", Name: "Role"},
			{Key: "mate", Name: "Mates with"},
			{Key: "wire", Name: "Wire"},
			{Key: "size", Name: "Size"},
			{Key: "color", Name: "Color"},
			{Key: "far_end", Name: "Far end"},
			{Key: "note", Name: "Note"},
		},
	}
	for _, d := range s.Model.Devices {
		mate := matesOf(d)
		for _, term := range d.Terminals {
			t.Rows = append(t.Rows, pinRows(s, term, mate[term.Name])...)
		}
	}
	return t
}

func pinRows(s Source, t *model.Terminal, mate string) [][]Cell {
	head := []Cell{Word(t.Device.Name), Word(t.Device.Label), Word(t.Shown), Word(roleOf(t)), Word(mate)}
	row := func(rest ...Cell) []Cell { return append(append([]Cell{}, head...), rest...) }
	if len(t.Ends) == 0 {
		return [][]Cell{row(Word(""), Word(""), Word(""), Word(""), Word(unwired(t)))}
	}
	var rows [][]Cell
	for i, e := range t.Ends {
		far := e.Wire.To
		if !e.From {
			far = e.Wire.From
		}
		k := s.Sizes.Wires[e.Wire.ID].Conductor
		rows = append(rows, row(Word(e.Wire.Number), Word(k.Size.Name), Word(e.Wire.Color.Shown), Word(far.Shown), Word(several(t, i))))
	}
	return rows
}

// several notes on the first row of a terminal how many wires share it.
func several(t *model.Terminal, i int) string {
	if i > 0 || len(t.Ends) < 2 {
		return ""
	}
	n := strconv.Itoa(len(t.Ends))
	switch t.Landing {
	case part.Post:
		return n + " rings"
	case part.Joint:
		return n + " wires"
	}
	return n + " wires in one terminal"
}

// roleOf says what a terminal is for: the role of a module's pin, what sits in
// a connector's cavity, or what the kind says of it.
func roleOf(t *model.Terminal) string {
	if c := contact(t); c != "" {
		return c
	}
	if l := lineOf(t); l != nil && l.Role != nil {
		if t.Cavity != "" {
			return l.Role.Word + ", cavity " + t.Cavity
		}
		return l.Role.Word
	}
	for _, fixed := range t.Device.Kind.Terminals {
		if fixed.Name == t.Name && !t.Device.Kind.Self {
			doc, _, _ := strings.Cut(fixed.Doc, ";")
			return doc
		}
	}
	return ""
}

// matesOf gives the full name of the cavity that each pin of a device mates
// with.
func matesOf(d *model.Device) map[string]string {
	mate := map[string]string{}
	if d.Kind.Couples == nil {
		return mate
	}
	for _, p := range d.Couples() {
		mate[p.A], mate[p.B] = d.Name+"."+p.B, d.Name+"."+p.A
	}
	return mate
}

// unwired says what a terminal without a wire is.
func unwired(t *model.Terminal) string {
	switch {
	case t.Metal != nil:
		return "on " + t.Metal.Name
	case len(t.Bus) > 0:
		return "on " + busOf(t)
	case sealed(t.Device):
		return "empty: plug it"
	}
	return "empty"
}

// busOf names the bar on which a terminal sits, or the terminals on a bar.
func busOf(t *model.Terminal) string {
	var list []string
	for _, o := range t.Bus {
		list = append(list, o.Shown)
	}
	return strings.Join(list, ", ")
}
