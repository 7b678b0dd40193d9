package check_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// bypass is an old starter with its R terminal on the coil's feed (invented):
// in crank the unfused B feeds all that IGN and ST feed then, and never ACC.
const bypass = `battery G1 cca 540A grounds-to frame
starter M1 draws 160A grounds-to frame
fuse F1 20A from G1 6in
keyswitch S1
  off
  acc B ACC
  run B ACC IGN
  gap B IGN
  crank B IGN ST
heater R1 draws 4A 13.5V grounds-to frame
lamp P1 5W grounds-to frame
splice J1
wire 1 G1.+ F1.1 14AWG 6in
wire 2 F1.2 S1.B 14AWG 2ft
wire 3 S1.IGN J1 18AWG 2ft
wire 4 J1 R1.1 18AWG 2ft
wire 5 S1.ACC P1.1 18AWG 2ft
wire 6 M1.R J1 18AWG 3ft
wire 7 G1.+ M1.B 2AWG 2ft
wire 8 S1.ST M1.S 14AWG 2ft
`

func TestBackFeedIsToldOnce(t *testing.T) {
	found := only(checked(t, "x.draft", bypass).Findings, "unprotected-wire")
	require.Len(t, found, 1, "%v", found)
	f := found[0]
	require.Equal(t, "wire 6, M1.R to J1, leads past F1: what lies behind it has no fuse", f.Msg)
	require.Contains(t, f.Detail, "The current comes by G1.+, wire 7, M1.")
	var behind []string
	for _, r := range f.Related {
		behind = append(behind, r.Msg)
	}
	require.Contains(t, behind, "wire 4, J1 to R1.1, lies behind it")
	require.Contains(t, behind, "wire 8, S1.ST to M1.S, lies behind it")
	require.NotContains(t, strings.Join(behind, "\n"), "wire 5", "ACC is open while the starter turns")

	// With ACC closed in crank as well the lamp's wire is fed so too.
	closed := checked(t, "x.draft", strings.Replace(bypass, "crank B IGN ST", "crank B ACC IGN ST", 1)).Findings
	require.Contains(t, only(closed, "unprotected-wire")[0].Related[len(only(closed, "unprotected-wire")[0].Related)-2].Msg, "wire 5")

	// Without the wire from R nothing is left to tell.
	none := strings.Replace(bypass, "wire 6 M1.R J1 18AWG 3ft\n", "", 1)
	require.Empty(t, only(checked(t, "x.draft", none).Findings, "unprotected-wire"))
}

// What the draft accepts of one wire says nothing of those behind it.
func TestAcceptedWireDoesNotCoverTheNext(t *testing.T) {
	src := strings.Replace(bypass, "wire 6 M1.R J1 18AWG 3ft\n", "wire 6 M1.R J1 18AWG 3ft\n  accept unprotected-wire \"for the test\"\n", 1)
	res := checked(t, "x.draft", src)
	found := only(res.Findings, "unprotected-wire")
	require.Len(t, res.Accepted, 1)
	require.NotEmpty(t, found)
	for _, f := range found {
		require.Contains(t, []string{"wire 3", "wire 4", "wire 8"}, f.Msg[:6])
	}
}

// The link of two batteries in series can't have a fuse of its own that would
// not also lie in the starter's cable; a load on its stud still wants one.
func TestSeriesLinkGoesWithoutAFuse(t *testing.T) {
	const src = `harness "x" system 24V
battery G1 12V cca 750A grounds-to frame
battery G2 12V cca 750A
stud E1 M8
fuse F1 10A from G2 6in
lamp P1 21W 27V grounds-to frame
wire 1 G1.+ E1 70mm2 6in
wire 2 E1 G2.- 70mm2 6in
wire 3 G2.+ F1.1 14AWG 6in
wire 4 F1.2 P1.1 14AWG 2ft
`
	require.Empty(t, only(checked(t, "x.draft", src).Findings, "unprotected-wire"))
	tapped := checked(t, "x.draft", src+"lamp P2 5W 13.5V grounds-to frame\nwire 5 E1 P2.1 14AWG 2ft\n").Findings
	found := only(tapped, "unprotected-wire")
	require.Len(t, found, 1, "%v", found)
	require.Contains(t, found[0].Msg, "wire 5, E1 to P2.1")
}

// Two fuses on a stud that one long wire feeds are one finding; a short wire
// to the stud is none, and a lamp on the stud is told by its own wire.
func TestWireToAStudAtTheBattery(t *testing.T) {
	const src = `battery G1 cca 540A grounds-to frame
stud E5 M8
fuse F1 10A
fuse F2 15A
lamp P1 21W grounds-to frame
lamp P2 21W grounds-to frame
wire 1 G1.+ E5 6AWG LENGTH
wire 2 E5 F1.1 14AWG 3in
wire 3 E5 F2.1 14AWG 3in
wire 4 F1.2 P1.1 4ft
wire 5 F2.2 P2.1 4ft
`
	at := func(length, more string) []string {
		var list []string
		for _, f := range only(checked(t, "x.draft", strings.Replace(src, "LENGTH", length, 1)+more).Findings, "unprotected-wire") {
			list = append(list, f.Severity.String()+": "+f.Msg)
		}
		return list
	}
	const lamp = "lamp P3 5W grounds-to frame\nwire 6 E5 P3.1 14AWG 1ft\n"
	require.Empty(t, at("4in", ""), "7 in in all")
	require.Len(t, at("4ft", ""), 1)
	require.Equal(t, []string{"danger: wire 6, E5 to P3.1, can be fed from G1 without a fuse"}, at("4in", lamp))
	require.Contains(t, at("4ft", lamp), "danger: wire 1, G1.+ to E5, can be fed from G1 without a fuse, and a wire behind it")
}

// Two batteries side by side are one source: a wire from either to the far
// side of the other's fuse leads past it.
func TestPastTheFuseOfTheOtherBattery(t *testing.T) {
	const src = `battery G1 cca 540A grounds-to frame
battery G2 cca 540A grounds-to frame
fuse F1 30A from G1 6in
fuse F2 10A
lamp P1 21W grounds-to frame
stud E1 M8
wire 1 G1.+ G2.+ 2AWG 1ft
wire 2 G1.+ F1.1 10AWG 6in
wire 3 F1.2 E1 10AWG 2ft
wire 4 E1 F2.1 10AWG 1in
wire 5 F2.2 P1.1 14AWG 2ft
`
	require.Empty(t, only(checked(t, "x.draft", src).Findings, "unprotected-wire"))
	found := only(checked(t, "x.draft", src+"wire 6 G2.+ E1 10AWG 1ft\n").Findings, "unprotected-wire")
	var all []string
	for _, f := range found {
		all = append(all, f.Msg)
	}
	require.Contains(t, all, "wire 6, G2.+ to E1, leads past F1: what lies behind it has no fuse")
}
