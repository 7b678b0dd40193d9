package shop_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/shop"
)

// Cut lengths of the small draft by hand. Legs: bay-dash 35 in, dash-rail 43,
// rail-tank 114. A tail of 3 in at each end that lands on a device. On top
// 2 x 12 mm at each end, 48 mm in all, which is 1.89 in; then up to 1/2 in.
func TestCutLengthsByHand(t *testing.T) {
	table := shop.Cut(source(t, shipped(t, "small.draft")))
	for _, row := range []struct {
		wire, basis string
		inches      float64
	}{
		{"203", "legs", 122}, // 114 + 6 = 120; 121.89
		{"202", "legs", 51},  // 43 + 6 = 49; 50.89
		{"102", "legs", 43},  // 35 + 6 = 41; 42.89
		{"201", "tails", 8},  // 6; 7.89
		{"204", "tails", 8},  // 6; 7.89
		{"100", "given", 26}, // 24; 25.89
		{"103", "given", 32}, // 30; 31.89
		{"91", "given", 18},  // a strap is cut to its own length
		{"107", "legs", 43},  // K4 under the dash to E1 in the bay: 35 + 6; 42.89
		{"111", "tails", 8},  // both under the dash
		{"109", "legs", 43},  // dash to bay
		{"205", "tails", 8},  // both under the dash
		{"110", "tails", 8},  // both under the dash
		{"101", "tails", 8},  // both in the bay
		{"104", "given", 26}, // 24; 25.89
		{"108", "tails", 8},  // both under the dash
		{"106", "tails", 8},  // both under the dash
		{"105", "tails", 8},  // both under the dash
		{"206", "tails", 8},  // both under the dash
		{"112", "legs", 43},  // dash to bay
	} {
		require.InDelta(t, row.inches, cell(t, table, "number", row.wire, "cut_in").Number, 1e-9, row.wire)
		require.Equal(t, row.basis, cell(t, table, "number", row.wire, "length_basis").Text, row.wire)
	}
	require.Len(t, table.Rows, 20)
}

// The same in metric units: 3.048 m and 48 mm are 3096 mm, up to 10 mm; the
// strap of 18 in is 457.2 mm.
func TestCutLengthsMetric(t *testing.T) {
	table := shop.Cut(source(t, strings.Replace(shipped(t, "small.draft"), "units us", "units metric", 1)))
	require.InDelta(t, 3100, cell(t, table, "number", "203", "cut_mm").Number, 1e-6)
	require.InDelta(t, 460, cell(t, table, "number", "91", "cut_mm").Number, 1e-6)
	require.Contains(t, table.Notes[0], "10 mm")
}

func TestCutKeepsDraftOrder(t *testing.T) {
	table := shop.Cut(source(t, shipped(t, "small.draft")))
	var got []string
	for _, r := range table.Rows {
		got = append(got, r[0].Text)
	}
	require.Equal(t, strings.Fields("91 100 101 102 103 104 105 106 107 108 109 110 111 112 201 202 203 204 205 206"), got)
}

// A draft without legs has lengths that are assumed, and says so in every row.
func TestAssumedLengthsAreFlagged(t *testing.T) {
	table := shop.Cut(source(t, shipped(t, "least.draft")))
	for _, r := range table.Rows {
		require.Equal(t, "assumed", r[column(t, table, "length_basis")].Text)
		require.InDelta(t, 122, r[column(t, table, "cut_in")].Number, 1e-9, "10 ft; 121.89")
	}
	require.Contains(t, strings.Join(table.Notes, "\n"), "measure before you cut")
	spools := shop.Spools(source(t, shipped(t, "least.draft")))
	require.Equal(t, "assumed in part", spools.Rows[0][column(t, spools, "length_basis")].Text)
}

const ends = `draft 1
place bay   85C  wet
place dash  50C
leg   bay  dash  35in
metal frame
stud  E1  on frame  at bay  M10
stud  E2  on frame  at bay
battery G1  at bay  grounds-to frame
fuse  F1  10A  at bay  from G1 6in
splice J1  at dash
lamp  P1  21W  at dash
lamp  P2  21W  at dash
connector X1  at dash  6way  sealed  blade 2.8mm
  half cab   sockets
  half lamp  pins
connector X2  at dash  3way
  half one
  half two
wire 1   G1.+      F1.1   14AWG  6in
wire 2   F1.2      J1
wire 3   J1        X1.cab.1
lead 4   P1.1      X1.lamp.1  18AWG  6in
wire 5   P1.2      X2.one.1
wire 6   X2.two.1  E1
together X1.cab.2 7 8
wire 7   J1        X1.cab.2
wire 8   X1.cab.2  X2.one.2
wire 9   X1.lamp.2 P2.1
wire 10  P2.2      E2
wire 11  X2.two.2  E2
`

func TestEndsAreFinished(t *testing.T) {
	table := shop.Cut(source(t, ends))
	for _, row := range [][3]string{
		{"1", "ring", "terminal"},
		{"2", "terminal", "splice"},
		{"3", "splice", "2.8 mm socket and seal"},
		{"5", "terminal", "terminal"},
		{"6", "terminal", "ring M10"},
		{"7", "splice", "2.8 mm socket and seal with 8"},
		{"8", "2.8 mm socket and seal with 7", "terminal"},
		{"9", "2.8 mm pin and seal", "terminal"},
		{"10", "terminal", "ring"},
	} {
		require.Equal(t, row[1], cell(t, table, "number", row[0], "from_end").Text, row[0])
		require.Equal(t, row[2], cell(t, table, "number", row[0], "to_end").Text, row[0])
	}
	require.Empty(t, rowsOf(t, table, "number", "4"), "a lead is not cut")
	require.Contains(t, strings.Join(table.Notes, "\n"), "leads 4.")
}

// The spool list is the cut list added up: no wire is lost, none counted twice.
func TestSpoolsAddUpTheCutList(t *testing.T) {
	s := source(t, shipped(t, "orchard-truck.draft"))
	cut, spools := shop.Cut(s), shop.Spools(s)
	inches, wires := 0.0, 0.0
	for _, r := range cut.Rows {
		if r[0].Text != "91" { // the strap
			inches += r[column(t, cut, "cut_in")].Number
			wires++
		}
	}
	feet, count := 0.0, 0.0
	for _, r := range spools.Rows {
		feet += r[column(t, spools, "total_ft")].Number
		count += r[column(t, spools, "wires")].Number
	}
	require.InDelta(t, inches/12, feet, 1e-6)
	require.InDelta(t, wires, count, 0)
	require.InDelta(t, 102, count, 0, "the truck has 103 wires, one of them a strap")
	// Wires 202 and 203 are the only GN/WH ones: 51 and 122 in, 14.417 ft.
	require.InDelta(t, 173.0/12, cell(t, spools, "color", "GN/WH", "total_ft").Number, 1e-9)
}
