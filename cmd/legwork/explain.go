package main

import (
	"context"
	"fmt"
	"strings"

	"legwork/gauge"
	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/diag"
	"legwork/harness/part"
)

type explainCmd struct {
	Name string `arg:"" optional:"" help:"A rule, a device kind, a profile or a source; nothing lists them."`
}

// Run prints the page of a name, or the list of names.
func (c *explainCmd) Run(ctx context.Context, s streams) error {
	p := newPrinter(s.out)
	if c.Name == "" {
		p.contents()
		return p.err
	}
	if r, ok := check.RuleOf(c.Name); ok {
		page, err := harness.ExplainRule(ctx, r)
		if err != nil {
			return err
		}
		p.page(page)
		return p.err
	}
	if k, ok := part.Of(c.Name); ok {
		p.page(k.Page())
		return p.err
	}
	if f, ok := gauge.ProfileOf(c.Name); ok {
		p.profile(f)
		return p.err
	}
	if src, ok := gauge.SourceOf(c.Name); ok {
		p.source(src)
		return p.err
	}
	return errUsage{unexplained(c.Name)}
}

func unexplained(name string) error {
	names := check.IDs()
	for _, k := range part.Kinds() {
		names = append(names, k.Name)
	}
	for _, f := range gauge.Profiles() {
		names = append(names, f.Name)
	}
	for _, src := range gauge.Sources() {
		names = append(names, src.Key)
	}
	if near := diag.Nearest(name, names); near != "" {
		return fmt.Errorf("there is nothing called %q to explain; did you mean %s?", name, near)
	}
	return fmt.Errorf("there is nothing called %q to explain; legwork explain lists what there is", name)
}

func (p *printer) contents() {
	p.line("Rules")
	for _, r := range check.Rules() {
		p.wrapped("  ", "      ", fmt.Sprintf("%s (%s): %s", r.ID, r.Severity, r.Title))
	}
	p.line("\nDevice kinds")
	for _, k := range part.Kinds() {
		p.wrapped("  ", "      ", k.Name+": "+k.Title)
	}
	p.line("\nProfiles")
	for _, f := range gauge.Profiles() {
		p.wrapped("  ", "      ", f.Name+": "+f.Title)
	}
	p.line("\nSources")
	for _, src := range gauge.Sources() {
		p.wrapped("  ", "      ", src.Key+": "+src.Title)
	}
}

// page prints Markdown for a terminal: prose wrapped, code and tables as they are.
func (p *printer) page(markdown string) {
	for line := range strings.Lines(markdown) {
		line = strings.TrimRight(line, "\n")
		if line == "" || strings.HasPrefix(line, "    ") || strings.HasPrefix(line, "|") {
			p.line(line)
			continue
		}
		p.wrapped("", hang(line), line)
	}
}

func hang(line string) string {
	if strings.HasPrefix(line, "- ") {
		return "  "
	}
	return ""
}

func (p *printer) profile(f gauge.Profile) {
	p.wrapped("", "  ", f.Name+": "+f.Title)
	p.line(fmt.Sprintf("  load of a fuse, at most: %.0f %%", 100*f.LoadOfFuse))
	p.line(fmt.Sprintf("  a chosen fuse is at least: load / %.2f", f.ChooseAt))
	p.line(fmt.Sprintf("  fuse over its wire, at most: %.0f %% of ampacity", 100*f.FuseOverWire))
	p.line(fmt.Sprintf("  drop, controller, pump and ignition: %.0f %%", 100*f.DropCritical))
	p.line(fmt.Sprintf("  drop, others: %.0f %%", 100*f.DropOther))
	src, _ := gauge.SourceOf(f.Source)
	p.wrapped("  source: ", "    ", src.Title)
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
