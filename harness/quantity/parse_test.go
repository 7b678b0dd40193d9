package quantity

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Values are exact by definition of the units: inch 25.4 mm, foot 12 in, F to
// C by (F - 32) x 5/9, SI prefixes. The literals are what the compiler rounds
// once, so equality is exact.
func TestParse(t *testing.T) {
	tests := []struct {
		text string
		want float64
		dim  Dim
		unit string
	}{
		{"15A", 15, Current, "A"},
		{"+0.3A", 0.3, Current, "A"},
		{"302mA", 0.302, Current, "mA"},
		{"12.6V", 12.6, Voltage, "V"},
		{"9.3mV", 0.0093, Voltage, "mV"},
		{"90ohm", 90, Resistance, "ohm"},
		{"0.3mohm", 0.0003, Resistance, "mohm"},
		{"4.7kohm", 4700, Resistance, "kohm"},
		{"10Mohm", 1e7, Resistance, "Mohm"},
		{"21W", 21, Power, "W"},
		{"2.2kW", 2200, Power, "kW"},
		{"5mW", 0.005, Power, "mW"},
		{"60Ah", 60, Charge, "Ah"},
		{"6.3mm", 0.0063, Length, "mm"},
		{"35cm", 0.35, Length, "cm"},
		{"2.5m", 2.5, Length, "m"},
		{"38in", 0.9652, Length, "in"},
		{"3/8in", 0.009525, Length, "in"},
		{"1/3ft", 0.1016, Length, "ft"},
		{"7ft", 2.1336, Length, "ft"},
		{"9ft6in", 2.8956, Length, "ft in"},
		{"9ft6.5in", 2.9083, Length, "ft in"},
		{"0ft11.9in", 0.30226, Length, "ft in"},
		{"2.5mm2", 2.5, Area, "mm2"},
		{"14AWG", 14, Gauge, "AWG"},
		{"0AWG", 0, Gauge, "AWG"},
		{"1/0AWG", 0, Gauge, "AWG"},
		{"2/0AWG", -1, Gauge, "AWG"},
		{"4/0AWG", -3, Gauge, "AWG"},
		{"85C", 85, Temperature, "C"},
		{"-18C", -18, Temperature, "C"},
		{"185F", 85, Temperature, "F"},
		{"-40F", -40, Temperature, "F"},
		{"32F", 0, Temperature, "F"},
		{"3%", 3, Percent, "%"},
		{"12ms", 0.012, Time, "ms"},
		{"3min", 180, Time, "min"},
		{"1h", 3600, Time, "h"},
		{"30s", 30, Time, "s"},
		{"100Hz", 100, Frequency, "Hz"},
		{"1.5kHz", 1500, Frequency, "kHz"},
		{"6way", 6, Count, "way"},
		{"007", 7, Count, ""},
		{"M8", 8, Thread, "M"},
		{"M2.5", 2.5, Thread, "M"},
	}
	for _, tt := range tests {
		t.Run(tt.text, func(t *testing.T) {
			got, err := Parse(tt.text)
			require.NoError(t, err)
			require.Equal(t, Quantity{Value: tt.want, Dim: tt.dim, Unit: tt.unit, Raw: tt.text}, got)
		})
	}
}

func TestParseNegativeZero(t *testing.T) {
	for _, text := range []string{"-0A", "-0.000V", "-0/5in"} {
		q, err := Parse(text)
		require.NoError(t, err)
		require.False(t, math.Signbit(q.Value), text)
	}
}

// Every mistake is answered: with the quantity meant, the nearest unit, or
// what was expected.
func TestParseAnswersMistakes(t *testing.T) {
	tests := []struct{ text, suggest, says string }{
		{"15a", "15A", `"15a": no unit is called "a", write 15A`},
		{"15 amps", "15A", `"15 amps": a quantity has no blank inside, write 15A`},
		{"15amps", "15A", ""},
		{"15 A", "15A", ""},
		{"15\u00a0A", "15A", "no blank inside"},
		{"12v", "12V", ""},
		{"12Vdc", "12V", ""},
		{"90\u03a9", "90ohm", ""},
		{"90\u2126", "90ohm", ""},
		{"4.7k\u03a9", "4.7kohm", ""},
		{"3m\u03a9", "3mohm", ""},
		{"3M\u03a9", "3Mohm", ""},
		{"90Ohms", "90ohm", ""},
		{"2.5mm\u00b2", "2.5mm2", ""},
		{"2.5MM2", "2.5mm2", ""},
		{"2.5sqmm", "2.5mm2", ""},
		{"2,5mm2", "2.5mm2", "the decimal sign is a point"},
		{"1,000A", "", "no comma in a number"},
		{"85\u00b0C", "85C", ""},
		{"185\u00b0F", "185F", ""},
		{"\u221218C", "-18C", ""},
		{"9'6\"", "9ft6in", ""},
		{"9\u20326\u2033", "9ft6in", ""},
		{"6\"", "6in", ""},
		{"6inches", "6in", ""},
		{"\u00bdin", "1/2in", ""},
		{"14ga", "14AWG", ""},
		{"14awg", "14AWG", ""},
		{"00AWG", "2/0AWG", ""},
		{"0000AWG", "4/0AWG", ""},
		{"#10", "No10", "begins a comment"},
		{"m8", "M8", ""},
		{"M8x1.25", "M8", ""},
		{".5A", "0.5A", "missing before the point"},
		{"50Ms", "50ms", ""},
		{"3pct", "3%", ""},
		{"5\u00b5A", "", "the nearest is mA"},
		{"250kcmil", "", "the nearest is AWG"},
		{"15Q", "", "expected one such as A V"},
		{"1e3A", "", `no unit is called "e3A"`},
		{"0x1p4A", "", "no unit is called"},
		{"1_000A", "", "no unit is called"},
		{"NaN", "", "not a number, expected a figure and its unit"},
		{"NaNV", "", "not a number"},
		{"Inf", "", "not a number"},
		{"+InfA", "", "not a number"},
		{"", "", "nothing is written here"},
		{"A", "", "not a number"},
		{"--5A", "", "two signs"},
		{"+-5A", "", "two signs"},
		{"5.A", "", "missing after the point"},
		{"1.2.3A", "", "no unit is called"},
		{"3/in", "", "missing after the slash"},
		{"3/0in", "", "0 below its line"},
		{"1/2/3in", "", "no unit is called"},
		{"5/0AWG", "", "1/0AWG to 4/0AWG"},
		{"-1/0AWG", "", "1/0AWG to 4/0AWG"},
		{"1/2AWG", "", "1/0AWG to 4/0AWG"},
		{"14.5AWG", "", "wire gauges run"},
		{"-2AWG", "", "wire gauges run"},
		{"61AWG", "", "wire gauges run"},
		{"9ft12in", "", "stay below 12"},
		{"9ft6", "", "end in"},
		{"9ft6mm", "", "end in"},
		{"-9ft6in", "", "take no sign"},
		{"M0", "", "above 0"},
		{"1234567890123456A", "", "too many figures"},
		{"0.1234567890123456A", "", "too many figures"},
		{"999999999999kohm", "", "too large"},
		{"0.0000001mA", "", "too small"},
		{strings.Repeat("9", 400), "", "too long"},
		{"\u0663A", "", "not a number"}, // an Arabic-Indic three
	}
	for _, tt := range tests {
		t.Run(tt.text, func(t *testing.T) {
			_, err := Parse(tt.text)
			var e *Error
			require.ErrorAs(t, err, &e)
			require.Equal(t, tt.suggest, e.Suggest)
			require.Contains(t, err.Error(), tt.says)
			require.LessOrEqual(t, len([]rune(err.Error())), 120)
			require.NotRegexp(t, `\.$`, err.Error())
			if e.Suggest != "" && e.Suggest != "No10" {
				_, err = Parse(e.Suggest)
				require.NoError(t, err, "the advice has to be good")
			}
		})
	}
}

func TestLooks(t *testing.T) {
	for _, text := range []string{"1", "15A", "-18C", "+5", "9ft6in", "3rd"} {
		require.True(t, Looks(text), text)
	}
	for _, text := range []string{"", "-", "+", "A1", "M8", ".5A", "--5", "-A", "\u0663"} {
		require.False(t, Looks(text), text)
	}
}

// For any text: no panic; a value that is finite, within limits and not -0;
// printed and read again it is the same to three digits; advice can be read.
func FuzzParse(f *testing.F) {
	for _, seed := range []string{
		"15A", "-0.5mV", "9ft6.5in", "3/8in", "1/0AWG", "185F", "M8", "15 amps", "2,5mm\u00b2", "#10",
		"0.000000000000001m", "999999999999999way", "1/999999999999999ft", "-40F", "9'6\"", "00AWG", "\xff",
		"00\x00\x02\x00\x000000", // escapes made a message too long
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		q, err := Parse(text)
		if err != nil {
			var e *Error
			require.ErrorAs(t, err, &e)
			require.Equal(t, Quantity{}, q)
			require.LessOrEqual(t, len([]rune(err.Error())), 120)
			if e.Suggest != "" && !strings.HasPrefix(e.Suggest, "No") {
				_, err = Parse(e.Suggest)
				require.NoError(t, err)
			}
			return
		}
		size := math.Abs(q.Value)
		require.True(t, size == 0 && !math.Signbit(q.Value) || size >= minValue && size <= maxValue || q.Dim == Gauge)
		printed := Format(q.Value, q.Dim)
		again, err := Parse(printed)
		require.NoError(t, err, printed)
		require.Equal(t, q.Dim, again.Dim)
		require.InDelta(t, q.Value, again.Value, 0.00501*size, printed)
	})
}
