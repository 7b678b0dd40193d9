package shop

import (
	"math"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/part"
)

// Cut lists every wire that is bought and cut: number, ends, size, family,
// color, length with the allowance for two re-terminations, rounded up, and
// how each end is finished. Leads come with their device and are left out;
// straps are listed, since somebody has to make them.
func Cut(s Source) Table {
	t := Table{
		Name: "cut", Title: "Cut list",
		Notes: []string{cutNote(s.Model.Metric)},
		Columns: []Column{
			{Key: "number", Name: "Wire"},
			{Key: "circuit", Name: "Circuit"},
			{Key: "from", Name: "From"},
			{Key: "to", Name: "To"},
			{Key: "size", Name: "Size"},
			{Key: "family", Name: "Family"},
			{Key: "color", Name: "Color"},
			lengthColumn(s.Model.Metric),
			{Key: "from_end", Name: "End at from"},
			{Key: "to_end", Name: "End at to"},
		},
	}
	for _, w := range s.Model.Wires {
		if w.Role != model.Lead {
			t.Rows = append(t.Rows, cutRow(s, w))
		}
	}
	return t
}

func cutNote(metric bool) string {
	step := "1/2 in"
	if metric {
		step = "10 mm"
	}
	return "Length is route and tails, plus 2 x 12 mm for a second termination at each end, rounded up to " + step +
		". Straps have their own length. An asterisk marks a length that was assumed."
}

func lengthColumn(metric bool) Column {
	if metric {
		return Column{Key: "cut_mm", Name: "Cut", Unit: "mm", Kind: Number}
	}
	return Column{Key: "cut_in", Name: "Cut", Unit: "in", Kind: Number}
}

func cutRow(s Source, w *model.Wire) []Cell {
	sized := s.Sizes.Wires[w.ID]
	circuit := ""
	if w.Circuit != nil {
		circuit = w.Circuit.Name
	}
	return []Cell{
		text(w.Number), text(circuit), text(w.From.Shown), text(w.To.Shown),
		text(sized.Conductor.Size.Name), text(sized.Conductor.Family.Name), text(w.Color.Shown),
		cutLength(s, w), text(ending(w.From)), text(ending(w.To)),
	}
}

// cutLength gives the length to cut, rounded up to half an inch or 10 mm.
func cutLength(s Source, w *model.Wire) Cell {
	path := s.Routes.Paths[w.ID]
	lengthM := path.LengthM
	if w.Role == model.Built {
		lengthM += 2 * gauge.ReterminateM
	}
	c := number(roundUp(lengthM, 0.010)*1000, 0)
	if !s.Model.Metric {
		c = number(roundUp(lengthM, inchM/2)/inchM, 1)
	}
	if !path.Known {
		c.Text = "*"
	}
	return c
}

const inchM = 0.0254

// roundUp takes a length up to a multiple of a step; a length that lies on a
// multiple, but for rounding, stays.
func roundUp(m, step float64) float64 {
	return math.Ceil(m/step-1e-9) * step
}

// ending says how a wire is finished at a terminal.
func ending(t *model.Terminal) string {
	switch t.Landing {
	case part.Post:
		if t.Device.Thread != "" {
			return "ring " + t.Device.Thread
		}
		return "ring"
	case part.Joint:
		return "splice"
	}
	return "terminal"
}
