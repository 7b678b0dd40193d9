package diag

import (
	"bytes"
	"errors"
	"math"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
)

func written(t *testing.T, f Finding, src string, width int) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, WriteText(&b, List{f}, TextOptions{
		Source: func(string) []byte { return []byte(src) }, Width: width,
	}))
	return b.String()
}

// spanOf marks word, which stands once in a one-line src.
func spanOf(t *testing.T, src, word string) Span {
	t.Helper()
	off := strings.Index(src, word)
	require.GreaterOrEqual(t, off, 0)
	col := utf8.RuneCountInString(src[:off]) + 1
	return Span{File: "a.draft", Line: 1, Col: col, End: col + utf8.RuneCountInString(word),
		Off: off, EndOff: off + len(word)}
}

// The caret has to stand under the word whatever stands before it, both by
// byte offsets and, when a span has none, by columns.
func TestCaretStandsUnderWord(t *testing.T) {
	tests := []struct{ name, src, word, shown, carets string }{
		{"plain", "fuse F1 15A", "F1", "fuse F1 15A", "     ^^"},
		{"first", "fuse F1 15A", "fuse", "fuse F1 15A", "^^^^"},
		{"tabs", "\t\tfuse\tF1", "F1", "        fuse    F1", "                ^^"},
		{"odd tab", "ab\tF1", "F1", "ab  F1", "    ^^"},
		{"wide", "\"\u6cf5\u6cf5\" F1", "F1", "\"\u6cf5\u6cf5\" F1", "       ^^"},
		{"wide word", "x \u6cf5\u6cf5", "\u6cf5\u6cf5", "x \u6cf5\u6cf5", "  ^^^^"},
		{"combining", "e\u0301e F1", "F1", "e\u0301e F1", "   ^^"},
		{"bidi", "\u202ex F1", "F1", "<U+202E>x F1", "          ^^"},
		{"bidi marked", "a \u202e b", "\u202e", "a <U+202E> b", "  ^^^^^^^^"},
		{"no-break space", "15\u00a0A", "\u00a0", "15<U+00A0>A", "  ^^^^^^^^"},
		{"escape", "a\x1b[31m F1", "F1", "a<U+001B>[31m F1", "              ^^"},
		{"bad byte", "a\xff F1", "F1", "a<0xFF> F1", "        ^^"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			at := spanOf(t, tt.src, tt.word)
			want := "  1 | " + tt.shown + "\n    | " + tt.carets + "\n"
			require.Contains(t, written(t, Finding{At: at}, tt.src, 100), want)
			at.Off, at.EndOff = 0, 0
			require.Contains(t, written(t, Finding{At: at}, tt.src, 100), want, "without offsets")
		})
	}
}

func TestPlaceBeyondSource(t *testing.T) {
	past := Finding{At: Span{File: "a.draft", Line: 1, Col: 4, End: 5, Off: 3, EndOff: 3}, Severity: Fault}
	require.Contains(t, written(t, past, "abc\n", 100), "  1 | abc\n    |    ^\n", "end of line")
	past.At.Line = 9
	require.Equal(t, "a.draft:9:4: fault:  []\n", written(t, past, "abc\n", 100), "no such line")
	require.Equal(t, "note:  []\n", written(t, Finding{Severity: Note}, "abc\n", 100), "no place")
}

func TestLongLineIsCutAroundMark(t *testing.T) {
	src := strings.Repeat("a", 500) + " MARK " + strings.Repeat("b", 500)
	out := strings.Split(written(t, Finding{At: spanOf(t, src, "MARK")}, src, 60), "\n")
	require.LessOrEqual(t, len(out[1]), 60)
	at := strings.Index(out[1], "MARK")
	require.Positive(t, at)
	require.Equal(t, at, strings.Index(out[2], "^^^^"))
	require.True(t, strings.HasPrefix(out[1], "  1 | ...a"))
	require.True(t, strings.HasSuffix(out[1], "b..."))
}

func TestContextLineComesFirst(t *testing.T) {
	src := "module A1\n  BAT feed\n  IGN feed 9A\n"
	f := Finding{
		At:      Span{File: "a.draft", Line: 3, Col: 12, End: 14, Off: 32, EndOff: 34},
		Context: Span{File: "a.draft", Line: 1, Col: 1, End: 10, Off: 0, EndOff: 9},
	}
	require.Contains(t, written(t, f, src, 100),
		"  1 | module A1\n    :\n  3 |   IGN feed 9A\n    |            ^^\n")
}

func TestWindowsLineEnds(t *testing.T) {
	f := Finding{At: Span{File: "a.draft", Line: 2, Col: 1, End: 3, Off: 6, EndOff: 8}}
	require.Contains(t, written(t, f, "one\r\n\r\n", 100), "  2 |\n    | ^\n")
	f.At = Span{File: "a.draft", Line: 2, Col: 1, End: 4, Off: 5, EndOff: 8}
	require.Contains(t, written(t, f, "one\r\ntwo\r\n", 100), "  2 | two\n    | ^^^\n")
}

func TestTextsOfFindingAreCleaned(t *testing.T) {
	f := Finding{Severity: Note, Rule: "r\x07", Msg: "a\x1b[2Jb\nc", Detail: "\u2066d", At: Span{File: "x\x1b"}}
	require.Equal(t, "x<U+001B>: note: a<U+001B>[2Jb c [r<U+0007>]\n    = why: <U+2066>d\n",
		written(t, f, "", 100))
}

func TestColorOnlyWhenAsked(t *testing.T) {
	f := Finding{Severity: Fault, Rule: "r", Msg: "m", At: Span{File: "a", Line: 1, Col: 1, End: 2, EndOff: 1}}
	source := func(string) []byte { return []byte("x") }
	var plain, colored bytes.Buffer
	require.NoError(t, WriteText(&plain, List{f}, TextOptions{Source: source}))
	require.NoError(t, WriteText(&colored, List{f}, TextOptions{Source: source, Color: true}))
	require.NotContains(t, plain.String(), "\x1b")
	require.Contains(t, colored.String(), "\x1b[1;31mfault:\x1b[0m")
	require.Contains(t, colored.String(), "\x1b[1;31m^\x1b[0m")
}

func TestWidthIsKept(t *testing.T) {
	f := Finding{Severity: Note, Rule: "r", Msg: "m", Detail: strings.Repeat("word \u6cf5 ", 60)}
	for _, width := range []int{0, 10, 40, 77, 120} {
		limit := max(width, 40)
		if width == 0 {
			limit = 100
		}
		rows := strings.Split(strings.TrimSpace(written(t, f, "", width)), "\n")
		require.Greater(t, len(rows), 3)
		for _, row := range rows {
			require.LessOrEqual(t, columns(row), limit, "width %d", width)
		}
	}
	require.Equal(t, written(t, f, "", 40), written(t, f, "", 10), "40 is the least")
}

func TestValueString(t *testing.T) {
	require.Equal(t, "drop 4.568 %, at most 3 %",
		Value{Name: "drop", Got: 4.5678, Limit: 3, Unit: "%", Bound: AtMost}.String())
	require.Equal(t, "turns 0", Value{Name: "turns", Got: math.Copysign(0, -1)}.String())
	require.Equal(t, "volts unknown V, at least 8 V",
		Value{Name: "volts", Got: math.NaN(), Limit: 8, Unit: "V", Bound: AtLeast}.String())
	require.Equal(t, "area 123500 mm2", Value{Name: "area", Got: 123456, Unit: "mm2"}.String())
}

type fullDisk struct{}

var errFull = errors.New("disk full")

func (fullDisk) Write([]byte) (int, error) { return 0, errFull }

func TestWriterErrorIsReturned(t *testing.T) {
	require.ErrorIs(t, WriteText(fullDisk{}, List{{Msg: "m"}}, TextOptions{}), errFull)
}

// Whatever the source and the span: no panic, nothing hidden in the output,
// and the carets stay within the width.
func FuzzWriteText(f *testing.F) {
	f.Add("fuse\tF1 \u202e15A", 1, 6, 8, 5, 7, 60)
	f.Add("\u6cf5e\u0301\xff\r\n", 2, 1, 1, 9, 2, 0)
	f.Add("\t\t\t\t\t\t\t\t00", 1, 17, 0, 80, -18, 40) // a caret past the end of a full line
	f.Add("", 1, 0, 0, 0, 0, 40)
	f.Fuzz(func(t *testing.T, src string, at, col, end, off, endOff, width int) {
		var b bytes.Buffer
		span := Span{File: "f", Line: at, Col: col, End: end, Off: off, EndOff: endOff}
		width = min(max(width, 0), 500)
		require.NoError(t, WriteText(&b, List{{Msg: src, Detail: src, At: span, Context: span}},
			TextOptions{Source: func(string) []byte { return []byte(src) }, Width: width}))
		if width == 0 {
			width = 100
		}
		require.True(t, utf8.Valid(b.Bytes()))
		for _, row := range strings.Split(b.String(), "\n") {
			require.Equal(t, -1, strings.IndexFunc(row, func(r rune) bool { return unicode.IsControl(r) || hidden(r) }))
			if strings.Contains(row, " | ") && strings.Trim(row, " |^") == "" {
				require.LessOrEqual(t, columns(row), max(width, 40))
			}
		}
	})
}

// What is only rounding is printed as nothing, in text and in JSON.
func TestRoundingIsNothing(t *testing.T) {
	v := Value{Name: "volts", Got: 2.776e-17, Limit: 1, Unit: "V", Bound: AtLeast}
	require.Equal(t, "volts 0 V, at least 1 V", v.String())
	out, err := Finding{Values: []Value{v}}.MarshalJSON()
	require.NoError(t, err)
	require.Contains(t, string(out), `"got":0,`)
}
