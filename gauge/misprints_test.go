package gauge_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

// What holds instead of each misprint, by our own laws.
func TestMisprints(t *testing.T) {
	for _, m := range gauge.Misprints() {
		_, ok := gauge.SourceOf(m.Source)
		require.True(t, ok, m.Where)
		require.NotEqual(t, m.Printed, m.Holds)
		require.NotEmpty(t, m.Why)
	}
	ten, _ := gauge.AircraftSize(10)
	twelve, _ := gauge.AircraftSize(12)
	require.InDelta(t, 0.491, gauge.DropOver(gauge.ConductorFt(19.5), ten, 20, 20, 28).Volts, 5e-4)
	require.InDelta(t, 3.555, gauge.DropOver(gauge.ConductorFt(88), twelve, 20, 20, 28).Volts, 5e-4)
	require.InDelta(t, 168.9, gauge.OnderdonkA(2581*gauge.MM2PerCmil, 5, 25), 0.1) // not 178 A, with 234 - Ta
	// border cells: what is needed against the area that was printed or taken
	need := func(amps, feet, volts float64) float64 {
		return gauge.CmilFor(gauge.ConductorFt(feet), gauge.KRoom, amps, volts)
	}
	require.InDelta(t, 0.024, 1-gauge.AWGCmil(6)/need(15, 60, 0.36), 0.001)
	require.InDelta(t, 0.029, 1-gauge.AWGCmil(12)/need(50, 15, 1.2), 0.001)
	require.InDelta(t, 0.004, 1-sized(2).Cmil()/need(70, 30, 0.36), 0.001)
	require.InDelta(t, 0.13, 1-sized(2).Cmil()/need(80, 30, 0.36), 0.005)
	require.InDelta(t, 0.13, 1-sized(1).Cmil()/need(100, 30, 0.36), 0.005)
	require.InDelta(t, 0.09, sized(6).Cmil()/need(25, 30, 0.36)-1, 0.01)
	for _, cell := range [][3]float64{{90, 15, 4}, {90, 30, 1}, {30, 90, 1}, {50, 70, 0}} {
		spare := gauge.AWGCmil(int(cell[2]))/need(cell[0], cell[1], 0.36) - 1
		require.True(t, spare > 0.005 && spare < 0.04, "%v: %g", cell, spare)
		require.Less(t, sized(int(cell[2])).Cmil(), need(cell[0], cell[1], 0.36))
	}
}
