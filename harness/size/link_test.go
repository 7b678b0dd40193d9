package size_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/size"
)

// A link wants wire four gauge numbers thicker behind it (gauge's source
// fusible-link): 14 AWG protects 10 AWG, 16 AWG protects 12 AWG, and 1 mm2 is
// what is printed on a link of 16 AWG (source link-metric).
func TestLinkSizesTheWireBehindIt(t *testing.T) {
	for link, want := range map[string]string{"14AWG": "10 AWG", "16AWG": "12 AWG", "18AWG": "14 AWG", "1mm2": "12 AWG", "10AWG": "6 AWG"} {
		_, s := chosen(t, `battery G1 cca 600A grounds-to frame
link F1 `+link+` 6in from G1 6in
heater R1 studs draws 3A grounds-to frame
wire 1 G1.+ F1.1 6in
wire 2 F1.2 R1.1 4ft
`)
		require.Equal(t, want, s.Wires[1].Conductor.Size.Name, link)
		_, behind, ok := size.LinkOf(s.Fuses[0].Device, 0)
		require.True(t, ok)
		require.Equal(t, want, behind.Name)
		require.Empty(t, failures(s), link)
	}
	// What its maker states counts before its wire.
	_, s := chosen(t, "battery G1 grounds-to frame\nlink F1 14AWG 20A from G1 6in\nlamp P1 5W grounds-to frame\nwire 1 G1.+ F1.1 6in\nwire 2 F1.2 P1.1 4ft\n")
	require.Equal(t, 20.0, s.Fuses[0].RatedA)
	_, _, ok := size.LinkOf(s.Fuses[0].Device, 0)
	require.False(t, ok)
}
