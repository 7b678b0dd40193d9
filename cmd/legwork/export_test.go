package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A folder gets every step and the names; a single step is the same netlist.
func TestExport(t *testing.T) {
	workshop(t)
	got := legwork(t, "export", "small.draft", "spice", "-o", "net/")
	require.Equal(t, exitClean, got.code, got.err)
	lines := strings.Split(strings.TrimSpace(got.out), "\n")
	require.Len(t, lines, 12)
	require.Equal(t, filepath.Join("net", "step-06.cir")+"  crank", lines[7])
	crank, err := os.ReadFile("net/step-06.cir")
	require.NoError(t, err)
	one := legwork(t, "export", "small.draft", "spice", "--step", "crank")
	require.Equal(t, string(crank), one.out)
	require.True(t, strings.HasSuffix(one.out, ".op\n.end\n"))
	table, err := os.ReadFile("net/names.csv")
	require.NoError(t, err)
	require.Contains(t, string(table), "name,stands_for\n")
	require.Contains(t, string(table), "wire 203")
	require.Equal(t, string(table), legwork(t, "export", "small.draft", "spice", "--names").out)
}

// Live decks have switches, and each case has decks of its own.
func TestExportVariants(t *testing.T) {
	workshop(t)
	seen := map[string]string{}
	for _, args := range []string{"", "--live", "--case hot", "--case cold", "--case cold --live", "--case cold --temp -30C"} {
		got := legwork(t, append([]string{"export", "small.draft", "spice", "--step", "crank"}, strings.Fields(args)...)...)
		require.Equal(t, exitClean, got.code, got.err)
		require.Equal(t, strings.Contains(args, "live"), strings.Contains(got.out, ".model st0 sw"), args)
		require.Empty(t, seen[got.out], "%s gives the deck of %s", args, seen[got.out])
		seen[got.out] = args + " "
	}
}

// Whatever a draft calls its things, netlists hold generated names only.
func TestExportHoldsGeneratedNames(t *testing.T) {
	workshop(t)
	put(t, "odd.draft", `
harness ".include secret"  system 12V
step "off2" ".control" like rest after rest
battery "G1 end"  grounds-to frame
fuse    "+tran"  10A
lamp    "shell rm"  21W  grounds-to frame
wire "*exec"  "G1 end".+  "+tran".1
wire ";2"  "+tran".2  "shell rm".1
`)
	got := legwork(t, "export", "odd.draft", "spice", "-o", "net/")
	require.Equal(t, exitClean, got.code, got.err)
	decks, err := filepath.Glob("net/*.cir")
	require.NoError(t, err)
	require.Len(t, decks, 12)
	for _, file := range decks {
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		for _, word := range []string{"include", "control", "G1", "tran", "shell", "exec", ";"} {
			require.NotContains(t, string(text), word, file)
		}
	}
}
