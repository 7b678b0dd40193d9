package main

import (
	"context"
	"fmt"
	"io"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/shop"
	"legwork/render/sheet"
)

type listCmd struct {
	Draft  string `arg:"" help:"The draft, or - for standard input."`
	Paper  string `arg:"" help:"cut, spools, pins or volts."`
	Format string `enum:"text,csv,json" default:"text" help:"How to print: text, csv or json."`
	Raw    bool   `help:"CSV: leave texts that a spreadsheet could take for a formula as they are."`
	Out    string `short:"o" help:"Write to this file, whole or not at all; standard output otherwise."`
	judging
}

// Run prints a paper.
func (c *listCmd) Run(ctx context.Context, s streams) error {
	paper, ok := shop.PaperOf(c.Paper)
	if !ok {
		return errUsage{noPaper(c.Paper)}
	}
	r, err := sound(ctx, s, c.Draft, c.judging)
	if err != nil {
		return err
	}
	t := paper.Make(shop.Source{Model: r.Model, Routes: r.Routes, Sizes: r.Sizes})
	return output(s, c.Out, c.Draft, func(w io.Writer) error {
		switch c.Format {
		case "csv":
			return sheet.WriteCSV(w, t, c.Raw)
		case "json":
			return sheet.WriteJSON(w, t)
		}
		return sheet.WriteText(w, t)
	})
}

func noPaper(name string) error {
	var names []string
	for _, p := range shop.Papers() {
		names = append(names, p.Name)
	}
	if near := diag.Nearest(name, names); near != "" {
		return fmt.Errorf("there is no paper %q; did you mean %s?", name, near)
	}
	return fmt.Errorf("there is no paper %q; there are %s", name, strings.Join(names, ", "))
}
