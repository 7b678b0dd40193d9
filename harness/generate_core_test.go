package harness_test

import "fmt"

// core writes what every vehicle has once.
func (v *vehicle) core() {
	v.place("bay", "", `"Engine bay"  75C  wet`)
	v.place("dash", "bay", `"Under dash"  50C`)
	fmt.Fprint(&v.places, "metal block  \"Engine block\"\nmetal frame  \"Frame\"\nmetal body  \"Body shell\"\n")
	block, frame, body := v.newStud("bay", "block"), v.newStud("bay", "frame"), v.newStud("bay", "body")
	fmt.Fprintf(&v.studs, "strap 1  %s %s  4/0AWG  18in\nstrap 2  %s %s  4/0AWG  24in\n", frame, block, frame, body)
	v.wires += 2
	v.device(`battery G1  "Batteries"  at bay  cca %dA`, 900+v.wanted/4)
	v.device(`alternator G2  at bay  grounds-to block  %dA  setpoint 14.2V`, min(120+v.wanted/100, 220))
	v.device(`starter M1  at bay  grounds-to block  draws %dA  stall 420A  pull-in 38A  hold 9A`, v.between(15, 20)*10)
	v.named["G"], v.named["M"], v.named["S"] = 2, 1, 1
	v.device("keyswitch S1  \"Key\"  at dash\n  off\n  acc    B ACC\n  run    B ACC IGN\n  gap    B IGN  lasts 12ms\n  crank  B IGN ST")
	v.named["F"] = 1
	v.device("fuse F1  \"Charge\"  %dA  at bay  bolt-down  from G1 6in", min(160+v.wanted/40, 300))
	v.circuit(`supply  "Battery and charging"`)
	v.wire("G1.-", frame, "4/0AWG", "BK", "24in")
	v.wire("G1.-", body, "4/0AWG", "BK", "30in")
	v.wire("G2.B+", "F1.2", "30in")
	v.wire("F1.1", "G1.+")
	v.wire("G1.+", "M1.B", "4/0AWG", "RD", "24in")
	v.deck(1)
	v.starting()
}

// starting writes what turns the engine.
func (v *vehicle) starting() {
	start := v.relay("C1", "Start relay", "contact 70A  motor 40A")
	v.circuit(`starting  "Starting"`)
	v.wire("S1.ST", start+".86", "VT")
	v.wire(start+".85", v.newStud("dash", ""))
	v.wire(v.fuse("C1", "BAT", "Start", 50, "bolt-down"), start+".30")
	v.wire(start+".87", "M1.S", "VT/WH")
}

// deck writes a main box with its fuse and the relay of its ignition volts;
// the first one also feeds the key.
func (v *vehicle) deck(n int) {
	box := fmt.Sprint("C", n)
	v.box(box, fmt.Sprint("Main box ", n), "dash")
	main, master := v.name("F"), v.relay(box, "Ignition relay", "contact 70A")
	v.device("fuse %s  \"Main %d\"  200A  at bay  bolt-down  from G1 6in", main, n)
	v.circuit(`deck%d  "Main box %d"`, n, n)
	v.wire("G1.+", main+".1")
	v.wire(main+".2", box+".BAT")
	if n == 1 {
		v.wire(v.fuse(box, "BAT", "Key", 15), "S1.B")
		v.device("splice J0  at dash")
		v.wire("S1.IGN", "J0", "PK")
	}
	v.wire("J0", master+".86", "PK")
	v.wire(master+".85", v.newStud("dash", ""))
	v.wire(v.fuse(box, "BAT", "Ignition", 40, "bolt-down"), master+".30")
	v.wire(master+".87", box+".IGN")
}

// hub writes the box that feeds the next zones.
func (v *vehicle) hub(n int) {
	deck := (n-1)/hubsOfDeck + 1
	if n%hubsOfDeck == 1 && n > 1 {
		v.deck(deck)
	}
	v.place(fmt.Sprint("hub", n), "dash", fmt.Sprintf(`"Hub %d"  %dC`, n, v.between(35, 55)))
	v.device("splice N%d  at hub%d", n, n)
	box, main := fmt.Sprint("D", n), fmt.Sprint("C", deck)
	v.box(box, fmt.Sprint("Hub box ", n), fmt.Sprint("hub", n))
	v.circuit(`hub%d  "Feeds of hub %d"`, n, n)
	v.wire(v.fuse(main, "BAT", fmt.Sprint("Hub ", n), 80, "bolt-down"), box+".BAT")
	v.wire(v.fuse(main, "IGN", fmt.Sprint("Ignition of hub ", n), 15), fmt.Sprint("N", n), "PK")
}
