// Command legwork drafts, checks and documents vehicle wiring harnesses for
// 12 and 24 V d.c. from one plain-text draft.
package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"os/signal"

	"github.com/alecthomas/kong"
)

func main() {
	giveRoom()
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	code := run(ctx, os.Args[1:], streams{os.Stdin, os.Stdout, os.Stderr})
	stop()
	os.Exit(code)
}

// streams are the three standard streams.
type streams struct {
	in       io.Reader
	out, err io.Writer
}

// cli is the command line.
type cli struct {
	Check   checkCmd   `cmd:"" help:"Check a draft: findings with reasons and fixes, margins, guesses, and what was not looked at."`
	Size    sizeCmd    `cmd:"" help:"Size one wire and its fuse without a draft."`
	Why     whyCmd     `cmd:"" help:"Show the working of a wire, a fuse, a relay, a terminal or a circuit."`
	List    listCmd    `cmd:"" help:"Print a bench paper: cut, spools, pins or volts."`
	Draw    drawCmd    `cmd:"" help:"Draw sheets: schematic or layout."`
	Export  exportCmd  `cmd:"" help:"Write the steps as netlists for a circuit simulator."`
	Explain explainCmd `cmd:"" help:"Explain a rule, a device kind, a profile or a source; without a name, list them."`
	Tidy    tidyCmd    `cmd:"" help:"Print a draft in its canonical form."`
}

const about = `legwork drafts, checks and documents vehicle wiring harnesses (12/24 V d.c.) from one plain-text draft.

Exit: 0 nothing at or above the asked severity, 1 findings, 2 usage or unreadable draft, 3 program fault.

It does not replace local codes, the makers' sheets or a licensed hand: disconnect the battery before you work, keep sparks from fuel vapor, and leave air-bag circuits to those trained for them.`

// run is the whole program but for the process around it.
func run(ctx context.Context, args []string, s streams) (code int) {
	defer func() {
		if p := recover(); p != nil {
			code = fault(s, p)
		}
	}()
	var c cli
	left := -1
	parser, err := kong.New(&c,
		kong.Name("legwork"), kong.Description(about),
		kong.Writers(s.out, s.err), kong.Exit(func(code int) { left = code }),
		kong.BindTo(ctx, (*context.Context)(nil)), kong.Bind(s),
	)
	if err != nil {
		return fault(s, err)
	}
	if len(args) == 0 {
		args = []string{"--help"}
	}
	k, err := parser.Parse(joined(args))
	if left >= 0 {
		return left
	}
	if err != nil {
		fmt.Fprintf(s.err, "legwork: %v\nTry: legwork --help\n", err)
		return exitUsage
	}
	return report(s, k.Run())
}
