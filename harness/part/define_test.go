package part

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/quantity"
)

// sound is a declaration with nothing wrong.
func sound() Kind {
	return Kind{
		Name: "buzzer", Title: "A buzzer.", Law: "v = i R.", Letter: "P",
		Terminals: []Terminal{{Name: "1", Doc: "feed"}, {Name: "2", Aliases: []string{"-"}, Doc: "return"}},
		Ground:    "2",
		Settings:  []Setting{named("draws", "current", amps("current", "current").guess(1, "usual-lamp"))},
		Stamp:     func(d *Device, s *Stamper) {},
		Symbol:    Symbol{Half: 3, Columns: 1, Row: LoadRow, Pins: upDown("1", "2", 3)},
	}
}

func TestDefineRefusesHalfADeclaration(t *testing.T) {
	k := sound()
	require.NoError(t, k.verify())
	for name, spoil := range map[string]func(k *Kind){
		"no title":               func(k *Kind) { k.Title = "" },
		"no law":                 func(k *Kind) { k.Law = "" },
		"no stamp":               func(k *Kind) { k.Stamp = nil },
		"terminal without a doc": func(k *Kind) { k.Terminals[1].Doc = "" },
		"alias is a name":        func(k *Kind) { k.Terminals[1].Aliases[0] = "1" },
		"ground is no terminal":  func(k *Kind) { k.Ground = "3" },
		"pin is no terminal":     func(k *Kind) { k.Symbol.Pins[0].Name = "3" },
		"terminal not drawn":     func(k *Kind) { k.Symbol.Pins = k.Symbol.Pins[:1] },
		"setting without a doc":  func(k *Kind) { k.Settings[0].Doc = "" },
		"setting twice":          func(k *Kind) { k.Settings = append(k.Settings, k.Settings[0]) },
		"unknown source":         func(k *Kind) { k.Settings[0].Figures[0].Source = "hearsay" },
		"default out of range":   func(k *Kind) { k.Settings[0].Figures[0].Max = 0.5 },
		"range upside down":      func(k *Kind) { k.Settings[0].Figures[0].Min = 1e9 },
		"figure without a unit":  func(k *Kind) { k.Settings[0].Figures[0].Dim = quantity.None },
		"first figure left out":  func(k *Kind) { k.Settings[0].Figures[0].Optional = true },
		"figures and words":      func(k *Kind) { k.Settings[0].Words = []string{"loud"} },
		"two bare settings, one V": func(k *Kind) {
			k.Settings = []Setting{bare("a", "a", volts("v", "v")), bare("b", "b", volts("v", "v"))}
		},
		"word of two bare settings": func(k *Kind) { k.Settings = []Setting{oneOf("a", "a", "x"), oneOf("b", "b", "x")} },
	} {
		k := sound()
		spoil(&k)
		require.Error(t, k.verify(), name)
	}
	require.Panics(t, func() { define(Kind{Name: "half"}) })
	_, there := Of("half")
	require.False(t, there)
}

// A default for 12 V follows the system: volts x 2, ohms x 4, amperes / 2.
func TestDefaultsFollowTheSystem(t *testing.T) {
	d := pinned(device(t, "relay"))
	d.SystemV = 24
	require.Equal(t, 340.0, d.Num("coil"))
	require.Equal(t, 2.4, d.Num("release"))
	require.Equal(t, 0.010, d.Num("moves"))
	require.Equal(t, 16.0, stamped(d, HotSoak, Sure).States[0].InAboveV)
	starter := device(t, "starter")
	starter.SystemV = 24
	require.Equal(t, 75.0, starter.Num("draws"))
}

// Reading: what the draft gives wins, what it leaves out is filled in, names
// go before aliases, and a kind without the setting gives nil.
func TestValuesAreCompleted(t *testing.T) {
	s := of("motor")
	v := say(s, "draws", 8.5)
	v.Nums, v.Set = v.Nums[:1], v.Set[:1]
	d := pinned(device(t, "motor", v))
	require.Equal(t, 8.5, d.Num("draws"))
	require.Equal(t, 13.5, d.NumAt("draws", 1))
	require.True(t, d.Said("draws"))
	require.False(t, d.Said("inrush"))
	require.Nil(t, d.Value("coil"))
	require.Zero(t, d.Num("coil"))
	require.Equal(t, "hand", device(t, "switch").Word("moved-by"))
	i, ok := d.PinOf("2")
	require.True(t, ok)
	require.Equal(t, "-", d.Pins[i].Name)
	_, ok = d.PinOf("3")
	require.False(t, ok)
}
