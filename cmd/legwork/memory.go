package main

import (
	"runtime/debug"

	"legwork/harness"
)

// By how many percent the heap may grow before it is collected again. A draft
// of usual size is done before the first collection, which the roomy figure
// puts at 16 MB; of a large one most of what is read stays to the end, so that
// it is read without collecting much and then worked on in little room.
const (
	roomyPercent = 400
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
// gets less from then on, and leaves its trees behind.
func takeRoom(d *harness.Draft) {
	if len(d.Model.Wires) < manyWires {
		return
	}
	d.Forget()
	if was := debug.SetGCPercent(tightPercent); was != roomyPercent {
		debug.SetGCPercent(was)
	}
}
