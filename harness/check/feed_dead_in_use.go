package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/harness/solve"
)

var _ = define(Rule{
	ID:       "feed-dead-in-use",
	Severity: diag.Fault,
	Title:    "A load has no volts in a step in which it has to work.",
	Why: "The draft says when a feed must work, or in which step a load needs its volts. A feed on the start line, on a contact of the key that is open in run, " +
		"or behind a switch that nobody has closed then is dead just when it is wanted. Move it to a contact that is closed in that step, " +
		"or say what the draft means: when it works, or when its switch is closed.",
	Equation: "volts across the load < 1 V in a step for which the draft asks for it, and more in another",
	Misses:   "Steps in which the starter turns: feed-dead-while-cranking. A load for which the draft does not say when it works. A load that has volts in no step: load-without-feed and load-never-on.",
	Needs:    Bonded,
	Bad: `battery G1  cca 540A  grounds-to frame
fuse    F1  5A  from G1 6in
switch  S1  closed when acc
module  A1
  IGN  feed 1A  when run
  GND  ground
stud    E1  on frame  M6
wire 1  G1.+    F1.1    6in
wire 2  F1.2    S1.1    2ft
wire 3  S1.2    A1.IGN  2ft
wire 4  A1.GND  E1      2ft
`,
	Good: `battery G1  cca 540A  grounds-to frame
fuse    F1  5A  from G1 6in
switch  S1  closed when run
module  A1
  IGN  feed 1A  when run
  GND  ground
stud    E1  on frame  M6
wire 1  G1.+    F1.1    6in
wire 2  F1.2    S1.1    2ft
wire 3  S1.2    A1.IGN  2ft
wire 4  A1.GND  E1      2ft
`,
	Run: feedDeadInUse,
})

func feedDeadInUse(p *Pass) {
	told := map[*model.Device]bool{}
	var dead []deadLoad
	p.eachDraw(func(d *model.Device, _ int, w part.Draw) {
		if told[d] || w.Starter || w.Coil || !p.asked(d, w) {
			return
		}
		for _, s := range states(p.Sizes.Hot) {
			if cranking(s) || s.Step.LastS > 0 || !mustWork(w, s.Step.ID) {
				continue
			}
			if volts, ok := feedV(s, d, w); !ok || volts < deadBelowV {
				if best, alive := bestOther(p.Sizes.Hot, s, d, w); alive != nil {
					dead, told[d] = append(dead, deadLoad{d, w, s, volts, best, alive}), true
				}
				return
			}
		}
	})
	for _, group := range p.byFeed(dead) {
		p.reportDeadInUse(group)
	}
}

// bestOther gives the most volts of a load in any other step; state is nil
// where it has none.
func bestOther(h *solve.History, not *solve.State, d *model.Device, w part.Draw) (best float64, state *solve.State) {
	for _, s := range states(h) {
		if v, ok := feedV(s, d, w); ok && s != not && v >= deadBelowV && v > best {
			best, state = v, s
		}
	}
	return best, state
}

func (p *Pass) reportDeadInUse(group []deadLoad) {
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
		Msg: fmt.Sprintf("%s%s %s no volts in %s, where the draft wants it to work, but %s in %s", shown(l.device, l.draw.Plus), others, verb,
			l.step.Step.Name, quantity.Text(l.best, quantity.Voltage), l.alive.Step.Name),
		Detail:  "Feed it from a contact that is closed then, or say when it works and when its switch is closed.",
		Values:  []diag.Value{{Name: "volts in " + l.step.Step.Name, Got: l.volts, Limit: deadBelowV, Unit: "V", Bound: diag.AtLeast}},
		Related: related,
	})
}
