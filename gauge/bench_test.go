package gauge_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

func TestAreaRules(t *testing.T) {
	for _, r := range gauge.AreaRules() {
		same, ok := gauge.AreaRuleOf(r.String())
		require.True(t, ok)
		require.Equal(t, r, same)
		require.NotEqual(t, "invalid", r.Title())
		_, ok = gauge.SourceOf(r.Source())
		require.True(t, ok)
		last := 0.0
		for _, s := range r.Ladder() {
			require.Greater(t, r.Cmil(s), last)
			last = r.Cmil(s)
		}
		_, ok = r.Pick(1e7)
		require.False(t, ok)
	}
	_, ok := gauge.AreaRuleOf("cubit")
	require.False(t, ok)
	require.Equal(t, "invalid", gauge.AreaRule(9).String())
	// the same 10 A over 21 ft within 0.36 V: 12 by AWG area, 10 by SAE area
	for rule, want := range map[gauge.AreaRule]string{gauge.AreaAWG: "12 AWG", gauge.AreaSAE: "10 AWG", gauge.AreaISO: "4 mm2"} {
		s, ok := rule.Pick(gauge.CmilFor(gauge.ConductorFt(21), gauge.KRoom, 10, 0.36))
		require.True(t, ok)
		require.Equal(t, want, s.Name)
	}
}

func TestLengthsAreNotConfused(t *testing.T) {
	l := gauge.OneWayFt(10.5)
	require.InDelta(t, 21, l.Conductor(gauge.ByWire).Feet(), 1e-12)
	require.InDelta(t, 10.5, l.Conductor(gauge.ByMetal).Feet(), 1e-12)
	s := sized(10)
	there, back := gauge.DropOver(l.Conductor(gauge.ByMetal), s, 50, 8.5, 12), gauge.DropOver(l.Conductor(gauge.ByWire), s, 50, 8.5, 12)
	require.InDelta(t, 2*there.Volts, back.Volts, 1e-12)
	require.InDelta(t, back.Volts/12, back.Share, 1e-15)
	require.Len(t, back.Why, 4)
	require.Zero(t, gauge.DropOver(1, s, 20, 1, 0).Share)
	require.Equal(t, []string{"wire", "metal", "invalid"}, []string{gauge.ByWire.String(), gauge.ByMetal.String(), gauge.Return(7).String()})
	require.InDelta(t, 0.36/8.5, gauge.MaxOhmFor(8.5, 0.36), 1e-15)
}

func TestConstantsExplained(t *testing.T) {
	for _, tempC := range []float64{-40, 20, 75, 125} {
		for _, stranded := range []bool{false, true} {
			require.InDelta(t, tempC, gauge.KTempC(gauge.KAt(tempC, stranded), stranded), 1e-9)
		}
	}
	why := gauge.KMeaning(gauge.KRoom)
	require.InDelta(t, 29.3, why[1].Value, 0.05) // solid copper
	require.InDelta(t, 24.1, why[2].Value, 0.05) // with strand lay
	require.InDelta(t, gauge.KHot, gauge.KAt(75, true), 0.01)
	// 0.0164 ohm mm2/m is better than copper at 20 C can be
	require.InDelta(t, 0.95, gauge.KMetric/(gauge.RhoCopper20*1e6), 0.002)
}

func TestRuleBooks(t *testing.T) {
	gxl, _ := gauge.FamilyOf("GXL")
	gpt, _ := gauge.FamilyOf("GPT")
	amps := func(r gauge.AmpacityRule, awg int, f gauge.Family, ambientC float64, loaded int) float64 {
		got, why, _ := r.Ampacity(sized(awg), f, ambientC, loaded)
		require.NotEmpty(t, why)
		return got
	}
	// the aircraft table holds bundle and altitude: nothing is taken off again
	require.InDelta(t, 10, amps(gauge.AmpacityAircraft, 14, gxl, 20, 1), 0)
	require.InDelta(t, 10, amps(gauge.AmpacityAircraft, 14, gxl, 70, 40), 0)
	require.InDelta(t, 7.559, amps(gauge.AmpacityAircraft, 14, gxl, 85, 40), 1e-3) // 10 sqrt(20/35)
	require.InDelta(t, 6.547, amps(gauge.AmpacityAircraft, 14, gpt, 70, 40), 1e-3) // 85 C: 10 sqrt(15/35)
	require.InDelta(t, 0.989, amps(gauge.AmpacityAircraft, 28, gxl, 70, 1), 1e-3)  // 24 AWG by area: 2.5 x 0.0810/0.2047
	// the body-builder table never gives more than table 5 with its notes
	require.InDelta(t, 21, amps(gauge.AmpacityBodyBuilder, 10, gxl, 40, 24), 0)
	require.InDelta(t, 35, amps(gauge.AmpacityBodyBuilder, 6, gxl, 40, 1), 0) // 10 mm2 row, 15 mm2 is above 13.3
	require.InDelta(t, 8, amps(gauge.AmpacityBodyBuilder, 16, gpt, 30, 25), 1e-9)
	for _, s := range gauge.Ladder(false) {
		cfr, _, _ := gauge.AmpacityCFR.Ampacity(s, gxl, 40, 25)
		own, _, _ := gauge.AmpacityBodyBuilder.Ampacity(s, gxl, 40, 25)
		alone, _, _ := gauge.AmpacityBodyBuilder.Ampacity(s, gxl, 40, 1)
		require.Equal(t, alone, own, "%s: the guide lies below 25 loaded conductors", s.Name)
		require.Less(t, own, cfr)
	}
	// lists of a 40 K rise hold up to 85 C for a 125 C wire
	require.InDelta(t, 25, amps(gauge.AmpacityThinWall, 14, gxl, 85, 1), 1e-9)
	require.InDelta(t, 17.678, amps(gauge.AmpacityThinWall, 14, gxl, 105, 1), 1e-3) // sqrt(20/40)
	require.InDelta(t, 21*0.65, amps(gauge.AmpacityVDE, 14, gxl, 30, 6), 1e-9)
	for _, r := range gauge.AmpacityRules() {
		same, ok := gauge.AmpacityRuleOf(r.String())
		require.True(t, ok)
		require.Equal(t, r, same)
	}
	require.Equal(t, "invalid", gauge.AmpacityRule(99).String())
	require.Empty(t, gauge.AmpacityRule(99).Source())
}

func TestProfilesNameTheirRules(t *testing.T) {
	want := map[string][2]string{
		"road": {"cfr", "sae"}, "boat": {"cfr", "awg"}, "aircraft": {"aircraft", "awg"},
		"body-builder": {"body-builder", "sae"}, "thin-wall": {"thin-wall", "iso"}, "vde": {"vde", "iso"},
	}
	for name, rules := range want {
		p, ok := gauge.ProfileOf(name)
		require.True(t, ok, name)
		require.Equal(t, rules, [2]string{p.Ampacity.String(), p.Area.String()}, name)
	}
	// 15 A on 14 AWG in a bundle: fine on the road, too much by table 11-9
	gxl, _ := gauge.FamilyOf("GXL")
	judged := func(name string) gauge.Limit {
		p, _ := gauge.ProfileOf(name)
		l, ok := gauge.JudgeWire(gauge.WireCase{Size: sized(14), Family: gxl, Profile: p, AmbientC: 40, Loaded: 3, HeatA: 15}).Limit(gauge.FloorAmpacity)
		require.True(t, ok)
		return l
	}
	require.True(t, judged("road").OK)
	require.False(t, judged("aircraft").OK)
	require.Equal(t, "ac4313-table-11-9", judged("aircraft").Why[0].Source)
}

func TestMakeOfWires(t *testing.T) {
	made, ok := gauge.StrandingOf(sized(16))
	require.True(t, ok)
	require.Equal(t, "19/29", made.Text)
	require.InDelta(t, 1.2201, made.AreaMM2(), 1e-4) // 3 % above the least area 1.1837
	require.InDelta(t, 1.43, made.OverMM(), 0.005)
	for _, awg := range []int{18, 16, 14, 12, 10, 8} {
		made, _ := gauge.StrandingOf(sized(awg))
		over := made.AreaMM2() / sized(awg).AreaMM2
		require.True(t, over > 1.03 && over < 1.05, "%d AWG: usual strands are 3 to 5 %% above SAE: %g", awg, over)
	}
	_, ok = gauge.StrandingOf(sized(4))
	require.False(t, ok)
	tin := gauge.TinnedSize(sized(12))
	require.True(t, tin.Tinned)
	require.Equal(t, "12 AWG tinned", tin.Name)
	require.Equal(t, tin, gauge.TinnedSize(tin))
	for _, f := range gauge.Families() {
		for _, s := range append(gauge.Ladder(false), gauge.Ladder(true)...) {
			d := gauge.DiameterOf(s, f)
			require.Greater(t, d.OutsideMM, d.ConductorMM, "%s %s", s.Name, f.Name)
			require.Positive(t, d.WallMM)
			_, ok := gauge.SourceOf(d.Source)
			require.True(t, ok)
		}
	}
	gxl, _ := gauge.FamilyOf("GXL")
	require.True(t, gauge.DiameterOf(sized(12), gxl).Confidence().MayDecide(), "read in a data sheet")
	txl, _ := gauge.FamilyOf("TXL")
	require.False(t, gauge.DiameterOf(sized(12), txl).Confidence().MayDecide(), "walls are from memory")
}

func TestAircraftCurves(t *testing.T) {
	half, c, ok := gauge.AltitudeFactor(10000)
	require.True(t, ok)
	require.InDelta(t, 0.955, half, 1e-9)
	require.True(t, c.MayDecide())
	_, c, _ = gauge.AltitudeFactor(40000)
	require.False(t, c.MayDecide(), "60,000 ft is from memory")
	_, _, ok = gauge.AltitudeFactor(70000)
	require.False(t, ok)
	for _, b := range []struct {
		wires  int
		loaded float64
		want   float64
		ok     bool
	}{
		{1, 1, 1, true}, {8, 0.6, 0.60, true}, {5, 0.5, 0.60, true}, {8, 0.7, 0.43, true}, {12, 1, 0.43, true},
		{20, 0.2, 0.52, true}, {35, 0.2, 0.52, true}, {36, 0.2, 0, false}, {20, 0.5, 0, false}, {0, 0.1, 0, false}, {3, -1, 0, false},
	} {
		got, _, ok := gauge.AircraftBundleFactor(b.wires, b.loaded)
		require.Equal(t, b.ok, ok, "%d wires at %g", b.wires, b.loaded)
		require.InDelta(t, b.want, got, 0, "%d wires at %g", b.wires, b.loaded)
	}
	_, ok = gauge.AircraftAmps(14, 125)
	require.False(t, ok, "no such column")
	amps, ok := gauge.AircraftAmps(14, 150)
	require.True(t, ok)
	require.InDelta(t, 14, amps, 0)
	require.InDelta(t, 50, gauge.AircraftConductorC(50, 200, 1, 0), 0)
}

// Table 5 with both notes to the letter: a marine catalog's cells for engine
// spaces, to half a printed tenth.
func TestLawToTheLetter(t *testing.T) {
	for _, c := range bundledHot {
		amps, conf, ok := gauge.LawAmps(c.awg, 105, c.loaded, true)
		require.True(t, ok)
		require.True(t, conf.MayDecide())
		require.InDelta(t, c.amps, amps, 0.051, "%d AWG of %d", c.awg, c.loaded)
	}
	for _, c := range bundled {
		amps, _, _ := gauge.LawAmps(c.awg, 105, c.loaded, false)
		require.InDelta(t, c.amps, amps, 0.051, "%d AWG of %d", c.awg, c.loaded)
	}
	_, _, ok := gauge.LawAmps(20, 105, 1, false)
	require.False(t, ok, "20 AWG is not in the table")
	_, _, ok = gauge.EngineSpaceFactor(110)
	require.False(t, ok)
}
