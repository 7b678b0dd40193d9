package part

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Every terminal that an ability names exists, and its figures make sense.
func TestAbilitiesNameTerminalsThatExist(t *testing.T) {
	for _, k := range Kinds() {
		for _, d := range variants(t, k) {
			for _, name := range namedTerminals(d) {
				require.True(t, d.has(name), "%s %s names terminal %q", k.Name, d.Name, name)
			}
			require.NotEmpty(t, k.Abilities(), k.Name)
		}
	}
}

func namedTerminals(d *Device) []string {
	var out []string
	k := d.Kind
	if k.Supplies != nil {
		for _, x := range k.Supplies(d) {
			out = append(out, x.Plus, x.Minus)
		}
	}
	if k.Protects != nil {
		for _, x := range k.Protects(d) {
			out = append(out, x.In, x.Out)
		}
	}
	if k.Draws != nil {
		for _, x := range k.Draws(d) {
			out = append(out, x.Plus, x.Minus)
		}
	}
	if k.Switches != nil {
		for _, x := range k.Switches(d) {
			out = append(out, x.A, x.B)
			if x.By == "coil" {
				out = append(out, x.CoilA, x.CoilB)
			}
		}
	}
	if k.Drives != nil {
		for _, x := range k.Drives(d) {
			out = append(out, x.Pin)
		}
	}
	if k.Kicks != nil {
		for _, x := range k.Kicks(d) {
			out = append(out, x.A, x.B)
		}
	}
	return append(out, morePins(d)...)
}

func morePins(d *Device) []string {
	var out []string
	k := d.Kind
	if k.Grounds != nil {
		for _, x := range k.Grounds(d) {
			out = append(out, x.Pin)
		}
	}
	if k.Passes != nil {
		for _, x := range k.Passes(d) {
			out = append(out, x.A, x.B)
		}
	}
	if k.Couples != nil {
		for _, x := range k.Couples(d) {
			out = append(out, x.A, x.B)
		}
	}
	return out
}

// Each draw has a load element between the same terminals, each fuse a fuse
// element, each contact a contact element and each output an output element:
// solve reads their currents there.
func TestEachAbilityHasItsElement(t *testing.T) {
	between := func(s *Stamper, use Use, a, b string) bool {
		for _, x := range s.Branches {
			if x.Use == use && (x.A == a && x.B == b || x.A == b && x.B == a) {
				return true
			}
		}
		return false
	}
	for _, k := range Kinds() {
		for _, d := range variants(t, k) {
			s := stamped(d, HotSoak, Sure)
			if k.Draws != nil {
				for _, x := range k.Draws(d) {
					if x.Amps > 0 {
						require.True(t, between(s, LoadElement, x.Plus, x.Minus), "%s %s draws at %s", k.Name, d.Name, x.Plus)
					}
				}
			}
			if k.Protects != nil {
				for _, x := range k.Protects(d) {
					require.True(t, between(s, FuseElement, x.In, x.Out), k.Name)
				}
			}
			if k.Switches != nil {
				for _, x := range k.Switches(d) {
					require.True(t, between(s, ContactElement, x.A, x.B), "%s %s", k.Name, d.Name)
				}
			}
		}
	}
}

// The symbols stand on the half-module grid at their pins, so that wires run
// on whole modules, and no part of one leaves its height.
func TestSymbolsFitTheirGrid(t *testing.T) {
	for _, k := range Kinds() {
		for _, s := range append([]Symbol{k.Symbol}, k.Others...) {
			for _, one := range append([]Symbol{s}, s.Parts...) {
				if len(one.Parts) > 0 {
					continue
				}
				require.Positive(t, one.Half, k.Name)
				require.Positive(t, one.Columns, k.Name)
				require.NotZero(t, one.Row, k.Name)
				require.NotEmpty(t, one.Strokes, k.Name)
				for _, p := range one.Pins {
					require.InDelta(t, one.Half, max(p.Y, -p.Y), 1e-9, "%s pin %s", k.Name, p.Name)
					require.Less(t, p.Col, one.Columns)
				}
				for _, x := range one.Strokes {
					points := x.Points
					if x.Kind == Rect { // corner and size
						points = []Point{points[0], {X: points[0].X + points[1].X, Y: points[0].Y + points[1].Y, Col: points[0].Col}}
					}
					for _, pt := range points {
						require.LessOrEqual(t, max(pt.Y, -pt.Y), one.Half+0.2, k.Name)
						require.Less(t, pt.Col, one.Columns, k.Name)
					}
				}
			}
		}
	}
}

// A form names one of the symbols, and shows every terminal that the device
// has, in one form or the plain one.
func TestEveryFormExists(t *testing.T) {
	for _, k := range Kinds() {
		for _, d := range variants(t, k) {
			s, ok := k.SymbolOf(d)
			require.True(t, ok, "%s %s", k.Name, d.Name)
			if k.Lines == nil && !k.Self {
				var pins []string
				for _, p := range d.Pins {
					pins = append(pins, p.Name)
				}
				require.ElementsMatch(t, pins, s.pinNames(), k.Name)
			}
		}
	}
}
