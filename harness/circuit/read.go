package circuit

import "slices"

// V is the voltage of node n against the reference. ok is false if n floats, or
// is no node of the network: then there is no such voltage, not 0 V.
func (s *Solution) V(n Node) (volts float64, ok bool) {
	if s.Part(n) != 0 {
		return 0, false
	}
	return s.volts[s.at[n]], true
}

// Across is the voltage of a against b. Unlike V it has an answer within a
// floating part too; ok is false between parts.
func (s *Solution) Across(a, b Node) (volts float64, ok bool) {
	if p := s.Part(a); p < 0 || p != s.Part(b) {
		return 0, false
	}
	return s.volts[s.at[a]] - s.volts[s.at[b]], true
}

// Part is 0 for a node tied to the reference through branches that are on, else
// the number 1, 2, ... of the floating part it lies in, counted by lowest node;
// -1 if n is no node of the network.
func (s *Solution) Part(n Node) int {
	if n < 0 || int(n) >= len(s.at) {
		return -1
	}
	return int(s.part[s.at[n]])
}

// I is the current through branch b from A to B, in amperes. A source or
// regulator that delivers pushes current out at A, so its figure is negative.
// It is 0 for a branch that is off or does not exist.
func (s *Solution) I(b Branch) float64 {
	if b < 0 || int(b) >= len(s.amps) {
		return 0
	}
	return s.amps[b]
}

// Mode is the piece of its law that branch b works on.
func (s *Solution) Mode(b Branch) Mode {
	if b < 0 || int(b) >= len(s.modes) {
		return Plain
	}
	return s.modes[b]
}

// Limit is the closed form behind a collapsed load; ok is false for others. If
// MostW is not below what the load wants, others that share the feed hold it down.
func (s *Solution) Limit(b Branch) (l Limit, ok bool) {
	i, ok := slices.BinarySearch(s.Collapsed, b)
	if !ok {
		return Limit{}, false
	}
	return s.collapseOf[i], true
}

// String names the mode in lower case, for messages and tests.
func (m Mode) String() string {
	names := [...]string{"plain", "blocked", "conducting", "starved", "regulating", "at limit"}
	if int(m) < len(names) {
		return names[m]
	}
	return "unknown"
}
