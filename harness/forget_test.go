package harness_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
)

// A check after the trees are gone finds the same, word for word, and still
// shows lines of the text; an accept still covers the statement it stands under.
func TestForgetChangesNoFinding(t *testing.T) {
	drafts := shipped(t)
	drafts["accepts.draft"] = `battery G1  cca 540A  grounds-to frame
lamp    P1  5W  grounds-to frame
  accept load-without-feed "spare lamp"
lamp    P2  5W  grounds-to frame
`
	for name, text := range drafts {
		want, err := besideShelf(t, name, text).Check(t.Context(), harness.Options{})
		require.NoError(t, err)
		d := besideShelf(t, name, text)
		d.Forget()
		got, err := d.Check(t.Context(), harness.Options{})
		require.NoError(t, err)
		require.Equal(t, want.Report(), got.Report(), name)
		require.Len(t, got.Accepted, len(want.Accepted), name)
		if name == "accepts.draft" {
			require.Len(t, got.Accepted, 1)
		}
		require.Equal(t, text, string(d.Source(name)))
		require.Empty(t, d.File.Stmts)
		require.Equal(t, strings.Contains(text, "\ninclude "), len(d.Included) > 0, name)
		for _, f := range d.Included {
			require.Empty(t, f.Stmts)
			require.NotEmpty(t, d.Source(f.Name))
		}
	}
}
