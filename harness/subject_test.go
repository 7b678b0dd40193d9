package harness_test

import (
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
)

// leastDrafts is how many drafts are shipped, at least.
const leastDrafts = 12

// subject is a draft that is said in several ways: one that is shipped, with
// none or all of its options fitted, or a generated one.
type subject struct {
	src  string
	full bool   // all options are fitted
	zero string // the post against which volts are told, whichever way the draft is said
}

// eachDraft runs a test over every shipped draft, those with options twice,
// and over generated ones of 150 wires.
func eachDraft(t *testing.T, f func(t *testing.T, s subject)) {
	t.Helper()
	drafts := shipped(t)
	require.GreaterOrEqual(t, len(drafts), leastDrafts)
	for seed := range uint64(3) {
		drafts[fmt.Sprint("generated-", seed)] = generated(150, seed)
	}
	for _, name := range slices.Sorted(maps.Keys(drafts)) {
		s := subject{src: drafts[name]}
		list := rows(t, s.src)
		if i := slices.IndexFunc(list, func(x row) bool { return x.head() == "battery" }); i >= 0 {
			s.zero = list[i].words[1] + ".-"
		}
		t.Run(name, func(t *testing.T) { f(t, s) })
		if slices.ContainsFunc(list, func(x row) bool { return x.head() == "option" }) {
			s.full = true
			t.Run(name+"+options", func(t *testing.T) { f(t, s) })
		}
	}
}

// check reads another text of the subject beside the shelf, and checks it.
func (s subject) check(t *testing.T, text string) *harness.Result {
	t.Helper()
	d := besideShelf(t, "same.draft", text)
	var o harness.Options
	for _, option := range d.Model.Options {
		if s.full {
			o.With = append(o.With, option.Name)
		}
	}
	r, err := d.Check(t.Context(), o)
	require.NoError(t, err)
	require.NotNil(t, r.Sizes, "%v", r.Findings)
	return r
}

// What a draft includes could as well stand in it.
func TestIncludesDoNotMatter(t *testing.T) {
	included := 0
	eachDraft(t, func(t *testing.T, s subject) {
		whole := whole(t, "../testdata", s.src)
		if whole == s.src {
			return
		}
		included++
		want, got := s.tell(t, s.src, unchanged), s.tell(t, whole, unchanged)
		requireSame(t, want, got)
		list, back := renamed(rows(t, whole)) // parts of the shelf get other names as well
		got = s.tell(t, text(list), back)
		require.Equal(t, want.sizes, got.sizes)
		requireSameVolts(t, want.volts, got.volts)
	})
	require.GreaterOrEqual(t, included, 2)
}

// besideShelf reads a draft as if it stood beside the shipped shelf.
func besideShelf(tb testing.TB, name, src string) *harness.Draft {
	tb.Helper()
	fsys := files(name, src)
	shelves, err := filepath.Glob("../testdata/shelf/*.draft")
	require.NoError(tb, err)
	require.NotEmpty(tb, shelves)
	for _, shelf := range shelves {
		text, err := os.ReadFile(shelf)
		require.NoError(tb, err)
		fsys["shelf/"+filepath.Base(shelf)] = files("x", string(text))["x"]
	}
	return harness.Load(fsys, name)
}

// listed changes each name of a list joined by commas.
func listed(word string, change func(*string)) string {
	names := strings.Split(word, ",")
	for i := range names {
		names[i] = strings.TrimSpace(names[i])
		change(&names[i])
	}
	return strings.Join(names, ", ")
}
