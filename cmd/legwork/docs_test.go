package main

import (
	"bytes"
	"context"
	"flag"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/diag"
)

var update = flag.Bool("update", false, "rewrite the outputs and drawings in README and docs")

// root is the project's folder; absolute, since tests change the working folder.
var root = func() string {
	path, err := filepath.Abs("../..")
	if err != nil {
		panic(err)
	}
	return path
}()

// block is one fenced block of a Markdown page.
type block struct {
	lang  string
	lines []string
	first int // index of its first line in the page
}

func blocksOf(page string) []block {
	var list []block
	var open *block
	for i, line := range strings.Split(page, "\n") {
		switch {
		case open == nil && strings.HasPrefix(line, "```"):
			open = &block{lang: strings.TrimPrefix(line, "```"), first: i + 1}
		case open != nil && line == "```":
			list = append(list, *open)
			open = nil
		case open != nil:
			open.lines = append(open.lines, line)
		}
	}
	return list
}

func pages(t *testing.T) []string {
	t.Helper()
	list := []string{filepath.Join(root, "README.md"), filepath.Join(root, "DEVELOPERS.md")}
	err := filepath.WalkDir(filepath.Join(root, "docs"), func(path string, d os.DirEntry, err error) error {
		if err == nil && filepath.Ext(path) == ".md" {
			list = append(list, path)
		}
		return err
	})
	require.NoError(t, err)
	return list
}

// Every block of README and docs is run: drafts are checked, commands are
// carried out and their output compared. A block without a language is prose.
// A draft may have a file name behind its language: the commands below it on
// the page then find it, with what else the page names so. One that is there
// for its faults says faulty behind that.
func TestPagesAreTrue(t *testing.T) {
	for _, path := range pages(t) {
		raw, err := os.ReadFile(path)
		require.NoError(t, err)
		page := string(raw)
		name, _ := filepath.Rel(root, path)
		files := map[string]string{}
		for _, b := range blocksOf(page) {
			switch lang, rest, _ := strings.Cut(b.lang, " "); lang {
			case "draft":
				file, faulty, _ := strings.Cut(rest, " ")
				if file != "" {
					files[file] = strings.Join(b.lines, "\n") + "\n"
				}
				draftBlock(t, name, b, faulty == "faulty")
			case "console":
				page = consoleBlock(t, name, page, b, files)
			}
		}
		if *update && page != string(raw) {
			require.NoError(t, os.WriteFile(path, []byte(page), 0o644))
		}
	}
}

// draftBlock checks a draft; it must be without faults, or have one if it is
// there for that.
func draftBlock(t *testing.T, name string, b block, faulty bool) {
	t.Helper()
	d := harness.Parse(name, []byte(strings.Join(b.lines, "\n")+"\n"))
	r, err := d.Check(context.Background(), harness.Options{})
	require.NoError(t, err)
	require.Equal(t, faulty, r.Findings.Worst() >= diag.Fault, "%s, block at line %d: %v", name, b.first, r.Findings)
}

// consoleBlock carries out the commands of a block, lines that begin with
// "$ ", and compares what follows with their output; a line "..." stands for
// any number of lines, and a command without output only has to work. It
// gives the page, brought up to date with -update.
func consoleBlock(t *testing.T, name, page string, b block, files map[string]string) string {
	t.Helper()
	var fresh []string
	for i := 0; i < len(b.lines); {
		require.True(t, strings.HasPrefix(b.lines[i], "$ "), "%s:%d: a console block begins with a command", name, b.first+i+1)
		end := i + 1
		for end < len(b.lines) && !strings.HasPrefix(b.lines[end], "$ ") {
			end++
		}
		want := b.lines[i+1 : end]
		got, code, ran := carryOut(t, b.lines[i][2:], files)
		fresh = append(fresh, b.lines[i])
		require.LessOrEqual(t, code, exitFindings, "%s:%d: %s\n%s", name, b.first+i+1, b.lines[i], strings.Join(got, "\n"))
		switch {
		case !ran, len(want) == 0, matches(got, want):
			fresh = append(fresh, want...)
		case *update:
			now, ok := mended(got, want)
			if !slices.Contains(want, "...") {
				now, ok = got, true
			}
			require.True(t, ok, "%s:%d: %s: what the block shows is gone from\n%s", name, b.first+i+1, b.lines[i], strings.Join(got, "\n"))
			fresh = append(fresh, now...)
		default:
			require.Fail(t, "stale output", "%s:%d: %s\ngot:\n%s\nrun go test ./cmd/legwork -run Pages -update", name, b.first+i+1, b.lines[i], strings.Join(got, "\n"))
		}
		i = end
	}
	return strings.Replace(page, strings.Join(b.lines, "\n"), strings.Join(fresh, "\n"), 1)
}

// carryOut runs a command line of the pages. The test command itself is not
// run from inside a test; .ci/run calls it.
func carryOut(t *testing.T, line string, files map[string]string) (out []string, code int, ran bool) {
	t.Helper()
	line = strings.TrimPrefix(strings.TrimPrefix(line, "go run ./cmd/"), "legwork ")
	if line == "go test ./..." || strings.HasPrefix(line, "go test -bench") {
		return nil, exitClean, false
	}
	args := strings.Fields(line)
	require.NotEmpty(t, args)
	t.Chdir(playground(t, files))
	var o, e bytes.Buffer
	code = run(context.Background(), args, streams{strings.NewReader(""), &o, &e})
	text := strings.TrimRight(o.String()+e.String(), "\n")
	return strings.Split(text, "\n"), code, true
}

// playground is a folder that holds these files and sees the shipped drafts.
func playground(t *testing.T, files map[string]string) string {
	t.Helper()
	dir := t.TempDir()
	for name, text := range files {
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644))
	}
	require.NoError(t, os.Symlink(filepath.Join(root, "testdata"), filepath.Join(dir, "testdata")))
	return dir
}

// matches compares lines; "..." in want stands for any number of lines.
func matches(got, want []string) bool {
	if len(want) == 0 {
		return len(got) == 0
	}
	if want[0] == "..." {
		for i := 0; i <= len(got); i++ {
			if matches(got[i:], want[1:]) {
				return true
			}
		}
		return false
	}
	return len(got) > 0 && strings.TrimRight(got[0], " ") == strings.TrimRight(want[0], " ") && matches(got[1:], want[1:])
}

func TestMatches(t *testing.T) {
	require.True(t, matches([]string{"a", "b", "c"}, []string{"a", "...", "c"}))
	require.True(t, matches([]string{"a"}, []string{"a", "..."}))
	require.False(t, matches([]string{"a", "b"}, []string{"a"}))
	require.False(t, matches([]string{"a"}, []string{"b", "..."}))
}
