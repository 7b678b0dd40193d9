package shop_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/shop"
)

func TestPinsOfAPlug(t *testing.T) {
	table := shop.Pins(source(t, ends))
	for _, row := range []struct{ terminal, role, mate, wire, far, note string }{
		{"X1.cab.1", "socket", "X1.lamp.1", "3", "J1", ""},
		{"X1.lamp.1", "pin", "X1.cab.1", "4", "P1.1", ""},
		{"X1.cab.6", "socket", "X1.lamp.6", "", "", "empty: plug it"},
		{"X2.two.3", "", "X2.one.3", "", "", "empty"},
		{"P2.2", "return", "", "10", "E2", ""},
		{"F1.1", "side of the source", "", "1", "G1.+", ""},
	} {
		require.Equal(t, row.role, cell(t, table, "terminal", row.terminal, "role").Text, row.terminal)
		require.Equal(t, row.mate, cell(t, table, "terminal", row.terminal, "mate").Text, row.terminal)
		require.Equal(t, row.wire, cell(t, table, "terminal", row.terminal, "wire").Text, row.terminal)
		require.Equal(t, row.far, cell(t, table, "terminal", row.terminal, "far_end").Text, row.terminal)
		require.Equal(t, row.note, cell(t, table, "terminal", row.terminal, "note").Text, row.terminal)
	}
	shared := rowsOf(t, table, "terminal", "X1.cab.2")
	require.Len(t, shared, 2)
	note := column(t, table, "note")
	require.Equal(t, "2 wires in one terminal", shared[0][note].Text)
	require.Empty(t, shared[1][note].Text)
}

func TestPinsOfTheTruck(t *testing.T) {
	s := source(t, shipped(t, "orchard-truck.draft"))
	table := shop.Pins(s)
	for _, row := range [][2]string{
		{"E7", "on block"}, {"M1.-", "on block"}, {"F3.1", "on A2.BAT"}, {"A1.PUMP", ""},
	} {
		require.Equal(t, row[1], cell(t, table, "terminal", row[0], "note").Text, row[0])
	}
	require.Equal(t, "low-side", cell(t, table, "terminal", "A1.PUMP", "role").Text)
	require.Equal(t, "Injection controller", cell(t, table, "terminal", "A1.PUMP", "label").Text)
	require.Equal(t, "4 rings", rowsOf(t, table, "terminal", "E1")[0][column(t, table, "note")].Text)

	// Each wire has two ends, each terminal is listed, devices are together.
	ends, seen, last := map[string]int{}, map[string]bool{}, ""
	terminals := map[string]bool{}
	for _, r := range table.Rows {
		terminals[r[column(t, table, "terminal")].Text] = true
		if w := r[column(t, table, "wire")].Text; w != "" {
			ends[w]++
		}
		device := r[column(t, table, "device")].Text
		require.False(t, device != last && seen[device], "%s is parted", device)
		seen[device], last = true, device
	}
	require.Len(t, ends, len(s.Model.Wires))
	for w, n := range ends {
		require.Equal(t, 2, n, w)
	}
	require.Len(t, terminals, len(s.Model.Terminals))
	require.NotContains(t, terminals, "")
}

func TestVoltsSheet(t *testing.T) {
	s := source(t, shipped(t, "orchard-truck.draft"))
	table := shop.Volts(s)
	require.Equal(t, "terminal", table.Columns[0].Key)
	require.Len(t, table.Columns, 12, "eleven steps")
	require.InDelta(t, 12.65, cell(t, table, "terminal", "G1.+", "off").Number, 1e-3, "e.m.f. at rest, nothing but leaks drawn")
	require.InDelta(t, 0, cell(t, table, "terminal", "G1.-", "crank").Number, 0, "the reference")
	open := cell(t, table, "terminal", "S1.ST", "off")
	require.Equal(t, "open", open.Text)
	require.Contains(t, open.Reason, "float")
	require.Empty(t, rowsOf(t, table, "terminal", "X1.bay.24"), "nothing lands there")
	require.Contains(t, strings.Join(table.Notes, "\n"), "Left out")
	for _, r := range table.Rows {
		term, ok := s.Model.TerminalByName(r[0].Text)
		require.True(t, ok)
		for i, st := range s.Sizes.Usual.States {
			reading := st.Shown(term)
			require.Equal(t, reading.OK, r[i+1].IsNumber)
			require.InDelta(t, reading.Volts, r[i+1].Number, 0)
		}
	}
}

// A draft that can't be solved has a volts sheet that says why it is empty.
func TestVoltsSheetTellsOfMissingSteps(t *testing.T) {
	table := shop.Volts(source(t, "draft 1\nmetal frame\nlamp P1 21W grounds-to frame\nswitch S1\nwire 1 S1.2 P1.1\n"))
	require.Len(t, table.Columns, 1)
	require.Contains(t, strings.Join(table.Notes, "\n"), "Step crank is missing: the draft has no battery")
}

// A step may be called as a key that rows have already.
func TestStepNamedLikeAKey(t *testing.T) {
	text := shipped(t, "least.draft") + "step terminal \"A step\" like running\n"
	table := shop.Volts(source(t, text))
	square(t, table)
	column(t, table, "terminal_step")
}
