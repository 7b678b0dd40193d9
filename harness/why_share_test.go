package harness_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/size"
)

// Kirchhoff's voltage law for every judged load of the truck: what wires,
// joints, fuses, contacts and drivers take adds up to what is lost. Nothing is
// left for "the rest": the truck's metals are ideal.
func TestSharesAddUpForEveryLoad(t *testing.T) {
	r := truck(t)
	drivers := 0
	require.NotEmpty(t, r.Sizes.Drops())
	for _, p := range r.Sizes.Drops() {
		sum := 0.0
		for _, x := range p.Shares {
			sum += x.Volts + x.JointV
			if x.Kind == size.DriverShare {
				drivers++
			}
		}
		require.InDelta(t, p.DropV+p.DriverV+p.StatedV, sum, 1e-6, "%s in %s", p.Device.Name, p.Step.Name)
	}
	require.Positive(t, drivers, "no load behind a controller's output")
}
