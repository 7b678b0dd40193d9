package solve

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/model"
	"legwork/harness/part"
)

// bigDraft is an invented vehicle of about the given number of wires: zones
// of fused branches behind zone relays, each branch with a splice, two loads
// and a ground wire to one of its studs.
func bigDraft(wires int) string {
	var b strings.Builder
	b.WriteString(`draft 1
harness "Big" system 12V
metal block
metal frame
stud E1 on block M10
stud E2 on frame M10
strap 1 E1 E2 4AWG 18in
battery G1 cca 4000A
alternator G2 grounds-to block 400A setpoint 14.2V
starter M1 grounds-to block draws 160A stall 420A pull-in 38A hold 9A
fuse F1 400A bolt-down
splice P1
keyswitch S1
  acc B ACC
  run B ACC IGN
  gap B IGN lasts 12ms
  crank B IGN ST
relay K1 coil 90ohm pull-in 6.5V 8V
module A1
  BAT feed 0.4A asleep 2mA always
  IGN feed 1.1A above 8V holds 50ms when run, crank
  PUMP low-side 0.5A when prime, crank, running
  GND ground
wire 2 G1.- E1
wire 3 G1.+ F1.1
wire 4 F1.2 P1
wire 5 G2.B+ G1.+
wire 6 G1.+ M1.B
wire 7 P1 S1.B
wire 8 S1.ST K1.86
wire 9 K1.85 E1
wire 10 P1 K1.30
wire 11 K1.87 M1.S
wire 12 P1 A1.BAT
splice P2
wire 13 S1.IGN P2
wire 14 P2 A1.IGN
wire 15 A1.GND E1
relay K2
motor M2 draws 8A
wire 16 P1 K2.30
wire 17 K2.87 M2.+
wire 18 M2.- E2
wire 19 P2 K2.86
wire 20 K2.85 A1.PUMP
`)
	n := 20
	for z := 3; n < wires; z++ {
		n = zone(&b, z, n)
	}
	return b.String()
}

func zone(b *strings.Builder, z, n int) int {
	wire := func(from, to string, args ...any) {
		n++
		fmt.Fprintf(b, "wire %d %s %s\n", n, fmt.Sprintf(from, args[:strings.Count(from, "%")]...), fmt.Sprintf(to, args[strings.Count(from, "%"):]...))
	}
	fmt.Fprintf(b, "relay K%d\nfuse F%d 60A\nsplice Z%d\nstud E%d on frame M8\n", z, z, z, z)
	wire("P1", "F%d.1", z)
	wire("F%d.2", "K%d.30", z, z)
	wire("P2", "K%d.86", z)
	wire("K%d.85", "E%d", z, z)
	wire("K%d.87", "Z%d", z, z)
	for i := range 8 {
		at := z*10 + i
		fmt.Fprintf(b, "fuse F%da%d 15A\nswitch S%d closed when run\nsplice L%d\nsplice R%d\n", z, i, at, at, at)
		fmt.Fprintf(b, "lamp H%d 1W\nmotor M%d draws 0.1A needs 9V\nlamp N%d 2W\n", at, at, at)
		wire("Z%d", "F%da%d.1", z, z, i)
		wire("F%da%d.2", "S%d.1", z, i, at)
		wire("S%d.2", "L%d", at, at)
		wire("L%d", "H%d.1", at, at)
		wire("H%d.2", "R%d", at, at)
		wire("L%d", "M%d.+", at, at)
		wire("M%d.-", "R%d", at, at)
		wire("L%d", "N%d.1", at, at)
		wire("N%d.2", "R%d", at, at)
		wire("R%d", "E%d", at, z)
	}
	return n
}

func BenchmarkThreeCases(b *testing.B) {
	for _, n := range []int{100, 1000, 10000} {
		m := build(b, bigDraft(n))
		wires := alike(m, 0.005)
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				threeCases(b, m, wires)
			}
		})
	}
}

func threeCases(tb testing.TB, m *model.Model, wires []Conductor) []*History {
	p := NewPlan(m)
	var out []*History
	for _, c := range []Case{{Corner: part.HotSoak}, {Corner: part.ColdStart}, {Corner: part.HotSoak, Grade: part.Nominal}} {
		h, err := p.Run(tb.Context(), wires, c)
		require.NoError(tb, err)
		out = append(out, h)
	}
	return out
}

func TestBigVehicleSettles(t *testing.T) {
	m := build(t, bigDraft(2000))
	for _, h := range threeCases(t, m, alike(m, 0.005)) {
		require.Empty(t, h.Findings)
		for _, s := range h.States {
			require.True(t, s.Met, s.Step.Name)
			require.Empty(t, s.Chatter, s.Step.Name)
		}
	}
}
