package size

import (
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestQueueGivesTheWidestFirst(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 200 {
		var q queue[wideAt]
		var all []wideAt
		for range rng.IntN(40) {
			x := wideAt{float64(rng.IntN(8)), rng.IntN(8)}
			q.push(x)
			all = append(all, x)
			if rng.IntN(4) == 0 {
				slices.SortFunc(all, widestFirst)
				require.Equal(t, all[0], q.pop())
				all = all[1:]
			}
		}
		slices.SortFunc(all, widestFirst)
		for _, want := range all {
			require.Equal(t, want, q.pop())
		}
		require.Empty(t, q)
	}
}

func widestFirst(a, b wideAt) int {
	switch {
	case a.before(b):
		return -1
	case b.before(a):
		return 1
	}
	return 0
}
