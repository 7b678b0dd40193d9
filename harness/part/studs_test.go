package part

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

// landings gives what wires end in at each terminal of a device.
func landings(d *Device) map[string]Landing {
	out := map[string]Landing{}
	for _, t := range d.Kind.TerminalsOf(d) {
		out[t.Name] = t.Landing
	}
	return out
}

// A battery switch, a contactor and an old dash have studs; the coil of a
// contactor keeps its blades.
func TestStudsTakeRings(t *testing.T) {
	studs := func(kind string) Value { return say(of(kind), "studs") }
	require.Equal(t, map[string]Landing{"1": Post, "2": Post}, landings(device(t, "switch", studs("switch"))))
	require.Equal(t, map[string]Landing{"1": Cavity, "2": Cavity}, landings(device(t, "switch")))
	require.Equal(t, map[string]Landing{"30": Post, "87": Post, "85": Cavity, "86": Cavity}, landings(device(t, "relay", studs("relay"))))
	require.Equal(t, map[string]Landing{"+": Post, "-": Post}, landings(device(t, "motor", studs("motor"))))
	require.Equal(t, Post, landings(device(t, "alternator", studs("alternator")))["D+"])
	for _, k := range Kinds() {
		require.Equal(t, k.mayHaveStuds(), settingOf(k.Settings, "studs") != nil, k.Name)
	}
}

// A stated contact counts at every grade; the usual one of a switch, a low
// figure, only among nominal ones.
func TestStatedContactResistanceCounts(t *testing.T) {
	ohm := func(d *Device, g Grade) float64 {
		for _, b := range stamped(d, HotSoak, g).Branches {
			if b.Use == ContactElement {
				return b.Law.Ohm
			}
		}
		return 0
	}
	for _, kind := range []string{"switch", "relay"} {
		d := device(t, kind, say(of(kind), "contact-resistance", 0.0003))
		require.Equal(t, 0.0003, ohm(d, Sure), kind)
		require.Equal(t, 0.0003, ohm(d, Nominal), kind)
		require.Equal(t, 0.0003, d.Kind.Switches(d)[0].Ohm, kind)
	}
	require.Equal(t, closedOhm, ohm(device(t, "switch"), Sure))
	require.Equal(t, gauge.SwitchContactOhm, ohm(device(t, "switch"), Nominal))
}
