package harness_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
)

// One lamp whose draw is a guess, behind a fuse of 10 A (invented).
const guessed = `battery G1  grounds-to frame
fuse    F1  10A  from G1 6in
lamp    P1  draws 4A guess  grounds-to frame
lamp    P2  grounds-to frame
wire 1  G1.+  F1.1  10AWG  6in
wire 2  F1.2  P1.1  10AWG  1ft
wire 3  F1.2  P2.1
  accept two-wires-in-cavity "test"
`

func leeways(t *testing.T, src string) map[string]harness.Leeway {
	t.Helper()
	r, err := harness.Parse("x.draft", []byte(src)).Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	list, err := r.Leeways(t.Context())
	require.NoError(t, err)
	require.Len(t, list, len(r.Model.Guesses))
	by := map[string]harness.Leeway{}
	for _, l := range list {
		by[l.Guess.What] = l
	}
	return by
}

// A fuse may be loaded to 80 %: 8 A. P2 takes 1.56 A at 13.5 V (21 W), the lamp
// at 12.6 V or so takes 0.93 of what is stated, so 8 A are reached at about
// (8 - 1.45) / 0.93 = 7 A.
func TestLeewayFindsTheEdge(t *testing.T) {
	by := leeways(t, guessed)
	draw := by["draws of P1"]
	require.True(t, draw.Tried)
	require.Contains(t, draw.UpTo, "warning fuse-heavily-loaded on line 2")
	require.InDelta(t, 7, draw.Up, 0.8, "to a tenth of the way")
	require.Less(t, draw.Up, 7.2)
	require.Empty(t, draw.DownTo)
	require.InDelta(t, 1, draw.Down, 1e-9, "a quarter")
	require.Contains(t, draw.Text(), "nothing changes down to 1 A; above ")

	assumed := by["draw of P2"]
	require.True(t, assumed.Tried)
	require.InDelta(t, 21/13.5, assumed.Guess.Num, 1e-9)
	require.Contains(t, assumed.UpTo, "fuse-heavily-loaded")

	require.False(t, by["system"].Tried)
	require.Equal(t, "not tried", by["system"].Text())
}

// The figures that are said to change nothing change nothing, and the next
// one beyond the edge does: the draft itself is edited and checked.
func TestLeewayIsTrue(t *testing.T) {
	by := leeways(t, guessed)
	edge := by["draws of P1"].Up
	count := func(amps float64) int {
		src := []byte(guessed)
		src = []byte(string(src[:len("battery G1  grounds-to frame\nfuse    F1  10A  from G1 6in\nlamp    P1  draws ")]) +
			formatted(amps) + string(src[len("battery G1  grounds-to frame\nfuse    F1  10A  from G1 6in\nlamp    P1  draws 4A"):]))
		r, err := harness.Parse("x.draft", src).Check(t.Context(), harness.Options{})
		require.NoError(t, err)
		require.NotNil(t, r.Sizes, "%v", r.Findings)
		return len(r.Findings)
	}
	before := count(4)
	require.Equal(t, before, count(math.Floor(edge*100)/100))
	require.NotEqual(t, before, count(edge*math.Pow(4, 1.0/8)))
}

// A length that is assumed is moved as well.
func TestLeewayOfALength(t *testing.T) {
	length := leeways(t, "battery G1  grounds-to frame\nfuse F1  10A  from G1 6in\nlamp P1  70W  grounds-to frame\nwire 1  G1.+  F1.1  8AWG  6in\nwire 3  F1.2  P1.1\n")["length of wire 3"]
	require.True(t, length.Tried)
	require.InDelta(t, 3.048, length.Guess.Num, 1e-9)
	require.Contains(t, length.UpTo, "wire 3 becomes ", "more length wants more copper")
	require.Greater(t, length.Up, 3.048)
	require.Less(t, length.Up, 4*3.048)
}

func TestNothingChanges(t *testing.T) {
	by := leeways(t, "battery G1  grounds-to frame\nfuse F1  30A  from G1 6in\nlamp P1  draws 0.1A guess  grounds-to frame\nwire 1  G1.+  F1.1  8AWG  6in\nwire 2  F1.2  P1.1  8AWG  1ft\n")
	require.False(t, by["draws of P1"].Changes)
	require.Equal(t, "nothing changes from 25 mA to 0.4 A", by["draws of P1"].Text())
}

func formatted(amps float64) string { return fmt.Sprintf("%.2fA", amps) }
