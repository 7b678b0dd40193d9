package main

import (
	"bytes"
	"fmt"
	"io"
	"os"

	"legwork/harness/diag"
	"legwork/harness/draft"
)

type tidyCmd struct {
	Draft string `arg:"" help:"The draft, or - for standard input."`
	Write bool   `short:"w" help:"Write the draft back instead of printing it."`
	Diff  bool   `help:"Print nothing; exit 1 if the draft is not tidy."`
}

// Run prints the draft in its canonical form. Lines with a syntax fault are
// kept as they are, and told of.
func (c *tidyCmd) Run(s streams) error {
	d, err := load(s, c.Draft)
	if err != nil {
		return err
	}
	tidy := draft.Tidy(d.File)
	if c.Diff {
		if !bytes.Equal(tidy, d.File.Src) {
			return errFindings
		}
		return nil
	}
	if err := c.warn(s, d.File, d.Source); err != nil {
		return err
	}
	if !c.Write {
		_, err := s.out.Write(tidy)
		return err
	}
	return c.writeBack(d.File.Src, tidy)
}

func (c *tidyCmd) warn(s streams, f *draft.File, source func(string) []byte) error {
	_, found := draft.Parse(f.Name, f.Src)
	look := lookOf(s.err)
	return diag.WriteText(s.err, found, diag.TextOptions{Source: source, Color: look.color, Width: look.width})
}

// writeBack puts the tidy form in the draft's place, unless the file is not
// what was read any more.
func (c *tidyCmd) writeBack(read, tidy []byte) error {
	if c.Draft == stdinName {
		return errUsage{fmt.Errorf("standard input can't be written back; leave out --write")}
	}
	if bytes.Equal(read, tidy) {
		return nil
	}
	info, err := os.Lstat(c.Draft)
	if err != nil || !info.Mode().IsRegular() {
		return errUsage{fmt.Errorf("%s is not a regular file", c.Draft)}
	}
	now, err := os.ReadFile(c.Draft)
	if err != nil || !bytes.Equal(now, read) {
		return errUsage{fmt.Errorf("%s changed while it was read; nothing was written", c.Draft)}
	}
	return replace(c.Draft, func(w io.Writer) error {
		_, err := w.Write(tidy)
		return err
	})
}
