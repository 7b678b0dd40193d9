package harness_test

import (
	"context"
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/diag"
)

const lit = "battery G1  grounds-to frame\nfuse F1  10A  from G1 6in\nlamp P1  5W  grounds-to frame\n" +
	"wire 1  G1.+  F1.1  6in\nwire 2  F1.2  P1.1  2ft\n"

// steps are n statements that add a step each.
func steps(n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, "step s%d  like running\n", i)
	}
	return b.String()
}

// stageDrafts break the rules that the stages before the check report.
var stageDrafts = map[string]string{
	"draft-syntax":           lit + "lamp P2  \"Lamp\n",
	"draft-word":             lit + "lampp P2\n",
	"draft-name":             lit + "wire 3  F1.2  P9.1\n",
	"draft-unit":             lit + "fuse F2  10\n",
	"draft-range":            lit + "fuse F2  90000A\n",
	"draft-duplicate":        lit + "lamp P1\n",
	"draft-missing":          lit + "wire 3  F1.2\n",
	"draft-limit":            lit + steps(80),
	"draft-include":          "include \"shelf.draft\"\n" + lit,
	"over-60-volts":          "harness \"High\"  system 400V\n" + lit,
	"stale-accept":           lit + "accept loose-end \"not there\"\n",
	"wire-shorter-than-path": "place a\nplace b\nleg a b  10ft\nbattery G1  at a  grounds-to frame\nfuse F1  10A  at a  from G1 6in\nlamp P1  5W  at b  grounds-to frame\nwire 1  G1.+  F1.1  6in\nwire 2  F1.2  P1.1  2ft\n",
	"no-way-between-places":  "place a\nplace b\nplace c\nleg a c  1ft\nbattery G1  at a  grounds-to frame\nfuse F1  10A  at a  from G1 6in\nlamp P1  5W  at b  grounds-to frame\nwire 1  G1.+  F1.1  6in\nwire 2  F1.2  P1.1\n",
}

// Every rule that an earlier stage reports is reported by some draft.
func TestStageRulesAreReported(t *testing.T) {
	reported := func(list diag.List, id string) bool {
		for _, f := range list {
			if f.Rule == id {
				return true
			}
		}
		return false
	}
	for _, r := range check.Rules() {
		switch {
		case r.Run != nil:
			continue
		case r.ID == "program-fault": // no draft may bring it about
			continue
		case r.ID == "draft-unreadable":
			require.True(t, reported(harness.Load(fstest.MapFS{}, "gone.draft").Findings, r.ID))
			continue
		}
		src, ok := stageDrafts[r.ID]
		require.True(t, ok, "%s has no draft here", r.ID)
		res, err := harness.Parse("x.draft", []byte(src)).Check(context.Background(), harness.Options{})
		require.NoError(t, err)
		require.True(t, reported(res.Findings, r.ID), "%s is not reported, but %v", r.ID, res.Findings)
	}
}

// Every finding of every draft here belongs to a rule that can be explained.
func TestFindingsHaveRules(t *testing.T) {
	for id, src := range stageDrafts {
		res, err := harness.Parse("x.draft", []byte(src)).Check(context.Background(), harness.Options{})
		require.NoError(t, err)
		for _, f := range res.Findings {
			_, ok := check.RuleOf(f.Rule)
			require.True(t, ok, "%s: %s is a rule that nobody declared", id, f.Rule)
		}
	}
}
