package size_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/size"
)

// Two batteries, each with a lamp of its own, tied by a relay that closes when
// the engine runs; the lines about the batteries may change places (invented).
const twoBanks = `draft 1
harness "Two banks"
%1
%2
alternator G3 grounds-to frame 60A setpoint 14.2V
switch S1 closed when running
relay K1 contact 70A
fuse F1 30A bolt-down from G1 6in
fuse F2 30A bolt-down from G2 6in
fuse F3 80A bolt-down from G1 6in
lamp P1 55W 13.5V grounds-to frame
lamp P2 55W 13.5V grounds-to frame
splice J1
splice J2
wire 1 G1.+ F1.1 6in
wire 2 G2.+ F2.1 6in
wire 3 F1.2 J1 1ft
wire 4 F2.2 J2 1ft
wire 5 J1 K1.30 2ft
wire 6 K1.87 J2 2ft
wire 7 J1 S1.1 2ft
wire 8 S1.2 K1.86 2ft
wire 9 K1.85 E1 2ft
stud E1 on frame M6
wire 10 J1 P1.1 18AWG 9ft
wire 11 J2 P2.1 18AWG 4ft
wire 12 G1.+ F3.1 6in
wire 13 F3.2 G3.B+ 3ft
`

func banksFrom(a, b string) string {
	return strings.NewReplacer("%1", a, "%2", b).Replace(twoBanks)
}

func numbersOf(p size.Path) string {
	var list []string
	for _, w := range p.Wires {
		list = append(list, w.Number)
	}
	return strings.Join(list, " ")
}

// Each lamp is judged in every step, against the battery next to it: also
// while the relay ties both, when a way leads to it from either.
func TestEachBankJudgesItsLoads(t *testing.T) {
	const one, two = "battery G1 cca 600A grounds-to frame", "battery G2 cca 500A grounds-to frame"
	dropV := map[string]float64{}
	for i, src := range []string{banksFrom(one, two), banksFrom(two, one)} {
		_, s := chosen(t, src)
		for _, p := range s.Drops() {
			want := map[string]string{"P1": "10 3 1", "P2": "11 4 2"}[p.Device.Name]
			require.Equal(t, want, numbersOf(p), "%s in %s", p.Device.Name, p.Step.Name)
			key := p.Device.Name + " " + p.Step.Name
			if i == 0 {
				dropV[key] = p.DropV
			}
			require.InDelta(t, dropV[key], p.DropV, 1e-6, key)
		}
		require.Len(t, s.Drops(), len(dropV))
		require.Contains(t, dropV, "P2 running")
		require.Contains(t, dropV, "P2 off")
	}
}

// Two batteries of 12 V in series are one bank of 24 V, and the lamp above
// both loses what its own wires take; whichever stands first, and also where a
// fuse lies in their link: it takes its part then.
func TestRowIsOneBank(t *testing.T) {
	const rest = `
fuse F1 10A from G2 6in
lamp P1 70W 27V grounds-to frame
wire 2 G2.+ F1.1 6in
wire 3 F1.2 P1.1 20AWG 12ft
`
	const low, high = "battery G1 12V cca 750A grounds-to frame\n", "battery G2 12V cca 750A\n"
	for _, link := range []string{
		"wire 1 G1.+ G2.- 35mm2 6in",
		"fuse F2 30A from G1 6in\nwire 1 G1.+ F2.1 35mm2 6in\nwire 4 F2.2 G2.- 35mm2 6in",
	} {
		for _, pair := range []string{low + high, high + low} {
			_, s := chosen(t, "draft 1\nharness \"Row\" system 24V\n"+pair+link+rest)
			require.NotEmpty(t, s.Drops())
			for _, p := range s.Drops() {
				require.Equal(t, "3 2", numbersOf(p))
				require.InDelta(t, 0.32, p.DropV, 0.12, "12 ft of 20 AWG, 33.3 mohm/m, and a fuse at about 2.5 A")
			}
		}
	}
}
