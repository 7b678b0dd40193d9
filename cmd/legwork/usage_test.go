package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

// What can't be done gives 2, and a message that says what would have been
// right. Nothing is printed on standard output.
func TestUsage(t *testing.T) {
	workshop(t)
	put(t, "faulty.draft", faulty)
	require.NoError(t, os.Mkdir("folder", 0o755))
	for _, row := range []struct {
		args string
		want string
	}{
		{"chek small.draft", `did you mean "check"?`},
		{"check", `expected "<draft>"`},
		{"check --formt json small.draft", `did you mean "--format"?`},
		{"check --format yaml small.draft", `must be one of "text","json","sarif" but got "yaml"`},
		{"check --fail-at bad small.draft", `must be one of`},
		{"check --profile raod small.draft", `unknown profile "raod"; there are road, boat`},
		{"check small.draft extra", "unexpected argument extra"},
		{"check nosuch.draft", "can't read nosuch.draft: no such file"},
		{"check nofolder/nosuch.draft", "can't read nofolder/nosuch.draft: no such file"},
		{"check folder", "can't read folder: a folder, not a draft"},
		{"check .", "can't read .: a folder, not a draft"},
		{"check small.draft/x", "can't read small.draft/x: not a directory"},
		{"list small.draft cuts", `there is no paper "cuts"; did you mean cut?`},
		{"list small.draft bill", `there is no paper "bill"; there are cut, spools, pins, volts`},
		{"list small.draft cut --format xml", `must be one of`},
		{"draw small.draft harness", `must be one of "schematic","layout"`},
		{"draw least.draft layout", "least.draft says no legs, so it has no layout to draw"},
		{"draw small.draft layout --step crank", "a layout has no state"},
		{"draw small.draft layout --sheet 2", "there is no sheet 2 of 1 sheet"},
		{"draw small.draft schematic --sheet 99", "there is no sheet 99 of"},
		{"export small.draft", `expected "<kind>"`},
		{"export small.draft netlist", `must be one of "spice"`},
		{"export small.draft spice", "name a step with --step, or a folder"},
		{"export small.draft spice --step crnk", `there is no step "crnk"; did you mean crank?`},
		{"export small.draft spice --step crank -o deck/", "don't go together"},
		{"export small.draft spice --step crank --case warm", "must be one of"},
		{"export small.draft spice --step crank -o small.draft", "is the draft itself"},
		{"why small.draft 20", `no such name in the draft: "20"`},
		{"why small.draft X2.raer.1", "did you mean X2.rear.1?"},
		{"why small.draft wire 2003", "did you mean 203?"},
		{"why small.draft circuit pum", "did you mean pump?"},
		{"explain fuse-above-wir", "did you mean fuse-above-wire?"},
		{"explain roda", "did you mean road?"},
		{"explain something-quite-else", "legwork explain lists what there is"},
		{"tidy -w -", "can't be written back"},
		{"tidy -w --diff small.draft", "don't go together"},
	} {
		got := legwork(t, strings.Fields(row.args)...)
		require.Equal(t, exitUsage, got.code, "%s: %s", row.args, got.err)
		require.Contains(t, got.err, row.want, row.args)
		require.True(t, strings.HasPrefix(got.err, "legwork: "), got.err)
		require.Empty(t, got.out, row.args)
	}
}

func TestHelp(t *testing.T) {
	for _, args := range [][]string{nil, {"--help"}, {"-h"}} {
		got := legwork(t, args...)
		require.Equal(t, exitClean, got.code)
		require.Contains(t, got.out, "Usage: legwork <command>")
		require.Contains(t, got.out, "Exit: 0 nothing at or above the asked severity")
		require.Empty(t, got.err)
	}
	for _, cmd := range []string{"check", "why", "list", "draw", "export", "explain", "tidy"} {
		got := legwork(t, cmd, "--help")
		require.Equal(t, exitClean, got.code)
		require.Contains(t, got.out, "Usage: legwork "+cmd)
	}
}

func TestUnreadableDraft(t *testing.T) {
	workshop(t)
	require.NoError(t, os.Truncate("small.draft", 17<<20)) // sparse: all but the start is zero
	got := legwork(t, "check", "small.draft")
	require.Equal(t, exitUsage, got.code)
	require.Contains(t, got.err, "larger than 16 MB")
	got = legworkIn(t, strings.Repeat(" ", 17<<20), "check", "-")
	require.Equal(t, exitUsage, got.code)
	require.Contains(t, got.err, "reading standard input: larger than 16 MB")
}

// A draft that the user names through a link is read.
func TestLinkedDraft(t *testing.T) {
	dir := workshop(t)
	elsewhere := t.TempDir()
	require.NoError(t, os.Symlink(dir+"/small.draft", elsewhere+"/link.draft"))
	got := legwork(t, "check", elsewhere+"/link.draft")
	require.Equal(t, exitClean, got.code, got.err)
	require.Contains(t, got.out, elsewhere+"/link.draft:", "findings name the path as typed")
}

func TestReport(t *testing.T) {
	wrapped := func(err error) error { return fmt.Errorf("while at it: %w", err) }
	for _, row := range []struct {
		err  error
		code int
		says string
	}{
		{nil, exitClean, ""},
		{errFindings, exitFindings, ""},
		{wrapped(errFindings), exitFindings, ""},
		{errUsage{errors.New("no such thing")}, exitUsage, "legwork: no such thing\n"},
		{wrapped(errUsage{errors.New("no such thing")}), exitUsage, "legwork: while at it: no such thing\n"},
		{&fs.PathError{Op: "write", Path: "x", Err: syscall.ENOSPC}, exitUsage, "legwork: write x: no space left on device\n"},
		{&os.LinkError{Op: "rename", Old: "a", New: "b", Err: syscall.EXDEV}, exitUsage, "legwork: rename a b: "},
		{&fs.PathError{Op: "write", Path: "x", Err: syscall.EPIPE}, exitPipe, ""},
		{io.ErrClosedPipe, exitPipe, ""},
		{wrapped(context.Canceled), exitInterrupted, "legwork: stopped\n"},
		{errors.New("matrix is singular"), exitProgram, "legwork: program fault: matrix is singular\n"},
	} {
		var e bytes.Buffer
		require.Equal(t, row.code, report(streams{err: &e}, row.err), "%v", row.err)
		if row.says == "" {
			require.Empty(t, e.String())
		} else {
			require.True(t, strings.HasPrefix(e.String(), row.says), e.String())
		}
	}
}

// panics is standard input that breaks the program.
type panics struct{}

func (panics) Read([]byte) (int, error) { panic("index out of range") }

func TestProgramFaultIsToldWithoutAStack(t *testing.T) {
	var o, e bytes.Buffer
	code := run(context.Background(), []string{"check", "-"}, streams{panics{}, &o, &e})
	require.Equal(t, exitProgram, code)
	require.Contains(t, e.String(), "legwork: program fault: index out of range\nPlease keep the draft")
	require.NotContains(t, e.String(), ".go:")
}

func TestStoppedFromTheKeyboard(t *testing.T) {
	workshop(t)
	ctx, stop := context.WithCancel(context.Background())
	stop()
	var o, e bytes.Buffer
	require.Equal(t, exitInterrupted, run(ctx, []string{"check", "small.draft"}, streams{nil, &o, &e}))
	require.Equal(t, "legwork: stopped\n", e.String())
}

// head closes the pipe early: not a word, whatever was being printed.
func TestReaderGoesAway(t *testing.T) {
	workshop(t)
	for _, args := range []string{
		"check small.draft", "check --format json small.draft", "why small.draft 203", "list small.draft volts",
		"list small.draft cut --format csv", "list small.draft pins --format json", "draw small.draft schematic",
		"explain", "explain relay", "tidy small.draft", "export small.draft spice --step crank", "export small.draft spice --names",
	} {
		var e bytes.Buffer
		code := run(context.Background(), strings.Fields(args), streams{nil, closedPipe(), &e})
		require.Equal(t, exitPipe, code, args)
		require.NotContains(t, e.String(), "pipe", args)
	}
}
