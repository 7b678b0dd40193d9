package deck

import (
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness"
	"legwork/harness/circuit"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/solve"
)

// network is one case of one harness, played by us and ready to be written.
type network struct {
	name, group string
	hist        *solve.History
	decks       *Decks
}

func newNetwork(t *testing.T, name, group string, m *model.Model, wires []solve.Conductor, c solve.Case) *network {
	t.Helper()
	h, err := solve.Run(t.Context(), m, wires, c)
	require.NoError(t, err, name)
	return &network{name: name, group: group, hist: h, decks: New(h, wires)}
}

var caseNames = []string{"hot", "cold", "usual", "tired"}

var cases = []solve.Case{{}, {Corner: part.ColdStart}, {Grade: part.Nominal}}

// tired is a cold morning with half a charge.
var tired = solve.Case{Corner: part.ColdStart, Start: part.Start{Cooled: true, TempC: -30, Drained: true, Percent: 50}}

// shipped are the drafts that come with legwork, as sized, in all three cases and
// on a colder morning with half a charge.
func shipped(t *testing.T) []*network {
	t.Helper()
	files, err := filepath.Glob("../../testdata/*.draft")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	var list []*network
	for _, f := range files {
		r, err := harness.Load(os.DirFS(filepath.Dir(f)), filepath.Base(f)).Check(t.Context(), harness.Options{})
		require.NoError(t, err)
		require.NotNil(t, r.Sizes, f)
		var wires []solve.Conductor
		for _, w := range r.Sizes.Wires {
			wires = append(wires, w.Conductor)
		}
		name := strings.TrimSuffix(filepath.Base(f), ".draft")
		for i, c := range append(cases, tired) {
			list = append(list, newNetwork(t, name+" "+caseNames[i], name, r.Model, wires, c))
		}
	}
	return list
}

// constantPower makes heaters draw constant power, with a cut-off at 7 V, for
// as long as make runs: no kind of device does, but the solver knows the law.
func constantPower(make func()) {
	kind, _ := part.Of("heater")
	usual := kind.Stamp
	defer func() { kind.Stamp = usual }()
	kind.Stamp = func(d *part.Device, s *part.Stamper) {
		law := circuit.Law{Kind: circuit.ConstantPower, Watt: d.Num("draws") * 12, Knee: 7, LeakOhm: gauge.OffLeakOhm}
		s.Add(part.LoadElement, "1", "2", law, s.All())
	}
	make()
}

// invented are so many generated networks, in the three cases by turns.
func invented(t *testing.T, count int) []*network {
	t.Helper()
	var list []*network
	constantPower(func() {
		for seed := range count {
			text := generate(uint64(seed))
			m := built(t, text)
			name := "generated " + num(float64(seed))
			group := "generated " + num(float64(seed/50*50)) + " to " + num(float64(seed/50*50+49))
			rng := rand.New(rand.NewPCG(uint64(seed), 2))
			list = append(list, newNetwork(t, name, group, m, conductors(m, rng), cases[seed%len(cases)]))
		}
	})
	return list
}

// conductors gives every wire 0.3 mohm to 0.3 ohm, and the heavy cables of
// the starter less.
func conductors(m *model.Model, rng *rand.Rand) []solve.Conductor {
	wires := make([]solve.Conductor, len(m.Wires))
	for _, w := range m.Wires {
		ohm := 3e-4 * math.Pow(1000, rng.Float64())
		if strings.HasPrefix(w.Number, "10") {
			ohm = 3e-4 * (1 + rng.Float64())
		}
		wires[w.ID] = solve.Conductor{Ohm: ohm, TempC: 60, Measured: true}
	}
	return wires
}
