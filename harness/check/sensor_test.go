package check_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A position sensor on a controller's 5 V in a 24 V vehicle, and a crank
// sensor that makes its own volts between two inputs (invented).
const sensors = `harness "x" system 24V
battery G1 24V cca 600A grounds-to frame
fuse F1 5A from G1 6in
module A1
  BAT feed 0.3A asleep 1mA always
  REF reference 5V
  SG sensor-ground
  TPS input
  CRK+ input
  CRK- input
  GND ground
sensor B3
sensor B5
stud E1 on frame
wire 1 G1.+ F1.1 6in
wire 2 F1.2 A1.BAT 3ft
wire 3 A1.GND E1 3ft
wire 4 A1.REF B3.+ 3ft
wire 5 A1.SG B3.- 3ft
wire 6 A1.TPS B3.S 3ft
wire 7 A1.CRK+ B5.S 3ft
wire 8 A1.CRK- B5.- 3ft
`

// 5 V over the ohms that draw 5 mA at 27 V are 0.9 mA, under a fifth: it is on
// for all that.
func TestSensorOnItsReferenceIsOn(t *testing.T) {
	require.Empty(t, checked(t, "x.draft", sensors).Findings)
	unfed := strings.Replace(sensors, "A1.REF B3.+", "A1.TPS B3.+", 1)
	require.NotEmpty(t, only(checked(t, "x.draft", unfed).Findings, "load-without-feed"))
}

// Two inputs are a way for a sensor that nothing feeds; one with a feed, or one
// whose wire ends nowhere, still wants its return.
func TestSensorBetweenTwoInputs(t *testing.T) {
	fed := strings.Replace(sensors, "wire 8 ", "wire 9 A1.REF B5.+ 3ft\nwire 8 ", 1)
	require.Len(t, only(checked(t, "x.draft", fed).Findings, "load-without-return"), 1)
	cut := strings.Replace(sensors, "wire 8 A1.CRK- B5.- 3ft\n", "", 1)
	require.Len(t, only(checked(t, "x.draft", cut).Findings, "load-without-return"), 1)
}

// 80 A in a wire that is good for 79.97 A are not told as 80 A in 80 A, and a
// size that was left open says why it is no thicker.
func TestCurrentJustOverAmpacity(t *testing.T) {
	found := only(checked(t, "x.draft", `battery G1 cca 750A grounds-to frame
alternator G3 grounds-to frame 80A setpoint 14.2V
fuse F2 100A bolt-down from G1 6in
switch S9 closed
wire 1 G1.+ F2.1 6in
wire 2 F2.2 S9.1 1ft
wire 3 S9.2 G3.B+ 4ft
`).Findings, "wire-above-ampacity")
	require.NotEmpty(t, found)
	require.Contains(t, found[0].Msg, "carries 80 A in flat-battery charging; 8 AWG is good for 79.97 A there")
	require.Contains(t, found[0].Detail, "take parts with studs")
}
