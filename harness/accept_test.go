package harness_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
)

// An accept whose rule waits for other faults to be mended is not stale; one
// whose rule ran and found nothing is.
func TestAcceptOfAWaitingRuleIsNotStale(t *testing.T) {
	const sound = `battery G1  cca 540A  grounds-to frame
fuse    F1  10A  from G1 6in
lamp    P1  21W  grounds-to frame
  accept load-never-on "spare lamp"
wire 1  G1.+  F1.1  6in
wire 2  F1.2  P1.1  4ft
`
	require.Equal(t, []string{"stale-accept"}, rulesOf(t, sound))
	faulty := sound + "lamp P2  5W  grounds-to frame\n" // nothing feeds it
	require.Equal(t, []string{"load-without-feed"}, rulesOf(t, faulty))
}

func rulesOf(t *testing.T, src string) []string {
	t.Helper()
	r, err := harness.Parse("test.draft", []byte(src)).Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	var ids []string
	for _, f := range r.Findings {
		ids = append(ids, f.Rule)
	}
	return ids
}
