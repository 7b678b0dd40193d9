package model_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/model"
)

const finishing = `part seal green insulation 1.4mm 2.2mm
part terminal pin wire 20AWG 16AWG insulation 1.4mm 2.5mm strip 4.5mm blade 2.8mm
part terminal wide area 4mm2 2.5mm2
part terminal ring 1/4in wire 12AWG 10AWG
part connector plug2 2way sealed terminals pin seals green
  half plug sockets terminals wide
  half cap pins
connector X1 part plug2
module A1
  plug A 4way terminals pin
  GND ground at A.1
  BAT feed 1A
splice J1
`

// What is said of a half or plug goes before what is said of the device.
func TestFinish(t *testing.T) {
	m, found := model.Build(parse(t, finishing))
	require.Empty(t, found)
	finish := func(name string) model.Finish {
		tm, ok := m.TerminalByName(name)
		require.True(t, ok, name)
		return tm.Finish
	}
	require.Equal(t, "wide", finish("X1.plug.1").Terminals[0].Name)
	require.Equal(t, "pin", finish("X1.cap.2").Terminals[0].Name)
	require.Equal(t, "green", finish("X1.plug.2").Seals[0].Name)
	require.Equal(t, "pin", finish("A1.GND").Terminals[0].Name)
	require.Empty(t, finish("A1.BAT").Terminals)
	require.True(t, finish("J1").Fits(99), "nothing is said")
	wide := finish("X1.plug.1").Terminals[0]
	require.Equal(t, []float64{2.5, 4}, []float64{wide.LeastMM2, wide.MostMM2}, "in either order")
	pin := finish("A1.GND").Terminals[0]
	require.Equal(t, "20 AWG to 16 AWG", pin.Range)
	require.InDelta(t, 0.0045, pin.StripM, 1e-12)
	require.InDelta(t, 0.0022, finish("X1.plug.2").Seals[0].MostOverM, 1e-12)
}
