package diagram

import (
	"math"

	"legwork/harness/model"
	"legwork/render/scene"
)

// What is in the vehicle already is drawn dashed: common practice of marking
// what a job leaves as it is. The dashes differ: long ones on wires, short
// ones on the strokes of symbols.
const (
	oldWire   = " ex"
	oldStroke = " exs"
)

// shortMM is the length up to which a stroke stays whole: dashes would make
// crumbs of it.
const shortMM = 2.6

func length(n *scene.Node) float64 {
	sum := 0.0
	for i := 1; i < len(n.Points); i++ {
		sum += math.Hypot(n.Points[i].X-n.Points[i-1].X, n.Points[i].Y-n.Points[i-1].Y)
	}
	return sum
}

// hasExisting reports whether the harness has anything that is there already.
func (p *plan) hasExisting() bool {
	for _, w := range p.m.Wires {
		if w.Existing {
			return true
		}
	}
	for _, d := range p.m.Devices {
		if d.Existing {
			return true
		}
	}
	return false
}

// wireDash is the class that a wire's paint gets beside its own.
func wireDash(w *model.Wire) string {
	if w.Existing {
		return oldWire
	}
	return ""
}

// dashed gives the strokes of an existing device their dashes: lines, outlines
// and circles, neither terminals nor filled marks.
func dashed(d *model.Device, g *scene.Node) {
	if d == nil || !d.Existing {
		return
	}
	for _, n := range g.Kids {
		switch n.Class {
		case "sy", "syw", "bar":
			if n.Shape == scene.Circle || n.Shape == scene.Rect || length(n) > shortMM {
				n.Class += oldStroke
			}
		}
	}
}
