package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"path/filepath"

	"legwork/harness"
	"legwork/harness/deck"
	"legwork/harness/diag"
	"legwork/harness/shop"
	"legwork/harness/solve"
	"legwork/render/sheet"
)

type exportCmd struct {
	Draft string `arg:"" help:"The draft, or - for standard input."`
	Kind  string `arg:"" enum:"spice" help:"spice: netlists for a circuit simulator, one for each step of use."`
	Step  string `help:"The step to write; all of them need a folder."`
	Case  string `enum:"usual,hot,cold" default:"usual" help:"usual: hot, with what contacts usually lose; hot: hot, sure figures alone; cold: cold start."`
	Live  bool   `help:"Let the simulator move the relays, from where they stood in the step before; else they stand as legwork found them."`
	Names bool   `help:"Print which generated name is what instead; a folder gets this as names.csv."`
	Out   string `short:"o" help:"A file for one step, or a folder (name ending in /) for all of them and the names; standard output otherwise."`
	judging
}

// Run writes the netlists.
func (c *exportCmd) Run(ctx context.Context, s streams) error {
	r, err := sound(ctx, s, c.Draft, c.judging)
	if err != nil {
		return err
	}
	d, err := c.decks(ctx, r)
	if err != nil {
		return err
	}
	switch {
	case c.Names:
		return output(s, c.Out, c.Draft, nameTable(d))
	case isFolder(c.Out):
		if c.Step != "" {
			return errUsage{errors.New("--step and a folder don't go together: a folder gets all steps")}
		}
		return c.all(s, r, d)
	case c.Step == "":
		return errUsage{errors.New("name a step with --step, or a folder for all of them with -o FOLDER/")}
	}
	step, err := stepNamed(r, c.Step)
	if err != nil {
		return err
	}
	return output(s, c.Out, c.Draft, c.deck(d, step).Write)
}

// decks plays the case that is asked for with the wires as sized, so that what
// is written is at rest with just these.
func (c *exportCmd) decks(ctx context.Context, r *harness.Result) (*deck.Decks, error) {
	played := r.Sizes.Usual
	switch c.Case {
	case "hot":
		played = r.Sizes.Hot
	case "cold":
		played = r.Sizes.Cold
	}
	wires := make([]solve.Conductor, len(r.Sizes.Wires))
	for i := range wires {
		wires[i] = r.Sizes.Wires[i].Conductor
	}
	h, err := solve.Run(ctx, r.Model, wires, played.Case)
	if err != nil {
		return nil, err
	}
	return deck.New(h, wires), nil
}

func (c *exportCmd) deck(d *deck.Decks, step int) deck.Deck {
	if c.Live {
		return d.Live(step)
	}
	return d.Frozen(step)
}

// all writes every step and the names into a folder and prints their names.
func (c *exportCmd) all(s streams, r *harness.Result, d *deck.Decks) error {
	pages := []page{{"names.csv", nameTable(d)}}
	for i := range r.Model.Steps {
		pages = append(pages, page{fmt.Sprintf("step-%02d.cir", i), c.deck(d, i).Write})
	}
	if err := saveAll(c.Out, c.Draft, pages); err != nil {
		return err
	}
	for i, p := range pages {
		line := filepath.Join(c.Out, p.name)
		if i > 0 {
			line += "  " + r.Model.Steps[i-1].Name
		}
		if _, err := fmt.Fprintln(s.out, line); err != nil {
			return err
		}
	}
	return nil
}

// stepNamed gives the number of a step.
func stepNamed(r *harness.Result, name string) (int, error) {
	var all []string
	for i := range r.Model.Steps {
		if r.Model.Steps[i].Name == name {
			return i, nil
		}
		all = append(all, r.Model.Steps[i].Name)
	}
	text := fmt.Sprintf("there is no step %q", name)
	if near := diag.Nearest(name, all); near != "" {
		text += "; did you mean " + near + "?"
	}
	return 0, errUsage{errors.New(text)}
}

// nameTable writes the table of generated names as CSV.
func nameTable(d *deck.Decks) func(io.Writer) error {
	t := shop.Table{Name: "names", Title: "Names in the netlists", Columns: []shop.Column{{Key: "name", Name: "Name"}, {Key: "stands_for", Name: "Stands for"}}}
	for _, n := range d.Names() {
		t.Rows = append(t.Rows, []shop.Cell{shop.Word(n.In), shop.Word(n.Of)})
	}
	return func(w io.Writer) error { return sheet.WriteCSV(w, t, false) }
}
