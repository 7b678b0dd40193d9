package deck

import (
	"fmt"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/solve"
)

// recordedNetworks holds what the simulator found, a network a line: its name,
// then for each step the contacts, one letter each, and a weighted sum of volts.
const recordedNetworks = "testdata/recorded.txt"

// recordNetworks writes what is left to compare where there is no simulator.
// The contacts are those that the simulator's own play ended with: that they
// are ours has been seen before.
func recordNetworks(t *testing.T, list []*network, answers []answer) {
	t.Helper()
	var b strings.Builder
	at := 0
	for _, n := range list {
		b.WriteString(strings.ReplaceAll(n.name, " ", "_"))
		for step, s := range n.hist.States {
			sum := n.digest(step, func(node int) float64 { return answers[at].volts[nodeName(node)] })
			fmt.Fprintf(&b, " %s:%.10g", contacts(s), sum)
			at++
		}
		b.WriteString("\n")
	}
	require.NoError(t, os.WriteFile(recordedNetworks, []byte(b.String()), 0o644))
}

// compareNetworks holds legwork against the recorded answers.
func compareNetworks(t *testing.T, list []*network) {
	t.Helper()
	text, err := os.ReadFile(recordedNetworks)
	require.NoError(t, err)
	lines := strings.Split(strings.TrimSpace(string(text)), "\n")
	require.Len(t, lines, len(list))
	for i, n := range list {
		f := strings.Fields(lines[i])
		require.Equal(t, strings.ReplaceAll(n.name, " ", "_"), f[0])
		require.Len(t, f[1:], len(n.hist.States), n.name)
		for step, s := range n.hist.States {
			where, sum, _ := strings.Cut(f[1+step], ":")
			require.Equal(t, where, contacts(s), "%s %s", n.name, s.Step.Name)
			want, err := strconv.ParseFloat(sum, 64)
			require.NoError(t, err)
			volts := n.volts(s)
			got := n.digest(step, func(node int) float64 { return volts[node] })
			require.InDelta(t, want, got, 1e-8*max(1, math.Abs(want)), "%s %s", n.name, s.Step.Name)
		}
	}
}

// contacts is where the relays of a step stand: i for in, o for out.
func contacts(s *solve.State) string {
	text := "-"
	for _, r := range s.Relay {
		if r.On {
			text += "i"
		} else {
			text += "o"
		}
	}
	return text
}

// digest is a sum of the volts that nine digits are asked of, each with a
// weight of its own.
func (n *network) digest(step int, volts func(node int) float64) float64 {
	s := n.hist.States[step]
	ours := n.volts(s)
	lines, slopes := n.decks.Frozen(step).straighten(s, ours)
	sum := 0.0
	for node, ratio := range ratios(n.decks.points.count, lines, slopes) {
		if ratio <= ratioKept && !math.IsNaN(ours[node]) {
			sum += (1 + float64(node%7)/7) * volts(node)
		}
	}
	return sum
}
