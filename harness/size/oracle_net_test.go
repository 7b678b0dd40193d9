package size

import (
	"fmt"
	"math/rand/v2"
	"strings"
)

// oracleNet is a small invented network of motors, whose current no size
// changes, so that each loss is a plain sum: every wire with what flows in it,
// and every motor with the wires on its way out and back.
type oracleNet struct {
	text  strings.Builder
	wires int // open ones, numbered from 1
	loads []oracleLoad
}

type oracleLoad struct {
	name   string
	ampsA  float64
	limitV float64
	way    []int
}

// newOracleNet draws a tree of up to 7 wires behind a fuse of 10 A, so small
// that no short circuit asks for more than drop does: motors on a row of
// splices that feed them and, in some, on one that takes them back.
func newOracleNet(rng *rand.Rand) *oracleNet {
	n := &oracleNet{}
	n.text.WriteString("draft 1\nbattery G1 cca 600A grounds-to frame\nstud E1 on frame M6\nfuse F1 10A from G1 6in\n")
	n.text.WriteString("wire 90 G1.+ F1.1 8AWG 6in\nsplice J0\nsplice J1\nsplice J2\nsplice J9\n")
	var out [3][]int // wires on the way to each splice
	from := "F1.2"
	depth := 1 + rng.IntN(3)
	for i := range depth {
		if i > 0 {
			from, out[i] = fmt.Sprintf("J%d", i-1), append(out[i], out[i-1]...)
		}
		out[i] = append(out[i], n.wire(rng, from, fmt.Sprintf("J%d", i)))
	}
	back := 0
	if rng.IntN(2) == 0 {
		back = n.wire(rng, "J9", "E1")
	}
	for left := 8.0; n.wires < 7 && left > 0.6 && (len(n.loads) == 0 || rng.IntN(5) > 0); {
		l := oracleLoad{name: fmt.Sprintf("M%d", len(n.loads)+1), ampsA: 0.5 + rng.Float64()*(left-0.5)}
		l.ampsA = float64(int(l.ampsA*10)) / 10
		left -= l.ampsA
		percent := 2 + rng.IntN(5)
		l.limitV = 0.12 * float64(percent)
		at := rng.IntN(depth)
		if len(n.loads) == 0 {
			at = depth - 1
		}
		fmt.Fprintf(&n.text, "circuit c%s drop %d%%\n  ", l.name, percent)
		l.way = append(append(l.way, out[at]...), n.wire(rng, fmt.Sprintf("J%d", at), l.name+".+"))
		metal := "grounds-to frame"
		switch {
		case back > 0 && n.wires < 7:
			l.way, metal = append(l.way, n.wire(rng, l.name+".-", "J9"), back), ""
		case n.wires < 7 && rng.IntN(2) == 0:
			l.way, metal = append(l.way, n.wire(rng, l.name+".-", "E1")), ""
		}
		fmt.Fprintf(&n.text, "motor %s draws %.1fA 13.5V %s\n", l.name, l.ampsA, metal)
		n.loads = append(n.loads, l)
	}
	return n
}

func (n *oracleNet) wire(rng *rand.Rand, from, to string) int {
	n.wires++
	fmt.Fprintf(&n.text, "wire %d %s %s %dft\n", n.wires, from, to, 1+rng.IntN(20))
	return n.wires
}

// through is the current of a wire.
func (n *oracleNet) through(wire int) (amps float64) {
	for _, l := range n.loads {
		for _, w := range l.way {
			if w == wire {
				amps += l.ampsA
			}
		}
	}
	return amps
}

// withLamps turns the motors into lamps of the same current at 13.5 V, which
// draw less as they get less.
func (n *oracleNet) withLamps() string {
	src := n.text.String()
	for _, l := range n.loads {
		src = strings.NewReplacer(
			fmt.Sprintf("motor %s draws %.1fA", l.name, l.ampsA), fmt.Sprintf("lamp %s %.0fW", l.name, 13.5*l.ampsA),
			l.name+".+", l.name+".1", l.name+".-", l.name+".2",
		).Replace(src)
	}
	return src
}
