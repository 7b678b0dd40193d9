package gauge_test

import (
	"fmt"

	"legwork/gauge"
)

const necTable8 = "National Electrical Code, chapter 9 table 8, d.c. resistance at 75 C, uncoated copper"

const ohmPerKft = 1000 * gauge.MeterPerFoot // ohm/m to ohm per 1000 ft

// resistanceValues: the AWG law, the strand lay and the temperature law
// against the code table, within 1 % (its values carry three digits).
func resistanceValues() []outside {
	var out []outside
	solid := map[int]float64{18: 7.77, 16: 4.89, 14: 3.07, 12: 1.93, 10: 1.21, 8: 0.764}
	for awg, want := range solid {
		out = append(out, outside{
			name: fmt.Sprintf("solid %d AWG at 75 C", awg), source: necTable8, derived: true,
			got:  gauge.Size{AreaMM2: gauge.AWGAreaMM2(awg)}.OhmPerM(75) * ohmPerKft,
			want: want, within: 0.005 * want,
		})
	}
	stranded := map[int]float64{
		18: 7.95, 16: 4.99, 14: 3.14, 12: 1.98, 10: 1.24, 8: 0.778, 6: 0.491, 4: 0.308, 3: 0.245,
		2: 0.194, 1: 0.154, 0: 0.122, -1: 0.0967, -2: 0.0766, -3: 0.0608,
	}
	for awg, want := range stranded {
		out = append(out, outside{
			name: fmt.Sprintf("stranded %s at 75 C", gauge.AWGName(awg)), source: necTable8, derived: true,
			got:  gauge.StrandedAWG(awg).OhmPerM(75) * ohmPerKft,
			want: want, within: 0.006 * want,
		})
	}
	out = append(out, areaValues()...)
	out = append(out, class5Values()...)
	return append(out, outside{
		name: "400 ft of solid 18 AWG at 25 C", source: "training text on wire resistance, worked example", derived: true,
		got:  gauge.Size{AreaMM2: gauge.AWGAreaMM2(18)}.OhmPerM(25) * 400 * gauge.MeterPerFoot,
		want: 2.602, within: 0.005,
	})
}

// areaValues: the geometric law against a printed table of circular mils and
// mm2, three or four digits.
func areaValues() []outside {
	const source = "wire-size course note, table of circular mils and mm2"
	table := map[int]struct{ cmil, mm2 float64 }{
		24: {404, 0.205}, 22: {642, 0.326}, 20: {1020, 0.518}, 18: {1620, 0.823}, 16: {2580, 1.309},
		14: {4110, 2.081}, 12: {6530, 3.309}, 10: {10400, 5.261}, 8: {16500, 8.366}, 6: {26300, 13.302},
		4: {41700, 21.151}, 2: {66400, 33.631}, 1: {83700, 42.408}, 0: {106000, 53.475},
		-1: {133000, 67.431}, -2: {168000, 85.029}, -3: {212000, 107.219},
	}
	var out []outside
	for awg, want := range table {
		out = append(out,
			outside{gauge.AWGName(awg) + " circular mils", source, gauge.AWGCmil(awg), want.cmil, 0.005 * want.cmil, true},
			outside{gauge.AWGName(awg) + " mm2", source, gauge.AWGAreaMM2(awg), want.mm2, 0.0006 + 0.0001*want.mm2, true},
		)
	}
	return append(out, outside{
		"two 16 AWG and one 18 AWG in a barrel", "NASA-STD-8739.4 rule with the course note's circular mils: next even size 10",
		gaugeOf(gauge.EquivalentAWG(16, 16, 18)), 10, 0, true,
	})
}

func gaugeOf(awg int, _ bool) float64 { return float64(awg) }

// class5Values: what was stored as an area gives back the standard's largest
// resistance. Look-ups, since the area was made from them.
func class5Values() []outside {
	const source = "IEC 60228 class 5, plain copper at 20 C"
	var out []outside
	for mm2, mohm := range map[float64]float64{0.5: 39.0, 1.5: 13.3, 2.5: 7.98, 10: 1.91, 50: 0.386} {
		s, _ := gauge.MetricSize(mm2)
		out = append(out, outside{s.Name + " at 20 C", source, s.OhmPerM(20) * 1000, mohm, 1e-9, false})
	}
	return out
}
