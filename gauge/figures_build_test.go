package gauge

import "fmt"

// joints prints the tables of crimps, studs, splices, contacts and tubes.
func (p *figurePage) joints() {
	p.table("Pull-out force of a crimp", "Least, by standard: they differ up to six times, so the standard is always named. Where none has a row, 60 % of the wire's strength.", "standard", "size", "lbf", "N")
	for _, r := range crimpPulls {
		size := fmt.Sprintf("%g mm2", r.MM2)
		if r.AWG != metricPull {
			size = AWGName(r.AWG)
		}
		p.row(r.Source, r.Standard, size, r.Lbf, r.N)
	}
	p.row("copper-strength", "wire itself", "any", "", fmt.Sprintf("%g for each mm2", softCopperMPa))
	p.table("Strip length", "", "terminal", "mm")
	for _, r := range stripLengths {
		p.row(r.Source, r.Terminal, r.MM)
	}
	p.table("Studs and rings", "", "stud", "mm", "hole mm", "near", "use")
	for _, r := range studs {
		p.row(r.Source, r.Name, r.StudMM, r.HoleMM, r.Near, r.Use)
	}
	p.table("Stud terminals", "", "thread", "A", "mV at most")
	for _, r := range studRatings {
		p.row(r.Source, r.Thread, r.RatedA, r.DropMV)
	}
	p.table("Rings on a stud", "At most.", "field", "rings")
	for _, r := range studStacks {
		p.row(r.source, r.field, r.rings)
	}
	p.table("Pre-insulated terminals", "0: not printed.", "color", "from AWG", "to AWG", "from mm2", "to mm2")
	for _, r := range sleeveColors {
		p.row(r.Source, r.Color, r.ThinAWG, r.ThickAWG, r.LeastMM2, r.MostMM2)
	}
	p.contacts()
}

func (p *figurePage) contacts() {
	p.table("Loading of a connector", "Current of each contact over one 18 AWG circuit alone, by contacts loaded; as printed. Without a table: 0.8 for each doubling (source contact-sharing).", "size", "single", "26 %", "50 %", "76 %", "100 %")
	for _, r := range contactLoading {
		p.row("contact-loading", AWGName(r.awg), r.factor[0], r.factor[1], r.factor[2], r.factor[3], r.factor[4])
	}
	p.table("Quick-connect tabs", "UL 310 test currents.", "tab", "size", "continuous A", "cycled A")
	for _, r := range tabCurrents {
		tab := "2.8 and 3.2 mm"
		if r.Wide {
			tab = "4.8 to 6.3 mm"
		}
		p.row(r.Source, tab, AWGName(r.AWG), r.ContinuousA, r.CycleA)
	}
	p.table("Tab widths", "A trade table; the lower of it and UL 310 counts. 0: not printed.", "mm", "thick mm", "series", "from mm2", "to mm2", "A")
	for _, r := range tabSizes {
		p.row(r.Source, r.WidthMM, r.ThickMM, r.Series, r.LeastMM2, r.MostMM2, r.GuideA)
	}
	p.table("Damaged strands, aircraft", "At most. Aluminum: none. Strands 0: several counts.", "from", "to", "strands", "nicked", "broken")
	for _, r := range strandDamages {
		p.row(r.Source, AWGName(r.MostAWG), AWGName(r.LeastAWG), r.Strands, r.Nicked, r.Broken)
	}
	p.table("Damaged strands by class", "At most.", "strands", "class 1 and 2", "class 3", "class 3, tinned")
	for _, r := range strandClasses {
		p.row("strand-classes", fmt.Sprintf("%d to %d", r.from, r.to), r.class12, r.untinned3, r.tinned3)
	}
}

// bundles prints what bundles measure and what goes over them.
func (p *figurePage) bundles() {
	p.table("Bundle of equal wires", "Its diameter over the wire's: the tightest there is, and two published tables (0: no row). The shop rule is 1.2 sqrt(sum d^2) (source bundle-rule).", "wires", "tightest", "laid up (bundle-layup)", "for tubing (bundle-tubing)")
	for n := 1; n < len(layUp); n++ {
		tight, _ := TightestOf(n)
		tube := 0.0
		for _, r := range tubingFactor {
			if r.wires == float64(n) {
				tube = r.factor
			}
		}
		p.row("bundle-tightest", n, tight, layUp[n], tube)
	}
	for _, r := range tubingFactor {
		if r.wires >= float64(len(layUp)) {
			p.row("bundle-tubing", r.wires, 0, 0, r.factor)
		}
	}
	p.table("Tubing by fill", "Bundle diameter in inches; 0: not read. The rest follow 0.97 ID sqrt(fill).", "size 1/32 in", "inside in", "50 %", "60 %", "70 %")
	for _, r := range tubings {
		p.row(r.Source, r.Size, r.InsideIn, r.Fill50, r.Fill60, r.Fill70)
	}
	p.row("conduit-aircraft", "aircraft conduit", "1.25 x bundle", "", "", "")
	p.table("Coverings", "mm; 0: no figure.", "kind", "name", "inside", "outside", "bundle from", "bundle to")
	for _, r := range coverings {
		p.row(r.Source, r.Kind, r.Name, r.InsideMM, r.OutsideMM, r.LeastMM, r.MostMM)
	}
	p.table("Heat shrink", "mm; the named size is the expanded one.", "ratio", "name", "expanded", "recovered", "adhesive")
	for _, r := range shrinks {
		p.row(r.Source, fmt.Sprintf("%d:1", r.Ratio), r.Name, r.ExpandedMM, r.RecoveredMM, r.Adhesive)
	}
	p.table("Tapes", "Half lap: D + 4 t; edge to edge: D + 2 t (source tape-geometry).", "tape", "mm", "C", "use")
	for _, r := range tapes {
		p.row(r.Source, r.Name, r.ThickMM, r.MostC, r.Use)
	}
}

// layout prints lengths, supports and rules of building and testing.
func (p *figurePage) layout() {
	p.table("Supports", "Largest distance.", "field", "m", "book")
	for _, r := range clips {
		p.row(r.Source, r.Field, r.MostM, r.Book)
	}
	p.table("Length of a finished cable", "Never shorter; longer by at most. Bands include their upper end.", "to", "plus")
	for _, r := range toleranceM {
		p.row("length-tolerance", fmt.Sprintf("%g m", r.upTo), fmt.Sprintf("%g mm", 1000*r.plus))
	}
	for _, r := range toleranceFt {
		p.row("length-tolerance", fmt.Sprintf("%g ft", r.upTo), fmt.Sprintf("%g in", r.plus))
	}
	p.row("length-tolerance", "longer", fmt.Sprintf("%g %%", 100*longTolerance))
	p.table("Building and testing", "As each document has it; fields differ.", "topic", "rule", "value", "unit", "field")
	for _, r := range BuildRules("") {
		p.row(r.Source, r.Topic, r.Rule, r.Value, r.Unit, r.Field)
	}
	p.row("insulation-test", "test", "insulation resistance by temperature", "100 Mohm", "60 to 82 F", "2 % for each F beyond")
	p.row("twist-geometry", "twist", "length of each wire over the pair's", "sqrt(1 + (pi d/p)^2)", "", "")
}

// schemes prints the color schemes.
func (p *figurePage) schemes() {
	p.table("Letters of colors", "Digit -1: none.", "color", "IEC 60757", "BS AU 7", "DIN 72551", "ABYC", "aircraft digit")
	for _, r := range colorLetters {
		p.row(r.Source, r.Name, r.IEC, r.British, r.German, r.US, r.Digit)
	}
	p.row("color-digits", "digits", "", "", "", "", "base, stripe, stripe")
	for _, scheme := range []string{"bs-au7", "din-72551", "abyc"} {
		p.table("Colors by circuit, "+scheme, "", "base", "tracer", "circuit", "terminal")
		for _, r := range CircuitColors(scheme) {
			p.row(r.Source, r.Base, r.Tracer, r.Function, r.Terminal)
		}
	}
	p.table("Trailer connectors", "", "connector", "pin", "circuit", "color")
	for _, r := range trailerPins {
		p.row(r.Source, r.Connector, r.Pin, r.Function, r.Color)
	}
	p.table("Old relay letters", "", "letter", "number")
	for _, r := range oldRelayLetters {
		p.row("relay-letters", r[0], r[1])
	}
}
