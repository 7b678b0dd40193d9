package gauge_test

import (
	"fmt"

	"legwork/gauge"
)

// A fuel pump of 8.5 A, 16 ft from the battery, in a place of 60 C; it draws
// 30 A for 0.2 s when it starts.
func ExampleSizeWire() {
	road, _ := gauge.ProfileOf("road")
	ask := gauge.NewAsk(8.5, gauge.OneWayFt(16), road)
	ask.AmbientC, ask.StartA, ask.StartS = 60, 30, 0.2
	got, err := gauge.SizeWire(ask)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s %s, %s governs\n", got.Chosen.Size.Name, got.Chosen.Family.Name, got.Governs)
	fmt.Printf("loses %.2f V (%.1f %%), carries %.0f A, copper at %.0f C\n", got.Chosen.DropV, 100*got.DropShare, got.Chosen.AmpacityA, got.Chosen.ConductorC)
	fmt.Printf("fuse %.0f A %s, from %.1f to %.0f A\n", got.FuseA, got.FuseStyle, got.FuseMinA, got.FuseMaxA)
	for _, l := range got.Down.Fails() {
		fmt.Printf("not %s: %s %.1f of %.1f m%s\n", got.Down.Size.Name, l.Name, 1000*l.Got, 1000*l.Asked, l.Unit)
	}
	fmt.Println(got.Notes[0])
	// Output:
	// 10 AWG GXL, drop governs
	// loses 0.35 V (2.9 %), carries 58 A, copper at 61 C
	// fuse 15 A blade, from 11.3 to 58 A
	// not 12 AWG: drop 66.5 of 42.4 mohm
	// the fuse may open at the start: 25 A would hold it, and this wire allows it
}

// What a profile allows, each limit with its document.
func ExampleProfile_Limits() {
	boat, _ := gauge.ProfileOf("boat")
	for _, l := range boat.Limits()[:5] {
		src, _ := gauge.SourceOf(l.Source)
		fmt.Printf("%s: %s (%s, %s)\n", l.Title, l.Text, src.Title, l.Confidence())
	}
	// Output:
	// load on its fuse, most: 80 % (Practitioners' article on fusing: fuse at least 125 % of the load, high)
	// chosen fuse over load, least: 1.33 x (Fuse selection guide, 25 % rule: continuous load at most 0.75 of the rating at 25 C, high)
	// fuse over ampacity, most: 150 % (33 CFR 183.455(c)(1): at most 150 % of table 5 below 50 V, high)
	// drop: control, pump, ignition: 3 % (ISO 10133: 3 % for vital loads, high)
	// drop: others: 10 % (Fire-apparatus specification: 10 % of system volts for any circuit, high)
}
