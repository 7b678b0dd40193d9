package part

import (
	"math"
	"strconv"

	"legwork/gauge"
	"legwork/harness/quantity"
)

var _ = define(Kind{
	Name:   "connector",
	Title:  "A connector of two halves; HALF.N is a cavity.",
	Law:    "Cavity N of one half and cavity N of the other are one point. A mated pair of blades has 20 mohm (0.64 mm) to 1 mohm (9.5 mm), a low figure that counts only among nominal ones.",
	Letter: "X",
	Settings: []Setting{
		{Name: "ways", Bare: true, Must: true, Doc: "cavities of one half", Figures: []Figure{{Name: "count", Dim: quantity.Count, Min: 1, Max: 512, Doc: "number of cavities"}}},
		flag("sealed", "keeps water out; its wires need seals"),
		named("blade", "width of its blades", Figure{Name: "width", Dim: quantity.Length, Min: 0.0003, Max: 0.02, Doc: "blade width"}),
	},
	Lines: &Lines{Shape: HalfLines, Head: "half", Landing: Cavity, Settings: []Setting{
		{Name: "contacts", Bare: true, Words: []string{"sockets", "pins"}, Doc: "what sits in this half"},
	}},
	Joins: true,
	Stamp: func(d *Device, s *Stamper) {},
	Symbol: Symbol{
		Half: 2, Columns: 1, Row: ConnectorRow, Pins: upDown("1", "2", 2), Body: Box{X1: -0.9, Y1: -0.9, X2: 0.9, Y2: 1},
		Strokes: []Stroke{line(0, -2, 0, -0.9), arc(-0.9, 0, 0.9, 0, 0.9, true), fill(-0.28, -0.45, 0.28, -0.45, 0.28, 1, -0.28, 1), line(0, 1, 0, 2)},
	},
	Couples: couples,
	Buys: func(d *Device) []Purchase {
		var out []Purchase
		for i := range d.Lines {
			row := buy("connector half", d, d.Lines[i].Name, strconv.Itoa(int(d.Num("ways")))+" way", d.Lines[i].Word("contacts"))
			out = append(out, row...)
		}
		return out
	},
})

// couples pairs the cavities of the first two halves.
func couples(d *Device) []Pair {
	if len(d.Lines) < 2 {
		return nil
	}
	ohm := 0.0
	if d.Said("blade") {
		ohm, _ = gauge.ConnectorPairOhm(math.Round(1e6*d.Num("blade")) / 1e3)
	}
	has := make(map[string]bool, len(d.Pins))
	for _, p := range d.Pins {
		has[p.Name] = true
	}
	var out []Pair
	for n := 1; n <= int(d.Num("ways")); n++ {
		a, b := d.Lines[0].CavityName(n), d.Lines[1].CavityName(n)
		if has[a] && has[b] {
			out = append(out, Pair{A: a, B: b, Ohm: ohm})
		}
	}
	return out
}

// CavityName is the full name of the n-th cavity of a half, counted from 1:
// "cab.3", or "cab.B1" where its cavities have names.
func (l *Line) CavityName(n int) string {
	if n <= len(l.Cavities) {
		return l.Name + "." + l.Cavities[n-1]
	}
	return l.Name + "." + strconv.Itoa(n)
}
