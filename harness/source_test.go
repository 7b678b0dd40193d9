package harness_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const (
	moduleRoot = ".."
	moduleName = "legwork"
)

// moduleFiles lists the files of the module by slash path: those that git
// knows or would offer to add, or, outside a work tree, all that are there.
func moduleFiles(t *testing.T) []string {
	t.Helper()
	out, err := exec.Command("git", "-C", moduleRoot, "ls-files", "-z", "-co", "--exclude-standard").Output()
	listed := strings.FieldsFunc(string(out), func(r rune) bool { return r == 0 })
	if err != nil {
		listed = walkedFiles(t)
	}
	var names []string
	for _, name := range listed {
		info, err := os.Lstat(filepath.Join(moduleRoot, name))
		if err == nil && info.Mode().IsRegular() {
			names = append(names, name)
		}
	}
	require.Contains(t, names, "go.mod", "the module's own files were not found")
	return names
}

func walkedFiles(t *testing.T) []string {
	t.Helper()
	var names []string
	root := os.DirFS(moduleRoot)
	require.NoError(t, fs.WalkDir(root, ".", func(name string, d fs.DirEntry, err error) error {
		if err == nil && d.IsDir() && name == ".git" {
			return fs.SkipDir
		}
		if err == nil && !d.IsDir() {
			names = append(names, name)
		}
		return err
	}))
	return names
}

func readFile(t *testing.T, name string) []byte {
	t.Helper()
	src, err := os.ReadFile(filepath.Join(moduleRoot, name))
	require.NoError(t, err)
	return src
}

// goFile is one Go file of the module, parsed.
type goFile struct {
	name string // slash path from the module root
	dir  string
	test bool
	src  []byte
	fset *token.FileSet
	tree *ast.File
}

func (f goFile) line(p token.Pos) int { return f.fset.Position(p).Line }

func goFiles(t *testing.T) []goFile {
	t.Helper()
	var files []goFile
	for _, name := range moduleFiles(t) {
		if strings.HasSuffix(name, ".go") && !strings.Contains("/"+name, "/testdata/") {
			files = append(files, parseGo(t, name, readFile(t, name)))
		}
	}
	require.NotEmpty(t, files)
	return files
}

func parseGo(t *testing.T, name string, src []byte) goFile {
	t.Helper()
	f := goFile{name: name, dir: path.Dir(name), test: strings.HasSuffix(name, "_test.go"),
		src: src, fset: token.NewFileSet()}
	var err error
	f.tree, err = parser.ParseFile(f.fset, name, src, parser.ParseComments|parser.SkipObjectResolution)
	require.NoError(t, err)
	return f
}
