package layout

import (
	"cmp"
	"slices"

	"legwork/harness/model"
)

// branch is one leg as drawn: a leg of the tree, or one of the two stubs of a
// leg that closes a loop.
type branch struct {
	leg      *model.Leg
	from, to int    // nodes: place IDs; to of a stub is its own node
	stub     string // letter of a stub, "" for a whole leg
}

// tree is a spanning forest of the places. Nodes are the places, by ID, and
// behind them the ends of stubs.
type tree struct {
	branches []branch
	at       [][]int // by node: branches
	trunks   [][]int // one for each part that hangs together: nodes along its trunk
	nodes    int
}

// grow finds the spanning forest: the legs that carry most wires are in it, so
// that a loop is cut where the fewest wires run; then the trunks.
func (p *plan) grow() {
	t := &p.tree
	t.nodes = len(p.m.Places)
	t.at = make([][]int, t.nodes, t.nodes+2*len(p.m.Legs))
	used := p.used()
	legs := slices.Clone(p.m.Legs)
	slices.SortStableFunc(legs, func(a, b *model.Leg) int { return cmp.Compare(used[b.ID], used[a.ID]) })
	root := make([]int, t.nodes)
	for i := range root {
		root[i] = i
	}
	find := func(i int) int {
		for root[i] != i {
			root[i] = root[root[i]]
			i = root[i]
		}
		return i
	}
	in := make([]bool, len(p.m.Legs))
	for _, l := range legs {
		if a, b := find(l.A.ID), find(l.B.ID); a != b {
			root[a], in[l.ID] = b, true
		}
	}
	for _, l := range p.m.Legs {
		if in[l.ID] {
			t.join(branch{leg: l, from: l.A.ID, to: l.B.ID})
		}
	}
	t.findTrunks(len(p.m.Places))
	letter := 0
	for _, l := range p.m.Legs {
		if in[l.ID] {
			continue
		}
		for _, end := range []int{l.A.ID, l.B.ID} {
			t.at = append(t.at, nil)
			t.nodes++
			t.join(branch{leg: l, from: end, to: t.nodes - 1, stub: letters(letter)})
		}
		letter++
	}
}

func (t *tree) join(b branch) {
	t.at[b.from] = append(t.at[b.from], len(t.branches))
	t.at[b.to] = append(t.at[b.to], len(t.branches))
	t.branches = append(t.branches, b)
}

// letters names closing legs: A to Z, then AA and on.
func letters(n int) string {
	s := string(rune('A' + n%26))
	if n >= 26 {
		s = letters(n/26-1) + s
	}
	return s
}

// used counts the wires that pass each leg, by leg ID.
func (p *plan) used() []int {
	out := make([]int, len(p.m.Legs))
	if p.in.Routes == nil {
		return out
	}
	for _, path := range p.in.Routes.Paths {
		for _, s := range path.Legs {
			out[s.Leg.ID]++
		}
	}
	return out
}

// other gives the far node of a branch.
func (b branch) other(n int) int {
	if b.from == n {
		return b.to
	}
	return b.from
}

// reach is how far a node is from where a walk began.
type reach struct {
	places  int
	lengthM float64
	from    int
}

// findTrunks gives each part of the forest its trunk: the way with the most
// places on it, and the longest of those.
func (t *tree) findTrunks(places int) {
	seen := make([]bool, places)
	for start := range places {
		if seen[start] {
			continue
		}
		far, _ := t.farthest(start, seen)
		end, ways := t.farthest(far, nil)
		trunk := []int{end}
		for n := end; n != far; n = ways[n].from {
			trunk = append(trunk, ways[n].from)
		}
		if trunk[0] > trunk[len(trunk)-1] {
			slices.Reverse(trunk) // the place said first stands on the left
		}
		t.trunks = append(t.trunks, trunk)
	}
}

func (t *tree) farthest(start int, seen []bool) (int, map[int]reach) {
	ways := map[int]reach{start: {places: 1, from: start}}
	best := start
	for queue := []int{start}; len(queue) > 0; queue = queue[1:] {
		n := queue[0]
		if seen != nil {
			seen[n] = true
		}
		if a, b := ways[n], ways[best]; a.places > b.places || a.places == b.places && a.lengthM > b.lengthM {
			best = n
		}
		for _, i := range t.at[n] {
			b := t.branches[i]
			to := b.other(n)
			if _, known := ways[to]; !known {
				ways[to] = reach{ways[n].places + 1, ways[n].lengthM + b.leg.LengthM, n}
				queue = append(queue, to)
			}
		}
	}
	return best, ways
}
