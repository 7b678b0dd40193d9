package gauge

import "slices"

// BuildRule is one published rule on building or testing a harness, as its
// document has it. Fields differ and rules contradict each other: each names
// the field it is from.
type BuildRule struct {
	Topic  string // crimp, pull, splice, shrink, route, twist, marks, test, cut, board, seal, spool
	Rule   string
	Value  string
	Unit   string
	Field  string
	Source string
}

// BuildRules lists the rules of a topic (crimp, pull, splice, shrink, route,
// twist, marks, test, cut, board, seal, spool), of all with the empty word (sources crimp-rules,
// pull-test, splice-rules, shrink-ratio, bend-space, clip-aircraft,
// twist-truck, id-marks, test-read and those of each row).
func BuildRules(topic string) []BuildRule {
	all := slices.Concat(jointRules, routeRules, checkRules, shopRules)
	if topic == "" {
		return all
	}
	return slices.DeleteFunc(all, func(r BuildRule) bool { return r.Topic != topic })
}

// Tape is one usual harness tape.
type Tape struct {
	Name    string
	ThickMM float64
	MostC   float64
	Use     string
	Source  string
}

var tapes = [...]Tape{
	{"PVC harness tape", 0.13, 105, "general; half lap in dry zones", "tape-usual"},
	{"PVC loom tape, no adhesive", 0.12, 80, "old looms, ends held by adhesive tape", "tape-usual"},
	{"PET cloth tape", 0.25, 125, "engine bay", "tape-usual"},
	{"PET fleece tape", 0.30, 105, "cabin, against rattle", "tape-usual"},
	{"self-fusing silicone", 0.50, 200, "heat and water", "tape-usual"},
}

// Tapes lists usual harness tapes; from memory, a hint (source tape-usual).
func Tapes() []Tape { return slices.Clone(tapes[:]) }
