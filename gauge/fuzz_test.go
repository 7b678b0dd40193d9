package gauge_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

// FuzzJudgeWire: whatever the figures, the judge does not panic, the quick
// verdict is the full one, and a case that passes has every floor met that
// may decide.
func FuzzJudgeWire(f *testing.F) {
	f.Add(10, 60.0, 3, 4.0, 8.5, 15.0, 270.0, 0.026, uint8(0))
	f.Add(-3, -40.0, 0, 0.1, 300.0, 400.0, 5000.0, 0.001, uint8(2))
	f.Add(22, 124.9, 40, 1e6, 1e-9, 1.0, 2.0, 1e9, uint8(1))
	f.Add(18, math.Inf(1), -1, math.NaN(), -5.0, math.Inf(1), -1.0, -1.0, uint8(7))
	kinds := []string{"blade", "mini", "maxi", "cartridge", "bolt-down", "glass", "breaker", ""}
	f.Fuzz(func(t *testing.T, awg int, ambientC float64, loaded int, lengthM, heatA, fuseA, shortA, maxOhm float64, kind uint8) {
		s, _ := gauge.AWGSize(awg)
		road, _ := gauge.ProfileOf("road")
		c := gauge.WireCase{
			Size: s, Family: gauge.FamilyFor(s), Profile: road, AmbientC: ambientC, Loaded: loaded, LengthM: lengthM,
			HeatA: heatA, FuseA: fuseA, FuseKind: kinds[int(kind)%len(kinds)], ShortA: shortA, MaxOhm: maxOhm, Wet: kind%2 == 0,
		}
		j := gauge.JudgeWire(c)
		require.Equal(t, j.OK, gauge.Fits(c))
		for _, l := range j.Limits {
			require.False(t, j.OK && !l.OK && !l.Hint, l.Name)
			if l.OK {
				require.False(t, math.IsNaN(l.Got) || math.IsNaN(l.Asked), l.Name)
			}
			require.NotEmpty(t, l.Why, l.Name)
		}
	})
}

// FuzzCurrentAndTemperature: at the ampacity of any place the conductor sits
// at its class temperature, and less current is never hotter.
func FuzzCurrentAndTemperature(f *testing.F) {
	f.Add(10, 60.0, 0.5)
	f.Add(20, 20.0, 0.9)
	f.Fuzz(func(t *testing.T, awg int, ambientC, share float64) {
		s, ok := gauge.AWGSize(awg)
		if !ok || !(ambientC >= -60 && ambientC <= 120) || !(share >= 0 && share <= 1) {
			return
		}
		fam := gauge.FamilyFor(s) // 125 C
		amps, _, _ := gauge.Ampacity(s, fam, ambientC, 1)
		require.InDelta(t, 125, gauge.ConductorTempC(s, fam, ambientC, amps), 1e-6)
		require.LessOrEqual(t, gauge.ConductorTempC(s, fam, ambientC, share*amps), 125+1e-6)
		require.LessOrEqual(t, s.OhmPerM(ambientC), s.OhmPerM(125))
	})
}
