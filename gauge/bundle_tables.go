package gauge

// layUp is the diameter of a bundle of equal wires laid up in shells over
// that of one, by count, from 1 to 61 (source bundle-layup).
var layUp = [...]float64{
	1: 1, 2, 2.16, 2.41, 2.7, 3, 3, 3.6, 4, 4, 4, 4, 4.41, 4.41, 4.7, 4.7, 5, 5, 5, 5.31,
	5.31, 5.61, 5.61, 5.61, 6, 6, 6, 6.41, 6.41, 6.41, 6.7, 6.7, 6.7, 7, 7, 7, 7, 7.31, 7.31, 7.31,
	7.61, 7.61, 7.61, 7.61, 8, 8, 8, 8, 8.41, 8.41, 8.41, 8.41, 8.7, 8.7, 8.7, 8.7, 9, 9, 9, 9, 9,
}

// tubingFactor is the same ratio in a table made for choosing tubing; counts
// between are read straight between the rows. Its 2.9 at six wires is below
// what geometry allows (source bundle-tubing).
var tubingFactor = [...]struct{ wires, factor float64 }{
	{1, 1}, {2, 2}, {3, 2.2}, {4, 2.4}, {5, 2.7}, {6, 2.9}, {7, 3}, {8, 3.3}, {9, 3.8}, {10, 4}, {12, 4.3}, {14, 4.6},
	{16, 5}, {18, 5.3}, {20, 5.6}, {24, 6}, {28, 6.5}, {32, 6.9}, {36, 7.4}, {40, 7.7}, {45, 8.1}, {50, 8.5},
	{55, 8.9}, {60, 9.3}, {65, 9.7}, {70, 10.1}, {75, 10.5}, {80, 10.9}, {90, 11.6}, {100, 12.2}, {125, 13.7},
	{150, 15}, {175, 16.1}, {200, 17.2}, {250, 19.3}, {300, 21},
}

// LayUpFactor is the published bundle diameter of n equal wires over the
// wire's, 1 to 61, laid up in shells: for comparison, see [BundleOf] (source
// bundle-layup).
func LayUpFactor(n int) (factor float64, ok bool) {
	if n < 1 || n >= len(layUp) {
		return 0, false
	}
	return layUp[n], true
}

// TubingFactor is the same ratio by a table made for choosing tubing, 1 to
// 300 wires, straight between its rows: for comparison (source
// bundle-tubing).
func TubingFactor(n int) (factor float64, ok bool) {
	v := float64(n)
	if !(v >= 1 && v <= tubingFactor[len(tubingFactor)-1].wires) {
		return 0, false
	}
	for i, b := range tubingFactor {
		if v == b.wires {
			return b.factor, true
		}
		if v < b.wires {
			a := tubingFactor[i-1]
			return a.factor + (b.factor-a.factor)*(v-a.wires)/(b.wires-a.wires), true
		}
	}
	return 0, false
}
