package gauge

import (
	"math"
	"slices"
)

// loadedContacts is the share of contacts loaded, percent; 0 stands for a
// single one.
var loadedContacts = [...]float64{0, 26, 50, 76, 100}

// contactLoading is the current of one contact over that of one 18 AWG
// circuit alone, by gauge and by loadedContacts; as printed. Its 0.342 for 24
// AWG at 26 % is a misprint: size x loading gives 0.331.
var contactLoading = [...]struct {
	awg    int
	factor [len(loadedContacts)]float64
}{
	{28, [...]float64{0.384, 0.237, 0.164, 0.132, 0.114}},
	{26, [...]float64{0.450, 0.278, 0.193, 0.155, 0.134}},
	{24, [...]float64{0.536, 0.342, 0.229, 0.184, 0.159}},
	{22, [...]float64{0.647, 0.400, 0.277, 0.222, 0.192}},
	{20, [...]float64{0.795, 0.491, 0.341, 0.273, 0.236}},
	{18, [...]float64{1.000, 0.618, 0.428, 0.344, 0.297}},
}

// ContactLoading is the current that each contact of a connector may carry
// over what one 18 AWG circuit alone may, by gauge (18 to 28, even) and the
// percent of contacts loaded (0 for a single one to 100); the next fuller
// column counts between the printed ones. It is one family's table: use its
// shape, with the maker's own base figure (source contact-loading).
func ContactLoading(awg int, percent float64) (factor float64, ok bool) {
	if !(percent >= 0 && percent <= 100) {
		return 0, false
	}
	for _, row := range contactLoading {
		if row.awg != awg {
			continue
		}
		i := slices.IndexFunc(loadedContacts[:], func(p float64) bool { return percent <= p })
		if awg == 24 && i == 1 {
			return contactLoading[5].factor[1] * row.factor[0], true // the misprint
		}
		return row.factor[i], true
	}
	return 0, false
}

// SharedContacts is what each of n equally loaded contacts may carry over one
// alone, where nothing else is known: 0.8 for each doubling. ok is false
// unless n is from 1 to 10,000 (source contact-sharing).
func SharedContacts(n int) (factor float64, ok bool) {
	if n < 1 || n > 10000 {
		return 0, false
	}
	return math.Pow(0.8, math.Log2(float64(n))), true
}

// TabCurrent is the test current of a quick-connect tab by gauge.
type TabCurrent struct {
	Wide        bool // 4.8, 5.2 and 6.3 mm; else 2.8 and 3.2 mm
	AWG         int
	ContinuousA float64
	CycleA      float64 // heat cycling
	Source      string
}

var tabCurrents = [...]TabCurrent{
	{true, 22, 3, 6, "tab-current"},
	{true, 20, 4, 8, "tab-current"},
	{true, 18, 7, 14, "tab-current"},
	{true, 16, 10, 20, "tab-current"},
	{true, 14, 15, 30, "tab-current"},
	{true, 12, 20, 40, "tab-current"},
	{true, 10, 24, 48, "tab-current"},
	{false, 22, 2, 4, "tab-current"},
	{false, 20, 3, 6, "tab-current"},
	{false, 18, 4, 8, "tab-current"},
	{false, 16, 5, 10, "tab-current"},
}

// TabCurrents lists the test currents of quick-connect tabs (source
// tab-current).
func TabCurrents() []TabCurrent { return slices.Clone(tabCurrents[:]) }

// TabA is the continuous test current of a tab of tabMM wide (2.8, 3.2, 4.8,
// 5.2, 6.3) with a wire of a gauge, set by a rise of 30 K; a maker's rating is
// usually higher. ok is false where the table has no cell (source
// tab-current).
func TabA(tabMM float64, awg int) (amps float64, ok bool) {
	wide := tabMM == 4.8 || tabMM == 5.2 || tabMM == 6.3
	if !wide && tabMM != 2.8 && tabMM != 3.2 {
		return 0, false
	}
	for _, r := range tabCurrents {
		if r.Wide == wide && r.AWG == awg {
			return r.ContinuousA, true
		}
	}
	return 0, false
}

// TabSize is what a trade table gives a tab of one width; it is above what
// UL 310 tests, so the lower counts.
type TabSize struct {
	WidthMM, ThickMM float64 // 0: not printed
	Series           string  // thousandths of an inch
	LeastMM2         float64 // of the wire
	MostMM2          float64
	GuideA           float64
	Source           string
}

var tabSizes = [...]TabSize{
	{0.64, 0, "025", 0.13, 0.75, 3, "tab-guide"},
	{1.0, 0, "040", 0.22, 1.0, 6, "tab-guide"},
	{1.2, 0, "048", 0.22, 1.0, 8, "tab-guide"},
	{1.5, 0, "060", 0.35, 1.5, 10, "tab-guide"},
	{2.8, 0.8, "110", 0.35, 2.5, 20, "tab-guide"},
	{4.8, 0.8, "187", 0, 0, 35, "tab-guide"},
	{6.3, 0.8, "250", 0.5, 4.0, 50, "tab-guide-high"},
	{9.5, 1.2, "375", 1.0, 4.0, 70, "tab-guide-high"},
	{8.0, 0.8, "312", 0, 0, 0, "tab-guide"},
}

// TabSizes lists tab widths with wire range and guide current (sources
// tab-guide, tab-guide-high).
func TabSizes() []TabSize { return slices.Clone(tabSizes[:]) }
