package words

import (
	"flag"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/model"
	"legwork/harness/part"
)

var update = flag.Bool("update", false, "write the reference and the grammar anew")

const (
	referencePage = "../../docs/draft.md"
	referenceMark = "<!-- What follows is written from the declarations: go test ./harness/words -update -->\n"
)

// The second half of docs/draft.md is the reference; what stands above the
// mark is written by hand.
func TestReferenceIsFresh(t *testing.T) {
	raw, err := os.ReadFile(referencePage)
	require.NoError(t, err)
	byHand, got, found := strings.Cut(string(raw), referenceMark)
	require.True(t, found, "the page lost its mark: %s", referenceMark)
	want := "\n" + Reference("devices")
	if *update && got != want {
		require.NoError(t, os.WriteFile(referencePage, []byte(byHand+referenceMark+want), 0o644))
		got = want
	}
	require.Equal(t, want, got, "stale reference: go test ./harness/words -update")
}

// Every word that a draft may say is in the reference, in code quotes.
func TestReferenceShowsEveryWord(t *testing.T) {
	page := Reference("devices")
	for _, s := range model.Statements() {
		require.Contains(t, page, "### `"+s.Word+"`")
		for _, w := range s.Words {
			require.Contains(t, page, "| `"+w.Word, s.Word)
		}
	}
	for _, g := range part.Goods() {
		_, mine, found := strings.Cut(page, "### `part "+g.Name+"`\n")
		require.True(t, found, g.Name)
		for _, set := range g.Settings {
			require.Contains(t, mine, "| `"+set.Written(), g.Name)
		}
	}
	for _, k := range part.Kinds() {
		_, mine, found := strings.Cut(page, "### `"+k.Name+"`\n")
		require.True(t, found, k.Name)
		mine, _, _ = strings.Cut(mine, "\n### ")
		for _, set := range k.Settings {
			require.Contains(t, mine, "| `"+set.Written(), k.Name)
			for _, w := range set.Words {
				require.Contains(t, mine, w, k.Name)
			}
		}
		for _, term := range k.Terminals {
			if !k.Self {
				require.Contains(t, mine, "`"+term.Name+"`", k.Name)
			}
		}
	}
	require.NotContains(t, page, "\n\n\n")
	require.NotContains(t, page, "NaN")
}
