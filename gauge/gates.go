package gauge

import "slices"

// Gate is one point of a fuse's opening law: at Share times its rating it
// holds at least MinS and opens within MaxS seconds (0: no figure).
type Gate struct {
	Share      float64
	MinS, MaxS float64
	Source     string
}

// opening is the opening law of one style of fuse.
type opening struct {
	family string
	gates  []Gate
}

var bladeGates = []Gate{
	{1.10, 360000, 0, "fuse-gates"},
	{1.35, 0.35, 600, "fuse-gates"},
	{1.60, 0.25, 50, "fuse-gates-fast"},
	{2.00, 0.10, 5, "fuse-gates"},
	{3.50, 0.04, 0.5, "fuse-gates-fast"},
	{6.00, 0.02, 0.1, "fuse-gates-fast"},
}

var slowGates = []Gate{
	{1.10, 360000, 0, "fuse-gates-slow"},
	{1.35, 60, 1800, "fuse-gates-slow"},
	{2.00, 2, 60, "fuse-gates-slow"},
	{3.50, 0.2, 7, "fuse-gates-slow"},
	{6.00, 0.04, 1, "fuse-gates-slow"},
}

var boltGates = []Gate{
	{1.00, 14400, 0, "fuse-gates-bolt"},
	{1.35, 120, 1800, "fuse-gates-bolt"},
	{2.00, 1, 15, "fuse-gates-bolt"},
	{3.50, 0.3, 5, "fuse-gates-bolt"},
	{6.00, 0.1, 1, "fuse-gates-bolt"},
}

// glassGates are the opening times of glass tubes up to 30 A.
var glassGates = []Gate{
	{1.35, 0, 3600, "glass-gates"},
	{2.00, 0, 120, "glass-gates"},
}

// glassSlowGates are those of time-delay tubes.
var glassSlowGates = []Gate{
	{1.10, 14400, 0, "glass-slow-gates"},
	{1.35, 0, 3600, "glass-slow-gates"},
	{2.00, 0, 120, "glass-slow-gates"},
}

// megaGates are the bolt-down gates with one hold that was read.
var megaGates = []Gate{
	{1.00, 14400, 0, "fuse-gates-bolt"},
	{1.35, 120, 1800, "fuse-gates-bolt"},
	{2.00, 1, 15, "fuse-gates-bolt"},
	{3.00, 1, 0, "mega-hold"},
	{3.50, 0.3, 5, "fuse-gates-bolt"},
	{6.00, 0.1, 1, "fuse-gates-bolt"},
}

// openings holds the larger of two printed maxima and the smaller of two
// printed minima, so that both uses stay on the careful side.
var openings = [...]opening{
	{"blade", bladeGates},
	{"mini", bladeGates},
	{"maxi", slowGates},
	{"cartridge", slowGates},
	{"bolt-down", boltGates},
	{"midi", boltGates},
	{"mega", megaGates},
	{"glass", glassGates},
	{"glass-slow", glassSlowGates},
	{"glass-large", []Gate{{1.35, 0, 3600, "glass-gates"}, {2.00, 0, 240, "glass-gates"}}},
}

// FuseGates lists the opening gates of a style of fuse (blade, mini, maxi,
// cartridge, bolt-down, midi, mega, glass to 30 A, glass-large above, glass-slow)
// by rising current; nil where none is known (sources fuse-gates, fuse-gates-fast, fuse-gates-slow,
// fuse-gates-bolt, mega-hold, glass-gates, glass-slow-gates).
func FuseGates(family string) []Gate { return slices.Clone(gatesOf(family)) }

func gatesOf(family string) []Gate {
	for _, o := range openings {
		if o.family == family {
			return o.gates
		}
	}
	return nil
}

// LetThrough bounds the I^2 t in A2 s that a fuse lets pass at shortA. The
// melting I^2 t of an element never rises with current, since less heat
// escapes the faster it melts; so the gates at or below shortA each bound it
// by (share x In)^2 x tmax, and the least of them holds. With sure set only
// gates that may decide count, and only up to 5 s, where the adiabatic law is
// used; else gates up to 30 s count, where ignoring the heat lost errs on the
// safe side. ok is false when no gate applies (source let-through).
func LetThrough(family string, ratedA, shortA float64, sure bool) (a2s float64, g Gate, ok bool) {
	for _, gate := range gatesOf(family) {
		if !(gate.MaxS > 0) || !(shortA >= gate.Share*ratedA) {
			continue
		}
		if gate.MaxS > slowestS || sure && (!confidenceOf(gate.Source).MayDecide() || gate.MaxS > adiabaticS) {
			continue
		}
		amps := gate.Share * ratedA
		if bound := amps * amps * gate.MaxS; !ok || bound < a2s {
			a2s, g, ok = bound, gate, true
		}
	}
	return a2s, g, ok
}

// sureGate is the lowest gate of a style that may decide and lies within the
// time of the adiabatic law; where a style has none, sure is false and the
// gate is its lowest with an opening time within 30 s.
func sureGate(family string) (g Gate, sure bool) {
	for _, g := range gatesOf(family) {
		if g.MaxS > 0 && g.MaxS <= adiabaticS && confidenceOf(g.Source).MayDecide() {
			return g, true
		}
	}
	for _, g := range gatesOf(family) {
		if g.MaxS > 0 && g.MaxS <= slowestS {
			return g, false
		}
	}
	return Gate{}, false
}
