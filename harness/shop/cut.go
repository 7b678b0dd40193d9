package shop

import (
	"strings"

	"legwork/harness/model"
	"legwork/harness/quantity"
)

// Cut lists every wire that is cut, in draft order: number, ends, size,
// family, color, length with the allowance for two re-terminations, rounded
// up, what the length rests on, and how each end is finished. Leads come with
// their device and are only named; straps are listed, since somebody has to
// make them.
func Cut(s Source) Table {
	t := Table{
		Name: "cut", Title: "Cut list",
		Notes: cutNotes(s),
		Columns: []Column{
			{Key: "number", Name: "Wire"},
			{Key: "circuit", Name: "Circuit"},
			{Key: "from", Name: "From"},
			{Key: "to", Name: "To"},
			{Key: "size", Name: "Size"},
			{Key: "family", Name: "Family"},
			{Key: "color", Name: "Color"},
			lengthColumn(s.Model.Metric),
			{Key: "length_basis", Name: "Length from"},
			{Key: "from_end", Name: "End at from"},
			{Key: "to_end", Name: "End at to"},
		},
	}
	for _, w := range s.Model.Wires {
		if w.Role != model.Lead && !w.Existing && w.Cable == nil {
			t.Rows = append(t.Rows, cutRow(s, w))
		}
	}
	return t
}

func cutNotes(s Source) []string {
	step := "1/2 in"
	if s.Model.Metric {
		step = "10 mm"
	}
	notes := []string{"Cut is the length in the harness and 2 x 12 mm at each end for a second termination, rounded up to " + step + "; a strap is cut to its own length."}
	used := map[string]bool{}
	for _, w := range s.Model.Wires {
		used[basis(s, w)] = true
	}
	if used[byTails] {
		notes = append(notes, "Length from tails: both ends are at one place, so the wire has its two tails of "+
			quantity.LengthText(tailsM, s.Model.Metric)+" and no leg. Give it a length where the place is larger.")
	}
	if used[assumed] {
		notes = append(notes, "Length assumed: measure before you cut.")
	}
	if leads := leadsOf(s.Model); leads != "" {
		notes = append(notes, "Not cut, since they come with their device: leads "+leads+".")
	}
	if old := existingOf(s.Model); old != "" {
		notes = append(notes, "Not cut, since they are in the vehicle: wires "+old+". Test them before use.")
	}
	for _, k := range s.Model.Cables {
		if !k.Existing {
			notes = append(notes, cableNote(s, k))
		}
	}
	return notes
}

func leadsOf(m *model.Model) string {
	var list []string
	for _, w := range m.Wires {
		if w.Role == model.Lead {
			list = append(list, w.Number)
		}
	}
	return strings.Join(list, ", ")
}

func lengthColumn(metric bool) Column {
	if metric {
		return Column{Key: "cut_mm", Name: "Cut", Unit: "mm", Kind: Number}
	}
	return Column{Key: "cut_in", Name: "Cut", Unit: "in", Kind: Number}
}

func cutRow(s Source, w *model.Wire) []Cell {
	k := s.Sizes.Wires[w.ID].Conductor
	return []Cell{
		Word(w.Number), Word(circuitOf(w)), Word(w.From.Shown), Word(w.To.Shown),
		Word(k.Size.Name), Word(k.Family.Name), Word(w.Color.Shown),
		cutLength(s, w), Word(basis(s, w)), Word(finish(w.From, w)), Word(finish(w.To, w)),
	}
}

func circuitOf(w *model.Wire) string {
	if w.Circuit == nil {
		return ""
	}
	return w.Circuit.Name
}

func cutLength(s Source, w *model.Wire) Cell {
	m := cutM(s, w)
	if s.Model.Metric {
		return Figure(m*1000, 0)
	}
	return Figure(m/inchM, 1)
}
