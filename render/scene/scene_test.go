package scene_test

import (
	"encoding/xml"
	"errors"
	"io"
	"math"
	"strings"
	"testing"

	"legwork/render/scene"

	"github.com/stretchr/testify/require"
)

func write(t *testing.T, s *scene.Scene) string {
	t.Helper()
	var b strings.Builder
	require.NoError(t, scene.WriteSVG(&b, s))
	return b.String()
}

// parse reads the whole document as XML and gives its start elements.
func parse(t *testing.T, doc string) []xml.StartElement {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(doc))
	var out []xml.StartElement
	for {
		tok, err := d.Token()
		if errors.Is(err, io.EOF) {
			return out
		}
		require.NoError(t, err, "document: %s", doc)
		if e, ok := tok.(xml.StartElement); ok {
			out = append(out, e.Copy())
		}
	}
}

func sample(name string) *scene.Scene {
	w := scene.G("wire", scene.Line("case", 10, 10, 10, 40.004), scene.Line("ins", 1, 2, 3, 4, 5, 6))
	w.ID, w.Title, w.Data = scene.ID("w-", name), "wire "+name, []scene.Attr{{Name: "from", Value: name}}
	return &scene.Scene{
		Name: "t", Title: name, Desc: name, Lang: "en", WidthMM: 420, HeightMM: 297,
		Styles: []scene.Style{{Class: "case", Stroke: "#000000", WidthMM: 0.35, Dash: []float64{4, .8}}, {Class: "t", SizeMM: 2.5, Bold: true}},
		Nodes: []*scene.Node{w, scene.Frame("case", 30, 20, 10, 5), scene.Ring("case", 1, 1, 2), scene.Bow("case", 0, 0, 0, 2, 1, true),
			scene.Words("t", 5, 5, scene.Middle, name), scene.Area("case", 0, 0, 1, 0, 1, 1)},
	}
}

func TestWriteSVG(t *testing.T) {
	out := write(t, sample("201"))
	require.Equal(t, out, write(t, sample("201")), "the same scene has to give the same bytes")
	require.Contains(t, out, `width="420mm" height="297mm" viewBox="0 0 420 297"`)
	require.Contains(t, out, `<line class="case" x1="10" y1="10" x2="10" y2="40"/>`, "figures are rounded to 0.01")
	require.Contains(t, out, `<rect class="case" x="10" y="5" width="20" height="15"/>`, "corners in any order")
	require.Contains(t, out, `<g id="w-201" class="wire" data-from="201"><title>wire 201</title>`)
	require.Contains(t, out, `.case{stroke:#000000;stroke-width:0.35;stroke-dasharray:4 0.8;}`)
	parse(t, out)
}

func TestPrefixAndFocus(t *testing.T) {
	s := sample("1")
	s.Prefix, s.Interactive, s.FocusClasses = "p2-", true, []string{"wire"}
	out := write(t, s)
	for _, want := range []string{`id="p2-w-1"`, `aria-labelledby="p2-title p2-desc"`, `tabindex="0"`, `role="group"`} {
		require.Contains(t, out, want)
	}
	require.NotContains(t, write(t, sample("1")), "tabindex", "a static picture can't be walked through")
}

func TestNotANumberStaysOut(t *testing.T) {
	s := sample("1")
	s.Nodes = append(s.Nodes, scene.Line("case", math.NaN(), math.Inf(1), -0.001, 4), &scene.Node{Shape: scene.Circle}, &scene.Node{Shape: 99})
	out := write(t, s)
	parse(t, out)
	require.Contains(t, out, `x1="0" y1="0" x2="0" y2="4"`)
}

func TestLook(t *testing.T) {
	s := &scene.Scene{Styles: []scene.Style{{Class: "a", Stroke: "#111111", WidthMM: 1, Bold: true}, {Class: "b", WidthMM: 2}, {Class: "ab", Fill: "#222222"}}}
	got := s.Look("b a")
	require.Equal(t, scene.Style{Stroke: "#111111", WidthMM: 2, Bold: true}, got, "the later style of the scene wins, whatever the order in the class")
}

// Widths of the test come from the published metrics of Helvetica (advance
// widths of H 722, e 556, l 222, o 556, blank 278; bold H 722, e 556, l 278,
// o 611), from memory; the font file agrees.
func TestWidth(t *testing.T) {
	require.InDelta(t, 2.278*10, scene.Width("Hello", 10, false), 1e-9)
	require.InDelta(t, 2.445*10, scene.Width("Hello", 10, true), 1e-9)
	require.InDelta(t, 1.112, scene.Width("\u00e4\u0308o", 1, false), 1e-9, "a combining mark takes no room")
	require.Greater(t, scene.Width("漢字", 1, false), 1.9)
}

func TestFit(t *testing.T) {
	require.Equal(t, "short", scene.Fit("short", 2.5, false, 20))
	cut := scene.Fit("Injection controller feeds", 2.5, false, 20)
	require.True(t, strings.HasSuffix(cut, "…"))
	require.LessOrEqual(t, scene.Width(cut, 2.5, false), 20.0)
	require.Equal(t, []string{"Fuel pump", "relay coil"}, scene.Wrap("Fuel pump relay coil", 2.5, false, 14, 2))
	require.Equal(t, []string{"…"}, scene.Wrap("abc", 2.5, false, 0.1, 2))
	require.Empty(t, scene.Wrap("", 2.5, false, 10, 2))
}

func TestBoxes(t *testing.T) {
	a, b := scene.Box{X1: 0, Y1: 0, X2: 10, Y2: 10}, scene.Box{X1: 5, Y1: 8, X2: 20, Y2: 20}
	require.InDelta(t, 10, a.Overlap(b), 1e-9)
	require.Zero(t, a.Overlap(scene.Box{X1: 10, Y1: 0, X2: 11, Y2: 1}), "touching is not overlapping")
	require.InDelta(t, 5, a.Distance(scene.Box{X1: 13, Y1: 14, X2: 20, Y2: 20}), 1e-9, "3-4-5 triangle")
	require.True(t, a.Inside(a.Grow(0.1)))
	tb := scene.TextBox("HH", 10, 10, scene.Middle, 10, false)
	require.InDelta(t, 10-7.22, tb.X1, 1e-9)
}

func FuzzWellFormed(f *testing.F) {
	for _, seed := range []string{"201", `a"b<c>&'d`, "\x00\x01\xff", "]]>", "\u202eabc", "漢字 𝛀", "--><!--", ""} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, name string) {
		ids := map[string]bool{}
		for _, e := range parse(t, write(t, sample(name))) {
			for _, a := range e.Attr {
				if a.Name.Local == "id" {
					require.False(t, ids[a.Value], "id %q twice", a.Value)
					require.Regexp(t, `^[A-Za-z][A-Za-z0-9_.-]*$`, a.Value)
					ids[a.Value] = true
				}
			}
		}
	})
}

func FuzzIDKeepsNamesApart(f *testing.F) {
	f.Add("a b", "a_20b")
	f.Add("1", "01")
	f.Fuzz(func(t *testing.T, a, b string) {
		require.Equal(t, a == b, scene.ID("w-", a) == scene.ID("w-", b))
	})
}
