package route

import (
	"fmt"
	"strings"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// slackM is how much a stated length may fall short of its way before it is
// a finding: figures are written to half an inch at best.
const slackM = 0.005

// Measure gives every wire its way and length. A stated length wins. Without
// one a wire is as long as the shortest way through the legs (or the one by
// the places it is said to pass), plus a tail at each end that lands on a
// device or stud, none at a splice. Where the draft has no legs at all, or
// none that lead from end to end, 10 ft are assumed and Known is false.
func Measure(m *model.Model) *Routes {
	r := &Routes{Paths: make([]Path, len(m.Wires))}
	n := newNetwork(m)
	lost := map[[2]spotKey]*lostWay{}
	var order []*lostWay
	for _, w := range m.Wires {
		p := r.measure(n, w)
		r.Paths[w.ID] = p
		if p.Known || len(m.Legs) == 0 {
			continue
		}
		key := [2]spotKey{keyOf(w.From.Device.Spot), keyOf(w.To.Device.Spot)}
		if l := lost[key]; l != nil {
			l.more++
			continue
		}
		lost[key] = &lostWay{wire: w}
		order = append(order, lost[key])
	}
	for _, l := range order {
		r.Findings.Add(l.finding())
	}
	r.Findings.Sort()
	return r
}

// measure gives one wire its path and reports a length that can't reach.
func (r *Routes) measure(n *network, w *model.Wire) Path {
	a, b := w.From.Device.Spot, w.To.Device.Spot
	if w.Role == model.Strap {
		p := Path{LengthM: w.LengthM, Known: true, Given: true, Places: []*model.Place{a.Place, b.Place}}
		if !(p.LengthM > 0) {
			p.LengthM, p.Known, p.Given = model.DefaultLengthM, false, false
		}
		return p.heated()
	}
	way := n.through(a, w.Via, b)
	p := Path{Legs: way.stretches, Places: way.places, TailsM: tailM(w.From) + tailM(w.To), Known: way.ok && len(n.m.Legs) > 0}
	for _, s := range p.Legs {
		p.Assumed = p.Assumed || !s.Leg.Known
	}
	switch {
	case w.LengthM > 0:
		p.LengthM, p.Given, p.Known = w.LengthM, true, true
		if way.ok && !w.Existing && w.LengthM < way.lengthM-slackM {
			r.Findings.Add(tooShort(n.m, w, way))
		}
	case p.Known:
		p.LengthM = way.lengthM + p.TailsM
	default:
		p.LengthM = model.DefaultLengthM
	}
	return p.heated()
}

// heated fills in what the places on the way ask of the wire.
func (p Path) heated() Path {
	for i, place := range p.Places {
		if i == 0 || place.AmbientC > p.HotC {
			p.HotC = place.AmbientC
		}
		p.Wet = p.Wet || place.Wet
	}
	return p
}

// tailM is the length that a wire needs at an end, m.
func tailM(t *model.Terminal) float64 {
	if t.Landing == part.Joint {
		return gauge.SpliceTailM
	}
	return gauge.TailM
}

func noun(w *model.Wire) string {
	return [...]string{model.Built: "wire ", model.Lead: "lead ", model.Strap: "strap "}[w.Role] + w.Number
}

func tooShort(m *model.Model, w *model.Wire, way *way) diag.Finding {
	f := diag.Finding{
		Rule: "wire-shorter-than-path", Severity: diag.Warning, At: w.LengthAt,
		Msg:    fmt.Sprintf("%s is %s long but its way is %s", noun(w), quantity.LengthText(w.LengthM, m.Metric), quantity.LengthText(way.lengthM, m.Metric)),
		Values: []diag.Value{{Name: "length of " + noun(w), Got: w.LengthM, Limit: way.lengthM, Unit: "m", Bound: diag.AtLeast}},
	}
	names := make([]string, len(way.places))
	for i, p := range way.places {
		names[i] = p.Name
	}
	f.Detail = "The way runs by " + strings.Join(names, ", ") + "; tails at the ends come on top."
	if w.Role == model.Lead {
		f.Severity = diag.Fault
		f.Detail += " A lead comes with its device and can't be made longer."
	}
	for _, s := range way.stretches {
		f.Related = append(f.Related, diag.Related{At: s.Leg.At, Msg: "passes " + s.Leg.Name})
	}
	return f
}

// lostWay is a pair of spots that no legs join, at the first wire between them.
type lostWay struct {
	wire *model.Wire
	more int
}

func (l *lostWay) finding() diag.Finding {
	w := l.wire
	msg := fmt.Sprintf("no legs lead from %s to %s for %s", w.From.Device.Spot.Place.Name, w.To.Device.Spot.Place.Name, noun(w))
	if l.more > 0 {
		msg += fmt.Sprintf(" and %d more", l.more)
	}
	return diag.Finding{
		Rule: "no-way-between-places", Severity: diag.Fault, At: w.At, Msg: msg,
		Detail: "10 ft are assumed. Say the legs between the two places, or give the wire its length.",
	}
}
