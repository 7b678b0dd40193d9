package size

import (
	"cmp"
	"math"
	"slices"

	"legwork/harness/model"
)

// chains parts the wires into series chains: wires that carry the same
// current because they follow each other through a fuse, a contact, a mated
// cavity or a two-terminal load, without a branch between them. A chain stops
// at a bus, a splice and at metal, and at a fuse whose feeding wire another
// fuse protects already: behind a smaller fuse a thinner wire may go on. The
// wire ahead of the first fuse stays with what that fuse protects. The result
// gives each wire the index of its chain; indexes count from 0 by the wires'
// numbers, so that of two chains that are alike the same one grows, whatever
// the order of the draft.
func chains(m *model.Model, guards []Guard) (of []int, members [][]*model.Wire) {
	u := newUnion(len(m.Wires))
	for _, d := range m.Devices {
		fused := fusePins(d)
		for _, s := range seriesPairs(d) {
			a, b := loneWire(d, s[0]), loneWire(d, s[1])
			if a == nil || b == nil || a.Role != model.Built || b.Role != model.Built {
				continue
			}
			if fused[s[0]] && !math.IsInf(guards[a.ID].RatedA, 1) && !math.IsInf(guards[b.ID].RatedA, 1) {
				continue
			}
			u.join(a.ID, b.ID)
		}
	}
	of = make([]int, len(m.Wires))
	index := map[int]int{}
	for _, w := range byNumber(m.Wires) {
		root := u.find(w.ID)
		i, seen := index[root]
		if !seen {
			i = len(members)
			index[root] = i
			members = append(members, nil)
		}
		of[w.ID] = i
		members[i] = append(members[i], w)
	}
	return of, members
}

func byNumber(wires []*model.Wire) []*model.Wire {
	return slices.SortedFunc(slices.Values(wires), func(a, b *model.Wire) int { return cmp.Compare(a.Number, b.Number) })
}

// fusePins gives the terminals of a device's protective elements.
func fusePins(d *model.Device) map[string]bool {
	if len(d.Protects()) == 0 {
		return nil
	}
	pins := map[string]bool{}
	for _, f := range d.Protects() {
		pins[f.In], pins[f.Out] = true, true
	}
	return pins
}

// seriesPairs lists the pairs of terminals of a device between which the same
// current flows and no other.
func seriesPairs(d *model.Device) [][2]string {
	var pairs [][2]string
	for _, f := range d.Protects() {
		pairs = append(pairs, [2]string{f.In, f.Out})
	}
	for _, c := range d.Couples() {
		pairs = append(pairs, [2]string{c.A, c.B})
	}
	for _, p := range d.Passes() {
		pairs = append(pairs, [2]string{p.A, p.B})
	}
	for _, c := range d.Switches() {
		pairs = append(pairs, [2]string{c.A, c.B})
	}
	for _, w := range d.Draws() {
		pairs = append(pairs, [2]string{w.Plus, w.Minus})
	}
	return unshared(d, pairs)
}

// unshared keeps the pairs whose terminals belong to no other pair that is
// wired at both ends: a terminal of two wired pairs is a branch.
func unshared(d *model.Device, pairs [][2]string) [][2]string {
	uses := map[string]int{}
	for _, p := range pairs {
		if wired(d, p[0]) && wired(d, p[1]) {
			uses[p[0]]++
			uses[p[1]]++
		}
	}
	var kept [][2]string
	for _, p := range pairs {
		if uses[p[0]] == 1 && uses[p[1]] == 1 {
			kept = append(kept, p)
		}
	}
	return kept
}

func wired(d *model.Device, pin string) bool {
	t := d.Terminal(pin)
	return t != nil && (len(t.Ends) > 0 || t.Metal != nil || len(t.Bus) > 0)
}

// loneWire gives the one wire that lands at a terminal, nil where none or
// several do, or where a bus or metal joins it.
func loneWire(d *model.Device, pin string) *model.Wire {
	t := d.Terminal(pin)
	if t == nil || len(t.Ends) != 1 || len(t.Bus) > 0 || t.Metal != nil {
		return nil
	}
	return t.Ends[0].Wire
}

// union is a disjoint-set forest over 0..n-1.
type union []int

func newUnion(n int) union {
	u := make(union, n)
	for i := range u {
		u[i] = i
	}
	return u
}

func (u union) find(i int) int {
	for u[i] != i {
		u[i] = u[u[i]]
		i = u[i]
	}
	return i
}

func (u union) join(a, b int) {
	a, b = u.find(a), u.find(b)
	if a < b {
		u[b] = a
	} else {
		u[a] = b
	}
}
