package size_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/route"
	"legwork/harness/size"
)

// A fuse whose wire belongs to an option gets a rating where that is fitted
// only: 20 A / 0.75 = 26.7 A, so 30 A.
func TestFuseOfAnOptionNotFitted(t *testing.T) {
	const src = `battery G1 grounds-to frame
option winch
fuse F1 60A from G1 6in
box A1
  bus FEED F3.1
fuse F3 in A1
motor M1 draws 20A grounds-to frame option winch
wire 1 G1.+ F1.1 6in
wire 2 F1.2 A1.FEED 1ft
wire 3 F3.2 M1.+ 3ft option winch
`
	rating := func(setup model.Setup) float64 {
		f, found := draft.Parse("x.draft", []byte(src))
		require.Empty(t, found)
		m, found := model.BuildWith(f, setup)
		require.Empty(t, found)
		p, _ := gauge.ProfileOf("road")
		s, err := size.Choose(t.Context(), m, route.Measure(m), p, part.Start{})
		require.NoError(t, err)
		for _, f := range s.Fuses {
			if f.Device.Name == "F3" {
				require.True(t, f.Chosen)
				require.NotEmpty(t, f.Why)
				return f.RatedA
			}
		}
		return -1
	}
	require.Zero(t, rating(model.Setup{}))
	require.Equal(t, 30.0, rating(model.Setup{With: []string{"winch"}}))
}
