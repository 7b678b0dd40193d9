package circuit

// Solver solves one network again and again while its laws change in value and
// its branches are switched. What depends only on who is joined to whom is
// worked out once, in NewSolver. A Solver is for one goroutine at a time.
type Solver struct {
	err   error
	nodes int
	at    []int32 // unknown of each node; the reference is unknown n
	ends  [][2]int32
	place []int32 // where each branch is stamped
	laws  []Law
	open  []bool
	gain  []float64 // conductance of the straight branches when on, 0 for others
	emf   []float64
	bents []bent
	index []int32 // of a branch among bents or regulators, else -1
	gov   governor
	f     *factor

	baseLink, baseRef         []float64 // of the unknowns that are not still: what straight branches leave there
	baseIn                    []float64 // the currents that they push in, gathered over the still unknowns
	x                         []float64 // voltages of the pass at hand, still unknowns left out; x[n] is the reference
	part                      []int32   // of each unknown: 0 tied to the reference, else which floating part
	sets, lasting             forest    // room for finding them; what branches that never moved tie together, nil: not known
	moves                     []bool    // of each branch: it was switched before
	moved                     []Branch  // those
	load                      trail
	guests                    []guest
	excess, scale             []float64
	fresh                     []Branch // whose laws are new
	stale, switched, rekinded bool

	passes, shedding int
	unsettled        bool
	rested           bool // the last solving came to its end
}

// noPlace marks a branch whose two ends are one point.
const noPlace = -1 << 31

// NewSolver takes a copy of the network as it stands. A fault in the network or
// in a law is kept and returned by Solve.
func NewSolver(n *Net) *Solver {
	s := &Solver{
		err: n.firstErr, nodes: n.nodes, laws: append([]Law(nil), n.laws...),
		open: make([]bool, len(n.laws)), moves: make([]bool, len(n.laws)), gain: make([]float64, len(n.laws)), emf: make([]float64, len(n.laws)),
		index: make([]int32, len(n.laws)), stale: true, switched: true, rekinded: true,
	}
	points, at := mergeJoined(n)
	edges := make([][2]int32, 0, len(n.ends))
	s.ends = make([][2]int32, len(n.ends))
	for b, e := range n.ends {
		s.ends[b] = [2]int32{at[e[0]], at[e[1]]}
		if at[e[0]] != 0 && at[e[1]] != 0 {
			edges = append(edges, [2]int32{at[e[0]] - 1, at[e[1]] - 1})
		}
	}
	p, unknown := newPattern(points-1, edges, bentPoints(n, at, points))
	s.renumber(at, unknown)
	s.f = newFactor(p)
	s.allot(p)
	return s
}

// mergeJoined numbers the points that are left when joined nodes are one: 0
// holds the reference, the others follow in the order of their lowest node.
func mergeJoined(n *Net) (points int, at []int32) {
	f := newForest(n.nodes)
	for _, j := range n.joined {
		f.unite(int32(j[0]), int32(j[1]))
	}
	at = make([]int32, n.nodes)
	for i := range at {
		if r := f.root(int32(i)); r != int32(i) {
			at[i] = at[r]
			continue
		}
		at[i] = int32(points)
		points++
	}
	return points, at
}

// bentPoints marks the points, the reference left out, that matter to laws
// whose lines change from pass to pass.
func bentPoints(n *Net, at []int32, points int) []bool {
	bent := make([]bool, points) // the reference first
	for b, l := range n.laws {
		switch l.Kind {
		case Resistor, Source:
			continue
		case Regulator:
			if n.has(l.SenseA) && n.has(l.SenseB) {
				bent[at[l.SenseA]], bent[at[l.SenseB]] = true, true
			}
		}
		bent[at[n.ends[b][0]]], bent[at[n.ends[b][1]]] = true, true
	}
	return bent[1:]
}

// renumber turns points into unknowns; the reference becomes the last one.
func (s *Solver) renumber(at, unknown []int32) {
	move := func(point int32) int32 {
		if point == 0 {
			return int32(len(unknown))
		}
		return unknown[point-1]
	}
	for i, p := range at {
		at[i] = move(p)
	}
	s.at = at
	for b, e := range s.ends {
		s.ends[b] = [2]int32{move(e[0]), move(e[1])}
	}
}

func (s *Solver) allot(p *pattern) {
	s.baseIn, s.x = make([]float64, p.n+1), make([]float64, p.n+1)
	s.excess, s.scale = make([]float64, p.n+1), make([]float64, p.n+1)
	s.place = make([]int32, len(s.ends))
	for b, e := range s.ends {
		lo, hi := min(e[0], e[1]), max(e[0], e[1])
		switch {
		case lo == hi:
			s.place[b] = noPlace
		case int(hi) == p.n:
			s.place[b] = ^lo
		default:
			s.place[b] = p.place(lo, hi)
		}
	}
}

// SetLaw gives branch b other values for the law it has. Another kind is taken
// too, but costs a sorting of all branches. An unknown branch is left alone.
func (s *Solver) SetLaw(b Branch, law Law) {
	if b < 0 || int(b) >= len(s.laws) || s.laws[b] == law {
		return
	}
	if s.laws[b].Kind != law.Kind {
		s.rekinded, s.switched, s.lasting = true, true, nil
	}
	s.laws[b] = law
	s.fresh = append(s.fresh, b)
	s.stale = true
}

// SetOn switches branch b on or off; all are on at first. Off is an ideal open,
// without any leak. An unknown branch is left alone.
func (s *Solver) SetOn(b Branch, on bool) {
	if b < 0 || int(b) >= len(s.open) || s.open[b] == !on {
		return
	}
	if !s.moves[b] {
		s.moves[b], s.moved, s.lasting = true, append(s.moved, b), nil
	}
	s.open[b] = !on
	s.stale, s.switched = true, true
}
