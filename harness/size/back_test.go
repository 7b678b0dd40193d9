package size_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness/size"
)

// backCases are returns and what limits the current in them (invented drafts).
// A place that is not named has 50 C: 12 AWG carries 50 A x sqrt(75/95) =
// 44.4 A there, 14 AWG 35.5 A, 16 AWG 26.7 A, 18 AWG 22.2 A (33 CFR 183.425
// table 5 and its ambient rule).
var backCases = []struct {
	name, src string
	fuse      string // of wire 9, "" where nothing limits it
	size      string
}{
	{"a motor stalls", `fuse F1 40A from G1 6in
motor M1 draws 9A 13.5V
wire 1 G1.+ F1.1 8AWG 6in
wire 2 F1.2 M1.+ 8AWG 4ft
wire 9 M1.- E1 1ft
`, "F1", "12 AWG"},
	{"two motors on one return: the larger fuse, no sum", `fuse F1 30A from G1 6in
fuse F2 20A from G1 6in
motor M1 draws 5A 13.5V
motor M2 draws 5A 13.5V
splice J1
wire 1 G1.+ F1.1 8AWG 6in
wire 2 G1.+ F2.1 8AWG 6in
wire 3 F1.2 M1.+ 8AWG 4ft
wire 4 F2.2 M2.+ 8AWG 4ft
wire 5 M1.- J1 8AWG 1ft
wire 6 M2.- J1 8AWG 1ft
wire 9 J1 E1 1ft
`, "F1", "14 AWG"},
	{"a lamp beside a motor is asked for its own fuse alone", `fuse F1 40A from G1 6in
fuse F2 5A from G1 6in
motor M1 draws 5A 13.5V
lamp P1 5W
splice J1
wire 1 G1.+ F1.1 8AWG 6in
wire 2 G1.+ F2.1 8AWG 6in
wire 3 F1.2 M1.+ 8AWG 4ft
wire 4 F2.2 P1.1 18AWG 4ft
wire 5 M1.- J1 8AWG 1ft
wire 6 J1 E1 8AWG 1ft
wire 9 P1.2 J1 1ft
`, "F2", "18 AWG"},
	{"the battery's post parts the returns", `fuse F1 40A from G1 6in
fuse F2 5A from G1 6in
motor M1 draws 5A 13.5V
lamp P1 5W
wire 1 G1.+ F1.1 8AWG 6in
wire 2 G1.+ F2.1 8AWG 6in
wire 3 F1.2 M1.+ 8AWG 4ft
wire 4 F2.2 P1.1 18AWG 4ft
wire 5 M1.- G1.- 8AWG 1ft
wire 9 P1.2 G1.- 1ft
`, "F2", "18 AWG"},
	{"a smaller fuse in the return limits it", `fuse F1 40A from G1 6in
fuse F2 15A
motor M1 draws 5A 13.5V
wire 1 G1.+ F1.1 8AWG 6in
wire 2 F1.2 M1.+ 8AWG 4ft
wire 3 M1.- F2.1 8AWG 1ft
wire 9 F2.2 E1 1ft
`, "F2", "18 AWG"},
	{"a coil lets no overload through", `fuse F1 40A from G1 6in
relay K1
lamp P1 5W grounds-to frame
wire 1 G1.+ F1.1 8AWG 6in
wire 2 F1.2 K1.86 8AWG 4ft
wire 9 K1.85 E1 1ft
`, "", "18 AWG"},
	{"no fuse ahead, nothing to be held against", `motor M1 draws 5A 13.5V
wire 2 G1.+ M1.+ 8AWG 4ft
wire 9 M1.- E1 1ft
`, "", "18 AWG"},
}

func TestAReturnIsHeldAgainstTheFuseAheadOfItsLoad(t *testing.T) {
	for _, c := range backCases {
		t.Run(c.name, func(t *testing.T) {
			_, s := chosen(t, "battery G1 cca 600A grounds-to frame\nstud E1 on frame M6\n"+c.src)
			w := wireNumbered(t, s, "9")
			b := s.Backs[w.Wire.ID]
			l, asked := w.Judgement.Limit(gauge.FloorProtection)
			require.Equal(t, c.fuse != "", asked)
			require.Equal(t, c.size, w.Conductor.Size.Name)
			if c.fuse == "" {
				require.Nil(t, b.Fuse)
				return
			}
			require.Equal(t, c.fuse, b.Fuse.Name)
			require.True(t, l.OK)
			require.Equal(t, b.RatedA, l.Asked)
		})
	}
}

func wireNumbered(t *testing.T, s *size.Sizes, number string) size.Wire {
	t.Helper()
	for _, w := range s.Wires {
		if w.Wire.Number == number {
			return w
		}
	}
	t.Fatalf("no wire %s", number)
	return size.Wire{}
}
