package harness_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
)

const twoFuses = `option winter  "Winter kit"
battery G1  grounds-to frame
fuse    F1  15A  from G1 6in
switch  S1  closed
lamp    P1  5W  grounds-to frame
heater  R1  120W  grounds-to frame  option winter
wire 1  G1.+  F1.1  6in
wire 2  F1.2  S1.1  1ft
wire 3  S1.2  P1.1  8ft
circuit heat  option winter
  wire 4  S1.2  R1.1  8ft
  accept two-wires-in-cavity "test"
`

// What is not fitted is not solved; what is fitted changes the sizes of what
// it shares (hand arithmetic: 5 W and 120 W at 13.5 V).
func TestFit(t *testing.T) {
	d := harness.Parse("x.draft", []byte(twoFuses))
	r, err := d.Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	require.Empty(t, r.With())
	require.Empty(t, r.Report().With)
	w, _ := r.Wire("2")
	require.InDelta(t, 5/13.5, w.DesignA, 0.03)
	_, ok := r.Wire("4")
	require.False(t, ok)

	d.Forget() // the trees are read again
	r, err = d.Check(t.Context(), harness.Options{With: []string{"winter"}})
	require.NoError(t, err)
	require.Equal(t, []string{"winter"}, r.Report().With)
	w, _ = r.Wire("2")
	require.InDelta(t, 125/13.5, w.DesignA, 1.5, "less by what the lower volts of battery and copper take")

	r, err = d.Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	require.Equal(t, []string{"winter"}, r.With(), "what was fitted stays")
	r, err = d.Check(t.Context(), harness.Options{With: []string{}})
	require.NoError(t, err)
	require.Empty(t, r.With())
}

func TestFitKnowsItsOptions(t *testing.T) {
	d := harness.Parse("x.draft", []byte(twoFuses))
	_, err := d.Check(t.Context(), harness.Options{With: []string{"wintr"}})
	require.ErrorIs(t, err, harness.ErrOption)
	require.ErrorContains(t, err, "did you mean winter?")
	require.ErrorContains(t, d.Fit([]string{"x"}), "there are winter")
	require.ErrorContains(t, harness.Parse("y", nil).Fit([]string{"x"}), "has no options")
}
