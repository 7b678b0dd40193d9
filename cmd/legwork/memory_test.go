package main

import (
	"fmt"
	"runtime"
	"runtime/debug"
	"runtime/metrics"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"legwork/harness"
)

// The collector's pace as it stands.
func pace() int {
	s := []metrics.Sample{{Name: "/gc/gogc:percent"}}
	metrics.Read(s)
	return int(s[0].Value.Uint64())
}

// wiry is a draft of that many loose wires: enough to count.
func wiry(wires int) *harness.Draft {
	var b strings.Builder
	b.WriteString("draft 1\nsplice P1\nsplice P2\n")
	for n := range wires {
		fmt.Fprintf(&b, "wire %d P1 P2\n", n+1)
	}
	return harness.Parse("w.draft", []byte(b.String()))
}

func TestRoom(t *testing.T) {
	was := debug.SetGCPercent(100)
	defer debug.SetGCPercent(was)
	giveRoom()
	require.Equal(t, roomyPercent, pace())

	small, large := wiry(manyWires-1), wiry(manyWires)
	takeRoom(small)
	require.Equal(t, roomyPercent, pace(), "a draft of usual size keeps its room")
	require.NotEmpty(t, small.File.Stmts)
	takeRoom(large)
	require.Equal(t, wakePercent, pace())
	runtime.GC()
	require.Eventually(t, func() bool { return pace() == tightPercent }, 10*time.Second, time.Millisecond, "after one more collection")
	require.Empty(t, large.File.Stmts)
}

// Who sets GOGC has it so.
func TestRoomLeavesGOGCAlone(t *testing.T) {
	was := debug.SetGCPercent(33)
	defer debug.SetGCPercent(was)
	giveRoom()
	require.Equal(t, 33, pace())
	takeRoom(wiry(manyWires))
	require.Equal(t, 33, pace())
}
