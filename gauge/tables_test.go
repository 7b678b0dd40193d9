package gauge_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

func TestLaddersAscend(t *testing.T) {
	for _, metric := range []bool{false, true} {
		last := gauge.Size{}
		for _, s := range gauge.Ladder(metric) {
			require.Equal(t, metric, s.Metric)
			require.Greater(t, s.AreaMM2, last.AreaMM2)
			src, ok := gauge.SourceOf(s.Source)
			require.True(t, ok)
			require.True(t, src.Confidence.MayDecide(), "only sizes that may decide are offered")
			if metric {
				require.Less(t, s.AreaMM2, s.Nominal, "copper of a metric size is below its label")
			} else {
				require.Less(t, s.AreaMM2, gauge.AWGAreaMM2(s.AWG), "SAE is below AWG")
			}
			last = s
		}
	}
	require.Equal(t, "18 AWG", gauge.Ladder(false)[0].Name)
}

func TestSizesByName(t *testing.T) {
	for awg, name := range map[int]string{18: "18 AWG", 1: "1 AWG", 0: "1/0 AWG", -3: "4/0 AWG", 20: "20 AWG", 24: "24 AWG"} {
		require.Equal(t, name, size(t, awg).Name)
	}
	for _, awg := range []int{-4, 5, 7, 9, 19, 31} {
		_, ok := gauge.AWGSize(awg)
		require.False(t, ok, "%d is no stranded cable size", awg)
	}
	_, ok := gauge.MetricSize(7)
	require.False(t, ok)
	// 2.5 mm2 of 7.98 mohm/m holds 2.161 mm2 of copper, 0.864 of its label: the
	// least of class 5. 0.35 x 0.864 = 0.3025.
	thin, ok := gauge.MetricSize(0.35)
	require.True(t, ok)
	require.InDelta(t, 0.3025, thin.AreaMM2, 0.0001)
	require.Equal(t, "between-class5", thin.Source)
	for _, s := range gauge.Ladder(true) {
		require.Equal(t, "iec-60228", s.Source, "%s is chosen", s.Name)
	}
	require.True(t, math.IsInf(gauge.Size{}.OhmPerM(20), 1))
}

func TestFamilies(t *testing.T) {
	for _, f := range gauge.Families() {
		require.Greater(t, f.ShortC, f.TempC, f.Name)
		_, ok := gauge.SourceOf(f.Source)
		require.True(t, ok, f.Name)
		got, ok := gauge.FamilyOf(f.Name)
		require.True(t, ok)
		require.Equal(t, f, got)
	}
	_, ok := gauge.FamilyOf("gxl")
	require.True(t, ok)
	_, ok = gauge.FamilyOf("XYZ")
	require.False(t, ok)
	require.Equal(t, "GXL", gauge.FamilyFor(size(t, 8)).Name)
	require.Equal(t, "SGX", gauge.FamilyFor(size(t, 6)).Name)
	sixteen, _ := gauge.MetricSize(16)
	require.Equal(t, "ISO-C", gauge.FamilyFor(sixteen).Name)
}

// An 85 C class between two columns takes the 80 C one, temperature and all.
func TestClassBetweenColumns(t *testing.T) {
	gpt, _ := gauge.FamilyOf("GPT")
	amps, _ := gauge.Ampacity30(size(t, 12), gpt)
	require.InDelta(t, 35, amps, 0)
	require.InDelta(t, 80, gauge.ConductorTempC(size(t, 12), gpt, 30, 35), 1e-9)
	at, _, _ := gauge.Ampacity(size(t, 12), gpt, 80, 1)
	require.Zero(t, at)
}

func TestSmallGaugesAreComputed(t *testing.T) {
	gxl, _ := gauge.FamilyOf("GXL")
	last := 25.0 // 18 AWG in the table
	for _, awg := range []int{20, 22, 24, 26, 28, 30} {
		amps, why, conf := gauge.Ampacity(size(t, awg), gxl, 30, 1)
		require.Less(t, amps, last)
		require.Positive(t, amps)
		require.Equal(t, "heat-balance", why[0].Source)
		require.True(t, conf.MayDecide())
		last = amps
	}
}

func TestFuseTables(t *testing.T) {
	for _, family := range gauge.FuseFamilies() {
		series := gauge.FuseSeries(family)
		require.IsIncreasing(t, series)
		last := math.Inf(1)
		for _, r := range series {
			ohm, c := gauge.FuseOhm(family, r)
			require.Positive(t, ohm)
			require.Less(t, ohm, last*1.001, "%s %g", family, r)
			require.NotZero(t, c)
			last = ohm
		}
		ratedV, breakA, _, ok := gauge.FuseLimits(family)
		require.True(t, ok)
		require.GreaterOrEqual(t, ratedV, 32.0)
		// no d.c. figure was found for tubes and torpedoes: 0 says so
		require.True(t, breakA == 0 || breakA >= 1000, family)
	}
	require.Nil(t, gauge.FuseSeries("cork"))
	_, c := gauge.FuseOhm("bolt-down", 80)
	require.False(t, c.MayDecide())
	_, c = gauge.FuseOhm("blade", 15)
	require.True(t, c.MayDecide())
	ohm, _ := gauge.FuseOhm("blade", 0)
	require.Zero(t, ohm)
}

func TestChooseFuse(t *testing.T) {
	for load, want := range map[float64]float64{0.5: 1, 7.5: 10, 7.6: 15, 8.5: 15, 30: 40} {
		got, why, ok := gauge.ChooseFuse("blade", load, road(t))
		require.True(t, ok)
		require.InDelta(t, want, got, 0)
		require.Len(t, why, 2)
	}
	for _, load := range []float64{31, 0, -1, math.NaN()} {
		_, _, ok := gauge.ChooseFuse("blade", load, road(t))
		require.False(t, ok, "%g A", load)
	}
}

// The bound falls or stays as the short grows, and never rests on a gate
// above the short.
func TestLetThroughNeverRises(t *testing.T) {
	for _, family := range []string{"blade", "mini", "maxi", "cartridge", "bolt-down"} {
		last := math.Inf(1)
		for amps := 10.0; amps < 500; amps++ {
			got, gate, ok := gauge.LetThrough(family, 20, amps, false)
			if !ok {
				require.True(t, math.IsInf(last, 1))
				continue
			}
			require.LessOrEqual(t, gate.Share*20, amps)
			require.LessOrEqual(t, got, last)
			last = got
		}
		require.Less(t, last, math.Inf(1))
	}
	_, _, ok := gauge.LetThrough("maxi", 40, 4000, true)
	require.False(t, ok, "time-lag gates are from memory")
}

func TestColors(t *testing.T) {
	for word, code := range map[string]string{"BK": "BK", "blk": "BK", "ORG": "OG", "violet": "VT", "PPL": "VT", "grey": "GY", "GNYE": "GNYE"} {
		c, ok := gauge.ColorOf(word)
		require.True(t, ok, word)
		require.Equal(t, code, c.Code)
	}
	for _, word := range []string{"", "BL", "GR", "plaid"} {
		_, ok := gauge.ColorOf(word)
		require.False(t, ok, "%q means different things, or none", word)
	}
	require.Equal(t, "GRN/WHT", gauge.ShopColor("GN/WH"))
	require.Equal(t, "RED", gauge.ShopColor("RD"))
	for i, c := range gauge.Colors() {
		require.Equal(t, i+1, c.Order)
	}
}

func TestTerminalNames(t *testing.T) {
	made, ok := gauge.ISO7588("87")
	require.True(t, ok)
	require.Contains(t, made.Meaning, "make")
	start, ok := gauge.DIN72552("50")
	require.True(t, ok)
	require.Equal(t, "starter control", start.Meaning)
	_, ok = gauge.DIN72552("999")
	require.False(t, ok)
}

func TestCutLength(t *testing.T) {
	for _, c := range []struct {
		path   float64
		ends   int
		metric bool
		want   float64
	}{
		{1, 2, true, 1.21},              // 1 + 0.1524 + 0.048 = 1.2004
		{1, 0, true, 1.05},              // 1.048
		{0.952, 0, true, 1.0},           // on the step already
		{1, 2, false, 95 * 0.0127},      // 1.2004 m is 94.52 half inches
		{0.3048, 1, false, 34 * 0.0127}, // 0.429 m is 33.8 half inches
	} {
		got, why := gauge.CutLengthM(c.path, c.ends, c.metric)
		require.InDelta(t, c.want, got, 1e-9)
		require.Len(t, why, 4)
	}
}

func TestEdgesOfSmallLaws(t *testing.T) {
	_, _, ok := gauge.BreakingCapacity(2300)
	require.False(t, ok, "above the table the battery maker is asked")
	require.True(t, math.IsInf(gauge.HoursToNoStart(100, 0), 1))
	require.Zero(t, gauge.K(160, 160))
	require.Zero(t, gauge.ICEAK(160, 100))
	require.Zero(t, gauge.AmbientFactor(90, 95, 30))
	require.Zero(t, gauge.Cylinder{ConductorMM: 1, OutsideMM: 2, OhmPerM20: 0.02}.AmpsIn(50, 50))
	require.InDelta(t, 100, gauge.StateOfCharge(13), 0)
	require.InDelta(t, 0, gauge.StateOfCharge(math.NaN()), 0)
	_, ok = gauge.ConnectorPairOhm(4)
	require.False(t, ok)
	ohm, ok := gauge.ConnectorPairOhm(6.3)
	require.True(t, ok)
	require.InDelta(t, 0.0015, ohm, 0)
	_, _, ok = gauge.Inrush("anvil")
	require.False(t, ok)
	_, c, _ := gauge.Inrush("fan")
	require.False(t, c.MayDecide())
	_, ok = gauge.SwitchRating("anvil", 1, 12)
	require.False(t, ok)
	at28, _ := gauge.SwitchRating("lamp", 1, 24)
	require.InDelta(t, 8, at28, 0)
	_, ok = gauge.EquivalentAWG(-3, -3)
	require.False(t, ok)
	_, ok = gauge.ProfileOf("moon")
	require.False(t, ok)
	require.Equal(t, "road", gauge.Profiles()[0].Name)
}

func TestMeterLimits(t *testing.T) {
	for _, m := range gauge.MeterLimits() {
		src, ok := gauge.SourceOf(m.Source)
		require.True(t, ok)
		require.True(t, src.Confidence.MayDecide())
		got, ok := gauge.MeterLimitOf(m.Part)
		require.True(t, ok)
		require.Equal(t, m, got)
	}
	_, ok := gauge.MeterLimitOf("nothing")
	require.False(t, ok)
	// the two sides of a starter make the whole
	plus, _ := gauge.MeterLimitOf("starter, positive side")
	minus, _ := gauge.MeterLimitOf("starter, ground side")
	both, _ := gauge.MeterLimitOf("starter, both sides")
	require.InDelta(t, both.Volts, plus.Volts+minus.Volts, 1e-12)
}

func TestFuseColors(t *testing.T) {
	for _, c := range []struct {
		style string
		amps  float64
		color string
	}{{"blade", 10, "red"}, {"mini", 15, "light blue"}, {"maxi", 50, "red"}, {"cartridge", 30, "pink"}} {
		got, conf, ok := gauge.FuseColor(c.style, c.amps)
		require.True(t, ok)
		require.Equal(t, c.color, got)
		require.True(t, conf.MayDecide())
	}
	for style, amps := range map[string]float64{"blade": 35, "mini": 40, "maxi": 25, "bolt-down": 80} {
		_, _, ok := gauge.FuseColor(style, amps)
		require.False(t, ok, "%s %g", style, amps)
	}
}
