package circuit_test

import (
	"context"
	"fmt"
	"math"

	"legwork/harness/circuit"
)

// Two straps of 10 mohm carry the return of a 120 A starter from the engine to
// the battery of 12.6 V, which has 5 mohm itself: 12.6 V over 5 + 95 + 5 mohm.
// With one strap off it is 12.6 V over 110 mohm. With both off the engine and the
// cable on it hang on the battery's positive post alone: they stand at 12.6 V.
// With the battery's own cable off as well, they float.
func ExampleLinear_Change() {
	net := circuit.NewNet()
	post, engine := net.AddNode(), net.AddNode()
	battery := net.Add(post, 0, circuit.Law{Kind: circuit.Source, Volt: 12.6, Ohm: 0.005})
	starter := net.Add(post, engine, circuit.Law{Kind: circuit.Resistor, Ohm: 0.095})
	left := net.Add(engine, 0, circuit.Law{Kind: circuit.Resistor, Ohm: 0.010})
	right := net.Add(engine, 0, circuit.Law{Kind: circuit.Resistor, Ohm: 0.010})

	lines, err := circuit.NewSolver(net).Linearize()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("as it is: %.2f A\n", lines.I(starter))
	for _, open := range [][]circuit.Change{
		{circuit.Open(left)},
		{circuit.Open(left), circuit.Open(right)},
		{circuit.Open(left), circuit.Open(right), circuit.Open(battery)},
	} {
		state, err := lines.Change(open...)
		if err != nil {
			fmt.Println(err)
			return
		}
		amps, _ := state.I(starter)
		volts, ok := state.V(engine)
		fmt.Printf("%d off: %.2f A, engine %.2f V %t, floats %v\n", len(open), math.Abs(amps), volts, ok, state.Floats())
	}
	fmt.Println("one strap alone moves", lines.Reach(circuit.Open(left)), "is a bridge:", lines.Bridge(left))
	// Output:
	// as it is: 120.00 A
	// 1 off: 114.55 A, engine 1.15 V true, floats []
	// 2 off: 0.00 A, engine 12.60 V true, floats []
	// 3 off: 0.00 A, engine 0.00 V false, floats [1 2]
	// one strap alone moves [1 2] is a bridge: false
}

// A short behind the fuse: 12 V over 10 + 40 + 50 mohm of battery, fuse and wire
// to the chafed spot is 120 A, and the lamp of 11.9 ohm behind it is dark. The
// shorted lamp itself takes 12 V over 0.1 ohm too.
func ExampleShort() {
	net := circuit.NewNet()
	post, fused, lamp := net.AddNode(), net.AddNode(), net.AddNode()
	net.Add(post, 0, circuit.Law{Kind: circuit.Source, Volt: 12, Ohm: 0.010})
	fuse := net.Add(post, fused, circuit.Law{Kind: circuit.Resistor, Ohm: 0.040})
	net.Add(fused, lamp, circuit.Law{Kind: circuit.Resistor, Ohm: 0.050})
	bulb := net.Add(lamp, 0, circuit.Law{Kind: circuit.Resistor, Ohm: 11.9})
	lines, err := circuit.NewSolver(net).Linearize()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, one := range []circuit.Change{circuit.Tie(lamp, 0, 0), circuit.Short(bulb)} {
		state, err := lines.Change(one)
		if err != nil {
			fmt.Println(err)
			return
		}
		through, _ := state.I(fuse)
		atBulb, _ := state.I(bulb)
		fmt.Printf("fuse %.1f A, bulb %.1f A\n", through, atBulb)
	}
	// Output:
	// fuse 120.0 A, bulb 0.0 A
	// fuse 120.0 A, bulb 120.0 A
}

// A load that draws 1 A from 20 V up stands on 12 V behind 0.1 ohm, below its
// knee, where it is as good as 20 ohm. Seen from it the network has 0.1 x 20 / 20.1
// ohm (Thevenin): that many volts another ampere takes off.
func ExampleLinear_Respond() {
	net := circuit.NewNet()
	lamp := net.AddNode()
	net.Add(lamp, 0, circuit.Law{Kind: circuit.Source, Volt: 12, Ohm: 0.1})
	net.Add(lamp, 0, circuit.Law{Kind: circuit.ConstantCurrent, Amp: 1, Knee: 20, LeakOhm: 1e9})
	solver := circuit.NewSolver(net)
	if _, err := solver.Solve(context.Background()); err != nil {
		fmt.Println(err)
		return
	}
	lines, err := solver.Linearize()
	if err != nil {
		fmt.Println(err)
		return
	}
	ohm, _ := lines.Ohm(lamp, 0)
	var more circuit.Response
	if err := lines.Respond(&more, []circuit.Push{{From: lamp, To: 0, Amp: 1}}); err != nil {
		fmt.Println(err)
		return
	}
	volts, _ := more.V(lamp)
	fmt.Printf("%.4f ohm, %.4f V\n", ohm, volts)
	// Output:
	// 0.0995 ohm, -0.0995 V
}
