package part

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// Hand arithmetic for each way of saying how a load comes and goes.
func TestRhythm(t *testing.T) {
	for name, c := range map[string]struct {
		w                   Draw
		heat, average, more float64
	}{
		"always on":             {Draw{Amps: 8, DutyFrac: 1}, 8, 8, 0},
		"not said":              {Draw{Amps: 8}, 8, 8, 0},
		"duty 25 %":             {Draw{Amps: 8, DutyFrac: 0.25}, 4, 2, 0},
		"2 s of 8 s":            {Draw{Amps: 8, DutyFrac: 0.25, OnS: 2, PeriodS: 8}, 4, 2, 0},
		"3 min of 10 min":       {Draw{Amps: 8, DutyFrac: 0.3, OnS: 180, PeriodS: 600}, 8, 2.4, 0},
		"peak, once an hour":    {Draw{Amps: 2, DutyFrac: 1, PeakA: 5, PeakS: 30}, 2, 2, 3},
		"peak, 3 min of 10 min": {Draw{Amps: 2, DutyFrac: 0.3, OnS: 180, PeriodS: 600, PeakA: 5, PeakS: 30}, 2, 0.6 + 3*30.0/600, 3},
	} {
		t.Run(name, func(t *testing.T) {
			require.InDelta(t, c.heat, c.w.HeatA(c.w.Amps), 1e-9)
			require.InDelta(t, c.average, c.w.AverageA(), 1e-9)
			require.InDelta(t, c.more, c.w.ExtraA(c.w.Amps), 1e-9)
		})
	}
	require.False(t, math.IsNaN((&Draw{}).AverageA()))
}
