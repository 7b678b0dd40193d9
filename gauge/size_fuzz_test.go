package gauge_test

import (
	"math"
	"reflect"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

// FuzzSizeWire: whatever is asked, nothing panics and every figure of an
// answer is finite; a size that is OK meets all its limits, and more current,
// length, heat or company never gives a thinner wire.
func FuzzSizeWire(f *testing.F) {
	f.Add(20.0, 4.5, 12.0, 0.03, 105.0, 30.0, 1, uint8(0), uint8(0), 0.0, 0.0, 1.2)
	f.Add(100.0, 1.5, 24.0, 0.10, 125.0, 85.0, 7, uint8(1), uint8(5), 300.0, 0.0, 1.01)
	f.Add(8.5, 3.0, 12.0, 0.03, 0.0, 60.0, 3, uint8(2), uint8(3), 30.0, 15.0, 2.0)
	f.Add(3.0, 3.0, 48.0, 0.05, 150.0, -20.0, 40, uint8(6), uint8(2), 0.0, 0.0, 1.5)
	f.Add(math.NaN(), math.Inf(1), -1.0, 0.0, 1e300, -1e300, -5, uint8(9), uint8(9), -1.0, math.NaN(), math.Inf(-1))
	f.Fuzz(func(t *testing.T, amps, lengthM, volts, drop, insulationC, ambientC float64, loaded int, profile, words uint8, startA, fuseA, harder float64) {
		all := gauge.Profiles()
		a := gauge.NewAsk(amps, gauge.OneWayM(lengthM), all[int(profile)%len(all)])
		a.SystemV, a.DropShare, a.AmbientC, a.Loaded, a.StartA, a.FuseA = volts, drop, ambientC, loaded, startA, fuseA
		a.Return, a.Area, a.DropBy = gauge.Return(words&1), gauge.AreaRule(words>>1%3), gauge.DropRule(words>>3&1)
		if insulationC != 0 {
			a.Family = gauge.RatedFamily(insulationC)
		}
		got, err := gauge.SizeWire(a)
		if err != nil {
			require.NotEmpty(t, a.Check())
			return
		}
		finite(t, reflect.ValueOf(got))
		for _, g := range got.Working() {
			for _, s := range g.Steps {
				_, known := gauge.SourceOf(s.Source)
				require.True(t, known, "%s: %s", s.Text, s.Source)
			}
		}
		require.Equal(t, got.OK, got.Fault == "")
		if !got.OK {
			return
		}
		require.Empty(t, got.Chosen.Fails())
		if got.HasDown {
			require.NotEmpty(t, got.Down.Fails())
		}
		if !(harder >= 1 && harder <= 10) {
			return
		}
		neverThinner(t, a, got, harder)
	})
}

func neverThinner(t *testing.T, a gauge.Ask, got gauge.Answer, harder float64) {
	t.Helper()
	ladder := a.Area.Ladder()
	place := func(s gauge.Size) int {
		return slices.IndexFunc(ladder, func(l gauge.Size) bool { return l.Name == s.Name })
	}
	for name, change := range map[string]func(*gauge.Ask){
		"current": func(a *gauge.Ask) { a.LoadA *= harder; a.StartA *= harder },
		"length":  func(a *gauge.Ask) { a.OneWay *= gauge.OneWayM(harder) },
		"heat":    func(a *gauge.Ask) { a.AmbientC += 5 * harder },
		"company": func(a *gauge.Ask) {
			if a.Loaded > 1 { // a lone wire has to be stouter than one in a bundle
				a.Loaded += int(harder)
			}
		},
	} {
		b := a
		change(&b)
		more, err := gauge.SizeWire(b)
		if err == nil && more.OK {
			require.GreaterOrEqual(t, place(more.Chosen.Size), place(got.Chosen.Size), name)
		}
	}
}

// finite walks a value: no float in it is NaN or infinite.
func finite(t *testing.T, v reflect.Value) {
	t.Helper()
	switch v.Kind() {
	case reflect.Float64:
		require.False(t, math.IsNaN(v.Float()) || math.IsInf(v.Float(), 0))
	case reflect.Struct:
		for i := range v.NumField() {
			finite(t, v.Field(i))
		}
	case reflect.Slice:
		for i := range v.Len() {
			finite(t, v.Index(i))
		}
	}
}

// Every profile by every area rule over many loads: harder is never thinner.
func TestSizeNeverThinner(t *testing.T) {
	for _, p := range gauge.Profiles() {
		for _, area := range gauge.AreaRules() {
			for _, amps := range []float64{0.5, 3, 9, 17, 28, 60, 110} {
				for _, m := range []float64{0.3, 2, 6} {
					a := gauge.NewAsk(amps, gauge.OneWayM(m), p)
					a.Area = area
					got, err := gauge.SizeWire(a)
					require.NoError(t, err)
					if got.OK {
						neverThinner(t, a, got, 1.3)
					}
				}
			}
		}
	}
}

func TestSizeIsRepeatable(t *testing.T) {
	p, _ := gauge.ProfileOf("boat")
	a := gauge.NewAsk(20, 4, p)
	one, err := gauge.SizeWire(a)
	require.NoError(t, err)
	two, err := gauge.SizeWire(a)
	require.NoError(t, err)
	require.Equal(t, one, two)
	require.Equal(t, one.Working(), two.Working())
}
