package check

import (
	"fmt"
	"strings"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

var _ = define(Rule{
	ID:       "fuses-side-by-side",
	Severity: diag.Fault,
	Title:    "Fuses that feed the same wire side by side let through more than it carries.",
	Why: "Two batteries with a fuse each, or two fuses in place of one that was too small, feed a wire together. " +
		"A short behind them draws through both, and neither opens before it carries its own rating: the wire gets the sum. " +
		"Put a fuse of its own where the wire leaves the common point, or make the wire carry what all of them let through. " +
		"Up to 1.5 times what the wire carries it is a warning.",
	Equation: "sum of the ratings of the fuses at one end of the wire <= ampacity",
	Figures:  []string{"ampacity-33cfr183"},
	Misses:   "Fuses that do not lie at the batteries themselves. That two fuses never share a current evenly. What each fuse alone lets through: fuse-above-wire.",
	Needs:    States,
	Bad: `battery G1  cca 620A  grounds-to frame
battery G2  cca 620A  grounds-to frame
fuse    F1  60A  bolt-down  from G1 6in
fuse    F2  60A  bolt-down  from G2 6in
stud    E7  M8
heater  R1  draws 40A 13.5V  grounds-to frame
wire 1  G1.+  F1.1  4AWG  6in
wire 2  G2.+  F2.1  4AWG  6in
wire 3  F1.2  E7    4AWG  6in
wire 4  F2.2  E7    4AWG  6in
wire 5  E7    R1.1  8AWG  3ft
`,
	Good: `battery G1  cca 620A  grounds-to frame
battery G2  cca 620A  grounds-to frame
fuse    F1  60A  bolt-down  from G1 6in
fuse    F2  60A  bolt-down  from G2 6in
stud    E7  M8
heater  R1  draws 40A 13.5V  grounds-to frame
wire 1  G1.+  F1.1  4AWG  6in
wire 2  G2.+  F2.1  4AWG  6in
wire 3  F1.2  E7    4AWG  6in
wire 4  F2.2  E7    4AWG  6in
wire 5  E7    R1.1  4AWG  3ft
`,
	Run: fusesSideBySide,
})

// mainFuse is a fuse that a battery feeds, with the terminal behind it.
type mainFuse struct {
	size.Fuse
	out *model.Terminal
}

func fusesSideBySide(p *Pass) {
	open := p.openCircuit()
	var list []mainFuse
	for _, f := range p.Sizes.Fuses {
		x := f.Device.Protects()[f.Index]
		in, out := pinOf(f.Device, x.In), pinOf(f.Device, x.Out)
		switch {
		case in == nil || out == nil || f.RatedA <= 0 || open.reached(in) == open.reached(out):
		case open.reached(in):
			list = append(list, mainFuse{f, out})
		default:
			list = append(list, mainFuse{f, in})
		}
	}
	if len(list) < 2 {
		return
	}
	sum := 0.0
	for _, f := range list {
		sum += f.RatedA
	}
	beside := p.besideEach(list)
	for i := range p.Sizes.Wires {
		w := &p.Sizes.Wires[i]
		if beside[w.Wire.From] < 2 && beside[w.Wire.To] < 2 {
			continue
		}
		for _, l := range w.Judgement.Limits {
			if l.Name == gauge.FloorProtection && !l.Hint && l.Got < sum {
				p.judgeBeside(list, *w, l.Got)
			}
		}
	}
}

// besideEach counts the fuses of which each terminal is in the fused part.
func (p *Pass) besideEach(list []mainFuse) map[*model.Terminal]int {
	count := map[*model.Terminal]int{}
	for _, f := range list {
		for t := range p.fusedPart(f.out, nil) {
			count[t]++
		}
	}
	return count
}

// judgeBeside holds a wire against the fuses at either of its ends.
func (p *Pass) judgeBeside(list []mainFuse, w size.Wire, carries float64) {
	for _, from := range []*model.Terminal{w.Wire.From, w.Wire.To} {
		behind := p.fusedPart(from, w.Wire)
		var at []mainFuse
		sum := 0.0
		for _, f := range list {
			if behind[f.out] {
				at, sum = append(at, f), sum+f.RatedA
			}
		}
		if len(at) > 1 && sum > carries {
			p.reportBeside(w, at, sum, carries)
			return
		}
	}
}

// fusedPart gives the terminals that are joined to one by wires, contacts and
// plugs, without fuses and without one wire.
func (p *Pass) fusedPart(from *model.Terminal, not *model.Wire) map[*model.Terminal]bool {
	seen := map[*model.Terminal]bool{}
	for todo := []*model.Terminal{from}; len(todo) > 0; {
		at := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if at == nil || seen[at] || at.Metal != nil {
			continue
		}
		seen[at] = true
		for _, e := range at.Ends {
			if e.Wire != not {
				todo = append(todo, e.Wire.From, e.Wire.To)
			}
		}
		todo = append(todo, at.Bus...)
		for _, c := range at.Device.Couples() {
			todo = append(todo, otherSide(at, c.A, c.B))
		}
		for _, c := range at.Device.Switches() {
			todo = append(todo, otherSide(at, c.A, c.B))
		}
	}
	return seen
}

// otherSide gives the other one of a device's two terminals, nil where the given
// one is neither.
func otherSide(t *model.Terminal, a, b string) *model.Terminal {
	switch t.Name {
	case a:
		return pinOf(t.Device, b)
	case b:
		return pinOf(t.Device, a)
	}
	return nil
}

func (p *Pass) reportBeside(w size.Wire, at []mainFuse, sum, carries float64) {
	var names []string
	var related []diag.Related
	for _, f := range at {
		names = append(names, f.Device.Name)
		related = append(related, diag.Related{At: f.Device.At, Msg: "a fuse of " + quantity.Text(f.RatedA, quantity.Current)})
	}
	f := diag.Finding{
		At: sizeSpan(w),
		Msg: fmt.Sprintf("%s together let %s into wire %s (%s), which carries %s", strings.Join(names, " and "),
			quantity.Text(sum, quantity.Current), w.Wire.Number, w.Conductor.Size.Name, quantity.Text(carries, quantity.Current)),
		Detail:  "Give the wire a fuse of its own where it leaves the common point, or make it thicker.",
		Values:  []diag.Value{{Name: "ratings", Got: sum, Limit: carries, Unit: "A", Bound: diag.AtMost}},
		Related: related,
	}
	if sum <= grossly*carries {
		f.Severity = diag.Warning
	}
	p.Report(f)
}
