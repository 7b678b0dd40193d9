package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"syscall"
)

// Exit codes, as the usage text tells them.
const (
	exitClean       = 0   // nothing at or above the asked severity
	exitFindings    = 1   // findings
	exitUsage       = 2   // wrong words, or a file that can't be read or written
	exitProgram     = 3   // a fault of legwork itself
	exitInterrupted = 130 // stopped from the keyboard, as shells count it
	exitPipe        = 141 // the reader of the output went away, as shells count it
)

// errUsage marks an error that the user can mend by typing something else.
type errUsage struct{ error }

// Unwrap gives the error inside.
func (e errUsage) Unwrap() error { return e.error }

// errFindings says that findings at or above the asked severity were printed.
var errFindings = errors.New("findings")

// report prints an error and gives the exit code for it. A reader that went
// away, as the head of a pipe does, is no matter worth a word.
func report(s streams, err error) int {
	var (
		usage errUsage
		path  *fs.PathError
		link  *os.LinkError
	)
	switch {
	case err == nil:
		return exitClean
	case errors.Is(err, syscall.EPIPE), errors.Is(err, io.ErrClosedPipe):
		return exitPipe
	case errors.Is(err, errFindings):
		return exitFindings
	case errors.Is(err, context.Canceled):
		fmt.Fprintln(s.err, "legwork: stopped")
		return exitInterrupted
	case errors.As(err, &usage), errors.As(err, &path), errors.As(err, &link):
		fmt.Fprintln(s.err, "legwork:", err)
		return exitUsage
	}
	return fault(s, err)
}

// fault tells of a fault of the program itself. A stack would help nobody at a
// bench: the draft is what shows it again.
func fault(s streams, what any) int {
	fmt.Fprintf(s.err, "legwork: program fault: %v\nPlease keep the draft: it shows a mistake in legwork, not in your harness.\n", what)
	return exitProgram
}
