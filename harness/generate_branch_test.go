package harness_test

import "fmt"

// lamps: fuse, switch, plug, splice, two to four lamps, and a joint return.
func (z *zone) lamps() {
	feed, back, s := z.name("J"), z.name("J"), z.name("S")
	z.device("splice %s  at %s\nsplice %s  at %s", feed, z.far, back, z.far)
	z.device("switch %s  at %s  closed when %s  contact 20A  lamp 10A", s, z.near, z.one("running", "koeo, running", "acc", "stalled", "coast"))
	z.branch("lamps", "")
	z.wire(z.fused("Lamps", 10), s+".1")
	z.wire(z.through(s+".2"), feed)
	for range z.between(2, 4) {
		e := z.name("P")
		z.device("lamp %s  %q  at %s  %dW", e, z.one("Step lamp", "Bay lamp", "Marker", "Reading lamp"), z.far, z.between(1, 3))
		z.wire(feed, e+".1")
		z.wire(e+".2", back)
	}
	z.wire(back, z.ground(), "BK")
}

// relayed: a motor behind a relay that the controller drives.
func (z *zone) relayed() {
	k, m := z.relay(z.home, "Motor relay", "contact 30A  motor 17A"), z.name("M")
	z.device("motor %s  %q  at %s  draws %d.%dA 13.5V  inrush 12A guess", m,
		z.one("Blower", "Door drive", "Wiper", "Vent drive"), z.far, z.between(0, 1), z.between(3, 9))
	z.branch("motor", "drop 6%")
	z.wire(z.fused("Motor", 10), k+".30")
	z.wire(z.through(k+".87", "GN/WH"), m+".+", "GN/WH")
	z.wire(m+".-", z.ground(), "BK")
	z.wire(z.ign, k+".86", "PK")
	z.wire(k+".85", z.port("OUT", "low-side 0.5A  when "+z.one("running", "koeo, running", "stalled", "prime, crank, running")), "VT")
}

// sensors: reference volts and a return that one to three sensors share.
func (z *zone) sensors() {
	ref, back := z.name("J"), z.name("J")
	z.device("splice %s  at %s\nsplice %s  at %s", ref, z.far, back, z.far)
	z.branch("sensors", "")
	z.wire(z.through(z.port("REF", "reference 5V"), "OG"), ref, "OG")
	z.wire(z.through(z.port("SGND", "sensor-ground"), "BK/OG"), back, "BK/OG")
	for range z.between(1, 3) {
		b := z.name("B")
		z.device("sensor %s  %q  at %s", b, z.one("Level", "Pressure", "Position", "Temperature"), z.far)
		z.wire(ref, b+".+")
		z.wire(b+".-", back)
		z.wire(z.through(z.port("IN", "input")), b+".S")
	}
}

// valve: a solenoid that the controller grounds itself.
func (z *zone) valve() {
	q := z.name("Q")
	z.device("solenoid %s  %q  at %s  draws 0.%dA 13.5V", q, z.one("Air valve", "Lock", "Dump valve"), z.far, z.between(2, 6))
	z.branch("valve", "")
	z.wire(z.through(z.fused("Valve", 5)), q+".1")
	z.wire(z.through(z.port("OUT", "low-side 2A  clamps  when "+z.one("running", "koeo", "stalled"))), q+".2")
}

// telltale: one lamp that two contacts light through diodes of their own.
func (z *zone) telltale() {
	p, j := z.name("P"), z.name("J")
	z.device("lamp %s  \"Tell-tale\"  at %s  2W\nsplice %s  at %s", p, z.near, j, z.near)
	z.branch("telltale", "")
	z.wire(z.ign, p+".1")
	z.wire(p+".2", j)
	for range 2 {
		d, s := z.name("V"), z.name("S")
		z.device("diode %s  at %s", d, z.near)
		z.device("switch %s  at %s  grounds-to %s  closed when %s", s, z.far, z.one("frame", "body"), z.one("running", "koeo", "stalled"))
		z.wire(j, d+".A")
		z.wire(z.through(d+".K"), s+".1")
	}
}

// heater: a heater that returns through metal, behind a relay and a switch.
func (z *zone) heater() {
	k, s, h := z.relay(z.home, "Heater relay", "contact 30A"), z.name("S"), z.name("R")
	z.device("switch %s  at %s  closed when %s", s, z.near, z.one("running", "stalled", "koeo"))
	z.device("heater %s  \"Glass heater\"  at %s  grounds-to %s  draws %dA 13.5V", h, z.far, z.one("frame", "body"), z.between(1, 2))
	z.branch("heater", "")
	z.wire(z.fused("Heater", 10), k+".30")
	z.wire(z.through(k+".87"), h+".1")
	z.wire(z.ign, s+".1")
	z.wire(s+".2", k+".86")
	z.wire(k+".85", z.newStud(z.near, ""), "BK")
}

// filler uses up the wires that are left: lamps that return through metal.
func (z *zone) filler() {
	if z.left() > 0 {
		z.branch("single", "")
	}
	for z.left() > 0 {
		p := z.name("P")
		z.device("lamp %s  at %s  grounds-to %s  2W", p, z.near, z.one("frame", "body"))
		z.wire(z.fused(fmt.Sprint("Lamp ", p), 5), p+".1")
	}
}
