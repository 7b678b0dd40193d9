package proof

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/diag"
)

// A leave is something that a check has to put up with, and the same thing
// taken so far that it has to be told. Were the default any stricter, the first
// draft would get an alarm; were it given up, the second would get none.
type leave struct {
	name string
	fine string // nothing at warning or above
	past string // told
	rule string // by this rule, at warning or above
}

const (
	van = "battery G1 cca 600A grounds-to frame\nstud E1 on frame M8\n"
	key = "keyswitch S1\n  off\n  run B IGN\nfuse F1 10A from G1 6in\nwire 1 G1.+ F1.1 14AWG 6in\nwire 2 F1.2 S1.B 14AWG 2ft\n"
	// Four rings on E9: two cables, a strap and a wire.
	rings = "metal frame\nmetal bed\nstud E9 on frame M8\nstud E8 on bed M8\nstud E7 on frame M8\nbattery G1 cca 600A\nfuse F1 10A from G1 6in\nswitch S1 closed when running\nlamp P1 21W\nlamp P2 5W\n" +
		"wire 1 G1.- E9 4AWG 1ft\nwire 2 E9 E7 4AWG 1ft\nstrap 3 E9 E8 8AWG 1ft\nwire 4 P1.2 E9 16AWG 2ft\nwire 5 G1.+ F1.1 16AWG 6in\nwire 6 F1.2 S1.1 16AWG 2ft\nwire 7 S1.2 P1.1 16AWG 2ft\nwire 8 P1.1 P2.1 16AWG 2ft\ntogether P1.1 7 8\n"
)

var leaves = []leave{
	{
		name: "wire in a hot engine bay is cross-linked where nothing is said",
		fine: "place bay 85C\n" + van + "fuse F1 10A from G1 6in\nswitch S1 closed when running\nlamp P1 60W grounds-to frame\nwire 1 G1.+ F1.1 16AWG 6in\nwire 2 F1.2 S1.1 16AWG 2ft\nwire 3 S1.2 P1.1 16AWG 4ft\n",
		past: "place bay 85C\n" + van + "fuse F1 10A from G1 6in\nswitch S1 closed when running\nlamp P1 60W grounds-to frame\nwire 1 G1.+ F1.1 16AWG 6in\nwire 2 F1.2 S1.1 16AWG 2ft\nwire 3 S1.2 P1.1 16AWG GPT 4ft\n",
		rule: "fuse-above-wire",
	},
	{
		name: "a fuse may carry 79 % of its rating, not 84 %",
		fine: van + "fuse F1 10A from G1 6in\nswitch S1 closed when running\nmotor M2 draws 7.9A 13.5V grounds-to frame\nwire 1 G1.+ F1.1 12AWG 6in\nwire 2 F1.2 S1.1 12AWG 2ft\nwire 3 S1.2 M2.+ 12AWG 4ft\n",
		past: van + "fuse F1 10A from G1 6in\nswitch S1 closed when running\nmotor M2 draws 8.4A 13.5V grounds-to frame\nwire 1 G1.+ F1.1 12AWG 6in\nwire 2 F1.2 S1.1 12AWG 2ft\nwire 3 S1.2 M2.+ 12AWG 4ft\n",
		rule: "fuse-heavily-loaded",
	},
	{
		// 10 ohm before a coil of 85 ohm take a tenth of the volts, and it still pulls in; the lamp of the same current is not let off.
		name: "a coil is judged by what pulls it in, a lamp by percent",
		fine: van + key + "relay K1 coil 85ohm pull-in 6V 7V contact 20A suppress resistor\nlamp P1 21W grounds-to frame\nfuse F2 10A from G1 6in\n" +
			"wire 3 S1.IGN K1.86 18AWG 2ft existing drop 1.4V 0.14A measured\nwire 4 K1.85 E1 18AWG 1ft\nwire 5 G1.+ F2.1 14AWG 6in\nwire 6 F2.2 K1.30 14AWG 2ft\nwire 7 K1.87 P1.1 14AWG 2ft\n",
		past: van + key + "lamp P1 led 1.9W 13.5V grounds-to frame\nwire 3 S1.IGN P1.1 18AWG 2ft existing drop 1.4V 0.14A measured\n",
		rule: "drop-over-limit",
	},
	{
		name: "a controller asleep draws what it says it does",
		fine: van + key + "module A1\n  BAT feed 2A asleep 2mA\n  IGN feed 1A above 7V when run\n  GND ground\nfuse F2 5A from G1 6in\nwire 3 S1.IGN A1.IGN 16AWG 2ft\nwire 4 A1.GND E1 16AWG 1ft\nwire 5 G1.+ F2.1 16AWG 6in\nwire 6 F2.2 A1.BAT 16AWG 2ft\n",
		past: van + key + "module A1\n  BAT feed 2A asleep 200mA\n  IGN feed 1A above 7V when run\n  GND ground\nfuse F2 5A from G1 6in\nwire 3 S1.IGN A1.IGN 16AWG 2ft\nwire 4 A1.GND E1 16AWG 1ft\nwire 5 G1.+ F2.1 16AWG 6in\nwire 6 F2.2 A1.BAT 16AWG 2ft\n",
		rule: "key-off-drain",
	},
	{
		// Six bolted joints of 0.3 mohm at 60 A lose 108 mV of the 400 mV of a charge path.
		name: "bolted joints may lose some tens of millivolts each",
		fine: van + "alternator G2 60A grounds-to frame\nfuse F1 80A bolt-down from G1 6in\nstud E2 M8\nwire 1 G1.+ F1.1 4AWG 6in\nwire 2 F1.2 E2 4AWG 1ft\nwire 3 E2 G2.B+ 4AWG 2ft\n",
		past: van + "alternator G2 60A grounds-to frame\nfuse F1 80A bolt-down from G1 6in\nstud E2 M8\nwire 1 G1.+ F1.1 4AWG 6in\nwire 2 F1.2 E2 4AWG 1ft\nwire 3 E2 G2.B+ 4AWG 14ft\n",
		rule: "charge-path-drop",
	},
	{
		name: "a relay without a motor rating is no fault with a motor of 20 A, and inrush is no steady current",
		fine: van + key + "relay K1 coil 85ohm pull-in 6V 7V contact 30A suppress resistor\nmotor M2 draws 20A 13.5V inrush 60A grounds-to frame\nfuse F2 30A from G1 6in\n" +
			"wire 3 S1.IGN K1.86 18AWG 2ft\nwire 4 K1.85 E1 18AWG 1ft\nwire 5 G1.+ F2.1 8AWG 6in\nwire 6 F2.2 K1.30 8AWG 2ft\nwire 7 K1.87 M2.+ 8AWG 2ft\n",
		past: van + key + "relay K1 coil 85ohm pull-in 6V 7V contact 30A motor 17A suppress resistor\nmotor M2 draws 20A 13.5V inrush 60A grounds-to frame\nfuse F2 30A from G1 6in\n" +
			"wire 3 S1.IGN K1.86 18AWG 2ft\nwire 4 K1.85 E1 18AWG 1ft\nwire 5 G1.+ F2.1 8AWG 6in\nwire 6 F2.2 K1.30 8AWG 2ft\nwire 7 K1.87 M2.+ 8AWG 2ft\n",
		rule: "contact-overloaded",
	},
	{
		name: "a heater is held against the figure for heaters, not for motors",
		fine: van + "switch S2 contact 30A motor 10A closed when running\nfuse F2 30A from G1 6in\nheater R1 draws 20A 13.5V grounds-to frame\nwire 5 G1.+ F2.1 8AWG 6in\nwire 6 F2.2 S2.1 8AWG 2ft\nwire 7 S2.2 R1.1 8AWG 2ft\n",
		past: van + "switch S2 contact 30A motor 10A closed when running\nfuse F2 30A from G1 6in\nmotor M2 draws 20A 13.5V grounds-to frame\nwire 5 G1.+ F2.1 8AWG 6in\nwire 6 F2.2 S2.1 8AWG 2ft\nwire 7 S2.2 M2.+ 8AWG 2ft\n",
		rule: "contact-overloaded",
	},
	{
		name: "the cable of a starter needs no fuse, a lamp's wire does",
		fine: van + "starter M1 draws 150A grounds-to frame\nswitch S1 closed when crank contact 50A\nfuse F1 30A from G1 6in\nwire 1 G1.+ M1.B 2AWG 4ft\nwire 2 G1.+ F1.1 10AWG 6in\nwire 3 F1.2 S1.1 10AWG 2ft\nwire 4 S1.2 M1.S 10AWG 2ft\n",
		past: van + "lamp P1 21W grounds-to frame\nwire 1 G1.+ P1.1 2AWG 4ft\n",
		rule: "unprotected-wire",
	},
	{
		name: "seven inches ahead of the first fuse are a rule for boats, not for the road",
		fine: "harness \"Van\" profile road\n" + van + "fuse F1 10A from G1 16in\nswitch S1 closed when running\nlamp P1 21W grounds-to frame\nwire 1 G1.+ F1.1 14AWG 16in\nwire 2 F1.2 S1.1 14AWG 2ft\nwire 3 S1.2 P1.1 14AWG 2ft\n",
		past: "harness \"Boat\" profile boat\n" + van + "fuse F1 10A from G1 16in\nswitch S1 closed when running\nlamp P1 21W grounds-to frame\nwire 1 G1.+ F1.1 14AWG 16in\nwire 2 F1.2 S1.1 14AWG 2ft\nwire 3 S1.2 P1.1 14AWG 2ft\n",
		rule: "unprotected-wire",
	},
	{
		// The starter returns by 2 AWG from the block to the battery: the strap to the frame carries the lamp alone.
		name: "the strap of the frame is as thick as its own current asks for",
		fine: strapped("wire 1 G1.- E1 2AWG 2ft\n"), past: strapped("wire 1 G1.- E2 2AWG 2ft\n"), rule: "thin-engine-strap",
	},
	{
		name: "four rings lie on one stud, straps and battery cables among them, not five",
		fine: rings + "wire 9 P2.2 E7 16AWG 2ft\n", past: rings + "wire 9 P2.2 E9 16AWG 2ft\n", rule: "crowded-stud",
	},
}

// strapped is a starter on a block, a lamp on a frame, and a thin strap between.
func strapped(ground string) string {
	return "metal block\nmetal frame\nstud E1 on block M10\nstud E2 on frame M8\nstrap 90 E1 E2 10AWG 1ft\nbattery G1 cca 600A\nstarter M1 draws 150A grounds-to block\nswitch S1 closed when crank contact 50A\nswitch S2 closed when running\n" +
		"fuse F1 30A from G1 6in\nfuse F2 10A from G1 6in\nlamp P1 21W grounds-to frame\nwire 2 G1.+ M1.B 2AWG 4ft\nwire 3 G1.+ F1.1 10AWG 6in\nwire 4 F1.2 S1.1 10AWG 2ft\nwire 5 S1.2 M1.S 10AWG 2ft\n" +
		"wire 6 G1.+ F2.1 14AWG 6in\nwire 7 F2.2 S2.1 14AWG 2ft\nwire 8 S2.2 P1.1 14AWG 2ft\n" + ground
}

func TestDefaultsKeepTrust(t *testing.T) {
	for _, l := range leaves {
		t.Run(l.name, func(t *testing.T) {
			for f := range told(t, l.fine).AtLeast(diag.Warning) {
				t.Errorf("an alarm for what is fine: %s", f)
			}
			found := false
			for f := range told(t, l.past).AtLeast(diag.Warning) {
				found = found || f.Rule == l.rule
			}
			require.True(t, found, "%s is silent past the default: %v", l.rule, told(t, l.past))
		})
	}
}

func told(t *testing.T, src string) diag.List {
	t.Helper()
	d := harness.Parse("x.draft", []byte(src))
	require.Less(t, d.Findings.Worst(), diag.Fault, "%v", d.Findings)
	r, err := d.Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	return r.Findings
}

// A charge cable without a fuse is a warning on the road, no fault and no
// danger: vehicles are built so.
func TestChargeCableIsAWarning(t *testing.T) {
	worst := diag.Severity(0)
	for _, f := range told(t, van+"alternator G2 60A grounds-to frame\nwire 1 G1.+ G2.B+ 4AWG 3ft\n") {
		if f.Rule == "unprotected-wire" {
			worst = max(worst, f.Severity)
		}
	}
	require.Equal(t, diag.Warning, worst)
}

// Black grounds and sensor returns share a color in a plug, and wires of one
// net do; nobody is warned of it.
func TestSharedColorsAreFine(t *testing.T) {
	src := van + key + `connector X1 6way sealed blade 1.5mm
  half car sockets
  half nose pins
module A1
  IGN feed 1A above 7V when run
  SGND sensor-ground
  T1 input
  T2 input
  GND ground
sensor B1
sensor B2
splice J1
lamp P1 10W
wire 3 S1.IGN A1.IGN 16AWG RD 2ft
wire 4 A1.GND E1 16AWG BK 1ft
wire 5 A1.SGND J1 18AWG BK/WH 1ft
wire 6 J1 X1.car.1 18AWG BK/WH 1ft
wire 7 J1 X1.car.2 18AWG BK/WH 1ft
wire 8 X1.nose.1 B1.- 18AWG BK/WH 1ft
wire 9 X1.nose.2 B2.- 18AWG BK/WH 1ft
wire 10 A1.T1 X1.car.3 18AWG BN 1ft
wire 11 X1.nose.3 B1.S 18AWG BN 1ft
wire 12 A1.T2 X1.car.4 18AWG GN 1ft
wire 13 X1.nose.4 B2.S 18AWG GN 1ft
wire 14 S1.IGN X1.car.5 16AWG RD 1ft
wire 15 X1.nose.5 P1.1 16AWG RD 1ft
wire 16 P1.2 X1.nose.6 16AWG BK 1ft
wire 17 X1.car.6 E1 16AWG BK 1ft
together S1.IGN 3 14
`
	for f := range told(t, src).AtLeast(diag.Warning) {
		t.Errorf("%s", f)
	}
}
