package main

import (
	"context"
	"fmt"

	"legwork/gauge"
	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/diag"
	"legwork/harness/part"
)

type explainCmd struct {
	Name string `arg:"" optional:"" help:"A rule, a device kind, a profile or a source; or rules, kinds, profiles, sources for a list; nothing lists all."`
}

// Run prints the page of a name, or a list of names. A name that stands in two
// sets, as a kind of device and a source can, gives both pages.
func (c *explainCmd) Run(ctx context.Context, s streams) error {
	p := newPrinter(s.out)
	if c.Name == "profiles" {
		p.profiles()
		return p.err
	}
	if p.lists(c.Name) {
		return p.err
	}
	shown := 0
	between := func() {
		if shown++; shown > 1 {
			p.line("")
		}
	}
	if r, ok := check.RuleOf(c.Name); ok {
		page, err := harness.ExplainRule(ctx, r)
		if err != nil {
			return err
		}
		between()
		p.page(page)
	}
	if k, ok := part.Of(c.Name); ok {
		between()
		p.page(k.Page())
	}
	if f, ok := gauge.ProfileOf(c.Name); ok {
		between()
		p.profile(f)
	}
	if src, ok := gauge.SourceOf(c.Name); ok {
		between()
		p.source(src)
	}
	if shown == 0 {
		return errUsage{unexplained(c.Name)}
	}
	return p.err
}

func unexplained(name string) error {
	names := []string{}
	for _, l := range lists() {
		names = append(names, l.word)
		for _, e := range l.entries {
			names = append(names, e.name)
		}
	}
	if near := diag.Nearest(name, names); near != "" {
		return fmt.Errorf("there is nothing called %q to explain; did you mean %s?", name, near)
	}
	return fmt.Errorf("there is nothing called %q to explain; legwork explain lists what there is", name)
}

// entry is a name that explain knows, with what it is in a line.
type entry struct{ name, title string }

// nameList is all names of one sort, under the word that asks for them.
type nameList struct {
	word, title string
	entries     []entry
}

func lists() []nameList {
	rules := nameList{word: "rules", title: "Rules"}
	for _, r := range check.Rules() {
		rules.entries = append(rules.entries, entry{r.ID, fmt.Sprintf("(%s) %s", r.Severity, r.Title)})
	}
	kinds := nameList{word: "kinds", title: "Device kinds"}
	for _, k := range part.Kinds() {
		kinds.entries = append(kinds.entries, entry{k.Name, k.Title})
	}
	profiles := nameList{word: "profiles", title: "Profiles"}
	for _, f := range gauge.Profiles() {
		profiles.entries = append(profiles.entries, entry{f.Name, f.Title})
	}
	sources := nameList{word: "sources", title: "Sources"}
	for _, src := range gauge.Sources() {
		sources.entries = append(sources.entries, entry{src.Key, src.Title})
	}
	return []nameList{rules, kinds, profiles, sources}
}

// lists prints the names of one sort, or all of them for no word at all; false
// where the word asks for none.
func (p *printer) lists(word string) bool {
	printed := false
	for _, l := range lists() {
		if word != "" && word != l.word {
			continue
		}
		if printed {
			p.line("")
		}
		p.line(l.title)
		for _, e := range l.entries {
			p.wrapped("  ", "      ", e.name+": "+e.title)
		}
		printed = true
	}
	return printed
}

func (p *printer) source(src gauge.Source) {
	p.wrapped("", "  ", src.Key+": "+src.Title)
	p.wrapped("  how it was seen: ", "    ", src.Where)
	p.wrapped("  confidence: ", "    ", src.Confidence.String())
	if !src.Confidence.MayDecide() {
		p.wrapped("  ", "    ", "It only hints: no size and no verdict rests on it.")
	}
	if src.Note != "" {
		p.wrapped("  ", "    ", src.Note)
	}
}
