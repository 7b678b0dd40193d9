package main

import (
	"context"
	"errors"
	"fmt"
	"strings"

	"legwork/gauge"
	"legwork/harness"
	"legwork/harness/quantity"
)

type whyCmd struct {
	Draft string   `arg:"" help:"The draft, or - for standard input."`
	Name  []string `arg:"" help:"A wire, a device, a terminal or a circuit: 203, F3, K1.86, pump. Where two have one name: wire 203, circuit 203."`
	judging
}

// Run prints the working behind a name.
func (c *whyCmd) Run(ctx context.Context, s streams) error {
	r, err := sound(ctx, s, c.Draft, c.judging)
	if err != nil {
		return err
	}
	list, err := r.Why(strings.Join(c.Name, " "))
	if errors.Is(err, harness.ErrName) {
		return errUsage{err}
	}
	if err != nil {
		return err
	}
	p := newPrinter(s.out)
	for i, w := range list {
		if i > 0 {
			p.line("")
		}
		p.working(w)
	}
	return p.err
}

func (p *printer) working(w harness.Working) {
	p.wrapped("", "  ", w.Title)
	for _, g := range w.Groups {
		p.line("")
		p.wrapped("  ", "    ", g.Title)
		for _, st := range g.Steps {
			p.wrapped("    ", "      ", stepText(st))
		}
		if g.Table != nil {
			p.table("    ", *g.Table)
		}
	}
	p.sources(w)
}

// sources prints what stands behind the keys in square brackets, in the order
// in which they are met.
func (p *printer) sources(w harness.Working) {
	seen := map[string]bool{"": true}
	for _, g := range w.Groups {
		for _, st := range g.Steps {
			if seen[st.Source] {
				continue
			}
			if len(seen) == 1 {
				p.line("")
				p.line("  Sources")
			}
			seen[st.Source] = true
			p.wrapped("    ", "      ", sourceText(st.Source))
		}
	}
}

func sourceText(key string) string {
	src, ok := gauge.SourceOf(key)
	if !ok {
		return key
	}
	text := fmt.Sprintf("[%s] %s (%s, %s)", key, src.Title, src.Where, src.Confidence)
	if !src.Confidence.MayDecide() {
		text += ": decides nothing alone"
	}
	return text
}

// stepText prints one step of working: text, equation, value, source key.
func stepText(st gauge.Step) string {
	var b strings.Builder
	b.WriteString(st.Text)
	if st.Equation != "" {
		b.WriteString(": " + st.Equation)
	}
	if st.Unit != "" || st.Value != 0 {
		if st.Equation != "" {
			b.WriteString(" =")
		} else if st.Text != "" {
			b.WriteString(":")
		}
		b.WriteString(" " + valueText(st.Value, st.Unit))
	}
	if st.Source != "" {
		b.WriteString("  [" + st.Source + "]")
	}
	return b.String()
}

// valueText prints a value of working to four digits; volts, amperes and ohms
// with a prefix where they are small.
func valueText(v float64, unit string) string {
	switch small := v < 1 && v > -1 && v != 0; {
	case unit == "":
		return quantity.Number(v)
	case small && (unit == "V" || unit == "A" || unit == "ohm" || unit == "ohm/m"):
		return quantity.Number(1000*v) + " m" + unit
	}
	return quantity.Number(v) + " " + unit
}
