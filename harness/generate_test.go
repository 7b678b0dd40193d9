package harness_test

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/diag"
)

// How many zones of a vehicle hang at one hub, and hubs at one main box.
const (
	zonesOfHub = 6
	hubsOfDeck = 6
)

// vehicle writes an invented draft of a wanted number of wires: battery,
// alternator, starter, key and main box, then zone after zone with a box, a
// controller and a plug of its own. Nothing in it is a real vehicle.
type vehicle struct {
	rng      *rand.Rand
	wanted   int // wires, straps included
	wires    int
	named    map[string]int      // last number used for a letter
	buses    map[string][]string // by box and bus: the fuses on it
	boxes    []string            // their lines, in order, with the bus's key
	places   strings.Builder
	studs    strings.Builder
	devices  strings.Builder
	circuits strings.Builder
}

// generated gives a draft of exactly the wanted number of wires, at least 60,
// the same one for the same seed.
func generated(wires int, seed uint64) string {
	v := &vehicle{rng: rand.New(rand.NewPCG(seed, 1)), wanted: wires, named: map[string]int{}, buses: map[string][]string{}}
	v.core()
	for n := 1; v.wires < wires; n++ {
		v.zone(n)
	}
	v.closeBoxes()
	head := fmt.Sprintf("# Generated for the tests from seed %d: invented throughout.\ndraft 1\n"+
		"harness \"Generated coach, %d wires\"  system 12V  profile road  units us\n", seed, wires)
	return head + v.places.String() + v.studs.String() + v.devices.String() + v.circuits.String()
}

// name gives the next unused name with a letter.
func (v *vehicle) name(letter string) string {
	v.named[letter]++
	return fmt.Sprint(letter, v.named[letter])
}

// between gives a whole number from a range, both ends included.
func (v *vehicle) between(low, high int) int { return low + v.rng.IntN(high-low+1) }

// one picks an item.
func (v *vehicle) one(of ...string) string { return of[v.rng.IntN(len(of))] }

func (v *vehicle) device(format string, a ...any) { fmt.Fprintf(&v.devices, format+"\n", a...) }

func (v *vehicle) circuit(format string, a ...any) {
	fmt.Fprintf(&v.circuits, "circuit "+format+"\n", a...)
}

// wire adds a wire with its next number to the circuit at hand.
func (v *vehicle) wire(from, to string, settings ...string) {
	v.wires++
	fmt.Fprintf(&v.circuits, "  wire %d  %s  %s  %s\n", 1000+v.wires, from, to, strings.Join(settings, "  "))
}

// place adds a place with a leg that leads to it.
func (v *vehicle) place(name, from, words string) {
	fmt.Fprintf(&v.places, "place %s  %s\n", name, words)
	if from != "" {
		fmt.Fprintf(&v.places, "leg %s %s  %din  %s\n", from, name, v.between(20, 80), v.one("split-loom", "tape", "braid"))
	}
}

// newStud adds a stud on one of the two metals that reach every zone, or on a
// metal that is named.
func (v *vehicle) newStud(place, metal string) string {
	if metal == "" {
		metal = v.one("frame", "body")
	}
	name := v.name("E")
	fmt.Fprintf(&v.studs, "stud %s  on %s  at %s  %s\n", name, metal, place, v.one("M6", "M8", "1/4in"))
	return name
}

// box begins a box; its buses are written when all fuses are known.
func (v *vehicle) box(name, label, place string) {
	v.boxes = append(v.boxes, fmt.Sprintf("box %s  %q  at %s", name, label, place))
}

// fuse adds a fuse to the bus of a box and gives its far terminal; every third
// blade fuse is left for legwork to rate.
func (v *vehicle) fuse(box, bus, label string, ratedA int, words ...string) string {
	name := v.name("F")
	rating := fmt.Sprint(ratedA, "A")
	if v.rng.IntN(3) == 0 && len(words) == 0 {
		rating = ""
	}
	v.device("fuse %s  %q  %s  in %s  %s", name, label, rating, box, strings.Join(words, " "))
	v.buses[box+" "+bus] = append(v.buses[box+" "+bus], name+".1")
	return name + ".2"
}

func (v *vehicle) closeBoxes() {
	for _, line := range v.boxes {
		v.device("%s", line)
		box := strings.Fields(line)[1]
		for _, bus := range []string{"BAT", "IGN"} {
			if on := v.buses[box+" "+bus]; on != nil {
				v.device("  bus %s  %s", bus, strings.Join(on, " "))
			}
		}
	}
}

// relay adds a relay to a box.
func (v *vehicle) relay(box, label, contact string) string {
	name := v.name("K")
	v.device("relay %s  %q  in %s  coil %dohm  pull-in 6.2V 7V  %s  suppress %s",
		name, label, box, v.between(80, 95), contact, v.one("resistor", "diode"))
	return name
}

// checked reads and checks a draft and refuses one with a fault or worse.
func checked(tb testing.TB, name, text string) *harness.Result {
	tb.Helper()
	r, err := harness.Parse(name, []byte(text)).Check(tb.Context(), harness.Options{})
	require.NoError(tb, err)
	for f := range r.Findings.AtLeast(diag.Fault) {
		require.Fail(tb, f.String())
	}
	return r
}

func TestGeneratedDraftsAreSound(t *testing.T) {
	for _, size := range []struct {
		wires int
		seeds uint64
	}{{60, 3}, {150, 10}, {1000, 2}, {10000, 2}} {
		for seed := range size.seeds {
			text := generated(size.wires, seed)
			require.Equal(t, text, generated(size.wires, seed), "the same seed, the same draft")
			r := checked(t, "generated.draft", text)
			require.Len(t, r.Model.Wires, size.wires)
			require.Len(t, r.Model.Metals, 3)
			for _, w := range r.Sizes.Wires {
				require.True(t, w.Chosen || w.Wire.Sized, w.Wire.Number)
			}
		}
	}
}
