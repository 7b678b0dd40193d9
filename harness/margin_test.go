package harness_test

import (
	"context"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/diag"
)

// starved is a starter whose solenoid has 8.4 V, and needs 8 x 284.5/254.5 V
// in its place of 50 C: the coil has that much more resistance than at 20 C.
const starved = `draft 1
harness system 12V profile road
battery G1 cca 600A grounds-to frame
starter M1 grounds-to frame draws 140A pull-in 40A 8V hold 10A 3V
fuse F1 30A from G1 6in
switch S1 closed when crank
wire 1 G1.+ M1.B 2AWG 3ft
wire 2 G1.+ F1.1 6in
wire 3 F1.2 S1.1 GAUGE 14ft
wire 4 S1.2 M1.S GAUGE 14ft
`

// A pull is held against pull-in volts, and a hold against release volts.
func TestMarginsOfAStarter(t *testing.T) {
	m := marginsOf(t, strings.ReplaceAll(starved, "GAUGE", "6AWG"))
	require.Equal(t, "engage", m[harness.MarginPull].Step)
	require.InDelta(t, 8*284.5/254.5, m[harness.MarginPull].Limit, 1e-6)
	require.Greater(t, m[harness.MarginPull].Got, m[harness.MarginPull].Limit)
	require.Equal(t, "crank", m[harness.MarginHold].Step)
	require.InDelta(t, 3*284.5/254.5, m[harness.MarginHold].Limit, 0.5, "a held coil is warmer by next to nothing")
	require.Greater(t, m[harness.MarginHold].Got, m[harness.MarginHold].Limit)

	m = marginsOf(t, strings.ReplaceAll(starved, "GAUGE", "16AWG"))
	require.Less(t, m[harness.MarginPull].Got, m[harness.MarginPull].Limit)
	require.NotContains(t, m, harness.MarginHold, "what is not in can't hold")
}

// The starter that stays out is one fault, not a load that is never on as
// well; with guessed volts or current it is a warning, and again the only one.
func TestStarvedSolenoidIsOneFinding(t *testing.T) {
	found := findingsOf(t, strings.ReplaceAll(starved, "GAUGE", "16AWG"))
	require.Equal(t, map[string]diag.Severity{"solenoid-starved": diag.Fault, "fuse-above-wire": diag.Warning}, worstByRule(found))
	for _, figures := range []string{"pull-in 40A hold 10A", "pull-in 40A 8V", ""} {
		src := strings.ReplaceAll(strings.ReplaceAll(starved, "GAUGE", "18AWG"), "pull-in 40A 8V hold 10A 3V", figures)
		worst := worstByRule(findingsOf(t, src))
		require.Equal(t, diag.Warning, worst["solenoid-starved"], figures)
		require.NotContains(t, worst, "load-never-on", figures)
	}
}

// No margin under its limit stands beside an empty list of findings.
func TestNoMarginFailsInSilence(t *testing.T) {
	for _, rule := range check.Rules() {
		for _, src := range []string{rule.Bad, rule.Good} {
			if src == "" {
				continue
			}
			r, err := harness.Parse("x.draft", []byte(src)).Check(context.Background(), harness.Options{})
			require.NoError(t, err)
			for _, m := range r.Margins() {
				short := m.Got < m.Limit
				if m.Bound == diag.AtMost {
					short = m.Got > m.Limit
				}
				require.False(t, short && len(r.Findings) == 0, "%s: %s of %s", rule.ID, m.Check, m.Name)
			}
		}
	}
}

func marginsOf(t *testing.T, src string) map[string]harness.Margin {
	t.Helper()
	r, err := harness.Parse("x.draft", []byte(src)).Check(context.Background(), harness.Options{})
	require.NoError(t, err)
	list := map[string]harness.Margin{}
	for _, m := range r.Margins() {
		list[m.Check] = m
	}
	return list
}

func findingsOf(t *testing.T, src string) diag.List {
	t.Helper()
	r, err := harness.Parse("x.draft", []byte(src)).Check(context.Background(), harness.Options{})
	require.NoError(t, err)
	return r.Findings
}

func worstByRule(l diag.List) map[string]diag.Severity {
	worst := map[string]diag.Severity{}
	for _, f := range l {
		worst[f.Rule] = max(worst[f.Rule], f.Severity)
	}
	return worst
}
