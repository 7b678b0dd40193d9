package main

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
)

func TestCheckOfShippedDrafts(t *testing.T) {
	workshop(t)
	for _, name := range faultless {
		got := legwork(t, "check", name)
		require.Equal(t, exitClean, got.code, got.out)
		require.Empty(t, got.err)
		require.Contains(t, got.out, "Passes: 0 dangers, 0 faults, ")
		require.Contains(t, got.out, "Not looked at: ")
		require.Contains(t, got.out, "Before power: battery off")
		require.NotContains(t, got.out, "\x1b", "color only on a terminal")
		require.NotContains(t, got.out, "NaN")
	}
}

// Every planted fault of the faulty truck is printed, and it does not pass.
func TestCheckOfTheFaultyTruck(t *testing.T) {
	workshop(t)
	got := legwork(t, "check", "orchard-truck-faults.draft")
	require.Equal(t, exitFindings, got.code)
	require.Contains(t, got.out, "\nDoes not pass: ")
	for line := range strings.Lines(get(t, "orchard-truck-faults.draft")) {
		if _, want, ok := strings.Cut(line, "# want "); ok {
			rule, _, _ := strings.Cut(strings.TrimSpace(want), " ")
			require.Contains(t, got.out, "["+rule+"]\n")
		}
	}
}

func TestFailAtMovesTheVerdict(t *testing.T) {
	workshop(t)
	// The small draft has a warning (its charge cable has no fuse), no fault.
	for _, row := range []struct {
		failAt, verdict string
		code            int
	}{
		{"danger", "Passes: ", exitClean}, {"fault", "Passes: ", exitClean},
		{"warning", "Does not pass: ", exitFindings}, {"note", "Does not pass: ", exitFindings},
	} {
		got := legwork(t, "check", "small.draft", "--fail-at", row.failAt)
		require.Equal(t, row.code, got.code, row.failAt)
		require.Contains(t, got.out, row.verdict+"0 dangers, 0 faults, 1 warning, ", row.failAt)
		require.Equal(t, row.code, legwork(t, "check", "small.draft", "--fail-at", row.failAt, "--format", "json").code)
	}
}

// The summary of the truck is one screen of 24 lines at the usual width, and
// no line of it is wider than the terminal.
func TestSummaryIsOneScreen(t *testing.T) {
	workshop(t)
	for _, width := range []int{100, 60, 40} {
		t.Setenv("COLUMNS", fmt.Sprint(width))
		got := legwork(t, "check", "orchard-truck.draft")
		_, summary, ok := strings.Cut(got.out, "\nOrchard truck: injection conversion\n")
		require.True(t, ok, got.out)
		lines := strings.Split(strings.TrimRight(summary, "\n"), "\n")
		if width == 100 {
			require.LessOrEqual(t, len(lines)+1, 24, summary)
		}
		for _, line := range lines {
			require.LessOrEqual(t, diag.Columns(line), width, line)
		}
	}
}

func TestMarginsReadAsSentences(t *testing.T) {
	workshop(t)
	out := legwork(t, "check", "small.draft").out
	require.Regexp(t, `\n  drop: M2 in prime loses \d+ mV, 360 mV allowed\n`, out)
	require.Regexp(t, `\n  protection: wire 102 sits behind 80 A, 81.1 A allowed\n`, out, "6 AWG at 85 C: 125 sqrt(40/95)")
	require.Regexp(t, `\n  fuse load: F3 in \w+ carries 8.5 A, 12 A allowed\n`, out, "80 % of 15 A")
	require.Regexp(t, `\n  pull-in: \w+ in (engage|crank) gets [\d.]+ V, [\d.]+ V needed\n`, out)
}

func TestGuessesAreGathered(t *testing.T) {
	workshop(t)
	out := legwork(t, "check", "orchard-truck.draft").out
	require.Contains(t, out, "\n  draw of B3, B4: 10 mA\n")
	// Twelve lamps of different power are twelve lines of guesses.
	var b strings.Builder
	b.WriteString("draft 1\nbattery G1 cca 500A grounds-to frame\nmetal frame\n")
	for i := range 12 {
		fmt.Fprintf(&b, "fuse F%d %dA from G1 6in\nlamp P%d 5W grounds-to frame\nwire %d G1.+ F%d.1 6in\nwire %d F%d.2 P%d.1 %dft\n", i, []int{5, 10}[i%2], i, i, i, i+100, i, i, i+1)
	}
	b.WriteString("motor M1 draws 3A 13V inrush 9A guess grounds-to frame\nmotor M2 draws 3A 13V inrush 8A guess grounds-to frame\n")
	for i := range 7 {
		fmt.Fprintf(&b, "motor M%d draws 3A 13V inrush %dA guess grounds-to frame\n", i+3, i+10)
	}
	short := legworkIn(t, b.String(), "check", "-").out
	all := legworkIn(t, b.String(), "check", "-", "--guesses").out
	require.Regexp(t, `\n  and \d+ more: check --guesses shows them all\n`, short)
	require.NotContains(t, all, "more: check --guesses")
	require.Contains(t, all, "inrush of M9: 16 A")
	require.Equal(t, legworkIn(t, b.String(), "check", "-").code, legworkIn(t, b.String(), "check", "-", "--guesses").code)
}

func TestCheckFromStandardInput(t *testing.T) {
	workshop(t)
	file, piped := legwork(t, "check", "small.draft"), legworkIn(t, get(t, "small.draft"), "check", "-")
	require.Equal(t, strings.ReplaceAll(file.out, "small.draft:", "(standard input):"), piped.out)
	require.Equal(t, file.code, piped.code)
}

// Windows line ends and a byte-order mark change nothing but the file.
func TestLineEndsDontMatter(t *testing.T) {
	workshop(t)
	plain := get(t, "small.draft")
	for _, text := range []string{strings.ReplaceAll(plain, "\n", "\r\n"), "\ufeff" + plain, strings.TrimRight(plain, "\n")} {
		require.Equal(t, legworkIn(t, plain, "check", "-"), legworkIn(t, text, "check", "-"))
	}
}

func TestEmptyDrafts(t *testing.T) {
	workshop(t)
	for _, text := range []string{"", "\n", "# nothing yet\n# but this\n", "\r\n\r\n", "draft 1\n"} {
		for _, args := range []string{"check -", "check - --format json", "list - cut", "list - volts", "list - pins --format json", "tidy -"} {
			got := legworkIn(t, text, strings.Fields(args)...)
			require.LessOrEqual(t, got.code, exitFindings, "%q %s: %s", text, args, got.err)
		}
	}
}

func TestAllMistakesAtOnce(t *testing.T) {
	workshop(t)
	var b strings.Builder
	b.WriteString("draft 1\nbattery G1 grounds-to frame\n")
	for i := range 30 {
		fmt.Fprintf(&b, "wire %d G1.+ Nosuch%d.1\n", i+1, i)
	}
	put(t, "many.draft", b.String())
	got := legwork(t, "check", "many.draft", "--all")
	require.Equal(t, exitFindings, got.code)
	for i := range 30 {
		require.Contains(t, got.out, fmt.Sprintf("many.draft:%d:", i+3))
	}
	require.Contains(t, got.out, "Nothing was worked out and no rule ran")
	require.Regexp(t, `Does not pass: 0 dangers, \d+ faults`, got.out)
	// Papers, working and drawings have nothing to stand on: the mistakes are
	// told instead, on the error stream.
	for _, args := range []string{"list many.draft cut", "why many.draft 1", "draw many.draft schematic", "draw many.draft schematic -o out/"} {
		got := legwork(t, strings.Fields(args)...)
		require.Equal(t, exitFindings, got.code, args)
		require.Empty(t, got.out, args)
		require.Contains(t, got.err, "many.draft:3:", args)
	}
	require.NotContains(t, names(t, "."), "out")
}

// The keys of the JSON report are a promise.
func TestCheckJSON(t *testing.T) {
	workshop(t)
	put(t, "faulty.draft", faulty)
	put(t, "empty.draft", "")
	for _, name := range []string{"orchard-truck.draft", "small.draft", "least.draft", "faulty.draft", "empty.draft"} {
		got := legwork(t, "check", name, "--format", "json")
		var top map[string]json.RawMessage
		require.NoError(t, json.Unmarshal([]byte(got.out), &top), name)
		for _, key := range []string{"harness", "profile", "findings", "accepted", "guesses", "skipped_rules", "wires", "steps"} {
			require.Contains(t, top, key, name)
			require.NotEqual(t, "null", string(top[key]), "%s of %s", key, name)
		}
		for _, line := range listOf(t, top["findings"]) {
			for _, key := range []string{"rule", "severity", "file", "line", "column", "message", "values", "related"} {
				require.Contains(t, line, key, name)
			}
			require.Equal(t, name, line["file"])
			for _, v := range line["values"].([]any) {
				for _, key := range []string{"name", "got", "limit", "unit"} {
					require.Contains(t, v.(map[string]any), key)
				}
			}
		}
		for _, w := range listOf(t, top["wires"]) {
			for _, key := range []string{"number", "from", "to", "size", "area_mm2", "length_m", "max_current_a", "drop_v"} {
				require.Contains(t, w, key, name)
			}
			require.Greater(t, w["area_mm2"], 0.0)
			require.Greater(t, w["length_m"], 0.0)
		}
		for _, st := range listOf(t, top["steps"]) {
			require.Contains(t, st, "name")
			floating := st["floating"].(map[string]any)
			for terminal, v := range st["terminals"].(map[string]any) {
				require.NotEmpty(t, terminal, "every terminal has a name")
				require.Equal(t, v == nil, floating[terminal] != nil, "%s: null and a reason go together", terminal)
			}
		}
		if name == "faulty.draft" {
			require.Equal(t, exitFindings, got.code)
			require.NotEmpty(t, listOf(t, top["skipped_rules"]))
		}
	}
}

func listOf(t *testing.T, raw json.RawMessage) []map[string]any {
	t.Helper()
	var list []map[string]any
	require.NoError(t, json.Unmarshal(raw, &list))
	return list
}

// An accepted finding leaves the verdict, not the report.
func TestAcceptedIsTold(t *testing.T) {
	workshop(t)
	text := get(t, "small.draft") + "accept unprotected-wire \"the cable is short and sheathed\"\n"
	got := legworkIn(t, text, "check", "-", "--fail-at", "warning")
	require.Equal(t, exitClean, got.code, got.out)
	require.Contains(t, got.out, "Accepted by the draft (1)\n")
	require.Contains(t, got.out, "(the cable is short and sheathed)")
}

func TestProfileIsNamed(t *testing.T) {
	workshop(t)
	got := legwork(t, "check", "small.draft", "--profile", "boat")
	require.Contains(t, got.out, "profile boat")
}
