package gauge_test

import (
	"fmt"

	"legwork/gauge"
)

// A 10 AWG wire to a pump behind a 15 A fuse in a 60 C place, 4.3 m long.
func ExampleJudgeWire() {
	road, _ := gauge.ProfileOf("road")
	wire, _ := gauge.AWGSize(10)
	j := gauge.JudgeWire(gauge.WireCase{
		Size: wire, Family: gauge.FamilyFor(wire), Profile: road,
		AmbientC: 60, LengthM: 4.3, Wet: true,
		HeatA: 8.5, FuseA: 15, FuseKind: "blade", ShortA: 270, MaxOhm: 0.026,
	})
	for _, l := range j.Limits {
		fmt.Printf("%-13s %.4g of %.4g %s, margin %.0f %%\n", l.Name, l.Got, l.Asked, l.Unit, 100*l.Margin())
	}
	fmt.Println(j.OK, j.Governs)
	// Output:
	// ampacity      57.9 of 8.5 A, margin 581 %
	// protection    57.9 of 15 A, margin 286 %
	// short circuit 5.645e+05 of 4500 A2s, margin 12444 %
	// drop          0.01821 of 0.026 ohm, margin 43 %
	// mechanical    5.261 of 0.823 mm2, margin 539 %
	// true drop
}

func ExampleAmpacity() {
	wire, _ := gauge.AWGSize(14)
	amps, why, _ := gauge.Ampacity(wire, gauge.FamilyFor(wire), 85, 5)
	for _, step := range why {
		fmt.Printf("%.1f A  %s [%s]\n", step.Value, step.Text, step.Source)
	}
	fmt.Printf("%.1f A\n", amps)
	// Output:
	// 40.0 A  33 CFR 183.425 table 5, 14 AWG, column 125 C [ampacity-33cfr183]
	// 26.0 A  hottest place 85 C, insulation 125 C [ambient-law]
	// 15.6 A  5 loaded conductors bundled: x 0.60 [bundle-33cfr183]
	// 15.6 A
}
