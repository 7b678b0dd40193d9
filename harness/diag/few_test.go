package diag

import (
	"fmt"
	"io"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Of many findings the worst stay, in the order of the list; the rest is
// counted.
func TestFewKeepsTheWorst(t *testing.T) {
	var l List
	for i := range 30 {
		l.Add(Finding{Rule: "a", Severity: Warning, Msg: fmt.Sprint(i)}, Finding{Rule: "b", Severity: Fault, Msg: fmt.Sprint(i)})
	}
	l.Add(Finding{Rule: "a", Severity: Danger, Msg: "last"})
	few, rest := l.Few(20, 25)
	require.Len(t, few, 25)
	require.Equal(t, []Rest{{"a", 26}, {"b", 10}}, rest)
	require.Equal(t, "last", few[24].Msg, "a danger at the end is not left out")
	require.Equal(t, "0", few[0].Msg)
	require.Len(t, l, 61)
	few, rest = l.Few(100, 100)
	require.Len(t, few, 61)
	require.Empty(t, rest)
	few, rest = List(nil).Few(1, 1)
	require.Empty(t, few)
	require.Empty(t, rest)
}

// On a narrow terminal the first line is broken where that is asked for, and
// says the same words.
func TestFirstLineIsWrapped(t *testing.T) {
	f := Finding{Rule: "wire-too-thin", Severity: Fault, Msg: strings.Repeat("word ", 20) + "end",
		At: Span{File: "a.draft", Line: 3, Col: 1, End: 2}}
	var whole, broken, colored strings.Builder
	require.NoError(t, WriteText(&whole, List{f}, TextOptions{Width: 40}))
	require.NoError(t, WriteText(&broken, List{f}, TextOptions{Width: 40, Wrap: true}))
	require.NoError(t, WriteText(&colored, List{f}, TextOptions{Width: 40, Wrap: true, Color: true}))
	require.Len(t, strings.Split(strings.TrimSpace(whole.String()), "\n"), 1)
	rows := strings.Split(strings.TrimSpace(broken.String()), "\n")
	require.Greater(t, len(rows), 2)
	for _, row := range rows {
		require.LessOrEqual(t, columns(row), 40)
	}
	require.Equal(t, strings.Fields(whole.String()), strings.Fields(broken.String()))
	bare := strings.NewReplacer("\x1b[1m", "", "\x1b[1;31m", "", "\x1b[0m", "").Replace(colored.String())
	require.Equal(t, broken.String(), bare)
}

// A finding with thousands of related places prints those asked for.
func TestRelatedPlacesAreCounted(t *testing.T) {
	f := Finding{Rule: "r", Severity: Note, Msg: "m"}
	for range 30 {
		f.Related = append(f.Related, Related{Msg: "there"})
	}
	var some, all strings.Builder
	require.NoError(t, WriteText(&some, List{f}, TextOptions{Related: 8}))
	require.NoError(t, WriteText(&all, List{f}, TextOptions{}))
	require.Equal(t, 8, strings.Count(some.String(), "see: there"))
	require.Contains(t, some.String(), "see: and 22 more places\n")
	require.Equal(t, 30, strings.Count(all.String(), "see: there"))
}

// A small amount is printed in the smaller unit.
func TestSmallAmounts(t *testing.T) {
	require.Equal(t, "volts 0.09888 mV, at least 0.5 V", Value{Name: "volts", Got: 0.00009888, Limit: 0.5, Unit: "V", Bound: AtLeast}.String())
	require.Equal(t, "rings 30001, at most 4", Value{Name: "rings", Got: 30001, Limit: 4, Bound: AtMost}.String(), "what is counted is not rounded")
	require.Equal(t, "load 0 A", Value{Name: "load", Unit: "A"}.String())
	require.Equal(t, "drop 0.05 V", Value{Name: "drop", Got: 0.05, Unit: "V"}.String())
	require.Equal(t, "share 0.001 %", Value{Name: "share", Got: 0.001, Unit: "%"}.String())
}

// BenchmarkWriteText prints one finding a line: ten times the lines must take
// about ten times as long.
func BenchmarkWriteText(b *testing.B) {
	for _, n := range []int{1000, 10_000} {
		src := []byte(strings.Repeat("wire 1 A1.B C2.D 14AWG RD\n", n))
		var l List
		for i := range n {
			l.Add(Finding{Rule: "r", Severity: Fault, Msg: "m", At: Span{File: "f", Line: i + 1, Col: 1, End: 5, Off: 26 * i, EndOff: 26*i + 4}})
		}
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			for b.Loop() {
				if err := WriteText(io.Discard, l, TextOptions{Source: func(string) []byte { return src }}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// Of a line of megabytes only what lies around the mark is laid out; it looks
// as it would without.
func TestVeryLongLine(t *testing.T) {
	for _, side := range []int{100, 1_000_000} {
		src := strings.Repeat("\u6cf5", side) + " MARK " + strings.Repeat("b", side)
		out := strings.Split(written(t, Finding{At: spanOf(t, src, "MARK")}, src, 60), "\n")
		require.LessOrEqual(t, columns(out[1]), 60)
		shown, _, _ := strings.Cut(out[1], "MARK")
		carets, _, _ := strings.Cut(out[2], "^")
		require.Equal(t, columns(shown), columns(carets))
		require.Contains(t, out[1], "| ...\u6cf5")
		require.Contains(t, out[1], "b...")
	}
}
