package gauge

import "fmt"

// AmpacityRule names the rule-book that says what a wire may carry.
type AmpacityRule uint8

const (
	// AmpacityCFR is 33 CFR 183.425 table 5 with its notes, the default.
	AmpacityCFR AmpacityRule = iota
	// AmpacityAircraft is FAA AC 43.13-1B table 11-9, which holds bundle and altitude already.
	AmpacityAircraft
	// AmpacityBodyBuilder is the strict metric table of a truck body-builder guide.
	AmpacityBodyBuilder
	// AmpacityThinWall is a maker's thin-wall list, a rise of 40 K.
	AmpacityThinWall
	// AmpacityVDE is VDE 0298-4 group 3, single PVC cores, read as a rise of 40 K.
	AmpacityVDE
)

const (
	bodyBuilderC  = 40.0 // ambient of the body-builder table
	listRiseK     = 40.0 // rise of the thin-wall and VDE lists: 30 to 70 C
	labelSlack    = 0.05 // a label this far above still counts as the size: 18 AWG as 0.85 mm2
	thinWallEndMM = 10.0 // end of the thin-wall list, mm2
)

var ampacityRules = [...]struct{ name, source string }{
	{"cfr", "ampacity-33cfr183"}, {"aircraft", "ac4313-table-11-9"}, {"body-builder", "body-builder-metric"},
	{"thin-wall", "thin-wall-list"}, {"vde", "vde-group3"},
}

// AmpacityRules lists the rule-books, the default first.
func AmpacityRules() []AmpacityRule {
	out := make([]AmpacityRule, len(ampacityRules))
	for i := range out {
		out[i] = AmpacityRule(i)
	}
	return out
}

// AmpacityRuleOf finds a rule-book by its name: cfr, aircraft, body-builder, thin-wall, vde.
func AmpacityRuleOf(name string) (AmpacityRule, bool) {
	for i, r := range ampacityRules {
		if r.name == name {
			return AmpacityRule(i), true
		}
	}
	return 0, false
}

// String is the name of the rule-book.
func (r AmpacityRule) String() string {
	if int(r) >= len(ampacityRules) {
		return "invalid"
	}
	return ampacityRules[r].name
}

// Source is the key of the document behind the rule-book.
func (r AmpacityRule) Source() string {
	if int(r) >= len(ampacityRules) {
		return ""
	}
	return ampacityRules[r].source
}

// Ampacity is what a wire may carry for ever by this rule-book, at ambientC
// (Celsius), with loaded conductors in its bundle, itself included. The steps
// are its working. What a table holds already is not taken off again.
func (r AmpacityRule) Ampacity(s Size, f Family, ambientC float64, loaded int) (amps float64, why []Step, c Confidence) {
	switch r {
	case AmpacityAircraft:
		amps, why = aircraftAmpacity(s, f, ambientC)
	case AmpacityBodyBuilder:
		return bodyBuilderAmpacity(s, f, ambientC, loaded)
	case AmpacityThinWall, AmpacityVDE:
		amps, why = riseAmpacity(r, s, f, ambientC, loaded)
	default:
		return Ampacity(s, f, ambientC, loaded)
	}
	return amps, why, min(confidenceOf(r.Source()), f.Confidence(), confidenceOf(s.Source))
}

// aircraftAmpacity reads table 11-9. It is not raised in cooler places, nor
// derated for bundle or altitude: 33 wires and 60,000 ft stand in it.
func aircraftAmpacity(s Size, f Family, ambientC float64) (float64, []Step) {
	row := aircraftRow(s)
	amps, ratedC := row.at(f.TempC)
	text := fmt.Sprintf("FAA AC 43.13-1B table 11-9, %s, %g C: 33 wires, 60,000 ft, 70 C are in it", AWGName(row.AWG), max(ratedC, 105))
	if ratedC < 105 {
		text += fmt.Sprintf("; brought to %g C", ratedC)
	}
	if small := labelMM2(s) / AWGAreaMM2(row.AWG); small < 1 {
		amps *= small
		text += "; shrunk with the area"
	}
	why := []Step{{Text: text, Value: amps, Unit: "A", Source: "ac4313-table-11-9"}}
	if ambientC <= AircraftAmbientC && ambientC >= -kelvin {
		return amps, why
	}
	amps *= AmbientFactor(ratedC, ambientC, AircraftAmbientC)
	return amps, append(why, ambientStep(ambientC, ratedC, AircraftAmbientC, amps))
}

func ambientStep(ambientC, ratedC, referenceC, amps float64) Step {
	return Step{
		Text:     fmt.Sprintf("hottest place %.4g C, insulation %g C", ambientC, ratedC),
		Equation: fmt.Sprintf("I sqrt((Tr - Ta)/(Tr - %g))", referenceC), Value: amps, Unit: "A", Source: "ambient-law",
	}
}

// bodyBuilderAmpacity is the guide's continuous current, never more than
// table 5 with its notes. On 125 C wire the guide lies below table 5 at 25
// loaded conductors: it is not derated for the bundle by itself.
func bodyBuilderAmpacity(s Size, f Family, ambientC float64, loaded int) (float64, []Step, Confidence) {
	list, _ := AmpListOf("body-builder")
	amps := list.At(labelMM2(s), labelSlack)
	why := []Step{{
		Text:  fmt.Sprintf("body-builder guide, %.3g mm2 by label, 40 C", labelMM2(s)),
		Value: amps, Unit: "A", Source: list.Source,
	}}
	if !(ambientC <= bodyBuilderC) {
		amps *= AmbientFactor(f.TempC, ambientC, bodyBuilderC)
		why = append(why, ambientStep(ambientC, f.TempC, bodyBuilderC, amps))
	}
	conf := min(confidenceOf(list.Source), f.Confidence(), confidenceOf(s.Source))
	cfr, cfrWhy, cfrConf := Ampacity(s, f, ambientC, loaded)
	if amps <= cfr {
		return amps, why, conf
	}
	return cfr, cfrWhy, min(conf, cfrConf)
}

// riseAmpacity takes a list that means a rise of 40 K: it holds up to 40 K
// below the class of the insulation, above it the square-root rule.
func riseAmpacity(r AmpacityRule, s Size, f Family, ambientC float64, loaded int) (float64, []Step) {
	list, _ := AmpListOf(r.String())
	amps := list.At(labelMM2(s), 0)
	step := Step{Text: fmt.Sprintf("%s, %.3g mm2 by label, a rise of 40 K", list.Title, labelMM2(s)), Unit: "A", Source: list.Source}
	if model := ModelShare * thinWallA(s, TableAmbientC, TableAmbientC+listRiseK); r == AmpacityThinWall && labelMM2(s) > thinWallEndMM && model > amps {
		amps = model
		step.Text, step.Source = "heat balance, a rise of 40 K: the list ends at 10 mm2", "heat-balance"
	}
	step.Value = amps
	why := []Step{step}
	if factor := min(1, AmbientFactor(f.TempC, ambientC, f.TempC-listRiseK)); factor < 1 {
		amps *= factor
		why = append(why, ambientStep(ambientC, f.TempC, f.TempC-listRiseK, amps))
	}
	factor, key := BundleFactor(loaded), "bundle-33cfr183"
	if r == AmpacityVDE {
		factor, key = VDEBundleFactor(loaded), "vde-multicore"
	}
	if factor < 1 {
		amps *= factor
		why = append(why, Step{
			Text:     fmt.Sprintf("%d loaded conductors bundled: x %.2f", loaded, factor),
			Equation: "I x factor", Value: amps, Unit: "A", Source: key,
		})
	}
	return amps, why
}
