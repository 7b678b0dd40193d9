package circuit_test

import (
	"context"
	"fmt"

	"legwork/harness/circuit"
)

// A lamp on a battery of 12.6 V behind 10 mohm, through 90 mohm of wire each way.
func Example() {
	net := circuit.NewNet()
	post, lamp, back := net.AddNode(), net.AddNode(), net.AddNode()
	net.Add(post, 0, circuit.Law{Kind: circuit.Source, Volt: 12.6, Ohm: 0.010})
	net.Add(post, lamp, circuit.Law{Kind: circuit.Resistor, Ohm: 0.090})
	bulb := net.Add(lamp, back, circuit.Law{Kind: circuit.Resistor, Ohm: 6.11})
	wire := net.Add(back, 0, circuit.Law{Kind: circuit.Resistor, Ohm: 0.090})

	solver := circuit.NewSolver(net)
	lit, err := solver.Solve(context.Background())
	if err != nil {
		fmt.Println(err)
		return
	}
	volts, _ := lit.Across(lamp, back)
	fmt.Printf("lamp %.2f V, %.2f A\n", volts, lit.I(bulb))

	solver.SetOn(wire, false)
	dark, err := solver.Solve(context.Background())
	if err != nil {
		fmt.Println(err)
		return
	}
	_, ok := dark.V(post)
	fmt.Printf("ground wire off: %.2f A, post has volts: %t\n", dark.I(bulb), ok)
	// Output:
	// lamp 12.22 V, 2.00 A
	// ground wire off: 0.00 A, post has volts: true
}
