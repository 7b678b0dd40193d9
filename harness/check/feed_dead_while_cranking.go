package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

// deadBelowV is what a meter would call no volts: leakage and noise, no feed.
const deadBelowV = 1.0

var _ = define(Rule{
	ID:       "feed-dead-while-cranking",
	Severity: diag.Fault,
	Title:    "A load that has to work while the engine cranks has no volts then.",
	Why: "A key switch opens its accessory and run-only contacts while it stands at start. " +
		"A controller, a coil or a pump relay fed from such a contact is alive before and after, but dead just while the starter turns: " +
		"the engine turns over for ever and fires, if at all, as the key is let go. " +
		"Move the feed to a contact that is closed in both run and start.",
	Equation: "volts across the load in crank < 1 V, and more in another step",
	Misses:   "A load that never has volts is told of by load-without-feed, or by what commands it.",
	Needs:    Bonded,
	Bad: `battery   G1  cca 540A  grounds-to frame
starter   M1  draws 160A  grounds-to frame
fuse      F1  15A  from G1 6in
keyswitch S1
  off
  run    B ACC IGN
  gap    B ACC
  crank  B ST
module    A1
  IGN  feed 1A  when run, crank
  GND  ground
stud      E1  on frame  M6
wire 1  G1.+    F1.1    14AWG  6in
wire 2  F1.2    S1.B    14AWG  2ft
wire 3  S1.ACC  A1.IGN  18AWG  2ft
wire 4  A1.GND  E1      18AWG  2ft
wire 5  G1.+    M1.B    2AWG   2ft
wire 6  S1.ST   M1.S    14AWG  2ft
`,
	Good: `battery   G1  cca 540A  grounds-to frame
starter   M1  draws 160A  grounds-to frame
fuse      F1  15A  from G1 6in
keyswitch S1
  off
  run    B ACC IGN
  gap    B IGN
  crank  B IGN ST
module    A1
  IGN  feed 1A  when run, crank
  GND  ground
stud      E1  on frame  M6
wire 1  G1.+    F1.1    14AWG  6in
wire 2  F1.2    S1.B    14AWG  2ft
wire 3  S1.IGN  A1.IGN  18AWG  2ft
wire 4  A1.GND  E1      18AWG  2ft
wire 5  G1.+    M1.B    2AWG   2ft
wire 6  S1.ST   M1.S    14AWG  2ft
`,
	Run: feedDeadWhileCranking,
})

func feedDeadWhileCranking(p *Pass) {
	told := map[*model.Device]bool{}
	var dead []deadLoad
	p.eachDraw(func(d *model.Device, _ int, w part.Draw) {
		for _, s := range states(p.Sizes.Hot) {
			if s.Step.Engine == part.Turning && mustWork(w, s.Step.ID) && !told[d] {
				dead, told[d] = p.addDead(dead, s, d, w)
			}
		}
	})
	dead = p.deadOnOutputs(dead, told)
	for _, group := range p.byFeed(dead) {
		p.reportDead(group)
	}
}

// deadLoad is a load that has no volts in a step but has some in another.
type deadLoad struct {
	device *model.Device
	draw   part.Draw
	step   *solve.State
	volts  float64
	best   float64 // the most it has in any step without the starter
	alive  *solve.State
}

// addDead judges a load in a step and gives whether it is dead there.
func (p *Pass) addDead(list []deadLoad, s *solve.State, d *model.Device, w part.Draw) ([]deadLoad, bool) {
	volts, ok := feedV(s, d, w)
	best, alive := bestVolts(p.Sizes.Hot, d, w)
	if ok && volts >= deadBelowV || alive == nil {
		return list, false
	}
	return append(list, deadLoad{d, w, s, volts, best, alive}), true
}

// byFeed puts the loads that hang on one feed together: they have one cause.
func (p *Pass) byFeed(dead []deadLoad) [][]deadLoad {
	var groups [][]deadLoad
	index := map[[2]int]int{}
	for _, l := range dead {
		key := [2]int{p.netOf(l.device, l.draw.Plus), l.step.Step.ID}
		i, seen := index[key]
		if !seen || key[0] < 0 {
			i = len(groups)
			index[key] = i
			groups = append(groups, nil)
		}
		groups[i] = append(groups[i], l)
	}
	return groups
}

func (p *Pass) reportDead(group []deadLoad) {
	l := group[0]
	verb, others := "has", ""
	related := feedingWires(l.device, l.draw.Plus)
	for _, o := range group[1:] {
		verb = "have"
		others += ", " + shown(o.device, o.draw.Plus)
		related = append(related, diag.Related{At: o.draw.At, Msg: o.device.Name + " hangs on the same feed"})
	}
	related = append(related, p.openedOnFeed(l)...)
	p.Report(diag.Finding{
		At: l.draw.At,
		Msg: fmt.Sprintf("%s%s %s no volts in %s, but %s in %s", shown(l.device, l.draw.Plus), others, verb, l.step.Step.Name,
			quantity.Text(l.best, quantity.Voltage), l.alive.Step.Name),
		Detail:  "Feed it from a contact that the key keeps closed in run and in start.",
		Values:  []diag.Value{{Name: "volts in " + l.step.Step.Name, Got: l.volts, Limit: deadBelowV, Unit: "V", Bound: diag.AtLeast}},
		Related: related,
	})
}

// deadOnOutputs looks at what a live controller commands while the starter
// turns: the load or coil on that output needs its other side alive as well.
func (p *Pass) deadOnOutputs(dead []deadLoad, told map[*model.Device]bool) []deadLoad {
	at := p.drivers()
	for _, u := range p.uses() {
		if u.device.Kind.Drives != nil {
			continue
		}
		for _, pin := range []string{u.plus, u.minus} {
			for _, o := range at[p.netOf(u.device, pin)] {
				if !told[u.device] {
					dead, told[u.device] = p.deadOn(dead, u, o)
				}
			}
		}
	}
	return dead
}

func (p *Pass) deadOn(dead []deadLoad, u use, o driver) ([]deadLoad, bool) {
	w := part.Draw{Plus: u.plus, Minus: u.minus, EitherWay: true, At: u.at}
	for _, s := range states(p.Sizes.Hot) {
		if s.Step.Engine == part.Turning && o.Steps.Has(s.Step.ID) && p.alive(s, o.device) {
			return p.addDead(dead, s, u.device, w)
		}
	}
	return dead, false
}

// alive reports whether a controller works in a step.
func (p *Pass) alive(s *solve.State, d *model.Device) bool {
	if p.modules == nil {
		p.modules = map[*model.Device]int{}
		for i, r := range p.Sizes.Hot.Relays {
			if r.Kind == part.AliveState {
				p.modules[r.Device] = i
			}
		}
	}
	i, ok := p.modules[d]
	return ok && s.Relay[i].On
}

// mustWork reports whether a load has to be fed in a step: because its feed
// says so, or because it states volts that it needs then.
func mustWork(w part.Draw, step int) bool {
	if w.Works.Has(step) {
		return true
	}
	for _, n := range w.Needs {
		if n.Steps.Has(step) {
			return true
		}
	}
	return false
}

// bestVolts gives the most volts that a load has in any step without the
// starter; state is nil where it has none anywhere.
func bestVolts(h *solve.History, d *model.Device, w part.Draw) (best float64, state *solve.State) {
	for _, s := range states(h) {
		if v, ok := feedV(s, d, w); ok && !cranking(s) && v >= deadBelowV && v > best {
			best, state = v, s
		}
	}
	return best, state
}
