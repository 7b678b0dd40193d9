package deck

import (
	"fmt"

	"legwork/harness/model"
	"legwork/harness/part"
)

// idealOhm is the resistance below which two points are one.
const idealOhm = 1e-6

// points numbers the nodes: 0 is the reference.
type points struct {
	terminal []int // by terminal ID
	metal    []int // by metal ID
	count    int
	ties     []tie
}

// tie is a resistance that no device has.
type tie struct {
	a, b int
	ohm  float64
	name string
}

// number gives every point of the harness its node: what a bus bar, a bolt on
// metal or a mated plug holds together is one. A metal with a resistance is a
// star with half of it in each ray; a plug has one in nominal figures.
func number(m *model.Model, g part.Grade) points {
	terminals := len(m.Terminals)
	same := make([][]int, terminals+len(m.Metals))
	join := func(i, j int) { same[i], same[j] = append(same[i], j), append(same[j], i) }
	for _, t := range m.Terminals {
		for _, o := range t.Bus {
			join(t.ID, o.ID)
		}
		if t.Metal != nil && t.Metal.Ohm < idealOhm {
			join(t.ID, terminals+t.Metal.ID)
		}
	}
	var pairs []tie
	for _, d := range m.Devices {
		for _, c := range d.Couples() {
			a, b := d.Terminal(c.A), d.Terminal(c.B)
			switch {
			case a == nil || b == nil:
			case g == part.Nominal && c.Ohm >= idealOhm:
				pairs = append(pairs, tie{a.ID, b.ID, c.Ohm, d.Name + " " + c.A + "-" + c.B})
			default:
				join(a.ID, b.ID)
			}
		}
	}
	for _, t := range m.Terminals {
		if t.Metal != nil && t.Metal.Ohm >= idealOhm {
			pairs = append(pairs, tie{t.ID, terminals + t.Metal.ID, t.Metal.Ohm / 2, "metal " + t.Metal.Name + " at " + fullName(t)})
		}
	}
	of, count := colored(same, ground(m))
	for i := range pairs {
		pairs[i].a, pairs[i].b = of[pairs[i].a], of[pairs[i].b]
	}
	return points{terminal: of[:terminals], metal: of[terminals:], count: count, ties: pairs}
}

// colored numbers groups of points from 1, the group of first from 0.
func colored(same [][]int, first int) (of []int, count int) {
	of, count = make([]int, len(same)), 1
	for i := range of {
		of[i] = -1
	}
	paint := func(from, n int) {
		of[from] = n
		for list := []int{from}; len(list) > 0; list = list[1:] {
			for _, o := range same[list[0]] {
				if of[o] < 0 {
					of[o] = n
					list = append(list, o)
				}
			}
		}
	}
	if first >= 0 {
		paint(first, 0)
	}
	for i := range of {
		if of[i] < 0 {
			paint(i, count)
			count++
		}
	}
	return of, count
}

// ground is the terminal that counts as 0 V, -1 for none: the negative post of
// the first battery that stands on no other one, or else of any source.
func ground(m *model.Model) int {
	on := map[int]bool{}
	var batteries, others []*model.Terminal
	nets := m.Nets()
	for _, d := range m.Devices {
		for _, s := range d.Supplies() {
			minus, plus := d.Terminal(s.Minus), d.Terminal(s.Plus)
			switch {
			case minus == nil:
			case !s.Battery:
				others = append(others, minus)
			default:
				batteries = append(batteries, minus)
				if plus != nil {
					on[nets.Of[plus.ID]] = true
				}
			}
		}
	}
	for _, t := range batteries {
		if !on[nets.Of[t.ID]] {
			return t.ID
		}
	}
	if all := append(batteries, others...); len(all) > 0 {
		return all[0].ID
	}
	return -1
}

// Node is the name of a terminal's node in every deck.
func (d *Decks) Node(t *model.Terminal) string { return nodeName(d.points.terminal[t.ID]) }

func nodeName(n int) string {
	if n == 0 {
		return "0"
	}
	return fmt.Sprint("n", n)
}

// fullName is the name of a terminal as the user typed it, or would.
func fullName(t *model.Terminal) string {
	switch {
	case t.Shown != "":
		return t.Shown
	case t.Device.Kind.Self:
		return t.Device.Name
	}
	return t.Device.Name + "." + t.Name
}
