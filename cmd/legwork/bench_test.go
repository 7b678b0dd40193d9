package main

import (
	"bytes"
	"context"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// shipped is the drafts of testdata; the last has faults planted in it.
var shipped = append(slices.Clone(faultless), "orchard-truck-faults.draft")

// faultless is the shipped drafts without faults.
var faultless = []string{"least.draft", "small.draft", "orchard-truck.draft"}

// outcome is what one run of the program left behind.
type outcome struct {
	code     int
	out, err string
}

// legwork runs the program as a shell would, with nothing on standard input.
func legwork(t *testing.T, args ...string) outcome {
	t.Helper()
	return legworkIn(t, "", args...)
}

func legworkIn(t *testing.T, stdin string, args ...string) outcome {
	t.Helper()
	var o, e bytes.Buffer
	code := run(context.Background(), args, streams{strings.NewReader(stdin), &o, &e})
	require.NotContains(t, o.String()+e.String(), "goroutine", "no stack is ever shown")
	require.NotContains(t, e.String(), "%!", "a message misses a value")
	return outcome{code, o.String(), e.String()}
}

// workshop is an empty folder with copies of the shipped drafts, made the
// working directory of the test.
func workshop(t *testing.T) string {
	t.Helper()
	from, err := filepath.Abs(filepath.Join(root, "testdata"))
	require.NoError(t, err)
	dir := t.TempDir()
	for _, name := range shipped {
		src, err := os.ReadFile(filepath.Join(from, name))
		require.NoError(t, err)
		put(t, filepath.Join(dir, name), string(src))
	}
	t.Chdir(dir)
	t.Setenv("COLUMNS", "")
	t.Setenv("NO_COLOR", "")
	return dir
}

func put(t *testing.T, path, text string) {
	t.Helper()
	require.NoError(t, os.WriteFile(path, []byte(text), 0o644))
}

func get(t *testing.T, path string) string {
	t.Helper()
	src, err := os.ReadFile(path)
	require.NoError(t, err)
	return string(src)
}

// names lists what lies in a folder, hidden files too.
func names(t *testing.T, dir string) []string {
	t.Helper()
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	list := []string{}
	for _, e := range entries {
		list = append(list, e.Name())
	}
	return list
}

// the least draft of the language page with one mistake, at line 3.
const faulty = "draft 1\nbattery G1  grounds-to frame\nfuze F1 10A\n"

// closedPipe is standard output whose reader has gone.
func closedPipe() io.Writer {
	r, w := io.Pipe()
	r.Close()
	return w
}
