package size_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/size"
)

// A pump whose return the draft states (invented).
const statedReturn = `draft 1
battery G1 cca 600A grounds-to frame
fuse F1 20A from G1 6in
motor M1 "Pump" fuel draws 10A 13.5V
stud E1 on frame M6
wire 1 G1.+ F1.1 6in
wire 2 F1.2 M1.+ 15ft
wire 3 M1.- E1 %s 8ft
`

func sizesOf(s *size.Sizes) map[string]string {
	list := map[string]string{}
	for _, w := range s.Wires {
		list[w.Wire.Number] = w.Conductor.Size.Name
	}
	return list
}

// A stated return that is too thin leaves the feed at the size up to which
// growth pays, and is named as what is in the way. At 10 A and 30 C, 14 AWG
// over 8 ft takes 10 x 9.36 mohm/m x 2.44 m = 228 mV, so that 15 ft of 8 AWG,
// the largest for a cavity, do not keep 360 mV; with 12 AWG they do.
func TestGrowthStopsWhereItNoLongerPays(t *testing.T) {
	for returns, want := range map[string]string{"18AWG": "8 AWG", "16AWG": "8 AWG", "14AWG": "8 AWG", "12AWG": "8 AWG", "10AWG": "10 AWG"} {
		_, s := chosen(t, fmt.Sprintf(statedReturn, returns))
		require.Equal(t, want, sizesOf(s)["2"], returns)
		p, ok := s.WorstDrop(s.Drops()[0].Device, 0)
		require.True(t, ok)
		require.Equal(t, p.DropV > p.LimitV, p.Unmet, returns)
		if p.Unmet {
			require.Equal(t, "3", p.Fixed.Wire.Number)
			require.Greater(t, p.Fixed.Volts, 0.2)
			require.Less(t, p.OpenV, p.LimitV*0.4, "a third, and the rest of a size")
		}
	}
}

// What pays for one wire does not depend on which of the others are given.
func TestErasedChainComesBackWhereNothingHelps(t *testing.T) {
	src := fmt.Sprintf(strings.Replace(statedReturn, "wire 3", "wire 4 M1.- J1 3ft\nsplice J1\nwire 3", 1), "18AWG")
	src = strings.Replace(src, "wire 3 M1.-", "wire 3 J1", 1)
	everyErasedChainComesBack(t, src)
}

// A resistor that the draft puts in the line is there for what it takes: it
// counts toward no limit and thickens no wire. 8 A through 0.5 ohm take 4 V.
func TestAResistorInTheLineIsNoLossOfTheWiring(t *testing.T) {
	const blower = `draft 1
battery G1 cca 600A grounds-to frame
fuse F1 20A from G1 6in
motor M1 draws 8A 13.5V
stud E1 on frame M6
wire 1 G1.+ F1.1 6in
wire 2 F1.2 %s 8ft
wire 3 M1.- E1 8ft
`
	_, plain := chosen(t, fmt.Sprintf(blower, "M1.+"))
	_, s := chosen(t, fmt.Sprintf(blower, "R1.1")+"resistor R1 0.5ohm\nwire 4 R1.2 M1.+ 1ft\n")
	require.Equal(t, sizesOf(plain)["2"], sizesOf(s)["2"])
	require.NotEmpty(t, s.Drops())
	for _, p := range s.Drops() {
		require.InDelta(t, 4, p.StatedV, 0.5)
		require.Less(t, p.DropV, p.LimitV)
		require.False(t, p.Unmet)
		require.InDelta(t, p.DropV, p.UsualV, 0.05, "the resistor is left out of both")
	}
}
