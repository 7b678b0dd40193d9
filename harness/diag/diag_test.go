package diag

import (
	"encoding/json"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestSeverityWords(t *testing.T) {
	for _, s := range []Severity{Note, Warning, Fault, Danger} {
		back, ok := ParseSeverity(s.String())
		require.True(t, ok)
		require.Equal(t, s, back)
	}
	for _, word := range []string{"invalid", "", "Fault", "error"} {
		_, ok := ParseSeverity(word)
		require.False(t, ok, word)
	}
	require.Equal(t, "invalid", Severity(0).String())
	require.Equal(t, "invalid", Severity(9).String())
}

func TestSortDoesNotDependOnOrderFound(t *testing.T) {
	at := func(file string, line, col int) Span { return Span{File: file, Line: line, Col: col} }
	want := List{
		{At: at("a", 1, 2), Severity: Note, Rule: "z"},
		{At: at("a", 1, 5), Severity: Danger, Rule: "b"},
		{At: at("a", 1, 5), Severity: Note, Rule: "a", Msg: "1"},
		{At: at("a", 1, 5), Severity: Note, Rule: "a", Msg: "2"},
		{At: at("a", 3, 1), Severity: Danger},
		{At: at("b", 1, 1), Severity: Danger},
	}
	for turn := range want {
		got := slices.Concat(want[turn:], want[:turn])
		slices.Reverse(got)
		got.Sort()
		require.Equal(t, want, got)
	}
	require.Equal(t, Danger, want.Worst())
	require.Equal(t, Severity(0), List(nil).Worst())
	require.Len(t, slices.Collect(want.AtLeast(Warning)), 3)
}

func TestJSONHasEveryKey(t *testing.T) {
	full := Finding{
		Rule: "drop-over-limit", Severity: Fault,
		At:  Span{File: "t.draft", Line: 3, Col: 5, End: 8, Off: 40, EndOff: 43},
		Msg: "P1 gets 9 V", Detail: "why",
		Values: []Value{
			{Name: "drop", Got: 4.5, Limit: 3, Unit: "%", Bound: AtMost},
			{Name: "shown", Got: math.Inf(1), Unit: "V"},
		},
		Related: []Related{{At: Span{File: "t.draft", Line: 9, Col: 1}, Msg: "here"}},
		Fix:     &Fix{Msg: "make it 10AWG", Edits: []Edit{{At: Span{File: "t.draft", Line: 3, Col: 5, Off: 40, EndOff: 43}, Text: "10AWG"}}},
	}
	got, err := json.Marshal(List{full, {Severity: Note}})
	require.NoError(t, err)
	require.JSONEq(t, `[
	 {"rule":"drop-over-limit","severity":"fault","file":"t.draft","line":3,"column":5,
	  "message":"P1 gets 9 V","detail":"why",
	  "values":[{"name":"drop","got":4.5,"limit":3,"unit":"%","bound":"at most"},
	            {"name":"shown","got":null,"limit":null,"unit":"V","bound":""}],
	  "related":[{"file":"t.draft","line":9,"column":1,"message":"here"}],
	  "fix":{"message":"make it 10AWG","edits":[{"file":"t.draft","line":3,"column":5,"start":40,"end":43,"text":"10AWG"}]}},
	 {"rule":"","severity":"note","file":"","line":0,"column":0,"message":"","detail":"",
	  "values":[],"related":[],"fix":null}]`, string(got))

	got, err = json.Marshal(List(nil))
	require.NoError(t, err)
	require.Equal(t, "[]", string(got))
}

func TestNearest(t *testing.T) {
	kinds := []string{"alternator", "battery", "fuse", "relay", "lamp", "motor", "module", "crank", "prime", "off", "K1", "K11", "87a"}
	tests := []struct{ word, want string }{
		{"relay", "relay"},
		{"RELAY", "relay"}, // case is no slip
		{"realy", "relay"}, // a swap is one slip
		{"relais", "relay"},
		{"fues", "fuse"},
		{"crnk", "crank"},
		{"altenator", "alternator"},
		{"aletrnattor", "alternator"},
		{"batttttery", "battery"},
		{"battttttery", ""}, // four slips
		{"lmap", "lamp"},
		{"k1", "K1"},
		{"k2", ""}, // too short to guess
		{"87A", "87a"},
		{"of", ""},
		{"offf", "off"},
		{"moter", "motor"},
		{"zzzzz", ""},
		{"", ""},
		{strings.Repeat("x", 1000), ""},
	}
	for _, tt := range tests {
		require.Equal(t, tt.want, Nearest(tt.word, kinds), tt.word)
		turned := slices.Clone(kinds)
		slices.Reverse(turned)
		require.Equal(t, tt.want, Nearest(tt.word, turned), "%s, other order", tt.word)
	}
	require.Empty(t, Nearest("relay", nil))
	require.Equal(t, "interconnection", Nearest("inteconectoin", []string{"interconnection"}), "three slips")
	require.Empty(t, Nearest("inteconectoim", []string{"interconnection"}), "four slips are too many for any word")
	require.Equal(t, "wire-a", Nearest("wire-c", []string{"wire-b", "wire-a"}), "first by alphabet")
}
