package gauge

// NodeLaw is the key of the source of figures that are read from the solved
// network (source node-law).
const NodeLaw = "node-law"

var networkSources = []Source{
	{"node-law", "Kirchhoff's laws, solved for each step: currents at every node add up within 1 uA", computed, Computed, "rests on all figures of the parts on the way"},
}
