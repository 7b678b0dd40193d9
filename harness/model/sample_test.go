package model_test

import (
	"os"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/model"
	"legwork/harness/part"
)

// sample builds one of the two drafts of the language page.
func sample(t testing.TB, name string) *model.Model {
	t.Helper()
	src, err := os.ReadFile("testdata/" + name + ".draft")
	require.NoError(t, err)
	m, found := model.Build(parse(t, string(src)))
	require.Empty(t, found)
	return m
}

// The least draft works with one place, one metal, the circuit loose and 10 ft
// a wire, and says of each that it is assumed.
func TestLeastDraft(t *testing.T) {
	m := sample(t, "least")
	require.Len(t, m.Places, 1)
	require.Equal(t, "vehicle", m.Places[0].Name)
	require.Equal(t, 50.0, m.Places[0].AmbientC) // the language page: 50C, dry
	require.False(t, m.Places[0].Wet)
	require.Equal(t, "frame", m.Metals[0].Name)
	require.Equal(t, "loose", m.Circuits[0].Name)
	require.Len(t, m.Wires, 3)
	var guessed []string
	for _, g := range m.Guesses {
		guessed = append(guessed, g.What+": "+g.Value)
	}
	for _, want := range []string{
		"system: 12 V", "metal: frame, ideal", "place: vehicle, 50 C, dry",
		"length of wire 1: 10 ft", "length of wire 3: 10 ft", "voltage for power of P1: 13.5 V",
	} {
		require.Contains(t, guessed, want)
	}
	require.Equal(t, "RD", m.Wires[0].Color.Base, "battery's own net")
}

func TestSmallDraft(t *testing.T) {
	m := sample(t, "orchard")
	require.Equal(t, "Orchard truck: injection conversion", m.Title)
	require.Equal(t, 12.0, m.SystemV)
	require.Len(t, m.Places, 4)
	require.Len(t, m.Legs, 3)
	require.InDelta(t, 9.5*0.3048, m.Legs[2].LengthM, 1e-9) // 9ft6in
	require.Len(t, m.Devices, 18)                           // 3 studs, 5 fuses, 3 machines, box, key, 2 relays, pump, controller, plug
	require.Len(t, m.Wires, 20)                             // 10 + 3 + 6 and the strap
	require.Equal(t, "M10", device(t, m, "E1").Thread)
	require.Equal(t, "block", device(t, m, "E1").BoltedTo.Name)
	require.Equal(t, "dash", device(t, m, "F3").Spot.Place.Name, "a fuse in a box is where the box is")
	require.Equal(t, 0.03, circuit(t, m, "pump").DropFrac)
	require.InDelta(t, 6*0.0254, device(t, m, "F1").FromM, 1e-12)
	require.Equal(t, "+", device(t, m, "F1").From.Name)

	x2 := device(t, m, "X2")
	require.Len(t, x2.Terminals, 12) // two halves of 6
	require.Equal(t, "cab.1", x2.Terminals[0].Name)
	feed := device(t, m, "A1").Lines[1]
	require.Equal(t, "feed", feed.Role.Word)
	require.Equal(t, steps(m, "prime", "koeo", "running", "stalled", "engage", "crank"), feed.Value("current").When)
}

func TestMarksAndNeeds(t *testing.T) {
	m := sample(t, "orchard")
	pump := device(t, m, "M2")
	draws := pump.Value("draws")
	require.Equal(t, part.Sheet, draws.Mark)
	require.Equal(t, []float64{8.5, 13.5}, draws.Nums)
	needs := pump.All("needs")
	require.Len(t, needs, 2)
	require.Equal(t, steps(m, "running"), needs[0].When)
	require.Equal(t, steps(m, "engage", "crank"), needs[1].When)
	require.True(t, slices.ContainsFunc(m.Guesses, func(g model.Guess) bool { return g.What == "inrush of M2" && g.Value == "25 A" }))
}

func TestGapOfTheKey(t *testing.T) {
	m := sample(t, "orchard")
	i := slices.IndexFunc(m.Steps, func(s model.Step) bool { return s.Name == "gap" })
	require.InDelta(t, 0.012, m.Steps[i].LastS, 1e-12) // "gap B IGN lasts 12ms"
}

func TestNets(t *testing.T) {
	m := sample(t, "orchard")
	n := m.Nets()
	same := func(a, b string) bool { return n.Of[terminal(t, m, a).ID] == n.Of[terminal(t, m, b).ID] }
	require.True(t, same("K1.87", "M2.+"), "through a connector")
	require.True(t, same("F1.2", "F4.1"), "through a bus")
	require.True(t, same("M2.-", "G1.-"), "through frame, strap and block")
	require.True(t, same("M1.M", "M1.M"))
	require.False(t, same("K1.30", "K1.87"), "a contact is no joint")
	require.False(t, same("F1.1", "F1.2"), "a fuse is no joint")
	for id, net := range n.Of {
		require.Contains(t, n.Members[net], m.Terminals[id])
	}
	total := 0
	for _, wires := range n.Wires {
		total += len(wires)
	}
	require.Equal(t, len(m.Wires), total)
}

func TestColorsOfTheSmallDraft(t *testing.T) {
	m := sample(t, "orchard")
	for number, want := range map[string]string{
		"100": "BK", "101": "RD", "109": "VT/WH", // as given
		"111": "PK",    // the circuit's
		"201": "GN/WH", // the circuit's
		"91":  "BK",    // a strap
	} {
		w, ok := m.WireByNumber(number)
		require.True(t, ok)
		require.Equal(t, want, w.Color.Shown, number)
	}
}

func device(t testing.TB, m *model.Model, name string) *model.Device {
	t.Helper()
	d, ok := m.DeviceByName(name)
	require.True(t, ok, name)
	return d
}

func circuit(t testing.TB, m *model.Model, name string) *model.Circuit {
	t.Helper()
	c, ok := m.CircuitByName(name)
	require.True(t, ok, name)
	return c
}

func terminal(t testing.TB, m *model.Model, name string) *model.Terminal {
	t.Helper()
	x, ok := m.TerminalByName(name)
	require.True(t, ok, name)
	return x
}

// steps gives the set of exactly these steps.
func steps(m *model.Model, names ...string) (set part.StepSet) {
	for i, s := range m.Steps {
		if slices.Contains(names, s.Name) {
			set |= 1 << uint(i)
		}
	}
	return set
}
