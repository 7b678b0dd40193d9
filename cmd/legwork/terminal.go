package main

import (
	"io"
	"os"
	"strconv"

	"golang.org/x/term"
)

// plainWidth is the width of lines where no terminal says otherwise.
const plainWidth = 100

// look says how to print on a stream.
type look struct {
	color bool
	width int
	known bool // somebody said how wide it is
}

// lookOf asks the terminal behind a stream, if there is one.
func lookOf(w io.Writer) look {
	f, ok := w.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) {
		return lookFor(os.Getenv, false, 0)
	}
	columns, _, err := term.GetSize(int(f.Fd()))
	if err != nil {
		columns = 0
	}
	return lookFor(os.Getenv, true, columns)
}

// lookFor decides from the environment and what is known of the terminal:
// color only there, and never when NO_COLOR is set or the terminal is dumb;
// the terminal's own width goes before COLUMNS.
func lookFor(env func(string) string, terminal bool, columns int) look {
	l := look{width: plainWidth}
	if n, err := strconv.Atoi(env("COLUMNS")); err == nil && n > 0 {
		l.width, l.known = n, true
	}
	if columns > 0 {
		l.width, l.known = columns, true
	}
	l.color = terminal && env("NO_COLOR") == "" && env("TERM") != "dumb"
	return l
}
