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
	Format  string `enum:"text,json" default:"text" help:"How to print: text or json."`
	Profile string `help:"Limits to judge by (see explain profiles); the draft's own, or road."`
	Guesses bool   `help:"Print every guess; without it, as many lines as fit on a screen."`
	FailAt  string `enum:"note,warning,fault,danger" default:"fault" help:"Least severity that makes the exit code 1: note, warning, fault or danger."`
}

// Run checks the draft and prints the outcome.
func (c *checkCmd) Run(ctx context.Context, s streams) error {
	r, err := checked(ctx, s, c.Draft, c.Profile)
	if err != nil {
		return err
	}
	least, _ := diag.ParseSeverity(c.FailAt)
	pass := r.Findings.Worst() < least
	if c.Format == "json" {
		err = writeJSON(s.out, r.Report())
	} else {
		err = writeReport(s, r, pass, c.Guesses)
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
func checked(ctx context.Context, s streams, path, profile string) (*harness.Result, error) {
	d, err := load(s, path)
	if err != nil {
		return nil, err
	}
	takeRoom(d)
	r, err := d.Check(ctx, harness.Options{Profile: profile})
	if errors.Is(err, harness.ErrProfile) {
		return nil, errUsage{err}
	}
	return r, err
}

// sound is checked for the papers and drawings: a draft with mistakes has
// none, and its findings are printed instead.
func sound(ctx context.Context, s streams, path, profile string) (*harness.Result, error) {
	r, err := checked(ctx, s, path, profile)
	if err != nil || r.Sizes != nil {
		return r, err
	}
	look := lookOf(s.err)
	err = diag.WriteText(s.err, r.Findings, diag.TextOptions{Source: r.Draft.Source, Color: look.color, Width: look.width})
	return nil, errors.Join(err, errFindings)
}
