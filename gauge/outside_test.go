package gauge_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

// outside is one published value that a public function has to give. Derived
// ones are computed by our code from other figures; the rest are look-ups.
type outside struct {
	name    string
	source  string // published source, beside the value
	got     float64
	want    float64
	within  float64 // absolute tolerance, from the digits or spread of the source
	derived bool
}

// outsideValues gathers the values of every topic.
func outsideValues() []outside {
	return slices.Concat(
		resistanceValues(), dropValues(), chartValues(), bundleValues(), ambientValues(),
		heatValues(), marineValues(), aircraftValues(), listValues(), pointValues(), tableValues(), shortValues(), fuseValues(), relayValues(), batteryValues(), lookUps(),
		protectionValues(), electricValues(), buildValues(),
	)
}

// Floors of the count, so that values cannot quietly go missing.
const (
	leastOutside = 1180
	leastDerived = 614
)

func TestOutsideValues(t *testing.T) {
	names := map[string]bool{}
	for _, v := range outsideValues() {
		t.Run(v.name, func(t *testing.T) {
			require.NotEmpty(t, v.source)
			require.False(t, names[v.name], "named twice")
			names[v.name] = true
			require.GreaterOrEqual(t, v.within, 0.0)
			require.False(t, math.IsNaN(v.got))
			require.InDelta(t, v.want, v.got, v.within, "%s", v.source)
		})
	}
}

func TestOutsideValuesAreCounted(t *testing.T) {
	all := outsideValues()
	derived := 0
	for _, v := range all {
		if v.derived {
			derived++
		}
	}
	t.Logf("%d published values, %d of them derived", len(all), derived)
	require.GreaterOrEqual(t, len(all), leastOutside)
	require.GreaterOrEqual(t, derived, leastDerived)
}

func init() { gauge.OutsideSummary = summarize }

// summarize counts the published values by document, for docs/sources.md:
// how many, how many derived, and how far the furthest derived one lies off.
func summarize() (rows [][]any) {
	type line struct {
		all, derived int
		off          float64
	}
	lines := map[string]*line{}
	var titles []string
	for _, v := range outsideValues() {
		title, _, _ := strings.Cut(v.source, ": ") // what it says stands behind
		l := lines[title]
		if l == nil {
			l = &line{}
			lines[title] = l
			titles = append(titles, title)
		}
		l.all++
		if v.derived {
			l.derived++
		}
		if v.derived && v.want != 0 {
			l.off = max(l.off, math.Abs(v.got/v.want-1))
		}
	}
	slices.Sort(titles)
	for _, title := range titles {
		l := lines[title]
		rows = append(rows, []any{title, l.all, l.derived, l.all - l.derived, fmt.Sprintf("%.1f %%", 100*l.off)})
	}
	return rows
}

// sized is AWGSize for a gauge that is known to exist.
func sized(awg int) gauge.Size {
	s, ok := gauge.AWGSize(awg)
	if !ok {
		panic(fmt.Sprintf("no size for gauge %d", awg))
	}
	return s
}

// rated is an insulation of a class temperature that no family has.
func rated(tempC float64) gauge.Family {
	return gauge.Family{Name: "rated", TempC: tempC, Source: "ampacity-33cfr183"}
}
