package main

import (
	"runtime"
	"runtime/debug"
	"runtime/metrics"

	"legwork/harness"
)

// By how many percent the heap may grow before it is collected again. A draft
// of usual size is done before the first collection, which the roomy figure
// puts at 20 MB; of a large one most of what is read stays to the end, so that
// it is read without collecting much and then worked on in little room.
const (
	roomyPercent = 500
	wakePercent  = 230
	tightPercent = 25
	manyWires    = 2000
)

// giveRoom is for the start of the program. What the environment asks for
// (GOGC) stands.
func giveRoom() {
	if asked := debug.SetGCPercent(roomyPercent); asked != 100 {
		debug.SetGCPercent(asked)
	}
}

// takeRoom is for when a draft is read and only to be checked: a large one
// leaves its trees behind at once, and gets less room from then on. What lives
// then goes up and down while sizes are chosen; the heap is collected whenever
// it comes to the same height, which is a multiple of what the draft itself
// takes.
func takeRoom(d *harness.Draft) {
	if len(d.Model.Wires) < manyWires {
		return
	}
	d.Forget()
	if was := debug.SetGCPercent(wakePercent); was != roomyPercent {
		debug.SetGCPercent(was)
		return
	}
	runtime.GC()
	keepBelow(living()*(100+wakePercent)/100, wakePercent)
}

// keepBelow has the heap collected when it comes to a height in bytes, which it
// passes where what lives is nearly as much. It ends when somebody else sets
// the pace, which now is at set percent.
func keepBelow(height uint64, set int) {
	runtime.AddCleanup(new(spent), func(height uint64) {
		room := tightPercent
		if live := living(); live > 0 && height > live {
			room = max(room, int(100*(height-live)/live))
		}
		if was := debug.SetGCPercent(room); was != set {
			debug.SetGCPercent(was)
			return
		}
		keepBelow(height, room)
	}, height)
}

// living is what the last collection found in use, in bytes.
func living() uint64 {
	of := []metrics.Sample{{Name: "/gc/heap/live:bytes"}}
	metrics.Read(of)
	return of[0].Value.Uint64()
}

// spent is gone with the next collection.
type spent [4]uint64
