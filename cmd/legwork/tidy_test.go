package main

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const ragged = "draft 1\r\n\r\n\r\nbattery  G1   grounds-to frame\r\nfuse F1 10A   from G1 6in\r\nlamp P1 21W grounds-to frame"

func TestTidy(t *testing.T) {
	workshop(t)
	put(t, "ragged.draft", ragged)
	printed := legwork(t, "tidy", "ragged.draft")
	require.Equal(t, exitClean, printed.code, printed.err)
	require.NotContains(t, printed.out, "\r")
	require.True(t, strings.HasSuffix(printed.out, "\n"))
	require.Equal(t, ragged, get(t, "ragged.draft"), "printing writes nothing")

	require.Equal(t, outcome{}, legwork(t, "tidy", "-w", "ragged.draft"))
	require.Equal(t, printed.out, get(t, "ragged.draft"))
	require.Equal(t, outcome{}, legwork(t, "tidy", "--diff", "ragged.draft"), "tidy twice is tidy once")
	require.Equal(t, printed.out, legworkIn(t, ragged, "tidy", "-").out)
}

// The shipped drafts are tidy.
func TestShippedDraftsAreTidy(t *testing.T) {
	workshop(t)
	for _, name := range shipped {
		require.Equal(t, outcome{}, legwork(t, "tidy", "--diff", name), name)
	}
}

func TestTidyDiff(t *testing.T) {
	workshop(t)
	put(t, "ragged.draft", "draft 1\n\n\nlamp  P1\n# remark\nlamp P2\r\nlamp P3")
	got := legwork(t, "tidy", "--diff", "ragged.draft")
	require.Equal(t, exitFindings, got.code)
	require.Equal(t, `ragged.draft:3
-
ragged.draft:4
-lamp  P1
+lamp P1
ragged.draft:6
-lamp P2 (ends in CR LF)
+lamp P2
ragged.draft:7
-lamp P3 (no end of line)
+lamp P3
`, got.out)
}

// The diff, carried out, is the tidy draft: old lines gone, new ones there.
func TestDiffLosesNothing(t *testing.T) {
	workshop(t)
	put(t, "ragged.draft", ragged)
	tidied := legwork(t, "tidy", "ragged.draft").out
	plus, minus := 0, 0
	for line := range strings.Lines(legwork(t, "tidy", "--diff", "ragged.draft").out) {
		switch line[0] {
		case '+':
			require.Contains(t, tidied, strings.TrimSpace(line[1:]))
			plus++
		case '-':
			minus++
		}
	}
	require.Equal(t, strings.Count(ragged, "\n")+1-strings.Count(tidied, "\n"), minus-plus)
}

// A line with a syntax fault is told of, kept byte for byte, and makes the
// exit code 1; the rest is tidied all the same.
func TestTidyOfAFaultyDraft(t *testing.T) {
	workshop(t)
	bad := "wire  1   G1.+    \"never closed"
	put(t, "bad.draft", "draft   1\n"+bad+"\n")
	got := legwork(t, "tidy", "bad.draft")
	require.Equal(t, exitFindings, got.code)
	require.Equal(t, "draft 1\n"+bad+"\n", got.out)
	require.Contains(t, got.err, "bad.draft:2:")
	got = legwork(t, "tidy", "-w", "bad.draft")
	require.Equal(t, exitFindings, got.code)
	require.Equal(t, "draft 1\n"+bad+"\n", get(t, "bad.draft"))
	// A mistake that is not one of syntax is no business of tidy.
	put(t, "other.draft", faulty)
	require.Equal(t, exitClean, legwork(t, "tidy", "other.draft").code)
}

func TestTidyWritesThroughNoLink(t *testing.T) {
	workshop(t)
	put(t, "ragged.draft", ragged)
	require.NoError(t, os.Symlink("ragged.draft", "link.draft"))
	got := legwork(t, "tidy", "-w", "link.draft")
	require.Equal(t, exitUsage, got.code)
	require.Contains(t, got.err, "link.draft is a link")
	require.Equal(t, ragged, get(t, "ragged.draft"))
}

// What was changed in the meantime is not overwritten.
func TestTidyOfADraftThatChanged(t *testing.T) {
	workshop(t)
	put(t, "ragged.draft", ragged+"\n# a later thought\n")
	c := tidyCmd{Draft: "ragged.draft", Write: true}
	err := c.writeBack([]byte(ragged), []byte("draft 1\n"))
	require.ErrorContains(t, err, "changed while it was read; nothing was written")
	require.Equal(t, ragged+"\n# a later thought\n", get(t, "ragged.draft"))
}
