package gauge_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

// seeds are figures that have upset laws before: nothing, too little, too
// much, and both ends of what a float holds.
var seeds = []float64{0, -1, 1, 20, 234.5, -234.5, -273.15, 1e-300, 1e9, -1e9, math.MaxFloat64, -math.MaxFloat64, math.SmallestNonzeroFloat64}

// figuresOf calls every law of devices and building with three figures, and
// gives what must be a finite number.
func figuresOf(a, b, c float64) map[string]float64 {
	out := map[string]float64{}
	keep := func(name string, v float64, ok bool) {
		if ok {
			out[name] = v
		} else {
			out[name+" refused"] = 0 * v // still no NaN, no Inf
		}
	}
	keep1 := func(name string) func(float64, bool) {
		return func(v float64, ok bool) { keep(name, v, ok) }
	}
	keep1("least fuse")(gauge.LeastFuseA(a, b, c))
	keep1("pulse")(gauge.PulseA2S("ramp", a, b))
	keep1("trapezoid")(gauge.TrapezoidA2S(a, b, c))
	keep1("pulses")(gauge.PulseShare(a))
	keep1("next size")(gauge.NextSizeA("blade", a, b))
	keep1("largest")(gauge.LargestFuseA("midi", a))
	keep1("volts at charge")(gauge.VoltsAtCharge(a))
	keep1("load test")(gauge.LoadTestLeastV(a))
	keep1("bank break")(gauge.BankBreakA(a))
	keep1("bank")(gauge.BankShortA(a, 6, 2))
	keep1("regulator")(gauge.RegulatorV(a))
	keep1("amps of")(gauge.AmpsOf(a, b))
	keep1("drop area")(gauge.DropAreaMM2(a, gauge.ConductorM(b), c, 1))
	keep1("breaks")(gauge.BreakingN(a))
	keep1("most bundle")(gauge.MostBundleMM(a, b))
	keep1("conduit")(gauge.ConduitInsideMM(a))
	keep1("recovered")(gauge.RecoveredMM(a, b))
	keep1("bend extra")(gauge.BendExtraMM(a, b))
	keep1("tolerance")(gauge.LengthToleranceM(a))
	keep1("tolerance in")(gauge.LengthToleranceIn(a))
	keep1("twist")(gauge.TwistRatio(a, b))
	keep1("pitch")(gauge.TwistPitchMM(a, b))
	keep1("taped")(gauge.TapedMM(a, b, true))
	keep1("tape")(gauge.TapeLengthM(a, b, c, 19))
	keep1("insulation")(gauge.InsulationLimitOhm(a))
	keep1("loading")(gauge.ContactLoading(22, a))
	share, _, ok := gauge.FuseAmbientShare(a)
	keep("ambient", share, ok)
	k, _, ok := gauge.KOf("aluminum", a, b)
	keep("k of", k, ok)
	hot, _, ok := gauge.HotOutputA(a, b)
	keep("output", hot, ok)
	contact, _, ok := gauge.ContactA(a, "motor")
	keep("contact", contact, ok)
	ohm, _, _, ok := gauge.BatteryOhmBy("EN", a)
	keep("battery", ohm, ok)
	crimp, _, ok := gauge.CrimpByStrength(a)
	keep("crimp", crimp, ok)
	laid, stays, ok := gauge.BendRadiusMM(a)
	keep("bend", laid+stays, ok)
	from, to, ok := gauge.ReleaseSpan(a)
	keep("release", from+to, ok)
	least, most, ok := gauge.RegulatorBand(a)
	keep("band", least+most, ok)
	out["k"] = gauge.K(a, b)
	out["icea"] = gauge.ICEAK(a, b)
	out["withstand"] = gauge.WithstandA2S(a, b, c)
	out["charge"] = gauge.StateOfCharge(a)
	return out
}

// FuzzFiguresAreFinite: no law answers with NaN or infinity, whatever it is
// given, and the larger cases neither panic nor contradict themselves.
func FuzzFiguresAreFinite(f *testing.F) {
	for i, a := range seeds {
		f.Add(a, seeds[(i+3)%len(seeds)], seeds[(i+7)%len(seeds)])
	}
	f.Add(8.5, 0.75, 1.0)
	f.Add(8.0, 85.0, 12.0)
	f.Add(math.NaN(), math.Inf(1), math.Inf(-1))
	f.Fuzz(func(t *testing.T, a, b, c float64) {
		for name, v := range figuresOf(a, b, c) {
			require.False(t, math.IsNaN(v) || math.IsInf(v, 0), "%s of %g, %g, %g", name, a, b, c)
		}
		road, _ := gauge.ProfileOf("road")
		w := gauge.FuseWindow(gauge.WindowCase{Style: "blade", LoadA: a, WireA: b, AmbientC: c, Known: true, StartA: b, StartS: c, Profile: road})
		require.Equal(t, w.OK, w.Trouble == "")
		if w.OK {
			require.True(t, w.RatedA >= w.LeastA && w.RatedA <= w.MostA)
			require.False(t, math.IsNaN(w.HintA) || math.IsInf(w.HintA, 0))
		}
		if v, ok := gauge.HotCoil(gauge.CoilCase{PullInV: a, PlaceC: b, HeldV: c, CoilV: a}); ok {
			require.False(t, math.IsNaN(v.WantedV) || math.IsInf(v.WantedV, 0))
			require.True(t, !v.Sound || v.PullsIn)
		}
		if s, ok := gauge.FarEndShort(a, "mini", b, gauge.Ohms{Name: "path", Ohm: c}); ok {
			require.False(t, math.IsNaN(s.Times) || math.IsInf(s.Times, 0))
			require.True(t, !s.Fast || s.Wanted)
		}
		if bundle, ok := gauge.BundleOf(a, b, c, c); ok {
			require.True(t, bundle.MM >= bundle.FloorMM && bundle.PackedMM >= bundle.FloorMM*(1-1e-9))
			require.False(t, math.IsInf(bundle.MM, 0))
		}
		if budget, ok := gauge.ChargeBudget([]gauge.BudgetLoad{{Duty: gauge.Intermittent, Amps: a}}, b, c); ok {
			require.Equal(t, budget.OK, budget.LeftA >= 0)
		}
		up, down := gauge.FuseAt{Style: "maxi", RatedA: a}, gauge.FuseAt{Style: "blade", RatedA: b}
		if o, _, _, ok := gauge.Selective(up, down, c); ok {
			back, _, _, _ := gauge.Selective(down, up, c)
			require.False(t, o == gauge.LowerFirst && back == gauge.LowerFirst && a == b)
		}
		if days, _, ok := gauge.DrainDays(a, b); ok {
			require.True(t, !math.IsNaN(days) && days >= 0)
		}
	})
}

// Where infinity is the answer it is documented, and there is no NaN.
func TestInfinityIsMeant(t *testing.T) {
	for _, v := range []float64{
		gauge.FuseOhmAt(0.005, 0, 0), gauge.SuppressPeakV(0, 0, 0), gauge.CoilFrom(8, -234.5, 20), gauge.FarEndShortA(0),
		gauge.ShortAreaMM2(0, -1, 0), gauge.BatteryOhmEN(0), gauge.HoursToNoStart(0, 0),
	} {
		require.True(t, math.IsInf(v, 1), "%g", v)
	}
	warm, cold := gauge.BatteryOhm(-5)
	require.True(t, math.IsInf(warm, 1) && math.IsInf(cold, 1))
	for _, v := range []float64{
		gauge.FuseTestA(0, 0), gauge.PreeceA(-1), gauge.OnderdonkA(-1, 1, 20), gauge.OnderdonkA(1, 0, 20), gauge.OnderdonkA(1, 1, 2000),
		gauge.K(-300, 20), gauge.ICEAK(-300, 20), gauge.WithstandA2S(-1, 20, 160),
	} {
		require.Zero(t, v)
	}
}
