package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

const mendable = "metal frame\nbattery G1  cca 540A  grounds-to frame\nfuse F1  40A  from G1 6in  # main\n" +
	"lamp P1  21W  grounds-to frame\nwire 1  G1.+  F1.1  8AWG  6in\nwire 2  F1.2  P1.1  14AWG  4ft\n"

func TestFixShowsAndWrites(t *testing.T) {
	path := filepath.Join(t.TempDir(), "t.draft")
	require.NoError(t, os.WriteFile(path, []byte(mendable), 0o640))
	shown := legwork(t, "check", path, "--fix")
	require.Equal(t, exitFindings, shown.code)
	require.Contains(t, shown.out, "-fuse F1  40A  from G1 6in  # main\n+fuse F1  35A  from G1 6in  # main\n")
	require.Contains(t, shown.out, "fit 35 A as F1 [fuse-above-wire]\nThen: 0 dangers, 0 faults, 0 warnings, 0 notes\n")
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, mendable, string(text), "nothing is written unasked")

	require.Zero(t, legwork(t, "check", path, "--fix", "--write").code)
	text, err = os.ReadFile(path)
	require.NoError(t, err)
	require.Contains(t, string(text), "fuse F1  35A  from G1 6in  # main\n")
	again := legwork(t, "check", path, "--fix")
	require.Zero(t, again.code)
	require.Contains(t, again.out, "Nothing to mend")
}

func TestFixIsAskedRightly(t *testing.T) {
	require.Contains(t, legwork(t, "check", truck, "--write").err, "--write goes with --fix")
	got := legworkIn(t, mendable, "check", "-", "--fix", "--write")
	require.Equal(t, exitUsage, got.code)
	require.Contains(t, got.err, "standard input can't be written back")
	require.Contains(t, legworkIn(t, mendable, "check", "-", "--fix").out, "+fuse F1  35A")
}
