package gauge_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

// A blade holds 1.1 x its rating for 100 h and 1.35 x for 0.35 s only (ISO
// 8820-3), so 40 A for 10 s ask for 36.4 A; 10 A held ask for 13.3 A.
func TestChooseFuseForStart(t *testing.T) {
	p, _ := gauge.ProfileOf("road")
	start := gauge.PullIn{FirstA: 40, FirstS: 10, HoldA: 10}
	rated, why, ok := gauge.ChooseFuseForStart("blade", 0, start, p)
	require.True(t, ok)
	require.InDelta(t, 40, rated, 0)
	require.Len(t, why, 3)
	require.InDelta(t, 36.36, why[1].Value, 0.01)

	rated, _, _ = gauge.ChooseFuseForStart("blade", 0, gauge.PullIn{FirstA: 12, FirstS: 10, HoldA: 10}, p)
	require.InDelta(t, 15, rated, 0, "what is held governs: 10 / 0.75")
	rated, _, _ = gauge.ChooseFuseForStart("blade", 0, gauge.PullIn{FirstA: 40, FirstS: 0.2, HoldA: 10}, p)
	require.InDelta(t, 30, rated, 0, "1.35 x for 0.35 s: 40 / 1.35 = 29.6 A")
	rated, _, _ = gauge.ChooseFuseForStart("glass-slow", 0, start, p)
	require.Zero(t, rated, "the series ends at 30 A")
	rated, _, _ = gauge.ChooseFuseForStart("blade", 8.5, gauge.PullIn{}, p)
	plain, _, _ := gauge.ChooseFuse("blade", 8.5, p)
	require.InDelta(t, plain, rated, 0)

	share, source := gauge.HoldsFor("maxi", 10)
	require.InDelta(t, 1, share, 0, "its gates are from memory and decide nothing")
	require.Equal(t, "fuse-margin", source)
}
