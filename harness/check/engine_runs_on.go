package check

import (
	"fmt"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

var _ = define(Rule{
	ID:       "engine-runs-on",
	Severity: diag.Fault,
	Title:    "An alternator's charge lamp terminal feeds the ignition or the controller when the key is turned off.",
	Why: "While it charges, D+ stands at the volts of its output. Joined to the switched feed without a lamp or a diode between, it feeds that circuit backwards: " +
		"the key is off, the controller and the ignition stay alive, and the engine runs on. " +
		"Put the charge lamp or a diode between them, its bar towards the alternator. A resistor does as well if it lets through too little for the load.",
	Equation: "setpoint - I R, by the ways that stay closed with the key's contacts open, < the volts that keep the load alive",
	Misses:   "A charge lamp of so many watts that its current alone keeps a small load alive..",
	Needs:    Bonded,
	Bad: `battery    G1  cca 540A  grounds-to frame
alternator G2  60A  setpoint 14.3V  grounds-to frame
fuse       F1  80A  bolt-down  from G1 6in
fuse       F2  20A  from G1 6in
keyswitch  S1
  off
  run  B IGN
module     A1
  IGN  feed 1A  above 7V  when run
  GND  ground
stud       E1  on frame  M6
splice     J1
wire 1  G1.+    F1.1    6AWG   6in
wire 2  F1.2    G2.B+   4AWG   2ft
wire 3  G1.+    F2.1    12AWG  6in
wire 4  F2.2    S1.B    14AWG  2ft
wire 5  S1.IGN  J1      14AWG  2ft
wire 6  J1      A1.IGN  14AWG  1ft
wire 7  J1      G2.D+   14AWG  3ft
wire 8  A1.GND  E1      14AWG  2ft
`,
	Good: `battery    G1  cca 540A  grounds-to frame
alternator G2  60A  setpoint 14.3V  grounds-to frame
fuse       F1  80A  bolt-down  from G1 6in
fuse       F2  20A  from G1 6in
keyswitch  S1
  off
  run  B IGN
module     A1
  IGN  feed 1A  above 7V  when run
  GND  ground
lamp       P1  "Charge"  2W
stud       E1  on frame  M6
splice     J1
wire 1  G1.+    F1.1    6AWG   6in
wire 2  F1.2    G2.B+   4AWG   2ft
wire 3  G1.+    F2.1    12AWG  6in
wire 4  F2.2    S1.B    14AWG  2ft
wire 5  S1.IGN  J1      14AWG  2ft
wire 6  J1      A1.IGN  14AWG  1ft
wire 7  J1      P1.1    14AWG  2ft
wire 9  P1.2    G2.D+   14AWG  3ft
wire 8  A1.GND  E1      14AWG  2ft
`,
	Run: engineRunsOn,
})

func engineRunsOn(p *Pass) {
	i := slices.IndexFunc(states(p.Sizes.Hot), func(s *solve.State) bool { return s.Step.Engine == part.Running && !s.Step.Added })
	if i < 0 {
		return
	}
	running := states(p.Sizes.Hot)[i]
	for _, d := range p.Model.Devices {
		for _, s := range d.Supplies() {
			if s.Pilot != "" && len(pinOf(d, s.Pilot).Ends) > 0 && wiredAt(d, s.Plus) {
				p.reportRunsOn(d, s, p.keptFed(running, d, s))
			}
		}
	}
}

// kept is a load that stays alive, with the ohms on the way to it.
type kept struct {
	device *model.Device
	draw   part.Draw
	ohm    float64
}

// keptFed lists what a machine's pilot terminal keeps alive with the key off.
func (p *Pass) keptFed(running *solve.State, d *model.Device, s part.Supply) []kept {
	ohms := p.fedBack(running, p.netOf(d, s.Pilot))
	var list []kept
	p.eachDraw(func(o *model.Device, _ int, w part.Draw) {
		ohm, fed := ohms[p.netOf(o, w.Plus)]
		stops := w.Works != part.NoSteps && !w.Works.Has(offStep(p.Model)) || w.Critical
		if fed && o != d && stops && !w.Asleep && s.SetpointV-w.Amps*ohm >= leastAlive(w, p.Model.SystemV) {
			list = append(list, kept{o, w, ohm})
		}
	})
	return list
}

// offStep is the step with the key off before anything else.
func offStep(m *model.Model) int {
	return slices.IndexFunc(m.Steps, func(s model.Step) bool { return s.Key == "off" && s.Engine == part.Still })
}

// leastAlive is the fewest volts that a load states to need, or half of the system's.
func leastAlive(w part.Draw, systemV float64) float64 {
	least := systemV / 2
	for i, n := range w.Needs {
		if i == 0 || n.Volts < least {
			least = n.Volts
		}
	}
	return least
}

// fedBack gives the nets that are fed from one net with the contacts of the
// key open and the others as they stand in a step, each with the ohms of the
// resistors on the way.
func (p *Pass) fedBack(s *solve.State, from int) map[int]float64 {
	g := p.graph()
	ohms := map[int]float64{from: 0}
	for todo := []int{from}; len(todo) > 0; {
		at := todo[0]
		todo = todo[1:]
		for _, w := range g.on[at] {
			ohm, open := p.staysOpen(s, w, at)
			if open || w.field || w.to < 0 || g.sources[w.to] || g.grounds[w.to] {
				continue
			}
			if known, seen := ohms[w.to]; !seen || ohms[at]+ohm < known {
				ohms[w.to] = ohms[at] + ohm
				todo = append(todo, w.to)
			}
		}
	}
	return ohms
}

// staysOpen tells whether a way is a contact that is open with the key off, and
// else what resistor it is.
func (p *Pass) staysOpen(s *solve.State, w way, from int) (ohm float64, open bool) {
	joins := func(a, b string) bool {
		na, nb := p.netOf(w.device, a), p.netOf(w.device, b)
		return na == from && nb == w.to || na == w.to && nb == from
	}
	for i, c := range w.device.Switches() {
		if joins(c.A, c.B) {
			return 0, c.By == "key" || !closedIn(s, w.device, i, c)
		}
	}
	for _, x := range w.device.Passes() {
		if joins(x.A, x.B) {
			return x.Ohm, false
		}
	}
	return 0, w.output && len(w.device.Drives()) == 0
}

func (p *Pass) reportRunsOn(d *model.Device, s part.Supply, list []kept) {
	if len(list) == 0 {
		return
	}
	var names []string
	related := feedingWires(d, s.Pilot)
	for _, k := range list {
		names = append(names, shown(k.device, k.draw.Plus))
		related = append(related, diag.Related{At: k.draw.At, Msg: k.device.Name + " stays alive"})
	}
	if n := len(names); n > mostNamed {
		names = append(names[:mostNamed], fmt.Sprintf("%d more", n-mostNamed))
	}
	first := list[0]
	volts := s.SetpointV - first.draw.Amps*first.ohm
	p.Report(diag.Finding{
		At: d.At,
		Msg: fmt.Sprintf("%s keeps %s alive with the key off, at %s: the engine runs on", shown(d, s.Pilot), strings.Join(names, ", "),
			quantity.Text(volts, quantity.Voltage)),
		Detail:  "Put the charge lamp, or a diode with its bar towards the alternator, between them.",
		Values:  []diag.Value{{Name: "volts with the key off", Got: volts, Limit: leastAlive(first.draw, p.Model.SystemV), Unit: "V", Bound: diag.AtMost}},
		Related: related,
	})
}
