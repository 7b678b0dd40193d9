package deck

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/solve"
)

// TestRuleDrafts: the drafts with planted faults that the rules are tested on,
// usual case. They are many and odd: shorts, lost grounds, turned diodes, wrong
// volts.
func TestRuleDrafts(t *testing.T) {
	path := simulator(t)
	if path == "" {
		t.Log("there is no ngspice here: nothing to compare with")
		return
	}
	files, err := filepath.Glob("../check/testdata/*.draft")
	require.NoError(t, err)
	var list []*network
	for _, f := range files {
		r, err := harness.Load(os.DirFS(filepath.Dir(f)), filepath.Base(f)).Check(t.Context(), harness.Options{})
		require.NoError(t, err)
		if r.Sizes == nil {
			continue // not solved: mistakes, or more than 60 V
		}
		var wires []solve.Conductor
		for _, w := range r.Sizes.Wires {
			wires = append(wires, w.Conductor)
		}
		list = append(list, newNetwork(t, filepath.Base(f), "rules", r.Model, wires, r.Sizes.Usual.Case))
	}
	require.Greater(t, len(list), 30)
	answers := simulate(t, path, frozenDecks(t, list))
	players := play(t, path, list)
	trials := try(t, path, players)
	all := &row{}
	at := 0
	for i, n := range list {
		for step := range n.hist.States {
			all.compare(n, step, answers[at])
			at++
			require.LessOrEqual(t, all.worstRel, 1e-9, "%s %d", n.name, step)
			require.LessOrEqual(t, all.weakRel, 1e-8, "%s %d", n.name, step)
		}
		all.contact(players[i], trials)
	}
	require.Empty(t, all.frozenMissing)
	require.Empty(t, all.disagree)
	t.Logf("%d drafts, %d steps, %d readings, worst %.0e; %d on leaks, worst %.0e; %d contacts", len(list), all.decks, all.compared, all.worstRel, all.weak, all.weakRel, all.contacts)
}
