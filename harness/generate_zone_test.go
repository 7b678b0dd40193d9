package harness_test

import (
	"fmt"
	"strings"
)

// zone is one part of a generated vehicle while it is written.
type zone struct {
	*vehicle
	n       int
	home    string // its box
	unit    string // its controller
	near    string // place of box and controller
	far     string // place of most loads, behind the plug
	plug    string
	cavity  int
	ign     string   // splice with ignition volts
	ports   []string // lines of the controller
	stud    string   // at the far place
	rings   int      // that the stud still takes
	ordinal int      // of branches, in names of circuits
}

const (
	ringsOnStud   = 3 // that a generated stud takes before the next is begun
	wiresOfFeed   = 8 // of a zone and its hub, before any branch
	wiresOfBranch = 14
)

// zone writes a zone: its feed, its controller, then branches until it is full
// or the vehicle has its wires.
func (v *vehicle) zone(n int) {
	hub := (n-1)/zonesOfHub + 1
	if n%zonesOfHub == 1 {
		v.hub(hub)
	}
	z := &zone{
		vehicle: v, n: n, home: v.name("A"), unit: v.name("A"), plug: v.name("X"), ign: v.name("J"),
		near: fmt.Sprint("near", n), far: fmt.Sprint("far", n),
	}
	v.place(z.near, fmt.Sprint("hub", hub), fmt.Sprintf(`"Zone %d"  %dC`, n, v.between(30, 55)))
	v.place(z.far, z.near, fmt.Sprintf(`"Zone %d, outer end"  %dC  %s`, n, v.between(30, 60), v.one("wet", "dry")))
	v.box(z.home, fmt.Sprint("Zone box ", n), z.near)
	z.feed(hub)
	branches := []func(){z.lamps, z.relayed, z.sensors, z.valve, z.telltale, z.heater}
	for range z.between(8, 12) {
		if z.left() < wiresOfBranch {
			break
		}
		branches[z.rng.IntN(len(branches))]()
	}
	if z.left() < 2*wiresOfBranch+wiresOfFeed {
		z.filler()
	}
	z.device("module %s  \"Zone controller %d\"  at %s\n  %s", z.unit, n, z.near, strings.Join(z.ports, "\n  "))
	if z.cavity > 0 {
		z.device("connector %s  at %s  %dway  sealed  blade 2.8mm\n  half in   sockets\n  half out  pins", z.plug, z.far, z.cavity)
	}
}

// feed brings battery and ignition volts to a zone.
func (z *zone) feed(hub int) {
	z.device("splice %s  at %s", z.ign, z.near)
	z.circuit(`zone%d  "Zone %d: feeds"`, z.n, z.n)
	z.wire(z.fuse(fmt.Sprint("D", hub), "BAT", fmt.Sprint("Zone ", z.n), 50, "bolt-down"), z.home+".BAT", "RD")
	z.wire(fmt.Sprint("N", hub), z.ign, "PK")
	z.wire(z.fused("Keep-alive", 5), z.unit+".BAT", "RD/WH")
	z.wire(z.ign, z.unit+".IGN", "PK")
	z.wire(z.unit+".GND", z.newStud(z.near, ""), "BK")
	z.ports = []string{"BAT  feed 0.1A  asleep 1mA  always", "IGN  feed 0.2A  above 6.5V  holds 50ms  when run, crank", "GND  ground"}
}

// left is how many wires the vehicle has to go.
func (z *zone) left() int { return z.wanted - z.wires }

// branch begins a circuit of the zone.
func (z *zone) branch(word, settings string) {
	z.ordinal++
	z.circuit(`%s%d-%d  "Zone %d: %s"  %s`, word, z.n, z.ordinal, z.n, word, settings)
}

// fused adds a fuse on the zone's bus and gives its far terminal.
func (z *zone) fused(label string, ratedA int) string {
	return z.fuse(z.home, "BAT", label, ratedA)
}

// through leads a wire from a terminal through the plug and gives the cavity
// on its far side.
func (z *zone) through(from string, settings ...string) string {
	z.cavity++
	z.wire(from, fmt.Sprintf("%s.in.%d", z.plug, z.cavity), settings...)
	return fmt.Sprintf("%s.out.%d", z.plug, z.cavity)
}

// ground gives a stud at the far place with room for one more ring.
func (z *zone) ground() string {
	if z.rings == 0 {
		z.stud, z.rings = z.newStud(z.far, ""), ringsOnStud
	}
	z.rings--
	return z.stud
}

// port adds a line to the controller and gives its terminal.
func (z *zone) port(prefix, words string) string {
	name := fmt.Sprint(prefix, len(z.ports))
	z.ports = append(z.ports, name+"  "+words)
	return z.unit + "." + name
}
