package quantity

import (
	"fmt"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// The quick way gives the very same float64 as exact fractions, in every unit.
func TestQuickIsExact(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 5))
	taken := 0
	for _, u := range units {
		for range 400 {
			figure := fmt.Sprint(rng.IntN(1000))
			if places := rng.IntN(12); places > 0 {
				figure += fmt.Sprintf(".%0*d", places, rng.Int64N(int64(pow10(places))))
			}
			v, ok := quick(figure, u)
			if !ok {
				continue
			}
			taken++
			exact, _ := new(big.Rat).SetString(figure)
			want, _ := exact.Mul(exact, big.NewRat(u.num, u.den)).Float64()
			require.Equal(t, want, v, "%s%s", figure, u.name)
		}
	}
	require.Greater(t, taken, 1000)
}

func pow10(n int) int {
	v := 1
	for range n {
		v *= 10
	}
	return v
}

func TestQuickLeavesTheRest(t *testing.T) {
	in, _ := unitNamed("in")
	for _, figure := range []string{"3/8", "1.2.3", "99999999999999999999", "0.12345678901234567890"} {
		_, ok := quick(figure, in)
		require.False(t, ok, figure)
	}
	for _, text := range []string{"-0V", "0V", "0.0V"} {
		q, err := Parse(text)
		require.NoError(t, err)
		require.Equal(t, "0V", Format(q.Value, Voltage))
	}
}
