package harness

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/draft"
)

// cursor finds the mark ^ in a draft, takes it out, and gives its place.
func cursor(t testing.TB, marked string) (d *Draft, line, col int) {
	t.Helper()
	before, after, found := strings.Cut(marked, "^")
	require.True(t, found)
	line = strings.Count(before, "\n") + 1
	col = len([]rune(before[strings.LastIndexByte(before, '\n')+1:])) + 1
	return Parse("x.draft", []byte(before+after)), line, col
}

func shipped(t testing.TB, name string) string {
	t.Helper()
	src, err := os.ReadFile("../testdata/" + name + ".draft")
	require.NoError(t, err)
	return string(src)
}

// Hover on words of the small draft: the mark stands before the character
// that the pointer is on.
func TestHover(t *testing.T) {
	small := shipped(t, "small")
	for _, tt := range []struct{ at, word, want string }{
		{"^relay     K4", "relay", "relay NAME"},
		{"relay     ^K4", "K4", "relay K4 \"Start relay\" at dash in A2"},
		{"coil ^90ohm", "90ohm", "resistance of the coil"},
		{"pull-in 6.5V ^8V  contact 40A", "8V", "pull-in"},
		{"contact ^40A", "40A", "resistive"},
		{"draws 8.5A ^13.5V", "13.5V", "draws"},
		{"13.5V ^sheet", "sheet", "maker's sheet"},
		{"needs 8V ^when crank", "when", "steps"},
		{"needs 8V when ^crank", "crank", "engage, crank"},
		{"when prime, cr^ank", "crank", "step crank: engage, crank"},
		{"F1  80A  at ^bay", "bay", "place bay \"Engine bay\": 85 C, wet"},
		{"80A  at bay  bolt-^down", "bolt-down", "bolt-down"},
		{"bolt-down  ^from G1", "from", "measured"},
		{"bolt-down  from ^G1", "G1", "battery G1"},
		{"stud  E1  on ^block", "block", "metal block \"Engine block\""},
		{"^PUMP  low-side", "PUMP", "A1.PUMP"},
		{"PUMP  ^low-side", "low-side", "output that joins its load to ground"},
		{"asleep 2mA  ^always", "always", "step always: off"},
		{"  ^acc    B ACC", "acc", "POSITION TERMINAL"},
		{"  acc    ^B ACC", "B", "S1.B (BATT, BAT, 30): feed"},
		{"half cab   ^sockets", "sockets", "sockets"},
		{"bus ^BAT  F3.1", "BAT", "bus BAT of box A2"},
		{"half ^rear  pins", "rear", "half rear of connector X2"},
		{"bus BAT  F3.1 F4.^1", "F4.1", "fuse F4 \"Key\""},
		{"wire ^202", "202", "202: K1.87 to X2.cab.1, circuit pump"},
		{"wire 202  ^K1.87", "K1.87", "K1.87 (NO)"},
		{"wire 202  ^K1.87", "K1.87", "wires: 202"},
		{"E1      ^2AWG", "2AWG", "2 AWG has"},
		{"A1.BAT  ^RD/WH", "RD/WH", "color RD with a tracer WH"},
		{"circuit ^pump", "pump", "circuit pump \"Lift pump\": 6 wires"},
		{"drop ^3%  color GN/WH", "3%", "share of the system's volts"},
		{"profile ^road", "road", "road: "},
		{"^leg   bay   dash", "leg", "leg PLACE PLACE"},
		{"ground-wanted ^block", "block", "metal block"},
		{"K4  \"^Start relay\"", "\"Start relay\"", "label"},
		{"X2.cab.1\n  ^wire 203", "wire", "wire NUMBER END END"},
	} {
		require.Equal(t, 1, strings.Count(small, strings.ReplaceAll(tt.at, "^", "")), "%q is not once in the draft", tt.at)
		d, line, col := cursor(t, strings.Replace(small, strings.ReplaceAll(tt.at, "^", ""), tt.at, 1))
		text, at, ok := Hover(d, line, col)
		require.True(t, ok, tt.at)
		require.Contains(t, text, tt.want, tt.at)
		require.Equal(t, tt.word, string(d.File.Src[at.Off:at.EndOff]), tt.at)
		require.Equal(t, line, at.Line)
	}
}

func TestHoverIsSilent(t *testing.T) {
	for _, src := range []string{
		"lamp P1 21W ^ # nothing", "lamp P1 21W # com^ment", "^", "lamp P1 21W\n\n^", "lamp P1 ^blinking", "^bogus P1", "wire 1 ^K9.87 E1",
		"lamp P1 option ^none", "accept ^no-such-rule \"x\"",
	} {
		d, line, col := cursor(t, src)
		text, _, ok := Hover(d, line, col)
		require.False(t, ok, "%s: %s", src, text)
	}
	d, _, _ := cursor(t, "lamp P1^")
	for _, at := range [][2]int{{0, 1}, {-1, -1}, {2, 1}, {1, 0}, {1, 99}} {
		_, _, ok := Hover(d, at[0], at[1])
		require.False(t, ok)
	}
}

// Every word of the shipped drafts that legwork reads has something to tell:
// all but the texts of notes.
func TestHoverKnowsEveryWord(t *testing.T) {
	for _, name := range []string{"least", "small", "orchard-truck"} {
		d := Parse(name, []byte(shipped(t, name)))
		for s := range d.File.All() {
			places := []draft.Item{{Raw: s.Head.Raw, At: s.Head.At}}
			for _, it := range s.Items {
				if s.Word() != "note" && s.Word() != "draft" {
					places = append(places, it)
				}
			}
			for _, it := range places {
				_, _, ok := Hover(d, it.At.Line, it.At.Col)
				require.True(t, ok || s.Word() == "accept" && it.Quoted, "%s:%d: %s", name, s.Line, it.Raw)
			}
		}
	}
}

func TestCompletionAfterForgetting(t *testing.T) {
	d, line, col := cursor(t, "part relay small coil 85ohm\nrelay K1 part ^")
	d.Forget()
	require.Equal(t, []string{"small"}, texts(d, line, col))
	_, _, ok := Hover(d, 1, 1)
	require.True(t, ok)
}

func texts(d *Draft, line, col int) []string {
	var out []string
	for _, c := range Complete(d, line, col) {
		out = append(out, c.Text)
	}
	return out
}

// What stands at the mark of an unfinished line behind the small draft: words
// that have to be offered, and words that must not.
func TestComplete(t *testing.T) {
	small := shipped(t, "small")
	for _, tt := range []struct {
		line      string
		has, lack string
	}{
		{"^", "wire relay circuit part include", "core half feed plug 85ohm"},
		{"  wire 207 K1.30 E1 ^", "TXL RD via option existing", "coil draws prime at"},
		{"mo^", "motor module", "relay metal"},
		{"  ^", "wire strap splice together note", "relay place core motor"},
		{"relay K9 ^", "coil pull-in contact suppress at in option part", "grounds-to draws when K1"},
		{"relay K9 c^", "coil contact", "pull-in"},
		{"relay K9 coil 85ohm ^", "pull-in guess sheet measured", "coil"},
		{"relay K9 coil 85^", "85ohm 85mohm 85kohm", "85A 85V"},
		{"relay K9 suppress ^", "diode resistor zener", "coil none-such"},
		{"relay K9 at ^", "bay dash rail tank bay-dash", "E1 frame"},
		{"relay K9 in ^", "A2", "A1 bay"},
		{"stud E9 on ^", "block frame", "bay"},
		{"motor M9 needs 8V when ^", "prime crank run always", "bay"},
		{"motor M9 needs 8V when prime, cr^", "crank crank-only", "prime"},
		{"motor M9 grounds-to fr^", "frame", "block"},
		{"fuse F9 bolt-down from G1.^", "G1.+ G1.- G1.POS", "K1.87"},
		{"wire 9 K1.^", "K1.87 K1.NO K1.30", "K4.87"},
		{"wire 9 K1.8^", "K1.87 K1.86 K1.85", "K1.30 K1.NO"},
		{"wire 9 X2.re^", "X2.rear.1 X2.rear.6", "X2.cab.1"},
		{"wire 9 E1 ^", "K1. K4. E2 X2.", "E1. bay"},
		{"wire 9 E1 K1.87 14AWG RD/^", "RD/WH RD/BK", "WH RD"},
		{"wire 9 E1 K1.87 via bay, ^", "dash rail", "K1."},
		{"leg bay ^", "dash rail tank", "E1 frame"},
		{"harness \"x\" system 12V ^", "profile units", "system"},
		{"harness \"x\" profile ^", "road boat", "us"},
		{"step night like ^", "running off", "always"},
		{"accept ^", "unprotected-wire drop-over-limit", "wire"},
		{"part ^", "relay fuse connector", "wire"},
		{"module A9\n  ^", "plug note accept", "wire half"},
		{"module A9\n  BAT ^", "feed ground low-side", "when always"},
		{"module A9\n  BAT feed 1A ^", "asleep above holds when always at", "BAT"},
		{"module A9\n  BAT feed\n  OUT high-side fed-by ^", "BAT", "frame"},
		{"module A9\n  plug P 3way\n  BAT feed at P.2\n  IGN feed at ^", "P.1 P.3", "P.2"},
		{"keyswitch S9\n  ^", "off acc run gap crank", "B"},
		{"keyswitch S9\n  run ^", "B ACC IGN 30", "off"},
		{"connector X9 6way\n  half a ^", "pins sockets", "sealed"},
		{"connector X9 6way\n  ^", "half spare", "bus wire"},
		{"box A9\n  bus M ^", "F3. F4.", "bay"},
		{"cable 300\n  ^", "core drain", "wire"},
		{"together K1.87 ^", "202 204", "K1."},
	} {
		d, line, col := cursor(t, small+tt.line)
		got := texts(d, line, col)
		for _, w := range strings.Fields(tt.has) {
			require.Contains(t, got, w, tt.line)
		}
		for _, w := range strings.Fields(tt.lack) {
			require.NotContains(t, got, w, tt.line)
		}
	}
}

func TestCompleteIsSilent(t *testing.T) {
	for _, src := range []string{
		"lamp P1 \"21^", "lamp P1 # wh^", "lamp ^", "wire ^", "note ^", "bogus ^", "include \"sh^", "lamp P1 21^\n# \"", "draft 1\nmetal ^",
	} {
		d, line, col := cursor(t, src)
		got := texts(d, line, col)
		if strings.HasPrefix(src, "lamp P1 21^") {
			require.Equal(t, []string{"21mW", "21W", "21kW"}, got, src)
			continue
		}
		require.Empty(t, got, src)
	}
	d, _, _ := cursor(t, "lamp P1^")
	for _, at := range [][2]int{{0, 1}, {-1, -1}, {9, 1}, {1, 0}, {1, 99}} {
		require.Empty(t, Complete(d, at[0], at[1]))
	}
}

// A candidate replaces what is typed, also behind signs of several bytes.
func TestCandidatesReplaceWhatIsTyped(t *testing.T) {
	d, line, col := cursor(t, "place bay\nlamp P1 \"caf\u00e9\" at b^")
	list := Complete(d, line, col)
	require.Len(t, list, 1)
	at := list[0].At
	require.Equal(t, "b", string(d.File.Src[at.Off:at.EndOff]))
	require.Equal(t, 2, at.Line)
	require.Equal(t, at.Col+1, at.End)
	require.NotEmpty(t, list[0].Doc)
}

// Taken where it is offered, a word of a statement that can be read alone is
// read: no draft is told to be wrong by what completion wrote.
func TestCompletedWordsAreRead(t *testing.T) {
	for _, start := range []string{"relay K1 ", "motor M1 ", "fuse F1 10A ", "switch S1 ", "battery G1 ", "lamp P1 "} {
		for _, c := range Complete(Parse("x.draft", []byte(start)), 1, len(start)+1) {
			d := Parse("x.draft", []byte(start+c.Text+"\n"))
			for _, f := range d.Findings {
				require.NotContains(t, f.Msg, "has no setting", start+c.Text)
			}
		}
	}
}

// A key is pressed every tenth of a second: on 10,000 wires hover and
// completion have to be done in far less.
func BenchmarkCompleteLarge(b *testing.B) {
	var src strings.Builder
	src.WriteString("battery G1\nfuse F1\n")
	for i := range 10_000 {
		fmt.Fprintf(&src, "wire %d G1.+ F1.1\n", i)
	}
	src.WriteString("wire 99999 G1.")
	d := Parse("x.draft", []byte(src.String()))
	for b.Loop() {
		require.NotEmpty(b, Complete(d, 10_003, 15))
	}
}

// Wherever the cursor stands in whatever text, nothing falls over.
func FuzzEditor(f *testing.F) {
	f.Add("relay K1 coil 85ohm at bay\n  when", 1, 12)
	f.Add("module A1\n BAT feed when \"x\", #\n part module\n", 2, 16)
	f.Add("keyswitch \n\tgap ,\n\t\u00e9 B", 2, 6)
	f.Add("part \"relay\" .x.\nwire 1 a.b.c..", 2, 14)
	f.Add("module\n A feed at ", 2, 12)
	f.Fuzz(func(t *testing.T, src string, line, col int) {
		d := Parse("x.draft", []byte(src))
		for _, c := range Complete(d, line, col) {
			require.True(t, c.At.Off >= 0 && c.At.EndOff <= len(src) && c.At.Off <= c.At.EndOff)
		}
		if text, at, ok := Hover(d, line, col); ok {
			require.NotEmpty(t, text)
			require.Equal(t, line, at.Line)
		}
	})
}
