package check

import "legwork/harness/part"

// Loads in series: the current of one comes from, or goes back through,
// another. Such a way counts only where what lies between them is fed and
// grounded by nothing else: a ground that is missing on two lamps does not
// turn up through the lamp of another circuit.

// end is a use with the net at its other side.
type end struct {
	use   int // index in uses
	other int // net
}

// series is the ways through loads and coils, by the net they begin at.
type series struct {
	on, back [][]end
	pilots   []bool // nets that a machine feeds while it charges
}

func (p *Pass) series() *series {
	if p.strung != nil {
		return p.strung
	}
	n := len(p.Nets.Members)
	p.strung = &series{on: make([][]end, n), back: make([][]end, n)}
	for i, u := range p.uses() {
		a, b := p.netOf(u.device, u.plus), p.netOf(u.device, u.minus)
		if a < 0 || b < 0 || a == b {
			continue
		}
		p.strung.add(i, a, b)
		if u.eitherWay {
			p.strung.add(i, b, a)
		}
	}
	from := make([]bool, n)
	for _, d := range p.Model.Devices {
		for _, s := range d.Supplies() {
			if s.Pilot != "" && wiredAt(d, s.Pilot) && wiredAt(d, s.Plus) {
				p.mark(from, d, s.Pilot)
			}
		}
	}
	p.strung.pilots = spread(p.graph().on, from, true)
	return p.strung
}

func (s *series) add(use, plus, minus int) {
	s.on[plus] = append(s.on[plus], end{use, minus})
	s.back[minus] = append(s.back[minus], end{use, plus})
}

// ledOn reports whether a net leads back through another load than the given one.
func (p *Pass) ledOn(net int, not use) bool {
	r := p.reach()
	return p.through(net, not, p.graph().on, p.series().on, r.minus, r.plus)
}

// fedOn reports whether a net is fed through another load than the given one,
// or by a machine that charges.
func (p *Pass) fedOn(net int, not use) bool {
	r := p.reach()
	return p.series().pilots[net] || p.through(net, not, p.graph().back, p.series().back, r.plus, r.minus)
}

// through searches from a net, by contacts and by loads, for one that is
// wanted. What belongs to the other side ends the way.
func (p *Pass) through(net int, not use, ways [][]way, loads [][]end, wanted, against []bool) bool {
	seen := map[int]bool{}
	for todo := []int{net}; len(todo) > 0; {
		at := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if seen[at] || against[at] {
			continue
		}
		if seen[at] = true; wanted[at] {
			return true
		}
		for _, w := range ways[at] {
			todo = append(todo, w.to)
		}
		for _, e := range loads[at] {
			if u := p.uses()[e.use]; u.device != not.device || u.plus != not.plus || u.minus != not.minus {
				todo = append(todo, e.other)
			}
		}
	}
	return false
}

// inSeries reports whether a load's current comes from, or goes back to,
// another load or a field winding: what it loses is then lost on purpose.
func (p *Pass) inSeries(w part.Draw, plus, minus int) bool {
	g := p.graph()
	if p.wired == nil {
		p.wired = &reach{plus: spread(without(g.on), g.sources, true), minus: spread(without(g.back), g.grounds, true)}
	}
	straight := func(a, b int) bool { return p.wired.plus[a] && p.wired.minus[b] }
	return !straight(plus, minus) && !(w.EitherWay && straight(minus, plus))
}

// without leaves out the ways through field windings.
func without(all [][]way) [][]way {
	list := make([][]way, len(all))
	for n, ways := range all {
		for _, w := range ways {
			if !w.field {
				list[n] = append(list[n], w)
			}
		}
	}
	return list
}
