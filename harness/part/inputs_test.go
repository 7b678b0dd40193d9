package part

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/quantity"
)

// The sorts and roles that shops asked for: an LED lamp minds its side, a
// shield is no common ground, a pulled-up input holds its volts.
func TestLampSorts(t *testing.T) {
	k, _ := Of("lamp")
	led := device(t, "lamp", word(k.Settings, "sort", "led"))
	require.Equal(t, ElectronicLoad, k.Draws(led)[0].Type)
	require.False(t, k.Draws(led)[0].EitherWay)
	filament := device(t, "lamp")
	require.Equal(t, LampLoad, k.Draws(filament)[0].Type)
	require.True(t, k.Draws(filament)[0].EitherWay)
	led.Values = append(led.Values, Value{Setting: settingOf(k.Settings, "draws"), Nums: []float64{1, 12}, Set: []bool{true, true}, Said: true})
	require.InDelta(t, 1, lampLaw(led).Amp, 0)
	symbol, ok := k.SymbolOf(led)
	require.True(t, ok)
	require.Equal(t, "led", symbol.Name)
}

func TestInputsAndShields(t *testing.T) {
	k, _ := Of("module")
	role := func(word string) *Role {
		for i := range k.Lines.Roles {
			if k.Lines.Roles[i].Word == word {
				return &k.Lines.Roles[i]
			}
		}
		t.Fatalf("no role %s", word)
		return nil
	}
	in := role("input")
	pull := settingOf(in.Settings, "pull-up")
	require.Equal(t, quantity.Resistance, pull.Figures[0].Dim)
	d := &Device{Name: "A1", Kind: k, SystemV: 12, Lines: []Line{
		{Name: "BAT", Role: role("feed")},
		{Name: "OIL", Role: in, Values: []Value{{Setting: pull, Nums: []float64{1000, 0}, Set: []bool{true, false}, Said: true}}},
		{Name: "CLT", Role: in},
		{Name: "SH", Role: role("shield")}, {Name: "GND", Role: role("ground")},
	}}
	require.Equal(t, []Held{{Pin: "OIL", Volts: 5}}, k.Holds(d), "5 V where nothing is said")
	require.Equal(t, []Return{{Pin: "SH", Sensor: true}, {Pin: "GND"}}, k.Grounds(d))
	require.Equal(t, []string{"GND", "SH"}, d.returns())
	require.Contains(t, k.Inside(d), Path{A: "BAT", B: "OIL", OneWay: true})
	require.NotContains(t, k.Inside(d), Path{A: "BAT", B: "CLT", OneWay: true})
}

// What a style is bolted by is a post.
func TestBoltedFuses(t *testing.T) {
	k, _ := Of("fuse")
	for style, want := range map[string]bool{"blade": false, "glass": false, "cartridge": false, "bolt-down": true, "midi": true, "mega": true} {
		require.Equal(t, want, k.Bolted(device(t, "fuse", word(k.Settings, "style", style))), style)
	}
}
