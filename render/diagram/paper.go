package diagram

import "strings"

// paper is a sheet with its frame, mm.
type paper struct {
	name   string
	w, h   float64
	left   float64 // margin for filing
	margin float64
	tall   bool // upright: the legend stands over the title block, not beside it
}

// DefaultPaper is what a sheet is drawn on when nothing is asked for: A4 where
// one sheet of it is enough, else A3.
const DefaultPaper = "auto"

// series are the papers to choose from: the one of that name, and what a
// drawing goes on that does not fit it. Sizes of ISO 216, and in inches those
// of ASME Y14.1 (11 x 17, 17 x 22, 22 x 34); margins as ISO 5457. All from
// memory. A4 stands upright: it is half of A3 with the full height.
var series = []struct {
	name   string
	papers []paper
}{
	{DefaultPaper, []paper{isoA4, isoA3, isoA2, isoA1}},
	{"a3", []paper{isoA3, isoA2, isoA1}},
	{"a4", []paper{isoA4, isoA3, isoA2, isoA1}},
	{"tabloid", []paper{{name: "11x17", w: 431.8, h: 279.4, left: 20, margin: 10}, {name: "17x22", w: 558.8, h: 431.8, left: 20, margin: 10}, {name: "22x34", w: 863.6, h: 558.8, left: 20, margin: 10}}},
}

var (
	isoA4 = paper{name: "A4", w: 210, h: 297, left: 20, margin: 10, tall: true}
	isoA3 = paper{name: "A3", w: 420, h: 297, left: 20, margin: 10}
	isoA2 = paper{name: "A2", w: 594, h: 420, left: 20, margin: 10}
	isoA1 = paper{name: "A1", w: 841, h: 594, left: 20, margin: 10}
)

// Papers lists the papers that Input.Paper takes.
func Papers() []string {
	var out []string
	for _, s := range series {
		out = append(out, s.name)
	}
	return out
}

// papersFor gives the papers of a name, those of DefaultPaper for any other.
func papersFor(name string) []paper {
	for _, s := range series {
		if strings.EqualFold(s.name, name) {
			return s.papers
		}
	}
	return series[0].papers
}

// Where things stand on a sheet, mm.
const (
	drawLeft   = 38.0 // first section; tags of rails stand left of it
	drawRight  = 14   // from the right edge
	drawTop    = 15
	titleLine  = 19.4
	firstRail  = 27.5
	railPitch  = 5.0
	lanePitch  = 3.75
	footHeight = 62 // from the base line to the lower edge
	legendHigh = 44 // from the top of the legend to the lower edge
	numberCell = 6.0
	textCell   = 7.0
	studToRail = 6.25
	railToBase = 6.25
	blockW     = 180.0
	blockH     = 35.0
	leftRoom   = 11.5 // free left of the first track of a section
	rightRoom  = 15.5 // free right of the last
	mostGrow   = 20.0
)

// pitches are the distances of tracks that a sheet may use, widest first.
var pitches = []float64{30, 27.5, 25, 22.5, 20, 17.5}

func (s paper) room() float64     { return s.w - drawRight - drawLeft }
func (s paper) baseLine() float64 { return s.legendY() - (footHeight - legendHigh) }

// legendY is the top of the legend.
func (s paper) legendY() float64 {
	if s.tall {
		return s.h - legendHigh - blockH - 1
	}
	return s.h - legendHigh
}

// legendBox gives how far legend and index may reach.
func (s paper) legendBox() (right, bottom float64) {
	if s.tall {
		return s.w - s.margin - 1, s.h - s.margin - blockH - 1
	}
	return s.w - s.margin - blockW - 1, s.h - s.margin - 1
}

// mostTracks is how many tracks one section may have on a sheet.
func (s paper) mostTracks(pitch float64) int {
	return max(int((s.room()-leftRoom-rightRoom)/pitch)+1, 2)
}
