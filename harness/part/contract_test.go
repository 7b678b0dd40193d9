package part

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/circuit"
)

// level picks the figures of a variant.
type level uint8

const (
	defaults level = iota
	least
	greatest
)

// filled gives every setting its least or greatest figures.
func filled(settings []Setting, l level) []Value {
	var out []Value
	for i := range settings {
		s := &settings[i]
		if l == defaults && !s.Must {
			continue
		}
		v := s.Defaulted(12)
		v.Said = true
		for j, f := range s.Figures {
			v.Nums[j], v.Set[j] = f.Min, true
			if l == greatest {
				v.Nums[j] = f.Max
			}
		}
		if s.Steps {
			v.When = always
		}
		out = append(out, v)
	}
	return out
}

// variants gives devices of a kind: default, least and greatest settings, and
// one for each word of each setting.
func variants(t *testing.T, k *Kind) []*Device {
	var out []*Device
	for l := defaults; l <= greatest; l++ {
		out = append(out, withLines(device(t, k.Name, filled(k.Settings, l)...), l))
	}
	for _, s := range k.Settings {
		for _, w := range s.Words {
			d := device(t, k.Name, append(filled(k.Settings, defaults), word(k.Settings, s.Name, w))...)
			out = append(out, withLines(d, defaults))
		}
	}
	for i, d := range out {
		d.Name = fmt.Sprintf("X%d", i+1)
		pinned(d)
	}
	return out
}

// withLines gives a device the lines that its kind reads: every role, a few
// positions, two halves, a bus.
func withLines(d *Device, l level) *Device {
	if d.Kind.Lines == nil {
		return d
	}
	switch d.Kind.Lines.Shape {
	case TerminalLines:
		for i := range d.Kind.Lines.Roles {
			r := &d.Kind.Lines.Roles[i]
			d.Lines = append(d.Lines, Line{Name: fmt.Sprintf("P%d", i+1), Role: r, Values: filled(r.Settings, l)})
		}
	case PositionLines:
		d.Lines = []Line{
			{Name: "off"}, {Name: "acc", Refs: []string{"B", "ACC"}}, {Name: "run", Refs: []string{"B", "ACC", "IGN"}},
			{Name: "crank", Refs: []string{"B", "IGN", "ST"}},
		}
	case HalfLines:
		d.Lines = []Line{{Name: "a"}, {Name: "b"}}
	case BusLines:
		d.Lines = []Line{{Name: "BAT"}}
	}
	return d
}

// bench is a device alone in a network: its last terminal, or the one that
// may become metal, on the reference, the others on 12.6 V behind so many
// ohms each, or open.
type bench struct {
	net   *circuit.Net
	nodes map[string]circuit.Node
	own   []circuit.Branch
	s     *Stamper
}

func newBench(d *Device, s *Stamper, step int, states bool, feedOhm float64) *bench {
	b := &bench{net: circuit.NewNet(), nodes: map[string]circuit.Node{}, s: s}
	ground := d.Kind.Ground
	if !d.has(ground) {
		ground = d.Pins[len(d.Pins)-1].Name
		if r := d.returns(); len(r) > 0 {
			ground = r[0]
		}
	}
	for _, p := range d.Pins {
		if p.Name == ground {
			b.nodes[p.Name] = 0
			continue
		}
		b.nodes[p.Name] = b.net.AddNode()
		if feedOhm > 0 {
			b.net.Add(b.nodes[p.Name], 0, circuit.Law{Kind: circuit.Source, Volt: 12.6, Ohm: feedOhm})
		}
	}
	for _, x := range s.Branches {
		if !x.Steps.Has(step) || x.State >= 0 && x.Rest == states {
			continue
		}
		law := x.Law
		if law.Kind == circuit.Regulator {
			law.SenseA, law.SenseB = b.nodes[x.SenseA], b.nodes[x.SenseB]
		}
		b.own = append(b.own, b.net.Add(b.nodes[x.A], b.nodes[x.B], law))
	}
	return b
}

// each plays every variant of every kind through corners, grades, steps, and
// its states on and off.
func each(t *testing.T, ask func(t *testing.T, d *Device, s *Stamper, step int, on bool)) {
	for _, k := range Kinds() {
		for _, d := range variants(t, k) {
			if len(d.Pins) == 0 {
				continue
			}
			for _, c := range []Corner{HotSoak, ColdStart} {
				s := stamped(d, c, Nominal)
				for step := range steps {
					ask(t, d, s, step, false)
					ask(t, d, s, step, true)
				}
			}
		}
	}
}

// Every branch lies between terminals that the device has, and every law is
// one that circuit takes.
func TestStampsNameTerminalsThatExist(t *testing.T) {
	each(t, func(t *testing.T, d *Device, s *Stamper, step int, _ bool) {
		for _, b := range s.Branches {
			require.True(t, d.has(b.A) && d.has(b.B), "%s %s: branch %s to %s", d.Kind.Name, d.Name, b.A, b.B)
			require.Less(t, b.State, len(s.States))
		}
		for _, st := range s.States {
			for _, w := range st.Watch {
				require.True(t, d.has(w.Plus) && d.has(w.Minus), "%s watches %s to %s", d.Kind.Name, w.Plus, w.Minus)
			}
		}
	})
}

// Alone on a bench every kind solves: node law met, nothing NaN.
func TestEveryKindSolves(t *testing.T) {
	each(t, func(t *testing.T, d *Device, s *Stamper, step int, on bool) {
		b := newBench(d, s, step, on, 0.1)
		got, err := circuit.NewSolver(b.net).Solve(t.Context())
		require.NoError(t, err, "%s %s", d.Kind.Name, d.Name)
		require.True(t, got.Met, "%s %s in %s, on %v: residual %g", d.Kind.Name, d.Name, steps[step].Name, on, got.Residual)
		for name, n := range b.nodes {
			v, ok := got.V(n)
			require.True(t, ok && !math.IsNaN(v), "%s.%s", d.Kind.Name, name)
		}
	})
}

// What does not supply takes power, it gives none. A controller's reference
// takes its power from a feed, which is not played: it is left out.
func TestOnlySuppliesGivePower(t *testing.T) {
	each(t, func(t *testing.T, d *Device, s *Stamper, step int, on bool) {
		if d.Kind.Supplies != nil {
			return
		}
		b := newBench(d, s, step, on, 0.001)
		got, err := circuit.NewSolver(b.net).Solve(t.Context())
		require.NoError(t, err)
		watts, i := 0.0, 0
		for _, x := range s.Branches {
			if !x.Steps.Has(step) || x.State >= 0 && x.Rest == on {
				continue
			}
			va, _ := got.V(b.nodes[x.A])
			vb, _ := got.V(b.nodes[x.B])
			if x.Use != SourceElement {
				watts += (va - vb) * got.I(b.own[i])
			}
			i++
		}
		require.GreaterOrEqual(t, watts, -1e-9, "%s %s in %s, on %v", d.Kind.Name, d.Name, steps[step].Name, on)
	})
}

// A device that uses or supplies current has no terminal that hangs in the
// air while its return is connected: an off device leaks.
func TestOffDevicesDoNotFloat(t *testing.T) {
	each(t, func(t *testing.T, d *Device, s *Stamper, step int, on bool) {
		if d.Kind.Draws == nil && d.Kind.Supplies == nil {
			return
		}
		b := newBench(d, s, step, on, 0)
		got, err := circuit.NewSolver(b.net).Solve(t.Context())
		require.NoError(t, err)
		for name, n := range b.nodes {
			_, ok := got.V(n)
			require.True(t, ok, "%s.%s floats in %s, on %v", d.Kind.Name, name, steps[step].Name, on)
		}
	})
}
