package gauge

import (
	"fmt"
	"math"
	"slices"
)

// Bundle is the diameter of a bundle of wires, in mm, with what is known of
// it: FloorMM <= the tightest bundle <= PackedMM.
type Bundle struct {
	FloorMM  float64 // no bundle is smaller
	RuleMM   float64 // 1.2 sqrt(sum d^2), the shop rule
	PackedMM float64 // of a packing that was found, so the tightest is no larger; 0: not looked for above 61 wires
	MM       float64 // to choose coverings by: the largest of them
	Exact    bool    // the tightest bundle itself is known: FloorMM
	Why      []Step
}

// tightest is the diameter of the tightest bundle of n equal wires over the
// wire's, from 1 to 19.
var tightest = [...]float64{
	0, 1, 2, 2.1547, 2.4142, 2.7013, 3, 3, 3.3048, 3.6131, 3.8130,
	3.9238, 4.0296, 4.2361, 4.3284, 4.5214, 4.6154, 4.7920, 4.8637, 4.8637,
}

const (
	shopRule    = 1.2
	mostPacked  = 61
	mostBundled = 5000
	equalWithin = 1e-9
)

// TightestOf is the diameter of the tightest bundle of n equal wires over
// the diameter of one, n from 1 to 19 (source bundle-tightest).
func TightestOf(n int) (factor float64, ok bool) {
	if n < 1 || n >= len(tightest) {
		return 0, false
	}
	return tightest[n], true
}

// BundleOf is the bundle of wires of diameters in mm. Up to three wires, and
// up to 19 equal ones, it is exact; else the floor is the largest of
// sqrt(sum d^2), the two largest side by side and the three largest by
// Descartes, and the bundle is found by packing. MM is never below the shop
// rule, since hands lay looser than geometry. ok is false for no wire, more
// than 5000, or a diameter that is not from 0.01 to 1000 mm (sources
// bundle-rule, bundle-geometry, bundle-tightest).
func BundleOf(diametersMM ...float64) (b Bundle, ok bool) {
	if len(diametersMM) == 0 || len(diametersMM) > mostBundled {
		return Bundle{}, false
	}
	var sum float64
	for _, d := range diametersMM {
		if !(d >= 0.01 && d <= 1000) {
			return Bundle{}, false
		}
		sum += d * d
	}
	ds := slices.Clone(diametersMM)
	slices.SortFunc(ds, func(a, b float64) int { return -cmpFloat(a, b) })
	b.RuleMM = shopRule * math.Sqrt(sum)
	b.Why = []Step{{fmt.Sprintf("shop rule for %d wires", len(ds)), "1.2 sqrt(sum d^2)", b.RuleMM, "mm", "bundle-rule"}}
	b.floor(ds, math.Sqrt(sum))
	b.pack(ds)
	b.MM = max(b.RuleMM, b.FloorMM, b.PackedMM)
	if len(ds) == 1 {
		b.MM = ds[0]
	}
	b.Why = append(b.Why, Step{"to choose by", "largest of them", b.MM, "mm", "bundle-geometry"})
	return b, true
}

func cmpFloat(a, b float64) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}

// floor takes the largest lower bound; ds falls.
func (b *Bundle) floor(ds []float64, area float64) {
	n := len(ds)
	b.FloorMM, b.Exact = max(area, ds[0]), n == 1
	if n >= 2 {
		b.FloorMM, b.Exact = max(b.FloorMM, ds[0]+ds[1]), n == 2
		b.Why = append(b.Why, Step{"the two largest side by side", "d1 + d2", ds[0] + ds[1], "mm", "bundle-geometry"})
	}
	if n >= 3 {
		three := threeWires(ds[0], ds[1], ds[2])
		b.FloorMM, b.Exact = max(b.FloorMM, three), n == 3
		b.Why = append(b.Why, Step{"the three largest", "Descartes' circles", three, "mm", "bundle-geometry"})
	}
	if factor, known := TightestOf(n); known && ds[0]-ds[n-1] <= equalWithin*ds[0] {
		b.FloorMM, b.Exact = factor*ds[0], true
		b.Why = append(b.Why, Step{fmt.Sprintf("%d equal wires", n), fmt.Sprintf("%.4f d", factor), b.FloorMM, "mm", "bundle-tightest"})
	}
}

func (b *Bundle) pack(ds []float64) {
	switch {
	case b.Exact:
		b.PackedMM = b.FloorMM
	case len(ds) <= mostPacked:
		b.PackedMM = packed(ds)
		b.Why = append(b.Why, Step{"a packing that was found", "", b.PackedMM, "mm", "bundle-geometry"})
	}
}

// threeWires is the circle around three that touch each other, diameters
// falling: where the third fits into the gap, the two largest rule.
func threeWires(d1, d2, d3 float64) float64 {
	a, b, c := d1/2, d2/2, d3/2
	if c <= a*b*(a+b)/(a*a+a*b+b*b) {
		return d1 + d2
	}
	ka, kb, kc := 1/a, 1/b, 1/c
	return -2 / (ka + kb + kc - 2*math.Sqrt(ka*kb+kb*kc+kc*ka))
}
