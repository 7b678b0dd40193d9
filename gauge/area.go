package gauge

// AreaRule says which conducting areas a size stands for.
type AreaRule uint8

const (
	// AreaSAE takes the least areas of SAE J1128 and J1127: vehicle cable.
	AreaSAE AreaRule = iota
	// AreaAWG takes the areas of the AWG law: boat cable, drop charts.
	AreaAWG
	// AreaISO takes metric sizes with the largest resistance of IEC 60228 class 5.
	AreaISO
)

var areaRules = [...]struct{ name, title, source string }{
	{"sae", "SAE least areas, vehicle cable", "sae-area"},
	{"awg", "AWG areas, boat cable and drop charts", "awg-law"},
	{"iso", "metric sizes by largest resistance", "iec-60228"},
}

// AreaRules lists the rules, the default first.
func AreaRules() []AreaRule { return []AreaRule{AreaSAE, AreaAWG, AreaISO} }

// AreaRuleOf finds a rule by its name: sae, awg or iso.
func AreaRuleOf(name string) (AreaRule, bool) {
	for i, r := range areaRules {
		if r.name == name {
			return AreaRule(i), true
		}
	}
	return 0, false
}

// String is the name of the rule.
func (r AreaRule) String() string {
	if int(r) >= len(areaRules) {
		return "invalid"
	}
	return areaRules[r].name
}

// Title says in words what the rule takes.
func (r AreaRule) Title() string {
	if int(r) >= len(areaRules) {
		return "invalid"
	}
	return areaRules[r].title
}

// Source is the key of the document behind the rule.
func (r AreaRule) Source() string {
	if int(r) >= len(areaRules) {
		return ""
	}
	return areaRules[r].source
}

// Ladder lists the sizes that may be chosen by this rule, ascending. With
// AreaAWG the resistance of a size has the strand lay in it.
func (r AreaRule) Ladder() []Size {
	if r != AreaAWG {
		return Ladder(r == AreaISO)
	}
	out := Ladder(false)
	for i, s := range out {
		out[i] = StrandedAWG(s.AWG)
	}
	return out
}

// Cmil is the area in circular mils that the circular-mil rule counts for a
// size: by AreaAWG that of the solid wire, since K holds the strand lay.
func (r AreaRule) Cmil(s Size) float64 {
	if r == AreaAWG && !s.Metric {
		return AWGCmil(s.AWG)
	}
	return s.Cmil()
}

// Pick is the first size of the ladder with at least cmil circular mils; ok
// is false when even the last is smaller.
func (r AreaRule) Pick(cmil float64) (s Size, ok bool) {
	for _, s := range r.Ladder() {
		if r.Cmil(s) >= cmil {
			return s, true
		}
	}
	return Size{}, false
}
