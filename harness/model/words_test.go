package model

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
)

// The table of statements holds exactly the heads that the reader sorts.
func TestTableHoldsEveryHead(t *testing.T) {
	var heads []string
	for _, s := range Statements() {
		if _, kind := part.Of(s.Under); !kind {
			heads = append(heads, s.Word)
		}
	}
	require.ElementsMatch(t, statements, heads)
}

func TestTableIsComplete(t *testing.T) {
	var words []Word
	for _, s := range Statements() {
		require.NotEmpty(t, s.Doc, s.Word)
		require.True(t, strings.HasPrefix(s.Example, s.Word), s.Word)
		words = append(words, s.Words...)
		for _, set := range s.Settings {
			require.NotEmpty(t, set.Doc, "%s %s", s.Word, set.Name)
			for _, f := range set.Figures {
				require.NotEmpty(t, f.Doc, "%s %s %s", s.Word, set.Name, f.Name)
			}
		}
	}
	for _, w := range slices.Concat(words, DeviceWords(), Marks(), LineWords(part.TerminalLines)) {
		require.NotEmpty(t, w.Doc, w.Word)
	}
	require.ElementsMatch(t, slices.Sorted(maps.Keys(marks)), []string{"guess", "measured", "sheet"})
	require.Len(t, Marks(), len(marks))
}

// scaffold is a draft in which the examples of the table make sense.
const scaffold = `place bay
place dash
module A1 at dash
  CRANK input
  SHIELD sensor-ground
  BAT feed 0.4A
battery G1 at bay
sensor B1 at bay
relay K1 at bay
relay K4 at bay
connector X2 at bay 6way
  half cab
  half rear
connector X4 at bay 2way
  half a
  half b
stud E1 at bay M8
stud E2 at bay M8
wire 14 K1.87 K1.30
wire 15 K1.87 K1.30
`

// exampleOf puts an example where it belongs; nothing else may be said of it.
func exampleOf(s Statement) string {
	text := s.Example
	switch {
	case s.Word == "cable":
		text += "\n  core 401 A1.CRANK B1.S"
	case s.Under == "cable":
		text = "cable 400 20AWG 9ft\n  " + text
	case s.Under != "":
		text = s.Under + " A9 at dash\n  " + text + "\n  GND ground"
	}
	return scaffold + text
}

func TestExamplesAreRead(t *testing.T) {
	for _, s := range Statements() {
		f, syntax := draft.Parse("x.draft", []byte(exampleOf(s)+"\n"))
		require.Empty(t, syntax, s.Word)
		included := map[diag.Span]*draft.File{}
		for st := range f.All() {
			if st.Word() == "include" {
				included[st.Head.At], _ = draft.Parse("shelf.draft", nil)
			}
		}
		_, found := BuildWith(f, Setup{Included: included})
		require.Empty(t, found, "%s\n%s", s.Word, exampleOf(s))
	}
}

// formsOf gives every form that the reader fills on the examples and on a
// device and a part of every kind, by the words that begin its owner.
func formsOf(t *testing.T) map[string]*form {
	t.Helper()
	forms := map[string]*form{}
	var text strings.Builder
	for _, k := range part.Kinds() {
		text.WriteString(k.Name + " Z" + k.Name + "\n")
		text.WriteString("part " + k.Name + " shelf-" + k.Name + "\n")
	}
	sources := []string{text.String()}
	for _, s := range Statements() {
		sources = append(sources, exampleOf(s))
	}
	for _, src := range sources {
		f, _ := draft.Parse("x.draft", []byte(src+"\n"))
		b := newBuilder(f, Setup{})
		b.watch = func(f *form) {
			head, rest, _ := strings.Cut(f.owner, " ")
			switch {
			case head == "part":
				head += " " + strings.TrimPrefix(rest, "shelf-")
			case strings.Contains(f.owner, "A1.BAT"):
				head = "terminal line"
			}
			forms[head] = f
		}
		b.build()
	}
	return forms
}

// What the table says of words, settings, labels, colors and insulation is
// what the reader takes, and the other way round.
func TestTableSaysWhatIsRead(t *testing.T) {
	forms := formsOf(t)
	all := Statements()
	for _, k := range part.Kinds() {
		all = append(all, DeviceStatement(k))
	}
	noForm := []string{"draft", "accept", "note", "together", "spare", "include", "part"}
	for _, s := range all {
		f := forms[s.Word]
		if slices.Contains(noForm, s.Word) {
			require.Nil(t, f, s.Word)
			require.Empty(t, s.Words, s.Word)
			continue
		}
		require.NotNil(t, f, s.Word)
		sameForm(t, f, s)
	}
	for _, k := range part.Kinds() {
		require.NotNil(t, forms["part "+k.Name], k.Name)
		require.Equal(t, len(k.Settings), len(forms["part "+k.Name].settings))
	}
	require.Equal(t, wordsOf(LineWords(part.TerminalLines)), slices.Sorted(maps.Keys(forms["terminal line"].words)))
}

func sameForm(t *testing.T, f *form, s Statement) {
	t.Helper()
	taken := slices.Sorted(maps.Keys(f.words))
	if k, ok := part.Of(s.Word); ok && k.Ground == "" {
		// The reader knows the word, to answer it.
		taken = slices.DeleteFunc(taken, func(w string) bool { return w == "grounds-to" })
	}
	require.Equal(t, wordsOf(s.Words), taken, s.Word)
	require.Equal(t, s.Label, f.label != nil, "label of %s", s.Word)
	require.Equal(t, len(s.Settings), len(f.settings), s.Word)
	if len(s.Settings) > 0 {
		require.Same(t, &s.Settings[0], &f.settings[0], s.Word)
	}
	var bare []string
	if f.expected != nil {
		bare = f.expected()
	}
	require.Equal(t, s.Families, slices.Contains(bare, "GXL"), "insulation of %s", s.Word)
	require.Equal(t, s.Colors, slices.Contains(bare, "RED"), "colors of %s", s.Word)
}

func wordsOf(words []Word) []string {
	var out []string
	for _, w := range words {
		out = append(out, w.Word)
	}
	slices.Sort(out)
	return out
}

func TestShape(t *testing.T) {
	wire, ok := StatementOf("wire")
	require.True(t, ok)
	require.Equal(t, `wire NUMBER END END ["LABEL"]`, wire.Shape())
	accept, _ := StatementOf("accept")
	require.Equal(t, `accept RULE "REASON"`, accept.Shape())
	spare, _ := StatementOf("spare")
	require.Equal(t, "spare TERMINAL ...", spare.Shape())
	_, ok = StatementOf("relay")
	require.False(t, ok, "a kind of device is no statement of the builder's own")
}

// The words for several steps mean what the table says of them.
func TestGroupWords(t *testing.T) {
	words := stepWords(emptyModel().Steps, nil)
	for _, w := range GroupWords() {
		require.NotEqual(t, part.NoSteps, words[w.Word], w.Word)
	}
	require.Equal(t, words["crank-only"]|words["engage"], words["crank"])
	for _, g := range groupWords {
		require.True(t, slices.ContainsFunc(GroupWords(), func(w Word) bool { return w.Word == g }), g)
	}
}

func emptyModel() *Model {
	f, _ := draft.Parse("x.draft", nil)
	m, _ := Build(f)
	return m
}
