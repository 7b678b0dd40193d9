package solve

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
)

// build reads a draft and refuses one that has a mistake.
func build(t testing.TB, text string) *model.Model {
	t.Helper()
	f, found := draft.Parse("test.draft", []byte(dedent(text)))
	m, more := model.Build(f)
	for x := range append(found, more...).AtLeast(diag.Fault) {
		require.Fail(t, x.String())
	}
	return m
}

// dedent takes away the indent that a draft has in the source of a test.
func dedent(text string) string {
	lines := strings.Split(strings.TrimPrefix(text, "\n"), "\n")
	indent := lines[0][:len(lines[0])-len(strings.TrimLeft(lines[0], "\t "))]
	for i := range lines {
		lines[i] = strings.TrimPrefix(lines[i], indent)
	}
	return strings.TrimRight(strings.Join(lines, "\n"), "\t\n") + "\n"
}

// alike gives every wire the same resistance of copper.
func alike(m *model.Model, ohm float64) []Conductor {
	wires := make([]Conductor, len(m.Wires))
	for i := range wires {
		wires[i] = Conductor{Ohm: ohm, TempC: 60}
	}
	return wires
}

// play plays a case and checks what must hold in every state.
func playCase(t testing.TB, m *model.Model, wires []Conductor, c Case) *History {
	t.Helper()
	h, err := Run(t.Context(), m, wires, c)
	require.NoError(t, err)
	require.Empty(t, h.Findings)
	require.Len(t, h.States, len(m.Steps))
	for _, s := range h.States {
		if s.Skipped == "" {
			require.True(t, s.Met, s.Step.Name)
		}
	}
	return h
}

// volts reads a terminal that must not float.
func volts(t testing.TB, h *History, step, terminal string) float64 {
	t.Helper()
	at, ok := h.Model.TerminalByName(terminal)
	require.True(t, ok, terminal)
	s := h.Step(step)
	require.NotNil(t, s, step)
	r := s.Reading(at)
	require.True(t, r.OK, "%s in %s: %s", terminal, step, r.Reason)
	return r.Volts
}

// relay gives where a device's state stands in a step.
func relay(t testing.TB, h *History, step, device string) RelayState {
	t.Helper()
	i := h.RelayOf(device)
	require.GreaterOrEqual(t, i, 0, device)
	return h.Step(step).Relay[i]
}

// hot is the case that most tests play.
var hot = Case{Corner: part.HotSoak, Grade: part.Sure}
