package quantity

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestText(t *testing.T) {
	tests := []struct {
		v    float64
		d    Dim
		want string
	}{
		{0.302, Voltage, "302 mV"},
		{0.30249, Voltage, "302 mV"},
		{0.9996, Voltage, "1 V"}, // rounds before the unit is chosen
		{0.9994, Voltage, "999 mV"},
		{12.649, Voltage, "12.6 V"},
		{15, Current, "15 A"},
		{0.4, Current, "0.4 A"},
		{0.002, Current, "2 mA"},
		{-0.0304, Current, "-30.4 mA"},
		{1234, Current, "1230 A"},
		{0.0152, Resistance, "15.2 mohm"},
		{85, Resistance, "85 ohm"},
		{4700, Resistance, "4.7 kohm"},
		{1e7, Resistance, "10 Mohm"},
		{0.5, Power, "0.5 W"},
		{2200, Power, "2.2 kW"},
		{60, Charge, "60 Ah"},
		{2.8956, Length, "2.9 m"},
		{0.0063, Length, "6.3 mm"},
		{2.9556, Area, "2.96 mm2"},
		{14, Gauge, "14 AWG"},
		{0, Gauge, "1/0 AWG"},
		{-3, Gauge, "4/0 AWG"},
		{-18, Temperature, "-18 C"},
		{2.52, Percent, "2.52 %"},
		{0.05, Time, "50 ms"},
		{90, Time, "90 s"},
		{180, Time, "3 min"},
		{7200, Time, "2 h"},
		{100, Frequency, "100 Hz"},
		{1500, Frequency, "1.5 kHz"},
		{12345, Count, "12345"}, // counts are never rounded
		{0.5, Count, "0.5"},
		{3.14159, None, "3.14"},
		{8, Thread, "M8"},
		{0, Voltage, "0 V"},
		{math.Copysign(0, -1), Current, "0 A"},
		{math.Copysign(0, -1), Count, "0"},
		{-9e-10, Current, "0 A"},
		{1.2e-6, Current, "0.0012 mA"},
		{math.NaN(), Voltage, "? V"},
		{math.Inf(-1), Count, "?"},
		{1, Dim(99), "1"},
	}
	for _, tt := range tests {
		require.Equal(t, tt.want, Text(tt.v, tt.d))
		require.Equal(t, strings.ReplaceAll(tt.want, " ", ""), Format(tt.v, tt.d))
	}
}

func TestLengthText(t *testing.T) {
	tests := []struct {
		m          float64
		metric, us string
	}{
		{2.8956, "2.9 m", "9 ft 6 in"},
		{0.0762, "76 mm", "3 in"},
		{0.01905, "19 mm", "0.8 in"}, // 0.75 in, to the tenth
		{0.3048, "305 mm", "1 ft"},
		{0.3045, "305 mm", "1 ft"},         // 11.99 in: never "12 in"
		{0.6094, "609 mm", "2 ft"},         // 23.99 in: never "1 ft 12 in"
		{0.9017, "902 mm", "2 ft 11.5 in"}, // 35.5 in
		{0.99951, "1 m", "3 ft 3.5 in"},    // never "1000 mm"
		{12.345, "12.3 m", "40 ft 6 in"},   // 486.02 in
		{0, "0 mm", "0 in"},
		{-0.0001, "0 mm", "0 in"},
		{-0.0254, "-25 mm", "-1 in"},
		{math.NaN(), "? m", "? m"},
	}
	for _, tt := range tests {
		require.Equal(t, tt.metric, LengthText(tt.m, true))
		require.Equal(t, tt.us, LengthText(tt.m, false))
	}
}

func TestDimNamesAndUnits(t *testing.T) {
	require.Equal(t, []string{"mA", "A"}, UnitsOf(Current))
	require.Equal(t, []string{"way"}, UnitsOf(Count))
	require.Empty(t, UnitsOf(None))
	require.Empty(t, UnitsOf(Thread))
	require.Equal(t, "number", Dim(-1).String())
	require.Equal(t, "a number, such as 12", Want(Dim(99)))
	seen := map[string]bool{}
	for d := None; d <= Thread; d++ {
		require.NotEmpty(t, d.String())
		require.False(t, seen[d.String()], d)
		seen[d.String()] = true
		_, example, ok := strings.Cut(Want(d), "such as ")
		require.True(t, ok)
		q, err := Parse(example)
		require.NoError(t, err, d)
		if d != None {
			require.Equal(t, d, q.Dim, "the example has to be one")
		}
	}
}

// Every unit is found by its own spelling, and no two rows share one.
func TestUnitsAreDistinct(t *testing.T) {
	seen := map[string]bool{}
	for _, u := range units {
		require.False(t, seen[u.name], u.name)
		seen[u.name] = true
		q, err := Parse("1" + u.name)
		require.NoError(t, err)
		require.Equal(t, u.dim, q.Dim)
	}
	for name, unitName := range otherNames {
		require.False(t, seen[name], "%s is a unit and an alias", name)
		require.Equal(t, strings.ToLower(name), name)
		require.True(t, seen[unitName], name)
	}
	for name, unitName := range otherScale {
		require.False(t, seen[name], "%s is a unit and an alias", name)
		require.True(t, seen[unitName], name)
	}
}
