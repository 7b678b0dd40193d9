package deck

import (
	"bytes"
	"fmt"
	"io"
	"slices"
	"strconv"

	"legwork/harness/circuit"
	"legwork/harness/part"
)

// writer writes one deck.
type writer struct {
	Deck
	text   bytes.Buffer
	joined []int // by node: a group of nodes that hang together whatever moves; the reference's is that of node 0
}

// Write writes the deck as a netlist: title, elements, and a request for the
// operating point. It holds generated names only.
func (k Deck) Write(w io.Writer) error {
	b := &writer{Deck: k}
	b.head()
	b.join()
	for i := range k.of.parts {
		b.part(i)
	}
	b.anchor()
	for r := range k.Contacts {
		b.state(r)
	}
	b.foot()
	_, err := w.Write(b.text.Bytes())
	return err
}

func (b *writer) printf(format string, a ...any) { fmt.Fprintf(&b.text, format+"\n", a...) }

func (b *writer) head() {
	corner, grade := "hot soak", "sure figures"
	if b.of.history.Case.Corner == part.ColdStart {
		corner = "cold start"
	}
	if b.of.history.Case.Grade == part.Nominal {
		grade = "nominal figures"
	}
	b.printf("* one step of a harness, number %d of %d: %s, %s", b.Step, len(b.of.history.States), corner, grade)
}

// foot asks for the operating point, to within what the laws' corners allow.
// Where relays move it can't be said beforehand what floats: every node then
// leaks a picoampere a volt.
func (b *writer) foot() {
	b.printf(".options reltol=1e-9 vntol=1e-10 abstol=1e-9 itl1=500")
	if b.live() {
		b.printf(".options rshunt=1e12")
	}
	b.printf(".op\n.end")
}

func (b *writer) live() bool {
	return slices.ContainsFunc(b.Contacts, func(c Contact) bool { return !c.Fixed })
}

// on reports whether an element is in the circuit; free that the simulator
// decides when it conducts.
func (b *writer) on(e *element) (on, free bool) {
	if !e.steps.Has(b.Step) || e.a == e.b || e.pin >= 0 && !(b.Given != nil && b.Given[e.pin]) {
		return false, false
	}
	if e.state < 0 {
		return true, false
	}
	c := b.Contacts[e.state]
	return !c.Fixed || c.On != e.rest, !c.Fixed
}

// law is the law of an element in the step: a coil is as warm as it was found,
// and a load that collapsed only leaks.
func (b *writer) law(e *element) circuit.Law {
	law := e.law
	switch {
	case e.coil >= 0:
		law.Ohm = coilAt(b.of.states[e.coil].CoilOhm, b.CoilC[e.coil])
	case law.Kind == circuit.ConstantPower && e.device != nil && slices.Contains(b.Off, e.device.Name):
		law = circuit.Law{Kind: circuit.Resistor, Ohm: leakOhm(law)}
	}
	if law.Kind != circuit.Regulator {
		law.Ohm = max(law.Ohm, idealOhm)
	}
	return law
}

// part writes one element, if it is in the circuit.
func (b *writer) part(i int) {
	e := &b.of.parts[i]
	on, free := b.on(e)
	if !on {
		return
	}
	law := b.law(e)
	x, y, v := nodeName(e.a), nodeName(e.b), across(e.a, e.b)
	switch {
	case free && e.rest:
		b.printf("B%d %s %s I = V(k%d) > 0.5 ? 0 : (%s)", i, x, y, e.state, amps(law, v))
	case free:
		b.printf("B%d %s %s I = V(k%d) > 0.5 ? (%s) : 0", i, x, y, e.state, amps(law, v))
	case law.Kind == circuit.Resistor:
		b.printf("R%d %s %s %s", i, x, y, num(law.Ohm))
	case law.Kind == circuit.Source:
		b.printf("V%d m%d %s %s\nR%d m%d %s %s", i, i, y, num(law.Volt), i, i, x, num(law.Ohm))
	case law.Kind == circuit.Warming:
		b.printf("V%d %s m%d 0\nB%d m%d %s V = %s*i(V%d)*(1+%s*i(V%d)*i(V%d))", i, x, i, i, i, y, num(law.Ohm), i, num(law.Rise/(law.Amp*law.Amp)), i, i)
	case law.Kind == circuit.Regulator:
		b.regulator(i, e, law)
	default:
		b.printf("B%d %s %s I = %s", i, x, y, amps(law, v))
	}
}

// regulator writes a source that holds volts elsewhere. Node x is in amperes:
// between 0 and the limit the sensed volts are the set point, beyond them x
// takes up what is missing or too much. So one equation says all three modes.
func (b *writer) regulator(i int, e *element, law circuit.Law) {
	if b.joined[e.senseA] != b.joined[e.senseB] || b.joined[e.a] != b.joined[e.b] {
		return // it has nothing to hold, or nowhere to push
	}
	push := fmt.Sprintf("min(max(V(x%d),0),%s)", i, num(law.Amp))
	b.printf("B%d %s %s I = %s", i, nodeName(e.b), nodeName(e.a), push)
	b.printf("BX%d 0 x%d I = %s-%s+V(x%d)-%s", i, i, across(e.senseA, e.senseB), num(law.Volt), i, push)
}

// across is the expression of the volts from one node to another.
func across(a, b int) string {
	switch {
	case b == 0:
		return "V(" + nodeName(a) + ")"
	case a == 0:
		return "(-V(" + nodeName(b) + "))"
	}
	return "V(" + nodeName(a) + "," + nodeName(b) + ")"
}

func num(v float64) string { return strconv.FormatFloat(v, 'g', -1, 64) }
