package words

import (
	"bytes"
	"encoding/json"
	"regexp"
	"slices"
	"strings"

	"legwork/harness/model"
	"legwork/harness/part"
)

// rule is one rule of a TextMate grammar.
type rule struct {
	Include       string             `json:"include,omitempty"`
	Name          string             `json:"name,omitempty"`
	Match         string             `json:"match,omitempty"`
	Begin         string             `json:"begin,omitempty"`
	End           string             `json:"end,omitempty"`
	Captures      map[string]capture `json:"captures,omitempty"`
	BeginCaptures map[string]capture `json:"beginCaptures,omitempty"`
	Patterns      []rule             `json:"patterns,omitempty"`
}

type capture struct {
	Name     string `json:"name,omitempty"`
	Patterns []rule `json:"patterns,omitempty"`
}

type grammar struct {
	Comment    string          `json:"comment"`
	Name       string          `json:"name"`
	ScopeName  string          `json:"scopeName"`
	FileTypes  []string        `json:"fileTypes"`
	Patterns   []rule          `json:"patterns"`
	Repository map[string]rule `json:"repository"`
}

// The pieces of regular expressions that rules are made of. A word of the
// language may hold signs that other languages part words at, so that its
// ends are looked for, not word boundaries.
const (
	wchar  = `[A-Za-z0-9+\-_/%]`
	before = `(?<![A-Za-z0-9+\-_/%."])`
	after  = `(?![A-Za-z0-9+\-_/%.])`
	item   = `(?:"(?:[^"]|"")*"|[^\s",#]+)`
	list   = item + `(?:[ \t]*,[ \t]*` + item + `)*`
)

// Grammar gives the TextMate grammar of the draft language, in JSON.
func Grammar() ([]byte, error) {
	g := grammar{
		Comment: "Written from the declarations of legwork: go test ./harness/words -update",
		Name:    "legwork draft", ScopeName: "source.draft", FileTypes: []string{"draft"},
		Patterns:   []rule{include("comment"), include("devices"), include("statements")},
		Repository: shared(),
	}
	var devices, statements []rule
	for _, k := range part.Kinds() {
		g.Repository["kind-"+k.Name] = ofKind(k)
		devices = append(devices, include("kind-"+k.Name))
	}
	for _, s := range model.Statements() {
		g.Repository["statement-"+s.Word] = ofStatement(s)
		statements = append(statements, include("statement-"+s.Word))
	}
	g.Repository["device-words"], g.Repository["grounds-to"] = ofDevices()
	g.Repository["devices"] = rule{Patterns: devices}
	g.Repository["statements"] = rule{Patterns: statements}
	var out bytes.Buffer
	enc := json.NewEncoder(&out)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	err := enc.Encode(g)
	return out.Bytes(), err
}

func include(name string) rule { return rule{Include: "#" + name} }

func named(scope string) capture { return capture{Name: scope + ".draft"} }

// alternatives matches one of several words, longer ones first.
func alternatives(all []string) string {
	all = slices.Clone(all)
	slices.SortFunc(all, func(a, b string) int {
		if len(a) != len(b) {
			return len(b) - len(a)
		}
		return strings.Compare(a, b)
	})
	for i, w := range all {
		all[i] = regexp.QuoteMeta(w)
	}
	return "(?:" + strings.Join(slices.Compact(all), "|") + ")"
}

// whole matches one of several words where it stands alone.
func whole(scope string, all []string) rule {
	return rule{Match: before + alternatives(all) + after, Name: scope + ".draft"}
}
