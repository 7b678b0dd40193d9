package draft

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
)

// mistake is what one planted fault has to be answered with.
type mistake struct {
	line, col, end int
	says           string // part of the message
}

func requireMistakes(t *testing.T, src string, want []mistake) {
	t.Helper()
	_, found := Parse("bad.draft", []byte(src))
	var got []string
	for _, f := range found {
		require.Equal(t, RuleSyntax, f.Rule)
		require.LessOrEqual(t, len(f.Msg), 120, f.Msg)
		require.NotEmpty(t, f.Msg)
		got = append(got, f.String())
	}
	require.Len(t, found, len(want), strings.Join(got, "\n"))
	for i, w := range want {
		require.Equal(t, w.line, found[i].At.Line, got[i])
		require.Equal(t, w.col, found[i].At.Col, got[i])
		require.Equal(t, w.end, found[i].At.End, got[i])
		require.Contains(t, found[i].Msg, w.says)
	}
}

// TestPlantedMistakes plants one mistake or more into a single line; columns
// are counted by hand from the text beside them.
func TestPlantedMistakes(t *testing.T) {
	for _, c := range []struct {
		src  string
		want []mistake
	}{
		// Signs of other formats.
		{`wire 1 G1.+ -> F1.1`, []mistake{{1, 13, 15, "without an arrow"}}},
		{`wire 1 G1.+->F1.1`, []mistake{{1, 12, 14, "without an arrow"}}},
		{`wire 1 G1.- → F1.1`, []mistake{{1, 13, 14, "without an arrow"}}},
		{`wire 1 G1 <- F1.1 => X`, []mistake{{1, 11, 13, "arrow"}, {1, 19, 21, "arrow"}}},
		{`motor M1 draws=8.5A`, []mistake{{1, 15, 16, `without "="`}}},
		{`motor M1 draws = 8.5A stall=9A`, []mistake{{1, 16, 17, `without "="`}, {1, 28, 29, `without "="`}}},
		{`motor M1 draws: 8.5A`, []mistake{{1, 15, 16, `without ":"`}}},
		{`module A1:`, []mistake{{1, 10, 11, "indented below"}}},
		{`wire 2 F4:2 K1:30`, []mistake{{1, 10, 11, "with a period: F4.2"}, {1, 15, 16, "K1.30"}}},
		{`fuse F1 15A;`, []mistake{{1, 12, 13, "ends with its line"}}},
		{`fuse F1 15A; fuse F2 10A`, []mistake{{1, 12, 13, "new line is expected"}}},
		{`wire 1 F1(2) B`, []mistake{{1, 10, 13, "with a period"}}},
		{`wire 1 A B (near, the=dash)`, []mistake{{1, 12, 28, "remark stands behind #"}}},
		{`together A.1 [14, 15]`, []mistake{{1, 14, 15, "need no brackets"}}},
		{`module A1 {`, []mistake{{1, 11, 12, "indented below"}}},
		{`}`, []mistake{{1, 1, 2, "has no use"}}},
		{`wire 1 | A | B`, []mistake{{1, 8, 9, `without "|"`}, {1, 12, 13, `without "|"`}}},
		{`together A.1 14 & 15`, []mistake{{1, 17, 18, `without "&"`}}},
		{`relay K1 pull-in > 6.5V`, []mistake{{1, 18, 19, "figure alone"}}},
		{`motor M1 @dash`, []mistake{{1, 10, 11, `with "at"`}}},
		{`motor M1 draws ~8A`, []mistake{{1, 16, 17, `"guess"`}}},
		{`motor M1 \`, []mistake{{1, 10, 11, "does not continue"}}},
		{`fuse $F1 **`, []mistake{{1, 6, 7, `"$"`}, {1, 10, 12, `"**"`}}},
		// Comments.
		{`wire 1 A B // red, = "`, []mistake{{1, 12, 14, `begins with "#"`}}},
		{`wire 1 A B -- red`, []mistake{{1, 12, 14, `begins with "#"`}}},
		{`; note, note`, []mistake{{1, 1, 2, `begins with "#"`}}},
		{`wire 1 A B# red`, []mistake{{1, 11, 12, "blank is expected before #"}}},
		{`stud E1 on block #10`, []mistake{{1, 18, 21, "No10"}}},
		{`  -------`, []mistake{{1, 3, 10, "line of signs"}}},
		// Quotes.
		{`fuse F1 "Pump 15A # x`, []mistake{{1, 9, 10, "not closed"}}},
		{`fuse F1 "Pump at dash note "x"`, []mistake{{1, 9, 10, "no partner"}}},
		{`fuse F1 Pump" at dash note "x"`, []mistake{{1, 13, 14, "no partner"}}},
		{`fuse F1 "Pump"15A`, []mistake{{1, 15, 18, "blank is expected before"}}},
		{`fuse F1"Pump" 15A`, []mistake{{1, 8, 14, "blank is expected before"}}},
		{`fuse F1 “Pump” 15A`, []mistake{{1, 9, 15, "not curly ones"}}},
		{`fuse F1 "Pump” 15A`, []mistake{{1, 14, 15, "straight one"}}},
		{`fuse F1 'Lift pump' 15A`, []mistake{{1, 9, 20, "not single ones"}}},
		{`fuse F1 "6\" pipe"`, []mistake{{1, 11, 13, "written twice"}}},
		// Rows of a spreadsheet, one answer each.
		{`9,F1.2,K1.30,14AWG,RD`, []mistake{{1, 1, 22, "row of a spreadsheet"}}},
		{`"9","F1, F2","K1.30","14 AWG"`, []mistake{{1, 1, 30, `not by ","`}}},
		{`  9;F1.2;K1.30;14AWG`, []mistake{{1, 3, 21, `not by ";"`}}},
		{`| 9 | F1.2 | K1.30 |`, []mistake{{1, 1, 21, `not by "|"`}}},
		// Lists and names.
		{`together A.1 14,,15`, []mistake{{1, 17, 18, "too many"}}},
		{`together A.1 14, 15,`, []mistake{{1, 20, 21, "after this comma"}}},
		{`together A.1 14, # no more`, []mistake{{1, 16, 17, "after this comma"}}},
		{`together , 14`, []mistake{{1, 10, 11, "after the first word"}}},
		{`, 14`, []mistake{{1, 1, 2, "before this comma"}}},
		{`wire 1 K1. F1.1`, []mistake{{1, 10, 11, `after the period of "K1."`}}},
		{`wire 1 K1..87 F1.1`, []mistake{{1, 10, 12, "one period"}}},
		{`wire 1 .87 F1.1`, []mistake{{1, 8, 9, "before the period"}}},
		{`fuse F1 .5A`, []mistake{{1, 9, 10, "0 before the period"}}},
		{`wire 1 ... F1`, []mistake{{1, 8, 11, "stands for nothing"}}},
		{`F1.2 A2.BAT`, []mistake{{1, 1, 5, "begins with one word"}}},
		// Look-alikes and what a draft may not hold.
		{`fuse F1 −15A`, []mistake{{1, 9, 10, `minus sign: expected "-"`}}},
		{`leg a b 35" tape`, []mistake{{1, 9, 12, "35in"}}},
		{`leg a b 9'6" tape`, []mistake{{1, 9, 13, "9ft6in"}}},
		{"fuse\u00a0F1 15A", []mistake{{1, 5, 6, "no-break space"}}},
		{`fuse F1 １５Ａ`, []mistake{{1, 9, 12, `expected "15A"`}}},
		{`wire 1 A，B`, []mistake{{1, 9, 10, `expected ","`}}},
		{`wire 1 К1.87 F1`, []mistake{{1, 8, 9, `Latin "K"`}}},
		{`wire 1 A Α1`, []mistake{{1, 10, 11, `Latin "A"`}}},
		{`place bay 85°C 2.5mm²`, []mistake{{1, 13, 14, "degree sign"}, {1, 21, 22, `expected "2"`}}},
		{`fuse F1 ½A ٣A`, []mistake{{1, 9, 10, `"1/2"`}, {1, 12, 13, "expected 3"}}},
		{`fuse F🚗1`, []mistake{{1, 7, 8, "U+1F697"}}},
		{"fuse F1\x00 \x00 15A \x1b[31m", []mistake{{1, 8, 9, "zero byte"}, {1, 16, 21, "terminal escape"}}},
		{"fuse \"a\x02\" # \x07", []mistake{{1, 8, 9, "U+0002"}, {1, 13, 14, "bell"}}},
		{"fuse F1\rfuse F2", []mistake{{1, 8, 9, "carriage return"}}},
		{"fuse F\xe91 15A", []mistake{{1, 7, 8, "not UTF-8"}}},
		{"fuse F\u200b1", []mistake{{1, 7, 8, "zero-width space"}}},
		{"fuse F1 \"a\u202eb\"", []mistake{{1, 11, 12, "U+202E"}}},
		{"fuse F\u202e1", []mistake{{1, 7, 8, "right-to-left override"}}},
	} {
		t.Run(c.src, func(t *testing.T) { requireMistakes(t, c.src, c.want) })
	}
}

// TestAllMistakesInOneRun joins faulty and sound lines: every mistake is
// found, at its own line, and the sound lines stay sound.
func TestAllMistakesInOneRun(t *testing.T) {
	src := strings.Join([]string{
		`circuit a "Lights`,       // 1: quote
		`  wire 1  A.1 -> B.1`,    // 2: arrow
		`  wire 2  A.2  B.2`,      // sound
		`module A1 {`,             // 4: brace
		`  BAT feed=0.4A, asleep`, // 5: equals; the list of two is the model's matter
		`}`,                       // 6: brace
		`<<<<<<< mine`,            // 7
		`fuse F1 10A`,
		`=======`, // 9
		`fuse F1 15A;`,
		`>>>>>>> yours`, // 11
		`fuse F2 K1. ,`, // 12: period; the open comma is the same spot's second mistake
		`wire 3 A B`,
	}, "\r\n")
	requireMistakes(t, src, []mistake{
		{1, 11, 12, "not closed"}, {2, 15, 17, "arrow"}, {4, 11, 12, "{"}, {5, 11, 12, `"="`}, {6, 1, 2, "}"},
		{7, 1, 8, "merge marker"}, {9, 1, 8, "merge marker"}, {10, 12, 13, ";"}, {11, 1, 8, "merge marker"},
		{12, 11, 12, "period"}, {12, 13, 14, "after this comma"},
	})
	f, _ := Parse("bad.draft", []byte(src))
	require.Len(t, f.Stmts, 5, "circuit, module, the first F1, F2, wire 3")
	require.Len(t, f.Stmts[0].Children, 2, "a bad parent keeps its children")
	require.True(t, f.Stmts[0].Children[0].Bad)
	require.False(t, f.Stmts[0].Children[1].Bad)
	require.Equal(t, "10A", f.Stmts[2].Item(1).Word(), "the first version of a merge counts")
	require.False(t, f.Stmts[4].Bad)
}

func TestNoFalseMistakes(t *testing.T) {
	for _, src := range []string{
		"", "\n\n", "# only a comment", "\ufeffdraft 1\r\n", "wire 1 A B",
		`wire 1 G1.- G1.+ # "open, = quote -> ; (`,
		`fuse "5\" "x"`, `label "C:\"`, `label "a""b" "“curly”" "# no comment" "é"`,
		`place Насос 85C`, `lamp Ё1 5µs 90Ω 5mΩ`, `lamp Größe`, "lamp e\u0301",
		`wire 1 "Main relay".87 "a.b"."c d"`, `together A.1 14 , 15,16`, `together A.1 14,15,16,17`, `lamp P1 "a,b;c,d|e,f"`, "a\tb\t# c",
		`stud E1 #100 is not a size`, `x - + --a -a- % /`, `a 1/0AWG 12.6V -1.5A +3%`,
		"a\n  b\n    c\n      d\n        e\n", "a\n\tb\n\t\tc\nd\n\te\n",
		"a\n     b\n  # deeper or not, a comment has no level\n     c\n",
	} {
		t.Run(src, func(t *testing.T) {
			_, found := Parse("good.draft", []byte(src))
			require.Empty(t, found)
		})
	}
}

func TestLimits(t *testing.T) {
	many := strings.Repeat("fuse F1 =\n", 205)
	_, found := Parse("x", []byte(many))
	require.Len(t, found, 201)
	require.Contains(t, found[200].Msg, "more than 200 mistakes")
	require.Equal(t, 201, found[200].At.Line)

	long := "fuse F1 10A\n" + strings.Repeat("a=", 40<<10) + "\nfuse F2 10A\n"
	f, found := Parse("x", []byte(long))
	require.Len(t, found, 1, "what a line past its limit holds is no second mistake")
	require.Contains(t, found[0].Msg, "64 KB")
	require.Equal(t, "F2", f.Stmts[len(f.Stmts)-1].Item(0).Word())

	for name, src := range map[string]string{
		"too large": strings.Repeat("#", maxBytes+1), "UTF-16": "\xff\xfed\x00",
		"no text file": "PK\x03\x04" + strings.Repeat("\x00\x01", 20), "too many lines": strings.Repeat("\n", maxLines+1),
	} {
		f, found := Parse("x", []byte(src))
		require.Len(t, found, 1, name)
		require.Contains(t, found[0].Msg, name)
		require.Empty(t, f.Stmts)
		require.Equal(t, src, string(Tidy(f)), "what cannot be read is not changed")
	}
	words := strings.Repeat(strings.Repeat("a ", 30_000)+"\n", 70)
	_, found = Parse("x", []byte(words))
	require.Len(t, found, 1)
	require.Contains(t, found[0].Msg, "2,000,000 words")
}

func TestFixesPutTheLineRight(t *testing.T) {
	for src, want := range map[string]string{
		`fuse F1 −15A`: `fuse F1 -15A`, `leg a b 9'6" x`: `leg a b 9ft6in x`, `fuse F1 “a "b” x`: `fuse F1 "a ""b" x`,
		`wire 1 К1.87 F4:2`: `wire 1 K1.87 F4.2`, "fuse\u00a0\u00a0F1": `fuse  F1`, `fuse F1 .5A`: `fuse F1 0.5A`,
		`stud E1 #10`: `stud E1 No10`, `fuse F1 "6\" x"`: `fuse F1 "6"" x"`, `x kМНz５`: `x kMHz5`,
	} {
		_, found := Parse("x", []byte(src))
		got := apply(src, found)
		require.Equal(t, want, got)
		_, again := Parse("x", []byte(got))
		require.Empty(t, again)
	}
}

// apply makes every edit that the findings offer, the last one first.
func apply(src string, found diag.List) string {
	for i := len(found) - 1; i >= 0; i-- {
		if found[i].Fix == nil {
			continue
		}
		for _, e := range found[i].Fix.Edits {
			src = src[:e.At.Off] + e.Text + src[e.At.EndOff:]
		}
	}
	return src
}

func TestIndentMistakes(t *testing.T) {
	for _, c := range []struct {
		src    string
		levels string // of each statement
		want   []mistake
	}{
		{"a\n    b\n  c\n  d\n    e", "01001", []mistake{{3, 1, 3, "0 or 4"}, {4, 1, 3, "lines up"}}},
		{"a\n  b\n      c\n    d\n  e", "01211", []mistake{{4, 1, 5, "expected 0 or 2 or 6"}}},
		{"  a\n  b\nc", "000", []mistake{{1, 1, 3, "not indented"}}},
		{"a\n  b\n\tc\n\td\n  e", "01111", []mistake{{3, 1, 2, "with tabs, the file with blanks (2 such lines)"}}},
		{"a\n\tb\n    c\n        d\n\te", "01121", []mistake{{3, 1, 5, "with blanks, the file with tabs (2 such lines)"}}},
		{"a\n  b\n \tc\n  d", "0111", []mistake{{3, 1, 3, "mixed"}}},
		{"a\n b\n  c\n   d\n    e\n     f\n     g\nh", "01234440", []mistake{{6, 1, 6, "too deep"}, {7, 1, 6, "too deep"}}},
		{"a\n\u00a0 b\n  c", "011", []mistake{{2, 1, 2, "no-break space"}}},
		{"a\n  b;c\n  d", "0111", []mistake{{2, 4, 5, "one statement"}}},
	} {
		t.Run(strconv.Quote(c.src), func(t *testing.T) {
			requireMistakes(t, c.src, c.want)
			f, _ := Parse("x", []byte(c.src))
			got := ""
			for s := range f.All() {
				got += strconv.Itoa(s.Level)
				if s.Parent != nil {
					require.Equal(t, s.Parent.Level+1, s.Level)
				}
			}
			require.Equal(t, c.levels, got)
		})
	}
}
