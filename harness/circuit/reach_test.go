package circuit

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// Worked by hand: reference - post 1; from there a fork of three straps between
// 1 and 2, a ring 2-3-4, a lamp 5 behind 4, and a ring 1-6-7 of its own. 8-9 floats.
func TestReachByHand(t *testing.T) {
	n := chain(9)
	add := func(a, z Node) Branch { return n.Add(a, z, ohms(1)) }
	post := n.Add(1, 0, source(12, 1))
	strap := add(1, 2)
	add(1, 2)
	add(2, 1)
	ring := add(2, 3)
	add(3, 4)
	add(4, 2)
	lamp := add(4, 5)
	own := add(1, 6)
	add(6, 7)
	add(7, 1)
	loose := add(8, 9)
	l := linearOf(t, n)
	for _, c := range []struct {
		name string
		all  []Change
		want []Node
	}{
		{"post", []Change{Open(post)}, []Node{1, 2, 3, 4, 5, 6, 7}},
		{"strap", []Change{Open(strap)}, []Node{2, 3, 4, 5}},
		{"ring", []Change{Open(ring)}, []Node{3, 4, 5}},
		{"lamp", []Change{Open(lamp)}, []Node{5}},
		{"own ring", []Change{Short(own)}, []Node{6, 7}},
		{"both rings", []Change{Open(own), Open(ring)}, []Node{3, 4, 5, 6, 7}},
		{"island", []Change{Open(loose)}, []Node{9}},
		{"within a ring", []Change{Tie(3, 4, 0)}, []Node{3, 4, 5}},
		{"between rings", []Change{Tie(3, 6, 1)}, []Node{2, 3, 4, 5, 6, 7}},
		{"to ground", []Change{Tie(5, 0, 1)}, []Node{1, 2, 3, 4, 5, 6, 7}},
		{"island tied once", []Change{Tie(8, 6, 1)}, []Node{8, 9}},
		{"island tied twice", []Change{Tie(8, 6, 1), Tie(9, 0, 1)}, []Node{1, 2, 3, 4, 5, 6, 7, 8, 9}},
		{"nothing", nil, nil},
	} {
		require.Equal(t, c.want, l.Reach(c.all...), c.name)
	}
	for b := range n.Branches() {
		bridge := Branch(b) == post || Branch(b) == lamp || Branch(b) == loose
		require.Equal(t, bridge, l.Bridge(Branch(b)), "branch %d", b)
	}
}

// A branch is a bridge if and only if a solver finds another part without it.
func TestBridgesAgainstSearch(t *testing.T) {
	rng := rand.New(rand.NewPCG(37, 4))
	seen := map[bool]int{}
	for range 100 {
		n, off := mixedNet(rng, 1+rng.IntN(30), 10)
		s, with := solvedOff(t, n, off)
		l, err := s.Linearize()
		require.NoError(t, err)
		for b := range off {
			if off[b] {
				require.False(t, l.Bridge(Branch(b)))
				continue
			}
			off[b] = true
			_, without := solvedOff(t, n, off)
			off[b] = false
			a, z := n.ends[b][0], n.ends[b][1]
			require.Equal(t, without.Part(a) != without.Part(z), l.Bridge(Branch(b)))
			require.Equal(t, with.Part(a), with.Part(z))
			if l.Bridge(Branch(b)) {
				require.InDelta(t, 0, l.I(Branch(b)), 1e-15*l.g[b]*20, "no current where no way leads back")
			}
			seen[l.Bridge(Branch(b))]++
		}
	}
	require.Greater(t, min(seen[true], seen[false]), 500)
}

// With opens and shorts alone the current of every branch is known but in loops
// of links, and at each point they cancel.
func TestLinkCurrentsObeyTheNodeLaw(t *testing.T) {
	rng := rand.New(rand.NewPCG(38, 4))
	known := 0
	for range 300 {
		n, off := mixedNet(rng, 20, 1e3)
		s, _ := solvedOff(t, n, off)
		l, err := s.Linearize()
		require.NoError(t, err)
		all := []Change{Open(Branch(rng.IntN(n.Branches())))}
		for range 1 + rng.IntN(5) {
			all = append(all, Short(Branch(rng.IntN(n.Branches()))))
		}
		c, err := l.Change(all...)
		require.NoError(t, err)
		sum, unknown := make([]float64, len(l.x)), make([]bool, len(l.x))
		for b, e := range l.ends {
			amps, ok := c.I(Branch(b))
			sum[e[0]] += amps
			sum[e[1]] -= amps
			if !ok {
				unknown[e[0]], unknown[e[1]] = true, true
			} else if c.linkOf(Branch(b)) >= 0 {
				known++
			}
		}
		for k := range len(l.x) - 1 {
			if !unknown[k] {
				require.LessOrEqual(t, math.Abs(sum[k]), 1e-9)
			}
		}
	}
	require.Greater(t, known, 300)
}

// Two shorted straps side by side share a current that no law divides.
func TestLoopOfLinks(t *testing.T) {
	n := chain(2)
	n.Add(1, 0, source(12, 1))
	p, q := n.Add(1, 2, ohms(1)), n.Add(2, 1, ohms(1))
	lamp := n.Add(2, 0, ohms(3))
	l := linearOf(t, n)
	c, err := l.Change(Short(p), Short(q))
	require.NoError(t, err)
	_, ok := c.I(p)
	require.False(t, ok)
	amps, ok := c.I(lamp)
	require.True(t, ok)
	near(t, 3, amps, "12 V on 1 + 3 ohm")
	c, err = l.Change(Short(q), Open(p), Short(q))
	require.NoError(t, err)
	amps, ok = c.I(q)
	require.True(t, ok)
	near(t, -3, amps, "q runs the other way")
}

// Whatever the network and the changes: no panic, and what a new solving says.
func FuzzChange(f *testing.F) {
	f.Add(uint64(1), []byte{})
	f.Add(uint64(2), []byte{3, 0, 3, 1, 3, 2, 3, 3})
	f.Add(uint64(3), []byte{0, 0, 0, 0, 1, 1, 2, 5, 9, 1, 9, 5})
	f.Add(uint64(77), []byte("cut the bridge, short the strap, tie the island"))
	f.Fuzz(func(t *testing.T, seed uint64, data []byte) {
		rng := rand.New(rand.NewPCG(seed, 5))
		n, off := mixedNet(rng, 1+rng.IntN(25), 1e4)
		s, _ := solvedOff(t, n, off)
		l, err := s.Linearize()
		require.NoError(t, err)
		p, c := tape(data), new(Changed)
		for range 3 {
			var all []Change
			for range 1 + p.next(5) {
				switch b := Branch(p.next(n.Branches())); p.next(4) {
				case 0:
					all = append(all, Short(b))
				case 1:
					all = append(all, Tie(Node(p.next(n.Nodes())), Node(p.next(n.Nodes())), float64(p.next(3))))
				default:
					all = append(all, Open(b))
				}
			}
			checkChange(t, l, c, n, off, all)
		}
	})
}
