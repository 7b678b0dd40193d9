package part

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// The four sorts of sensor: their terminals, what they draw and what returns.
func TestSortsOfSensor(t *testing.T) {
	k, _ := Of("sensor")
	for sort, want := range map[string]struct {
		pins []string
		draw []string // plus and minus; none for a coil that makes its own volts
	}{
		"single":       {[]string{"+", "-", "S"}, []string{"+", "-"}},
		"differential": {[]string{"+", "-", "S+", "S-"}, []string{"+", "-"}},
		"inductive":    {[]string{"S+", "S-"}, nil},
		"wideband":     {[]string{"H+", "H-", "IP", "VS", "VM", "RC"}, []string{"H+", "H-"}},
	} {
		d := pinned(device(t, "sensor", word(k.Settings, "sort", sort)))
		var pins []string
		for i := range d.Pins {
			pins = append(pins, d.Pins[i].Name)
			d.Pins[i].Quiet, d.Pins[i].Wired = d.Pins[i].Name == "+", true
		}
		require.Equal(t, want.pins, pins, sort)
		if want.draw == nil {
			require.Empty(t, k.Draws(d), sort)
			require.Empty(t, k.Assumes(d), sort)
			continue
		}
		require.Equal(t, want.draw, []string{k.Draws(d)[0].Plus, k.Draws(d)[0].Minus}, sort)
		require.Len(t, k.Assumes(d), 1, sort)
		d.Pins[0].Wired = false // a sender: nothing feeds it
		require.Equal(t, sort == "wideband", len(k.Assumes(d)) == 1, sort)
	}
}

// A crank sensor of 850 ohm has them between its two wires, and nothing else.
func TestInductiveSensorIsACoil(t *testing.T) {
	s := of("sensor")
	d := pinned(device(t, "sensor", word(s, "sort", "inductive"), say(s, "resistance", 850)))
	b := stamped(d, HotSoak, Sure).Branches
	require.Len(t, b, 1)
	require.Equal(t, []any{"S+", "S-", 850.0}, []any{b[0].A, b[0].B, b[0].Law.Ohm})
}
