package harness_test

import (
	"context"
	"math"
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/shop"
)

// Three wires of the orchard truck worked by hand. Only literal figures of the
// standards stand here; nothing is asked of the package that holds them.
//
//	SAE J1128/J1127 least areas, circular mils: 12 AWG 5833, 10 AWG 9343, 8 AWG 14810, 4 AWG 37360
//	33 CFR 183.425 table 5, 125 C column, amperes at 30 C: 14 AWG 40, 12 AWG 50, 8 AWG 90, 6 AWG 125, 4 AWG 170
//	the same, note 2: 4 to 6 loaded conductors together 0.6
//	copper 17.241 nohm m at 20 C (100 % IACS), x (234.5 + T) / 254.5
//	1 cmil = 5.067075e-4 mm2, 1 in = 25.4 mm
const (
	mm2PerCmil = 5.067075e-4
	copper     = 17.241 // mohm mm2/m
	inch       = 0.0254
)

func ohmPerM(cmil, tempC float64) float64 {
	return copper / (cmil * mm2PerCmil) * (234.5 + tempC) / 254.5 / 1000
}

// ambient takes a table current of 125 C wire from 30 C to another place.
func ambient(amps, placeC float64) float64 { return amps * math.Sqrt((125-placeC)/(125-30)) }

func truck(t *testing.T) *harness.Result {
	t.Helper()
	d := harness.Load(os.DirFS("../testdata"), "orchard-truck.draft")
	r, err := d.Check(context.Background(), harness.Options{})
	require.NoError(t, err)
	require.NotNil(t, r.Sizes, "%v", r.Findings)
	return r
}

// cutIn gives the printed cut length of a wire, in inches.
func cutIn(t *testing.T, r *harness.Result, number string) float64 {
	t.Helper()
	table := shop.Cut(shop.Source{Model: r.Model, Routes: r.Routes, Sizes: r.Sizes})
	column := -1
	for i, c := range table.Columns {
		if c.Key == "cut_in" {
			column = i
		}
	}
	for _, row := range table.Rows {
		if row[0].Text == number {
			return row[column].Number
		}
	}
	require.Fail(t, "not in the cut list", number)
	return 0
}

func wire(t *testing.T, r *harness.Result, number string) (sizeName string, lengthM, ohm float64) {
	t.Helper()
	w, ok := r.Wire(number)
	require.True(t, ok)
	return w.Conductor.Size.Name, w.Conductor.LengthM, w.Conductor.Ohm
}

// Wire 203 takes the pump's 8.5 A from the rear plug to the tank: 114 in of
// leg and two tails of 3 in, through 60 C.
func TestPumpWireByHand(t *testing.T) {
	r := truck(t)
	size, length, ohm := wire(t, r, "203")
	require.Equal(t, "8 AWG", size)
	require.InDelta(t, 120*inch, length, 1e-9)

	tempC := 60 + (125-30)*math.Pow(8.5/90, 2) // 60.85 C
	require.InDelta(t, ohmPerM(14810, tempC)*120*inch, ohm, 1e-7)

	// 120 in, and 2 x 12 mm at each end for two new terminations, make
	// 121.89 in; rounded up to a half: 122 in
	require.InDelta(t, 122, cutIn(t, r, "203"), 1e-9)

	// what a meter finds along it while the pump runs: 69.1 mV
	drop := 8.5 * ohmPerM(14810, tempC) * 120 * inch
	require.InDelta(t, 0.0691, drop, 0.00005)
	from, to := r.Step("running").Volts("X2.rear.1"), r.Step("running").Volts("M2.+")
	require.True(t, from.OK && to.OK)
	require.InDelta(t, drop, from.Volts-to.Volts, 0.0005)
}

// Wire 222 feeds the fan: 18 A through the engine bay at 85 C, with three
// other loaded wires in its leg, behind a 30 A fuse.
func TestFanWireByHand(t *testing.T) {
	r := truck(t)
	size, length, _ := wire(t, r, "222")
	require.InDelta(t, (35+28+6)*inch, length, 1e-9)
	require.Less(t, 0.6*ambient(40, 85), 18.0)           // 14 AWG: 15.6 A, too little
	require.GreaterOrEqual(t, 0.6*ambient(50, 85), 18.0) // 12 AWG: 19.5 A
	require.GreaterOrEqual(t, ambient(50, 85), 30.0)     // 32.4 A: the fuse protects it
	require.Equal(t, "12 AWG", size)

	w, _ := r.Wire("222")
	for _, l := range w.Judgement.Limits {
		switch l.Name {
		case "ampacity":
			require.InDelta(t, 0.6*ambient(50, 85), l.Got, 0.01)
			require.InDelta(t, 18, l.Asked, 0.01)
		case "protection":
			require.InDelta(t, ambient(50, 85), l.Got, 0.01)
			require.InDelta(t, 30, l.Asked, 0.01)
		}
	}
	require.InDelta(t, 71, cutIn(t, r, "222"), 1e-9) // 69 in and 48 mm make 70.89 in
}

// Wire 102 is the main feed from the 80 A fuse through the engine bay into the
// cab: 35 in of leg and two tails.
func TestMainFeedByHand(t *testing.T) {
	r := truck(t)
	size, length, ohm := wire(t, r, "102")
	require.InDelta(t, 41*inch, length, 1e-9)
	require.Less(t, ambient(90, 85), 80.0)            // 8 AWG: 58.4 A against the 80 A fuse
	require.GreaterOrEqual(t, ambient(125, 85), 80.0) // 6 AWG: 81.1 A would do for the fuse
	require.Equal(t, "4 AWG", size)                   // the drop of the coils asks for one more

	w, _ := r.Wire("102")
	require.Equal(t, "drop", w.Governs)
	tempC := 85 + (125-30)*math.Pow(w.DesignA/170, 2)
	require.InDelta(t, ohmPerM(37360, tempC)*41*inch, ohm, 1e-7)
	require.InDelta(t, 43, cutIn(t, r, "102"), 1e-9) // 41 in and 48 mm make 42.89 in
}
