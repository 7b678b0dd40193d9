package solve

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/model"
)

// pumpDraft is the worked example of the design: one pump behind a relay that
// a battery of its own holds in, a starter taken as 160 A constant.
const pumpDraft = `
	draft 1
	harness "Worked example" system 12V
	place bay 85C wet
	place dash 50C
	place rail 60C wet
	place tank 50C wet
	leg bay dash 35in
	leg dash rail 43in
	leg rail tank 9ft6in
	metal block
	metal frame
	stud E1 on block at bay M10
	stud E2 on frame at bay M8
	stud E3 on frame at tank M6
	strap 91 E1 E2 4AWG 18in
	battery G1 at bay cca 540A
	battery G9 at dash
	alternator G2 at bay grounds-to block 65A setpoint 14.2V
	motor M9 at bay grounds-to block draws 160A needs 2V
	switch S9 at bay closed when crank-only
	fuse F1 80A at bay bolt-down from G1 6in
	box A2 at dash
	  bus BAT F3.1
	fuse F3 15A in A2
	relay K1 in A2 pull-in 6.5V 8V
	switch S1 at dash closed when prime, crank-only, running
	motor M2 at tank draws 8.5A 13.5V needs 10.5V when running needs 8V when crank
	connector X2 at rail 6way blade 6.3mm
	  half cab sockets
	  half rear pins
	wire 100 G1.- E1
	wire 101 G1.+ F1.1
	wire 102 F1.2 A2.BAT
	wire 103 G2.B+ G1.+
	wire 201 F3.2 K1.30
	wire 202 K1.87 X2.cab.1
	wire 203 X2.rear.1 M2.+
	wire 204 M2.- E3
	wire 301 G1.+ S9.1
	wire 302 S9.2 M9.+
	wire 311 G9.+ S1.1
	wire 312 S1.2 K1.86
	wire 313 K1.85 G9.-
`

// pumpWires gives the conductors of the worked example in milliohms of copper:
// 101 and 102 are 2.081 together (47 in of 6 AWG), 100 is 1.017 less two
// joints, 91 and 103 are 1.144 a meter over 18 in and 30 in, the chain of 201
// to 204 is parted by length (6, 49, 120, 6 in).
func pumpWires(m *model.Model, chain float64) []Conductor {
	mohm := map[string]float64{
		"100": 1.017 - 0.6, "101": 2.081 * 6 / 47, "102": 2.081 * 41 / 47, "91": 0.523, "103": 1.144 * 0.762,
		"201": chain * 6 / 181, "202": chain * 49 / 181, "203": chain * 120 / 181, "204": chain * 6 / 181,
	}
	wires := alike(m, 0.010)
	for _, w := range m.Wires {
		if r, ok := mohm[w.Number]; ok {
			wires[w.ID].Ohm = r / 1000
		}
	}
	return wires
}

// TestWorkedExample compares with the table of the design's numbers, hand
// arithmetic to 0.5 mV: drop of the pump at prime and running, its volts at
// crank (which the table itself rounds to 1 mV).
func TestWorkedExample(t *testing.T) {
	m := build(t, pumpDraft)
	p := NewPlan(m)
	for _, row := range []struct {
		awg                              int
		chain, primeMV, runningMV, crank float64
	}{
		{18, 121.90, 1173.6, 1164.2, 9.391},
		{16, 79.32, 811.7, 802.3, 9.753},
		{14, 49.50, 558.2, 548.8, 10.007},
		{12, 31.25, 403.1, 393.7, 10.162},
		{10, 19.42, 302.5, 293.2, 10.263},
		{8, 12.23, 241.4, 232.0, 10.324},
	} {
		h, err := p.Run(t.Context(), pumpWires(m, row.chain), hot)
		require.NoError(t, err)
		require.Empty(t, h.Findings)
		drop := func(step string) float64 {
			posts := volts(t, h, step, "G1.+") - volts(t, h, step, "G1.-")
			return 1000 * (posts - volts(t, h, step, "M2.+") + volts(t, h, step, "M2.-"))
		}
		require.InDelta(t, row.primeMV, drop("prime"), 0.5, "%d AWG, prime", row.awg)
		require.InDelta(t, row.runningMV, drop("running"), 0.5, "%d AWG, running", row.awg)
		at := volts(t, h, "crank", "M2.+") - volts(t, h, "crank", "M2.-")
		require.InDelta(t, row.crank, at, 0.001, "%d AWG, crank", row.awg)
	}
}

// TestMotorStopsWhenItsRelayOpens reads the amperes beside the volts.
func TestMotorStopsWhenItsRelayOpens(t *testing.T) {
	m := build(t, pumpDraft)
	h := playCase(t, m, pumpWires(m, 19.42), hot)
	pump, ok := m.DeviceByName("M2")
	require.True(t, ok)
	f3, ok := m.DeviceByName("F3")
	require.True(t, ok)
	for step, amps := range map[string]float64{"off": 0, "prime": 8.5, "koeo": 0, "crank": 8.5, "running": 8.5, "rest": 0} {
		require.InDelta(t, amps, h.Step(step).DrawA.Of(pump, 0), 2e-5, step) // its leak of 1 Mohm as well
		require.InDelta(t, amps, h.Step(step).FuseA.Of(f3, 0), 2e-5, step)
	}
	w, ok := m.WireByNumber("204")
	require.True(t, ok)
	require.InDelta(t, 8.5, h.Step("prime").WireA[w.ID], 2e-5)
}
