package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"legwork/harness"
	"legwork/harness/diag"
	"legwork/render/diagram"
	"legwork/render/scene"
)

type drawCmd struct {
	Draft    string `arg:"" help:"The draft, or - for standard input."`
	Kind     string `arg:"" enum:"schematic" help:"schematic."`
	Sheet    int    `default:"1" help:"Which sheet to write where there are several."`
	Out      string `short:"o" help:"A file for one sheet, or a folder (name ending in /) for all of them; standard output otherwise."`
	Customer string `help:"Customer for the title block."`
	By       string `help:"Who drew it, for the title block."`
	Number   string `help:"Document number for the title block."`
	Revision string `help:"Revision for the title block."`
	Date     string `help:"Date of issue for the title block; nothing is printed without it."`
	Profile  string `help:"Limits to judge by."`
}

// Run draws the sheets as SVG.
func (c *drawCmd) Run(ctx context.Context, s streams) error {
	r, err := sound(ctx, s, c.Draft, c.Profile)
	if err != nil {
		return err
	}
	sheets, notes := c.sheets(r)
	for _, n := range notes {
		fmt.Fprintln(s.err, n)
	}
	if len(sheets) == 0 {
		return errUsage{fmt.Errorf("%s has nothing to draw", c.Draft)}
	}
	if strings.HasSuffix(c.Out, "/") {
		return c.all(s, sheets)
	}
	if c.Sheet < 1 || c.Sheet > len(sheets) {
		return errUsage{fmt.Errorf("there is no sheet %d; there are %d", c.Sheet, len(sheets))}
	}
	if len(sheets) > 1 {
		fmt.Fprintf(s.err, "legwork: sheet %d of %d; -o FOLDER/ writes them all\n", c.Sheet, len(sheets))
	}
	return output(s, c.Out, c.Draft, func(w io.Writer) error {
		return scene.WriteSVG(w, sheets[c.Sheet-1].Scene)
	})
}

func (c *drawCmd) sheets(r *harness.Result) ([]diagram.Sheet, diag.List) {
	return diagram.Schematic(diagram.Input{
		Model: r.Model, Routes: r.Routes, Sizes: r.Sizes,
		Title: diagram.Title{
			Customer: c.Customer, CreatedBy: c.By, Number: c.Number, Revision: c.Revision, Date: c.Date,
		},
	})
}

// all writes every sheet into a folder: into a new one beside it first, so
// that either all sheets appear or none.
func (c *drawCmd) all(s streams, sheets []diagram.Sheet) error {
	dir := filepath.Clean(c.Out)
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return errUsage{err}
	}
	stage, err := os.MkdirTemp(dir, ".legwork-*")
	if err != nil {
		return errUsage{err}
	}
	defer os.RemoveAll(stage)
	for i, sh := range sheets {
		write := func(w io.Writer) error { return scene.WriteSVG(w, sh.Scene) }
		if err := replace(filepath.Join(stage, sheetName(i, len(sheets))), write); err != nil {
			return err
		}
	}
	for i := range sheets {
		name := sheetName(i, len(sheets))
		if err := os.Rename(filepath.Join(stage, name), filepath.Join(dir, name)); err != nil {
			return errUsage{err}
		}
		fmt.Fprintln(s.out, filepath.Join(dir, name))
	}
	return nil
}

func sheetName(i, n int) string {
	if n == 1 {
		return "schematic.svg"
	}
	return fmt.Sprintf("schematic-%d.svg", i+1)
}
