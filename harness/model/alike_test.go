package model_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/draft"
	"legwork/harness/model"
)

// A letter in the place of a digit and a decimal comma are answered with what
// was meant, and the fix is right.
func TestAlikeFigures(t *testing.T) {
	for line, want := range map[string]string{
		"fuse F9 1OA at bay": "fuse F9 10A at bay", "motor M9 at bay draws 8,5A": "motor M9 at bay draws 8.5A",
		"place hot9 85C\nwire 9 Fl.2 K1.30": "place hot9 85C\nwire 9 F1.2 K1.30", "motor M9 at bay draws 1l5A": "motor M9 at bay draws 115A",
	} {
		_, found := model.Build(parse(t, base+line+"\n"))
		require.Len(t, found, 1, "%s: %v", line, found)
		require.NotNil(t, found[0].Fix, line)
		e := found[0].Fix.Edits[0]
		src := base + line + "\n"
		fixed := src[:e.At.Off] + e.Text + src[e.At.EndOff:]
		require.Equal(t, base+want+"\n", fixed)
		_, left := model.Build(parse(t, fixed))
		require.Empty(t, left)
	}
}

// What a fault of the text brings about is no second mistake, and another
// mistake in the same line still is one.
func TestNoSecondMistakes(t *testing.T) {
	for src, want := range map[string]int{
		"wire 9 F1. K1.30": 0, `fuse F9 "Pump`: 0, "place cold9 −18C": 0, "fuse F9 10A; at": 0, "wire 9 F1:2 K1.99": 1,
	} {
		f, syntax := draft.Parse("x.draft", []byte(base+src+"\n"))
		require.NotEmpty(t, syntax, src)
		_, found := model.Build(f)
		require.Len(t, found, want, "%s: %v", src, found)
	}
}
