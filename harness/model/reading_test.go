package model_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/model"
	"legwork/harness/part"
)

// with builds base and these lines, which have to be sound.
func with(t testing.TB, lines string) *model.Model {
	t.Helper()
	m, found := model.Build(parse(t, base+lines+"\n"))
	require.Empty(t, found)
	return m
}

// Every kind of device that the language page names reads.
func TestKindsRead(t *testing.T) {
	with(t, `splice J91 "Pump feed" at dash
lamp P91 21W 13.5V at bay grounds-to frame
switch S91 at bay closed when always
switch S92 at bay open when crank-only
sensor B91 at bay
diode V91 at dash
resistor R91 10ohm at dash
heater H91 draws 10A at dash grounds-to frame
solenoid Y91 draws 2A at bay
coil T91 at bay
motor M91 draws 8.5A 13.5V sheet needs 10.5V when running needs 8V when crank inrush 25A guess at bay
breaker Q91 30A at bay
link 80 14AWG 6in at bay from G1 6in
alternator G92 at bay grounds-to block 65A setpoint 14.2V
starter M92 at bay grounds-to block draws 160A stall 420A pull-in 38A hold 9A`)
}

func TestStuds(t *testing.T) {
	m := with(t, "stud E91 on frame at bay 1/4in\nstud E92 at dash No10\nstud E93 on block at bay M6\n")
	for name, want := range map[string]string{"E91": "1/4in", "E92": "No10", "E93": "M6"} {
		require.Equal(t, want, device(t, m, name).Thread)
	}
	require.Equal(t, "frame", terminal(t, m, "E91").Metal.Name)
	require.Nil(t, terminal(t, m, "E92").Metal, "an insulated stud")
	require.Equal(t, part.Post, terminal(t, m, "E93").Landing)
	require.InDelta(t, 4.826, device(t, m, "E92").Num("thread"), 1e-9) // No. 10 is 0.190 in
}

func TestWiresAsWritten(t *testing.T) {
	m := with(t, `wire 91 F2.2 S1.1 "Feed" 2.5mm2 TXL GRN/WHT 9ft6in via bay
lead 92 P1.1 S1.2 16AWG 8in BK
strap 93 E1 E2 1/0AWG 18in
circuit c9 "Nine" drop 10% color OG SXL 12AWG
  wire 94 F2.2 S1.1
  wire 95 F2.2 S1.1 18AWG`)
	wire := func(number string) *model.Wire {
		w, ok := m.WireByNumber(number)
		require.True(t, ok)
		return w
	}
	w := wire("91")
	require.Equal(t, 2.5, w.Size.Nominal)
	require.True(t, w.Sized && w.Size.Metric)
	require.Equal(t, "TXL", w.Family)
	require.Equal(t, model.Color{Base: "GN", Tracer: "WH", Shown: "GRN/WHT"}, w.Color)
	require.InDelta(t, 9.5*0.3048, w.LengthM, 1e-12) // 9 ft 6 in
	require.Equal(t, "bay", w.Via[0].Name)
	require.Equal(t, "Feed", w.Label)
	require.Equal(t, "loose", w.Circuit.Name)
	require.Equal(t, model.Lead, wire("92").Role)
	require.Equal(t, model.Strap, wire("93").Role)
	require.Equal(t, 0, wire("93").Size.AWG) // 1/0 is held as 0
	require.Equal(t, 12, wire("94").Size.AWG, "the circuit's size")
	require.Equal(t, "SXL", wire("94").Family)
	require.Equal(t, "OG", wire("94").Color.Base)
	require.True(t, wire("94").Chosen)
	require.Equal(t, 18, wire("95").Size.AWG)
	require.InDelta(t, 0.10, wire("95").Circuit.DropFrac, 1e-12)
	require.Len(t, wire("95").Circuit.Wires, 2)
}

// Black to ground, red at the battery and on a bus, else by circuit: the
// order of the colors is a choice of this program.
func TestColorsChosen(t *testing.T) {
	m := with(t, `circuit one
  wire 91 S1.2 E1
  wire 92 A1.GND S1.2
  wire 93 G1.- K1.85
  wire 94 G1.+ K1.30
  wire 95 A2.BAT S1.1
  wire 96 K1.87 P1.1
circuit two
  wire 97 S2.IGN P1.1`)
	for number, want := range map[string]string{"91": "BK", "92": "BK", "93": "BK", "94": "RD", "95": "RD", "96": "YE", "97": "GN"} {
		w, _ := m.WireByNumber(number)
		require.Equal(t, want, w.Color.Base, number)
		require.True(t, w.Chosen)
	}
}

// A terminal is shown as it was first typed, and found by all its names.
func TestNamesOfTerminals(t *testing.T) {
	m := with(t, "wire 91 K1.NO P1\nwire 92 K1.87 S2.START\nwire 93 G1.POS K1.COM\n")
	made := terminal(t, m, "K1.87")
	require.Same(t, made, terminal(t, m, "K1.NO"))
	require.Equal(t, "K1.NO", made.Shown)
	require.Equal(t, "87", made.Name)
	require.Equal(t, "P1.1", terminal(t, m, "P1.1").Shown)
	require.Equal(t, "ST", terminal(t, m, "S2.START").Name)
	require.Equal(t, "K1.85", terminal(t, m, "K1.85").Shown, "never typed")
	require.Len(t, made.Ends, 2)
	for _, none := range []string{"K1.88", "K9.1", "K1", "E1.1", ""} {
		_, ok := m.TerminalByName(none)
		require.False(t, ok, none)
	}
}

func TestQuotedNames(t *testing.T) {
	m := with(t, "fuse \"Main fuse\" 30A at bay\nwire \"A 1\" \"Main fuse\".1 F1.2\n")
	w, ok := m.WireByNumber("A 1")
	require.True(t, ok)
	require.Equal(t, "Main fuse", w.From.Device.Name)
}

func TestAcceptsSpareTogether(t *testing.T) {
	m := with(t, `accept wire-thin "the whole draft"
fuse F91 10A at bay
  accept fuse-loaded "it is rated for it"
circuit c9
  accept drop-high "a short run"
  wire 91 F2.2 S1.1
    accept color-clash "on the car already"
  wire 92 F2.2 S1.2
together F2.2 91 92
spare X1.cab.2 K1.87
module A91 at dash
  IN input
    accept loose-input "later"`)
	heads := map[string]string{}
	for _, a := range m.Accepts {
		heads[a.Rule] = ""
		if a.Scope != nil {
			heads[a.Rule] = a.Scope.Head.Raw
		}
		require.NotEmpty(t, a.Reason)
	}
	require.Equal(t, map[string]string{"wire-thin": "", "fuse-loaded": "fuse", "drop-high": "circuit", "color-clash": "wire", "loose-input": "IN"}, heads)
	require.Len(t, m.Together, 1)
	require.Len(t, m.Together[0].Wires, 2)
	require.True(t, quiet(t, m, "X1.cab.2") && quiet(t, m, "K1.87"))
	require.False(t, quiet(t, m, "X1.cab.1"))
}

func quiet(t *testing.T, m *model.Model, name string) bool {
	x := terminal(t, m, name)
	return x.Device.Pins[x.Pin].Quiet
}

func TestTwentyFourVolts(t *testing.T) {
	m, found := model.Build(parse(t, "harness \"Coach\" system 24V units metric profile boat\nrelay K1\nbattery G1 grounds-to frame\n"))
	require.Empty(t, found)
	require.Equal(t, 24.0, m.SystemV)
	require.Equal(t, "boat", m.Profile)
	require.True(t, m.Metric)
	require.Equal(t, 24.0, device(t, m, "G1").Num("volts")) // the battery's default is that of the system
	require.Positive(t, device(t, m, "K1").BatteryOhm)
}

func TestSpots(t *testing.T) {
	m := with(t, "splice J91 at bay-dash 5in\nsplice J92 at dash-bay 5in\n") // the leg is 35 in
	near, far := device(t, m, "J91").Spot, device(t, m, "J92").Spot
	require.Equal(t, "bay", near.Place.Name)
	require.InDelta(t, 5*0.0254, near.OffsetM, 1e-12)
	require.Equal(t, "dash", far.Place.Name)
	require.InDelta(t, 30*0.0254, far.OffsetM, 1e-12)
	require.Equal(t, 85.0, device(t, m, "J91").AmbientC)
}
