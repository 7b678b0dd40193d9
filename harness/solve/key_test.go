package solve

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// keyed is a controller behind a key switch; # stands for the terminal that
// feeds it, and the line of the gap may be replaced.
const keyed = `
	draft 1
	metal frame
	battery G1 grounds-to frame
	keyswitch S1
	  acc B ACC
	  run B ACC IGN
	  gap B IGN lasts 12ms
	  crank B IGN ST
	relay K1 pull-in 6V 8V
	relay K2 pull-in 6V 8V
	splice J1
	module A1
	  IGN feed 1A above 8V holds 20ms when run, crank
	  PUMP low-side 0.5A when prime, crank, running
	  GND ground
	wire 1 G1.+ S1.B
	wire 2 S1.# J1
	wire 3 J1 A1.IGN
	wire 4 A1.GND G1.-
	wire 5 J1 K1.86
	wire 6 K1.85 A1.PUMP
	wire 7 J1 K2.86
	wire 8 K2.85 G1.-
`

// keyedOn feeds the controller from a terminal of the key switch.
func keyedOn(terminal string) string { return strings.Replace(keyed, "S1.#", "S1."+terminal, 1) }

// TestFeedOnAccessoryIsDeadWhileCranking: the classic fault; the pump relay
// is then not asked at all, since its controller is out.
func TestFeedOnAccessoryIsDeadWhileCranking(t *testing.T) {
	m := build(t, keyedOn("ACC"))
	h := playCase(t, m, alike(m, 0.01), hot)
	for step, alive := range map[string]bool{"off": false, "acc": true, "prime": true, "koeo": true, "crank": false, "running": true, "rest": false} {
		require.Equal(t, alive, relay(t, h, step, "A1").On, step)
	}
	a1 := relay(t, h, "crank", "A1")
	require.False(t, a1.Asked)
	require.False(t, relay(t, h, "crank", "K1").On)
	require.False(t, relay(t, h, "crank", "K1").Asked)
	require.Zero(t, relay(t, h, "crank", "K1").PullV)
	require.Less(t, volts(t, h, "crank", "A1.IGN"), 0.1)

	m = build(t, keyedOn("IGN"))
	h = playCase(t, m, alike(m, 0.01), hot)
	require.True(t, relay(t, h, "crank", "A1").On)
	require.True(t, relay(t, h, "crank", "K1").On)
}

// TestGap plays the key's travel: what holds long enough lives through it,
// and a relay that needs 7 ms to let go outlives a shorter gap.
func TestGap(t *testing.T) {
	for _, row := range []struct {
		gap          string
		alive, relay bool
		bridgedS     float64
	}{
		{"gap B IGN lasts 12ms", true, true, 0}, // joined through the gap
		{"gap B lasts 12ms", true, false, 0.012},
		{"gap B lasts 5ms", true, true, 0.005},
		{"gap B lasts 25ms", false, false, 0},
		{"", true, true, 0}, // what run and crank both join
	} {
		text := keyedOn("IGN")
		if row.gap == "" {
			text = strings.Replace(text, "\t  gap B IGN lasts 12ms\n", "", 1)
		} else {
			text = strings.Replace(text, "gap B IGN lasts 12ms", row.gap, 1)
		}
		m := build(t, text)
		h := playCase(t, m, alike(m, 0.01), hot)
		a1 := relay(t, h, "gap", "A1")
		require.Equal(t, row.alive, a1.On, row.gap)
		require.Equal(t, !row.alive, a1.Lost, row.gap)
		require.InDelta(t, row.bridgedS, a1.BridgedS, 1e-12, row.gap)
		require.Equal(t, row.relay, relay(t, h, "gap", "K2").On, row.gap)
		require.True(t, relay(t, h, "crank", "A1").On, row.gap)
		require.True(t, relay(t, h, "crank", "K2").On, row.gap)
	}
}

// TestStartOutputDoesNotWaitForTheEngine: a controller that commands the
// start relay does so before the engine turns; what it commands besides waits.
func TestStartOutputDoesNotWaitForTheEngine(t *testing.T) {
	m := build(t, `
		draft 1
		metal frame
		battery G1 cca 600A grounds-to frame
		starter M1 grounds-to frame draws 160A stall 420A pull-in 38A hold 9A
		relay K1
		relay K2
		splice J1
		module A1
		  BAT feed 0.5A asleep 2mA above 6V holds 60ms always
		  START low-side 0.5A when crank
		  PUMP low-side 0.5A when crank
		  GND ground
		wire 1 G1.+ M1.B
		wire 2 G1.+ J1
		wire 3 J1 A1.BAT
		wire 4 A1.GND G1.-
		wire 5 J1 K1.86
		wire 6 K1.85 A1.START
		wire 7 J1 K1.30
		wire 8 K1.87 M1.S
		wire 9 J1 K2.86
		wire 10 K2.85 A1.PUMP
	`)
	h := playCase(t, m, alike(m, 0.001), hot)
	require.True(t, relay(t, h, "engage", "K1").On)
	require.True(t, relay(t, h, "engage", "M1").On)
	require.False(t, relay(t, h, "engage", "K2").On)
	require.True(t, relay(t, h, "crank", "K2").On)
	require.True(t, h.Relays[h.RelayOf("K1")].Starts)
	require.True(t, h.Relays[h.RelayOf("K1")].Output)
}
