package main

import (
	"runtime"
	"runtime/debug"

	"legwork/harness"
)

// By how many percent the heap may grow before it is collected again. A draft
// of usual size is done before the first collection, which the roomy figure
// puts at 16 MB; of a large one most of what is read stays to the end, so that
// it is read without collecting much and then worked on in little room.
const (
	roomyPercent = 400
	wakePercent  = 150
	tightPercent = 40
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
// leaves its trees behind at once, and gets less room from then on. What sizing
// needs doubles what lives, so it is given that much before the pace tightens.
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
	runtime.AddCleanup(new(spent), func(percent int) { debug.SetGCPercent(percent) }, tightPercent)
}

// spent is gone with the next collection.
type spent [4]uint64
