package harness_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness"
)

// sensible checks what holds for every working: it has a title, every group
// holds something, every figure is finite, every source exists, every table
// row is as long as its heading.
func sensible(t *testing.T, w harness.Working) {
	t.Helper()
	require.NotEmpty(t, w.Title)
	require.NotEmpty(t, w.Groups, w.Title)
	for _, g := range w.Groups {
		require.NotEmpty(t, g.Title, w.Title)
		require.True(t, len(g.Steps) > 0 || g.Table != nil, "%s: %s is empty", w.Title, g.Title)
		for _, st := range g.Steps {
			require.False(t, math.IsNaN(st.Value) || math.IsInf(st.Value, 0), "%s: %s", w.Title, st.Text)
			if st.Source != "" {
				_, ok := gauge.SourceOf(st.Source)
				require.True(t, ok, "%s: %s", w.Title, st.Source)
			}
			require.False(t, st.Equation != "" && st.Unit != "" && st.Text == "", "%s: a figure without a name", w.Title)
		}
		if g.Table == nil {
			continue
		}
		require.NotEmpty(t, g.Table.Rows, "%s: %s", w.Title, g.Title)
		for _, r := range g.Table.Rows {
			require.Len(t, r, len(g.Table.Columns))
			for _, c := range r {
				require.False(t, c.IsNumber && (math.IsNaN(c.Number) || math.IsInf(c.Number, 0)), "%s: %s", w.Title, g.Title)
			}
		}
	}
}

// Every name of the truck has a working.
func TestEveryNameHasAWorking(t *testing.T) {
	r := truck(t)
	var names []string
	for _, w := range r.Model.Wires {
		names = append(names, "wire "+w.Number)
	}
	for _, d := range r.Model.Devices {
		names = append(names, "device "+d.Name, d.Name)
	}
	for _, c := range r.Model.Circuits {
		names = append(names, "circuit "+c.Name)
	}
	for _, term := range r.Model.Terminals {
		names = append(names, "terminal "+term.Shown, term.Shown)
	}
	for _, name := range names {
		list, err := r.Why(name)
		require.NoError(t, err, name)
		require.NotEmpty(t, list, name)
		for _, w := range list {
			sensible(t, w)
		}
	}
	_, err := r.Why("K1.99")
	require.ErrorIs(t, err, harness.ErrName)
}

// The shares of a load's drop add up to it.
func TestSharesOfADropAddUp(t *testing.T) {
	list, err := truck(t).Why("device M2")
	require.NoError(t, err)
	require.Len(t, list, 1)
	steps := list[0].Groups[0].Steps
	sum, last := 0.0, steps[len(steps)-1]
	for _, st := range steps[:len(steps)-1] {
		require.Equal(t, "V", st.Unit)
		require.Positive(t, st.Value, st.Text)
		sum += st.Value
	}
	require.InDelta(t, last.Value, sum, 1e-6)
}

// Every floor of a wire shows both figures that are compared, and its working.
func TestFloorsShowBothSides(t *testing.T) {
	r := truck(t)
	for _, w := range r.Sizes.Wires {
		list, err := r.Why("wire " + w.Wire.Number)
		require.NoError(t, err)
		floors := 0
		for _, g := range list[0].Groups {
			for _, l := range w.Judgement.Limits {
				if len(g.Title) > len(l.Name) && g.Title[1:len(l.Name)] == l.Name[1:] {
					require.Contains(t, g.Title, " asked: ", w.Wire.Number)
					require.NotEmpty(t, g.Steps)
					floors++
				}
			}
		}
		require.GreaterOrEqual(t, floors, len(w.Judgement.Limits), w.Wire.Number)
	}
}
