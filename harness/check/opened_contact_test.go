package check_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/check"
)

// The feed of the rule's own example hangs on S1.ACC: the place to mend is
// that terminal, not the controller.
func TestDeadFeedNamesTheTerminalThatOpens(t *testing.T) {
	rule, ok := check.RuleOf("feed-dead-while-cranking")
	require.True(t, ok)
	found := checked(t, "x.draft", rule.Bad).Findings
	require.Len(t, found, 1)
	var texts []string
	for _, r := range found[0].Related {
		texts = append(texts, r.Msg)
	}
	require.Contains(t, texts, "wire 3 is on S1.ACC, which is open in crank")
}

// Behind a fuse and a splice as well.
func TestDeadFeedIsFollowedThroughFuses(t *testing.T) {
	found := only(checked(t, "x.draft", `battery G1 cca 540A grounds-to frame
starter M1 draws 160A grounds-to frame
fuse F1 30A bolt-down from G1 6in
fuse F2 10A
keyswitch S1
  off
  run B ACC IGN
  gap B IGN
  crank B IGN ST
module A1
  IGN feed 1A when run, crank
  GND ground
splice J1
stud E1 on frame M6
wire 1 G1.+ F1.1 10AWG 6in
wire 2 F1.2 S1.B 10AWG 2ft
wire 3 S1.ACC J1 10AWG 2ft
wire 4 J1 F2.1 10AWG 2ft
wire 5 F2.2 A1.IGN 14AWG 2ft
wire 6 A1.GND E1 14AWG 2ft
wire 7 G1.+ M1.B 2AWG 2ft
wire 8 S1.ST M1.S 14AWG 2ft
`).Findings, "feed-dead-while-cranking")
	require.Len(t, found, 1)
	last := found[0].Related[len(found[0].Related)-1]
	require.Equal(t, "wire 3 is on S1.ACC, which is open in crank", last.Msg)
	require.Equal(t, 17, last.At.Line)
}
