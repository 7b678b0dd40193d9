package model_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/part"
)

// An old vehicle and a shielded pair (invented): what is there is existing,
// what is cut off is capped, a shield is landed at one end.
const oldVehicle = `place bay  85C wet
place dash 50C
leg bay dash 40in tape
metal frame
battery G1 at bay cca 540A grounds-to frame
fuse F1 10A at bay
sensor B1 at bay existing
module A1 at dash
  plug A 24way sealed blade 1.5mm
  plug B 4way
  BAT    feed 0.4A       at A.1
  CRK+   input           at A.12
  CRK-   sensor-ground   at A.13
  SHIELD sensor-ground   at A.14
  GND    ground          at B.D4
splice J1 at bay
cap Y1 at bay
wire 1 G1.+ F1.1
wire 2 F1.2 A1.BAT existing drop 0.2V 8A measured
wire 3 J1 Y1 16AWG existing
wire 4 J1 F1.2 existing
circuit crank
  cable C9 "Crank sensor" 20AWG 5ft shielded twisted jacket 6mm
    core  301 B1.S A1.CRK+ WH
    core  302 B1.- A1.CRK- 22AWG
    drain 303 A1.SHIELD open
`

func TestExistingCablesAndPlugs(t *testing.T) {
	m, found := model.Build(parse(t, oldVehicle))
	require.Less(t, found.Worst(), diag.Warning, "%v", found)
	wire := func(n string) *model.Wire {
		w, ok := m.WireByNumber(n)
		require.True(t, ok, n)
		return w
	}
	require.True(t, wire("2").Existing)
	require.InDelta(t, 0.2/8, wire("2").Ohm, 1e-12)
	require.Equal(t, "18 AWG", wire("2").Size.Name, "not known: the thinnest usual one, a guess")
	require.Equal(t, "16 AWG", wire("3").Size.Name)
	require.False(t, wire("1").Existing)
	b1, _ := m.DeviceByName("B1")
	require.True(t, b1.Existing)
	var guesses []string
	for _, g := range m.Guesses {
		guesses = append(guesses, g.What)
	}
	require.Contains(t, guesses, "size of existing wire 2")
	require.NotContains(t, guesses, "size of existing wire 3")

	require.Len(t, m.Cables, 1)
	k := m.Cables[0]
	require.Len(t, k.Cores, 3)
	require.True(t, k.Shielded && k.Twisted)
	require.InDelta(t, 0.006, k.JacketM, 1e-12)
	require.Equal(t, "20 AWG", wire("301").Size.Name)
	require.Equal(t, "22 AWG", wire("302").Size.Name)
	require.Equal(t, "WH", wire("301").Color.Base)
	require.InDelta(t, 5*12*0.0254, wire("303").LengthM, 1e-9)
	require.True(t, wire("303").Drain)
	require.Equal(t, "crank", wire("303").Circuit.Name)

	bare, ok := m.TerminalByName("303.open")
	require.True(t, ok)
	require.Equal(t, "303.open", bare.Shown)
	require.Equal(t, "bay", bare.Device.Spot.Place.Name, "where the other cores end")
	require.Equal(t, bare, m.Terminals[bare.ID])
	require.Equal(t, part.Joint, bare.Landing)

	crk, _ := m.TerminalByName("A1.CRK+")
	require.Equal(t, "A.12", crk.Cavity)
	a1, _ := m.DeviceByName("A1")
	require.Len(t, a1.Plugs, 2)
	require.Equal(t, 24, a1.Plugs[0].Ways)
	require.True(t, a1.Plugs[0].Sealed)
	gnd, _ := m.TerminalByName("A1.GND")
	require.Equal(t, "B.D4", gnd.Cavity, "a coordinate is a cavity as well")
}

// A device called open is an end like any other.
func TestADeviceCalledOpen(t *testing.T) {
	m, found := model.Build(parse(t, "fuse F1 5A\nstud open M6\nwire 1 F1.1 open\n"))
	require.Empty(t, found)
	require.Equal(t, "open", m.Wires[0].To.Device.Name)
	require.Len(t, m.Devices, 2)
}
