package diagram

import (
	"math"

	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/render/scene"
)

// What the state view tells apart.
const (
	// flowA is the current from which a wire is drawn as one in which current
	// flows: under a small lamp's, over what a sleeping controller draws.
	flowA = 0.01
	// nearV is the volts under which a point counts as one without volts.
	nearV = 1.0
)

// lineClass is the state of a conductor in one step. Whole lines carry
// current, broken ones none; double lines are joined with battery minus.
type lineClass string

const (
	flowLine lineClass = "flow" // current flows, on the side of the supply
	backLine lineClass = "back" // current flows back to battery minus
	liveLine lineClass = "live" // joined with battery plus, no current
	pullLine lineClass = "pull" // has volts through a load or a unit, no current
	gndLine  lineClass = "gnd"  // joined with battery minus, no current
	deadLine lineClass = "dead" // no source: floats, or lies at 0 V through a load
)

// classLook is how a class is drawn: mm. The colors are of a set that people
// with color-blindness tell apart (Okabe and Ito, from memory; the violet is
// ours); widths and dashes say the same without them.
type classLook struct {
	class     lineClass
	paint     string
	width     float64
	core      float64 // white line in the middle; 0: none
	dash      []float64
	says, off string // words of the key; at a wire instead of a figure
}

var classLooks = []classLook{
	{flowLine, "#d55e00", 1.7, 0, nil, "current, from 10 mA", ""},
	{backLine, "#0072b2", 2.0, 0.8, nil, "current back to battery minus", ""},
	{liveLine, "#d55e00", 1.1, 0, []float64{4, 1.2}, "live, no current", ""},
	{pullLine, "#a5417f", 0.8, 0, []float64{3.9, 0.8, 0.9, 0.8}, "volts by a load or unit, no current", ""},
	{gndLine, "#0072b2", 1.3, 0.6, []float64{4, 1.2}, "joined with battery minus, no current", "ground"},
	{deadLine, "#7d8790", 0.5, 0, []float64{1.2, 1}, "no source: dead or floating", "no volts"},
}

func lookOf(k lineClass) classLook {
	for _, l := range classLooks {
		if l.class == k {
			return l
		}
	}
	return classLooks[len(classLooks)-1]
}

// amps is the current of a wire from its first end to its second.
func (k *moment) amps(w *model.Wire) float64 {
	if w.ID >= len(k.st.WireA) {
		return 0
	}
	return k.st.WireA[w.ID]
}

// classOf tells the state of a wire.
func (k *moment) classOf(w *model.Wire) lineClass {
	back := w.From != nil && k.minus[w.From.ID]
	fed := w.From != nil && k.plus[w.From.ID]
	switch v, ok := k.wireVolts(w); {
	case math.Abs(k.amps(w)) >= flowA && !fed && (back || ok && v < nearV):
		return backLine
	case math.Abs(k.amps(w)) >= flowA:
		return flowLine
	case back:
		return gndLine
	case ok && v >= nearV && fed:
		return liveLine
	case ok && v >= nearV:
		return pullLine
	}
	return deadLine
}

// wireVolts is the mean of both ends.
func (k *moment) wireVolts(w *model.Wire) (float64, bool) {
	if w.From == nil || w.To == nil {
		return 0, false
	}
	a, okA := k.volts(w.From)
	b, okB := k.volts(w.To)
	return (a + b) / 2, okA && okB
}

// known reports whether both ends of a wire have volts that a meter shows.
func (k *moment) known(w *model.Wire) bool {
	_, ok := k.wireVolts(w)
	return ok
}

// label says beside a wire what it carries, or else what it has.
func (k *moment) label(w *model.Wire) string {
	class := k.classOf(w)
	switch look := lookOf(class); {
	case class == deadLine && !k.known(w):
		return "floats"
	case look.off != "":
		return look.off
	case class == liveLine || class == pullLine:
		v, _ := k.wireVolts(w)
		return quantity.Text(v, quantity.Voltage)
	}
	return quantity.Text(math.Abs(k.amps(w)), quantity.Current)
}

// stateStyles are the looks of the classes: the wire, the white under it, its
// halo over bars, its core, and for rails their paint.
func stateStyles() []scene.Style {
	var out []scene.Style
	for _, l := range classLooks {
		n := string(l.class)
		out = append(out,
			scene.Style{Class: "hs-" + n, WidthMM: l.width + haloMM}, scene.Style{Class: "ks-" + n, Stroke: white, WidthMM: l.width + casing},
			scene.Style{Class: "s-" + n, Stroke: l.paint, WidthMM: l.width, Dash: l.dash}, scene.Style{Class: "rs-" + n, Stroke: white, WidthMM: l.core, Dash: []float64{}},
			scene.Style{Class: "j-" + n, Stroke: l.paint, Dash: l.dash})
	}
	return out
}
