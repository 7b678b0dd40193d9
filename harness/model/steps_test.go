package model_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/model"
	"legwork/harness/part"
)

func stepNames(m *model.Model) []string {
	var names []string
	for _, s := range m.Steps {
		names = append(names, s.Name)
	}
	return names
}

// The eleven usual steps, their keys and engines: the design page, section 5.
func TestUsualSteps(t *testing.T) {
	m, _ := model.Build(parse(t, base))
	require.Equal(t, []string{"off", "acc", "prime", "koeo", "gap", "engage", "crank", "running", "stalled", "coast", "rest"}, stepNames(m))
	for i, s := range m.Steps {
		require.Equal(t, i, s.ID)
	}
	require.Equal(t, part.Locked, m.Steps[5].Engine)
	require.Equal(t, "crank", m.Steps[5].Key)
	require.Equal(t, 0.050, m.Steps[4].LastS) // 50 ms when no key says its gap
}

func TestWordsOfStepLists(t *testing.T) {
	m, found := model.Build(parse(t, base+"step idle \"Idling\" like running\nstep hot like prime after koeo engine still\n"))
	require.Empty(t, found)
	for word, want := range map[string][]string{
		"prime":      {"prime", "hot"},
		"running":    {"running", "idle"},
		"idle":       {"idle"},
		"crank":      {"engage", "crank"},
		"crank-only": {"crank"},
		"run":        {"prime", "koeo", "hot", "running", "idle", "stalled"},
		"off":        {"off"},
		"always":     stepNames(m),
	} {
		set, unknown := m.StepsOf([]string{word})
		require.Empty(t, unknown)
		require.Equal(t, steps(m, want...), set, word)
	}
	set, unknown := m.StepsOf([]string{"prime", "nonsense", "rest"})
	require.Equal(t, []string{"nonsense"}, unknown)
	require.Equal(t, steps(m, "prime", "hot", "rest"), set)
}

func TestAddedAndChangedSteps(t *testing.T) {
	cases := []struct {
		name, lines string
		want        []string // from acc to stalled, in order
	}{
		{"like: behind it", "step idle like running", []string{"acc", "prime", "koeo", "gap", "engage", "crank", "running", "idle", "stalled"}},
		{"like a later one", "step turning like braking\nstep braking like running", []string{"acc", "prime", "koeo", "gap", "engage", "crank", "running", "braking", "turning", "stalled"}},
		{"after a later one", "step turning like koeo after braking\nstep braking like running", []string{"acc", "prime", "koeo", "gap", "engage", "crank", "running", "braking", "turning", "stalled"}},
		{"after", "step idle like running after prime", []string{"acc", "prime", "idle", "koeo", "gap", "engage", "crank", "running", "stalled"}},
		{"neither: after running", "step idle key acc", []string{"acc", "prime", "koeo", "gap", "engage", "crank", "running", "idle", "stalled"}},
		{"changed in place", "step koeo key acc", []string{"acc", "prime", "koeo", "gap", "engage", "crank", "running", "stalled"}},
		{"moved", "step acc after koeo", []string{"prime", "koeo", "acc", "gap", "engage", "crank", "running", "stalled"}},
		{"moved back", "step running after acc", []string{"acc", "running", "prime", "koeo", "gap", "engage", "crank", "stalled"}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			m, found := model.Build(parse(t, base+c.lines+"\n"))
			require.Empty(t, found)
			names := stepNames(m)
			require.Equal(t, c.want, names[1:len(names)-2])
		})
	}
	m, _ := model.Build(parse(t, base+"step koeo key acc engine turning\n"))
	require.Equal(t, "acc", m.Steps[3].Key)
	require.Equal(t, part.Turning, m.Steps[3].Engine)
	require.False(t, m.Steps[3].Added)
}
