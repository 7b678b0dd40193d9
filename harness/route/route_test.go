package route_test

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/route"
)

const inch = 0.0254

func build(t testing.TB, text string) *model.Model {
	t.Helper()
	f, found := draft.Parse("test.draft", []byte(text))
	require.Empty(t, found)
	m, found := model.Build(f)
	require.Empty(t, found)
	return m
}

func path(t testing.TB, m *model.Model, r *route.Routes, number string) route.Path {
	t.Helper()
	w, ok := m.WireByNumber(number)
	require.True(t, ok, number)
	return r.Paths[w.ID]
}

// The lengths of the worked example (hand arithmetic: legs 35, 43 and 114 in,
// tails of 3 in at each end).
func TestWorkedExample(t *testing.T) {
	src, err := os.ReadFile("../model/testdata/orchard.draft")
	require.NoError(t, err)
	m := build(t, string(src))
	r := route.Measure(m)
	require.Empty(t, r.Findings)
	for number, want := range map[string]struct{ in, hotC float64 }{
		"101": {6, 85}, "102": {41, 85}, "201": {6, 50}, "202": {49, 60}, "203": {120, 60}, "204": {6, 50},
	} {
		p := path(t, m, r, number)
		require.InDelta(t, want.in*inch, p.LengthM, 1e-9, number)
		require.Equal(t, want.hotC, p.HotC, number)
		require.True(t, p.Known && !p.Given, number)
	}
	given := path(t, m, r, "100") // 24in as written
	require.True(t, given.Given)
	require.InDelta(t, 24*inch, given.LengthM, 1e-12)
	require.InDelta(t, 18*inch, path(t, m, r, "91").LengthM, 1e-12) // the strap
	require.True(t, path(t, m, r, "203").Wet)
	require.False(t, path(t, m, r, "201").Wet)
	require.Equal(t, []string{"bay", "dash"}, names(path(t, m, r, "102")))
}

func names(p route.Path) []string {
	var all []string
	for _, place := range p.Places {
		all = append(all, place.Name)
	}
	return all
}

// A ring of four places (invented): a-b 10in, b-c 10in, c-d 10in, d-a 10in,
// and a place off to the side that no leg reaches.
const ring = `place a 50C
place b 60C wet
place c 70C
place d 80C
place far 50C
leg a b 10in tape
leg b c 10in
leg c d 10in
leg d a 10in
metal frame
stud A on frame at a M6
stud B on frame at b M6
stud C on frame at c M6
stud D on frame at d M6
stud F on frame at far M6
splice P at a-b 2in
splice Q at b-a 2in
splice R at c-d 5in
`

func TestWays(t *testing.T) {
	cases := []struct {
		name, wire string
		in         float64
		places     string
	}{
		{"next door", "wire 1 A B", 16, "a b"},                        // 10 + 2 x 3
		{"equal ways: the first leg wins", "wire 1 A C", 26, "a b c"}, // 20 + 6 either way
		{"by a place", "wire 1 A C via d", 26, "a d c"},
		{"by two places", "wire 1 A B via c, d", 10*5 + 6, "a b c d a b"}, // a-b-c, c-d, d-a-b
		{"within a place", "wire 1 A A2", 6, "a"},
		{"to a splice on a leg", "wire 1 A P", 2 + 3, "a"},
		{"to a splice, named from the far end", "wire 1 A Q", 8 + 3, "a b"},
		{"between splices of one leg", "wire 1 P Q", 6, "a b"},
		{"between splices of two legs", "wire 1 P R", 2 + 10 + 5, "a d"},
		{"given", "wire 1 A B 3ft", 36, "a b"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			m := build(t, ring+"stud A2 on frame at a M6\n"+c.wire+"\n")
			r := route.Measure(m)
			require.Empty(t, r.Findings)
			p := path(t, m, r, "1")
			require.InDelta(t, c.in*inch, p.LengthM, 1e-9)
			require.True(t, p.Known)
			sum := p.TailsM
			for _, s := range p.Legs {
				sum += s.LengthM
			}
			if !p.Given {
				require.InDelta(t, p.LengthM, sum, 1e-9, "stretches and tails")
			}
			for _, want := range strings.Fields(c.places) {
				require.Contains(t, names(p), want)
			}
		})
	}
}

func TestLegLengthUnknown(t *testing.T) {
	m := build(t, "place a 50C\nplace b 50C\nleg a b\nmetal frame\nstud A on frame at a\nstud B on frame at b\nwire 1 A B\n")
	p := path(t, m, route.Measure(m), "1")
	require.InDelta(t, 120*inch+6*inch, p.LengthM, 1e-9) // 10 ft assumed, and tails
	require.True(t, p.Assumed)
}

func TestNoLegs(t *testing.T) {
	m := build(t, "metal frame\nstud A on frame\nfuse F1 10A\nwire 1 A F1.1\nwire 2 A F1.2 18in\n")
	r := route.Measure(m)
	require.Empty(t, r.Findings)
	require.InDelta(t, 120*inch, path(t, m, r, "1").LengthM, 1e-9) // 10 ft
	require.False(t, path(t, m, r, "1").Known)
	require.InDelta(t, 18*inch, path(t, m, r, "2").LengthM, 1e-9)
	require.True(t, path(t, m, r, "2").Known)
}

func TestFindings(t *testing.T) {
	cases := []struct {
		name, wires, rule string
		severity          diag.Severity
		says              string
	}{
		{"no way", "wire 1 A F\nwire 2 F A\nwire 3 A F", "no-way-between-places", diag.Fault, "from a to far for wire 1 and 1 more"},
		{"wire too short", "wire 1 A C 12in", "wire-shorter-than-path", diag.Warning, "wire 1 is 1 ft long but its way is 1 ft 8 in"},
		{"lead too short", "lead 1 A C 14AWG 12in", "wire-shorter-than-path", diag.Fault, "lead 1"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			r := route.Measure(build(t, ring+c.wires+"\n"))
			require.NotEmpty(t, r.Findings)
			f := r.Findings[0]
			require.Equal(t, c.rule, f.Rule)
			require.Equal(t, c.severity, f.Severity)
			require.Contains(t, f.Msg, c.says)
			require.False(t, f.At.IsZero())
		})
	}
}

// A length that is just the way, tails left out, is long enough.
func TestLongEnough(t *testing.T) {
	require.Empty(t, route.Measure(build(t, ring+"lead 1 A C 14AWG 20in\n")).Findings)
}

func TestGivenLengthNeedsNoWay(t *testing.T) {
	m := build(t, ring+"wire 1 A F 5ft\n")
	r := route.Measure(m)
	require.Empty(t, r.Findings)
	require.True(t, path(t, m, r, "1").Known)
}

// grid is a harness of n wires over a mesh of 100 places (invented).
func grid(n int) string {
	var b strings.Builder
	for i := range 100 {
		fmt.Fprintf(&b, "place p%d 50C\n", i)
		if i%10 > 0 {
			fmt.Fprintf(&b, "leg p%d p%d %din\n", i-1, i, 5+i%7)
		}
		if i >= 10 {
			fmt.Fprintf(&b, "leg p%d p%d %din\n", i-10, i, 5+i%3)
		}
	}
	b.WriteString("metal frame\n")
	for i := range 100 {
		fmt.Fprintf(&b, "stud S%d on frame at p%d M6\n", i, i)
	}
	for i := range n {
		to := (i*37 + i/100*13 + 11) % 100
		if to == i%100 {
			to = (to + 1) % 100
		}
		fmt.Fprintf(&b, "wire %d S%d S%d\n", i+1, i%100, to)
	}
	return b.String()
}

// The shortest way is no longer than any detour by a third place, and as long
// the other way around.
func TestShortestOfAll(t *testing.T) {
	m := build(t, grid(400))
	r := route.Measure(m)
	length := map[[2]string]float64{}
	for _, w := range m.Wires {
		length[[2]string{w.From.Device.Name, w.To.Device.Name}] = r.Paths[w.ID].LengthM - r.Paths[w.ID].TailsM
	}
	compared := 0
	for ab, direct := range length {
		for bc, second := range length {
			third, ok := length[[2]string{ab[0], bc[1]}]
			if ab[1] == bc[0] && ok {
				compared++
				require.LessOrEqual(t, third, direct+second+1e-9)
			}
		}
	}
	require.Positive(t, compared)
}

func TestSameEveryTime(t *testing.T) {
	m := build(t, grid(500))
	require.Equal(t, route.Measure(m), route.Measure(m))
}

func BenchmarkMeasure10000(b *testing.B) {
	m := build(b, grid(10_000))
	for b.Loop() {
		route.Measure(m)
	}
}

// Whatever the draft, every wire of the model has a finite length.
func FuzzMeasure(f *testing.F) {
	src, err := os.ReadFile("../model/testdata/orchard.draft")
	if err != nil {
		f.Fatal(err)
	}
	f.Add(string(src))
	f.Add(ring + "wire 1 A C via d\nwire 2 P R\nlead 3 A F 14AWG 1in\nstrap 4 A B 2in\n")
	f.Add("place a\nplace b\nleg a b 1in\nsplice X at a-b 0in\nsplice Y at b-a 0in\nsplice Z at a-b 1in\nwire 1 X Y\nwire 2 X Z\n")
	f.Fuzz(func(t *testing.T, src string) {
		tree, _ := draft.Parse("fuzz.draft", []byte(src))
		m, _ := model.Build(tree)
		r := route.Measure(m)
		require.Len(t, r.Paths, len(m.Wires))
		for _, p := range r.Paths {
			require.True(t, p.LengthM >= 0 && p.LengthM < 1e6)
			require.NotEmpty(t, p.Places)
		}
	})
}
