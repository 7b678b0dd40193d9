package harness

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestRoundKeepsDigits(t *testing.T) {
	require.Equal(t, 31.6439, round(31.64390000000001, 4))
	require.Equal(t, 0.0, round(-1e-12, 9))
	require.Equal(t, 29.296382, round(29.2963816, 6))
}
