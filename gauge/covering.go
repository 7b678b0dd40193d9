package gauge

import (
	"math"
	"slices"
)

const (
	usualFill     = 0.70 // of the area inside a tube (source tubing-fill)
	tubingC       = 0.97 // bundle = c ID sqrt(fill) in the published table
	conduitMargin = 1.25 // inside diameter over the bundle, aircraft (source conduit-aircraft)
)

// Tubing is one size of tubing in a published table: the bundle that fills
// half, six tenths and seven tenths of it; 0 where the cell was not read.
type Tubing struct {
	Size           int // 1/32 in
	InsideIn       float64
	Fill50, Fill60 float64 // bundle diameter, in
	Fill70         float64
	Source         string
}

var tubings = [...]Tubing{
	{6, 0.187, 0.128, 0.140, 0, "tubing-fill"},
	{9, 0.281, 0.193, 0.211, 0, "tubing-fill"},
	{10, 0.312, 0.217, 0.237, 0, "tubing-fill"},
	{12, 0.375, 0.257, 0.282, 0.305, "tubing-fill"},
	{14, 0.437, 0.302, 0.331, 0, "tubing-fill"},
	{16, 0.500, 0.343, 0.376, 0, "tubing-fill"},
	{20, 0.625, 0.426, 0.467, 0, "tubing-fill"},
	{24, 0.750, 0.513, 0.562, 0.607, "tubing-fill"},
	{28, 0.875, 0.608, 0.666, 0, "tubing-fill"},
	{32, 1.000, 0.686, 0, 0, "tubing-fill-part"},
	{40, 1.250, 0.852, 0, 0, "tubing-fill-part"},
}

// Tubings lists the published sizes (sources tubing-fill, tubing-fill-part).
func Tubings() []Tubing { return slices.Clone(tubings[:]) }

// MostBundleMM is the largest bundle in a tube of insideMM at a fill from
// 0.01 to 1 of its area: 0.97 ID sqrt(fill), as the published table has it
// within 1.5 %. ok is false outside (source tubing-fill).
func MostBundleMM(insideMM, fill float64) (bundleMM float64, ok bool) {
	if !(insideMM >= 0 && insideMM <= 1e4) || !(fill >= 0.01 && fill <= 1) {
		return 0, false
	}
	return tubingC * insideMM * math.Sqrt(fill), true
}

// TubingFor is the smallest published tubing that takes a bundle at a fill;
// ok is false above size 40 (source tubing-fill).
func TubingFor(bundleMM, fill float64) (t Tubing, ok bool) {
	for _, t := range tubings {
		if most, fine := MostBundleMM(t.InsideIn*inchMM, fill); fine && bundleMM >= 0 && bundleMM <= most {
			return t, true
		}
	}
	return Tubing{}, false
}

// ConduitInsideMM is the least inside diameter of an aircraft conduit for a
// bundle: a quarter more than it; ok is false unless the bundle is from 0 to
// 1e4 mm (source conduit-aircraft).
func ConduitInsideMM(bundleMM float64) (insideMM float64, ok bool) {
	if !(bundleMM >= 0 && bundleMM <= 1e4) {
		return 0, false
	}
	return conduitMargin * bundleMM, true
}

// Covering is one size of a covering: a tube by its inside, a braid by the
// bundles it works on.
type Covering struct {
	Kind      string // tube, loom, braid
	Name      string
	InsideMM  float64
	OutsideMM float64
	LeastMM   float64 // braid: smallest bundle
	MostMM    float64 // braid: largest bundle
	Source    string
}

var coverings = [...]Covering{
	{"tube", "NW4.5", 4.7, 7.3, 0, 0, "covering-tube"},
	{"tube", "NW6", 6.3, 9.0, 0, 0, "covering-tube"},
	{"tube", "NW7.5", 7.2, 10.0, 0, 0, "covering-tube"},
	{"tube", "NW8.5", 8.6, 11.6, 0, 0, "covering-tube"},
	{"tube", "NW10", 9.9, 13.0, 0, 0, "covering-tube"},
	{"tube", "NW12", 12.0, 15.8, 0, 0, "covering-tube"},
	{"tube", "NW14", 14.2, 18.5, 0, 0, "covering-tube"},
	{"tube", "NW17", 16.5, 21.2, 0, 0, "covering-tube"},
	{"tube", "NW19", 18.8, 24.0, 0, 0, "covering-tube"},
	{"tube", "NW22", 22.0, 28.5, 0, 0, "covering-tube"},
	{"tube", "NW26", 26.4, 31.8, 0, 0, "covering-tube"},
	{"tube", "NW29", 28.7, 34.5, 0, 0, "covering-tube"},
	{"tube", "NW37", 36.0, 42.5, 0, 0, "covering-tube"},
	{"tube", "NW50", 47.5, 54.5, 0, 0, "covering-tube"},
	{"loom", "1/4", 6.4, 0, 0, 0, "covering-loom"},
	{"loom", "3/8", 9.5, 0, 0, 0, "covering-loom"},
	{"loom", "1/2", 12.7, 0, 0, 0, "covering-loom"},
	{"loom", "5/8", 15.9, 0, 0, 0, "covering-loom"},
	{"loom", "3/4", 19.1, 0, 0, 0, "covering-loom"},
	{"loom", "1", 25.4, 0, 0, 0, "covering-loom"},
	{"loom", "1-1/4", 31.8, 0, 0, 0, "covering-loom"},
	{"loom", "1-1/2", 38.1, 0, 0, 0, "covering-loom"},
	{"loom", "2", 50.8, 0, 0, 0, "covering-loom"},
	{"braid", "1/8", 0, 0, 2.4, 6.4, "covering-braid"},
	{"braid", "1/4", 0, 0, 3.2, 11.1, "covering-braid"},
	{"braid", "3/8", 0, 0, 4.8, 15.9, "covering-braid"},
	{"braid", "1/2", 0, 0, 6.4, 19.1, "covering-braid"},
	{"braid", "3/4", 0, 0, 12.7, 31.8, "covering-braid"},
	{"braid", "1", 0, 0, 15.9, 44.5, "covering-braid"},
}

// Coverings lists tubes, split looms and braids. Their sizes are from memory
// and only hint (sources covering-tube, covering-loom, covering-braid).
func Coverings() []Covering { return slices.Clone(coverings[:]) }

// CoveringFor is the smallest covering of a kind (tube, loom, braid) for a
// bundle: tubes and looms to a fill of 70 %, braids by their working range.
// ok is false for another kind and for bundles none fits. A hint (sources
// covering-tube, covering-loom, covering-braid, tubing-fill).
func CoveringFor(kind string, bundleMM float64) (found Covering, c Confidence, ok bool) {
	for _, cover := range coverings {
		if cover.Kind != kind {
			continue
		}
		most, least := cover.MostMM, cover.LeastMM
		if cover.InsideMM > 0 {
			most, _ = MostBundleMM(cover.InsideMM, usualFill)
		}
		if bundleMM > 0 && bundleMM >= least && bundleMM <= most {
			return cover, confidenceOf(cover.Source), true
		}
	}
	return Covering{}, 0, false
}
