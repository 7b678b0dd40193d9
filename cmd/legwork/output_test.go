package main

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestOutputToAFile(t *testing.T) {
	dir := workshop(t)
	want := legwork(t, "list", "small.draft", "cut").out
	got := legwork(t, "list", "small.draft", "cut", "-o", "cut.txt")
	require.Equal(t, outcome{}, got)
	require.Equal(t, want, get(t, "cut.txt"))
	require.NoError(t, os.Chmod("cut.txt", 0o600))
	put(t, "cut.txt", "old")
	require.Equal(t, exitClean, legwork(t, "list", "small.draft", "cut", "-o", "cut.txt").code)
	require.Equal(t, want, get(t, "cut.txt"), "an old paper is replaced")
	info, err := os.Stat("cut.txt")
	require.NoError(t, err)
	require.Equal(t, os.FileMode(0o600), info.Mode().Perm(), "who may read it stays as it was")
	require.Equal(t, want, legwork(t, "list", "small.draft", "cut", "-o", "-").out, "- is standard output")
	require.ElementsMatch(t, append(slices.Clone(shipped), "cut.txt"), names(t, dir), "nothing is left behind")
}

func TestOutputIsRefused(t *testing.T) {
	dir := workshop(t)
	draft := get(t, "small.draft")
	put(t, "target.txt", "precious")
	require.NoError(t, os.Symlink("target.txt", "link.txt"))
	require.NoError(t, os.Symlink("small.draft", "draft-link"))
	require.NoError(t, os.Link("small.draft", "second-name"))
	require.NoError(t, os.Symlink("nowhere", "dangling"))
	require.NoError(t, os.Mkdir("folder", 0o755))
	before := names(t, dir)
	for _, row := range [][2]string{
		{"small.draft", "small.draft is the draft itself"},
		{"./folder/../small.draft", "is the draft itself"},
		{"draft-link", "is the draft itself"},
		{"second-name", "is the draft itself"},
		{"link.txt", "link.txt is a link"},
		{"dangling", "dangling is a link"},
		{"folder", "folder is a folder; name a file"},
		{"nofolder/cut.txt", "can't write nofolder/cut.txt: no such file"},
		{"target.txt/x", "can't write target.txt/x: not a directory"},
	} {
		for _, paper := range []string{"list small.draft cut -o ", "draw small.draft schematic -o "} {
			got := legwork(t, strings.Fields(paper+row[0])...)
			require.Equal(t, exitUsage, got.code, row[0])
			require.Contains(t, got.err, row[1])
			require.Empty(t, got.out)
		}
	}
	require.Equal(t, draft, get(t, "small.draft"))
	require.Equal(t, "precious", get(t, "target.txt"))
	require.Equal(t, before, names(t, dir))
}

var errWriting = errors.New("the writing failed")

// half writes something and fails.
func half(w io.Writer) error {
	_, err := io.WriteString(w, "half a page")
	return errors.Join(err, errWriting)
}

func whole(w io.Writer) error {
	_, err := io.WriteString(w, "a page")
	return err
}

func TestFailedWritingLeavesNothing(t *testing.T) {
	t.Chdir(t.TempDir())
	put(t, "old.txt", "old")
	for _, path := range []string{"old.txt", "new.txt"} {
		require.ErrorIs(t, save(path, "", half), errWriting)
	}
	require.Equal(t, []string{"old.txt"}, names(t, "."))
	require.Equal(t, "old", get(t, "old.txt"))

	require.ErrorIs(t, saveAll("fresh/", "", []page{{"1", whole}, {"2", half}}), errWriting)
	require.Equal(t, []string{"old.txt"}, names(t, "."), "a folder made for it goes again")

	require.NoError(t, os.Mkdir("there", 0o755))
	put(t, "there/1", "old")
	require.ErrorIs(t, saveAll("there", "", []page{{"1", whole}, {"2", half}}), errWriting)
	require.Equal(t, []string{"1"}, names(t, "there"))
	require.Equal(t, "old", get(t, "there/1"))
}

func TestSheetsIntoAFolder(t *testing.T) {
	workshop(t)
	got := legwork(t, "draw", "orchard-truck.draft", "schematic", "-o", "out/sheets/")
	require.Equal(t, exitClean, got.code, got.err)
	sheets := names(t, "out/sheets")
	require.Greater(t, len(sheets), 1)
	for i, name := range sheets {
		require.Contains(t, got.out, filepath.Join("out", "sheets", name)+"\n")
		one := legwork(t, "draw", "orchard-truck.draft", "schematic", "--sheet", string(rune('1'+i)))
		require.Equal(t, exitClean, one.code, one.err)
		require.Equal(t, one.out, get(t, filepath.Join("out/sheets", name)))
	}
	// Again over the old ones is fine; over a folder or a link of that name is
	// refused before anything is touched.
	require.Equal(t, exitClean, legwork(t, "draw", "orchard-truck.draft", "schematic", "-o", "out/sheets/").code)
	put(t, filepath.Join("out/sheets", sheets[0]), "mine")
	last := filepath.Join("out/sheets", sheets[len(sheets)-1])
	require.NoError(t, os.Remove(last))
	require.NoError(t, os.Symlink("elsewhere", last))
	got = legwork(t, "draw", "orchard-truck.draft", "schematic", "-o", "out/sheets/")
	require.Equal(t, exitUsage, got.code)
	require.Contains(t, got.err, "is a link")
	require.Equal(t, "mine", get(t, filepath.Join("out/sheets", sheets[0])))
	require.Equal(t, sheets, names(t, "out/sheets"))

	put(t, "file", "x")
	got = legwork(t, "draw", "small.draft", "schematic", "-o", "file/")
	require.Equal(t, exitUsage, got.code)
	require.Contains(t, got.err, "can't make the folder file")
}
