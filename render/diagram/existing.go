package diagram

import (
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
		case "sy", "syb", "syw", "bar":
			n.Class += oldStroke
		}
	}
}
