package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const samplePage = "# name\n\nA text that is long enough to be wrapped here.\n\n## Part\n\n- a point in `code`\n- another\n\n    code   stays\n\n" +
	"| `a` | what it is | source |\n|---|---|---|\n| `x \\| y` | one | a rather long source |\n| `z` |  | none |\n"

func TestPageOnAWideTerminal(t *testing.T) {
	var b strings.Builder
	p := &printer{w: &b, width: 45}
	p.page(samplePage)
	require.NoError(t, p.err)
	require.Equal(t, `name

A text that is long enough to be wrapped
here.

Part

- a point in code
- another

    code   stays

  a      what it is  source
  -----  ----------  --------------------
  x | y  one         a rather long source
  z                  none

`, b.String())
}

// Too wide for its terminal a table is a list; nothing is lost.
func TestPageOnANarrowTerminal(t *testing.T) {
	var b strings.Builder
	p := &printer{w: &b, width: 40}
	p.page(samplePage)
	require.Contains(t, b.String(), "  x | y\n      what it is: one\n      source: a rather long source\n  z\n      source: none\n")
}
