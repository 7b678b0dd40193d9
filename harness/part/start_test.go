package part

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

// Worked by hand. The load test line is from service information: at -18 C a
// 12 V battery has to hold 8.5 V at half its CCA, at 21 C 9.6 V; SAE J537 asks
// for 7.2 V at the CCA at -18 C. Rested volts are those of the published
// table: 12.24 V at half charge, 12.06 V at a quarter.
func TestStart(t *testing.T) {
	usual := Start{}
	require.InDelta(t, -18, usual.Temp(), 0)
	require.InDelta(t, 5.4/500, usual.ohm(500), 1e-12)
	require.InDelta(t, 12.65, usual.rest(), 0)

	half := Start{Drained: true, Percent: 50}
	require.InDelta(t, 12.24, half.rest(), 1e-12)
	require.InDelta(t, (12.6-8.5)/250, half.ohm(500), 1e-12) // 16.4 mohm
	require.InDelta(t, 12.15, Start{Drained: true, Percent: 37.5}.rest(), 1e-12)

	warm := Start{Drained: true, Percent: 50, Cooled: true, TempC: 21}
	require.InDelta(t, 6.0/500, warm.ohm(500), 1e-12)
	require.InDelta(t, 6.0/500, Start{Cooled: true, TempC: 21}.ohm(500), 1e-12)
	require.InDelta(t, 6.0/500, Start{Cooled: true, TempC: 60}.ohm(500), 1e-12)

	// Below the table its first slope goes on: 0.2 V in 6 C.
	arctic := Start{Drained: true, Percent: 50, Cooled: true, TempC: -30}
	require.InDelta(t, (12.6-8.1)/250, arctic.ohm(500), 1e-12)
}

// A starter of 150 A draws 300 A at -18 C, and halfway to 20 C 225 A.
func TestStartOfAStarter(t *testing.T) {
	kind, _ := Of("starter")
	d := &Device{Kind: kind}
	for tempC, amps := range map[float64]float64{gauge.ColdC: 300, 1: 225, 20: 150, 50: 150, -37: 375} {
		require.InDelta(t, amps, Start{Cooled: true, TempC: tempC}.starter(150, d), 1e-9, "%g C", tempC)
	}
}

func TestWeakerIsNeverBetter(t *testing.T) {
	for tempC := -40.0; tempC < 60; tempC++ {
		for percent := 0.0; percent < 100; percent++ {
			s := Start{Cooled: true, TempC: tempC, Drained: true, Percent: percent}
			more, warmer := s, s
			more.Percent++
			warmer.TempC++
			require.Less(t, s.rest(), more.rest())
			require.GreaterOrEqual(t, s.ohm(500), warmer.ohm(500))
		}
	}
}
