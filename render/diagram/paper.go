package diagram

// paper is a sheet with its frame, mm.
type paper struct {
	name   string
	w, h   float64
	left   float64 // margin for filing
	margin float64
}

// Sheets are ISO 216 sizes in landscape; margins as ISO 5457 (from memory).
var papers = []paper{
	{"A3", 420, 297, 20, 10},
	{"A2", 594, 420, 20, 10},
	{"A1", 841, 594, 20, 10},
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
	numberCell = 6.0
	textCell   = 7.0
	studToRail = 6.25
	railToBase = 6.25
	blockW     = 180.0
	blockH     = 35.0
	leftRoom   = 11.5 // free left of the first track of a section
	rightRoom  = 15.5 // free right of the last
	mostGrow   = 14.0
)

// pitches are the distances of tracks that a sheet may use, widest first.
var pitches = []float64{30, 27.5, 25, 22.5, 20, 17.5}

func (s paper) room() float64     { return s.w - drawRight - drawLeft }
func (s paper) baseLine() float64 { return s.h - footHeight }

// mostTracks is how many tracks one section may have on a sheet.
func (s paper) mostTracks(pitch float64) int {
	return max(int((s.room()-leftRoom-rightRoom)/pitch)+1, 2)
}
