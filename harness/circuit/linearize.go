package circuit

import "fmt"

// lists are lists of int32, one behind the other.
type lists struct{ ptr, all []int32 }

func (l lists) of(i int32) []int32 { return l.all[l.ptr[i]:l.ptr[i+1]] }

// again gathers pairs (list, entry) from each, which calls add for every pair and
// is called twice. The room of l is used again.
func (l lists) again(n int, each func(add func(list, entry int32))) lists {
	l.ptr = resized(l.ptr, n+2)
	each(func(list, _ int32) { l.ptr[list+2]++ })
	for i := range n {
		l.ptr[i+2] += l.ptr[i+1]
	}
	l.all = resized(l.all, int(l.ptr[n+1]))
	each(func(list, entry int32) {
		l.all[l.ptr[list+1]] = entry
		l.ptr[list+1]++
	})
	return l
}

// Linearize takes the network as it was solved last. A network whose branches
// are all resistors and sources need not be solved before; any other has to be,
// after its last change. The error says so, or tells of a fault in the network.
func (s *Solver) Linearize() (*Linear, error) {
	l := new(Linear)
	if err := s.LinearizeInto(l); err != nil {
		return nil, err
	}
	return l, nil
}

// LinearizeInto is Linearize into a Linear that may have been used before; what
// was changed or asked of it before is of no use any more. After an error l is as it was.
func (s *Solver) LinearizeInto(l *Linear) error {
	if s.stale || !s.rested {
		for b, l := range s.laws {
			if l.Kind != Resistor && l.Kind != Source && !s.open[b] {
				return fmt.Errorf("branch %d is bent and the network was not solved since its last change", b)
			}
		}
		s.rested = false
	}
	if err := s.prepare(); err != nil {
		return err
	}
	for i := range s.bents {
		if e := &s.bents[i]; !e.open && !(e.g >= 0) {
			return fmt.Errorf("branch %d: the network did not come to rest", e.b)
		}
	}
	l.takeLines(s)
	l.build(s.f.pattern)
	return nil
}

// takeLines takes over where the branches lie and the lines that they follow.
func (l *Linear) takeLines(s *Solver) {
	l.at, l.ends, l.graph = s.at, s.ends, nil
	l.g, l.s, l.push = resized(l.g, len(s.laws)), resized(l.s, len(s.laws)), l.push[:0]
	for b, g := range s.gain {
		if !s.open[b] {
			l.g[b], l.s[b] = g, g*s.emf[b]
		}
	}
	for i := range s.bents {
		if e := &s.bents[i]; !e.open {
			l.g[e.b], l.s[e.b] = e.g, e.s
		}
	}
	for i := range s.gov.regs {
		if r := &s.gov.regs[i]; !s.open[r.b] && r.pushed != 0 {
			l.s[r.b] = r.pushed
			l.push = append(l.push, r.b)
		}
	}
}

func (l *Linear) build(p *pattern) {
	n := int32(p.n)
	if l.f == nil || l.f.pattern != p {
		l.f = &factor{pattern: p, scratch: make([]float64, n+1)}
		l.nodes = l.nodes.again(p.n+1, func(add func(list, entry int32)) {
			for i, u := range l.at {
				add(u, int32(i))
			}
		})
		l.kids = l.kids.again(p.n+1, func(add func(list, entry int32)) {
			for k := range n {
				if row := p.column(int(k)); len(row) > 0 {
					add(row[0], k)
				}
			}
		})
	}
	l.touch = l.touch.again(p.n+1, func(add func(list, entry int32)) {
		for b, e := range l.ends {
			if e[0] != e[1] && (l.g[b] != 0 || l.s[b] != 0) {
				add(e[0], int32(b))
				add(e[1], int32(b))
			}
		}
	})
	l.stampOwn(p)
	l.factorize(n)
}

func (l *Linear) stampOwn(p *pattern) {
	n := int32(p.n)
	l.own, l.ownRef, l.ownIn = resized(l.own, len(p.row)), resized(l.ownRef, p.n), resized(l.ownIn, p.n+1)
	for b, e := range l.ends {
		lo, hi := min(e[0], e[1]), max(e[0], e[1])
		if lo == hi {
			continue
		}
		l.ownIn[e[0]] += l.s[b]
		l.ownIn[e[1]] -= l.s[b]
		switch {
		case l.g[b] == 0:
		case hi == n:
			l.ownRef[lo] += l.g[b]
		default:
			l.own[p.place(lo, hi)] += l.g[b]
		}
	}
}

func (l *Linear) factorize(n int32) {
	w := front{pos: make([]int32, n+1)}
	l.kept.reset()
	l.kept.grow(l.f.pattern)
	for k := range n {
		w.row = append(w.row[:0], l.f.column(int(k))...)
		w.open()
		copy(w.link, l.own[l.f.ptr[k]:l.f.ptr[k+1]])
		w.ref, w.cur = l.ownRef[k], l.ownIn[k]
		for _, c := range l.kids.of(k) {
			w.merge(&l.kept, c)
		}
		w.eliminate(&l.kept)
	}
	l.f.share, l.f.perTotal = l.kept.share, l.kept.per
	l.x, l.root = resized(l.x, int(n)+1), resized(l.root, int(n)+1)
	l.root[n] = n
	for k := n - 1; k >= 0; k-- {
		l.x[k], l.root[k] = l.kept.read(k, k, l.x, l.root)
	}
}
