package gauge

// NodeLaw is the key of the source of figures that are read from the solved
// network (source node-law).
const NodeLaw = "node-law"

// SneakClues is the key of the source of the names for paths by which current
// comes where none should be (source sneak-clues).
const SneakClues = "sneak-clues"

var networkSources = []Source{
	{"node-law", "Kirchhoff's laws, solved for each step: currents at every node add up within 1 uA", computed, Computed, "rests on all figures of the parts on the way"},
	{"sneak-clues", "Sneak Circuit Analysis Handbook, D2-118341-1, 1970, section 2.6: power-to-power, ground-to-ground, reversed current", read, High, "headings alone were read; what a clue is taken to mean here is legwork's own"},
}
