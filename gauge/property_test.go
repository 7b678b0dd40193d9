package gauge_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

// rung is the place of the thinnest fitting size on a ladder, its length when
// none fits.
func rung(ladder []gauge.Size, c gauge.WireCase) int {
	j, ok := gauge.Thinnest(ladder, c)
	if !ok {
		return len(ladder)
	}
	for i, s := range ladder {
		if s.Name == j.Case.Size.Name {
			return i
		}
	}
	panic("a size from nowhere")
}

// dropCase asks for a run of a current within volts.
func dropCase(p gauge.Profile, feet gauge.OneWayM, back gauge.Return, amps, volts, ambientC float64, loaded int) gauge.WireCase {
	gxl, _ := gauge.FamilyOf("GXL")
	return gauge.WireCase{
		Family: gxl, Profile: p, AmbientC: ambientC, Loaded: loaded, HeatA: amps,
		LengthM: float64(feet.Conductor(back)), MaxOhm: gauge.MaxOhmFor(amps, volts),
	}
}

// More current, length, heat or company, or fewer volts, never gives a
// thinner wire, whatever the rule-book and the areas.
func TestHarderNeverThinner(t *testing.T) {
	dice := rand.New(rand.NewPCG(7, 11))
	moved := 0
	for range 400 {
		l, amps, hot := gauge.OneWayM(dice.Float64()*12), 0.1+dice.Float64()*80, -20+dice.Float64()*120
		volts, loaded := 0.1+dice.Float64()*1.5, 1+dice.IntN(30)
		more := 1 + dice.Float64()
		for _, p := range gauge.Profiles() {
			for _, r := range gauge.AreaRules() {
				ladder := r.Ladder()
				at := rung(ladder, dropCase(p, l, gauge.ByWire, amps, volts, hot, loaded))
				for name, harder := range map[string]gauge.WireCase{
					"current": dropCase(p, l, gauge.ByWire, amps*more, volts, hot, loaded),
					"length":  dropCase(p, gauge.OneWayM(float64(l)*more), gauge.ByWire, amps, volts, hot, loaded),
					"heat":    dropCase(p, l, gauge.ByWire, amps, volts, hot+30*(more-1), loaded),
					"company": dropCase(p, l, gauge.ByWire, amps, volts, hot, loaded+dice.IntN(30)),
					"volts":   dropCase(p, l, gauge.ByWire, amps, volts/more, hot, loaded),
				} {
					got := rung(ladder, harder)
					require.GreaterOrEqual(t, got, at, "%s: %s, %s", name, p.Name, r)
					if got > at {
						moved++
					}
				}
				require.LessOrEqual(t, rung(ladder, dropCase(p, l, gauge.ByMetal, amps, volts, hot, loaded)), at)
			}
		}
	}
	require.Greater(t, moved, 1000, "the cases are too mild to tell anything")
}

// The circular-mil rule is as steady.
func TestCmilNeverThinner(t *testing.T) {
	for _, r := range gauge.AreaRules() {
		last := 0.0
		for amps := 0.5; amps < 150; amps += 0.5 {
			s, ok := r.Pick(gauge.CmilFor(gauge.OneWayFt(10).Conductor(gauge.ByWire), gauge.KRoom, amps, 0.36))
			if !ok {
				break
			}
			require.GreaterOrEqual(t, r.Cmil(s), last)
			last = r.Cmil(s)
		}
		require.Greater(t, last, 50000.0)
	}
}

// FuzzRuleBooks: whatever is asked, a rule-book answers with a finite current
// of its sources, and heat or company never raises it.
func FuzzRuleBooks(f *testing.F) {
	f.Add(10, 2.5, 85.0, 5, 20.0, uint8(0))
	f.Add(-3, 120.0, math.NaN(), 0, math.Inf(1), uint8(9))
	f.Add(30, 0.5, math.Inf(-1), -5, -1.0, uint8(3))
	families := gauge.Families()
	f.Fuzz(func(t *testing.T, awg int, mm2, ambientC float64, loaded int, warmer float64, pick uint8) {
		fam := families[int(pick)%len(families)]
		sizes := []gauge.Size{{}}
		for _, s := range []func() (gauge.Size, bool){
			func() (gauge.Size, bool) { return gauge.AWGSize(awg) },
			func() (gauge.Size, bool) { return gauge.AircraftSize(awg) },
			func() (gauge.Size, bool) { return gauge.MetricSize(mm2) },
			func() (gauge.Size, bool) { return gauge.ISOSize(mm2) },
		} {
			if s, ok := s(); ok {
				sizes = append(sizes, s, gauge.TinnedSize(s))
			}
		}
		for _, s := range sizes {
			for _, r := range gauge.AmpacityRules() {
				amps, why, conf := r.Ampacity(s, fam, ambientC, loaded)
				require.False(t, math.IsNaN(amps) || math.IsInf(amps, 0) || amps < 0, "%s %s: %g", r, s.Name, amps)
				require.NotEqual(t, "invalid", conf.String())
				for _, step := range why {
					_, ok := gauge.SourceOf(step.Source)
					require.True(t, ok, step.Source)
				}
				if !(ambientC >= -273 && ambientC < 1000 && warmer >= 0 && warmer < 1000 && loaded < 1000) {
					continue
				}
				hot, _, _ := r.Ampacity(s, fam, ambientC+warmer, loaded+1)
				require.LessOrEqual(t, hot, amps, "%s %s", r, s.Name)
			}
		}
	})
}

// FuzzHeat: the balance and its inverse agree, and stay finite.
func FuzzHeat(f *testing.F) {
	f.Add(1.2, 2.4, 0.02, 30.0, 15.0)
	f.Add(0.0, -1.0, math.Inf(1), math.NaN(), 1e300)
	f.Fuzz(func(t *testing.T, inner, outer, ohm, ambientC, amps float64) {
		wire := gauge.Cylinder{ConductorMM: inner, OutsideMM: outer, OhmPerM20: ohm}
		tempC, ok := wire.ConductorC(ambientC, amps)
		require.False(t, math.IsNaN(tempC) || math.IsInf(tempC, 0))
		sane := inner > 0.05 && outer < 100 && outer > inner*1.01 && ohm > 1e-6 && ohm < 10 && ambientC > -60 && ambientC < 200
		if !ok || !sane || !(amps > 0.01) {
			return
		}
		require.GreaterOrEqual(t, tempC, ambientC)
		// the temperature is right to a thousandth of a kelvin
		require.GreaterOrEqual(t, wire.AmpsIn(ambientC, tempC+1e-3), amps)
		require.LessOrEqual(t, wire.AmpsIn(ambientC, tempC-1e-3), amps)
	})
}

// The balance both ways: the current at the published temperature lies in a
// band of each list, and the temperature at the published current with it.
func TestConductorByHeat(t *testing.T) {
	type band struct{ low, high, kelvin float64 }
	bands := map[string]band{
		"vde-group3": {-0.12, 0.06, 12}, "thin-wall-list": {-0.02, 0.06, 4}, // 66 to 72 C: the list is a rise of 40 K
		"ac4313-curves-memory": {-0.07, 0, 30}, "ac4313-example-2": {-0.07, 0, 30},
	}
	for _, p := range gauge.HeatPoints() {
		b := bands[p.Source]
		require.True(t, p.Off() >= b.low && p.Off() <= b.high, "%s: %g", p.Name, p.Off())
		tempC, ok := p.Wire.ConductorC(p.AmbientC, p.Amps)
		require.True(t, ok)
		require.InDelta(t, p.ConductorC, tempC, b.kelvin, p.Name)
	}
	for _, p := range gauge.HeatPoints() {
		for _, share := range []float64{0.1, 0.5, 1, 1.5} {
			tempC, ok := p.Wire.ConductorC(p.AmbientC, share*p.Amps)
			require.True(t, ok)
			require.InEpsilon(t, share*p.Amps, p.Wire.AmpsIn(p.AmbientC, tempC), 1e-4, p.Name)
		}
	}
	wire := gauge.HeatPoints()[0].Wire
	_, ok := wire.ConductorC(30, 1e6)
	require.False(t, ok, "copper has melted")
	_, ok = gauge.Cylinder{}.ConductorC(30, 1)
	require.False(t, ok)
	require.Len(t, gauge.HeatPoints(), 26)
	// the square law of ConductorTempC against the balance: at half the table
	// current of a 10 AWG wire they are within 8 K
	gxl, _ := gauge.FamilyOf("GXL")
	balance, _ := gauge.CylinderOf(sized(10), gxl)
	byHeat, _ := balance.ConductorC(60, 30)
	require.InDelta(t, gauge.ConductorTempC(sized(10), gxl, 60, 30), byHeat, 8)
}

// Absurd figures: no function of the bench panics or makes NaN of them.
func TestAbsurdAnswers(t *testing.T) {
	odd := []float64{math.NaN(), math.Inf(1), math.Inf(-1), -1, 0, 1e300, -1e300}
	for _, v := range odd {
		for _, r := range gauge.AreaRules() {
			if s, ok := r.Pick(v); ok {
				require.Equal(t, r.Ladder()[0].Name, s.Name, fmt.Sprint(v))
			}
		}
		_, ok := gauge.MetricSize(v)
		require.False(t, ok)
		_, ok = gauge.ISOSize(v)
		require.False(t, ok)
		_, _, ok = gauge.AltitudeFactor(v)
		require.Equal(t, v == 0, ok)
		_, ok = gauge.ISO10133Amps(v, v)
		require.False(t, ok)
		require.False(t, math.IsNaN(gauge.FreeAirAmps(10, v, 50)))
		list, _ := gauge.AmpListOf("vde")
		require.False(t, math.IsNaN(list.At(v, 0)))
	}
}
