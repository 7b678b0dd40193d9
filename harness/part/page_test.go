package part

import (
	flags "flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

var update = flags.Bool("update", false, "write the pages of docs/devices anew")

const pages = "../../docs/devices"

func TestPagesAreFresh(t *testing.T) {
	if *update {
		require.NoError(t, os.MkdirAll(pages, 0o755))
	}
	want := map[string]bool{}
	for _, k := range Kinds() {
		file := filepath.Join(pages, k.Name+".md")
		want[filepath.Base(file)] = true
		if *update {
			require.NoError(t, os.WriteFile(file, []byte(k.Page()), 0o644))
		}
		got, err := os.ReadFile(file)
		require.NoError(t, err)
		require.Equal(t, k.Page(), string(got), "stale page: go test ./harness/part -run Pages -update")
	}
	entries, err := os.ReadDir(pages)
	require.NoError(t, err)
	for _, e := range entries {
		require.True(t, want[e.Name()], "%s is the page of no kind", e.Name())
	}
}

// A page has to show every terminal, setting and role by its own word.
func TestPagesShowEveryWord(t *testing.T) {
	for _, k := range Kinds() {
		page := k.Page()
		for _, term := range k.Terminals {
			if !k.Self {
				require.Contains(t, page, "| `"+term.Name+"` |", k.Name)
			}
		}
		for _, s := range k.Settings {
			for _, w := range s.Words {
				require.Contains(t, page, w, k.Name)
			}
			if !s.Bare {
				require.Contains(t, page, "| `"+s.Name, k.Name)
			}
		}
		if k.Lines != nil {
			for _, r := range k.Lines.Roles {
				require.Contains(t, page, "### Role `"+r.Word+"`", k.Name)
			}
		}
		require.NotContains(t, page, "NaN", k.Name)
		require.False(t, strings.Contains(page, "\n\n\n"), k.Name)
	}
}
