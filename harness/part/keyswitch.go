package part

import "slices"

var _ = define(Kind{
	Name:  "keyswitch",
	Title: "A key switch: positions, each joining some of its terminals.",
	Law: "One line is one position and one joined group; a repeated position has several groups. Each terminal of a group is joined to the first one through 10 mohm (a low figure, so only a nominal one). " +
		"A position that is not drawn joins nothing; gap, the travel from run to crank, then joins what run and crank both join, for 50 ms: a guess.",
	Letter:   "S",
	Settings: contactSettings(),
	Terminals: []Terminal{
		{Name: "B", Aliases: []string{"BATT", "BAT", "30"}, Doc: "feed"},
		{Name: "ACC", Aliases: []string{"75"}, Doc: "accessories", Quiet: true},
		{Name: "IGN", Aliases: []string{"IGN1", "15", "15/54"}, Doc: "ignition", Quiet: true},
		{Name: "ST", Aliases: []string{"START", "50"}, Doc: "start", Quiet: true},
	},
	Lines: &Lines{Shape: PositionLines, Landing: Cavity, Needed: "joins nothing: say below it what each position joins, as: run B ACC IGN", Settings: []Setting{
		named("lasts", "how long the key stays between two contacts", seconds("time", "duration", 10)),
	}},
	// A key switch has the terminals that its lines name; the usual ones stand
	// for a switch whose lines are not read.
	Fits: func(d *Device, t string) bool {
		return !joinsAny(d) || slices.ContainsFunc(d.Lines, func(l Line) bool { return slices.Contains(l.Refs, t) })
	},
	Stamp:  stampKey,
	Symbol: keySymbol(),
	Assumes: func(d *Device) []Assumption {
		if d.hasPosition("gap") || !joinsAny(d) {
			return nil
		}
		return []Assumption{{What: "gap of " + d.Name, Value: "what run and crank both join, 50 ms", Source: "key-gap"}}
	},
	Switches: func(d *Device) []Contact {
		var out []Contact
		for _, p := range keyPairs(d) {
			out = append(out, d.contact(p.a, p.b, "key"))
		}
		return out
	},
	Buys: func(d *Device) []Purchase { return buy("key switch", d) },
})

func joinsAny(d *Device) bool {
	return slices.ContainsFunc(d.Lines, func(l Line) bool { return len(l.Refs) > 0 })
}

// hasPosition reports whether the device has a line for the position.
func (d *Device) hasPosition(position string) bool {
	return slices.ContainsFunc(d.Lines, func(l Line) bool { return l.Name == position })
}

// keyPair is two terminals that some position joins, and the positions.
type keyPair struct {
	a, b string
	at   []string
}

// keyPairs lists each joined pair once, in draft order.
func keyPairs(d *Device) []keyPair {
	var out []keyPair
	add := func(a, b, position string) {
		for i := range out {
			if out[i].a == a && out[i].b == b || out[i].a == b && out[i].b == a {
				out[i].at = append(out[i].at, position)
				return
			}
		}
		out = append(out, keyPair{a, b, []string{position}})
	}
	for _, l := range append(slices.Clone(d.Lines), travel(d)...) {
		for _, other := range l.Refs[min(1, len(l.Refs)):] {
			if other != l.Refs[0] {
				add(l.Refs[0], other, l.Name)
			}
		}
	}
	return out
}

// travel gives the groups that stand in for a gap that is not drawn: what a
// group of run and a group of crank have in common.
func travel(d *Device) []Line {
	var out []Line
	if d.hasPosition("gap") {
		return nil
	}
	for _, run := range d.Lines {
		for _, crank := range d.Lines {
			if run.Name != "run" || crank.Name != "crank" {
				continue
			}
			both := slices.DeleteFunc(slices.Clone(run.Refs), func(t string) bool { return !slices.Contains(crank.Refs, t) })
			out = append(out, Line{Name: "gap", Refs: both})
		}
	}
	return out
}

func stampKey(d *Device, s *Stamper) {
	law := resistor(s.contactOhm(d))
	for _, p := range keyPairs(d) {
		s.Add(ContactElement, p.a, p.b, law, s.Where(func(st Step) bool { return slices.Contains(p.at, st.Key) }))
	}
}

func keySymbol() Symbol {
	y := Symbol{
		Half: 4, Columns: 4, Row: SwitchRow, Body: Box{X1: -3.4, Y1: -3.2, X2: 2, Y2: 3.6, Col2: 3},
		Pins: []SymbolPin{pin("B", 0, -4), pinAt("ACC", 1, 0, -4), pinAt("IGN", 2, 0, -4), pinAt("ST", 3, 0, -4)},
		Strokes: []Stroke{
			stroke(Unit, Point{X: -3.4, Y: -3.2}, at(3, 2, 3.6)), line(0, -4, 0, 2.4), stroke(Thin, Point{Y: 2.4}, at(3, 0, 2.4)),
			dotAt(1, 0, 2.4, 0.2), dotAt(2, 0, 2.4, 0.2), stroke(Dashed, Point{X: -1.6, Y: 0.1}, at(3, -0.75, 0.1)),
			circle(-2.2, 0.1, 0.5), line(-2.2, 0.6, -2.2, 1.5), line(-2.2, 1.2, -1.8, 1.2),
		},
	}
	for c := 1; c <= 3; c++ {
		y.Strokes = append(y.Strokes, stroke(Thin, at(c, 0, 2.4), at(c, 0, 1.2)), dotAt(c, 0, 1.2, 0.22), stroke(Thin, at(c, 0, -1), at(c, 0, -4)),
			stroke(Blade, at(c, 0, 1.2), at(c, -1.35, -0.75)), stroke(Closed, at(c, 0, 1.2), at(c, -0.12, -1.1)))
	}
	return y
}
