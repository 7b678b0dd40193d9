package harness_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
)

// row is one statement of a draft as words, with the level that it stands at.
// Comments and columns are gone: they mean nothing.
type row struct {
	level int
	words []string
}

// rows reads a sound draft into its statements, children behind their parent.
func rows(tb testing.TB, text string) []row {
	tb.Helper()
	f, found := draft.Parse("rows.draft", []byte(text))
	require.Less(tb, found.Worst(), diag.Fault)
	var list []row
	var add func([]*draft.Stmt)
	add = func(stmts []*draft.Stmt) {
		for _, s := range stmts {
			words := []string{s.Head.Raw}
			for _, it := range s.Items {
				words = append(words, it.Raw)
			}
			list = append(list, row{s.Level, words})
			add(s.Children)
		}
	}
	add(f.Stmts)
	return list
}

// text writes rows as a draft.
func text(list []row) string {
	var b strings.Builder
	for _, r := range list {
		b.WriteString(strings.Repeat("  ", r.level) + strings.Join(r.words, "  ") + "\n")
	}
	return b.String()
}

// blocks parts rows into the statements of a level, each with its children.
func blocks(list []row, level int) [][]row {
	var out [][]row
	for _, r := range list {
		if r.level == level {
			out = append(out, nil)
		}
		out[len(out)-1] = append(out[len(out)-1], r)
	}
	return out
}

func (r row) head() string { return r.words[0] }

// isDevice reports whether a top-level row declares a device.
func (r row) isDevice() bool {
	_, kind := part.Of(r.head())
	return r.level == 0 && kind
}

// isWire reports whether a row declares a conductor with two ends.
func (r row) isWire() bool {
	return slices.Contains([]string{"wire", "strap", "lead", "core", "drain"}, r.head())
}

// clone copies rows, so that a change of one draft leaves the other alone.
func clone(list []row) []row {
	out := slices.Clone(list)
	for i := range out {
		out[i].words = slices.Clone(out[i].words)
	}
	return out
}

// shipped gives the drafts that come with legwork, by file name.
func shipped(tb testing.TB) map[string]string {
	tb.Helper()
	names, err := filepath.Glob("../testdata/*.draft")
	require.NoError(tb, err)
	require.NotEmpty(tb, names)
	out := map[string]string{}
	for _, name := range names {
		src, err := os.ReadFile(name)
		require.NoError(tb, err)
		out[filepath.Base(name)] = string(src)
	}
	return out
}

// whole reads a draft of a folder with the text of what it includes in the
// place of each include line.
func whole(tb testing.TB, folder, src string) string {
	tb.Helper()
	var b strings.Builder
	for line := range strings.Lines(src) {
		if file, found := strings.CutPrefix(line, "include \""); found {
			file, _, _ = strings.Cut(file, "\"")
			name := filepath.Join(folder, file)
			text, err := os.ReadFile(name)
			require.NoError(tb, err)
			line = whole(tb, filepath.Dir(name), string(text))
		}
		b.WriteString(line)
	}
	return b.String()
}
