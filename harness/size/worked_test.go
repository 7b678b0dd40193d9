package size_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/route"
	"legwork/harness/size"
)

// workedDraft is the pump circuit of the design's worked example alone: the
// relay is held by a battery and a switch outside it, and the starter is a
// constant 160 A. PUMP stands for the size of the pump's four wires.
const workedDraft = `draft 1
harness "Worked example"  system 12V  profile road  units us
place bay   85C  wet
place dash  50C
place rail  60C  wet
place tank  50C  wet
leg   bay   dash  35in
leg   dash  rail  43in
leg   rail  tank  9ft6in
metal block
metal frame
stud  E1  on block  at bay   M10
stud  E2  on frame  at bay   M8
stud  E3  on frame  at tank  M6
strap 91  E1 E2  4AWG  18in
battery    G1  at bay  cca 540A
alternator G2  at bay  grounds-to block  65A  setpoint 14.2V
motor      M9  at bay  grounds-to block  draws 160A 13.5V  needs 2V when crank
switch     S8  at bay  closed when crank
battery    G9  at dash  cca 540A
switch     S9  at dash  closed when prime, crank, running
fuse       F1  80A  at bay  bolt-down  from G1 6in
box        A2  at dash
  bus BAT  F3.1
fuse       F3  15A  in A2
relay      K1  in A2  coil 85ohm  contact 30A  motor 17A  suppress resistor
motor      M2  at tank  draws 8.5A 13.5V  needs 1V when crank  fuel
connector  X2  at rail  6way  sealed  blade 6.3mm
  half cab   sockets
  half rear  pins
circuit supply
  wire 100  G1.-    E1      2AWG  24in
  wire 101  G1.+    F1.1
  wire 102  F1.2    A2.BAT
  wire 103  G2.B+   G1.+    4AWG  30in
  wire 104  G1.+    S8.1    2AWG  6in
  wire 105  S8.2    M9.+    2AWG  6in
circuit pump  drop 3%
  wire 201  F3.2       K1.30     PUMP
  wire 202  K1.87      X2.cab.1  PUMP
  wire 203  X2.rear.1  M2.+      PUMP
  wire 204  M2.-       E3        PUMP
circuit hold
  wire 901  G9.+   S9.1   18AWG
  wire 902  S9.2   K1.86  18AWG
  wire 903  K1.85  G9.-   18AWG
`

func chosen(t *testing.T, src string) (*model.Model, *size.Sizes) {
	t.Helper()
	f, found := draft.Parse("test.draft", []byte(src))
	m, more := model.Build(f)
	require.Less(t, append(found, more...).Worst(), diag.Fault, "%v", append(found, more...))
	p, _ := gauge.ProfileOf("road")
	s, err := size.Choose(context.Background(), m, route.Measure(m), p, part.Start{})
	require.NoError(t, err)
	return m, s
}

func workedWith(pump string) string {
	return strings.ReplaceAll(workedDraft, "PUMP", pump)
}

func dropIn(t *testing.T, s *size.Sizes, device, step string) float64 {
	t.Helper()
	for _, p := range s.Drops() {
		if p.Device.Name == device && p.Step.Name == step {
			return p.DropV
		}
	}
	require.Fail(t, "no drop", "%s in %s", device, step)
	return 0
}

// The table of the design's worked example: chain sizes against the drop of
// the pump in prime and running, and its volts in crank. The figures were
// worked by hand from the SAE circular-mil areas, 17.241 nohm m at 20 C, and
// the resistances listed with them; tolerance 0.5 mV, and 1 mV for the crank
// volts, which the table prints to the millivolt.
func TestWorkedExampleTable(t *testing.T) {
	for _, row := range []struct {
		awg                int
		primeMV, runningMV float64
		crankV             float64
	}{
		{18, 1173.6, 1164.2, 9.391},
		{16, 811.7, 802.3, 9.753},
		{14, 558.2, 548.8, 10.007},
		{12, 403.1, 393.7, 10.162},
		{10, 302.5, 293.2, 10.263},
		{8, 241.4, 232.0, 10.324},
	} {
		t.Run(fmt.Sprintf("%d AWG", row.awg), func(t *testing.T) {
			m, s := chosen(t, workedWith(fmt.Sprintf("%dAWG", row.awg)))
			require.InDelta(t, row.primeMV, 1000*dropIn(t, s, "M2", "prime"), 0.5)
			require.InDelta(t, row.runningMV, 1000*dropIn(t, s, "M2", "running"), 0.5)
			plus, _ := m.TerminalByName("M2.+")
			minus, _ := m.TerminalByName("M2.-")
			crank := s.Hot.Step("crank")
			require.InDelta(t, row.crankV, crank.Reading(plus).Volts-crank.Reading(minus).Volts, 0.001)
		})
	}
}

// What the worked example chooses: 6 AWG battery cable by protection for the
// main feed, 10 AWG by drop for the pump, with 57 mV to spare.
func TestWorkedExampleChoice(t *testing.T) {
	m, s := chosen(t, workedWith(""))
	for number, want := range map[string]struct{ size, family, by string }{
		"101": {"6 AWG", "SGX", "protection"},
		"102": {"6 AWG", "SGX", "protection"},
		"201": {"10 AWG", "GXL", "drop"},
		"202": {"10 AWG", "GXL", "drop"},
		"203": {"10 AWG", "GXL", "drop"},
		"204": {"10 AWG", "GXL", "drop"},
	} {
		w, ok := m.WireByNumber(number)
		require.True(t, ok)
		got := s.Wires[w.ID]
		require.Equal(t, want.size, got.Conductor.Size.Name, "wire %s", number)
		require.Equal(t, want.family, got.Conductor.Family.Name, "wire %s", number)
		require.Equal(t, want.by, got.Governs, "wire %s", number)
	}
	require.InDelta(t, 57.5, 1000*(0.36-dropIn(t, s, "M2", "prime")), 0.5)
	// 6 AWG at 85.4 C: 1.743 mohm/m; wires 101 and 102 together 2.081 mohm
	w101, _ := m.WireByNumber("101")
	w102, _ := m.WireByNumber("102")
	a, b := s.Wires[w101.ID].Conductor, s.Wires[w102.ID].Conductor
	require.InDelta(t, 85.4, a.TempC, 0.05)
	require.InDelta(t, 2.081, 1000*(a.Ohm+b.Ohm), 0.001)
}

// The far-end short of the worked example: 12.6 V over battery 11.11, path
// 34.57 and return 1.02 mohm is 270 A, 18 times the fuse. The example counts
// the fuse as warm as its load makes it and the pump's ground wire with it;
// the least current takes a fuse at its rating: 5 % apart.
func TestWorkedExampleShort(t *testing.T) {
	m, s := chosen(t, workedWith(""))
	w, _ := m.WireByNumber("203")
	require.InDelta(t, 270, s.Wires[w.ID].Judgement.Case.ShortA, 0.05*270)
}
