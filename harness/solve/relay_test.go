package solve

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/part"
)

// powered is a battery, a metal and a switched line: what most relay drafts
// begin with.
const powered = `
	draft 1
	place bay 85C wet
	metal frame
	battery G1 at bay cca 540A grounds-to frame
`

func names(h *History, relays []int) (out []string) {
	for _, r := range relays {
		out = append(out, h.Relays[r].Name)
	}
	return out
}

// TestSelfHolding: once pulled in by a push button, a relay that feeds its
// own coil stays in, key or not: rest is then not off.
func TestSelfHolding(t *testing.T) {
	m := build(t, dedent(powered)+dedent(`
		relay K1 at bay
		switch S1 at bay closed when prime
		lamp P1 at bay 5W grounds-to frame
		splice J1 at bay
		wire 1 G1.+ K1.30
		wire 2 G1.+ S1.1
		wire 3 S1.2 J1
		wire 4 J1 K1.86
		wire 5 K1.85 G1.-
		wire 6 K1.87 J1
		wire 7 J1 P1.1
	`))
	h := playCase(t, m, alike(m, 0.01), hot)
	require.False(t, relay(t, h, "off", "K1").On)
	require.False(t, relay(t, h, "acc", "K1").On)
	require.True(t, relay(t, h, "prime", "K1").On)
	require.True(t, relay(t, h, "rest", "K1").On)
	require.True(t, relay(t, h, "koeo", "K1").Asked, "its own contact asks it")
	require.Greater(t, volts(t, h, "rest", "P1.1"), 12.0)
}

// TestHotCoilStaysOut: surely out below 8 V at 20 C is 8 x (234.5 + 85)/254.5
// = 10.04 V at 85 C, and the turning starter leaves less; at prime there is enough.
func TestHotCoilStaysOut(t *testing.T) {
	m := build(t, strings.Replace(dedent(powered), "540A", "400A", 1)+dedent(`
		starter M1 at bay grounds-to frame draws 240A stall 600A pull-in 38A hold 9A
		switch S1 at bay closed when crank
		switch S2 at bay closed when prime, koeo, engage, crank, running
		relay K1 at bay pull-in 8V 8.5V
		module A1 at bay
		  IGN feed 0.5A above 6V holds 50ms when run, crank
		  PUMP low-side 0.5A when prime, crank, running
		  GND ground
		wire 1 G1.+ M1.B
		wire 2 G1.+ S1.1
		wire 3 S1.2 M1.S
		wire 4 G1.+ S2.1
		wire 5 S2.2 A1.IGN
		wire 6 A1.GND G1.-
		wire 7 S2.2 K1.86
		wire 8 K1.85 A1.PUMP
		together S2.2 5 7
	`))
	h := playCase(t, m, alike(m, 0.004), hot)
	require.True(t, relay(t, h, "prime", "K1").On)
	k1 := relay(t, h, "crank", "K1")
	require.True(t, k1.Asked)
	require.False(t, k1.On)
	require.Equal(t, SurelyOut, k1.Zone)
	require.InDelta(t, 8*(234.5+85)/254.5, k1.OutBelowV, 1e-9)
	require.Less(t, k1.PullV, k1.OutBelowV)
	require.Greater(t, k1.PullV, 7.0)
	require.True(t, relay(t, h, "running", "K1").On)
}

// TestBetweenIsPlayedAsIn: without a stated pair only the volts of release
// say that a relay stays out; what lies between is not sure, and is played.
func TestBetweenIsPlayedAsIn(t *testing.T) {
	for _, row := range []struct {
		pullIn string
		on     bool
		zone   Zone
	}{{"", true, NotSure}, {"pull-in 6V 8V", false, SurelyOut}, {"pull-in 2V 3V", true, SurelyIn}} {
		m := build(t, dedent(powered)+dedent(`
			relay K1 at bay coil 85ohm `+row.pullIn+`
			resistor R1 at bay 100ohm
			wire 1 G1.+ R1.1
			wire 2 R1.2 K1.86
			wire 3 K1.85 G1.-
		`))
		h := playCase(t, m, alike(m, 0.01), hot)
		k1 := relay(t, h, "off", "K1")
		require.Equal(t, row.on, k1.On, row.pullIn)
		require.Equal(t, row.zone, k1.Zone, row.pullIn)
		// 12.65 V over 100 ohm and a coil of 85 ohm at 85 C, warmed by nothing yet.
		coil := 85 * (234.5 + 85) / 254.5
		require.InDelta(t, 12.65*coil/(coil+100), k1.Volts, 0.01)
	}
}

// TestCoilWarmsItself: after a long step a coil stands 52 K x (V/12)^2 above
// its place; the prime alone is too short.
func TestCoilWarmsItself(t *testing.T) {
	m := build(t, dedent(powered)+dedent(`
		relay K1 at bay
		relay K2 at bay
		switch S1 at bay closed when koeo, running
		switch S2 at bay closed when prime
		wire 1 G1.+ S1.1
		wire 2 S1.2 K1.86
		wire 3 K1.85 G1.-
		wire 4 G1.+ S2.1
		wire 5 S2.2 K2.86
		wire 6 K2.85 G1.-
	`))
	h := playCase(t, m, alike(m, 0), hot)
	require.InDelta(t, 85, relay(t, h, "koeo", "K1").CoilC, 0)
	v := relay(t, h, "koeo", "K1").Volts
	require.InDelta(t, 12.65, v, 0.01)
	require.InDelta(t, 85+52*v*v/144, relay(t, h, "crank", "K1").CoilC, 1e-9)
	require.InDelta(t, 85, relay(t, h, "crank", "K2").CoilC, 0)
	h = playCase(t, m, alike(m, 0), Case{Corner: part.ColdStart})
	require.InDelta(t, -18, relay(t, h, "crank", "K1").CoilC, 0)
}

// TestRestContact: a change-over relay joins 30 to 87a while it is out.
func TestRestContact(t *testing.T) {
	m := build(t, dedent(powered)+dedent(`
		relay K1 at bay change-over
		switch S1 at bay closed when koeo
		lamp P1 at bay 5W grounds-to frame
		lamp P2 at bay 5W grounds-to frame
		wire 1 G1.+ S1.1
		wire 2 S1.2 K1.86
		wire 3 K1.85 G1.-
		wire 4 G1.+ K1.30
		wire 5 K1.87 P1.1
		wire 6 K1.87a P2.1
	`))
	h := playCase(t, m, alike(m, 0.01), hot)
	require.Less(t, volts(t, h, "off", "P1.1"), 0.1)
	require.Greater(t, volts(t, h, "off", "P2.1"), 12.0)
	require.Greater(t, volts(t, h, "koeo", "P1.1"), 12.0)
	require.Less(t, volts(t, h, "koeo", "P2.1"), 0.1)
}
