package size

import (
	"slices"

	"legwork/harness/model"
)

// copperGramPerMM3 is the density of copper, 8.96 g/cm3.
const copperGramPerMM3 = 8.96e-3

// loss is one judged path: its volts lost, the limit, and what flows where.
type loss struct {
	dropV, limitV float64
	flows         []flow
	hot           bool // while a flat battery is charged
}

func (l *loss) excess() float64 { return l.dropV - l.limitV }

// divider grows chains until every loss is within its limit. It is greedy:
// the chain that saves the most millivolts a gram of copper grows first.
type divider struct {
	of     []int // by wire ID: its chain
	chains []chain
	losses []*loss
	onPath [][]int // by chain: indexes of the losses that it lies on
	queue  queue[gainAt]
	stamp  []int   // by chain: version of its entry in the queue
	moved  []int   // room for the chains that a move touches
	shared []int32 // room for counts, by chain; all 0
}

// chain is the wires that share one size, with what they weigh and resist at
// each step of the ladder.
type chain struct {
	wires []*model.Wire
	rung  int // index into the ladder
	floor int
	least int    // a rung that trimming must not go below
	pays  int    // the rung up to which growth pays for a limit that can't be met
	by    string // the limit that set the floor
	fixed bool   // the draft gave the sizes
	ohm   func(w *model.Wire, rung int) float64
	grams func(rung int) float64
	top   int // highest rung that drop may grow it to
	most  int // highest rung that any floor may lift it to
}

// saved is the volts that a loss gains when chain c grows by one rung.
func (d *divider) saved(c int, l *loss, by int) float64 {
	ch := &d.chains[c]
	volts := 0.0
	for _, f := range l.flows {
		if d.of[f.wire.ID] == c {
			volts += f.amps * (ch.ohm(f.wire, ch.rung) - ch.ohm(f.wire, ch.rung+by))
		}
	}
	return volts
}

// gain is the useful volts a gram that growing chain c brings now.
func (d *divider) gain(c int) float64 {
	ch := &d.chains[c]
	if ch.fixed || ch.rung >= ch.top {
		return 0
	}
	useful := 0.0
	for _, i := range d.onPath[c] {
		if l := d.losses[i]; l.excess() > 0 {
			useful += min(d.saved(c, l, 1), l.excess())
		}
	}
	return useful / (ch.grams(ch.rung+1) - ch.grams(ch.rung))
}

// grow runs until nothing fails or nothing can grow.
func (d *divider) grow() {
	d.stamp = make([]int, len(d.chains))
	for c := range d.chains {
		d.enqueue(c)
	}
	for len(d.queue) > 0 {
		e := d.queue.pop()
		if e.stamp != d.stamp[e.chain] {
			continue
		}
		touched := d.move(e.chain, 1)
		for _, c := range touched {
			d.enqueue(c)
		}
	}
}

func (d *divider) enqueue(c int) {
	d.stamp[c]++
	if g := d.gain(c); g > 0 {
		// Rounded, so that of chains that are alike no last digit decides.
		d.queue.push(gainAt{gain: float64(float32(g)), chain: c, stamp: d.stamp[c]})
	}
}

// move grows (+1) or shrinks (-1) a chain by one rung, brings the losses up to
// date and gives the chains whose gain may have changed, in order. The list is
// overwritten by the next move.
func (d *divider) move(c, by int) []int {
	touched := append(d.moved[:0], c)
	for _, i := range d.onPath[c] {
		l := d.losses[i]
		l.dropV -= d.saved(c, l, by)
		for _, f := range l.flows {
			touched = append(touched, d.of[f.wire.ID])
		}
	}
	d.chains[c].rung += by
	slices.Sort(touched)
	d.moved = touched
	return slices.Compact(touched)
}

// trim takes back growth that later growth elsewhere made needless, heaviest
// chain first, so that no chain could be a rung thinner by itself.
func (d *divider) trim() {
	for _, c := range d.heaviest() {
		for d.chains[c].rung > max(d.chains[c].floor, d.chains[c].least, d.chains[c].pays) && d.spare(c) {
			d.move(c, -1)
		}
	}
}

// heaviest lists the chains above their floors, that with most copper first.
func (d *divider) heaviest() []int {
	order := make([]int, 0, len(d.chains))
	for c := range d.chains {
		if d.chains[c].rung > d.chains[c].floor {
			order = append(order, c)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int {
		ga, gb := d.chains[a].grams(d.chains[a].rung), d.chains[b].grams(d.chains[b].rung)
		switch {
		case ga > gb:
			return -1
		case ga < gb:
			return 1
		}
		return 0
	})
	return order
}

// spare reports whether chain c could be a rung thinner with every loss on it
// still within its limit.
func (d *divider) spare(c int) bool {
	return d.nearlySpare(c, func(*loss) float64 { return 0 })
}

// nearlySpare is spare where what the chain adds to a loss may turn out less
// than predicted, by no more than a share of it.
func (d *divider) nearlySpare(c int, share func(l *loss) float64) bool {
	for _, i := range d.onPath[c] {
		l := d.losses[i]
		if l.dropV-(1-share(l))*d.saved(c, l, -1) > l.limitV {
			return false
		}
	}
	return true
}

type gainAt struct {
	gain  float64
	chain int
	stamp int
}

// before puts the greatest gain first; equal gains go by chain.
func (a gainAt) before(b gainAt) bool {
	if a.gain != b.gain {
		return a.gain > b.gain
	}
	if a.chain != b.chain {
		return a.chain < b.chain
	}
	return a.stamp < b.stamp
}
