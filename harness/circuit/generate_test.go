package circuit

import (
	"math/rand/v2"
	"testing"
)

// harnessLike is an invented vehicle: a battery and an alternator for each 800
// wires or so, fused feeds in zones, 6-9 branch circuits each with a switch, a
// connector, a splice, 1-4 loads and a ground wire to one of three studs, flyback
// diodes, and a memory feed through two diodes per zone. The figures are
// plausible, nothing more.
type harnessLike struct {
	*Net
	rng      *rand.Rand
	wires    int
	loads    []Branch
	fuses    []Branch
	switches []Branch
	alts     []Branch
}

func newHarnessLike(wires int, seed uint64) *harnessLike {
	h := &harnessLike{Net: NewNet(), rng: rand.New(rand.NewPCG(seed, 7))}
	for h.wires < wires {
		h.bank(min(800, wires-h.wires))
	}
	return h
}

func (h *harnessLike) between(low, high float64) float64 { return low + (high-low)*h.rng.Float64() }

// wire is 0.3 to 4 m of 18 to 10 AWG copper with two crimps.
func (h *harnessLike) wire(a, b Node) Branch {
	h.wires++
	return h.Add(a, b, ohms(h.between(0.3, 4)*h.between(0.0033, 0.021)+0.0006))
}

func (h *harnessLike) wireTo(a Node) Node {
	b := h.AddNode()
	h.wire(a, b)
	return b
}

func (h *harnessLike) fuse(a Node, rated float64) Node {
	b := h.AddNode()
	h.fuses = append(h.fuses, h.Add(a, b, Law{Kind: Warming, Ohm: 0.07 / rated, Amp: rated, Rise: 0.42}))
	return b
}

func (h *harnessLike) contact(a Node) Node {
	b := h.AddNode()
	h.switches = append(h.switches, h.Add(a, b, ohms(h.between(0.002, 0.015))))
	return b
}

func (h *harnessLike) bank(wires int) {
	post, bus, engine := h.AddNode(), h.AddNode(), h.AddNode()
	h.Add(post, 0, source(12.6, 0.005))
	h.Add(0, engine, ohms(0.0005))
	h.Add(post, bus, ohms(0.002))
	out := h.AddNode()
	h.alts = append(h.alts, h.Add(out, engine, regulatorAcross(14.2, 110, post, 0)))
	h.Add(out, post, ohms(0.003))
	for end := h.wires + wires; h.wires < end; {
		h.zone(bus, engine)
	}
}

func regulatorAcross(volt, amp float64, a, b Node) Law {
	return Law{Kind: Regulator, Volt: volt, Amp: amp, SenseA: a, SenseB: b}
}

func (h *harnessLike) zone(bus, engine Node) {
	feed := h.wireTo(h.fuse(bus, 60))
	body := h.AddNode()
	h.Add(body, engine, ohms(0.001))
	var studs [3]Node
	for i := range studs {
		studs[i] = h.AddNode()
		h.Add(studs[i], body, ohms(0.0003))
	}
	memory := h.AddNode()
	for _, from := range [2]Node{bus, feed} {
		h.Add(h.wireTo(from), memory, Law{Kind: Diode, Volt: 0.6, Ohm: 0.02})
	}
	h.loads = append(h.loads, h.Add(h.wireTo(memory), studs[0], current(0.05, 1)))
	for range 6 + h.rng.IntN(4) {
		h.circuit(feed, studs[h.rng.IntN(3)])
	}
}

func (h *harnessLike) circuit(feed, stud Node) {
	live := h.wireTo(h.contact(h.wireTo(h.fuse(feed, 15))))
	plug := h.AddNode()
	h.Add(live, plug, ohms(h.between(0.002, 0.010)))
	splice := h.wireTo(plug)
	ground := h.wireTo(stud)
	for range 1 + h.rng.IntN(4) {
		at, back := h.wireTo(splice), ground
		if h.rng.IntN(3) == 0 {
			back = h.wireTo(ground)
		}
		h.loads = append(h.loads, h.Add(at, back, h.load()))
		if h.rng.IntN(4) == 0 {
			h.Add(back, at, Law{Kind: Diode, Volt: 0.7, Ohm: 0.02})
		}
	}
}

// load: some 55 % resistive, 20 % constant current, 25 % constant power.
func (h *harnessLike) load() Law {
	switch p := h.rng.Float64(); {
	case p < 0.55:
		return ohms(h.between(8, 90))
	case p < 0.75:
		return current(h.between(0.1, 0.8), 8)
	}
	return power(h.between(1, 10), 7)
}

// step sets switches by chance as a key position would.
func (h *harnessLike) step(s *Solver, seed uint64) {
	rng := rand.New(rand.NewPCG(seed, 11))
	for _, b := range h.switches {
		s.SetOn(b, rng.Float64() < 0.6)
	}
	for _, b := range h.alts {
		s.SetOn(b, seed%2 == 0)
	}
}

func TestHarnessLikeSettles(t *testing.T) {
	for _, wires := range []int{30, 100, 1000, 3000} {
		h := newHarnessLike(wires, uint64(wires))
		s := NewSolver(h.Net)
		for seed := range uint64(6) {
			h.step(s, seed)
			checkState(t, s)
		}
	}
}
