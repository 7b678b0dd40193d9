package proof

import (
	"context"
	"io/fs"
	"os"
	"path"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness"
	"legwork/harness/check"
	"legwork/harness/diag"
)

// whole are the sound whole drafts of testdata, each with all that can be
// fitted.
var whole = []struct {
	name string
	with []string
}{
	{"orchard-truck", nil},
	{"forestry-carrier", []string{"lights", "crane"}},
	{"lake-workboat", []string{"winch"}},
	{"utility-trailer", nil},
	{"track-car", nil},
	{"camper-leisure", nil},
}

// A base is a sound draft as built: with the sizes and ratings that legwork
// chose written in, so that a mistake made afterwards is not sized away.
type base struct {
	name   string
	with   []string
	lines  []string
	result *harness.Result
	chosen map[string]bool // wires whose size legwork chose: the least that does
	known  map[string]bool // findings without a mistake, by line, rule and message
	shelf  fstest.MapFS
}

func built(t *testing.T, name string, with []string) *base {
	t.Helper()
	b := &base{name: name, with: with, shelf: shelf(t), chosen: map[string]bool{}}
	src, err := os.ReadFile(root + "/testdata/" + name + ".draft")
	require.NoError(t, err)
	b.lines = strings.Split(string(src), "\n")
	first, err := b.check(t.Context(), b.lines)
	require.NoError(t, err)
	for _, w := range first.Model.Wires {
		if s := first.Sizes.Wires[w.ID]; s.Chosen && w.Cable == nil {
			b.append(w.Stmt.Line, sizeWord(s.Conductor.Size))
			b.chosen[w.Number] = true
		}
	}
	for _, f := range first.Sizes.Fuses {
		if f.Chosen {
			b.append(f.Device.Stmt.Line, number(f.RatedA)+"A")
		}
	}
	b.result, err = b.check(t.Context(), b.lines)
	require.NoError(t, err)
	for f := range b.result.Findings.AtLeast(diag.Warning) {
		t.Errorf("%s as built is not sound: %s", name, f)
	}
	b.known = map[string]bool{}
	for _, f := range b.result.Findings {
		b.known[f.String()] = true
	}
	return b
}

// append puts a word behind a statement, ahead of a remark.
func (b *base) append(line int, word string) {
	text, remark, found := strings.Cut(b.lines[line-1], " #")
	text = strings.TrimRight(text, " ") + "  " + word
	if found {
		text += " #" + remark
	}
	b.lines[line-1] = text
}

// shelf reads the files that the drafts include.
func shelf(t *testing.T) fstest.MapFS {
	t.Helper()
	m := fstest.MapFS{}
	files, err := fs.Glob(os.DirFS(root+"/testdata"), "shelf/*.draft")
	require.NoError(t, err)
	for _, f := range files {
		src, err := os.ReadFile(path.Join(root, "testdata", f))
		require.NoError(t, err)
		m[f] = &fstest.MapFile{Data: src}
	}
	return m
}

func (b *base) check(ctx context.Context, lines []string) (*harness.Result, error) {
	files := fstest.MapFS{"x.draft": {Data: []byte(strings.Join(lines, "\n"))}}
	for name, f := range b.shelf {
		files[name] = f
	}
	return harness.Load(files, "x.draft").Check(ctx, harness.Options{With: b.with})
}

// sizeWord writes a size as a draft does.
func sizeWord(s gauge.Size) string { return strings.ReplaceAll(s.Name, " ", "") }

// lower gives the size n steps further down the ladder that a size stands on,
// down to ones that are only met in old wire; ok is false below the thinnest.
func lower(s gauge.Size, n int) (down gauge.Size, ok bool) {
	metric := strings.HasSuffix(s.Name, "mm2")
	ladder := gauge.Ladder(metric)
	if !metric {
		for _, awg := range []int{20, 22} {
			if s, ok := gauge.AWGSize(awg); ok {
				ladder = slices.Insert(ladder, 0, s)
			}
		}
	}
	i := slices.IndexFunc(ladder, func(o gauge.Size) bool { return o.Name == s.Name })
	if i < n {
		return s, false
	}
	return ladder[i-n], true
}

// drafted reports whether a finding is about the reading of the text: a mutant
// that gets one is no vehicle with a mistake but a text with one.
func drafted(f diag.Finding) bool {
	r, ok := check.RuleOf(f.Rule)
	return ok && r.Stage == check.Drafted && f.Rule != "stale-accept"
}
