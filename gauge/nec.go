package gauge

import "slices"

// NECRow is one line of chapter 9 table 8 of the National Electrical Code:
// d.c. resistance of copper at 75 C (source nec-table8).
type NECRow struct {
	AWG          int
	Strands      int     // 1: solid
	Cmil         float64 // area as printed
	OhmPerKft    float64 // uncoated
	CoatedPerKft float64 // tinned
}

// NECTempC is the conductor temperature of the table in Celsius.
const NECTempC = 75

var necTable = [...]NECRow{
	{18, 1, 1620, 7.77, 8.08}, {18, 7, 1620, 7.95, 8.45},
	{16, 1, 2580, 4.89, 5.08}, {16, 7, 2580, 4.99, 5.29},
	{14, 1, 4110, 3.07, 3.19}, {14, 7, 4110, 3.14, 3.26},
	{12, 1, 6530, 1.93, 2.01}, {12, 7, 6530, 1.98, 2.05},
	{10, 1, 10380, 1.21, 1.26}, {10, 7, 10380, 1.24, 1.29},
	{8, 1, 16510, 0.764, 0.786}, {8, 7, 16510, 0.778, 0.809},
	{6, 7, 26240, 0.491, 0.510}, {4, 7, 41740, 0.308, 0.321}, {3, 7, 52620, 0.245, 0.254},
	{2, 7, 66360, 0.194, 0.201}, {1, 19, 83690, 0.154, 0.160}, {0, 19, 105600, 0.122, 0.127},
	{-1, 19, 133100, 0.0967, 0.101}, {-2, 19, 167800, 0.0766, 0.0797}, {-3, 19, 211600, 0.0608, 0.0626},
}

// NECTable8 lists the table by falling gauge number (source nec-table8).
func NECTable8() []NECRow { return slices.Clone(necTable[:]) }

// NECOhmPerM reads the table in ohm per meter at 75 C; ok is false for a
// gauge or make that is not in it (source nec-table8).
func NECOhmPerM(awg int, stranded, tinned bool) (ohm float64, ok bool) {
	for _, r := range necTable {
		if r.AWG != awg || (r.Strands > 1) != stranded {
			continue
		}
		perKft := r.OhmPerKft
		if tinned {
			perKft = r.CoatedPerKft
		}
		return perKft / (1000 * MeterPerFoot), true
	}
	return 0, false
}
