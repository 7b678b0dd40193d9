package diagram_test

import (
	"fmt"
	"strings"
	"testing"

	"legwork/harness/model"
	"legwork/render/diagram"
	"legwork/render/scene"

	"github.com/stretchr/testify/require"
)

// find gives the first node of the sheets with that class and data attribute.
func find(sheets []diagram.Sheet, class, name, value string) *scene.Node {
	var out *scene.Node
	for _, s := range sheets {
		s.Scene.Walk(func(n *scene.Node) {
			if out == nil && (n.Class == class || strings.HasPrefix(n.Class, class+" ")) && n.Get(name) == value {
				out = n
			}
		})
	}
	return out
}

// shift moves a node and all that stands in it.
func shift(n *scene.Node, dx, dy float64) {
	for i := range n.Points {
		n.Points[i].X += dx
		n.Points[i].Y += dy
	}
	for _, k := range n.Kids {
		shift(k, dx, dy)
	}
}

func drop(sheets []diagram.Sheet, gone *scene.Node) {
	for _, s := range sheets {
		s.Scene.Walk(func(n *scene.Node) {
			var kept []*scene.Node
			for _, k := range n.Kids {
				if k != gone {
					kept = append(kept, k)
				}
			}
			n.Kids = kept
		})
	}
}

// TestCheckerBites spoils a good drawing in one way at a time; the rule that
// is made for it has to say so.
func TestCheckerBites(t *testing.T) {
	type spoil func(t *testing.T, sheets []diagram.Sheet)
	wire := func(t *testing.T, s []diagram.Sheet, n string) *scene.Node {
		w := find(s, "wire", "wire", n)
		require.NotNil(t, w)
		return w
	}
	for _, c := range []struct {
		name, rule string
		do         spoil
	}{
		{"a wire is left out", "missing", func(t *testing.T, s []diagram.Sheet) { drop(s, wire(t, s, "201")) }},
		{"a wire is drawn three times", "missing", func(t *testing.T, s []diagram.Sheet) {
			w := wire(t, s, "201")
			for range 2 {
				c := *w
				c.ID = ""
				s[0].Scene.Nodes = append(s[0].Scene.Nodes, &c)
			}
		}},
		{"a wire moves by 3 mm", "end", func(t *testing.T, s []diagram.Sheet) { shift(wire(t, s, "201"), 3, 0) }},
		{"a wire ends on another rail", "end", func(t *testing.T, s []diagram.Sheet) {
			for _, k := range wire(t, s, "111").Kids {
				k.Points[0].Y += 5
			}
		}},
		{"a wire runs on through the motor", "through", func(t *testing.T, s []diagram.Sheet) {
			for _, k := range wire(t, s, "203").Kids {
				k.Points[1].Y += 15
			}
		}},
		{"two wires lie on each other", "over", func(t *testing.T, s []diagram.Sheet) {
			for i, k := range wire(t, s, "205").Kids {
				if i < len(wire(t, s, "206").Kids) {
					wire(t, s, "206").Kids[i].Points = k.Points
				}
			}
		}},
		{"a label moves by 8 mm", "label", func(t *testing.T, s []diagram.Sheet) { shift(find(s, "wl", "wire", "203"), 8, 0) }},
		{"a label moves onto its wire", "text", func(t *testing.T, s []diagram.Sheet) { shift(find(s, "wl", "wire", "203"), -3, 0) }},
		{"a label is left out", "label", func(t *testing.T, s []diagram.Sheet) { drop(s, find(s, "wl", "wire", "203")) }},
		{"a text leaves the frame", "frame", func(t *testing.T, s []diagram.Sheet) { shift(find(s, "wl", "wire", "203"), 0, 400) }},
		{"a text is too small", "size", func(t *testing.T, s []diagram.Sheet) { find(s, "wl", "wire", "203").Kids[0].Class = "t t1 b" }},
		{"a name lies on a symbol", "text", func(t *testing.T, s []diagram.Sheet) {
			var x1, y1, x2, y2 float64
			n, err := fmt.Sscanf(find(s, "dev", "dev", "M2").Get("body"), "%f %f %f %f", &x1, &y1, &x2, &y2)
			require.Equal(t, 4, n, err)
			find(s, "name", "dev", "F3").Kids[0].Points[0] = scene.Point{X: x1 + 1, Y: (y1 + y2) / 2}
		}},
		{"an id is there twice", "id", func(t *testing.T, s []diagram.Sheet) { wire(t, s, "201").ID = wire(t, s, "202").ID }},
		{"a symbol lies on another", "box", func(t *testing.T, s []diagram.Sheet) {
			a, b := find(s, "dev", "dev", "F3"), find(s, "dev", "dev", "F5")
			for i := range a.Data {
				if a.Data[i].Name == "body" {
					a.Data[i].Value = b.Get("body")
				}
			}
		}},
		{"the description is gone", "name", func(t *testing.T, s []diagram.Sheet) { s[0].Scene.Desc = "" }},
		{"a terminal is not tied to its bar", "lead", func(t *testing.T, s []diagram.Sheet) {
			drop(s, find(s, "leads", "", ""))
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := build(t, "small.draft", source(t, "small.draft"))
			sheets := draw(t, m)
			require.Empty(t, judged(t, m, sheets).errors)
			if c.rule == "lead" {
				dropLayer(sheets, "leads")
			} else {
				c.do(t, sheets)
			}
			r := judged(t, m, sheets)
			require.True(t, r.has(c.rule), "want a fault of rule %s, got %v", c.rule, r.errors)
		})
	}
}

func dropLayer(sheets []diagram.Sheet, class string) {
	for _, s := range sheets {
		for _, n := range s.Scene.Nodes {
			if n.Class == class {
				n.Kids = nil
			}
		}
	}
}

// TestOtherModel holds the drawing of one draft against another: nothing fits.
func TestOtherModel(t *testing.T) {
	m := build(t, "small.draft", source(t, "small.draft"))
	sheets := draw(t, m)
	other := build(t, "least.draft", source(t, "least.draft"))
	r := judged(t, other, sheets)
	require.True(t, r.has("missing"))
	require.True(t, r.has("joint"))
	var none *model.Model
	got, notes := diagram.Schematic(diagram.Input{Model: none})
	require.Empty(t, got)
	require.Empty(t, notes)
}
