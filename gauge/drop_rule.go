package gauge

// DropRule says how the drop of a wire is worked out.
type DropRule uint8

const (
	// DropCopper takes the resistance of the copper at its own temperature.
	DropCopper DropRule = iota
	// DropChart takes the circular-mil rule CM = K I L / E with K = 10.75, as
	// the published wire charts do: copper at room temperature.
	DropChart
)

var dropRules = [...]struct{ name, title, source string }{
	{"copper", "resistance of the copper at its own temperature", "copper-temperature"},
	{"chart", "circular-mil rule of the wire charts, K = 10.75", "circular-mil"},
}

// DropRules lists the rules, the default first.
func DropRules() []DropRule { return []DropRule{DropCopper, DropChart} }

// DropRuleOf finds a rule by its name: copper or chart.
func DropRuleOf(name string) (DropRule, bool) {
	for i, r := range dropRules {
		if r.name == name {
			return DropRule(i), true
		}
	}
	return 0, false
}

// String is the name of the rule.
func (r DropRule) String() string {
	if int(r) >= len(dropRules) {
		return "invalid"
	}
	return dropRules[r].name
}

// Title says in words how the rule works.
func (r DropRule) Title() string {
	if int(r) >= len(dropRules) {
		return "invalid"
	}
	return dropRules[r].title
}

// Source is the key of the document behind the rule.
func (r DropRule) Source() string {
	if int(r) >= len(dropRules) {
		return ""
	}
	return dropRules[r].source
}
