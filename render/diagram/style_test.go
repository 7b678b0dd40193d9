package diagram

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"legwork/gauge"

	"github.com/stretchr/testify/require"
)

// TestStrokeNames holds the legend against the strokes: the sizes that a swatch
// names are drawn with it. Areas come from gauge (ASTM B258 by formula).
func TestStrokeNames(t *testing.T) {
	for i, n := range strokeNames(false) {
		for _, word := range strings.FieldsFunc(n, func(r rune) bool { return r == ' ' || r == '-' }) {
			if awg, err := strconv.Atoi(word); err == nil {
				class, _ := strokeOf(gauge.AWGAreaMM2(awg))
				require.Equal(t, i, class, "%d AWG in %q", awg, n)
			}
		}
	}
	for i, n := range strokeNames(true) {
		for _, word := range strings.FieldsFunc(n, func(r rune) bool { return r == ' ' || r == '-' }) {
			if mm2, err := strconv.ParseFloat(word, 64); err == nil {
				class, _ := strokeOf(mm2)
				require.Equal(t, i, class, "%g mm2 in %q", mm2, n)
			}
		}
	}
}

// TestEveryStyleIsPaint holds every color to a form that plain readers of SVG
// take, and every IEC 60757 letter to a paint.
func TestEveryStyleIsPaint(t *testing.T) {
	for _, s := range styles() {
		for _, v := range []string{s.Stroke, s.Fill} {
			require.Regexp(t, `^(|none|#[0-9a-f]{6})$`, v, s.Class)
		}
	}
	for _, c := range colorOrder {
		require.Contains(t, colorPaint, c)
	}
	require.Len(t, colorOrder, len(colorPaint))
}

func TestRangesAndOrder(t *testing.T) {
	require.Equal(t, "1-3, 5, 7-8", ranges([]int{7, 2, 1, 3, 3, 8, 5}))
	list := []string{"K10", "K2", "A1", "K1"}
	slices.SortFunc(list, byNumber)
	require.Equal(t, []string{"A1", "K1", "K2", "K10"}, list)
	require.Equal(t, "2/0", awgText(-1))
}

// TestPuzzle puts tracks in order where the best order is known: a two-column
// item keeps its columns together, a coil stands beside its contact.
func TestPuzzle(t *testing.T) {
	z := &puzzle{n: 5, groups: []set{{0, 3}}, mates: [][2]set{{{1}, {4}}}}
	order := z.solve()
	at := inverseOf(order)
	require.Equal(t, at[0]+1, at[3])
	require.Equal(t, 1, max(at[1]-at[4], at[4]-at[1]))
	long := &puzzle{n: 12, units: []set{{0, 5, 11}}, bars: []barSet{{tracks: set{2, 9}}}}
	found := long.solve()
	start := make([]int, 12)
	for i := range start {
		start[i] = i
	}
	require.Less(t, long.cost(found), long.cost(start))
	long.cost(found)
	require.Equal(t, 1, long.pieces(set{0, 5, 11}))
}
