// Package check holds the rules, one file each. A rule reads the model, the
// routes, the sizes and the states, never the draft's text, and reports
// findings. Rules ask what a device can do, never what it is called.
package check

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"legwork/gauge"
	"legwork/harness/diag"
)

// Stage says which stage reports a finding of a rule.
type Stage string

const (
	// Checked rules live in this package and have a Run function.
	Checked Stage = ""
	// Drafted rules are reported while the text is read and the model built.
	Drafted Stage = "reading the draft"
	// Routed rules are reported while lengths are measured.
	Routed Stage = "routing"
	// Sized rules are reported while sizes are chosen.
	Sized Stage = "sizing"
	// Solved rules are reported while the steps are played.
	Solved Stage = "solving"
)

// Needs says what a rule has to have before it can run.
type Needs uint8

const (
	// Model needs the model alone.
	Model Needs = iota
	// Lengths needs the routes as well.
	Lengths
	// Played needs sizes and the solved steps, shorts among them.
	Played
	// States needs sizes and a step that no short ends at once.
	States
	// Bonded needs States, and engines that have a way back.
	Bonded
	// Grounded needs States, and controllers and engines that have a way back:
	// without one much else only looks at fault.
	Grounded
	// Sound needs States, and a harness in which no other rule found a fault:
	// it tells of what a fault elsewhere would bring about as well.
	Sound
)

// Rule is one thing that legwork looks for.
type Rule struct {
	ID       string        // names the fault, kebab case, reads well after "accept"
	Severity diag.Severity // the usual one; a finding may carry a milder one, and Why says when
	Title    string        // one sentence
	Why      string        // two to five sentences for the person at the bench
	Equation string        // the comparison it makes
	Figures  []string      // keys into gauge's sources
	Misses   string        // what it can't see
	Needs    Needs
	Polar    bool // judges which side is fed: of no use where the positive side is ground; rules that need Lengths are so anyway
	Stage    Stage
	Bad      string // the shortest draft that breaks this rule and no other
	Good     string // the same draft put right
	Run      func(*Pass)
}

var rules []*Rule

var idShape = regexp.MustCompile(`^[a-z0-9]+(-[a-z0-9]+)*$`)

// define keeps a rule. It is called from package variables, so that a rule is
// one file and no second list; a wrong declaration stops the program at once.
func define(r Rule) *Rule {
	if why := r.fault(); why != "" {
		panic("check: rule " + r.ID + ": " + why)
	}
	rules = append(rules, &r)
	return &r
}

func (r *Rule) fault() string {
	switch {
	case !idShape.MatchString(r.ID):
		return "id is not in kebab case"
	case slices.ContainsFunc(rules, func(o *Rule) bool { return o.ID == r.ID }):
		return "declared twice"
	case r.Severity < diag.Note || r.Severity > diag.Danger:
		return "no severity"
	case r.Title == "" || r.Why == "" || r.Misses == "":
		return "title, why or misses is empty"
	case (r.Run == nil) == (r.Stage == Checked):
		return "a checked rule has a Run function, and only such a rule"
	case r.Stage == Checked && (r.Bad == "" || r.Good == ""):
		return "no failing or no cured draft"
	}
	for _, key := range r.Figures {
		if _, ok := gauge.SourceOf(key); !ok {
			return fmt.Sprintf("figure %q has no source", key)
		}
	}
	return ""
}

// Rules gives every rule by id.
func Rules() []*Rule {
	list := slices.Clone(rules)
	slices.SortFunc(list, func(a, b *Rule) int { return strings.Compare(a.ID, b.ID) })
	return list
}

// RuleOf finds a rule by its id.
func RuleOf(id string) (*Rule, bool) {
	i := slices.IndexFunc(rules, func(r *Rule) bool { return r.ID == id })
	if i < 0 {
		return nil, false
	}
	return rules[i], true
}

// IDs gives the ids of all rules in order.
func IDs() []string {
	var ids []string
	for _, r := range Rules() {
		ids = append(ids, r.ID)
	}
	return ids
}
