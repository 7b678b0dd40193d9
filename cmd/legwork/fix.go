package main

import (
	"bufio"
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"golang.org/x/term"

	"legwork/harness"
	"legwork/harness/diag"
)

// mending says whether a check carries out the fixes that it offers.
type mending struct {
	Fix   bool `help:"Show the lines that the offered fixes change, checked again with them; exit 1 if there are any."`
	Write bool `short:"w" help:"With --fix: write them into the draft; asks first on a terminal."`
}

func (m mending) usable(path string) error {
	switch {
	case m.Write && !m.Fix:
		return errUsage{errors.New("--write goes with --fix")}
	case m.Write && path == stdio:
		return errUsage{errors.New("standard input can't be written back; leave out --write")}
	}
	return nil
}

// run shows or writes the fixes of a checked draft.
func (m mending) run(ctx context.Context, s streams, path string, r *harness.Result, o harness.Options) error {
	mended, err := r.Mend(ctx, o)
	if err != nil {
		return err
	}
	src := r.Draft.File.Src
	changes := printDiff(s.out, r.Draft.Name, src, mended.Text)
	if changes != nil && !errors.Is(changes, errFindings) {
		return changes
	}
	p := newPrinter(s.out)
	if len(mended.Done) == 0 {
		p.line("Nothing to mend: no finding offers a fix that makes things no worse elsewhere.")
	} else {
		p.line("")
	}
	p.mended(mended)
	if p.err != nil || !m.Write || bytes.Equal(src, mended.Text) {
		return errors.Join(p.err, changes)
	}
	if ok, err := agreed(s, r.Draft.Name); err != nil || !ok {
		return err
	}
	return writeOver(path, src, mended.Text)
}

// mended says what each fix does, what is left out, and what then remains.
func (p *printer) mended(m *harness.Mended) {
	for _, f := range m.Done {
		p.wrapped("", "  ", fmt.Sprintf("%s [%s]", f.Fix.Msg, f.Rule))
	}
	for _, f := range m.Left {
		p.wrapped("", "  ", fmt.Sprintf("left: %s [%s]: it lies in another file, makes another finding, or waits for a fault to be mended", f.Fix.Msg, f.Rule))
	}
	var n [diag.Danger + 1]int
	for _, f := range m.After.Findings {
		n[f.Severity]++
	}
	p.wrapped("", "  ", fmt.Sprintf("Then: %s, %s, %s, %s", count(n[diag.Danger], "danger"),
		count(n[diag.Fault], "fault"), count(n[diag.Warning], "warning"), count(n[diag.Note], "note")))
}

// agreed asks before a draft is changed, where somebody sits at a terminal.
func agreed(s streams, name string) (bool, error) {
	in, ok := s.in.(*os.File)
	if !ok || !term.IsTerminal(int(in.Fd())) {
		return true, nil
	}
	fmt.Fprintf(s.out, "Write this into %s? [y/N] ", name)
	answer, err := bufio.NewReader(in).ReadString('\n')
	if err != nil && !errors.Is(err, io.EOF) {
		return false, err
	}
	word := strings.ToLower(strings.TrimSpace(answer))
	return word == "y" || word == "yes", nil
}

// writeOver puts a text in a draft's place, unless the file is not what was
// read any more.
func writeOver(path string, read, text []byte) error {
	if bytes.Equal(read, text) {
		return nil
	}
	if err := mayWrite(path, ""); err != nil {
		return err
	}
	now, err := os.ReadFile(path)
	if err != nil || !bytes.Equal(now, read) {
		return errUsage{fmt.Errorf("%s changed while it was read; nothing was written", path)}
	}
	return replace(path, func(w io.Writer) error {
		_, err := w.Write(text)
		return err
	})
}
