package size

import (
	"legwork/harness/model"
)

// byTerminal is what governs a size that only the terminals ask for.
const byTerminal = "terminal"

// fitTop gives the highest rung that the terminals at the ends of a chain's
// open wires take, where the draft names them; at most top. What current and
// protection ask for goes beyond it, for they are about fire: the wire then
// fits no terminal, and that is the finding.
func (c *chooser) fitTop(wires []*model.Wire, top int) int {
	for _, t := range openEnds(wires) {
		most := 0.0
		for _, p := range t.Finish.Terminals {
			most = max(most, p.MostMM2)
		}
		for most > 0 && top > 0 && c.ladder[top].AreaMM2 > 1.01*most {
			top--
		}
	}
	return top
}

// fitFloor lifts a chain to the lowest rung from its floor up that fits all
// the terminals at its ends, if there is one.
func (c *chooser) fitFloor(ch *chain) {
	ends := openEnds(ch.wires)
	for rung := ch.floor; rung <= ch.top && len(ends) > 0; rung++ {
		if !fitsAll(ends, c.ladder[rung].AreaMM2) {
			continue
		}
		if rung > ch.floor {
			ch.floor, ch.by = rung, byTerminal
		}
		return
	}
}

func fitsAll(ends []*model.Terminal, areaMM2 float64) bool {
	for _, t := range ends {
		if !t.Finish.Fits(areaMM2) {
			return false
		}
	}
	return true
}

// openEnds lists the terminals at which open wires end and whose finish is
// named. Two wires that share a terminal are left out: neither size alone says
// whether they fit.
func openEnds(wires []*model.Wire) []*model.Terminal {
	var list []*model.Terminal
	for _, w := range wires {
		if _, given := givenSize(w); given {
			continue
		}
		for _, t := range []*model.Terminal{w.From, w.To} {
			if len(t.Finish.Terminals) > 0 && len(t.Ends) == 1 {
				list = append(list, t)
			}
		}
	}
	return list
}
