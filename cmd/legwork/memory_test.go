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
	require.Empty(t, large.File.Stmts)

	ballast := make([]byte, 4*living()*(100+wakePercent)/100)
	settles(t, func(percent int) bool { return percent == tightPercent }, "more lives than there is room for")
	runtime.KeepAlive(ballast)
	settles(t, func(percent int) bool { return percent > 2*tightPercent }, "the room is there again")
	debug.SetGCPercent(77)
	runtime.GC()
	settles(t, func(percent int) bool { return percent == 77 }, "who sets the pace has it so")
}

// settles collects until the collector has the pace that is wanted: it is set
// beside the program, some time after a collection.
func settles(t *testing.T, wanted func(percent int) bool, why string) {
	t.Helper()
	require.Eventually(t, func() bool { runtime.GC(); return wanted(pace()) }, 10*time.Second, 5*time.Millisecond, why)
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
