package draft

import (
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
)

func seed(f *testing.F) {
	f.Add([]byte("draft 1\nmodule A1 \"x\"\n  BAT feed 0.4A, 3 # c\n\n\twire 1 A.1 -> B:2\n"))
	f.Add([]byte("  a\n    b\n  c\n \td\n<<<<<<< x\ne;f , ,\n=======\n>>>>>>> y\n"))
	f.Add([]byte("x “a\" 'b' 9'6\" \"c\\\" d\" \"e\nК1 １ ½ ° → \u00a0\u202e\xff\x00\r\n\r"))
	f.Add([]byte("\ufeffwire 1 a (b [c] {d} = : < > | & @ ~ ! ? * $ ^ ` \\\n// z\n-- z\n...\n"))
	f.Add([]byte("leg a b 9 ft 6 in x\nfuse F1 15 A\nfuse F22 3 A in A2 # c\nstud E1 #10\n"))
	f.Add(sample(f, "small.draft"))
	f.Add(sample(f, "least.draft"))
}

// checkSpan fails unless the span lies in one line of the file and its columns
// agree with its bytes.
func checkSpan(t *testing.T, src []byte, at diag.Span) {
	t.Helper()
	require.True(t, at.Off >= 0 && at.Off <= at.EndOff && at.EndOff <= len(src), "%+v", at)
	before := src[:at.Off]
	start := strings.LastIndexByte(string(before), '\n') + 1
	require.Equal(t, at.Line, strings.Count(string(before), "\n")+1)
	if start == 0 && strings.HasPrefix(string(src), byteOrderMark) {
		start = len(byteOrderMark)
	}
	require.Equal(t, at.Col, utf8.RuneCount(src[start:at.Off])+1, "%+v", at)
	require.Equal(t, at.End-at.Col, utf8.RuneCount(src[at.Off:at.EndOff]), "%+v", at)
	require.NotContains(t, string(src[at.Off:at.EndOff]), "\n")
}

func checkRef(t *testing.T, src []byte, r Ref) {
	t.Helper()
	checkSpan(t, src, r.At)
	require.Equal(t, r.Raw, string(src[r.At.Off:r.At.EndOff]))
	require.NotEmpty(t, r.Parts)
}

func FuzzParse(f *testing.F) {
	seed(f)
	f.Fuzz(func(t *testing.T, src []byte) {
		file, found := Parse("x", src)
		require.LessOrEqual(t, len(found), maxFindings+1)
		for _, d := range found {
			require.NotEmpty(t, d.Msg)
			require.LessOrEqual(t, utf8.RuneCountInString(d.Msg), 120, d.Msg)
			require.NotContains(t, d.Msg, "\n")
			if !d.At.IsZero() {
				checkSpan(t, src, d.At)
			}
			if d.Severity == diag.Fault && !d.At.IsZero() {
				require.True(t, file.Lines[d.At.Line-1].Bad)
			}
		}
		for s := range file.All() {
			require.Equal(t, s.Parent == nil, s.Level == 0)
			require.True(t, s.Parent == nil || s.Parent.Level == s.Level-1)
			require.True(t, s.Level <= maxLevel)
			checkRef(t, src, s.Head)
			checkSpan(t, src, s.At)
			for _, i := range s.Items {
				checkSpan(t, src, i.At)
				require.Equal(t, i.Raw, string(src[i.At.Off:i.At.EndOff]))
				require.NotEmpty(t, i.List)
				for _, r := range i.List {
					checkRef(t, src, r)
				}
			}
		}
		if len(file.Lines) > 0 && !slices.ContainsFunc(file.Lines, func(l Line) bool { return l.Bad }) {
			require.Less(t, found.Worst(), diag.Fault, "a fault without its line")
		}
	})
}

// shape writes the tree without blanks, so that a figure and its unit read the
// same together and apart.
func shape(f *File) string {
	var b strings.Builder
	for s := range f.All() {
		b.WriteString(strconv.Itoa(s.Level) + s.Head.Raw + " ")
		for _, i := range s.Items {
			b.WriteString(strings.ReplaceAll(i.print(), ", ", ","))
		}
		b.WriteString(f.Lines[s.Line-1].Comment + "\n")
	}
	return b.String()
}

func FuzzTidy(f *testing.F) {
	seed(f)
	f.Fuzz(func(t *testing.T, src []byte) {
		file, found := Parse("x", src)
		once := Tidy(file)
		again, found2 := Parse("x", once)
		require.Equal(t, string(once), string(Tidy(again)))
		require.Equal(t, len(found), len(found2), "tidy neither adds nor hides a mistake")
		if found.Worst() < diag.Fault {
			require.Equal(t, shape(file), shape(again))
		}
	})
}
