package layout

import (
	"slices"
	"strings"

	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/render/scene"
)

// Measures of a card, mm.
const (
	colW     = 52.0
	colGap   = 4.0
	cardPad  = 1.5
	rowH     = 3.6
	noteH    = 3.2
	dotRow   = 2.9
	dotPitch = 2.4
	headH    = 7.6
	small    = 2.5
	large    = 3.5
	halfText = 17.5 // room for the name of a half beside its cavities
	perLine  = 13   // cavities in one line
)

// card lists what sits at one place.
type card struct {
	place *model.Place
	title string
	about string
	rows  []row
}

// row is one thing on a card.
type row struct {
	dev   *model.Device
	mark  string // which mark stands before it
	name  string
	label string
	right string
	halfs []half
	notes []string // faint lines below
}

// half is one half of a connector: its cavities in order, nil where no wire
// lands.
type half struct {
	line     *part.Line
	name     string
	cavities []*model.Wire
}

func (r row) high() float64 {
	h := rowH
	for _, f := range r.halfs {
		h += dotRow * float64(f.lines())
	}
	return h + noteH*float64(len(r.notes))
}

func (h half) lines() int { return max((len(h.cavities)+perLine-1)/perLine, 1) }

// wide is how many cavities stand in one line: lines are filled evenly.
func (h half) wide() int { return max((len(h.cavities)+h.lines()-1)/h.lines(), 1) }

// gather makes the cards. What lies along a leg is drawn there instead, and
// what sits in a box stands with its box.
func (p *plan) gather() {
	p.cards = make([]*card, len(p.m.Places))
	for i, pl := range p.m.Places {
		about := pl.Label
		if pl.Wet {
			about = strings.TrimPrefix(about+", wet", ", ")
		}
		p.cards[i] = &card{place: pl, title: pl.Name, about: about}
	}
	held := map[*model.Device][]string{}
	for _, d := range p.m.Devices {
		if d.In != nil {
			held[d.In] = append(held[d.In], d.Name)
		}
	}
	for _, d := range p.m.Devices {
		if d.In == nil && d.Spot.Leg == nil && d.Spot.Place != nil {
			c := p.cards[d.Spot.Place.ID]
			c.rows = append(c.rows, rowOf(d, held[d]))
		}
	}
	for _, c := range p.cards {
		slices.SortStableFunc(c.rows, func(a, b row) int { return slices.Index(marks, a.mark) - slices.Index(marks, b.mark) })
	}
}

// columns parts the rows of a card into n columns of about the same height.
func (c *card) columns(n int) [][]row {
	total := 0.0
	for _, r := range c.rows {
		total += r.high()
	}
	var out [][]row
	var now []row
	sum := 0.0
	for _, r := range c.rows {
		if len(now) > 0 && len(out) < n-1 && sum+r.high()/2 > total*float64(len(out)+1)/float64(n) {
			out = append(out, now)
			now = nil
		}
		now = append(now, r)
		sum += r.high()
	}
	return append(out, now)
}

// size is how wide and high a card is with its rows in n columns.
func (c *card) size(n int) (w, h float64) {
	most := 0.0
	cols := c.columns(n)
	for _, col := range cols {
		sum := 0.0
		for _, r := range col {
			sum += r.high()
		}
		most = max(most, sum)
	}
	n = len(cols)
	head := cardPad*2 + scene.Width(c.title, large, true) + 2 + scene.Width(c.about, small, false)
	if len(c.rows) == 0 {
		return min(head, colW), headH - 1
	}
	return colW*float64(n) + colGap*float64(n-1) + 2*cardPad, headH + most + 0.6
}
