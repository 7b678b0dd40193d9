package layout_test

import (
	"context"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"legwork/harness"
	"legwork/harness/model"
	"legwork/render/diagram"
	"legwork/render/layout"
	"legwork/render/scene"

	"github.com/stretchr/testify/require"
)

func checked(t *testing.T, path string, with ...string) *harness.Result {
	t.Helper()
	d := harness.Load(os.DirFS(filepath.Dir(path)), filepath.Base(path))
	require.NoError(t, d.Err)
	r, err := d.Check(context.Background(), harness.Options{With: with})
	require.NoError(t, err)
	return r
}

func draw(r *harness.Result, paper string) []diagram.Sheet {
	sheets, _ := layout.Draw(diagram.Input{Model: r.Model, Routes: r.Routes, Sizes: r.Sizes, Paper: paper})
	return sheets
}

func svgOf(t *testing.T, s *scene.Scene) string {
	t.Helper()
	var b strings.Builder
	require.NoError(t, scene.WriteSVG(&b, s))
	return b.String()
}

// faults reads the sheets back and says what is wrong with them.
func faults(t *testing.T, m *model.Model, sheets []diagram.Sheet) []string {
	t.Helper()
	var out []string
	devs := map[string]bool{}
	for i, sh := range sheets {
		s, err := read(svgOf(t, sh.Scene), sh.Scene.Look)
		require.NoError(t, err)
		blank := blankOf(t, sh.Scene)
		out = append(out, s.overlaps(blank)...)
		for id, n := range s.ids {
			if n > 1 {
				out = append(out, fmt.Sprintf("id %s is there %d times", id, n))
			}
		}
		for d := range s.devs {
			devs[d] = true
		}
		if i == 0 {
			out = append(out, s.lengths(m, sh.Scene)...)
		}
	}
	for _, d := range m.Devices {
		if d.In == nil && !devs[d.Name] {
			out = append(out, "device "+d.Name+" is not drawn")
		}
	}
	return out
}

func blankOf(t *testing.T, s *scene.Scene) diagram.Blank {
	t.Helper()
	for _, paper := range diagram.Papers() {
		for _, b := range diagram.Blanks(paper) {
			if b.WidthMM == s.WidthMM && b.HeightMM == s.HeightMM {
				return b
			}
		}
	}
	t.Fatalf("no paper is %v x %v", s.WidthMM, s.HeightMM)
	return diagram.Blank{}
}

// overlaps finds texts over texts, lines and areas, texts that stand neither
// in the room nor in the notes, and cards over cards and legs.
func (s *sheet) overlaps(b diagram.Blank) []string {
	var out []string
	for i, a := range s.texts {
		if a.layer != "frame" && !a.box.Inside(b.Room.Grow(0.1)) && !a.box.Inside(b.Notes.Grow(0.1)) {
			out = append(out, fmt.Sprintf("text %q stands outside", a.text))
		}
		for _, c := range s.texts[i+1:] {
			if a.box.Overlap(c.box) > 0.01 {
				out = append(out, fmt.Sprintf("text %q lies over %q", a.text, c.text))
			}
		}
		for _, o := range s.outlines {
			if a.layer != "frame" && o.hits(a.box) && !(o.group == a.group && a.group.get("class") == "stub") {
				out = append(out, fmt.Sprintf("text %q lies over a %s", a.text, o.class))
			}
		}
	}
	for i, a := range s.cards {
		for _, c := range s.cards[i+1:] {
			if a.Overlap(c) > 0 {
				out = append(out, fmt.Sprintf("cards overlap at %v", a))
			}
		}
		for _, o := range s.outlines {
			if o.group.get("class") == "leg" && o.hits(a) {
				out = append(out, fmt.Sprintf("a leg runs over the card at %v", a))
			}
		}
	}
	return append(out, s.crossings()...)
}

// crossings finds lines to cards that run over legs, other than those that end
// where they start.
func (s *sheet) crossings() []string {
	var out []string
	for _, o := range s.outlines {
		if o.class != "lead" {
			continue
		}
		for _, l := range s.outlines {
			if l.class != "bundle" {
				continue
			}
			p, q := o.corners[0], o.corners[1]
			from := scene.Point{X: p.X + 0.15*(q.X-p.X), Y: p.Y + 0.15*(q.Y-p.Y)}
			if meet([]scene.Point{from, q}, l.corners) {
				out = append(out, fmt.Sprintf("a line to a card runs over leg %s", l.group.get("data-leg")))
			}
		}
	}
	return out
}

// lengths wants every leg once, or in two stubs, and as long as the scale in
// the title block says.
func (s *sheet) lengths(m *model.Model, sc *scene.Scene) []string {
	var out []string
	ratio := 0.0
	sc.Walk(func(n *scene.Node) {
		if v, ok := strings.CutPrefix(n.Text, "Legs to scale 1:"); ok {
			fmt.Sscanf(v, "%f", &ratio)
		}
	})
	pieces := map[string][]leg{}
	for _, l := range s.legs {
		pieces[l.name] = append(pieces[l.name], l)
	}
	for _, l := range m.Legs {
		p := pieces[l.Name]
		switch len(p) {
		case 0:
			out = append(out, "leg "+l.Name+" is not drawn")
		case 1:
			if want := l.LengthM * 1000 / ratio; !p[0].faked && math.Abs(p[0].longMM-want) > 0.05 {
				out = append(out, fmt.Sprintf("leg %s is %.2f mm long on paper, to scale %.2f", l.Name, p[0].longMM, want))
			}
		}
	}
	return out
}

// Every shipped draft on every paper, with all its options and with none: no
// text over anything, every device and leg there, legs to scale.
func TestShipped(t *testing.T) {
	found, err := filepath.Glob("../../testdata/*.draft")
	require.NoError(t, err)
	drawn := 0
	for _, path := range found {
		r := checked(t, path)
		var options []string
		for _, o := range r.Model.Options {
			options = append(options, o.Name)
		}
		results := []*harness.Result{r}
		if len(options) > 0 {
			results = append(results, checked(t, path, options...))
		}
		for i, r := range results {
			for _, paper := range diagram.Papers() {
				t.Run(fmt.Sprint(filepath.Base(path), " ", paper, " ", i), func(t *testing.T) {
					sheets := draw(r, paper)
					if len(r.Model.Legs) == 0 {
						require.Empty(t, sheets)
						return
					}
					drawn++
					require.NotEmpty(t, sheets)
					require.Empty(t, faults(t, r.Model, sheets))
				})
			}
		}
	}
	require.Greater(t, drawn, 40)
}

// The same draft gives the same bytes.
func TestSameEveryTime(t *testing.T) {
	r := checked(t, "../../testdata/orchard-truck.draft")
	require.Equal(t, svgOf(t, draw(r, "a3")[0].Scene), svgOf(t, draw(r, "a3")[0].Scene))
}

// The rules have to bite: each harm to a good sheet is seen.
func TestRulesBite(t *testing.T) {
	r := checked(t, "../../testdata/orchard-truck.draft")
	for _, c := range []struct {
		harm func(*scene.Node)
		want string
	}{
		{func(n *scene.Node) { move(n, n.Get("leg") == "rail-tank" && n.Shape == scene.Text, 0, 4) }, "lies over a"},
		{func(n *scene.Node) { move(n, n.Text == "Injector 1", 0, 3.6) }, `lies over "Injector 2"`},
		{func(n *scene.Node) { move(n, n.Text == "motor", -400, 0) }, "stands outside"},
		{func(n *scene.Node) {
			if n.Get("leg") == "rail-tank" && len(n.Kids) > 0 {
				n.Kids[0].Points[1].X += 3
				n.Kids[0].Points[2].X += 3
			}
		}, "leg rail-tank is "},
		{func(n *scene.Node) { drop(n, "leg", "bay-dash") }, "leg bay-dash is not drawn"},
		{func(n *scene.Node) { drop(n, "dev", "J3") }, "device J3 is not drawn"},
		{func(n *scene.Node) {
			if n.ID == "d-J3" {
				n.ID = "d-J4"
			}
		}, "id d-J4 is there 2 times"},
		{func(n *scene.Node) {
			if n.Class == "lead" && n.Get("place") == "bay" {
				n.Points[1].X += 300
				n.Points[1].Y -= 120
				n.Points[0].Y += 50
			}
		}, "a line to a card runs over leg"},
	} {
		sheets := draw(r, "a3")
		require.Empty(t, faults(t, r.Model, sheets))
		sheets[0].Scene.Walk(c.harm)
		require.Contains(t, strings.Join(faults(t, r.Model, sheets), "\n"), c.want)
	}
}

func move(n *scene.Node, really bool, dx, dy float64) {
	if really {
		n.Points[0].X += dx
		n.Points[0].Y += dy
	}
}

// drop takes away the children of a node that have the attribute.
func drop(n *scene.Node, name, value string) {
	n.Kids = slices.DeleteFunc(n.Kids, func(k *scene.Node) bool { return k.Get(name) == value && k.Shape == scene.Group })
}

// A leg holds the wires of its fullest spot: two that meet at a splice on it
// are side by side nowhere. The lengths are of the draft; the harness is
// invented.
func TestWhatALegHolds(t *testing.T) {
	fsys := fstest.MapFS{"t.draft": {Data: []byte(`place a
place b
place c
leg a b 2ft tape
leg b c 1ft
leg c a 9ft
metal frame
stud E1 on frame at a M6
stud E2 on frame at b M6
stud E3 on frame at c M6
splice J1 at a-b 6in
wire 1 E1 J1 14AWG
wire 2 J1 E2 14AWG
wire 3 E1 E2 14AWG
wire 4 E2 E3 14AWG
`)}}
	r, err := harness.Load(fsys, "t.draft").Check(context.Background(), harness.Options{})
	require.NoError(t, err)
	sheets := draw(r, "a3")
	require.Len(t, sheets, 1)
	require.Empty(t, faults(t, r.Model, sheets))
	s, err := read(svgOf(t, sheets[0].Scene), sheets[0].Scene.Look)
	require.NoError(t, err)
	wires := map[string]string{}
	for _, l := range s.legs {
		wires[l.id] = l.wires
	}
	require.Equal(t, map[string]string{"r-a-b": "2", "r-b-c": "1", "r-c-a": "0", "r-c-a_20far": "0"}, wires, "the leg without a wire closes the loop, in two stubs")
	var all []string
	for _, w := range s.texts {
		all = append(all, w.text)
	}
	for _, want := range []string{"a-b 2 ft", "b-c 1 ft", "c-a 9 ft", "J1, 6 in from a", "to a, leg goes on at A", "to c, leg goes on at A", "covering not said"} {
		require.Contains(t, all, want)
	}
}

// Drafts that no sheet has room for still come out whole: lists go to further
// sheets. Invented: a row of places with long lists, a star, and a mesh.
func TestCrowded(t *testing.T) {
	var row, star, mesh strings.Builder
	for i := range 30 {
		fmt.Fprintf(&row, "place p%d\n", i)
		fmt.Fprintf(&star, "place p%d\n", i)
		fmt.Fprintf(&mesh, "place p%d\n", i)
		if i > 0 {
			fmt.Fprintf(&row, "leg p%d p%d %dcm\n", i-1, i, 20+i)
			fmt.Fprintf(&star, "leg p%d p%d %dcm\n", i%5*(i/5), i, 20+9*i)
			fmt.Fprintf(&mesh, "leg p%d p%d 1m\n", (i-1)/2, i)
		}
		for k := range 8 {
			fmt.Fprintf(&row, "lamp L%d-%d \"A lamp with quite a long name on it\" at p%d 5W\n", i, k, i)
		}
	}
	for name, src := range map[string]string{"row": row.String(), "star": star.String(), "mesh": mesh.String()} {
		d := harness.Load(fstest.MapFS{"t.draft": {Data: []byte(src)}}, "t.draft")
		sheets, _ := layout.Draw(diagram.Input{Model: d.Model, Paper: "a4"})
		require.NotEmpty(t, sheets, name)
		for _, f := range faults(t, d.Model, sheets) {
			require.NotContains(t, f, "not drawn", name)
			require.NotContains(t, f, "text", name)
		}
	}
}
