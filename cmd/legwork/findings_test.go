package main

import (
	"encoding/json"
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
)

// least is a draft of one lamp; its parts are put between what a test adds.
const least = "battery G1 grounds-to frame\nfuse F1 10A\nswitch S1\nlamp P1 21W grounds-to frame\n" +
	"wire 1 G1.+ F1.1 6in\nwire 2 F1.2 S1.1\nwire 3 S1.2 P1.1\n"

// Silence about a draft of nothing would read as a pass.
func TestNothingToCheck(t *testing.T) {
	for _, src := range []string{"", "# a comment alone\n", "place bay 60C\nmetal frame\n"} {
		for _, args := range []string{"check -", "check - --format json", "list - cut", "draw - schematic"} {
			got := legworkIn(t, src, strings.Fields(args)...)
			require.Equal(t, exitFindings, got.code, args)
			require.Contains(t, got.out+got.err, "there is nothing to check", args)
		}
	}
}

// A draft without a battery is told so once, however many loads it has.
func TestNoBattery(t *testing.T) {
	src := "metal frame\n"
	for i := range 5 {
		src += fmt.Sprintf("splice Z%d\nlamp P%d 21W grounds-to frame\nwire %d Z%d P%d.1\n", i, i, i+1, i, i)
	}
	got := legworkIn(t, src, "check", "-")
	require.Equal(t, exitFindings, got.code)
	require.Equal(t, 1, strings.Count(got.out, "no battery and no alternator"), got.out)
	require.NotContains(t, got.out, "[load-without-feed]")
	require.NotContains(t, legworkIn(t, least, "check", "-").out, "no battery")
}

// What is no text can't be read, as the help says of code 2.
func TestUnreadableIsUsage(t *testing.T) {
	workshop(t)
	for src, want := range map[string]string{
		"\xff\xfeb\x00a\x00": "UTF-16", strings.Repeat("\x00\x01\x02PK", 30): "no text file",
	} {
		require.NoError(t, os.WriteFile("odd.draft", []byte(src), 0o644))
		for _, args := range []string{"check odd.draft", "check odd.draft --format json", "list odd.draft cut", "tidy odd.draft"} {
			got := legwork(t, strings.Fields(args)...)
			require.Equal(t, exitUsage, got.code, args)
			require.Empty(t, got.out, args)
			require.Contains(t, got.err, "can't read odd.draft: ", args)
			require.Contains(t, got.err, want, args)
		}
		require.Equal(t, exitUsage, legworkIn(t, src, "check", "-").code)
	}
	got := legwork(t, "check", "")
	require.Equal(t, exitUsage, got.code)
	require.Contains(t, got.err, "no draft is named")
}

// Many findings are counted, not printed; the counts and JSON have all.
func TestFewFindingsArePrinted(t *testing.T) {
	src := least
	for i := range 150 {
		src += fmt.Sprintf("wire %d F1.2 X%d.1\n", i+10, i)
	}
	few, all := legworkIn(t, src, "check", "-"), legworkIn(t, src, "check", "-", "--all")
	require.Equal(t, fewAlike, strings.Count(few.out, "[draft-name]\n"))
	require.Equal(t, 150, strings.Count(all.out, "[draft-name]\n"))
	require.Contains(t, few.out, "\nand 130 more: 130 draft-name; check --all shows them\n")
	for _, out := range []string{few.out, all.out} {
		require.Contains(t, out, "Does not pass: 0 dangers, 150 faults, ")
	}
	var report struct {
		Findings []any `json:"findings"`
	}
	require.NoError(t, json.Unmarshal([]byte(legworkIn(t, src, "check", "-", "--format", "json").out), &report))
	require.Len(t, report.Findings, 150)
}

// Where somebody said how wide the terminal is, every line of prose keeps to
// it.
func TestFindingsKeepToTheWidth(t *testing.T) {
	t.Setenv("COLUMNS", "40")
	for line := range strings.Lines(legworkIn(t, strings.Replace(least, "6in", "10ft", 1), "check", "-").out) {
		require.LessOrEqual(t, diag.Columns(strings.TrimRight(line, "\n")), 40, line)
	}
}

// What carries next to nothing is no near limit.
func TestIdleIsNoMargin(t *testing.T) {
	src := strings.Replace(least, "switch S1", "switch S1 open", 1)
	got := legworkIn(t, src, "check", "-")
	require.NotContains(t, got.out, "carries 0 A")
	require.NotContains(t, got.out, "to carry 0")
	require.Contains(t, legworkIn(t, least, "check", "-").out, "wire 2 has to carry ")
}
