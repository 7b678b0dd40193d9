package gauge

import "slices"

// Position is what one rule-book says of a question.
type Position struct {
	Says   string
	Source string
}

// Disagreement is a question that rule-books answer differently, and what
// legwork takes.
type Disagreement struct {
	Topic     string
	Positions []Position
	Taken     string
}

var disagreements = [...]Disagreement{
	{"Fuse over its load", []Position{
		{"125 % of the load", "fuse-load-125"}, {"133 %: the load takes 75 %", "fuse-margin"}, {"125 % in the cabin", "load-on-fuse"},
		{"167 % in the engine bay", "load-on-fuse-bay"}, {"143 %", "body-builder-metric"}, {"150 %, next size up", "fuse-load-150"},
	}, "chosen at 133 %, warned of below 125 %; 143 % in body-builder, 150 % in track"},
	{"Fuse over its wire", []Position{
		{"100 % of ampacity at most", "fuse-under-wire"}, {"80 %: the wire carries 125 % of the fuse", "fire-wire"},
		{"150 % below 50 V", "cfr-183-455-rating"}, {"next size up, to 150 %", "cfr46-rating"}, {"next size up, to 125 %", "state-dot-rating"},
		{"143 % of the continuous current in its table", "body-builder-metric"}, {"above ampacity, a short clears in time", "fuse-over-rating"},
	}, "100 % of ampacity in its place; 80 % in fire, 150 % in boat, the table's in body-builder"},
	{"First device after the battery", []Position{
		{"7 in of conductor, 72 in sheathed", "abyc-feed"}, {"72 in", "cfr-183-460"}, {"200 mm, 1.8 m sheathed", "iso10133-memory"},
		{"close to the source", "rp111c"}, {"a fuse or link on everything", "fuse-everything"},
	}, "7 in: a rule in boat and track, a note elsewhere"},
	{"Starter and charge cable without a fuse", []Position{
		{"starter exempt", "abyc-feed"}, {"starter, battery and alternator leads exempt", "rp111c"},
		{"no exemption in mines", "cfr30-75-1910"}, {"none exempt", "fuse-everything"},
	}, "starter exempt, charge cable warned of on the road"},
	{"Current of 16 AWG, or 1.25 to 1.3 mm2", []Position{
		{"30 A, 125 C insulation alone at 30 C", "ampacity-33cfr183"}, {"24 A, cross-linked", "body-builder-gauge"},
		{"10.5 A behind 15 A, at 40 C", "body-builder-metric"}, {"7 A, 105 C, among 33 wires at 60,000 ft and 70 C", "ac4313-table-11-9"},
	}, "33 CFR 183.425 table 5 with place and bundle; the tables of their own in body-builder and aircraft"},
	{"Drop, ordinary loads", []Position{
		{"10 %, any circuit", "drop-10"}, {"5 %, whole circuit", "drop-training"},
		{"0.5 V at 14 V", "ac4313-table-11-6"}, {"7 %", "drop-chandlery"}, {"2 %", "drop-owner"},
	}, "10 %; 5 % in track, 0.5 V at 14 V in aircraft"},
	{"Drop, what must not fail", []Position{
		{"3 %", "drop-3"}, {"10 %, any circuit", "drop-10"}, {"5 %, navigation lamps", "drop-chandlery"},
	}, "3 % for controllers, pumps and ignition"},
	{"Starter cable, positive side", []Position{
		{"0.5 V", "starter-limits"}, {"0.4 V, battery to stud", "starter-stud"}, {"0.5 V", "journal-limits"}, {"0.2 V a cable", "meter-limits"},
	}, "0.5 V"},
	{"Smallest wire", []Position{
		{"16 AWG alone, 18 AWG in a sheath", "cfr-183-425-smallest"}, {"1 mm2 alone, 0.75 mm2 in a sheath", "iso10133-read"},
		{"20 AWG in a dry bundle, 18 AWG wet or alone", "smallest-wire"},
	}, "20 and 18 AWG; 18 and 16 AWG in boat"},
	{"Insulation by zone", []Position{
		{"105 C cabin, 150 C engine bay", "insulation-zones"}, {"125 C in the engine bay", "insulation-cross-linked"},
	}, "125 C cross-linked; the stated place temperature derates it"},
	{"Key-off drain", []Position{
		{"RC/4 mA", "drain-limit"}, {"35 to 50 mA", "drain-35"}, {"10 mA, small vehicle", "drain-small"},
	}, "shown as days to no-start"},
	{"Controller ground", []Position{
		{"block or head, never the battery post", "ground-block"}, {"battery post", "ground-post"},
	}, "the controller's own manual comes first"},
	{"Solder on crimps", []Position{{"never", "solder-none"}, {"after the crimp", "solder-after"}}, "crimp only"},
}

// Disagreements lists the questions that rule-books answer differently.
func Disagreements() []Disagreement {
	out := slices.Clone(disagreements[:])
	for i := range out {
		out[i].Positions = slices.Clone(out[i].Positions)
	}
	return out
}
