package gauge_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
)

// handValues were worked by hand from a published rule or test definition, or
// rest on figures from memory. They are checked like the published ones and
// not counted among them.
func handValues() []outside {
	out := []outside{
		{"ICEA 18 AWG 1 s", "ICEA P-32-382 form, 85 to 150 C: 79 A by hand", gauge.ICEAK(85, 150) * 1624 * gauge.MM2PerCmil, 79, 0.5, true},
		{"I2t of 1 mm2 PVC", "BS 7671 k 115: 13225 A2s", gauge.WithstandA2S(1, 70, 160), 13225, 80, true},
		{"I2t of 2.5 mm2 cross-linked", "BS 7671 k 143: 127806 A2s", gauge.WithstandA2S(2.5, 90, 250), 127806, 900, true},
		{"ceiling of a 25 A conductor", "33 CFR 183.455(c)(1): 37.5 A", gauge.FuseCeilingA(25), 37.5, 0, true},
		{"200 % gate of a 10 A blade", "quoted 10 A data sheet: within 5 s, 2000 A2s", letThrough(10), 2000, 0, true},
		{"8.0 V pull-in at 85 C", "relay practice: about 10.0 V", gauge.CoilAt(8, 85), 10.0, 0.05, true},
		{"8.0 V pull-in at 125 C", "relay practice: 11.3 V", gauge.CoilAt(8, 125), 11.3, 0.05, true},
		{"90 ohm coil at 85 C", "note on d.c. relays, 1 + 0.003929 (T - 20)", gauge.CoilLinear(90, 85), 113.0, 0.05, true},
		{"6.5 V pull-in at 85 C", "note on d.c. relays", gauge.CoilLinear(6.5, 85), 8.16, 0.01, true},
		{"kick of 55 ohm with 680 ohm at 13.5 V", "relay application note on suppression (table from memory)", gauge.SuppressPeakV(13.5, 55, 680), 167, 1, true},
		{"Onderdonk 2581 cmil 5 s", "forum worked line, sign put right", gauge.OnderdonkA(2581*gauge.MM2PerCmil, 5, 25), 168.9, 0.2, true},
		{"RC 100 min, Ah", "vehicle service bulletin", gauge.AmpHours(100), 60, 1e-9, true},
		{"RC 100 min at 25 mA", "the two rules together: 960 h", gauge.HoursToNoStart(100, 0.025), 960, 1e-6, true},
		{"conductor at its full current", "definition of ampacity", gauge.ConductorTempC(sized(10), rated(105), 30, 60), 105, 1e-9, true},
		{"conductor at half its current", "a quarter of the rise", gauge.ConductorTempC(sized(12), rated(200), 30, 27.5), 72.5, 1e-9, true},
	}
	return append(out, handBatteries()...)
}

func handBatteries() []outside {
	var out []outside
	const computedHere = "SAE J537 7.2 V at CCA and the half-CCA test of 9.6 V, from 12.6 V"
	for cca, want := range map[float64][3]float64{
		400: {15.0, 13.5, 12.75}, 500: {12.0, 10.8, 10.2}, 650: {9.23, 8.31, 7.85}, 770: {7.79, 7.01, 6.62}, 1000: {6.0, 5.4, 5.1},
	} {
		warm, cold := gauge.BatteryOhm(cca)
		out = append(out,
			outside{fmt.Sprintf("%g CCA warm mohm", cca), computedHere, 1000 * warm, want[0], 0.005, true},
			outside{fmt.Sprintf("%g CCA cold mohm", cca), computedHere, 1000 * cold, want[1], 0.005, true},
			outside{fmt.Sprintf("%g A EN mohm", cca), "EN 50342 7.5 V at Icc", 1000 * gauge.BatteryOhmEN(cca), want[2], 0.005, true},
		)
	}
	return append(out, engineSpace()...)
}

// engineSpace is note 1 of the federal table away from its 105 C column,
// which alone was seen.
func engineSpace() []outside {
	var out []outside
	for insulation, want := range map[float64]float64{60: 0.58, 75: 0.75, 80: 0.78, 90: 0.82, 125: 0.89} {
		out = append(out, outside{
			fmt.Sprintf("engine space %g C", insulation), "33 CFR 183.425 note 1 (factor from memory)",
			gauge.AmbientFactor(insulation, 50, 30), want, 0.006, true,
		})
	}
	return out
}

// letThrough is the I2t bound of a blade at a large short by gates that may decide.
func letThrough(ratedA float64) float64 {
	a2s, _, _ := gauge.LetThrough("blade", ratedA, 20*ratedA, true)
	return a2s
}

func TestHandValues(t *testing.T) {
	for _, v := range handValues() {
		t.Run(v.name, func(t *testing.T) {
			require.NotEmpty(t, v.source)
			require.InDelta(t, v.want, v.got, v.within, "%s", v.source)
		})
	}
}
