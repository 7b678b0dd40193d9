package words

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

const grammarFile = "../../docs/editor/draft.tmLanguage.json"

func TestGrammarIsFresh(t *testing.T) {
	want, err := Grammar()
	require.NoError(t, err)
	if *update {
		require.NoError(t, os.MkdirAll("../../docs/editor", 0o755))
		require.NoError(t, os.WriteFile(grammarFile, want, 0o644))
	}
	got, err := os.ReadFile(grammarFile)
	require.NoError(t, err)
	require.Equal(t, string(want), string(got), "stale grammar: go test ./harness/words -update")
}

func shippedGrammar(t testing.TB) *tokenizer {
	t.Helper()
	raw, err := os.ReadFile(grammarFile)
	require.NoError(t, err)
	return newTokenizer(t, raw)
}

// marked lists the words of a text with their scopes; a word is a run of what
// is no blank and no comma, outside of strings and comments.
func marked(t testing.TB, src string) map[string][]string {
	t.Helper()
	out := map[string][]string{}
	k := shippedGrammar(t)
	for _, line := range strings.Split(strings.TrimSuffix(src, "\n"), "\n") {
		spans := k.line(line)
		for at := 0; at < len(line); {
			end := at
			for end < len(line) && !strings.ContainsRune(" ,", rune(line[end])) {
				end++
			}
			if end > at {
				out[line[at:end]] = append(out[line[at:end]], strings.Join(scopesAt(spans, at), " "))
			}
			at = end + 1
		}
	}
	return out
}

func TestScopes(t *testing.T) {
	words := marked(t, `draft 1
harness "Yard" system 12V profile boat units metric   # a comment
place bay "Engine bay" 85C wet
leg bay dash 35in split-loom
stud E1 on block at bay M10
strap 91 E1 E2 4AWG 9ft6in
step night like running
relay K4 in A2 coil 90ohm pull-in 6.5V 8V suppress resistor
motor M2 at tank draws 8.5A 13.5V sheet needs 8V when crank, night
keyswitch S1
  off
  crank B IGN ST lasts 12ms
module A1 at dash ground-wanted frame
  plug P 24way
  BAT feed 0.4A asleep 2mA always
  fuse low-side 0.5A
  half
part relay small-relay contact 30A
box A3
  bus MAIN F3.1 F4.1
connector X2 sealed blade 6.3mm
  half rear pins
circuit pump drop 3% color GN/WH
  wire 202 K1.87 X2.cab.1 14AWG TXL VT/WH via rail, tank existing
  splice J6 at rail
  accept drop-over-limit "short runs only"
fuse F1 80A bolt-down from G1 6in
bogus F2 80A
`)
	for word, want := range map[string]string{
		"draft": headScope, "harness": headScope, "#": "comment.line.number-sign", `"Yard"`: "string.quoted.double", "system": settingScope,
		"12V": figureScope, "boat": wordScope, "metric": wordScope, "85C": figureScope, "wet": wordScope, "split-loom": wordScope,
		"stud": kindScope, "E1": nameScope + "|" + terminalScope, "block": useScope, "M10": figureScope, "91": nameScope, "E2": terminalScope,
		"9ft6in": figureScope, "night": nameScope + "|" + stepScope, "like": settingScope, "running": stepScope,
		"relay": kindScope, "K4": nameScope, "in": settingScope, "A2": useScope, "coil": settingScope, "90ohm": figureScope, "pull-in": settingScope, "6.5V": figureScope,
		"suppress": settingScope, "resistor": wordScope, "draws": settingScope, "13.5V": figureScope, "sheet": markScope, "when": settingScope,
		"off": "constant.language.position", "IGN": terminalScope, "lasts": settingScope, "12ms": figureScope, "frame": useScope,
		"plug": headScope, "24way": figureScope, "BAT": nameScope, "feed": roleScope, "asleep": settingScope, "2mA": figureScope, "always": stepScope,
		"low-side": roleScope, "part": headScope, "small-relay": nameScope, "bus": headScope, "MAIN": nameScope, "F4.1": terminalScope,
		"sealed": settingScope, "rear": nameScope, "pins": wordScope, "3%": figureScope, "color": settingScope, "GN/WH": colorScope,
		"wire": headScope, "202": nameScope, "K1.87": terminalScope, "X2.cab.1": terminalScope, "14AWG": figureScope, "TXL": familyScope, "VT/WH": colorScope,
		"via": settingScope, "tank": useScope, "existing": settingScope, "splice": kindScope, "J6": nameScope, "accept": headScope,
		"drop-over-limit": wordScope, "bolt-down": wordScope, "from": settingScope, "G1": useScope, "6in": figureScope, "bogus": "", "F2": "",
	} {
		for i, got := range words[word] {
			ways := strings.Split(want, "|")
			require.Equal(t, ways[min(i, len(ways)-1)], got, "%s, the %d. time", word, i+1)
		}
		require.NotEmpty(t, words[word], word)
	}
	require.Equal(t, []string{nameScope, kindScope}, words["fuse"], "a terminal called like a kind is a name")
	require.Equal(t, nameScope, words["half"][0], "a terminal without its role is a name")
}

func TestScopesInsideWords(t *testing.T) {
	k := shippedGrammar(t)
	for _, tt := range []struct {
		line, at, want string
	}{
		{"place a 85C", "C", figureScope + " " + unitScope},
		{"leg a b 9ft6in", "in", figureScope + " " + unitScope},
		{`lamp P1 "21W # wet" wet`, "21W", "string.quoted.double"},
		{`lamp P1 "say ""21W"" twice" 5W`, `""`, "string.quoted.double constant.character.escape"},
		{`lamp P1 "not ended 21W`, "21W", "string.quoted.double"},
		{"# wire 1 A.1", "wire", "comment.line.number-sign"},
		{"lamp P1 21W#no comment", "no", ""},
		{"  wire 1 G1.+ F1.1", "+", terminalScope},
		{"lamp lamp 21W", "lamp 21W", nameScope},
	} {
		spans := k.line(tt.line)
		require.Equal(t, tt.want, strings.Join(scopesAt(spans, strings.Index(tt.line, tt.at)), " "), "%q in %q", tt.at, tt.line)
		require.LessOrEqual(t, len(k.stack), 2, tt.line)
	}
}

// On the shipped drafts the grammar and the parser agree: heads are heads,
// names are names, figures and strings are figures and strings, and nothing
// that legwork reads is left without a scope.
func TestShippedDraftsAreScoped(t *testing.T) {
	for _, name := range []string{"least", "small", "orchard-truck", "orchard-truck-faults"} {
		src, err := os.ReadFile("../../testdata/" + name + ".draft")
		require.NoError(t, err)
		f, _ := draft.Parse(name, src)
		k := shippedGrammar(t)
		spans := map[int][]scoped{}
		for i, l := range strings.Split(string(src), "\n") {
			spans[i+1] = k.line(l)
		}
		require.Len(t, k.stack, 1, "%s ends in a rule", name)
		seen := 0
		for s := range f.All() {
			seen += len(s.Items)
			checkScopes(t, f, s, spans[s.Line])
		}
		require.Positive(t, seen)
	}
}

func checkScopes(t *testing.T, f *draft.File, s *draft.Stmt, spans []scoped) {
	t.Helper()
	at := func(col int) string { return strings.Join(scopesAt(spans, col-1), " ") }
	head := at(s.Head.At.Col)
	_, kind := part.Of(s.Word())
	_, own := model.StatementOf(s.Word())
	switch inLines := s.Parent != nil && ofLinesKind(s.ParentWord()); {
	case inLines:
		require.NotEmpty(t, head, "%s:%d: %s", f.Name, s.Line, s.Head.Raw)
	case kind:
		require.Equal(t, kindScope, head, "%s:%d", f.Name, s.Line)
	case own:
		require.Equal(t, headScope, head, "%s:%d", f.Name, s.Line)
	}
	for i, it := range s.Items {
		got := at(it.At.Col)
		where := f.Name + ":" + s.Head.At.String() + " " + it.Raw
		q, err := quantity.Parse(it.Raw)
		_, family := gauge.FamilyOf(it.Raw)
		switch {
		case it.Quoted && i > 0:
			require.Equal(t, "string.quoted.double", got, where)
		case i > 1 && err == nil && q.Unit != "":
			require.Equal(t, figureScope, got, where)
		case i > 2 && s.Word() == "wire" && model.IsColor(it.Raw):
			require.Equal(t, colorScope, got, where)
		case i > 0 && family && s.Word() == "wire":
			require.Equal(t, familyScope, got, where)
		case (i == 1 || i == 2) && s.Word() == "wire":
			require.Equal(t, terminalScope, got, where)
		default:
			require.NotEmpty(t, got, where)
		}
	}
}

func ofLinesKind(word string) bool {
	k, ok := part.Of(word)
	return ok && k.Lines != nil
}
