package size

import (
	"math"
	"slices"

	"legwork/gauge"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// Pull is a starter's solenoid at the moment it pulls in: both windings draw,
// and what is left at its terminal has to close it.
type Pull struct {
	Device *model.Device
	Draw   int // of the solenoid's windings
	Step   *model.Step
	Amps   float64 // both windings
	Volts  float64 // across it at that moment
	LeastV float64 // closes it surely, its coil as hot as its place
	Wires  []*model.Wire
	posts  float64 // volts of the battery's posts at that moment
	flows  []flow
	fuses  []fuseKey
}

func (p *Pull) loss() *loss {
	return &loss{dropV: p.posts - p.Volts, limitV: p.posts - p.LeastV, flows: p.flows}
}

// pulls lists the solenoids that are asked to pull in, in the steps in which
// the starter is still locked.
func (c *chooser) pulls() []Pull {
	var list []Pull
	for i, r := range c.history.Relays {
		if r.Kind != part.SolenoidState || len(r.Watch) == 0 {
			continue
		}
		for _, s := range c.history.States {
			if s.Skipped == "" && s.Step.Engine == part.Locked && s.Relay[i].Asked && s.Relay[i].PullV > 0 {
				if p, ok := c.pullOf(r, s, s.Relay[i]); ok {
					list = append(list, p)
				}
			}
		}
	}
	return list
}

// pullOf follows the current of one pull; ok is false where it can't be followed.
func (c *chooser) pullOf(r solve.Relay, s *solve.State, now solve.RelayState) (p Pull, ok bool) {
	at := r.Watch[0]
	plus, minus := pinOrMetal(c.m, r.Device, at.Plus), pinOrMetal(c.m, r.Device, at.Minus)
	for i, w := range r.Device.Draws() {
		if w.Coil && w.Plus == at.Plus && w.InrushA > 0 && w.RatedV > 0 {
			p = Pull{Device: r.Device, Draw: i, Step: s.Step, Volts: now.PullV, LeastV: now.InAboveV, Amps: w.InrushA * now.PullV / w.RatedV}
		}
	}
	if p.Device == nil || plus == nil || minus == nil {
		return p, false
	}
	w, ok := c.waysTo(s.Step.ID, plus, minus)
	if !ok {
		return p, false
	}
	p.flows = w.out.way(c.tracer.point[plus.ID], nil)
	p.flows = w.back.way(c.tracer.point[minus.ID], p.flows)
	note := func(e *edge, _ int) {
		if e.sort == fuseEdge {
			p.fuses = append(p.fuses, fuseKey{e.device, e.index})
		}
	}
	w.out.walk(c.tracer.point[plus.ID], note)
	w.back.walk(c.tracer.point[minus.ID], note)
	for i := range p.flows {
		p.flows[i].amps = p.Amps
		p.Wires = append(p.Wires, p.flows[i].wire)
	}
	p.posts = math.Max(gauge.CrankEMF*c.m.SystemV/12-p.Amps*w.bank.ohm, p.Volts)
	return p, true
}

// repull finds the currents of the pulls in the last play, by wire ID.
func (c *chooser) repull() {
	c.pulled = c.pulls()
	c.pullA = make([]float64, len(c.m.Wires))
	for _, p := range c.pulled {
		for _, w := range p.Wires {
			c.pullA[w.ID] = math.Max(c.pullA[w.ID], p.Amps)
		}
	}
}

// pullHeat fills in what a start asks of a wire: its pull may last as long as
// the starter is held in, when the contact does not close. A starter's own
// cable is no matter of it.
func (c *chooser) pullHeat(k *gauge.WireCase, w *model.Wire) {
	if a := c.pullA[w.ID]; a > 0 && !c.starter[w.ID] {
		k.StartA, k.StartS = a, gauge.CrankAttemptS
	}
}

// startThrough gives the start that flows through a protective element: the
// largest pull of a solenoid, held in as long as a starter is.
func (c *chooser) startThrough(d *model.Device, index int) (s gauge.PullIn) {
	for _, p := range c.pulled {
		if p.Amps > s.FirstA && slices.Contains(p.fuses, fuseKey{d, index}) {
			s = gauge.PullIn{FirstA: p.Amps, FirstS: gauge.CrankAttemptS, HoldA: p.Device.Draws()[p.Draw].Amps}
		}
	}
	return s
}
