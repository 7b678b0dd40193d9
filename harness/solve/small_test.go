package solve

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/model"
	"legwork/harness/part"
)

// truckDraft is the small draft of the language's page, cut down to what
// moves: start relay, controller, pump relay.
const truckDraft = `
	draft 1
	harness "Orchard truck" system 12V
	place bay 85C wet
	place dash 50C
	leg bay dash 35in
	metal block
	metal frame
	stud E1 on block at bay M10
	stud E2 on frame at bay M8
	strap 91 E1 E2 4AWG 18in
	battery G1 at bay cca 540A
	alternator G2 at bay grounds-to block 65A setpoint 14.2V
	starter M1 at bay grounds-to block draws 160A stall 420A pull-in 38A hold 9A
	fuse F1 80A at bay bolt-down
	box A2 at dash
	  bus BAT F3.1 F4.1 F5.1 F6.1
	fuse F3 15A in A2
	fuse F4 20A in A2
	fuse F5 5A in A2
	fuse F6 30A in A2
	keyswitch S1 at dash
	  off
	  acc B ACC
	  run B ACC IGN
	  gap B IGN lasts 12ms
	  crank B IGN ST
	relay K4 in A2 coil 90ohm pull-in 6.5V 8V
	relay K1 in A2 coil 85ohm pull-in 6.5V 8V suppress resistor
	motor M2 at bay draws 8.5A 13.5V needs 10.5V when running needs 8V when crank
	module A1 at dash
	  BAT feed 0.4A asleep 2mA always
	  IGN feed 1.1A above 8V holds 50ms when run, crank
	  PUMP low-side 0.5A when prime, crank, running
	  GND ground
	wire 100 G1.- E1
	wire 101 G1.+ F1.1
	wire 102 F1.2 A2.BAT
	wire 103 G2.B+ G1.+
	wire 104 G1.+ M1.B
	wire 105 F4.2 S1.B
	wire 106 S1.ST K4.86
	wire 107 K4.85 E1
	wire 108 F6.2 K4.30
	wire 109 K4.87 M1.S
	wire 110 F5.2 A1.BAT
	wire 111 S1.IGN A1.IGN
	wire 112 A1.GND E1
	wire 201 F3.2 K1.30
	wire 202 K1.87 M2.+
	wire 204 M2.- E2
	wire 205 S1.IGN K1.86
	wire 206 K1.85 A1.PUMP
`

// truckWires are thick where the starter's current goes (milliohms of copper).
func truckWires(m *model.Model) []Conductor {
	thick := map[string]float64{"100": 0.4, "104": 0.4, "103": 0.9, "91": 0.5, "101": 0.3, "102": 1.8}
	wires := alike(m, 0.008)
	for _, w := range m.Wires {
		if r, ok := thick[w.Number]; ok {
			wires[w.ID].Ohm = r / 1000
		}
	}
	return wires
}

func TestStartSequence(t *testing.T) {
	m := build(t, truckDraft)
	h := playCase(t, m, truckWires(m), hot)
	for _, row := range []struct {
		step                         string
		alive, pump, start, solenoid bool
	}{
		{"off", false, false, false, false},
		{"acc", false, false, false, false},
		{"prime", true, true, false, false},
		{"koeo", true, false, false, false},
		{"gap", true, false, false, false},
		{"engage", true, false, true, true},
		{"crank", true, true, true, true},
		{"running", true, true, false, false},
		{"stalled", true, false, false, false},
		{"coast", false, false, false, false},
		{"rest", false, false, false, false},
	} {
		for device, on := range map[string]bool{"A1": row.alive, "K1": row.pump, "K4": row.start, "M1": row.solenoid} {
			require.Equal(t, on, relay(t, h, row.step, device).On, "%s in %s", device, row.step)
		}
		require.Empty(t, h.Step(row.step).Chatter)
		require.Empty(t, h.Step(row.step).Races)
	}
}

// TestPullInVolts: the start relay sees the volts before the starter draws,
// the pump relay those of the turning starter.
func TestPullInVolts(t *testing.T) {
	m := build(t, truckDraft)
	h := playCase(t, m, truckWires(m), hot)
	k4, k1 := relay(t, h, "engage", "K4"), relay(t, h, "crank", "K1")
	require.True(t, k4.Asked)
	require.Greater(t, k4.PullV, 12.3)
	require.Less(t, k4.Volts, 8.5, "settled, the starter is held fast")
	require.Equal(t, SurelyIn, k4.Zone)
	require.False(t, relay(t, h, "engage", "K1").Asked, "the controller has not seen the engine turn yet")
	require.True(t, k1.Asked)
	require.Less(t, k1.PullV, 11.0)
	require.InDelta(t, k1.PullV, k1.Volts, 0.4)
	require.True(t, relay(t, h, "running", "K1").Held)
	require.True(t, h.Relays[h.RelayOf("K1")].Output)
	require.False(t, h.Relays[h.RelayOf("K1")].Starts)
	require.False(t, h.Relays[h.RelayOf("K4")].Output)
	require.True(t, h.Relays[h.RelayOf("K4")].Starts)
	require.True(t, h.Relays[h.RelayOf("M1")].Starts)
}

// TestHoldsBridgesEngage: with 50 ms the controller outlives the first pull;
// under 15 ms it restarts, between 15 and 40 ms nobody knows (NUMBERS, engage).
func TestHoldsBridgesEngage(t *testing.T) {
	for _, row := range []struct {
		holds string
		on    bool
		zone  Zone
	}{{"50ms", true, SurelyIn}, {"40ms", true, SurelyIn}, {"20ms", true, NotSure}, {"14ms", false, SurelyOut}} {
		m := build(t, strings.Replace(truckDraft, "holds 50ms", "holds "+row.holds, 1))
		h := playCase(t, m, truckWires(m), hot)
		a1 := relay(t, h, "engage", "A1")
		require.Less(t, a1.Volts, 8.0, "the sag has to be deep enough to matter")
		require.Equal(t, row.on, a1.On, row.holds)
		require.Equal(t, row.zone, a1.Zone, row.holds)
		require.Equal(t, !row.on, a1.Lost, row.holds)
		require.True(t, relay(t, h, "crank", "A1").On, "back, or still alive")
	}
}

func TestOffEqualsRest(t *testing.T) {
	m := build(t, truckDraft)
	h := playCase(t, m, truckWires(m), hot)
	off, rest := h.Step("off"), h.Step("rest")
	for i := range off.Volts {
		require.InDelta(t, off.Volts[i], rest.Volts[i], 1e-9, m.Terminals[i].Shown)
	}
	for i := range off.WireA {
		require.InDelta(t, off.WireA[i], rest.WireA[i], 1e-9, m.Wires[i].Number)
	}
}

// TestSag is the starter alone with a hand calculation: 12.6 V behind 6.0/CCA,
// cable 104 with two ring joints, the starter's own resistance
// (12.6 - 420 Rb)/420 and, while it turns, its back e.m.f. 12.6 - 160 (Rb + Rs).
// The solenoid is made so small that its current does not show.
func TestSag(t *testing.T) {
	m := build(t, `
		draft 1
		metal frame
		battery G1 cca 540A grounds-to frame
		starter M1 grounds-to frame draws 160A stall 420A pull-in 0.2A hold 0.1A
		switch S1 closed when crank
		wire 104 G1.+ M1.B
		wire 1 G1.+ S1.1
		wire 2 S1.2 M1.S
	`)
	h := playCase(t, m, alike(m, 0.0004), hot)
	rb := 6.0 / 540
	rs := (12.6 - 420*rb) / 420
	cable := 0.0004 + 2*0.0003
	stall := 12.6 / (rb + cable + rs)
	turning := 160 * (rb + rs) / (rb + cable + rs)
	require.InDelta(t, 12.6-stall*rb, volts(t, h, "engage", "G1.+"), 0.003)
	require.InDelta(t, 12.6-turning*rb, volts(t, h, "crank", "G1.+"), 0.003)
	starter, _ := m.DeviceByName("M1")
	require.InDelta(t, stall, h.Step("engage").DrawA.Of(starter, 0), 0.3)
	require.InDelta(t, turning, h.Step("crank").DrawA.Of(starter, 0), 0.3)
	require.Zero(t, math.Round(h.Step("running").DrawA.Of(starter, 0)))
}

// TestWireOrderDoesNotMatter: the same harness with its wires written in
// another order has the same volts.
func TestWireOrderDoesNotMatter(t *testing.T) {
	lines := strings.Split(strings.TrimSpace(dedent(truckDraft)), "\n")
	first := 0
	for !strings.HasPrefix(lines[first], "wire ") {
		first++
	}
	m := build(t, truckDraft)
	h := playCase(t, m, truckWires(m), hot)
	r := rand.New(rand.NewPCG(7, 7))
	for range 5 {
		r.Shuffle(len(lines)-first, func(i, j int) { lines[first+i], lines[first+j] = lines[first+j], lines[first+i] })
		other := build(t, strings.Join(lines, "\n"))
		g := playCase(t, other, truckWires(other), hot)
		for s := range h.States {
			for _, at := range m.Terminals {
				twin := other.Devices[at.Device.ID].Terminals[at.Pin]
				require.InDelta(t, h.States[s].Volts[at.ID], g.States[s].Volts[twin.ID], 1e-12, "%s in %s", at.Shown, h.States[s].Step.Name)
			}
		}
	}
}

// TestColdStart: copper, coils and battery at -18 C, and twice the starter
// current.
func TestColdStart(t *testing.T) {
	m := build(t, truckDraft)
	wires := truckWires(m)
	h := playCase(t, m, wires, Case{Corner: part.ColdStart})
	k1 := relay(t, h, "crank", "K1")
	require.InDelta(t, -18, k1.CoilC, 0)
	require.InDelta(t, 8*(234.5-18)/254.5, k1.InAboveV, 1e-9)
	w, _ := m.WireByNumber("202")
	drop := volts(t, h, "prime", "K1.87") - volts(t, h, "prime", "M2.+")
	copper := 0.008 * (234.5 - 18) / (234.5 + 60)
	require.InDelta(t, copper, drop/h.Step("prime").WireA[w.ID], 1e-6, "no joint at either end")
}
