package check

import (
	"fmt"
	"math"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

var _ = define(Rule{
	ID:       "unprotected-wire",
	Severity: diag.Danger,
	Title:    "A wire can be fed without any fuse between it and the battery.",
	Why: "A battery gives hundreds of amperes into a chafed wire, and without a fuse nothing stops them: the loom burns. " +
		"Only the starter's own cable goes without, since it carries as much as any fuse would have to. " +
		"The short wire from the battery to the first fuse is allowed as far as the profile says; " +
		"on the road a longer one is a note, on a boat a fault. A charge cable without a fuse is common on the road and a warning.",
	Equation: "on every way from a battery to the wire there is a fuse; length ahead of the first one <= 7 in",
	Figures:  []string{"abyc-feed", "cfr-183-455-place"},
	Misses:   "Sheathing, which allows a longer unprotected length in some rule-books.",
	Needs:    States,
	Run:      unprotectedWire,
})

func unprotectedWire(p *Pass) {
	for _, w := range p.Sizes.Wires {
		g := p.Sizes.Guards[w.Wire.ID]
		if !math.IsInf(g.RatedA, 1) || w.Wire.Role == model.Strap || starterCable(w.Wire) {
			continue
		}
		fuse := firstFuse(w.Wire)
		switch {
		case fuse != nil:
			p.reportDistance(w, fuse)
		case chargeCable(w.Wire):
			p.Report(diag.Finding{
				Severity: diag.Warning, At: w.Wire.At,
				Msg:    fmt.Sprintf("charge cable %s has no fuse between it and the battery", w.Wire.Number),
				Detail: "Many road vehicles run it so; a bolt-down fuse at the battery end protects it against a chafed cable.",
			})
		default:
			p.Report(diag.Finding{
				At:     w.Wire.At,
				Msg:    fmt.Sprintf("wire %s, %s to %s, can be fed from %s without a fuse", w.Wire.Number, w.Wire.From.Shown, w.Wire.To.Shown, g.Source.Name),
				Detail: "Put a fuse where its current leaves the battery, no larger than the wire carries.",
			})
		}
	}
}

// reportDistance judges the wire from the battery to the first fuse.
func (p *Pass) reportDistance(w size.Wire, fuse *model.Device) {
	length := w.Conductor.LengthM
	if fuse.FromM > 0 {
		length = fuse.FromM
	}
	if length <= p.Profile.FirstFuseM+1e-9 {
		return
	}
	sev := diag.Note
	if p.Profile.NearMust {
		sev = diag.Fault
	}
	p.Report(diag.Finding{
		Severity: sev, At: w.Wire.At,
		Msg: fmt.Sprintf("%s of wire %s lie ahead of %s, the first fuse; %s is the figure to keep", quantity.LengthText(length, p.Model.Metric),
			w.Wire.Number, fuse.Name, quantity.LengthText(p.Profile.FirstFuseM, p.Model.Metric)),
		Detail: "Move the fuse nearer to the battery, or run the wire in its own sheath away from metal.",
		Values: []diag.Value{{Name: "unprotected length", Got: length, Limit: p.Profile.FirstFuseM, Unit: "m", Bound: diag.AtMost}},
	})
}

// starterCable reports whether a wire leads straight from a source, or
// through a battery switch, to a starter's supply terminal.
func starterCable(w *model.Wire) bool {
	return leadsTo(w, takesStart, func(t *model.Terminal) bool {
		return isSupply(t) || t.Device.Kind.Switches != nil
	})
}

// chargeCable reports whether a wire leads from a machine that charges.
func chargeCable(w *model.Wire) bool {
	return leadsTo(w, func(t *model.Terminal) bool { return isSupply(t) && !isBattery(t) }, func(*model.Terminal) bool { return true })
}

func leadsTo(w *model.Wire, one, other func(*model.Terminal) bool) bool {
	return one(w.From) && other(w.To) || one(w.To) && other(w.From)
}

func takesStart(t *model.Terminal) bool {
	if t.Device.Kind.Draws == nil {
		return false
	}
	for _, d := range t.Device.Kind.Draws(t.Device.Device) {
		if d.Starter && d.Plus == t.Name {
			return true
		}
	}
	return false
}

func isSupply(t *model.Terminal) bool {
	if t.Device.Kind.Supplies == nil {
		return false
	}
	for _, s := range t.Device.Kind.Supplies(t.Device.Device) {
		if s.Plus == t.Name {
			return true
		}
	}
	return false
}

func isBattery(t *model.Terminal) bool {
	for _, s := range t.Device.Kind.Supplies(t.Device.Device) {
		if s.Battery && s.Plus == t.Name {
			return true
		}
	}
	return false
}

// firstFuse gives the protective element that a wire from a battery or from a
// starter's stud leads to, nil for any other wire.
func firstFuse(w *model.Wire) *model.Device {
	for _, end := range [][2]*model.Terminal{{w.From, w.To}, {w.To, w.From}} {
		near, far := end[0], end[1]
		source := isSupply(near) && isBattery(near) || takesStart(near)
		if source && far.Device.Kind.Protects != nil {
			return far.Device
		}
	}
	return nil
}
