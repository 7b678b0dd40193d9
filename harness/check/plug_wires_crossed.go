package check

import (
	"fmt"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/model"
)

var _ = define(Rule{
	ID:       "plug-wires-crossed",
	Severity: diag.Warning,
	Title:    "Wires change places in a plug: colors that go in at some cavities come out at others.",
	Why: "One half of a plug was read from the mating face and the other from the wire side, or two lines were swapped: 5 V and ground change places, and a sensor or a controller dies. " +
		"Nothing electrical shows that it was not meant. But a color that enters at one cavity and leaves at another, while the color from there comes out at the first, hardly ever is. " +
		"Hold both halves against the same drawing, and say of each which side it shows.",
	Equation: "the color at a cavity of one half is at the same cavity of the other, where both halves have it just once",
	Misses:   "Colors that legwork chose, colors that are in a half more than once, wires of another color behind the plug. Halves that are both mirrored, which only the bench shows.",
	Needs:    Model,
	Bad: `battery   G1  grounds-to frame
fuse      F1  10A  from G1 6in
lamp      P1  21W
connector X1  2way
  half cab
  half rear
stud      E1  on frame  M6
wire 1  G1.+       F1.1      6in
wire 2  F1.2       X1.cab.1  RD  2ft
wire 3  E1         X1.cab.2  BK  2ft
wire 4  X1.rear.1  P1.1      BK  2ft
wire 5  X1.rear.2  P1.2      RD  2ft
`,
	Good: `battery   G1  grounds-to frame
fuse      F1  10A  from G1 6in
lamp      P1  21W
connector X1  2way
  half cab
  half rear
stud      E1  on frame  M6
wire 1  G1.+       F1.1      6in
wire 2  F1.2       X1.cab.1  RD  2ft
wire 3  E1         X1.cab.2  BK  2ft
wire 4  X1.rear.1  P1.1      RD  2ft
wire 5  X1.rear.2  P1.2      BK  2ft
`,
	Run: plugWiresCrossed,
})

// crossing is a cavity whose color in one half lies elsewhere in the other.
type crossing struct {
	a, b  *model.Terminal // the same cavity in both halves
	out   *model.Terminal // of the second half: where the color of the first comes out
	color string
	at    int // index of the cavity
}

func plugWiresCrossed(p *Pass) {
	for _, d := range p.Model.Devices {
		var a, b []*model.Terminal
		for _, c := range d.Couples() {
			a, b = append(a, pinOf(d, c.A)), append(b, pinOf(d, c.B))
		}
		if list := crossings(a, b); len(list) > 0 {
			p.reportCrossed(d, list, len(a))
		}
	}
}

// crossings finds the cavities that change places among themselves.
func crossings(a, b []*model.Terminal) []crossing {
	inA, inB := cavitiesByColor(a), cavitiesByColor(b)
	var list []crossing
	for i := range a {
		color := colorAt(a[i])
		comesOut, once := inB[color]
		other := colorAt(b[i])
		goesIn, onceThere := inA[other]
		if color == "" || other == "" || color == other || !once || !onceThere || comesOut < 0 || goesIn < 0 {
			continue
		}
		list = append(list, crossing{a[i], b[i], b[comesOut], color, i})
	}
	return list
}

// cavitiesByColor gives for each color the one cavity that has it, -1 where
// several have.
func cavitiesByColor(list []*model.Terminal) map[string]int {
	at := map[string]int{}
	for i, t := range list {
		color := colorAt(t)
		if _, seen := at[color]; seen {
			at[color] = -1
		} else {
			at[color] = i
		}
	}
	return at
}

// colorAt is the color that the draft gives the one wire of a cavity, "" for
// none.
func colorAt(t *model.Terminal) string {
	if t == nil || len(t.Ends) != 1 || t.Ends[0].Wire.Chosen || t.Ends[0].Wire.Color.Base == "" {
		return ""
	}
	c := t.Ends[0].Wire.Color
	if c.Tracer != "" {
		return c.Base + "/" + c.Tracer
	}
	return c.Base
}

func (p *Pass) reportCrossed(d *model.Device, list []crossing, ways int) {
	var parts []string
	var related []diag.Related
	mirrored := true
	for _, c := range list {
		parts = append(parts, fmt.Sprintf("%s goes in at %s and comes out at %s", c.color, c.a.Shown, c.out.Shown))
		related = append(related, diag.Related{At: c.b.Ends[0].Wire.At, Msg: fmt.Sprintf("wire %s is at %s", c.b.Ends[0].Wire.Number, c.b.Shown)})
		other := slices.IndexFunc(list, func(o crossing) bool { return o.b == c.out })
		mirrored = mirrored && other >= 0 && list[other].at == ways-1-c.at
	}
	f := diag.Finding{
		At:     d.At,
		Msg:    parts[0],
		Detail: "If that is meant, accept it; else exchange the wires of one half.",
	}
	if len(parts) > 1 {
		f.Detail = strings.Join(parts[1:], "; ") + ". " + f.Detail
	}
	if mirrored && len(list) > 2 {
		f.Detail += " All of it is turned end for end, as if one face had been drawn from its other side."
	}
	f.Related = related
	p.Report(f)
}
