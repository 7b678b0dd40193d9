package size

import (
	"cmp"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

// lighter lists every choice of sizes with less copper than the chooser's own,
// the lightest first, save those that would lose 5 % more than allowed if no
// current changed.
type lighter struct {
	c    *chooser
	d    *divider
	open []int
	was  []int // rungs of all chains
	at   []int
	list []choice
	now  float64
}

type choice struct {
	rungs []int
	grams float64
}

func newLighter(t *testing.T, c *chooser) *lighter {
	t.Helper()
	d, err := c.replay(t.Context())
	require.NoError(t, err)
	l := &lighter{c: c, d: d, was: c.rungs(), now: d.copper()}
	for i := range c.chains {
		if !c.chains[i].fixed {
			l.open = append(l.open, i)
		}
	}
	l.at = make([]int, len(l.open))
	l.search(0, 0)
	slices.SortFunc(l.list, func(a, b choice) int { return cmp.Compare(a.grams, b.grams) })
	return l
}

func (l *lighter) search(k int, grams float64) {
	if grams >= l.now-leastSavedG {
		return
	}
	if k == len(l.open) {
		if l.near() {
			l.list = append(l.list, choice{slices.Clone(l.at), grams})
		}
		return
	}
	ch := &l.c.chains[l.open[k]]
	for l.at[k] = 0; l.at[k] <= ch.top; l.at[k]++ {
		l.search(k+1, grams+ch.grams(l.at[k]))
	}
}

func (l *lighter) near() bool {
	for _, x := range l.d.losses {
		volts := x.dropV
		for _, f := range x.flows {
			if k := slices.Index(l.open, l.c.of[f.wire.ID]); k >= 0 {
				volts += f.amps * (l.c.ohmAt(f.wire, l.at[k]) - l.c.ohmAt(f.wire, l.was[l.open[k]]))
			}
		}
		if volts > 1.05*x.limitV {
			return false
		}
	}
	return true
}

// stands plays a choice: nothing may ask for more, no loss pass its limit.
func (l *lighter) stands(t *testing.T, x choice) bool {
	t.Helper()
	for k, i := range l.open {
		l.c.chains[i].rung = x.rungs[k]
	}
	tried := l.c.rungs()
	for range 2 { // the second time with the copper as warm as it gets
		_, err := l.c.replay(t.Context())
		require.NoError(t, err)
	}
	for p := range l.c.drops() {
		if p.DropV > p.LimitV {
			return false
		}
	}
	return slices.Equal(tried, l.c.rungs())
}

// The same with lamps, whose currents change with every size: every lighter
// choice is played. What is found has the least copper in 99 of 100 networks,
// and is nowhere 2 % over it.
func TestLeastCopperOfLamps(t *testing.T) {
	rng := rand.New(rand.NewPCG(21, 4))
	solved, best, worst := 0, 0, 0.0
	for range 120 {
		c := settled(t, newOracleNet(rng).withLamps())
		if len(c.stuck) > 0 {
			continue
		}
		l := newLighter(t, c)
		at := slices.IndexFunc(l.list, func(x choice) bool { return l.stands(t, x) })
		if solved++; at < 0 {
			best++
			continue
		}
		worst = max(worst, l.now/l.list[at].grams-1)
	}
	t.Logf("%d of %d with the least copper, the worst %.2f %% over it", best, solved, 100*worst)
	require.Greater(t, solved, 100)
	require.GreaterOrEqual(t, float64(best), 0.99*float64(solved))
	require.LessOrEqual(t, worst, 0.02)
}
