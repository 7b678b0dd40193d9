package draft

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A table of another program is one mistake, however many rows it has; so is a
// page. What is right around it is read all the same.
func TestATableIsOneMistake(t *testing.T) {
	rows := func(row string) string {
		var b strings.Builder
		for i := range 30 {
			fmt.Fprintf(&b, row, i, i)
		}
		return b.String()
	}
	for name, c := range map[string]struct{ src, want string }{
		"csv":          {"Wire,From,To,Size,Color\n" + rows("%d,F1.%d,M1.2,14 AWG,red\n"), `not by ","`},
		"csv, 3 cells": {"Name,Length,Color\n" + rows("Head lamp %d,%d,red\n"), `not by ","`},
		"semicolons":   {"Wire;From;To;Size\n" + rows("%d;F1.%d;M1.2;14 AWG\n"), `not by ";"`},
		"tabs":         {"Wire\tFrom\tTo\n" + rows("%d\tF1.%d\t14 AWG\n"), "begin it with wire"},
		"bars":         {rows("| %d | F1.%d | x |\n"), `not by "|"`},
		"tags":         {"<table>\n" + rows("  <tr><td>%d</td><td class=\"a\">F1.%d</td></tr>\n\n") + "</table>\n", "web page"},
	} {
		t.Run(name, func(t *testing.T) {
			f, found := Parse("x", []byte("fuse F1 10A\n"+c.src+"fuse F2 10A\n"))
			require.Len(t, found, 1)
			require.Contains(t, found[0].Msg, c.want)
			require.Equal(t, 2, found[0].At.Line)
			require.Contains(t, found[0].Detail, "more below: ")
			require.Len(t, f.Stmts, 2)
		})
	}
	_, found := Parse("x", []byte("\n<!DOCTYPE html>\n<html>\nplain words\n</html>\n"))
	require.Len(t, found, 1)
	require.Contains(t, found[0].Msg, "web page")
}

// Lines that a draft may well hold are no rows.
func TestNoRow(t *testing.T) {
	for _, src := range []string{
		"bus BAT F1,F2,F3,F4", "wire\t1\tG1.+\tF1.1", "wire 1\tG1.+\tF1.1\tRD", "together A.1 14,15,16,17",
		"keyswitch S1\n\trun\tB\tACC\tIGN", "module A1\n  BAT\tfeed\t0.4A\talways", "part relay X1\tcoil 85ohm\tcontact 30A",
	} {
		_, found := Parse("x", []byte(src))
		require.Empty(t, found, src)
	}
}

// A line past its limit is told and not read; one of mistakes alone is read up
// to the twelfth.
func TestALineIsBounded(t *testing.T) {
	f, found := Parse("x", []byte("fuse F1 10A\nwire 3 "+strings.Repeat("A1.B ", 100_000)+"\nfuse F2 10A\n"))
	require.Len(t, found, 1)
	require.Contains(t, found[0].Msg, "64 KB")
	require.Len(t, f.Stmts, 2)
	require.True(t, f.Lines[1].Bad)

	f, found = Parse("x", []byte("fuse F1 "+strings.Repeat("=x ", 1000)+"\nfuse F2 10A\n"))
	require.Len(t, found, maxLineFaults+1)
	require.Contains(t, found[maxLineFaults].Msg, "from here on it is not read")
	require.Equal(t, "F2", f.Stmts[1].Item(0).Word())
}

// What is no text is told as a whole.
func TestNoText(t *testing.T) {
	all := make([]byte, 256)
	for i := range all {
		all[i] = byte(i)
	}
	require.Contains(t, Unreadable(all), "no text")
	require.Contains(t, Unreadable([]byte("\xfe\xff\x00b")), "UTF-16")
	require.Empty(t, Unreadable([]byte("fuse F1 10A\r\n\x00 \x1a")))
	require.Empty(t, Unreadable([]byte(strings.Repeat("\x1b[1mfuse\x1b[0m F1 10A\n", 20))))
}

// BenchmarkHostileLine is a line of 60 KB of which no word is right: its time
// must grow with its length, not with its square.
func BenchmarkHostileLine(b *testing.B) {
	for _, unit := range []string{`a"`, `"a" `, "'", `a"x" `, "(", "$! "} {
		for _, kb := range []int{15, 60} {
			src := []byte("fuse F1 " + strings.Repeat(unit, kb<<10/len(unit)))
			b.Run(fmt.Sprintf("%q/%dKB", unit, kb), func(b *testing.B) {
				b.SetBytes(int64(len(src)))
				for b.Loop() {
					Parse("x", src)
				}
			})
		}
	}
}
