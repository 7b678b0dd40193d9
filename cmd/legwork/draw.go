package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"strings"
	"unicode"

	"legwork/harness"
	"legwork/harness/diag"
	"legwork/render/diagram"
	"legwork/render/layout"
	"legwork/render/scene"
)

type drawCmd struct {
	Draft    string `arg:"" help:"The draft, or - for standard input."`
	Kind     string `arg:"" enum:"schematic,layout" help:"schematic: current paths; layout: places and legs, drawn to length."`
	Sheet    int    `default:"1" help:"Which sheet to write where there are several."`
	Out      string `short:"o" help:"A file for one sheet, or a folder (name ending in /) for all of them; standard output otherwise."`
	Paper    string `enum:"auto,a3,a4,tabloid" default:"auto" help:"What to draw on: a3, a4, tabloid (11 x 17 in), or auto: a4 where one sheet of it is enough, else a3."`
	Step     string `help:"Draw the schematic as the state in this step of use instead: every wire by what it carries, contacts and outputs as they stand then."`
	Customer string `help:"Customer for the title block."`
	By       string `help:"Who drew it, for the title block."`
	Number   string `help:"Document number for the title block."`
	Revision string `help:"Revision for the title block."`
	Date     string `help:"Date of issue for the title block; nothing is printed without it."`
	judging
}

// Run draws the sheets as SVG.
func (c *drawCmd) Run(ctx context.Context, s streams) error {
	r, err := sound(ctx, s, c.Draft, c.judging)
	if err != nil {
		return err
	}
	if err := c.playable(r); err != nil {
		return err
	}
	sheets, notes := c.sheets(r)
	if len(sheets) == 0 && c.Kind == "layout" {
		return errUsage{fmt.Errorf("%s says no legs, so it has no layout to draw; see place and leg in docs/draft.md", c.Draft)}
	}
	for _, n := range notes {
		fmt.Fprintln(s.err, n)
	}
	if len(sheets) == 0 {
		return errUsage{fmt.Errorf("%s has nothing to draw", c.Draft)}
	}
	if isFolder(c.Out) {
		return c.all(s, sheets)
	}
	if c.Sheet < 1 || c.Sheet > len(sheets) {
		return errUsage{fmt.Errorf("there is no sheet %d of %s", c.Sheet, count(len(sheets), "sheet"))}
	}
	if len(sheets) > 1 {
		fmt.Fprintf(s.err, "legwork: sheet %d of %d; -o FOLDER/ writes them all\n", c.Sheet, len(sheets))
	}
	return output(s, c.Out, c.Draft, func(w io.Writer) error {
		return scene.WriteSVG(w, sheets[c.Sheet-1].Scene)
	})
}

func (c *drawCmd) sheets(r *harness.Result) ([]diagram.Sheet, diag.List) {
	in := diagram.Input{
		Model: r.Model, Routes: r.Routes, Sizes: r.Sizes, Paper: c.Paper, Played: r.Sizes.Usual, Step: c.Step,
		Title: diagram.Title{
			Customer: c.Customer, CreatedBy: c.By, Number: c.Number, Revision: c.Revision, Date: c.Date,
		},
	}
	if c.Kind == "layout" {
		return layout.Draw(in)
	}
	return diagram.Schematic(in)
}

// playable refuses a step that is not there, or that has no state to draw.
func (c *drawCmd) playable(r *harness.Result) error {
	switch {
	case c.Step == "":
		return nil
	case c.Kind == "layout":
		return errUsage{errors.New("--step is for the schematic: a layout has no state")}
	}
	i, err := stepNamed(r, c.Step)
	if err != nil {
		return err
	}
	if why := r.Sizes.Usual.States[i].Skipped; why != "" {
		return errUsage{fmt.Errorf("step %s has no state to draw: %s", c.Step, why)}
	}
	return nil
}

// all writes every sheet into a folder and names the files.
func (c *drawCmd) all(s streams, sheets []diagram.Sheet) error {
	var pages []page
	for i, sh := range sheets {
		pages = append(pages, page{sheetName(c.Kind, c.Step, i, len(sheets)), func(w io.Writer) error { return scene.WriteSVG(w, sh.Scene) }})
	}
	if err := saveAll(c.Out, c.Draft, pages); err != nil {
		return err
	}
	for _, p := range pages {
		if _, err := fmt.Fprintln(s.out, filepath.Join(c.Out, p.name)); err != nil {
			return err
		}
	}
	return nil
}

// sheetName names the file of a sheet. A draft may call its steps what it
// likes: only letters and figures get into the name.
func sheetName(name, step string, i, n int) string {
	if step != "" {
		name += "-" + strings.Map(func(r rune) rune {
			if unicode.IsLetter(r) || unicode.IsDigit(r) {
				return r
			}
			return '_'
		}, step)
	}
	if n > 1 {
		name += fmt.Sprintf("-%d", i+1)
	}
	return name + ".svg"
}
