package main

import (
	"fmt"
	"runtime/debug"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
)

// The collector's pace as it stands, left as it was.
func pace() int {
	p := debug.SetGCPercent(100)
	debug.SetGCPercent(p)
	return p
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
	require.Equal(t, tightPercent, pace())
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
