package check

import (
	"fmt"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

var _ = define(Rule{
	ID:       "load-without-return",
	Severity: diag.Fault,
	Title:    "A load has no way back to the battery.",
	Why: "Current needs a way back as much as a way in. A forgotten ground wire, or a ground on metal that nothing joins to the battery, " +
		"leaves a load dead, or worse: it finds its way back through another load, a cable sheath or a sensor wire.",
	Equation: "from the load's return there is a way, through any contact or output as if closed, to the negative post of a battery",
	Misses:   "A way back that exists but is poor: drop-over-limit judges that.",
	Needs:    Model,
	Run:      func(p *Pass) { p.unreached(false) },
})

var _ = define(Rule{
	ID:       "load-without-feed",
	Severity: diag.Fault,
	Title:    "No source can reach a load.",
	Why: "Whatever is switched on, no way leads from a battery or an alternator to this load. " +
		"Usually a wire is missing, ends at the wrong terminal, or a plug half is not wired through.",
	Equation: "from a source there is a way, through any contact or output as if closed, to the load's feed",
	Misses:   "A way that exists but is never closed in any step.",
	Needs:    Model,
	Run:      func(p *Pass) { p.unreached(true) },
})

// unreached reports the loads that no source reaches (feed) or that reach no
// battery (return). A load with no wire at all is told of once, by its feed.
func (p *Pass) unreached(feed bool) {
	r := p.reach()
	p.eachDraw(func(d *model.Device, i int, w part.Draw) {
		pin, ok, msg := w.Minus, r.minus, "%s has no way back to the battery"
		if feed {
			pin, ok, msg = w.Plus, r.plus, "no battery and no alternator reaches %s"
		}
		t := pinOf(d, pin)
		if t == nil || ok[p.Nets.Of[t.ID]] || !p.inUse(d, w, feed) {
			return
		}
		detail := "Nothing is wired to it."
		if len(t.Ends) > 0 {
			detail = fmt.Sprintf("Wire %s lands there; follow it to where it ends.", t.Ends[0].Wire.Number)
		}
		p.Report(diag.Finding{At: w.At, Msg: fmt.Sprintf(msg, shown(d, pin)), Detail: detail, Related: feedingWires(d, pin)})
	})
}

// inUse reports whether a load is to be judged on one side: where the other
// side is wired, or for the feed, where nothing is wired at all. An optional
// terminal that stays empty is no mistake.
func (p *Pass) inUse(d *model.Device, w part.Draw, feed bool) bool {
	plus, minus := wiredAt(d, w.Plus), wiredAt(d, w.Minus)
	if feed {
		t := pinOf(d, w.Plus)
		return plus || !d.Pins[t.Pin].Quiet
	}
	return plus || minus && !feed && anyWire(d)
}

func anyWire(d *model.Device) bool {
	for _, t := range d.Terminals {
		if len(t.Ends) > 0 || len(t.Bus) > 0 {
			return true
		}
	}
	return false
}
