package gauge_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

// The figures of this file are the project's own worked example of a pump
// circuit, computed by hand before the code was written.

func size(t *testing.T, awg int) gauge.Size {
	t.Helper()
	s, ok := gauge.AWGSize(awg)
	require.True(t, ok)
	return s
}

func TestWorkedExampleAmpacity(t *testing.T) {
	for _, c := range []struct {
		awg      int
		ambientC float64
		want     float64
	}{
		{8, 85, 58.4}, // 90 x sqrt(40/95)
		{6, 85, 81.1}, // 125 x 0.6489
		{18, 60, 20.7},
	} {
		s := size(t, c.awg)
		got, why, conf := gauge.Ampacity(s, gauge.FamilyFor(s), c.ambientC, 1)
		require.InDelta(t, c.want, got, 0.05)
		require.Len(t, why, 2)
		require.True(t, conf.MayDecide())
	}
}

func TestWorkedExampleSupplyWire(t *testing.T) {
	s := size(t, 6)
	f := gauge.FamilyFor(s)
	require.Equal(t, "SGX", f.Name)
	temp := gauge.ConductorTempC(s, f, 85, 8.5)
	require.InDelta(t, 85.4, temp, 0.05)
	require.InDelta(t, 1.743e-3, s.OhmPerM(temp), 0.0005e-3)
	// 101 is 6 in, 102 is 41 in
	require.InDelta(t, 2.081e-3, s.OhmPerM(temp)*47*0.0254, 0.0005e-3)
}

func TestWorkedExampleChain(t *testing.T) {
	const hotM, coolM = 4.2926, 0.3048 // 169 in at 60 C, 12 in at 50 C
	for awg, want := range map[int]struct{ area, mohm float64 }{
		18: {0.7788, 121.90}, 16: {1.1837, 79.32}, 14: {1.8758, 49.50},
		12: {2.9556, 31.25}, 10: {4.7342, 19.42}, 8: {7.5043, 12.23},
	} {
		s := size(t, awg)
		f := gauge.FamilyFor(s)
		require.Equal(t, "GXL", f.Name)
		require.InDelta(t, want.area, s.AreaMM2, 0.0001)
		hot := s.OhmPerM(gauge.ConductorTempC(s, f, 60, 8.5)) * hotM
		cool := s.OhmPerM(gauge.ConductorTempC(s, f, 50, 8.5)) * coolM
		require.InDelta(t, want.mohm, (hot+cool)*1000, 0.01, s.Name)
	}
}

func TestWorkedExampleOtherOhms(t *testing.T) {
	cold, conf := gauge.FuseOhm("blade", 15)
	require.Equal(t, gauge.Medium, conf)
	require.InDelta(t, 5.447e-3, gauge.FuseOhmAt(cold, 15, 8.5), 0.0005e-3)
	warm, coldOhm := gauge.BatteryOhm(540)
	require.InDelta(t, 11.11e-3, warm, 0.005e-3)
	require.InDelta(t, 10.0e-3, coldOhm, 1e-9)
	// 4 AWG strap of 18 in; 12 AWG would miss the drop by 43 mV
	strap := size(t, 4)
	require.InDelta(t, 0.523e-3, strap.OhmPerM(85)*0.4572, 0.005e-3)
	require.InDelta(t, 270, gauge.FarEndShortA(12.6, 11.11e-3, 34.57e-3, 1.017e-3), 0.5)
}

func road(t *testing.T) gauge.Profile {
	t.Helper()
	p, ok := gauge.ProfileOf("road")
	require.True(t, ok)
	return p
}

func TestWorkedExampleSupplyJudged(t *testing.T) {
	judge := func(awg int) gauge.Judgement {
		s := size(t, awg)
		return gauge.JudgeWire(gauge.WireCase{
			Size: s, Family: gauge.FamilyFor(s), Profile: road(t), AmbientC: 85, Loaded: 1, LengthM: 41 * 0.0254,
			HeatA: 8.5, FuseA: 80, FuseName: "F1", FuseKind: "bolt-down", ShortA: 900, Wet: true,
		})
	}
	small := judge(8)
	require.False(t, small.OK)
	require.Equal(t, gauge.FloorProtection, small.Governs)
	chosen := judge(6)
	require.True(t, chosen.OK)
	require.Equal(t, gauge.FloorProtection, chosen.Governs)
	short, ok := chosen.Limit(gauge.FloorShort)
	require.True(t, ok)
	require.True(t, short.Hint, "bolt-down gates are from memory")
	require.True(t, short.OK)
}

func TestWorkedExampleChainJudged(t *testing.T) {
	// 360 mV at 8.5 A less what is not chain: 15.15 + 1.017 mohm
	left := 0.36/8.5 - 15.15e-3 - 1.017e-3
	judge := func(awg int) gauge.Judgement {
		s := size(t, awg)
		return gauge.JudgeWire(gauge.WireCase{
			Size: s, Family: gauge.FamilyFor(s), Profile: road(t), AmbientC: 60, Loaded: 2, LengthM: 4.5974,
			HeatA: 8.5, FuseA: 15, FuseName: "F3", FuseKind: "blade", ShortA: 270, MaxOhm: left, Wet: true,
		})
	}
	miss := judge(12)
	require.False(t, miss.OK)
	drop, _ := miss.Limit(gauge.FloorDrop)
	require.InDelta(t, 43, (drop.Got-drop.Asked)*8.5*1000, 1.5) // whole length taken at 60 C here
	chosen := judge(10)
	require.True(t, chosen.OK)
	require.Equal(t, gauge.FloorDrop, chosen.Governs)
	drop, _ = chosen.Limit(gauge.FloorDrop)
	require.InDelta(t, 57, (drop.Asked-drop.Got)*8.5*1000, 1.5)
	short, _ := chosen.Limit(gauge.FloorShort)
	require.False(t, short.Hint)
	require.Greater(t, short.Margin(), 10.0, "let-through far under the limit")
}
