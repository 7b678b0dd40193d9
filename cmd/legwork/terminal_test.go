package main

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestLook(t *testing.T) {
	for _, row := range []struct {
		about    string
		env      map[string]string
		terminal bool
		columns  int
		want     look
	}{
		{"a pipe", nil, false, 0, look{false, plainWidth, false}},
		{"a pipe into a narrow page", map[string]string{"COLUMNS": "40"}, false, 0, look{false, 40, true}},
		{"a terminal", map[string]string{"TERM": "xterm"}, true, 120, look{true, 120, true}},
		{"a terminal that knows better than COLUMNS", map[string]string{"COLUMNS": "40"}, true, 120, look{true, 120, true}},
		{"a terminal of unknown width", map[string]string{"COLUMNS": "70"}, true, 0, look{true, 70, true}},
		{"no color asked for", map[string]string{"NO_COLOR": "1"}, true, 80, look{false, 80, true}},
		{"NO_COLOR set to nothing counts as not set", map[string]string{"NO_COLOR": ""}, true, 80, look{true, 80, true}},
		{"a dumb terminal", map[string]string{"TERM": "dumb"}, true, 80, look{false, 80, true}},
		{"no sense in COLUMNS", map[string]string{"COLUMNS": "-3"}, false, 0, look{false, plainWidth, false}},
	} {
		require.Equal(t, row.want, lookFor(func(k string) string { return row.env[k] }, row.terminal, row.columns), row.about)
	}
}

// A file is no terminal, nor is a buffer.
func TestLookOfAFile(t *testing.T) {
	t.Setenv("COLUMNS", "")
	f, err := os.Create(filepath.Join(t.TempDir(), "out"))
	require.NoError(t, err)
	defer f.Close()
	require.Equal(t, look{false, plainWidth, false}, lookOf(f))
	require.Equal(t, look{false, plainWidth, false}, lookOf(&bytes.Buffer{}))
}
