// Package diagram lays out drawings of a harness. The schematic is a
// current-path diagram: supply rails on top, metal at the foot, every current
// path a numbered vertical track, sections side by side. A colored vertical
// line is one wire, a black horizontal bar is one joint, thin black lines are
// inside a device.
//
// Layout asks devices for their abilities and symbols, never for their kind.
package diagram

import (
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/route"
	"legwork/harness/size"
	"legwork/harness/solve"
	"legwork/render/scene"
)

// Input is what a drawing is made from. Sizes may be nil: wires then show the
// sizes that the draft gives. Routes may be nil too.
type Input struct {
	Model  *model.Model
	Routes *route.Routes
	Sizes  *size.Sizes
	Title  Title
	Paper  string // one of Papers; DefaultPaper when empty

	// Played and Step ask for the state view: every conductor drawn by what it
	// carries in that step, contacts and outputs as they stand then. Empty: the
	// plain schematic, without volts.
	Played *solve.History
	Step   string
}

// Title is what the title block says beside the title of the harness. Empty
// fields stay empty on the sheet.
type Title struct {
	Customer   string
	CreatedBy  string
	ApprovedBy string
	Number     string // document number
	Revision   string
	Date       string // as it should be printed; no stage reads a clock
	Extra      string // second line under the title
}

// Sheet is one finished sheet.
type Sheet struct {
	Name  string // for file names: "paths-1"
	Title string // "Current paths 1-15"
	Scene *scene.Scene
}

// Schematic draws the current-path diagram of a harness: as many sheets as it
// takes, left to right. Findings are notes: devices without a wire (they are
// not drawn) and names too long for their place. The result depends on
// nothing but the input.
func Schematic(in Input) ([]Sheet, diag.List) {
	if in.Model == nil {
		return nil, nil
	}
	p := newPlan(in)
	p.collect()
	p.pose()
	p.divide()
	p.level()
	p.track()
	p.arrange()
	p.paginate()
	p.heights()
	return p.draw(), p.notes
}
