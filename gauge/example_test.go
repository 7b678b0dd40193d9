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

// One wire at the bench: 20 A to a load 15 ft away, 3 % of 12 V, return by
// wire, in a bundle of three at 50 C.
func ExampleThinnest() {
	road, _ := gauge.ProfileOf("road")
	gxl, _ := gauge.FamilyOf("GXL")
	run := gauge.OneWayFt(15).Conductor(gauge.ByWire)
	j, ok := gauge.Thinnest(road.Area.Ladder(), gauge.WireCase{
		Family: gxl, Profile: road, AmbientC: 50, Loaded: 3, HeatA: 20,
		LengthM: float64(run), MaxOhm: gauge.MaxOhmFor(20, 0.03*12),
	})
	drop := gauge.DropOver(run, j.Case.Size, j.TempC, 20, 12)
	fmt.Printf("%s, %s governs: %.3f V, %.1f %% at %.0f C, %v\n", j.Case.Size.Name, j.Governs, drop.Volts, 100*drop.Share, j.TempC, ok)
	// Output:
	// 6 AWG, drop governs: 0.286 V, 2.4 % at 52 C, true
}

// The same wire by every rule-book.
func ExampleAmpacityRule() {
	wire, _ := gauge.AWGSize(12)
	for _, rule := range gauge.AmpacityRules() {
		amps, why, _ := rule.Ampacity(wire, gauge.FamilyFor(wire), 40, 1)
		fmt.Printf("%-12s %5.1f A  %s\n", rule, amps, why[0].Source)
	}
	// Output:
	// cfr           47.3 A  ampacity-33cfr183
	// aircraft      13.0 A  ac4313-table-11-9
	// body-builder  17.5 A  body-builder-metric
	// thin-wall     33.0 A  thin-wall-list
	// vde           29.0 A  vde-group3
}

// What the constant of the circular-mil rule means.
func ExampleKMeaning() {
	for _, step := range gauge.KMeaning(gauge.KRoom) {
		fmt.Printf("%s: %.4g %s\n", step.Text, step.Value, step.Unit)
	}
	// Output:
	// 100 % IACS copper at 20 C: 10.37 ohm cmil/ft
	// solid copper has K = 10.75 at: 29.3 C
	// stranded copper has K = 10.75 at: 24.13 C
}
