package size

import "slices"

const (
	// patchChains is how many chains are tried together.
	patchChains = 7
	// patchTries bounds the sizes tried in one patch.
	patchTries = 20000
)

// patch is a few chains that share losses, to be made as light as they can be
// while all the others stay.
type patch struct {
	d      *divider
	margin float64
	chains []int
	sizes  [][]patchSize              // by chain: from the thinnest that it may have
	spare  []float64                  // by limit: what the chains tried may take, less what those before have
	least  [patchChains + 1][]float64 // by chain and limit: what it and those after it take at their thickest
	light  [patchChains + 1]float64   // by chain: what it and those after it weigh at their thinnest
	at     []int
	best   []int
	grams  float64 // of best
	tries  int
	seen   []int
	stands []float64 // by limit and chain: what it takes as it stands
	bound  []*loss   // by limit: the first loss that makes it
	room   []float64 // for the lists of volts of one patch
	picks  []patchSize
	flows  []flow // of one chain in one loss
}

// patchSize is one size of a chain: its copper, and what it takes of each limit.
type patchSize struct {
	grams float64
	takes []float64
}

// around sets a patch up about a chain; ok is false where nothing can come of it.
func (p *patch) around(c int) (ok bool) {
	d := p.d
	if len(d.onPath[c]) > hubLosses {
		return false
	}
	if p.chains = d.neighbors(c, p.chains); len(p.chains) < 2 {
		return false // trimming has seen to one by itself
	}
	if !p.pays() || !p.mayThin() {
		return false
	}
	p.sizes, p.picks = p.sizes[:0], p.picks[:0]
	p.at, p.best, p.grams = p.at[:0], p.best[:0], 0
	for _, c := range p.chains {
		ch := &d.chains[c]
		low := min(ch.low(), ch.rung)
		from := len(p.picks)
		for rung := low; rung <= max(ch.top, ch.rung); rung++ {
			p.picks = append(p.picks, patchSize{grams: ch.grams(rung)})
		}
		p.sizes, p.at, p.best = append(p.sizes, p.picks[from:]), append(p.at, 0), append(p.best, ch.rung-low)
		p.grams += ch.grams(ch.rung)
	}
	p.limits()
	p.fill()
	p.bounds()
	return p.grams > p.light[0]
}

// limits finds what each loss on the chains leaves them. Steps in which a load
// draws the same on the same way make one limit.
func (p *patch) limits() {
	p.spare, p.stands, p.bound = p.spare[:0], p.stands[:0], p.bound[:0]
	p.seen = p.seen[:0]
	for _, c := range p.chains {
		p.seen = append(p.seen, p.d.onPath[c]...)
	}
	slices.Sort(p.seen)
	for _, i := range slices.Compact(p.seen) {
		l := p.d.losses[i]
		now := 0.0
		var takes [patchChains]float64
		for k := range p.chains {
			takes[k] = p.takes(p.flowsOf(l, k), k, p.best[k])
			now += takes[k]
		}
		spare := max(now, l.limitV*(1-p.margin)-l.dropV+now)
		if same := p.known(takes[:len(p.chains)]); same >= 0 {
			p.spare[same] = min(p.spare[same], spare)
			continue
		}
		p.spare, p.bound = append(p.spare, spare), append(p.bound, l)
		p.stands = append(p.stands, takes[:len(p.chains)]...)
	}
}

// fill works out what every size of every chain takes of each limit.
func (p *patch) fill() {
	n := len(p.spare)
	p.room = slices.Grow(p.room[:0], n*len(p.picks))[:n*len(p.picks)]
	room := p.room
	for _, list := range p.sizes {
		for r := range list {
			list[r].takes, room = room[:n], room[n:]
		}
	}
	for i, l := range p.bound {
		for k, list := range p.sizes {
			flows := p.flowsOf(l, k)
			for r := range list {
				list[r].takes[i] = p.takes(flows, k, r)
			}
		}
	}
}

// flowsOf lists the flows of a loss in the k-th chain, until the next list.
func (p *patch) flowsOf(l *loss, k int) []flow {
	p.flows = p.flows[:0]
	for _, f := range l.flows {
		if p.d.of[f.wire.ID] == p.chains[k] {
			p.flows = append(p.flows, f)
		}
	}
	return p.flows
}

// takes is what the k-th chain takes by its flows at a size.
func (p *patch) takes(flows []flow, k, size int) (volts float64) {
	ch := &p.d.chains[p.chains[k]]
	rung := ch.rung - p.best[k] + size
	for _, f := range flows {
		volts += f.amps * ch.ohm(f.wire, rung)
	}
	return volts
}

// known finds a limit of which the chains take the same as they stand, -1 for none.
func (p *patch) known(takes []float64) int {
	n := len(takes)
	for i := range p.spare {
		if slices.Equal(p.stands[i*n:(i+1)*n], takes) {
			return i
		}
	}
	return -1
}

// bounds adds up what the chains take and weigh at the least.
func (p *patch) bounds() {
	n := len(p.chains)
	for k := range p.least {
		p.least[k] = append(p.least[k][:0], make([]float64, len(p.spare))...)
	}
	p.light[n] = 0
	for k := n - 1; k >= 0; k-- {
		list := p.sizes[k]
		for i, volts := range list[len(list)-1].takes {
			p.least[k][i] = p.least[k+1][i] + volts
		}
		p.light[k] = p.light[k+1] + list[0].grams
	}
}

// leastSavedG is what a change has to save to be one.
const leastSavedG = 1e-9

// solve gives the chains the lightest sizes that keep every limit; ok is
// false where they have these.
func (p *patch) solve() (ok bool) {
	t := p.find()
	for _, x := range t {
		p.d.move(x.chain, x.by)
	}
	return len(t) > 0
}

// find tries the sizes of all chains and says what makes them the lightest.
func (p *patch) find() (t trial) {
	before := slices.Clone(p.best)
	p.tries = 0
	p.try(0, 0)
	for k, c := range p.chains {
		if by := p.best[k] - before[k]; by != 0 {
			t = append(t, change{c, by})
		}
	}
	return t
}

// try goes through the sizes of the k-th chain, those before it as they are.
func (p *patch) try(k int, grams float64) {
	if k == len(p.chains) {
		p.grams = grams
		p.best = append(p.best[:0], p.at...)
		return
	}
	for r := range p.sizes[k] {
		s := &p.sizes[k][r]
		if p.tries++; p.tries > patchTries || grams+s.grams+p.light[k+1] >= p.grams-leastSavedG {
			return // the thicker ones are heavier still
		}
		met := true
		for i, volts := range s.takes {
			if p.spare[i]-volts < p.least[k+1][i] {
				met = false
				break
			}
		}
		if !met {
			continue
		}
		p.at[k] = r
		for i, volts := range s.takes {
			p.spare[i] -= volts
		}
		p.try(k+1, grams+s.grams)
		for i, volts := range s.takes {
			p.spare[i] += volts
		}
	}
}
