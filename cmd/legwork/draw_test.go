package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

// A step is drawn under a name of its own, so that it does not take the place
// of the plain sheets; no step is as before.
func TestDrawStep(t *testing.T) {
	workshop(t)
	plain := legwork(t, "draw", "small.draft", "schematic", "-o", "sheets/")
	require.Equal(t, exitClean, plain.code, plain.err)
	require.Equal(t, filepath.Join("sheets", "schematic.svg")+"\n", plain.out)
	step := legwork(t, "draw", "small.draft", "schematic", "--step", "crank", "-o", "sheets/")
	require.Equal(t, exitClean, step.code, step.err)
	require.Equal(t, filepath.Join("sheets", "schematic-crank.svg")+"\n", step.out)
	crank, err := os.ReadFile("sheets/schematic-crank.svg")
	require.NoError(t, err)
	require.Contains(t, string(crank), "State in step crank: hot, usual figures")
	off := legwork(t, "draw", "small.draft", "schematic", "--step", "off")
	require.Equal(t, exitClean, off.code, off.err)
	require.NotEqual(t, string(crank), off.out)
	require.NotContains(t, legwork(t, "draw", "small.draft", "schematic").out, "State in step")
}

// A step that is not there is refused with the nearest word.
func TestDrawUnknownStep(t *testing.T) {
	workshop(t)
	got := legwork(t, "draw", "small.draft", "schematic", "--step", "cranc")
	require.Equal(t, exitUsage, got.code)
	require.Contains(t, got.err, `there is no step "cranc"; did you mean crank?`)
	require.Empty(t, got.out)
}

// The name of a step does not lead out of the folder.
func TestDrawStepStaysInFolder(t *testing.T) {
	require.Equal(t, "schematic-____etc_x-2.svg", sheetName("schematic", "../\u00a0etc/x", 1, 2))
	require.Equal(t, "schematic.svg", sheetName("schematic", "", 0, 1))
}
