package gauge

// Diameter is the make-up of an insulated wire across.
type Diameter struct {
	OutsideMM   float64
	ConductorMM float64 // over the strands
	WallMM      float64
	Source      string // where the outside, or else the wall, comes from
}

// Confidence is how far the outside diameter may be trusted.
func (d Diameter) Confidence() Confidence { return confidenceOf(d.Source) }

// wallStep is a nominal wall in mm of SAE primary wire from a gauge down to
// the next row, all from memory (source sae-walls).
type wallStep struct {
	fromAWG int // this gauge and thicker wires, to the next step
	mm      float64
}

var (
	thinWalls    = []wallStep{{30, 0.40}}
	generalWalls = []wallStep{{30, 0.58}, {12, 0.66}, {10, 0.79}, {8, 0.94}}
	heavyWalls   = []wallStep{{30, 0.76}, {16, 0.81}, {14, 0.89}, {12, 0.94}, {10, 1.04}, {8, 1.09}}
	batteryWalls = []wallStep{{6, 1.5}, {1, 2.4}}
)

var wallsOf = map[string][]wallStep{
	"TWP": thinWalls, "TWE": thinWalls, "TXL": thinWalls,
	"GPT": generalWalls, "GTE": generalWalls, "GXL": generalWalls,
	"SXL": heavyWalls, "HDT": heavyWalls, "HTE": heavyWalls,
}

// gxlOutside is the outside diameter of GXL in a cable maker's data sheet, by
// gauge: largest values, it seems (source gxl-diameter).
var gxlOutside = [...]struct {
	awg int
	mm  float64
}{{20, 2.4}, {18, 2.6}, {16, 3.0}, {14, 3.5}, {12, 4.1}, {10, 4.8}, {8, 5.9}}

// DiameterOf is how thick a wire is: as read for GXL and for thin-wall metric
// cable, else the usual strands and two nominal walls. Computed ones rest on
// walls from memory and serve bundles and seals as hints. Battery cable, and
// every family from 6 AWG (16 mm2), takes the thicker walls of battery cable
// (sources gxl-diameter, thin-wall-list, iso-6722-memory, sae-walls).
func DiameterOf(s Size, f Family) Diameter {
	conductor := overStrands(s)
	if mm, key := outsideRead(s, f); mm > 0 {
		return Diameter{mm, conductor, (mm - conductor) / 2, key}
	}
	wall := wallMM(s, f)
	return Diameter{conductor + 2*wall, conductor, wall, "sae-walls"}
}

// outsideRead is an outside diameter that stands in a list, 0 if none does.
func outsideRead(s Size, f Family) (mm float64, key string) {
	switch {
	case !s.Metric && f.Name == "GXL":
		for _, row := range gxlOutside {
			if row.awg == s.AWG {
				return row.mm, "gxl-diameter"
			}
		}
	case s.Metric && f.metric():
		for _, row := range thinWallCable {
			if row.mm2 == s.Nominal && row.outsideMM > 0 {
				return row.outsideMM, "thin-wall-list"
			}
		}
		for _, row := range isoTable {
			if row.MM2 == s.Nominal && row.OutsideMM > 0 {
				return row.OutsideMM, "iso-6722-memory"
			}
		}
	}
	return 0, ""
}

// wallMM is the nominal wall of a family on a size.
func wallMM(s Size, f Family) float64 {
	awg := nearGauge(s)
	steps, ok := wallsOf[f.Name]
	switch {
	case awg <= 6:
		steps = batteryWalls
	case !ok && f.metric():
		steps = thinWalls
	case !ok: // battery cable on a small wire
		return batteryWalls[0].mm
	}
	wall := steps[0].mm
	for _, step := range steps {
		if awg <= step.fromAWG {
			wall = step.mm
		}
	}
	return wall
}

// nearGauge is the gauge of a size, for metric ones the next that is no
// thinner.
func nearGauge(s Size) int {
	if !s.Metric {
		return s.AWG
	}
	for _, n := range evenGauges {
		if AWGAreaMM2(n) >= s.Nominal {
			return n
		}
	}
	return evenGauges[len(evenGauges)-1]
}
