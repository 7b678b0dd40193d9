package deck

// commanded is a controller with a relay, a lamp and a reference of its own.
func (v *vehicle) commanded() {
	a, p := v.name("A"), v.name("P")
	v.line("lamp %s %dW", p, v.between(2, 10))
	k := v.newRelay("")
	v.line("module %s", a)
	v.line("  BAT feed 0.%dA asleep 2mA always", v.between(1, 9))
	v.line("  IGN feed 1.%dA above %dV holds %dms when run, crank", v.between(0, 9), v.between(5, 10), []int{1, 20, 60}[v.rng.IntN(3)])
	v.line("  OUT low-side 0.5A when %s", v.one("prime, crank, running", "running", "koeo, crank", "run"))
	v.line("  HI high-side 2A when %s", v.one("running", "run, crank"))
	v.line("  REF reference 5V\n  IN input pull-up 4700ohm\n  GND ground")
	v.wire(v.one("J2", "G1.+"), a+".BAT")
	v.wire("J1", a+".IGN")
	v.wire(v.one("J1", "J2"), k+".86")
	v.wire(k+".85", a+".OUT")
	v.wire(a+".HI", p+".1")
	v.wire(p+".2", v.ground())
	v.wire(a+".GND", v.ground())
	m := v.name("M")
	v.line("motor %s draws %dA 13.5V", m, v.between(2, 15))
	v.wire(v.one("J2", "G1.+"), k+".30")
	v.wire(k+".87", m+".+")
	v.wire(m+".-", v.ground())
	if v.chance(50) {
		b := v.name("B")
		v.line("sensor %s", b)
		v.wire(a+".REF", b+".+")
		v.wire(b+".S", a+".IN")
		v.wire(b+".-", v.one(a+".GND", v.ground()))
	}
}

// diodes feeds one lamp from two points over a diode each.
func (v *vehicle) diodes() {
	p, j := v.name("P"), v.name("J")
	v.line("lamp %s %dW\nsplice %s", p, v.between(2, 20), j)
	for _, from := range []string{"J1", v.one("J2", "S1.ACC", "S1.ST", "G2.D+")} {
		d := v.name("V")
		v.line("diode %s %dA", d, v.between(1, 6))
		v.wire(from, d+".A")
		v.wire(d+".K", j)
	}
	v.wire(j, p+".1")
	v.wire(p+".2", v.ground())
}

// ownLoad hangs a relay's coil on the wire that its own load draws through.
func (v *vehicle) ownLoad() {
	k, h, r, j := v.newRelay(""), v.name("P"), v.name("R"), v.name("J")
	v.line("lamp %s %dW\nresistor %s 0.%dohm\nsplice %s", h, v.between(20, 200), r, v.between(1, 9), j)
	v.wire(v.one("J1", "J2"), r+".1")
	v.wire(r+".2", j)
	v.wire(j, k+".86")
	v.wire(k+".85", v.ground())
	v.wire(j, k+".30")
	v.wire(k+".87", h+".1")
	v.wire(h+".2", v.ground())
}

// interlock is two change-over relays, each of which breaks the other's coil.
func (v *vehicle) interlock() {
	one, two := v.newRelay("change-over"), v.newRelay("change-over")
	p := v.name("P")
	v.line("lamp %s %dW", p, v.between(2, 20))
	v.wire("J1", one+".30")
	v.wire("J1", two+".30")
	v.wire(two+".87a", one+".86")
	if v.chance(40) {
		v.wire(one+".87a", two+".86")
	} else {
		v.wire("S1.ACC", two+".86")
	}
	v.wire(one+".85", v.ground())
	v.wire(two+".85", v.ground())
	v.wire(one+".87", p+".1")
	v.wire(p+".2", v.ground())
}

// power draws constant power over wires that may be too thin for it.
func (v *vehicle) power() {
	h, r, s := v.name("R"), v.name("R"), v.name("S")
	v.line("heater %s draws %dA 13.5V\nresistor %s 0.%02dohm", h, v.between(1, 15), r, v.between(1, 60))
	v.line("switch %s closed when %s", s, v.one("running", "run", "koeo", "crank"))
	v.wire(v.one("J1", "J2", "G1.+"), s+".1")
	v.wire(s+".2", r+".1")
	v.wire(r+".2", h+".1")
	v.wire(h+".2", v.ground())
}

// restLamp lights through a contact at rest, or through the field of the
// alternator.
func (v *vehicle) restLamp() {
	p := v.name("P")
	v.line("lamp %s 2W", p)
	if v.chance(40) {
		v.wire("J1", p+".1")
		v.wire(p+".2", "G2.D+")
		return
	}
	k := v.newRelay("change-over")
	v.wire(v.one("J1", "S1.ACC", "S1.ST"), k+".86")
	v.wire(k+".85", v.ground())
	v.wire(v.one("J2", "J1"), k+".30")
	v.wire(k+".87a", p+".1")
	v.wire(p+".2", v.ground())
}

// sensor is a gauge with its sender, and a solenoid with a diode.
func (v *vehicle) sensor() {
	g, b, q := v.name("N"), v.name("B"), v.name("Q")
	v.line("gauge %s\nsensor %s\nsolenoid %s draws 0.%dA suppress %s", g, b, q, v.between(2, 9), v.one("diode", "resistor", "zener"))
	v.wire("J1", g+".+")
	v.wire(g+".-", v.ground())
	v.wire(g+".S", b+".S")
	v.wire(b+".-", v.ground())
	v.wire(v.one("J1", "J2"), q+".1")
	v.wire(q+".2", v.ground())
}
