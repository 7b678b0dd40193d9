package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness/check"
	"legwork/harness/part"
)

// Every name that the lists show can be explained, and its page says more than
// the list does.
func TestEverythingIsExplained(t *testing.T) {
	all := legwork(t, "explain")
	require.Equal(t, exitClean, all.code)
	want := map[string]int{"rules": len(check.Rules()), "kinds": len(part.Kinds()), "profiles": len(gauge.Profiles()), "sources": len(gauge.Sources())}
	for _, l := range lists() {
		require.Len(t, l.entries, want[l.word])
		one := legwork(t, "explain", l.word)
		require.Equal(t, exitClean, one.code)
		if l.word == "profiles" { // which come side by side after the list
			one.out, _, _ = strings.Cut(one.out, "\n\n")
		}
		require.Contains(t, all.out, one.out)
		for _, e := range l.entries {
			require.Contains(t, one.out, "\n  "+e.name+": ")
			got := legwork(t, "explain", e.name)
			require.Equal(t, exitClean, got.code, "%s: %s", e.name, got.err)
			require.Contains(t, got.out, e.name)
			require.Greater(t, len(got.out), len(e.name+e.title), e.name)
		}
	}
}

// A name in two sets gives both pages: diode is a kind of device, and a source
// of its volts.
func TestNameInTwoSetsIsExplainedTwice(t *testing.T) {
	got := legwork(t, "explain", "diode")
	require.Contains(t, got.out, "anode")
	require.Contains(t, got.out, "how it was seen: common practice")
}

func TestExplainShowsWhatARuleMisses(t *testing.T) {
	got := legwork(t, "explain", "drop-over-limit")
	for _, want := range []string{"drop-over-limit", "Corroded and loose contacts", "[drop-over-limit]"} {
		require.Contains(t, got.out, want)
	}
	got = legwork(t, "explain", "bolt-down-resistance")
	require.Contains(t, got.out, "It only hints: no size and no verdict rests on it.")
	t.Setenv("COLUMNS", "40")
	for line := range strings.Lines(legwork(t, "explain", "kinds").out) {
		require.LessOrEqual(t, len(strings.TrimRight(line, "\n")), 40)
	}
}
