package diagram

import "legwork/harness/model"

// section is one circuit of the draft: a stretch of the sheet of its own.
type section struct {
	id      int
	title   string
	items   []*item
	strands []*strand
	tracks  []*track
}

// looseName is the circuit of wires that stand outside any.
const looseName = "loose"

// Votes for the section of an item.
const (
	wireVote     = 0.6 // a wire of that circuit ends here
	neighborVote = 1.0 // the thing at the other end of a wire stands there
	mateVote     = 1.2 // the other part of the same device stands there
)

// divide puts every item into a section and turns runs into strands.
func (p *plan) divide() {
	p.makeSections()
	p.vote()
	for _, it := range p.items {
		it.sect.items = append(it.sect.items, it)
	}
	for _, r := range p.runs {
		p.makeStrands(r)
	}
	p.makeBars()
}

func (p *plan) makeSections() {
	for i, c := range p.m.Circuits {
		title := c.Label
		if title == "" {
			title = c.Name
		}
		if c.Name == looseName && c.Label == "" {
			title = "Other wires"
			if len(p.m.Circuits) == 1 {
				title = "All wires"
			}
		}
		p.sections = append(p.sections, &section{id: i, title: title})
	}
	for _, w := range p.m.Wires {
		if w.Circuit == nil && w.Role != model.Strap || len(p.m.Circuits) == 0 {
			p.sections = append(p.sections, &section{id: len(p.sections), title: "Other wires"})
			return
		}
	}
	if len(p.sections) == 0 {
		p.sections = []*section{{title: "No wires"}}
	}
}

// sectionOf gives the section of a circuit; wires outside any share the last.
func (p *plan) sectionOf(c *model.Circuit) *section {
	if c == nil || c.ID >= len(p.sections) {
		return p.sections[len(p.sections)-1]
	}
	return p.sections[c.ID]
}

// vote finds the section of each item by its wires and neighbors. Ties go to
// the earlier circuit; a few rounds settle it.
func (p *plan) vote() {
	near := map[*item][]*item{}
	for _, r := range p.runs {
		if a, b := r.ends[0].pin, r.ends[1].pin; a != nil && b != nil && a.item != b.item {
			near[a.item] = append(near[a.item], b.item)
			near[b.item] = append(near[b.item], a.item)
		}
	}
	for round := range 5 {
		for _, it := range p.items {
			it.sect = p.bestSection(it, near[it], round > 0)
		}
	}
}

func (p *plan) bestSection(it *item, near []*item, neighbors bool) *section {
	score := make([]float64, len(p.sections))
	for _, q := range it.pins {
		if q.term == nil {
			continue
		}
		for _, e := range q.term.Ends {
			score[p.sectionOf(e.Wire.Circuit).id] += wireVote
		}
	}
	if neighbors {
		for _, o := range near {
			score[o.sect.id] += neighborVote
		}
		if it.mate != nil {
			score[it.mate.sect.id] += mateVote
		}
	}
	best := 0
	for i := range score {
		if score[i] > score[best]+1e-9 {
			best = i
		}
	}
	return p.sections[best]
}
