package check

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

var _ = define(Rule{
	ID:       "alive-with-key-off",
	Severity: diag.Fault,
	Title:    "The ignition, the fuel pump or a controller stays alive when the key is turned off.",
	Why: "A second feed past the key keeps it alive at all times. A relay whose coil is fed from its own contact never lets go once it is in. " +
		"A fan that runs down is a generator: on the feed of a relay's coil it holds that relay in for seconds, and the engine runs on. " +
		"An alternator does so as long as the engine turns. The finding names what keeps it alive, and the way of the current.",
	Equation: "with the key off: volts at the load >= what it needs, and its current >= half its own; from running, with machines as sources",
	Misses:   "A motor of which the draft does not say what it gives back (coasts 60% 0.3ohm): it is listed as not judged. How long it lasts. A contact that is welded. Fuel that leaks.",
	Needs:    Bonded,
	Polar:    true,
	Bad: `battery   G1  cca 540A  grounds-to frame
fuse      F1  15A  from G1 6in
keyswitch S1
  off
  run  B IGN
relay     K1  suppress resistor
motor     M1  "Engine fan"  draws 8A 13.5V  coasts 70% 0.4ohm  grounds-to frame
module    A1
  IGN  feed 1A  above 7V  when run
  GND  ground
diode     V1  20A
stud      E1  on frame  M6
splice    J1
splice    J2
wire 1   G1.+    F1.1    6in
wire 2   F1.2    J1      1ft
wire 3   J1      S1.B    1ft
wire 4   J1      K1.30   1ft
wire 5   S1.IGN  V1.A    1ft
wire 6   V1.K    J2      1ft
wire 7   J2      M1.+    2ft
wire 8   J2      K1.86   1ft
wire 9   K1.85   E1      1ft
wire 10  K1.87   A1.IGN  1ft
wire 11  A1.GND  E1      1ft
`,
	Good: `battery   G1  cca 540A  grounds-to frame
fuse      F1  15A  from G1 6in
keyswitch S1
  off
  run  B IGN
relay     K1  suppress resistor
motor     M1  "Engine fan"  draws 8A 13.5V  coasts 70% 0.4ohm  grounds-to frame
module    A1
  IGN  feed 1A  above 7V  when run
  GND  ground
diode     V1  20A
stud      E1  on frame  M6
splice    J1
splice    J2
wire 1   G1.+    F1.1    6in
wire 2   F1.2    J1      1ft
wire 3   J1      S1.B    1ft
wire 4   J1      K1.30   1ft
wire 5   S1.IGN  J2      1ft
wire 6   J2      V1.A    1ft
wire 7   V1.K    M1.+    2ft
wire 8   J2      K1.86   1ft
wire 9   K1.85   E1      1ft
wire 10  K1.87   A1.IGN  1ft
wire 11  A1.GND  E1      1ft
`,
	Run: aliveWithKeyOff,
})

// halfOn is the share of its current from which a load is taken to work.
const halfOn = 0.5

func aliveWithKeyOff(p *Pass) {
	running := p.running()
	if running == nil {
		return
	}
	p.eachDraw(func(d *model.Device, i int, w part.Draw) {
		if !p.hasToStop(d, w) || !works(running, d, i, w, p.Model.SystemV) {
			return
		}
		if s, cause := p.keptAlive(d, i, w); s != nil {
			p.reportAlive(s, d, w, cause)
		}
	})
	p.notPlayed(running)
}

// hasToStop reports whether a load is one that stops with the key: critical,
// not said to work then, and not of a controller that goes on by itself.
func (p *Pass) hasToStop(d *model.Device, w part.Draw) bool {
	if !w.Critical || w.Asleep {
		return false
	}
	var off part.StepSet
	for i, s := range p.Model.Steps {
		if s.Key == "off" && !s.Added {
			off |= 1 << uint(i)
		}
	}
	for _, o := range d.Drives() {
		if o.Steps&off != 0 {
			return false
		}
	}
	return w.Works&off == 0
}

// works reports whether a load has its volts and at least half its current.
func works(s *solve.State, d *model.Device, i int, w part.Draw, systemV float64) bool {
	volts, ok := feedV(s, d, w)
	return ok && volts >= leastAlive(w, systemV) && math.Abs(s.DrawA.Of(d, i)) >= halfOn*w.Amps
}

// keptAlive finds the first state with the key off in which a load works, and
// says what does it.
func (p *Pass) keptAlive(d *model.Device, i int, w part.Draw) (*solve.State, string) {
	alive := func(s *solve.State) bool { return s != nil && works(s, d, i, w, p.Model.SystemV) }
	before := true
	for _, s := range states(p.Sizes.Hot) {
		if s.Step.Key != "off" || s.Step.Added {
			before = before && s.Step.Key == "off"
			continue
		}
		if !alive(s) {
			continue
		}
		if before {
			if d.Kind.Drives != nil && (w.Works == part.NoSteps || len(d.Drives()) == 0) {
				return nil, "" // it may be meant to: the drain tells
			}
			return s, "its feed does not pass the key"
		}
		return p.heldIn(s, d, w)
	}
	down := p.ranDown()
	if !alive(down) {
		return nil, ""
	}
	if s := p.runDown(); alive(s) {
		return p.heldIn(s, d, w)
	}
	for _, m := range p.machines() {
		if s := p.runDown(m); alive(s) {
			if p.byPilot(m, d) {
				return nil, "" // engine-runs-on tells
			}
			return down, m.Name + " feeds it back while it runs down"
		}
	}
	return down, "machines that run down feed it back together"
}

// byPilot reports whether a machine's pilot terminal keeps a device alive.
func (p *Pass) byPilot(m, d *model.Device) bool {
	for _, x := range m.Supplies() {
		if x.Pilot != "" && slices.ContainsFunc(p.keptFed(p.running(), m, x), func(k kept) bool { return k.device == d }) {
			return true
		}
	}
	return false
}

// heldIn names the relays on the way that are in, or the loads through which
// the current comes; where there is neither, a switch is closed that the draft
// says is closed then, and there is nothing to tell.
func (p *Pass) heldIn(s *solve.State, d *model.Device, w part.Draw) (*solve.State, string) {
	var relays, loads []string
	for _, h := range p.wayTo(s, p.netOf(d, w.Plus)) {
		switch {
		case h.load:
			loads = append(loads, h.device.Name)
		case len(coils(h.device)) > 0:
			relays = append(relays, h.device.Name)
		}
	}
	switch {
	case len(relays) > 0:
		return s, strings.Join(relays, ", ") + " is held in"
	case len(loads) > 0:
		return s, "fed through " + strings.Join(loads, ", ")
	}
	return nil, ""
}

func (p *Pass) reportAlive(s *solve.State, d *model.Device, w part.Draw, cause string) {
	volts, _ := feedV(s, d, w)
	way := p.wayTo(s, p.netOf(d, w.Plus))
	f := diag.Finding{
		At:      w.At,
		Msg:     fmt.Sprintf("%s stays alive with the key off, at %s: %s", shown(d, w.Plus), quantity.Text(volts, quantity.Voltage), cause),
		Detail:  "The engine may run on, or the load stays on. Feed it, or the coil of its relay, by way of the key alone.",
		Values:  []diag.Value{{Name: "volts with the key off", Got: volts, Limit: leastAlive(w, p.Model.SystemV), Unit: "V", Bound: diag.AtMost}},
		Related: append(p.along(way), p.cameBy(s, d, w.Plus, w.Amps)...),
	}
	if len(way) > 0 {
		f.Detail = "The current comes by " + p.told(way) + ". " + f.Detail
	}
	p.Report(f)
}
