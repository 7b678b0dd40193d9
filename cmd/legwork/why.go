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
	Draft   string `arg:"" help:"The draft, or - for standard input."`
	Name    string `arg:"" help:"A wire number, a device or a terminal: 203, F3, K1, K1.86."`
	Profile string `help:"Limits to judge by."`
}

// Run prints the working behind a name.
func (c *whyCmd) Run(ctx context.Context, s streams) error {
	r, err := sound(ctx, s, c.Draft, c.Profile)
	if err != nil {
		return err
	}
	list, err := r.Why(c.Name)
	if errors.Is(err, harness.ErrName) {
		return errUsage{err}
	}
	if err != nil {
		return err
	}
	p := &printer{w: s.out, width: lookOf(s.out).width}
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
	sources := map[string]bool{}
	var keys []string
	for _, g := range w.Groups {
		p.line("")
		p.wrapped("  ", "    ", g.Title)
		for _, st := range g.Steps {
			p.wrapped("    ", "      ", stepText(st))
			if st.Source != "" && !sources[st.Source] {
				sources[st.Source] = true
				keys = append(keys, st.Source)
			}
		}
	}
	if len(keys) == 0 {
		return
	}
	p.line("")
	p.line("  Sources")
	for _, key := range keys {
		src, _ := gauge.SourceOf(key)
		p.wrapped("    ", "      ", fmt.Sprintf("%s: %s (%s, %s)", key, src.Title, src.Where, src.Confidence))
	}
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
		b.WriteString(" " + quantity.Number(st.Value))
		if st.Unit != "" {
			b.WriteString(" " + st.Unit)
		}
	}
	if st.Source != "" {
		b.WriteString("  [" + st.Source + "]")
	}
	return b.String()
}
