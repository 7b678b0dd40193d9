package diagram

import (
	"math"
	"strings"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
	"legwork/render/scene"
)

// title names the step and the case that the figures belong to.
func (k *moment) title() string {
	out := "State in step " + k.st.Step.Name
	if l := k.st.Step.Label; l != "" && l != k.st.Step.Name {
		out += " (" + l + ")"
	}
	return out + ": " + k.caseText()
}

func (k *moment) caseText() string {
	switch {
	case k.h.Case.Corner == part.ColdStart:
		return "cold start"
	case k.h.Case.Grade == part.Nominal:
		return "hot, usual figures"
	}
	return "hot, sure figures"
}

// inStep is what the name of a sheet says of the step.
func (p *plan) inStep() string {
	if p.now == nil {
		return ""
	}
	return " in step " + p.now.st.Step.Name
}

func (p *plan) styles() []scene.Style {
	if p.now == nil {
		return styles()
	}
	return append(styles(), stateStyles()...)
}

// paint draws a wire by its state, on white that cuts what it crosses.
func (k *moment) paint(g *scene.Node, w *model.Wire, p, halo []float64) {
	class := k.classOf(w)
	look, n := lookOf(class), string(class)
	g.Title += "; " + look.says
	if a := k.amps(w); math.Abs(a) >= flowA {
		from, to := w.From, w.To
		if a < 0 {
			from, to = to, from
		}
		g.Title += ", " + quantity.Text(math.Abs(a), quantity.Current) + " to " + shown(to) + " from " + shown(from)
	}
	g.Data = append(g.Data, scene.Attr{Name: "state", Value: n})
	g.Add(scene.Line("halo hs-"+n, halo...), scene.Line("case ks-"+n, p...), scene.Line("ins s-"+n, p...))
	if look.core > 0 {
		g.Add(scene.Line("ins rs-"+n, p...))
	}
}

// railClass tells the state of a rail by the first of its points with volts.
func (k *moment) railClass(j *joint) (class lineClass, volts float64) {
	for _, t := range j.terms {
		v, ok := k.volts(t)
		switch {
		case !ok:
		case k.minus[t.ID] && !k.plus[t.ID]:
			return gndLine, v
		case v >= nearV && k.plus[t.ID]:
			return liveLine, v
		case v >= nearV:
			return pullLine, v
		}
	}
	return deadLine, 0
}

func (k *moment) railText(j *joint) string {
	class, v := k.railClass(j)
	if look := lookOf(class); look.off != "" {
		return look.off
	}
	return quantity.Text(v, quantity.Voltage)
}

// railPaint is the class that a rail gets beside its own: a live one stays
// whole, as current may be taken from it anywhere.
func (p *plan) railPaint(j *joint) string {
	if p.now == nil {
		return ""
	}
	class, _ := p.now.railClass(j)
	if class == liveLine {
		class = flowLine
	}
	return " j-" + string(class)
}

// stateOf is the line under the designation of a load: the volts across it, or
// off; under that of a coil where its contact moves.
func (p *plan) stateOf(it *item) string {
	if p.now == nil {
		return ""
	}
	if it.sub == "coil" {
		if on, ok := p.now.moved(it.dev); ok && on {
			return "in"
		}
		return "out"
	}
	draws := it.dev.Draws()
	if len(draws) == 0 || it.dev.Kind.Switches != nil && it.mate != nil {
		return ""
	}
	for i, q := range draws {
		plus, minus := it.dev.Terminal(q.Plus), it.dev.Terminal(q.Minus)
		if math.Abs(p.now.st.DrawA.Of(it.dev, i)) < flowA || plus == nil || minus == nil {
			continue
		}
		if r := p.now.st.Across(plus, minus); r.OK {
			return "on " + quantity.Text(math.Abs(r.Volts), quantity.Voltage)
		}
		return "on"
	}
	if it.form.row == part.SensorRow {
		return "" // what it draws is too little to tell, not nothing
	}
	return "off"
}

// outputText says whether the output at a unit's terminal is on.
func (p *plan) outputText(it *item) string {
	if p.now == nil {
		return ""
	}
	for _, o := range it.dev.Drives() {
		if o.Pin == it.sub {
			if p.now.given(it.dev, o.Pin) {
				return "on"
			}
			return "off"
		}
	}
	return ""
}

// firstFit gives the first text that has room, or else the last.
func firstFit(room float64, texts ...string) string {
	for _, t := range texts {
		if t = strings.TrimSpace(t); small(t).width() <= room {
			return t
		}
	}
	return texts[len(texts)-1]
}

// isEmptyRest reports whether the terminal is the rest side of a change-over
// contact with nothing on it: an empty socket, which needs no circle.
func isEmptyRest(t *model.Terminal) bool {
	if attached(t) {
		return false
	}
	for _, q := range t.Device.Switches() {
		if q.AtRest && q.B == t.Name {
			return true
		}
	}
	return false
}
