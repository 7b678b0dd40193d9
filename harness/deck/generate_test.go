package deck

import (
	"fmt"
	"math/rand/v2"
	"strings"
)

// vehicle is an invented draft while it is written: small, weak and badly
// grounded, so that relays drop out, controllers reboot and currents stray.
type vehicle struct {
	strings.Builder
	rng   *rand.Rand
	wires int
	named int
	back  []string // splices of returns
	ign   []string // points that the key feeds
}

// generate writes the draft of a seed.
func generate(seed uint64) string {
	v := &vehicle{rng: rand.New(rand.NewPCG(seed, 1))}
	v.core()
	branches := []func(){v.lamps, v.relay, v.commanded, v.diodes, v.ownLoad, v.interlock, v.power, v.restLamp, v.sensor}
	for range v.between(4, 8) {
		branches[v.rng.IntN(len(branches))]()
	}
	v.grounds()
	return v.String()
}

func (v *vehicle) between(low, high int) int { return low + v.rng.IntN(high-low+1) }

func (v *vehicle) one(of ...string) string { return of[v.rng.IntN(len(of))] }

func (v *vehicle) chance(percent int) bool { return v.rng.IntN(100) < percent }

func (v *vehicle) line(format string, a ...any) { fmt.Fprintf(v, format+"\n", a...) }

func (v *vehicle) name(letter string) string {
	v.named++
	return fmt.Sprint(letter, 10+v.named)
}

// wire joins two ends; nothing is heard of its resistance here.
func (v *vehicle) wire(from, to string) {
	v.wires++
	v.line("wire %d %s %s", 200+v.wires, from, to)
}

// core is battery, alternator, starter and key. Some batteries are tired.
func (v *vehicle) core() {
	v.line("draft 1\nmetal frame\nmetal block\nstud E1 on frame M8\nstud E2 on block M8")
	v.line("battery G1 cca %dA", []int{90, 150, 250, 400, 600}[v.rng.IntN(5)])
	v.line("alternator G2 %dA setpoint 14.2V grounds-to block", v.between(15, 70))
	v.line("starter M1 draws %dA stall %dA pull-in 38A %dV hold 9A %dV grounds-to block", v.between(90, 160), v.between(250, 420), v.between(6, 8), v.between(2, 5))
	v.line("keyswitch S1\n  acc B ACC\n  run B ACC IGN\n  gap B IGN lasts %dms\n  crank B IGN ST", v.between(5, 60))
	v.line("fuse F1 %dA\nsplice J1\nsplice J2", []int{15, 20, 30}[v.rng.IntN(3)])
	v.line("wire 100 G1.- E1\nwire 101 G1.+ M1.B\nwire 102 G2.B+ G1.+")
	v.line("strap 103 E1 E2 6AWG 20cm")
	v.wire("G1.+", "F1.1")
	v.wire("F1.2", "J2")
	v.wire("J2", "S1.B")
	v.wire("S1.IGN", "J1")
	v.ign = []string{"J1", "J1", "S1.ACC"}
	if v.chance(50) {
		v.wire("S1.ST", "M1.S")
		return
	}
	k := v.newRelay("")
	v.wire("S1.ST", k+".86")
	v.wire(k+".85", v.ground())
	v.wire("G1.+", k+".30")
	v.wire(k+".87", "M1.S")
}

// newRelay adds a relay with thresholds of its own.
func (v *vehicle) newRelay(words string) string {
	k := v.name("K")
	out := v.between(4, 7)
	v.line("relay %s coil %dohm pull-in %dV %dV release %d.%dV moves %dms %dms %s %s", k, v.between(60, 110), out, out+1,
		v.between(1, 3), v.between(0, 9), v.between(3, 12), v.between(3, 9), words, v.one("", "suppress diode", "suppress resistor", "suppress zener"))
	return k
}

// ground is a splice of returns; several devices share one.
func (v *vehicle) ground() string {
	if len(v.back) == 0 || v.chance(40) {
		j := v.name("J")
		v.line("splice %s", j)
		v.back = append(v.back, j)
	}
	return v.back[v.rng.IntN(len(v.back))]
}

// grounds ends the splices of returns at a stud; one in five has lost its
// ground, some stand on a bad one.
func (v *vehicle) grounds() {
	for _, j := range v.back {
		switch n := v.rng.IntN(10); {
		case n < 2:
		case n < 4:
			r := v.name("R")
			v.line("resistor %s %dohm", r, []int{1, 10, 100, 1000}[v.rng.IntN(4)])
			v.wire(j, r+".1")
			v.wire(r+".2", "E1")
		default:
			v.wire(j, v.one("E1", "E2"))
		}
	}
}

func (v *vehicle) lamps() {
	s := v.name("S")
	v.line("switch %s closed when %s", s, v.one("running", "koeo, running", "crank", "acc", "always"))
	v.wire(v.one("J1", "J2", "S1.ACC"), s+".1")
	for range v.between(1, 3) {
		p := v.name("P")
		v.line("lamp %s %dW", p, v.between(2, 40))
		v.wire(s+".2", p+".1")
		v.wire(p+".2", v.ground())
	}
}

// relay feeds a motor by a switch of its own.
func (v *vehicle) relay() {
	k, m, s := v.newRelay(""), v.name("M"), v.name("S")
	v.line("switch %s closed when %s", s, v.one("run", "koeo", "running, crank", "coast"))
	v.line("motor %s draws %dA 13.5V needs %dV", m, v.between(2, 20), v.between(6, 10))
	v.wire(v.one(v.ign...), s+".1")
	v.wire(s+".2", k+".86")
	v.wire(k+".85", v.ground())
	v.wire(v.one("J2", "G1.+", "J1"), k+".30")
	v.wire(k+".87", m+".+")
	v.wire(m+".-", v.ground())
}
