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
}

// lookOf asks the terminal behind a stream; color only there, and never when
// NO_COLOR is set or the terminal is dumb.
func lookOf(w io.Writer) look {
	l := look{width: plainWidth}
	if n, err := strconv.Atoi(os.Getenv("COLUMNS")); err == nil && n > 0 {
		l.width = n
	}
	f, ok := w.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) {
		return l
	}
	if n, _, err := term.GetSize(int(f.Fd())); err == nil && n > 0 {
		l.width = n
	}
	l.color = os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb"
	return l
}
