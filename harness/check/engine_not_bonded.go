package check

import (
	"fmt"
	"math"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

// thinBond is how many times its continuous ampacity a bond may carry while
// the starter turns, which lasts seconds.
const thinBond = 3.0

var _ = define(Rule{
	ID:       "engine-not-bonded",
	Severity: diag.Danger,
	Title:    "The metal that carries a starter or an alternator has no heavy way back to the battery.",
	Why: "An engine on rubber mounts is an island. Without its own strap the starter's current returns through throttle, choke and shift cables, " +
		"sensor grounds and shields: cables smoke, ground wires melt, and the engine turns slowly if at all. " +
		"Bond it to the battery or to the bonded frame with a cable as heavy as the starter's. " +
		"A bond that is in the vehicle already and whose size is a guess is a warning.",
	Equation: "a conductor leads from the metal to the battery's negative post, and carries in crank at most 3 x its ampacity",
	Misses:   "Paint, rust and loose bolts under a ring.",
	Needs:    States,
	Bad: `metal   block
metal   frame
battery G1  cca 540A  grounds-to frame
starter M1  draws 160A  grounds-to block
fuse    F1  20A  from G1 6in
switch  S1  closed when crank
wire 1  G1.+  M1.B  2AWG   2ft
wire 2  G1.+  F1.1  14AWG  6in
wire 3  F1.2  S1.1  14AWG  2ft
wire 4  S1.2  M1.S  14AWG  2ft
`,
	Good: `metal   block
metal   frame
battery G1  cca 540A  grounds-to frame
starter M1  draws 160A  grounds-to block
fuse    F1  20A  from G1 6in
stud    E1  on block  M8
stud    E2  on frame  M8
switch  S1  closed when crank
wire 1  G1.+  M1.B  2AWG   2ft
wire 2  G1.+  F1.1  14AWG  6in
wire 3  F1.2  S1.1  14AWG  2ft
wire 4  S1.2  M1.S  14AWG  2ft
wire 5  E1    E2    2AWG   18in
`,
	Run: engineNotBonded,
})

func engineNotBonded(p *Pass) {
	told := map[*model.Metal]bool{}
	for _, d := range p.Model.Devices {
		metal := heavyReturn(d)
		if metal == nil || told[metal] {
			continue
		}
		if !p.bonded(d) {
			told[metal] = true
			p.Report(diag.Finding{
				At:      metal.At,
				Msg:     fmt.Sprintf("%s carries %s but no conductor joins it to the battery", metal.Name, d.Name),
				Detail:  "Add a strap or a ground cable as heavy as the starter cable, from a stud on it to the battery or to bonded metal.",
				Related: append([]diag.Related{{At: d.At, Msg: d.Name + " returns through it"}}, p.posts()...),
			})
			continue
		}
		p.thinBonds(metal, d, told)
	}
}

// posts names the negative posts of the batteries and the wires on them: where
// a bond has to lead.
func (p *Pass) posts() (list []diag.Related) {
	for _, d := range p.Model.Devices {
		for _, s := range d.Supplies() {
			if s.Battery {
				list = append(list, diag.Related{At: d.At, Msg: shown(d, s.Minus) + " is where it has to lead"})
				list = append(list, feedingWires(d, s.Minus)...)
			}
		}
	}
	return list
}

// heavyReturn gives the metal through which a starter or a machine that
// charges returns, nil for any other device.
func heavyReturn(d *model.Device) *model.Metal {
	if d.Metal == nil {
		return nil
	}
	for _, w := range d.Draws() {
		if w.Starter {
			return d.Metal
		}
	}
	for _, s := range d.Supplies() {
		if !s.Battery {
			return d.Metal
		}
	}
	return nil
}

// bonded reports whether conductors alone lead from a device's metal to the
// negative post of a battery.
func (p *Pass) bonded(d *model.Device) bool {
	t := pinOf(d, part.Metal)
	if t == nil {
		return false
	}
	for _, b := range p.Model.Devices {
		for _, s := range b.Supplies() {
			if minus := pinOf(b, s.Minus); s.Battery && minus != nil && p.Nets.Of[minus.ID] == p.Nets.Of[t.ID] {
				return true
			}
		}
	}
	return false
}

// thinBonds reports a wire that is the bond but far too thin for it.
func (p *Pass) thinBonds(metal *model.Metal, d *model.Device, told map[*model.Metal]bool) {
	for _, s := range states(p.Sizes.Hot) {
		if s.Step.Engine != part.Turning {
			continue
		}
		for _, w := range p.Sizes.Wires {
			amps := math.Abs(s.WireA[w.Wire.ID])
			carries, _ := gauge.Ampacity30(w.Conductor.Size, w.Conductor.Family)
			if !lands(w.Wire, metal) || amps <= thinBond*carries {
				continue
			}
			told[metal] = true
			f := diag.Finding{
				At: w.Wire.At,
				Msg: fmt.Sprintf("wire %s bonds %s and carries %.0f A in %s; %s may carry %.0f A, %.0f x its %.0f A", w.Wire.Number, metal.Name, amps, s.Step.Name,
					w.Conductor.Size.Name, thinBond*carries, thinBond, carries),
				Detail: "For the seconds of a start a bond may carry three times what it is good for all the time. Fit a strap as heavy as the starter cable beside it.",
				Values: []diag.Value{{Name: "current", Got: amps, Limit: thinBond * carries, Unit: "A", Bound: diag.AtMost}},
			}
			if assumedSize(w.Wire) {
				f.Severity, f.Detail = diag.Warning, "Its size is a guess: look it up and state it."
			}
			p.Report(f)
		}
	}
}

func lands(w *model.Wire, metal *model.Metal) bool {
	return w.From.Metal == metal || w.To.Metal == metal
}

// assumedSize reports whether a wire is in the vehicle already and nobody has
// said how thick it is.
func assumedSize(w *model.Wire) bool { return w.Existing && w.SizeAt == w.At }
