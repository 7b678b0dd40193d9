package harness_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
)

// Where a stated return leaves no size for the feed, report and working blame
// the return, not the size that was chosen (invented draft; decision 18).
func TestAStatedPartIsBlamedForALimitNotMet(t *testing.T) {
	const text = `battery G1  cca 600A  grounds-to frame
fuse    F1  20A  from G1 6in
motor   M1  fuel  draws 10A 13.5V
stud    E1  on frame  M6
wire 1  G1.+  F1.1  6in
wire 2  F1.2  M1.+  15ft
wire 3  M1.-  E1  14AWG  8ft
`
	r, err := harness.Parse("x.draft", []byte(text)).Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	const blame = "No size of the open wires meets the limit: wire 3, given as 14 AWG, takes"
	found := 0
	for _, f := range r.Findings {
		if f.Rule == "drop-over-limit" {
			found++
			require.Contains(t, f.Detail, blame)
			require.Contains(t, f.Detail, "of the 360 mV allowed")
		}
	}
	require.Equal(t, 1, found)
	require.Contains(t, whyOf(t, r, "wire 2"), blame)
	require.NotContains(t, whyOf(t, r, "wire 3"), blame, "its size is given")

	thick := strings.Replace(text, "14AWG", "12AWG", 1)
	r, err = harness.Parse("x.draft", []byte(thick)).Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	require.NotContains(t, whyOf(t, r, "wire 2"), "No size")
}

func whyOf(t *testing.T, r *harness.Result, name string) string {
	t.Helper()
	list, err := r.Why(name)
	require.NoError(t, err)
	var b strings.Builder
	for _, w := range list {
		for _, g := range w.Groups {
			for _, s := range g.Steps {
				b.WriteString(s.Text + "\n")
			}
		}
	}
	return b.String()
}
