package main

import (
	"errors"

	"legwork/harness/diag"
	"legwork/harness/draft"
)

type tidyCmd struct {
	Draft string `arg:"" help:"The draft, or - for standard input."`
	Write bool   `short:"w" help:"Write the draft back instead of printing it."`
	Diff  bool   `help:"Print only the lines that would change; exit 1 if there are any."`
}

// Run prints the draft in its canonical form. Lines with a syntax fault are
// kept as they are, told of, and make the exit code 1.
func (c *tidyCmd) Run(s streams) error {
	if c.Write && c.Diff {
		return errUsage{errors.New("--write and --diff don't go together")}
	}
	d, err := load(s, c.Draft)
	if err != nil {
		return err
	}
	tidy := draft.Tidy(d.File)
	told := c.warn(s, d.File, d.Source)
	switch {
	case c.Diff:
		err = printDiff(s.out, d.Name, d.File.Src, tidy)
	case c.Write:
		err = c.writeBack(d.File.Src, tidy)
	default:
		_, err = s.out.Write(tidy)
	}
	if err != nil {
		return err
	}
	return told
}

// warn prints the syntax faults of the draft; it gives errFindings where there
// are any.
func (c *tidyCmd) warn(s streams, f *draft.File, source func(string) []byte) error {
	_, found := draft.Parse(f.Name, f.Src)
	err := writeFindings(s.err, found, source, true)
	if err == nil && found.Worst() >= diag.Fault {
		err = errFindings
	}
	return err
}

// writeBack puts the tidy form in the draft's place.
func (c *tidyCmd) writeBack(read, tidy []byte) error {
	if c.Draft == stdio {
		return errUsage{errors.New("standard input can't be written back; leave out --write")}
	}
	return writeOver(c.Draft, read, tidy)
}
