package circuit

import "fmt"

// Push is a current of Amp amperes driven out of From and into To by something
// outside the network.
type Push struct {
	From, To Node
	Amp      float64
}

// Response is what pushed currents alone do to a Linear, its own sources dead:
// answers to several pushes add up, with each other and with the Linear's own.
type Response struct {
	l *Linear
	x []float64
}

// Respond solves for one more right side with the factor as it is. The error
// names a push between nodes that do not hang together, whose current would have
// no way back, or one of a node that does not exist. The room of into is used again.
func (l *Linear) Respond(into *Response, push []Push) error {
	into.l, into.x = l, resized(into.x, len(l.x))
	for _, p := range push {
		a, z, ok := l.tied(p.From, p.To)
		if !ok {
			return fmt.Errorf("no way back for a current from node %d to node %d", p.From, p.To)
		}
		into.x[a] -= p.Amp
		into.x[z] += p.Amp
	}
	l.f.gather(into.x, 0, l.f.n)
	into.x[l.f.n] = 0
	l.f.spread(into.x, 0, l.f.n)
	return nil
}

// V is by how many volts node n rises against the reference; ok is false if it floats or is no node.
func (r *Response) V(n Node) (volts float64, ok bool) { return r.Across(n, 0) }

// Across is by how many volts a rises against b; ok is false if they do not hang together.
func (r *Response) Across(a, b Node) (volts float64, ok bool) {
	p, q, ok := r.l.tied(a, b)
	if !ok {
		return 0, false
	}
	return r.x[p] - r.x[q], true
}
