package gauge_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

// asked is a load over a run of conductor in feet, out and back, as charts
// read it.
func asked(t *testing.T, profile string, amps, roundTripFt, dropShare float64) gauge.Ask {
	t.Helper()
	p, ok := gauge.ProfileOf(profile)
	require.True(t, ok, profile)
	a := gauge.NewAsk(amps, gauge.OneWayFt(roundTripFt/2), p)
	a.DropShare = dropShare
	return a
}

func sizeOf(t *testing.T, a gauge.Ask) gauge.Answer {
	t.Helper()
	got, err := gauge.SizeWire(a)
	require.NoError(t, err)
	return got
}

// warmCells are those of the 3 % chart by SAE areas where the road profile
// goes a size up: the charts count copper at 29 C, and in a place of 30 C the
// printed size is up to 4 % over the limit once its own current warms it.
var warmCells = map[[2]int]string{
	{15, 80}: "2 AWG", {20, 40}: "4 AWG", {20, 60}: "2 AWG", {20, 100}: "1 AWG", {25, 50}: "2 AWG", {25, 80}: "1 AWG", {50, 25}: "2 AWG",
}

// The whole answer against every cell of the published charts, as the profile
// comes: SAE areas under road, AWG areas under boat. Misses of the print are
// those that the outside checks of the charts state.
func TestSizeAgreesWithChartsAt3Percent(t *testing.T) {
	same := 0
	for _, c := range chart3 {
		at := [2]int{c[0], c[1]}
		got := sizeOf(t, asked(t, "road", float64(c[1]), float64(c[0]), 0.03))
		require.True(t, got.OK, c)
		warm, isWarm := warmCells[at]
		printed, isMiss := chartMiss[at]
		switch {
		case isWarm:
			require.Equal(t, warm, got.Chosen.Size.Name, c)
			require.Equal(t, c[2], got.Down.Size.AWG, "a size up, no more: %v", c)
			require.InDelta(t, 0.36, got.Down.DropV, 0.04*0.36, c)
			require.Greater(t, got.Down.DropV, 0.36, c)
		case isMiss:
			require.Equal(t, printed, got.Chosen.Size.AWG, c)
		default:
			require.Equal(t, c[2], got.Chosen.Size.AWG, c)
			same++
		}
	}
	require.Equal(t, 72-6-7, same)
}

func TestSizeAgreesWithChartRuleAt3Percent(t *testing.T) {
	for _, c := range chart3 {
		a := asked(t, "road", float64(c[1]), float64(c[0]), 0.03)
		a.DropBy = gauge.DropChart
		want, miss := chartMiss[[2]int{c[0], c[1]}]
		if !miss {
			want = c[2]
		}
		require.Equal(t, want, sizeOf(t, a).Chosen.Size.AWG, c)
	}
	for _, c := range marine3 {
		got := sizeOf(t, asked(t, "boat", float64(c[1]), float64(c[0]), 0.03))
		want, miss := marine3Miss[[2]int{c[0], c[1]}]
		if !miss {
			want = c[2]
		}
		require.Equal(t, want, got.Chosen.Size.AWG, c)
		require.True(t, got.OK, c)
		if !miss && got.HasDown {
			require.Equal(t, gauge.FloorDrop, got.Governs, c)
		}
	}
}

// The 10 % charts let the drop alone decide for small currents: where the
// answer is thicker, ampacity or the fuse asks for it, never the drop.
func TestSizeAgainstChartsAt10Percent(t *testing.T) {
	// 14 AWG of 105 C carries 35 A; 8 AWG lets a fuse be 120 A, and the next
	// from 80/0.75 A up is 125 A
	boat := map[[2]int]string{{10, 40}: gauge.FloorAmpacity, {15, 80}: gauge.FloorProtection, {15, 50}: gauge.FloorAmpacity}
	for _, c := range marine10 {
		got := sizeOf(t, asked(t, "boat", float64(c[1]), float64(c[0]), 0.10))
		if floor, other := boat[[2]int{c[0], c[1]}]; other {
			require.Less(t, got.Chosen.Size.AWG, c[2], c)
			_, failed := failing(got.Down, floor)
			require.True(t, failed, "%v: %s", c, floor)
			continue
		}
		require.Equal(t, c[2], got.Chosen.Size.AWG, c)
	}
	// from 20 A on, where the print looks at drop alone, the fuse is larger
	// than its size may have on the road
	for _, c := range chart10 {
		got := sizeOf(t, asked(t, "road", float64(c[1]), float64(c[0]), 0.10))
		if c[1] < 25 {
			require.Equal(t, c[2], got.Chosen.Size.AWG, c)
			continue
		}
		require.Less(t, got.Chosen.Size.AWG, c[2], c)
		_, failed := failing(got.Down, gauge.FloorProtection)
		require.True(t, failed, c)
	}
}

func failing(c gauge.Candidate, floor string) (gauge.Limit, bool) {
	for _, l := range c.Fails() {
		if l.Name == floor {
			return l, true
		}
	}
	return gauge.Limit{}, false
}

// Published choices of a size, D08 to D22 of the worked examples.
func TestSizeWorkedExamples(t *testing.T) {
	with := func(a gauge.Ask, volts, insulationC float64) gauge.Ask {
		a.SystemV = volts
		if insulationC > 0 {
			a.Family = gauge.RatedFamily(insulationC)
		}
		return a
	}
	for _, c := range []struct {
		name, source string
		ask          gauge.Ask
		want         string
	}{
		{"20 A over 50 ft with ground, 1 V of a 28 V bus", "FAA AC 43.13-1B, 11-68 example 1", with(asked(t, "aircraft", 20, 50, 1.0/28), 28, 200), "8 AWG"},
		{"10 A over 21 ft at 3 %", "published 12 V 3 % wire chart by SAE areas", asked(t, "road", 10, 21, 0.03), "10 AWG"},
		{"10 A over 21 ft at 10 %", "published 12 V 10 % wire chart", asked(t, "road", 10, 21, 0.10), "16 AWG"},
		{"100 A over 10 ft at 24 V 3 %", "trade article: 105 C ampacity overrides 8 AWG", with(asked(t, "boat", 100, 10, 0.03), 24, 105), "6 AWG"},
		{"20 A over 10 ft at 3 %, AWG areas", "published 12 V 3 % wire chart by AWG areas", asked(t, "boat", 20, 10, 0.03), "12 AWG"},
		{"20 A over 10 ft at 3 %, SAE areas", "published 12 V 3 % wire chart by SAE areas", asked(t, "road", 20, 10, 0.03), "10 AWG"},
		{"10 A over 30 ft at 3 %, road", "published 12 V 3 % wire chart by SAE areas", asked(t, "road", 10, 30, 0.03), "10 AWG"},
		{"10 A over 30 ft at 3 %, boat", "published 12 V 3 % wire chart by AWG areas", asked(t, "boat", 10, 30, 0.03), "10 AWG"},
		{"25 A over 10 ft at 10 %", "published 12 V 10 % wire chart", asked(t, "boat", 25, 10, 0.10), "16 AWG"},
		// 45 A behind 60 A: the drop alone gives the article's 8 AWG
		{"45 A over 40 ft at 10 %", "trade article, AWG areas", asked(t, "boat", 45, 40, 0.10), "8 AWG"},
	} {
		got := sizeOf(t, c.ask)
		require.True(t, got.OK, c.name)
		require.Equal(t, c.want, got.Chosen.Size.Name, "%s (%s)", c.name, c.source)
	}
	// drop alone would let the 24 V run be 8 AWG, as the article says
	got := sizeOf(t, with(asked(t, "boat", 100, 10, 0.03), 24, 105))
	require.Equal(t, gauge.FloorAmpacity, got.Governs)
	l, _ := got.Down.Limit(gauge.FloorDrop)
	require.True(t, l.OK)
}

// By hand: 20 A over 15 ft one way, 30 ft (9.144 m) of 6 AWG SAE: 1.3870
// mohm/m at 20 C (17.241/12.434), copper at 30 + 95 (20/125)^2 = 32.43 C,
// x 266.93/254.5 = 1.4547 mohm/m, 13.30 mohm, 266 mV.
func TestSizeByHand(t *testing.T) {
	road, _ := gauge.ProfileOf("road")
	got := sizeOf(t, gauge.NewAsk(20, gauge.OneWayFt(15), road))
	require.Equal(t, "6 AWG", got.Chosen.Size.Name)
	require.Equal(t, "SGX", got.Chosen.Family.Name)
	require.InDelta(t, 0.266, got.Chosen.DropV, 0.0002)
	require.InDelta(t, 0.266/12, got.DropShare, 0.0001)
	require.InDelta(t, 32.432, got.Chosen.ConductorC, 0.001)
	require.InDelta(t, 125, got.Chosen.AmpacityA, 1e-9)
	require.InDelta(t, 20/0.75, got.FuseMinA, 1e-9)
	require.InDelta(t, 125, got.FuseMaxA, 1e-9)
	require.Equal(t, []any{30.0, "blade", gauge.FloorDrop}, []any{got.FuseA, got.FuseStyle, got.Governs})
	require.Equal(t, []string{"8 AWG", "4 AWG"}, []string{got.Down.Size.Name, got.Up.Size.Name})
	// back by metal: half the copper, half the drop
	half := gauge.NewAsk(20, gauge.OneWayFt(15), road)
	half.Return = gauge.ByMetal
	require.InDelta(t, 9.144/2, float64(sizeOf(t, half).Conductor), 1e-9)
	require.Equal(t, "10 AWG", sizeOf(t, half).Chosen.Size.Name)
}

func TestSizeStart(t *testing.T) {
	a := asked(t, "road", 8.5, 40, 0.03)
	a.StartA, a.StartS = 30, 0.2
	got := sizeOf(t, a)
	require.Equal(t, 15.0, got.FuseA)
	// ISO 8820-3: at 200 % a blade holds 0.10 s at least and opens within 5 s
	require.InDelta(t, 0.10, got.Start.HoldS, 1e-12)
	require.InDelta(t, 5, got.Start.OpenS, 1e-12)
	require.True(t, got.Start.Sure)
	// 25 A: 30 A is 120 %, below the 135 % gate that holds 0.35 s
	require.Equal(t, 25.0, got.Start.WantsA)
	require.InDelta(t, 12-got.Chosen.DropV*30/8.5, got.Start.LeftV, 1e-9)
	require.Contains(t, got.Notes[0], "25 A would hold it, and this wire allows it")
}

func TestSizeGivenFuse(t *testing.T) {
	a := asked(t, "road", 8.5, 20, 0.10)
	free := sizeOf(t, a)
	a.FuseA = 40
	got := sizeOf(t, a)
	require.True(t, got.OK)
	require.Equal(t, gauge.FloorProtection, got.Governs)
	require.Equal(t, []any{40.0, "blade", 8.5 / 0.80}, []any{got.FuseA, got.FuseStyle, got.FuseMinA})
	require.Less(t, free.Chosen.Size.AreaMM2, got.Chosen.Size.AreaMM2)
	require.Contains(t, got.Notes[0], free.Chosen.Size.Name+" would do")
	a.FuseA = 7.5
	got = sizeOf(t, a)
	require.False(t, got.OK)
	require.Contains(t, got.Fault, "opens under a load of 8.5 A")
	a.FuseA = 10
	require.Contains(t, sizeOf(t, a).Notes[0], "takes 85 % of the 10 A fuse")
	a.FuseA = 1000
	require.Contains(t, sizeOf(t, a).Fault, "no size is protected by 1000 A")
}

func TestSizeRefuses(t *testing.T) {
	road, _ := gauge.ProfileOf("road")
	for _, c := range []struct {
		field  string
		change func(*gauge.Ask)
	}{
		{"amps", func(a *gauge.Ask) { a.LoadA = math.NaN() }},
		{"amps", func(a *gauge.Ask) { a.LoadA = 0 }},
		{"amps", func(a *gauge.Ask) { a.LoadA = 1e6 }},
		{"length", func(a *gauge.Ask) { a.OneWay = -1 }},
		{"length", func(a *gauge.Ask) { a.OneWay = gauge.OneWayM(math.Inf(1)) }},
		{"volts", func(a *gauge.Ask) { a.SystemV = 230 }},
		{"drop", func(a *gauge.Ask) { a.DropShare = 0 }},
		{"insulation", func(a *gauge.Ask) { a.Family = gauge.RatedFamily(1000) }},
		{"ambient", func(a *gauge.Ask) { a.AmbientC = 300 }},
		{"ambient", func(a *gauge.Ask) { a.AmbientC = 125 }}, // as hot as the insulation may be
		{"bundle", func(a *gauge.Ask) { a.Loaded = 0 }},
		{"start-current", func(a *gauge.Ask) { a.StartA = 1 }},
		{"start-time", func(a *gauge.Ask) { a.StartS = 1e9 }},
		{"fuse", func(a *gauge.Ask) { a.FuseA = -5 }},
		{"fuse-style", func(a *gauge.Ask) { a.FuseStyle = "horseshoe" }},
		{"return", func(a *gauge.Ask) { a.Return = 7 }},
		{"area", func(a *gauge.Ask) { a.Area = 7 }},
		{"drop-by", func(a *gauge.Ask) { a.DropBy = 7 }},
		{"profile", func(a *gauge.Ask) { a.Profile = gauge.Profile{} }},
	} {
		a := gauge.NewAsk(20, 5, road)
		c.change(&a)
		_, err := gauge.SizeWire(a)
		var no gauge.Refusals
		require.ErrorAs(t, err, &no, c.field)
		require.Equal(t, c.field, no[0].Field)
		require.NotEmpty(t, no[0].Reason)
	}
	_, err := gauge.SizeWire(gauge.Ask{})
	require.ErrorContains(t, err, "amps: 0 A is not from 0.01 to 600 A\nlength: ")
}

// Blades, maxi and bolt-down fuses end at 32 V (ISO 8820); SAE J2576 blades
// have 58 V, UL 248-15 class T 125 V.
func TestSizeFuseForItsVolts(t *testing.T) {
	for _, c := range []struct {
		volts, amps float64
		style       string
	}{{12, 5, "blade"}, {24, 50, "maxi"}, {24, 90, "bolt-down"}, {48, 5, "blade58"}, {48, 40, "class-t"}} {
		a := asked(t, "road", c.amps, 6, 0.03)
		a.SystemV = c.volts
		got := sizeOf(t, a)
		require.True(t, got.OK, got.Fault)
		require.Equal(t, c.style, got.FuseStyle)
	}
	a := asked(t, "road", 5, 6, 0.03)
	a.SystemV, a.FuseStyle = 48, "blade"
	require.Contains(t, sizeOf(t, a).Fault, "a blade fuse is made for 32 V")
}

// What the sheet tells beside a size.
func TestSizeNotes(t *testing.T) {
	said := func(a gauge.Ask, want string) {
		t.Helper()
		got := sizeOf(t, a)
		for _, n := range got.Notes {
			if strings.Contains(n, want) {
				return
			}
		}
		require.Fail(t, "not said: "+want, "%v", got.Notes)
	}
	a := asked(t, "road", 40, 30, 0.03)
	a.Family, _ = gauge.FamilyOf("GXL") // SAE J1128 ends at 8 AWG
	said(a, "GXL is primary wire, made to 8 AWG")
	a = asked(t, "road", 5, 10, 0.10)
	a.Family, _ = gauge.FamilyOf("SGX") // SAE J1127 begins at 6 AWG
	said(a, "SGX is battery cable, made from 6 AWG up")
	said(asked(t, "boat", 25, 10, 0.10), "the charts reckon with cool copper; at 105 C it loses 1.37 V")
	said(asked(t, "aircraft", 5, 10, 0.03), "FAA AC 43.13-1B table 11-3")
	a.Return = gauge.ByMetal
	said(a, "metal and its joints are taken as nothing")
	// 600 ft of conductor: its own resistance keeps a short near the fuse rating
	a = asked(t, "road", 3, 600, 0.50)
	a.FuseA = 20
	said(a, "a short at the far end draws")
}
