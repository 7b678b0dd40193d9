package harness_test

import (
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/wanted"
)

// vehicles are the whole drafts of testdata beside the orchard truck, each
// with a twin in which faults are planted.
var vehicles = []struct {
	name   string
	with   []string
	wires  int // at least
	faults int // planted, at least
}{
	{"forestry-carrier", nil, 120, 10},
	{"forestry-carrier", []string{"lights", "crane"}, 130, 0},
	{"lake-workboat", nil, 50, 8},
	{"lake-workboat", []string{"winch"}, 50, 0},
	{"utility-trailer", nil, 60, 8},
	{"track-car", nil, 80, 8},
	{"camper-leisure", nil, 55, 8},
}

// loaded reads a draft of testdata with what it includes, checks it, and gives
// its findings from warning up.
func loaded(t *testing.T, name string, with []string) (r *harness.Result, src string, found diag.List) {
	t.Helper()
	dir := filepath.Join(moduleRoot, "testdata")
	text, err := os.ReadFile(filepath.Join(dir, name))
	require.NoError(t, err)
	r, err = harness.Load(os.DirFS(dir), name).Check(context.Background(), harness.Options{With: with})
	require.NoError(t, err)
	for f := range r.Findings.AtLeast(diag.Warning) {
		found.Add(f)
	}
	f, _ := draft.Parse(name, text)
	require.Equal(t, string(text), string(draft.Tidy(f)), "not tidy")
	return r, string(text), found
}

// The vehicles, built as they should be, give no alarm, with and without what
// can be fitted.
func TestCleanVehicles(t *testing.T) {
	for _, v := range vehicles {
		t.Run(strings.Join(append([]string{v.name}, v.with...), "+"), func(t *testing.T) {
			r, src, found := loaded(t, v.name+".draft", v.with)
			require.Empty(t, found)
			require.GreaterOrEqual(t, len(r.Model.Wires), v.wires)
			require.Contains(t, src, "invented")
			for _, f := range r.Findings {
				require.NotEqual(t, "stale-accept", f.Rule, f.Msg)
			}
		})
	}
}

// Every planted fault is found, and nothing else at warning or above.
func TestFaultyVehicles(t *testing.T) {
	for _, v := range vehicles {
		if v.faults == 0 {
			continue
		}
		t.Run(v.name, func(t *testing.T) {
			_, src, found := loaded(t, v.name+"-faults.draft", nil)
			require.Contains(t, src, "invented")
			wants, err := wanted.Read(src)
			require.NoError(t, err)
			rules := map[string]bool{}
			for _, w := range wants {
				rules[w.Rule] = true
				_, known := check.RuleOf(w.Rule)
				require.True(t, known, "line %d: there is no rule %s", w.Line, w.Rule)
			}
			require.GreaterOrEqual(t, len(rules), v.faults)
			require.Empty(t, wanted.Compare(wants, found), "%s", strings.Join(wanted.Compare(wants, found), "\n"))
		})
	}
}

// What the vehicles leave to a guess could be four times more or less, and no
// size and no verdict would change.
func TestGuessesOfTheVehiclesDontMatter(t *testing.T) {
	for _, v := range vehicles {
		t.Run(strings.Join(append([]string{v.name}, v.with...), "+"), func(t *testing.T) {
			r, _, _ := loaded(t, v.name+".draft", v.with)
			list, err := r.Leeways(t.Context())
			require.NoError(t, err)
			for _, l := range list {
				require.False(t, l.Changes, "%s: down %s, up %s", l.Guess.What, l.DownTo, l.UpTo)
			}
		})
	}
}
