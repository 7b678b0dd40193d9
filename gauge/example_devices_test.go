package gauge_test

import (
	"fmt"

	"legwork/gauge"
)

// A pump of 8.5 A on an 18 AWG wire that carries 20.7 A in its place.
func ExampleFuseWindow() {
	road, _ := gauge.ProfileOf("road")
	w := gauge.FuseWindow(gauge.WindowCase{Style: "blade", LoadA: 8.5, WireA: 20.7, Profile: road})
	fmt.Printf("%.1f to %.1f A: %v, take %g A\n", w.LeastA, w.MostA, w.Ratings, w.RatedA)
	// Output:
	// 11.3 to 20.7 A: [15 20], take 15 A
}

// A pump relay in a hot bay that was held before: 8.0 V at 20 C becomes 12.1 V.
func ExampleHotCoil() {
	v, _ := gauge.HotCoil(gauge.CoilCase{PullInV: 8, PlaceC: 85, HeldV: 13.5, CoilV: 9.6})
	fmt.Printf("winding %.0f C, needs %.1f V, pulls in: %v\n", v.WindingC, v.NeedV, v.PullsIn)
	// Output:
	// winding 151 C, needs 12.1 V, pulls in: false
}

func ExampleFarEndShort() {
	f, _ := gauge.FarEndShort(12.6, "blade", 15,
		gauge.Ohms{Name: "battery", Ohm: 0.0108}, gauge.Ohms{Name: "5 m of 1.5 mm2", Ohm: 0.0635},
		gauge.Ohms{Name: "fuse", Ohm: 0.0048}, gauge.Ohms{Name: "body", Ohm: 0.002})
	fmt.Printf("%.0f A, %.1f x the fuse, opens within %g s\n", f.ShortA, f.Times, f.Gate.MaxS)
	// Output:
	// 155 A, 10.4 x the fuse, opens within 0.1 s
}

// Two thin wires beside a thick one: the shop rule is too small.
func ExampleBundleOf() {
	b, _ := gauge.BundleOf(2.4, 2.4, 4.5)
	fmt.Printf("shop rule %.2f mm, at least %.2f mm\n", b.RuleMM, b.FloorMM)
	// Output:
	// shop rule 6.76 mm, at least 7.02 mm
}

// A 15 A blade under a 60 A maxi.
func ExampleSelectiveTo() {
	amps, c := gauge.SelectiveTo(gauge.FuseAt{Style: "maxi", RatedA: 60}, gauge.FuseAt{Style: "blade", RatedA: 15})
	fmt.Printf("known to %.0f A; may decide: %v\n", amps, c.MayDecide())
	// Output:
	// known to 210 A; may decide: false
}

func ExampleDrainDays() {
	days, _, _ := gauge.DrainDays(100, 0.025)
	fmt.Printf("%.0f days\n", days)
	// Output:
	// 40 days
}
