package quantity

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestNumber(t *testing.T) {
	for v, want := range map[float64]string{
		0: "0", -1e-320: "0", 0.30254321: "0.3025", 12.65: "12.65", -3.00004: "-3", 2.081e-5: "2.081e-05", 1234567: "1235000",
		math.Inf(1): "?",
	} {
		require.Equal(t, want, Number(v))
	}
}
