package main

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness/diag"
)

func TestWhyOfEverySort(t *testing.T) {
	workshop(t)
	for _, row := range []struct {
		name string
		want []string
	}{
		// 6 AWG in 85 C: 125 A x sqrt(40/95) = 81.1 A against the 80 A of F1.
		{"102", []string{"wire 102, F1.2 to A2.BAT: 6 AWG SGX (chosen; protection governs)",
			"leg bay-dash, 2 ft 11 in: 0.889 m [stated]", "Protection: 81.1 A, at least 80 A asked: passes, and governs",
			"Why not 8 AWG", "wire 102, protection: 80 A asked, it gives: 58.4 A"}},
		{"203", []string{"drop governs", "Loads on its way", "one size for wires 201, 202, 203, 204"}},
		{"100", []string{"given by the draft", "length as the draft gives it, 2 ft: 0.6096 m [stated]"}},
		{"91", []string{"strap 91, E1 to E2: 4 AWG SGX (given by the draft)"}},
		// 8.5 A on 15 A; a blade of 15 A has 4.8 mohm cold, 4.8 (1 + 0.42 x 0.3211) = 5.447 at that load.
		{"F3", []string{"fuse F3 (Pump)", "load / rating = 56.67 %", "= 5.447 mohm [blade-resistance]", "wire 203, 10 AWG"}},
		{"F1", []string{"a hint that counts only among usual figures"}},
		// 8 V at 20 C and a place of 50 C: 8 x 284.5/254.5 = 8.94 V.
		{"K1", []string{"relay K1 (Pump relay)", "surely in from: 8 V [stated]", "8.94", "not energized in off"}},
		{"K1.86", []string{"terminal K1.86", "wire 205 from S1.IGN", "cold start, sure figures V"}},
		{"M2", []string{"Drop of M2 in prime", "wire 203, 10 AWG: 8.5 A x", "the contact of K1: 8.5 A through it = 42.5 mV"}},
		{"A1", []string{"Awake, hot soak", "IGN, asks 8 V", "Drop of A1.IGN"}},
		{"M1", []string{"starter M1", "Drop of M1.B in crank", "surely in from: 8 V [solenoid-volts]"}},
		{"E1", []string{"stud E1", "Volts at its terminals"}},
		{"A2.BAT", []string{"terminal A2.BAT", "bus: F3.1, F4.1, F5.1, F6.1"}},
		{"X2.rear.6", []string{"terminal X2.rear.6", "nothing"}},
		{"pump", []string{"circuit pump (Lift pump)", "3 % [stated]", "203"}},
		{"supply", []string{"circuit supply", "10 % [drop-10]"}},
		{"wire 203", []string{"wire 203, X2.rear.1"}},
		{"terminal K1.86", []string{"terminal K1.86"}},
	} {
		got := legwork(t, append([]string{"why", "small.draft"}, strings.Fields(row.name)...)...)
		require.Equal(t, exitClean, got.code, "%s: %s", row.name, got.err)
		for _, want := range row.want {
			require.Contains(t, unwrapped(got.out), want, "%s:\n%s", row.name, got.out)
		}
		require.NotContains(t, got.out, "NaN", row.name)
		require.NotContains(t, got.out, "e-0", "%s: noise of the solver", row.name)
	}
}

// unwrapped undoes the line breaks of wrapped text.
func unwrapped(s string) string {
	return regexp.MustCompile(`\n {4,8}(\S)`).ReplaceAllString(s, " $1")
}

var cited = regexp.MustCompile(`\[([a-z0-9-]+)\]`)

// Every key in brackets is told of at the end, with its confidence; and every
// worked figure of a wire, a fuse and a relay of the truck has one or follows
// from the lines above it.
func TestWhyTellsEverySource(t *testing.T) {
	workshop(t)
	for _, name := range []string{"203", "102", "F3", "K1", "A1", "M2", "K1.86", "supply", "E1"} {
		out := legwork(t, "why", "orchard-truck.draft", name).out
		body, sources, _ := strings.Cut(out, "\n  Sources\n")
		told := map[string]bool{}
		for _, m := range cited.FindAllStringSubmatch(sources, -1) {
			told[m[1]] = true
			src, ok := gauge.SourceOf(m[1])
			require.True(t, ok, m[1])
			require.Contains(t, unwrapped(sources), "("+src.Where+", "+src.Confidence.String()+")")
		}
		for _, m := range cited.FindAllStringSubmatch(body, -1) {
			require.True(t, told[m[1]], "%s: %s is not told of", name, m[1])
			delete(told, m[1])
			told[m[1]] = true
		}
	}
}

// A name in two sets gives both; a set before it gives one.
func TestWhyOfANameInTwoSets(t *testing.T) {
	workshop(t)
	put(t, "twice.draft", `draft 1
metal frame
battery G1  grounds-to frame
fuse 1  10A  from G1 6in
lamp P1  21W  grounds-to frame
circuit 1 "Lamp"
  wire 1  G1.+  1.1  6in
  wire 2  1.2  P1.1  3ft
`)
	both := legwork(t, "why", "twice.draft", "1")
	require.Equal(t, exitClean, both.code, both.err)
	for _, title := range []string{"wire 1, G1.+ to 1.1", "circuit 1 (Lamp)", "fuse 1"} {
		require.Contains(t, both.out, title)
		set, _, _ := strings.Cut(title, " ")
		if set == "fuse" {
			set = "device"
		}
		one := legwork(t, "why", "twice.draft", set, "1")
		require.Equal(t, exitClean, one.code)
		require.True(t, strings.HasPrefix(one.out, title), one.out)
		require.NotContains(t, one.out, "\n\n"+"circuit", "one set only")
	}
	require.Equal(t, exitUsage, legwork(t, "why", "twice.draft", "circuit", "2").code)
}

// Wide tables are parted on a narrow terminal, texts wrapped.
func TestWhyOnANarrowTerminal(t *testing.T) {
	workshop(t)
	for _, width := range []int{40, 60, 100} {
		t.Setenv("COLUMNS", fmt.Sprint(width))
		for _, name := range []string{"203", "K1", "A1", "pump"} {
			for _, line := range strings.Split(legwork(t, "why", "orchard-truck.draft", name).out, "\n") {
				// A word, or a column beside the first one, may be wider than 40.
				if diag.Columns(line) > width && len(strings.Fields(line)) > 4 {
					require.Fail(t, "too wide", "%d: %q", width, line)
				}
			}
		}
	}
}

// Of a chosen size the next thinner one fails, or it is said why it is kept.
func TestEveryChosenWireOfTheTruckSaysWhyNotThinner(t *testing.T) {
	workshop(t)
	out := legwork(t, "list", "orchard-truck.draft", "cut", "--format", "csv").out
	checked := 0
	for _, line := range strings.Split(out, "\n")[1:] {
		number, _, _ := strings.Cut(line, ",")
		if number == "" {
			continue
		}
		why := legwork(t, "why", "orchard-truck.draft", "wire", number).out
		if !strings.Contains(why, "(chosen; ") {
			continue
		}
		_, reason, ok := strings.Cut(why, "\n  Why not ")
		require.True(t, ok, number)
		require.NotContains(t, reason, "nothing on its own way forbids it", number)
		checked++
	}
	require.Greater(t, checked, 90)
}
