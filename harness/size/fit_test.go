package size_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/diag"
)

// A lamp at the end of one wire, with terminals at the lamp (invented).
const crimped = `part terminal small  wire 20AWG 18AWG
part terminal middle  wire 16AWG 14AWG
part terminal large  wire 12AWG 10AWG
battery G1  grounds-to frame
fuse    F1  %dA  from G1 6in
splice  J1
lamp    P1  draws %gA 12V  grounds-to frame  terminals %s
wire 1  G1.+  F1.1  8AWG  6in
wire 2  F1.2  J1    8AWG  1ft
wire 3  J1    P1.1  %dft
`

func crimpedWire(t *testing.T, fuseA int, amps float64, terminals string, ft int) (*harness.Result, string, string) {
	t.Helper()
	d := harness.Parse("x.draft", fmt.Appendf(nil, crimped, fuseA, amps, terminals, ft))
	require.Less(t, d.Findings.Worst(), diag.Fault, "%v", d.Findings)
	r, err := d.Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	w, ok := r.Wire("3")
	require.True(t, ok)
	return r, w.Conductor.Size.Name, w.Governs
}

func rules(r *harness.Result) (list []string) {
	for f := range r.Findings.AtLeast(diag.Warning) {
		list = append(list, f.Rule)
	}
	return list
}

// Sizing is a window: its terminals lift a wire that is too thin for them and
// stop what drop would grow.
func TestSizingKeepsToTheTerminals(t *testing.T) {
	r, size, by := crimpedWire(t, 5, 2, "small, middle", 2)
	require.Equal(t, "18 AWG", size)
	require.NotEqual(t, "terminal", by)
	require.Empty(t, rules(r))

	r, size, by = crimpedWire(t, 5, 2, "middle", 2)
	require.Equal(t, "16 AWG", size)
	require.Equal(t, "terminal", by)
	require.Empty(t, rules(r))

	_, size, _ = crimpedWire(t, 5, 2, "small, large", 2)
	require.Equal(t, "18 AWG", size, "the hole between the two is not entered from below")

	r, size, by = crimpedWire(t, 15, 8, "middle, large", 60) // drop alone grows it out of the middle ones
	require.Contains(t, []string{"12 AWG", "10 AWG"}, size)
	require.Equal(t, "drop", by)
	require.Empty(t, rules(r))
	r, size, _ = crimpedWire(t, 15, 8, "middle", 60) // what can't be reached gets what pays, as far as the terminals go (decision 18)
	require.Equal(t, "14 AWG", size)
	require.Equal(t, []string{"drop-over-limit"}, rules(r))
}

// What current or fuse asks for goes beyond the terminals; the finding names
// both sides.
func TestAnEmptyWindowIsOneFinding(t *testing.T) {
	r, size, _ := crimpedWire(t, 50, 20, "small, middle", 3) // a 50 A fuse: 10 AWG (70 A at 30 C) at least
	require.Equal(t, []string{"terminal-does-not-fit"}, rules(r))
	f := r.Findings[0]
	require.Contains(t, f.Msg, "wire 3, "+size)
	require.Contains(t, f.Msg, "protection asks for it")
	require.Contains(t, f.Detail, "middle takes 16 AWG to 14 AWG")
}
