package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/draft"
)

// survives runs what a draft can be put through. Whatever it holds, the
// program finds fault with the draft at most, never with itself; and what it
// prints as JSON is JSON.
func survives(t *testing.T, text string) {
	t.Helper()
	got := legworkIn(t, text, "check", "-", "--format", "json")
	if draft.Unreadable([]byte(text)) != "" {
		require.Equal(t, exitUsage, got.code, got.err)
		return
	}
	require.LessOrEqual(t, got.code, exitFindings, got.err)
	require.True(t, json.Valid([]byte(got.out)))
	for _, args := range []string{"check -", "list - cut", "list - spools", "list - pins --format csv", "list - volts --format json", "draw - schematic", "tidy -"} {
		got := legworkIn(t, text, strings.Fields(args)...)
		require.NotEqual(t, exitProgram, got.code, "%s: %s", args, got.err)
		require.NotContains(t, got.out, "NaN", args)
	}
}

// Each line of the small draft is left out in turn: half a harness is what a
// builder has most of the time.
func TestDraftsWithALineMissing(t *testing.T) {
	workshop(t)
	lines := strings.Split(strings.TrimSpace(get(t, "small.draft")), "\n")
	for i := range lines {
		without := append(append([]string{}, lines[:i]...), lines[i+1:]...)
		survives(t, strings.Join(without, "\n")+"\n")
	}
}

// The draft ends after each line in turn: it is being typed.
func TestDraftsUnderWay(t *testing.T) {
	workshop(t)
	lines := strings.SplitAfter(get(t, "small.draft"), "\n")
	for i := range lines {
		if i%4 == 0 {
			survives(t, strings.Join(lines[:i], ""))
		}
	}
}

// Try with -fuzzminimizetime 1x: to shrink what is merely new takes the engine
// for ever.
func FuzzCommands(f *testing.F) {
	for _, name := range faultless {
		src, err := os.ReadFile(filepath.Join(root, "testdata", name))
		require.NoError(f, err)
		f.Add(string(src))
	}
	f.Add(faulty)
	f.Add(ragged)
	f.Add("")
	f.Fuzz(survives)
}
