package layout

import (
	"legwork/render/diagram"
	"legwork/render/scene"
)

// mostCards is how many cards are looked for a place beside the tree; beyond,
// they all go to further sheets.
const mostCards = 24

// attempt is the drawing at one scale on one sheet.
type attempt struct {
	p      *plan
	blank  diagram.Blank
	shape  *shape
	ratio  int // 1:ratio
	texts  []text
	solid  []scene.Box // marks that texts keep clear of
	set    []setCard   // cards beside the tree
	left   []*card     // cards without room there
	spots  []spotMark
	failed int  // texts without room
	strict bool // a card without room ends the attempt
}

// text is a placed text.
type text struct {
	class string
	x, y  float64
	at    scene.Anchor
	text  string
	box   scene.Box
	leg   int // it is a label of, -1 for none
}

// setCard is a card with its place and the line that leads to it.
type setCard struct {
	card   *card
	cols   int
	box    scene.Box
	leader seg
}

// free reports whether a box is clear of all that is placed, and in the room.
func (a *attempt) free(b scene.Box, gap float64) bool {
	if !b.Inside(a.blank.Room) {
		return false
	}
	for _, c := range a.set {
		if c.box.Distance(b) < max(gap, 3) || c.leader.clear(b) < gap*0.6 {
			return false
		}
	}
	for _, s := range a.shape.segs {
		if s.clear(b) < gap {
			return false
		}
	}
	for _, o := range a.solid {
		if o.Distance(b) < gap {
			return false
		}
	}
	for _, t := range a.texts {
		if t.box.Distance(b) < max(gap*0.6, 1) {
			return false
		}
	}
	return true
}
