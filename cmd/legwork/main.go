// Command legwork drafts, checks and documents vehicle wiring harnesses for
// 12 and 24 V d.c. from one plain-text draft.
package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"

	"github.com/alecthomas/kong"
)

// Exit codes, as the usage text tells them.
const (
	exitClean    = 0 // nothing at or above the asked severity
	exitFindings = 1
	exitUsage    = 2 // wrong words, or a draft that can't be read
	exitProgram  = 3 // a fault of legwork itself
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	os.Exit(run(ctx, os.Args[1:], streams{os.Stdin, os.Stdout, os.Stderr}))
}

// streams are the three standard streams.
type streams struct {
	in       io.Reader
	out, err io.Writer
}

// cli is the command line.
type cli struct {
	Check   checkCmd   `cmd:"" help:"Check a draft: findings with reasons and fixes, margins, guesses, and what was not looked at."`
	Why     whyCmd     `cmd:"" help:"Show the working of a wire, a fuse, a relay or a terminal."`
	List    listCmd    `cmd:"" help:"Print a bench paper: cut, pins or volts."`
	Draw    drawCmd    `cmd:"" help:"Draw a sheet: schematic."`
	Explain explainCmd `cmd:"" help:"Explain a rule, a device kind, a profile or a source; without a name, list them."`
	Tidy    tidyCmd    `cmd:"" help:"Print a draft in its canonical form."`
}

const about = `legwork drafts, checks and documents vehicle wiring harnesses (12/24 V d.c.) from one plain-text draft.

Exit: 0 nothing at or above the asked severity, 1 findings, 2 usage or unreadable draft, 3 program fault.

It does not replace local codes, the makers' sheets or a licensed hand: disconnect the battery before you work, keep sparks from fuel vapor, and leave air-bag circuits to those trained for them.`

// errUsage marks an error that the user can mend by typing something else.
type errUsage struct{ error }

// errFindings says that findings at or above the asked severity were printed.
var errFindings = errors.New("findings")

// run is the whole program but for the process around it.
func run(ctx context.Context, args []string, s streams) (code int) {
	defer func() {
		if p := recover(); p != nil {
			fmt.Fprintf(s.err, "legwork: program fault: %v\nPlease keep the draft: it shows a mistake in legwork, not in your harness.\n", p)
			code = exitProgram
		}
	}()
	var c cli
	left := -1
	parser, err := kong.New(&c,
		kong.Name("legwork"), kong.Description(about), kong.UsageOnError(),
		kong.Writers(s.out, s.err), kong.Exit(func(code int) { left = code }),
		kong.BindTo(ctx, (*context.Context)(nil)), kong.Bind(s),
	)
	if err != nil {
		fmt.Fprintln(s.err, "legwork:", err)
		return exitProgram
	}
	if len(args) == 0 {
		args = []string{"--help"}
	}
	k, err := parser.Parse(args)
	if left >= 0 {
		return left
	}
	if err != nil {
		fmt.Fprintf(s.err, "legwork: %v\nTry: legwork --help\n", err)
		return exitUsage
	}
	return report(s, k.Run())
}

// report prints an error and gives the exit code for it.
func report(s streams, err error) int {
	var usage errUsage
	switch {
	case err == nil:
		return exitClean
	case errors.Is(err, errFindings):
		return exitFindings
	case errors.As(err, &usage):
		fmt.Fprintln(s.err, "legwork:", err)
		return exitUsage
	}
	fmt.Fprintln(s.err, "legwork:", err)
	return exitProgram
}
