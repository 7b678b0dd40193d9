package main

import (
	"context"
	"encoding/json"
	"errors"
	"io"

	"legwork/harness"
	"legwork/harness/diag"
)

type checkCmd struct {
	Draft   string `arg:"" help:"The draft, or - for standard input."`
	Format  string `enum:"text,json,sarif" default:"text" help:"How to print: text, json (its schema is in docs) or sarif 2.1.0."`
	All     bool   `help:"Print every finding; otherwise at most 20 of one rule and 100 in all, the worst of them. Json has all."`
	Guesses bool   `help:"Print every guess, and how far each can move before a wire, a fuse or a verdict changes."`
	FailAt  string `enum:"note,warning,fault,danger" default:"fault" help:"Least severity that makes the exit code 1: note, warning, fault or danger."`
	narrowing
	mending
	judging
}

// judging is what every command that checks a draft may be told.
type judging struct {
	Profile string   `help:"Limits to judge by (see explain profiles); the draft's own, or road."`
	With    []string `sep:"none" placeholder:"OPTION" help:"Fit this option of the draft; may be given again."`
	Battery string   `placeholder:"CHARGE" help:"Play the cold start with the batteries at this charge, as 50%: with its volts, and the resistance of one that just passes a load test."`
	Temp    string   `placeholder:"TEMPERATURE" help:"Play the cold start at this temperature, as -30C; else -18C."`
}

// Run checks the draft and prints the outcome.
func (c *checkCmd) Run(ctx context.Context, s streams) error {
	if err := errors.Join(c.narrowing.rules(), c.mending.usable(c.Draft)); err != nil {
		return err
	}
	r, err := checked(ctx, s, c.Draft, c.judging)
	if err != nil {
		return err
	}
	c.narrowing.apply(r)
	if c.Fix {
		start, _ := c.start()
		return c.mending.run(ctx, s, c.Draft, r, harness.Options{Profile: c.Profile, Start: start})
	}
	least, _ := diag.ParseSeverity(c.FailAt)
	pass := r.Findings.Worst() < least
	var moved []harness.Leeway
	if c.Guesses {
		if moved, err = r.Leeways(ctx); err != nil {
			return err
		}
	}
	switch c.Format {
	case "json":
		report := r.Report()
		report.Leeways = harness.LeewayLines(moved)
		err = writeJSON(s.out, report)
	case "sarif":
		err = writeJSON(s.out, sarifOf(r))
	default:
		err = writeReport(s, r, shown{pass: pass, all: c.All, guesses: c.Guesses, moved: moved, by: c.narrowing})
	}
	if err == nil && !pass {
		err = errFindings
	}
	return err
}

func writeJSON(w io.Writer, v any) error {
	enc := json.NewEncoder(w)
	enc.SetIndent("", "  ")
	enc.SetEscapeHTML(false)
	return enc.Encode(v)
}

// checked loads and checks a draft.
func checked(ctx context.Context, s streams, path string, by judging) (*harness.Result, error) {
	d, err := load(s, path)
	if err == nil && len(by.With) > 0 {
		err = d.Fit(by.With)
	}
	if errors.Is(err, harness.ErrOption) {
		return nil, errUsage{err}
	}
	if err != nil {
		return nil, err
	}
	start, err := by.start()
	if err != nil {
		return nil, errUsage{err}
	}
	takeRoom(d)
	r, err := d.Check(ctx, harness.Options{Profile: by.Profile, Start: start})
	if errors.Is(err, harness.ErrProfile) {
		return nil, errUsage{err}
	}
	return r, err
}

// sound is checked for the papers and drawings: a draft with mistakes has
// none, and its findings are printed instead.
func sound(ctx context.Context, s streams, path string, by judging) (*harness.Result, error) {
	r, err := checked(ctx, s, path, by)
	if err != nil || r.Sizes != nil {
		return r, err
	}
	return nil, errors.Join(writeFindings(s.err, r.Findings, r.Draft.Source, false), errFindings)
}
