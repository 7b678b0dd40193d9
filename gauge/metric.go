package gauge

import (
	"fmt"
	"slices"
)

// ISORow is one thin-wall vehicle cable of ISO 6722 / ISO 19642. Resistance
// and diameter are from memory and only hint (source iso-6722-memory).
type ISORow struct {
	MM2       float64 // label
	MohmPerM  float64 // largest, plain copper at 20 C
	OutsideMM float64 // largest, thin wall; 0: not remembered
}

var isoTable = [...]ISORow{
	{0.13, 136, 0}, {0.22, 84.8, 1.2}, {0.35, 54.4, 1.3}, {0.5, 37.1, 1.6}, {0.75, 24.7, 1.9}, {1, 18.5, 2.1},
	{1.25, 14.9, 2.3}, {1.5, 12.7, 2.4}, {2, 9.42, 2.8}, {2.5, 7.60, 3.0}, {3, 6.15, 3.4}, {4, 4.71, 3.7},
	{5, 3.94, 4.2}, {6, 3.14, 4.3}, {8, 2.38, 5.0}, {10, 1.82, 6.0}, {12, 1.52, 6.5}, {16, 1.16, 7.2},
	{20, 0.955, 0}, {25, 0.743, 8.7}, {30, 0.647, 0}, {35, 0.527, 10.4}, {40, 0.473, 0}, {50, 0.368, 12.2},
	{60, 0.315, 0}, {70, 0.259, 14.4}, {95, 0.196, 16.7}, {120, 0.153, 18.7},
}

// ISOTable lists the remembered cables of ISO 6722 by area (source iso-6722-memory).
func ISOTable() []ISORow { return slices.Clone(isoTable[:]) }

// ISOSize is the vehicle cable of a nominal area by ISO 6722. It is from
// memory and only hints; [MetricSize] gives the class 5 conductor that may
// decide. ok is false for areas that the standard does not list.
func ISOSize(mm2 float64) (s Size, ok bool) {
	for _, row := range isoTable {
		if row.MM2 == mm2 {
			return Size{
				Name: fmt.Sprintf("%g mm2", mm2), Metric: true, Nominal: mm2,
				AreaMM2: RhoCopper20 * 1e9 / row.MohmPerM, Source: "iso-6722-memory",
			}, true
		}
	}
	return Size{}, false
}

// thinWallRow is one cable of that list.
type thinWallRow struct {
	mm2       float64
	strands   int
	strandMM  float64
	outsideMM float64 // 0: not in the list
	amps      float64
}

// thinWallCable is a maker's list of thin-wall vehicle cable: strands,
// largest outside diameter and current, each as read (source thin-wall-list).
var thinWallCable = [...]thinWallRow{
	{0.5, 16, 0.20, 1.7, 11}, {0.75, 24, 0.20, 1.9, 14}, {1, 32, 0.20, 2.1, 16.5}, {1.5, 21, 0.30, 2.4, 21},
	{2, 28, 0.30, 2.8, 25}, {2.5, 35, 0.30, 3.0, 29}, {3, 44, 0.30, 3.4, 33}, {4, 56, 0.30, 3.7, 39},
	{4.5, 65, 0.30, 0, 42}, {6, 84, 0.30, 4.3, 50}, {8.5, 120, 0.30, 0, 63}, {10, 80, 0.40, 6.0, 70},
}
