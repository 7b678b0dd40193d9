package check_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness/diag"
)

// An ignition coil on short thick wires, switched by a controller (invented).
// The driver takes 0.5 V at its rated 10 A, in proportion below.
const coilDraft = `battery G1  cca 600A  grounds-to frame
fuse    F1  15A  from G1 6in
switch  S1  closed when running
coil    T1  draws 7.5A 13.5V
module  A1
  BAT   feed 0.4A  asleep 2mA
  COIL  low-side 10A  clamps when running
  GND   ground
stud    E1  on frame  M6
splice  J1
wire 1  G1.+    F1.1     10AWG  6in
wire 2  F1.2    J1       10AWG  6in
wire 3  J1      S1.1     10AWG  6in
wire 4  S1.2    T1.+     10AWG  6in
wire 5  T1.-    A1.COIL  10AWG  6in
wire 6  A1.GND  E1       10AWG  6in
wire 7  J1      A1.BAT   10AWG  6in
`

// The driver's own drop, nine tenths of the 3 % that the coil may lose, is not
// held against the wiring; the way back behind the controller is.
func TestDriverIsNoWiring(t *testing.T) {
	r := checked(t, "x.draft", coilDraft)
	require.Empty(t, only(r.Findings, "drop-over-limit"), "%v", r.Findings)
	d, _ := r.Model.DeviceByName("T1")
	p, ok := r.Sizes.WorstDrop(d, 0)
	require.True(t, ok)
	amps := r.Sizes.Hot.Step("running").DrawA.Of(d, 0)
	require.InDelta(t, gauge.DriverDropV*amps/10, p.DriverV, 1e-6)
	require.Greater(t, p.DriverV, 0.33)
	require.Less(t, p.DropV, 0.1)
	var way []string
	for _, x := range p.Shares {
		way = append(way, x.Name())
	}
	require.Equal(t, "wire 1, F1, wire 2, wire 3, the contact of S1, wire 4, wire 5, the driver of A1.COIL, wire 6", strings.Join(way, ", "))
}

// Most of what this heater loses is in its relay's contact (5 mohm x 15.5 A) and
// in its fuse (3.38 mohm, 1.3 times that when warm); the wires take a tenth of
// it. The culprit is named, and thicker wire is not advised.
func TestCulpritNeedNotBeAWire(t *testing.T) {
	r := checked(t, "x.draft", `battery G1  cca 540A  grounds-to frame
fuse    F1  20A  from G1 6in
switch  S1  closed when running
relay   K1  contact 40A  suppress resistor
heater  R1  draws 17A 13.5V
splice  J1
stud    E1  on frame  M6
stud    E2  on frame  M6
circuit heat  drop 1%
  wire 1  G1.+   F1.1   8AWG   6in
  wire 2  F1.2   J1     8AWG   6in
  wire 3  J1     K1.30  8AWG   6in
  wire 4  K1.87  R1.1   8AWG   6in
  wire 5  R1.2   E1     8AWG   6in
  wire 6  J1     S1.1   18AWG  1ft
  wire 7  S1.2   K1.86  18AWG  1ft
  wire 8  K1.85  E2     18AWG  1ft
`)
	found := only(r.Findings, "drop-over-limit")
	require.Len(t, found, 1, "%v", r.Findings)
	require.Equal(t, diag.Warning, found[0].Severity)
	require.Regexp(t, `^The contact of K1 takes the most of it: 77\.\d mV\. The copper of all wires together takes [1-3]\d(\.\d)? mV: thicker wire alone does not cure it\.$`,
		found[0].Detail)
}

// Where a wire is to blame it still is.
func TestCulpritIsAWire(t *testing.T) {
	src := `battery G1  cca 540A  grounds-to frame
fuse    F1  10A  from G1 6in
motor   M1  draws 7A 13.5V  grounds-to frame
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  M1.+  18AWG  30ft
`
	found := only(checked(t, "x.draft", src).Findings, "drop-over-limit")
	require.Len(t, found, 1)
	require.Regexp(t, `^Wire 2, 18 AWG, takes the most of it: 1\.\d+ V\.$`, found[0].Detail)
}

// Three lamps behind one thin wire: one finding, at the lamp that suffers
// most, which names the others.
func TestOneCauseIsToldOnce(t *testing.T) {
	src := `battery G1  cca 540A  grounds-to frame
fuse    F1  15A  from G1 6in
splice  J1
lamp    P1  21W  grounds-to frame
lamp    P2  35W  grounds-to frame
lamp    P3  21W  grounds-to frame
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  J1    18AWG  40ft
wire 3  J1    P1.1  18AWG  1ft
wire 4  J1    P2.1  18AWG  1ft
wire 5  J1    P3.1  18AWG  1ft
`
	found := only(checked(t, "x.draft", src).Findings, "drop-over-limit")
	require.Len(t, found, 1)
	require.Contains(t, found[0].Msg, "P2 loses")
	require.Contains(t, found[0].Detail, "Wire 2, 18 AWG, takes the most of it")
	require.Len(t, found[0].Related, 3)
	require.Contains(t, found[0].Related[0].Msg, "wire 2, 18 AWG, takes")
	require.Contains(t, found[0].Related[1].Msg, "P1 loses")
	require.Contains(t, found[0].Related[2].Msg, "P3 loses")
}
