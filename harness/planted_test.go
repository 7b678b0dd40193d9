package harness_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/diag"
)

// answer is what one mistake has to be answered with: its line counted from the
// first planted one, its column, its rule, and the beginning of the message.
type answer struct {
	line, col int
	rule      string
	says      string
}

// mistake is lines that are planted at the end of a sound draft, and all that
// may be said of them.
type mistake struct {
	name, lines string
	want        []answer
}

// bench is sound (invented).
const bench = `draft 1
harness "Bench rig" system 12V profile road units us
place bay "Bay" 85C wet
place dash "Dash" 50C
leg bay dash 35in tape
metal frame
stud E1 on frame at bay M8
battery G1 at bay cca 540A
fuse F1 15A at bay from G1 6in
switch S1 at dash closed when run
relay K1 at dash coil 85ohm
lamp P1 21W at bay grounds-to frame
module A1 at dash
  BAT feed 0.4A always
  OUT low-side 0.5A when run, crank
  GND ground
wire 1 G1.+ F1.1 6in
`

func TestBenchIsSound(t *testing.T) {
	require.Empty(t, harness.Parse("x.draft", []byte(bench)).Findings)
}

// Every planted mistake is told, where it is and by what was expected, and
// nothing besides it: reading goes on without being led astray.
func TestPlantedMistakes(t *testing.T) {
	all := slices.Concat(halfMistakes, pasteMistakes, wordsMistakes)
	require.GreaterOrEqual(t, len(all), 80)
	first := strings.Count(bench, "\n")
	for _, c := range all {
		t.Run(c.name, func(t *testing.T) {
			src := bench + c.lines + "\n"
			found := harness.Parse("x.draft", []byte(src)).Findings
			require.Len(t, found, len(c.want), "%v", found)
			for i, w := range c.want {
				f := found[i]
				require.Equal(t, w, answer{f.At.Line - first, f.At.Col, f.Rule, cutTo(f.Msg, w.says)}, f.Msg)
				require.GreaterOrEqual(t, f.Severity, diag.Fault)
				require.LessOrEqual(t, f.At.EndOff, len(src))
			}
		})
	}
}

func cutTo(msg, says string) string {
	if strings.HasPrefix(msg, says) {
		return says
	}
	return msg
}

// All planted mistakes in one draft, each with names of its own, are all answer
// and none besides: as many findings on each line as when it stood alone.
func TestAllPlantedMistakesAtOnce(t *testing.T) {
	// These speak of the whole file, or of a name that is there once.
	alone := []string{"merge", "tab indent", "quoted cells", "unknown device", "unknown terminal", "two in one", "l for 1", "prose", "deep indent", "odd indent"}
	src, want := bench, map[int]int{}
	for i, c := range slices.Concat(halfMistakes, pasteMistakes, wordsMistakes) {
		if slices.Contains(alone, c.name) {
			continue
		}
		first := strings.Count(src, "\n")
		for _, w := range c.want {
			want[first+w.line]++
		}
		src += strings.ReplaceAll(c.lines, "9", fmt.Sprintf("9%d", i+10)) + "\n"
	}
	require.Greater(t, len(want), 70)
	got := map[int]int{}
	for _, f := range harness.Parse("x.draft", []byte(src)).Findings {
		got[f.At.Line]++
		if want[f.At.Line] == 0 {
			t.Errorf("not planted: %s", f)
		}
	}
	require.Equal(t, want, got)
}
