package main

import (
	"fmt"
	"slices"

	"legwork/harness"
	"legwork/harness/quantity"
)

// fewMargins is how many margins fit beside the rest on one screen.
const fewMargins = 5

// margins lists the narrowest cases, each of another sort of check: the
// tightest of them, in the order of the checks.
func (p *printer) margins(list []harness.Margin) {
	if len(list) == 0 {
		return
	}
	if len(list) > fewMargins {
		left := make([]float64, len(list))
		for i, m := range list {
			left[i] = m.Left()
		}
		slices.Sort(left)
		list = slices.DeleteFunc(slices.Clone(list), func(m harness.Margin) bool { return m.Left() > left[fewMargins-1] })
	}
	p.line("")
	p.line("Nearest to its limit")
	for _, m := range list {
		p.wrapped("  ", "    ", m.Check+": "+marginText(m))
	}
}

// marginText says one margin as a sentence: who, when, what it has, what is
// allowed or asked.
func marginText(m harness.Margin) string {
	who := m.Name
	if m.Step != "" {
		who += " in " + m.Step
	}
	got, limit := amount(m.Got, m.Unit), amount(m.Limit, m.Unit)
	switch m.Check {
	case harness.MarginDrop:
		return fmt.Sprintf("%s loses %s, %s allowed", who, got, limit)
	case harness.MarginAmpacity:
		return fmt.Sprintf("%s has to carry %s, %s allowed", who, limit, got)
	case harness.MarginProtection:
		return fmt.Sprintf("%s sits behind %s, %s allowed", who, limit, got)
	case harness.MarginFuse:
		return fmt.Sprintf("%s carries %s, %s allowed", who, got, limit)
	case harness.MarginPull, harness.MarginHold, harness.MarginCrank:
		return fmt.Sprintf("%s gets %s, %s needed", who, got, limit)
	}
	return fmt.Sprintf("%s %s, %s %s", who, got, m.Bound, limit)
}

func amount(v float64, unit string) string {
	if unit == "A" {
		return quantity.Text(v, quantity.Current)
	}
	return quantity.Text(v, quantity.Voltage)
}
