package model_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/draft"
	"legwork/harness/model"
)

const optional = `option winter "Winter kit"
option towing
battery G1 grounds-to frame
box A1
  bus BAT F1.1 F2.1
fuse F1 10A in A1
fuse F2 15A in A1 option winter
box A2 option towing
fuse F3 20A in A2
lamp P1 5W grounds-to frame
heater R1 120W grounds-to frame option winter
wire 1 G1.+ A1.BAT
wire 2 F1.2 P1.1
wire 3 F2.2 R1.1 3ft
  accept wire-too-thin "winter only"
circuit tow option towing
  wire 4 F1.2 F3.1
wire 5 F1.2 P1.1 option towing
together F1.2 2 5
`

func withOptions(t *testing.T, with ...string) *model.Model {
	t.Helper()
	f, found := draft.Parse("x.draft", []byte(optional))
	require.Empty(t, found)
	m, found := model.BuildWith(f, model.Setup{With: with})
	require.Empty(t, found)
	for i, d := range m.Devices {
		require.Equal(t, i, d.ID)
		for _, tm := range d.Terminals {
			require.Same(t, tm, m.Terminals[tm.ID])
			for _, e := range tm.Ends {
				require.Same(t, e.Wire, m.Wires[e.Wire.ID])
			}
			for _, o := range tm.Bus {
				require.Same(t, o, m.Terminals[o.ID])
			}
		}
	}
	return m
}

func wireNumbers(m *model.Model) (list []string) {
	for _, w := range m.Wires {
		list = append(list, w.Number)
	}
	return list
}

func TestOptionsLeaveOutWhatIsNotFitted(t *testing.T) {
	bare := withOptions(t)
	require.Equal(t, []string{"1", "2"}, wireNumbers(bare))
	require.Empty(t, bare.Accepts)
	require.Empty(t, bare.Together)
	_, ok := bare.DeviceByName("F3") // in a box that is not fitted
	require.False(t, ok)
	box, _ := bare.DeviceByName("A1")
	require.Equal(t, []string{"F1.1"}, box.Lines[0].Refs)
	for _, g := range bare.Guesses {
		require.NotContains(t, g.What, "R1")
		require.NotContains(t, g.What, "wire 4")
	}

	winter := withOptions(t, "winter")
	require.Equal(t, []string{"1", "2", "3"}, wireNumbers(winter))
	require.Len(t, winter.Accepts, 1)
	require.True(t, winter.Options[0].Fitted)
	require.False(t, winter.Options[1].Fitted)

	all := withOptions(t, "winter", "towing", "nonsense")
	require.Equal(t, []string{"1", "2", "3", "4", "5"}, wireNumbers(all))
	require.Len(t, all.Together, 1)
	for _, w := range bare.Wires { // fitting an option changes no color
		same, _ := all.WireByNumber(w.Number)
		require.Equal(t, w.Color, same.Color)
	}
}

// A key keeps its terminals, whatever else in the draft has their names.
func TestLeftOutNamesAreNotThoseOfAKey(t *testing.T) {
	src := "battery G1\noption x\nsplice ACC option x\nkeyswitch S1\n  run B ACC IGN\nlamp P1 option x\nwire 15 S1.IGN P1.1 option x\n"
	m, found := model.Build(parse(t, src))
	require.Empty(t, found)
	d, _ := m.DeviceByName("S1")
	require.Equal(t, []string{"B", "ACC", "IGN"}, d.Lines[0].Refs)
	for _, name := range []string{"ACC", "P1", "P1.1", "15"} {
		require.True(t, m.LeftOut(name), name)
	}
	require.False(t, m.LeftOut("S1"))
}
