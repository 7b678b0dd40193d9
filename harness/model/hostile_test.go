package model

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
	"legwork/harness/draft"
)

func foundIn(t testing.TB, src string) diag.List {
	t.Helper()
	f, lexical := draft.Parse("x", []byte(src))
	require.Empty(t, lexical)
	_, found := Build(f)
	return found
}

// A line of mistakes is answered up to the tenth, and the next line is read.
func TestALineOfMistakesIsBounded(t *testing.T) {
	found := foundIn(t, "fuse F1 10A "+strings.Repeat("what ", 1000)+"\nfuse F2 0A\n")
	require.Len(t, found, maxOfLine+2)
	require.Contains(t, found[maxOfLine].Msg, "from here on it is not read")
	require.Equal(t, 2, found[maxOfLine+1].At.Line)
}

// A list of words is given a few times, not below every row.
func TestListsOfWordsAreNotRepeated(t *testing.T) {
	n := 0
	for _, f := range foundIn(t, strings.Repeat("what 1\n", 30)) {
		if f.Detail != "" {
			n++
		}
	}
	require.Equal(t, 3, n)
}

// A unit that is called by its other name is one finding, with the fix.
func TestUnitsByOtherNames(t *testing.T) {
	for _, row := range []struct{ line, fix string }{
		{"fuse F1 10 amps", "10A"}, {"fuse F1 10 AMP", "10A"}, {"fuse F1 10amps", "10A"}, {"place a 85 deg", "85C"},
		{"fuse F1 10A\nsplice Z1\nwire 1 F1.2 Z1 18 gauge", "18AWG"}, {"fuse F1 10A\nsplice Z1\nwire 1 F1.2 Z1 6 feet 3 in", "6ft3in"},
		{"harness \"x\" system 12 volts", "12V"},
	} {
		found := foundIn(t, row.line)
		require.NotEmpty(t, found, row.line)
		var fixes []string
		for _, f := range found {
			if f.Rule == unitRule || f.Rule == wordRule {
				require.NotNil(t, f.Fix, "%s: %s", row.line, f.Msg)
				fixes = append(fixes, f.Fix.Edits[0].Text)
			}
		}
		require.Equal(t, []string{row.fix}, fixes, row.line)
	}
}

// A range names its limit in a unit.
func TestRangesHaveUnits(t *testing.T) {
	for line, want := range map[string]string{
		"fuse F1 0A":          "rating of F1 0 A, at least 0.5 A",
		"cable 300 0in 20AWG": "length of 300 0 m, at least 0.005 m",
	} {
		texts := ""
		for _, f := range foundIn(t, line) {
			for _, v := range f.Values {
				texts += v.String() + "\n"
			}
		}
		require.Contains(t, texts, want)
	}
}

// BenchmarkHostileDraft is lines of one mistake each, and one line of many:
// time has to grow with the length.
func BenchmarkHostileDraft(b *testing.B) {
	for _, n := range []int{3000, 30_000} {
		lines, one := strings.Builder{}, "fuse F1 10A "+strings.Repeat("what ", n/3)
		for i := range n {
			fmt.Fprintf(&lines, "wire %d G1.+ X%d.1\n", i, i)
		}
		for name, src := range map[string]string{"lines": "battery G1\n" + lines.String(), "line": one} {
			b.Run(fmt.Sprintf("%s/%d", name, n), func(b *testing.B) {
				for b.Loop() {
					foundIn(b, src)
				}
			})
		}
	}
}
