package deck

import (
	"math"
	"math/big"
	"slices"

	"legwork/harness/circuit"
	"legwork/harness/solve"
)

// digits is the precision in bits of the judge where simulator and legwork
// differ: some 90 decimal digits.
const digits = 300

// straight is a branch as a straight line through the point where it works:
// i = g v + i0, from a to b.
type straight struct {
	a, b  int
	g, i0 float64
}

// straighten takes every element of a frozen step as it works at the volts that
// were found, by node. Slope is what ties its ends together.
func (k Deck) straighten(s *solve.State, volts []float64) (lines []straight, slopes []float64) {
	b := &writer{Deck: k}
	for i := range k.of.parts {
		e := &k.of.parts[i]
		if on, _ := b.on(e); !on {
			continue
		}
		law, v := b.law(e), volts[e.a]-volts[e.b]
		x := straight{a: e.a, b: e.b, g: 1 / law.Ohm}
		slope := x.g
		leak := 1 / leakOhm(law)
		switch law.Kind {
		case circuit.Source:
			x.i0 = -law.Volt / law.Ohm
		case circuit.Warming:
			if i := warm(law, v); i != 0 {
				x.g = i / v
			}
		case circuit.ConstantCurrent:
			x.g, x.i0 = leak, law.Amp
			if v < law.Knee {
				x.g, x.i0 = leak+law.Amp/law.Knee, 0
			}
			slope = x.g
		case circuit.ConstantPower:
			x.g, slope = leak, leak
			if v > law.Knee {
				x.g, x.i0 = 0, law.Watt/v
			}
		case circuit.Diode:
			x.g, slope = leak, leak
			if v > law.Volt {
				x.g, x.i0 = 1/law.Ohm, law.Volt*(leak-1/law.Ohm)
				slope = x.g
			}
		case circuit.Regulator:
			x.g, slope, x.i0 = 0, 0, -s.SupplyA.Of(e.device, 0)
		}
		lines, slopes = append(lines, x), append(slopes, slope)
	}
	return lines, slopes
}

// warm is the current of a fuse at v volts, by bisection of the law itself.
func warm(law circuit.Law, v float64) float64 {
	volts := func(i float64) float64 { return law.Ohm * i * (1 + law.Rise*i*i/(law.Amp*law.Amp)) }
	low, high := 0.0, math.Abs(v)/law.Ohm
	for range 200 {
		if mid := (low + high) / 2; volts(mid) < math.Abs(v) {
			low = mid
		} else {
			high = mid
		}
	}
	return math.Copysign(high, v)
}

// ratios gives for every node the ratio of the greatest conductance in the part
// that it belongs to, to the conductance by which this part hangs on the rest:
// what a solver in double precision has to bridge. +Inf where it floats.
func ratios(nodes int, lines []straight, slopes []float64) []float64 {
	order := make([]int, 0, len(lines))
	for i := range lines {
		if slopes[i] > 0 {
			order = append(order, i)
		}
	}
	slices.SortStableFunc(order, func(i, j int) int {
		if slopes[i] > slopes[j] {
			return -1
		}
		return 1
	})
	part, most, ratio := make([]int, nodes), make([]float64, nodes), make([]float64, nodes)
	members := make([][]int, nodes)
	for n := range part {
		part[n], members[n], ratio[n] = n, []int{n}, math.Inf(1)
	}
	ratio[0] = 1
	for _, i := range order {
		p, q := part[lines[i].a], part[lines[i].b]
		if p == q {
			continue
		}
		if part[0] == q {
			p, q = q, p
		}
		top := max(most[p], most[q], slopes[i])
		for _, n := range members[q] {
			part[n] = p
			if part[0] == p {
				ratio[n] = max(most[q], slopes[i]) / slopes[i]
			}
		}
		most[p] = top
		members[p] = append(members[p], members[q]...)
	}
	return ratio
}

// exact solves straight branches to some 90 digits, for the nodes that hang
// together with the reference; nil elsewhere.
func exact(nodes int, lines []straight, held []bool) []*big.Float {
	num := func(v float64) *big.Float { return new(big.Float).SetPrec(digits).SetFloat64(v) }
	rows, rhs := make([]map[int]*big.Float, nodes), make([]*big.Float, nodes)
	for n := range rows {
		rows[n], rhs[n] = map[int]*big.Float{}, num(0)
	}
	add := func(row map[int]*big.Float, j int, v *big.Float) {
		if row[j] == nil {
			row[j] = num(0)
		}
		row[j].Add(row[j], v)
	}
	for _, l := range lines {
		if !held[l.a] && !held[l.b] {
			continue // of a part that hangs by itself, where volts are no numbers
		}
		g, i0 := num(l.g), num(l.i0)
		for _, e := range [2][2]int{{l.a, l.b}, {l.b, l.a}} {
			add(rows[e[0]], e[0], g)
			add(rows[e[0]], e[1], num(0).Neg(g))
		}
		rhs[l.a].Sub(rhs[l.a], i0)
		rhs[l.b].Add(rhs[l.b], i0)
	}
	var order []int
	gone := make([]bool, nodes)
	for {
		k := -1
		for n := 1; n < nodes; n++ {
			if held[n] && !gone[n] && (k < 0 || len(rows[n]) < len(rows[k])) {
				k = n
			}
		}
		if k < 0 {
			break
		}
		gone[k] = true
		order = append(order, k)
		for i := range rows[k] {
			if i == 0 || gone[i] {
				continue
			}
			share := num(0).Quo(rows[i][k], rows[k][k])
			for j, v := range rows[k] {
				if j != k {
					add(rows[i], j, num(0).Neg(num(0).Mul(share, v)))
				}
			}
			delete(rows[i], k)
			rhs[i].Sub(rhs[i], num(0).Mul(share, rhs[k]))
		}
	}
	x := make([]*big.Float, nodes)
	x[0] = num(0)
	for _, k := range slices.Backward(order) {
		sum := num(0).Set(rhs[k])
		for j, v := range rows[k] {
			if j != k && x[j] != nil {
				sum.Sub(sum, num(0).Mul(v, x[j]))
			}
		}
		x[k] = sum.Quo(sum, rows[k][k])
	}
	return x
}
