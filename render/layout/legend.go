package layout

import (
	"fmt"
	"slices"
	"strings"

	"legwork/harness/quantity"
	"legwork/render/diagram"
	"legwork/render/scene"
)

const noteRow = 3.5

// legend says how to read the sheet: only what is on it.
func (a *attempt) legend() *scene.Node {
	g := scene.G("legend")
	n := a.blank.Notes
	x, y := n.X1, n.Y1+2
	g.Add(scene.Words("t b", x, y, scene.Start, "Reading this sheet"))
	y += 4
	for _, c := range a.coverings() {
		t := tube{seg{a: scene.Point{X: x, Y: y - 0.9}, b: scene.Point{X: x + 12, Y: y - 0.9}, wide: 2.4}, 1.2}
		g.Add(t.fill()).Add(t.pattern(c)...).Add(t.along("edge", -1), t.along("edge", 1))
		name := strings.ReplaceAll(c, "split-loom", "split loom")
		if c == "" {
			name = "covering not said"
		}
		g.Add(scene.Words("t", x+14, y, scene.Start, name))
		y += noteRow
	}
	x2, y2 := x+46, n.Y1+2
	for _, k := range a.kinds() {
		d := k.dev
		m := deviceMark(d, k.mark, x2+1.5, y2-0.9, 1.5)
		m.ID, m.Title, m.Data = "", "", nil
		g.Add(m, scene.Words("t", x2+5, y2, scene.Start, k.word))
		y2 += noteRow
	}
	x3 := x2 + 44
	for i, s := range a.sentences() {
		g.Add(scene.Words("t", x3, n.Y1+2+noteRow*float64(i), scene.Start, scene.Fit(s, small, false, n.X2-x3-1)))
	}
	return g
}

func (a *attempt) coverings() []string {
	var out []string
	for _, l := range a.p.m.Legs {
		if !slices.Contains(out, l.Covering) {
			out = append(out, l.Covering)
		}
	}
	slices.Sort(out)
	return out
}

// kinds gives one row of the legend for each sort of mark in the harness.
func (a *attempt) kinds() []kind {
	words := map[string]string{
		"plug": "connector, both halves", "box": "box of fuses and relays", "device": "device", "stud": "stud", "splice": "splice", "end": "end of a wire, capped or open",
	}
	var out []kind
	for _, mark := range marks {
		for _, d := range a.p.m.Devices {
			if d.In == nil && !d.Existing && markOf(d) == mark {
				out = append(out, kind{row{dev: d, mark: mark}, words[mark]})
				break
			}
		}
	}
	return out
}

type kind struct {
	row
	word string
}

func (a *attempt) sentences() []string {
	out := []string{
		"Thick line: a leg; wires and \u00d8 where it is fullest.",
		"\u00d8 is over the wires, before covering; estimated.",
		"Lengths run from place to place, without tails.",
		"Dot: a cavity in its wire's color, stripe for tracer;",
		"empty ring: no wire. First cavity first, row by row.",
	}
	old, short, loop := false, false, false
	for _, d := range a.p.m.Devices {
		old = old || d.Existing
	}
	for _, w := range a.p.m.Wires {
		old = old || w.Existing
	}
	for i, f := range a.shape.faked {
		short = short || f && a.p.tree.branches[i].stub == ""
		loop = loop || a.p.tree.branches[i].stub != ""
	}
	if old {
		out = append(out, "Dashed: in the vehicle already.")
	}
	if short {
		out = append(out, "Slanted gap, (short): leg too short to draw to scale.")
	}
	if loop {
		out = append(out, "Boxed letter: leg closes a loop; goes on at its twin.")
	}
	if len(a.left) > 0 {
		out = append(out, "Places without a list here: see the next sheet.")
	}
	return out
}

// bar draws the scale bar: a round length in the draft's units.
func (a *attempt) bar() *scene.Node {
	g := scene.G("scale-bar")
	n := a.blank.Notes
	unitM, steps := 0.3048, []float64{0.25, 0.5, 1, 2, 4, 5, 10, 20, 50, 100}
	if a.p.m.Metric {
		unitM, steps = 1, []float64{0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50}
	}
	long := steps[0] * unitM
	for _, s := range steps {
		if s*unitM*a.shape.mmPer <= 56 {
			long = s * unitM
		}
	}
	mm := long * a.shape.mmPer
	x, y := n.X1, n.Y2-3
	for i := range 4 {
		class := "thin"
		if i%2 == 0 {
			class = "full"
		}
		g.Add(scene.Frame(class, x+mm*float64(i)/4, y, x+mm*float64(i+1)/4, y+1.2))
	}
	g.Add(scene.Frame("edge", x, y, x+mm, y+1.2), scene.Words("t", x, y-1, scene.Start, "0"),
		scene.Words("t", x+mm, y-1, scene.End, quantity.LengthText(long, a.p.m.Metric)),
		scene.Words("t b", x+mm/2, y-1, scene.Middle, "1:"+fmt.Sprint(a.ratio)))
	g.Title = "scale bar, " + quantity.LengthText(long, a.p.m.Metric)
	return g
}

// fills are the shades of cavities: what the strokes of wires have.
func fills() []scene.Style {
	var out []scene.Style
	for _, l := range []string{"BK", "BN", "RD", "OG", "YE", "GN", "BU", "VT", "GY", "WH", "PK", "TQ", "TN", "GD", "SR"} {
		out = append(out, scene.Style{Class: "f" + l, Stroke: "none", Fill: diagram.FillOf(l)})
	}
	return append(out, scene.Style{Class: "hollow", Fill: "none"}, scene.Style{Class: "stripe", WidthMM: 0.55, Fill: "none"},
		scene.Style{Class: "gap-fill", Stroke: "none", Fill: "#ffffff"})
}
