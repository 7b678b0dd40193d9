package check

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/draft"
	"legwork/harness/model"
)

// What is found for all relays together is what comes out relay by relay: one
// that does not wait is fed and led back with its own contact held open.
func TestWaitingAgreesWithEachRelay(t *testing.T) {
	names, err := filepath.Glob("testdata/*.draft")
	require.NoError(t, err)
	shipped, err := filepath.Glob("../../testdata/*.draft")
	require.NoError(t, err)
	free, waiting := 0, 0
	for _, name := range append(names, shipped...) {
		src, err := os.ReadFile(name)
		require.NoError(t, err)
		f, _ := draft.Parse(name, src)
		m, _ := model.Build(f)
		p := &Pass{Model: m, Nets: m.Nets()}
		waits := p.waiting()
		for _, d := range m.Devices {
			coil, ok := ownCoil(d)
			if !ok {
				require.False(t, waits[d.ID], "%s %s", name, d.Name)
				continue
			}
			if waits[d.ID] {
				waiting++
				continue
			}
			free++
			left := p.without(d)
			require.True(t, left.plus[p.netOf(d, coil.CoilA)] && left.minus[p.netOf(d, coil.CoilB)], "%s %s", name, d.Name)
		}
	}
	require.Greater(t, free, 50)
	require.Positive(t, waiting, "the rule's own bad draft has one")
}
