package main

import (
	"fmt"
	"strings"

	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/diag"
	"legwork/harness/quantity"
)

// writeReport prints the outcome of a check: findings first, then one screen
// of what was done, how near the limits it came, and what it rests on.
func writeReport(s streams, r *harness.Result) error {
	l := lookOf(s.out)
	if err := diag.WriteText(s.out, r.Findings, diag.TextOptions{Source: r.Draft.Source, Color: l.color, Width: l.width}); err != nil {
		return err
	}
	p := newPrinter(s.out)
	if len(r.Findings) > 0 {
		p.line("")
	}
	p.head(r)
	p.margins(r.Margins())
	p.accepted(r.Accepted)
	p.guesses(r)
	p.skipped(r.Skipped)
	p.list("Not looked at", harness.NotLookedAt())
	p.verdict(r)
	return p.err
}

func (p *printer) head(r *harness.Result) {
	title := r.Model.Title
	if title == "" {
		title = r.Draft.Name
	}
	p.wrapped("", "  ", title)
	if r.Sizes == nil {
		return
	}
	steps := 0
	for _, s := range r.Sizes.Hot.States {
		if s.Skipped == "" {
			steps++
		}
	}
	p.wrapped("  ", "  ", fmt.Sprintf("%s, %s, %s solved in 3 cases; %s ran, %d could not; profile %s",
		count(len(r.Model.Wires), "wire"), count(len(r.Model.Devices), "device"), count(steps, "step"),
		count(r.Ran, "rule"), len(r.Skipped), r.Profile.Name))
}

func count(n int, noun string) string {
	if n == 1 {
		return "1 " + noun
	}
	return fmt.Sprintf("%d %ss", n, noun)
}

func (p *printer) margins(list []harness.Margin) {
	if len(list) == 0 {
		return
	}
	p.line("")
	p.line("Nearest to its limit")
	for _, m := range list {
		where := m.Name
		if m.Step != "" {
			where += " in " + m.Step
		}
		p.wrapped("  ", "    ", fmt.Sprintf("%s: %s, %s of %s %s", m.Check, where,
			quantity.Text(m.Got, dim(m.Unit)), m.Bound, quantity.Text(m.Limit, dim(m.Unit))))
	}
}

func dim(unit string) quantity.Dim {
	if unit == "A" {
		return quantity.Current
	}
	return quantity.Voltage
}

func (p *printer) accepted(list []check.Accepted) {
	if len(list) == 0 {
		return
	}
	p.line("")
	p.line("Accepted")
	for _, a := range list {
		p.wrapped("  ", "    ", fmt.Sprintf("%s: %s (%s)", a.At, a.Rule, a.Reason))
	}
}

func (p *printer) guesses(r *harness.Result) {
	if len(r.Model.Guesses) == 0 {
		return
	}
	p.line("")
	p.line(fmt.Sprintf("Guesses (%d): measure or look up what matters to you", len(r.Model.Guesses)))
	for _, g := range r.Model.Guesses {
		p.wrapped("  ", "    ", g.What+": "+g.Value)
	}
}

func (p *printer) skipped(list []check.Skip) {
	byReason := map[string][]string{}
	var reasons []string
	for _, s := range list {
		if byReason[s.Reason] == nil {
			reasons = append(reasons, s.Reason)
		}
		byReason[s.Reason] = append(byReason[s.Reason], s.Rule)
	}
	for _, why := range reasons {
		p.line("")
		p.wrapped("", "  ", fmt.Sprintf("Rules that did not run (%s): %s", why, strings.Join(byReason[why], ", ")))
	}
}

func (p *printer) list(title string, lines []string) {
	p.line("")
	p.wrapped(title+": ", "  ", strings.Join(lines, "; "))
}

func (p *printer) verdict(r *harness.Result) {
	var n [diag.Danger + 1]int
	for _, f := range r.Findings {
		n[f.Severity]++
	}
	p.line("")
	p.line(fmt.Sprintf("%d danger, %s, %s, %s", n[diag.Danger],
		count(n[diag.Fault], "fault"), count(n[diag.Warning], "warning"), count(n[diag.Note], "note")))
	if hasBattery(r) {
		p.wrapped("", "", "Before power: battery off, air-bag circuits left alone, no sparks near fuel; local codes and a licensed hand come first.")
	}
}

func hasBattery(r *harness.Result) bool {
	for _, d := range r.Model.Devices {
		if d.Kind.Supplies == nil {
			continue
		}
		for _, s := range d.Kind.Supplies(d.Device) {
			if s.Battery {
				return true
			}
		}
	}
	return false
}
