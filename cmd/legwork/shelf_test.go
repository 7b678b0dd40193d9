package main

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"
)

const optional = `include "shelf.draft"
option winter  "Winter kit"
battery G1  grounds-to frame
fuse    F1  part slow  from G1 6in
lamp    P1  5W  grounds-to frame
heater  R1  60W  grounds-to frame  option winter
wire 1  G1.+  F1.1  6in
wire 2  F1.2  P1.1  8ft
wire 3  F1.2  R1.1  8ft  option winter
  accept two-wires-in-cavity "test"
`

// An option is fitted by name; what it is called and what stays out is said.
func TestWith(t *testing.T) {
	workshop(t)
	put(t, "kit.draft", optional)
	put(t, "shelf.draft", "part fuse slow  15A\n")
	got := legwork(t, "check", "kit.draft")
	require.Equal(t, exitClean, got.code, got.out)
	require.Contains(t, got.out, "not fitted: winter (Winter kit)")
	require.Contains(t, got.out, "\n  2 wires, 3 devices")
	got = legwork(t, "check", "kit.draft", "--with", "winter")
	require.Equal(t, exitClean, got.code, got.out)
	require.Contains(t, got.out, "\n  with winter (Winter kit)\n")
	require.Contains(t, got.out, "\n  3 wires, 4 devices")
	got = legwork(t, "check", "kit.draft", "--with", "winter", "--format", "json")
	require.Contains(t, got.out, "\"with\": [\n    \"winter\"\n  ]")
	require.Contains(t, legwork(t, "list", "kit.draft", "cut", "--with", "winter").out, "R1.1")

	got = legwork(t, "check", "kit.draft", "--with", "wintr")
	require.Equal(t, exitUsage, got.code)
	require.Contains(t, got.err, "did you mean winter?")
}

// A draft sees nothing outside its folder, not by a link either.
func TestIncludesDoNotFollowLinksOut(t *testing.T) {
	dir := workshop(t)
	outside := t.TempDir() + "/shelf.draft"
	put(t, outside, "part fuse slow  15A\n")
	put(t, "kit.draft", optional)
	require.NoError(t, os.Symlink(outside, dir+"/shelf.draft"))
	got := legwork(t, "check", "kit.draft")
	require.Equal(t, exitFindings, got.code)
	require.Contains(t, got.out, "kit.draft:1:9: fault: can't read shelf.draft")
	require.Contains(t, got.out, "[draft-include]")
}

// A mistake in an included file is shown with that file's line and caret.
func TestCaretInAnIncludedFile(t *testing.T) {
	workshop(t)
	put(t, "kit.draft", optional)
	put(t, "shelf.draft", "# invented\npart fuse slow  15X\n")
	got := legwork(t, "check", "kit.draft")
	require.Contains(t, got.out, "shelf.draft:2:17: fault: ")
	require.Contains(t, got.out, "2 | part fuse slow  15X\n")
	require.Contains(t, got.out, "^^^")
	require.Equal(t, "# invented\npart fuse slow  15X\n", get(t, "shelf.draft"))
}

// Asked for all guesses, check says how far they can move.
func TestGuessesSayHowFarTheyCanMove(t *testing.T) {
	workshop(t)
	src := "battery G1  grounds-to frame\nfuse F1  10A  from G1 6in\nlamp P1  draws 4A guess  grounds-to frame\nwire 1  G1.+  F1.1  10AWG  6in\nwire 2  F1.2  P1.1  10AWG  1ft\n"
	put(t, "lamp.draft", src)
	require.NotContains(t, legwork(t, "check", "lamp.draft").out, "How far")
	got := legwork(t, "check", "lamp.draft", "--guesses")
	require.Equal(t, exitClean, got.code)
	require.Contains(t, got.out, "How far a guess can move before something changes\n  draws of P1, 4 A: nothing changes down to 1 A; above 8")
	require.Contains(t, got.out, "Not moved (")
	require.Contains(t, legwork(t, "check", "lamp.draft", "--guesses", "--format", "json").out, `"above": "warning fuse-heavily-loaded on line 2"`)
}
