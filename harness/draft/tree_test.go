package draft

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
)

// at is a span in the one-line sources of this file, which are ASCII.
func at(line, off, col, end int) diag.Span {
	return diag.Span{File: "x", Line: line, Col: col, End: end, Off: off, EndOff: off + end - col}
}

func TestTreeOfALine(t *testing.T) {
	f, found := Parse("x", []byte("wire 7 \"Big one\".87 , K1.30  12.6V \"a \"\"b\"\"\"  # why\n"))
	require.Empty(t, found)
	want := &Stmt{
		Head: Ref{Raw: "wire", Parts: []string{"wire"}, At: at(1, 0, 1, 5)},
		Line: 1, At: at(1, 0, 1, 46),
		Items: []Item{
			{Raw: "7", Text: "7", List: []Ref{{"7", []string{"7"}, at(1, 5, 6, 7)}}, At: at(1, 5, 6, 7)},
			{
				Raw: `"Big one".87 , K1.30`, Text: `"Big one".87 , K1.30`, At: at(1, 7, 8, 28),
				List: []Ref{
					{`"Big one".87`, []string{"Big one", "87"}, at(1, 7, 8, 20)},
					{"K1.30", []string{"K1", "30"}, at(1, 22, 23, 28)},
				},
			},
			{Raw: "12.6V", Text: "12.6V", List: []Ref{{"12.6V", []string{"12", "6V"}, at(1, 29, 30, 35)}}, At: at(1, 29, 30, 35)},
			{
				Raw: `"a ""b"""`, Quoted: true, Text: `a "b"`, At: at(1, 35, 36, 45),
				List: []Ref{{`"a ""b"""`, []string{`a "b"`}, at(1, 35, 36, 45)}},
			},
		},
	}
	want.At.End, want.At.EndOff = 45, 44
	require.Empty(t, cmp.Diff(want, f.Stmts[0]))
	require.Equal(t, "# why", f.Lines[0].Comment)
	require.Same(t, f.Stmts[0], f.Lines[0].Stmt)
}

func TestSpansCountCharactersAndBytes(t *testing.T) {
	// The byte-order mark is 3 bytes and no column; each of ö and é is 2 bytes
	// and one column; the line end before wire is 2 bytes.
	f, found := Parse("x", []byte("\ufefflamp öé P1\r\nwire é 2\r\n"))
	require.Empty(t, found)
	require.Equal(t, diag.Span{File: "x", Line: 1, Col: 9, End: 11, Off: 13, EndOff: 15}, f.Stmts[0].Items[1].At)
	require.Equal(t, diag.Span{File: "x", Line: 2, Col: 8, End: 9, Off: 25, EndOff: 26}, f.Stmts[1].Items[1].At)
	require.Equal(t, "lamp öé P1", f.Lines[0].Text)
}

func TestRepairedWordsReadAsMeant(t *testing.T) {
	for src, want := range map[string][]string{
		"w К1．87 １５Ａ 85°C ½A":                {"K1.87", "15A", "85C", "1/2A"},
		`w 9'6" F4:2 don't "open end`:        {"9ft6in", "F4.2", "dont", "open end"},
		"w “Lift pump” 'Lift pump' draws=8A": {"Lift pump", "Lift pump", "draws", "8A"},
		`w "6\" pipe" .5A .87 K1..87`:        {`6" pipe`, "0.5A", "87", "K1.87"},
	} {
		f, found := Parse("x", []byte(src))
		require.NotEmpty(t, found)
		require.True(t, f.Stmts[0].Bad)
		var got []string
		for _, i := range f.Stmts[0].Items {
			got = append(got, i.Text)
		}
		require.Equal(t, want, got)
	}
}

func TestBadMarksOnlyTheItemTouched(t *testing.T) {
	f, _ := Parse("x", []byte(`motor M1 draws=8A at "dash`))
	var bad []bool
	for _, i := range f.Stmts[0].Items {
		bad = append(bad, i.Bad)
	}
	// M1, draws (the sign follows it), 8A, at, "dash without its end.
	require.Equal(t, []bool{false, true, false, false, true}, bad)
}

func TestAccessors(t *testing.T) {
	f, _ := Parse("x", []byte("module A1 \"Brain\"\n  \"note\" at A.12, B\n"))
	s := f.Stmts[0]
	require.Equal(t, "module", s.Word())
	require.Equal(t, "", s.ParentWord())
	require.True(t, s.Item(0).Is("A1"))
	require.Equal(t, "", s.Item(1).Word(), "a string is no bare word")
	require.Equal(t, "Brain", s.Item(1).Text)
	require.Equal(t, Item{}, s.Item(2))
	require.Equal(t, Ref{}, s.Item(-1).Ref())
	c := s.Children[0]
	require.Equal(t, "module", c.ParentWord())
	require.True(t, c.Head.Quoted())
	require.Equal(t, "note", c.Word())
	list := c.Item(1)
	require.True(t, list.IsList())
	require.Equal(t, []string{"A.12", "B"}, list.Words())
	require.Equal(t, "A", list.Ref().First())
	require.Equal(t, "12", list.Ref().Rest())
	require.False(t, list.Ref().Quoted())
	require.Equal(t, "", list.List[1].Rest())
	require.Equal(t, "", Ref{}.Text()+Ref{}.First()+Ref{}.Rest())
	n := 0
	for range f.All() {
		n++
		break
	}
	require.Equal(t, 1, n)
}
