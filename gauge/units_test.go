package gauge_test

import (
	"fmt"
	"os"
	"os/exec"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

// unitsOf asks GNU units (Debian package units) for have in want. Under CI
// the program has to be there; elsewhere its absence skips the test.
func unitsOf(t *testing.T, have, want string) float64 {
	t.Helper()
	path, err := exec.LookPath("units")
	if err != nil {
		require.NotEqual(t, "true", os.Getenv("CI"), "GNU units is missing: .ci/run installs it")
		t.Skip("GNU units is not installed")
	}
	out, err := exec.Command(path, "--terse", "--digits", "15", have, want).CombinedOutput()
	require.NoError(t, err, "units %q %q: %s", have, want, out)
	v, err := strconv.ParseFloat(strings.TrimSpace(string(out)), 64)
	require.NoError(t, err, "%s", out)
	return v
}

// Diameter and area of every gauge, 4/0 to 30, by an independent program.
func TestUnitsAgreesOnGauges(t *testing.T) {
	for n := -3; n <= 30; n++ {
		wire := fmt.Sprintf("wiregauge(%d)", n)
		require.InEpsilon(t, unitsOf(t, wire, "mm"), gauge.AWGDiameterMM(n), 1e-12, wire)
		area := fmt.Sprintf("circlearea(%s/2)", wire)
		require.InEpsilon(t, unitsOf(t, area, "mm^2"), gauge.AWGAreaMM2(n), 1e-12, area)
		require.InEpsilon(t, unitsOf(t, area, "circularmil"), gauge.AWGCmil(n), 1e-12, area)
	}
}

// The unit conversions that figures pass through, and copper: 58 MS/m gives
// 17.241 nohm m, 10.371 ohm cmil/ft, and the density that weights are made of.
func TestUnitsAgreesOnConversions(t *testing.T) {
	within := func(have, want string, got, share float64) {
		t.Helper()
		require.InEpsilon(t, unitsOf(t, have, want), got, share, "%s in %s", have, want)
	}
	within("1 circularmil", "mm^2", gauge.MM2PerCmil, 1e-14)
	within("1 ft", "m", gauge.MeterPerFoot, 1e-15)
	within("1 / copperconductivity", "ohm m", gauge.RhoCopper20, 5e-5) // five digits carried
	within("1 / copperconductivity", "ohm circularmil / ft", gauge.KIACS, 5e-5)
	within("copperdensity", "g/cm^3", gauge.CopperDensity, 1e-12)
	within("7 in", "m", gauge.FirstFuseM, 1e-12)
	within("40 in", "m", gauge.SheathedM, 1e-12)
	within("72 in", "m", gauge.SheathedFeedM, 1e-12)
	within("3 in", "m", gauge.TailM, 1e-12)
	within("1 ohm / kft", "ohm/m", 1/(1000*gauge.MeterPerFoot), 1e-12)
	// drop of 10 AWG over 20 ft out and back at 15 A, by units alone
	within("2 20 ft 15 A / (copperconductivity circlearea(wiregauge(10)/2))", "V",
		gauge.DropOver(gauge.OneWayFt(20).Conductor(gauge.ByWire), gauge.Size{AreaMM2: gauge.AWGAreaMM2(10)}, 20, 15, 12).Volts, 5e-5)
}
