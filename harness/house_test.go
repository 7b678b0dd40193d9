package harness_test

import (
	"bytes"
	"fmt"
	"go/ast"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
)

const (
	maxFileLines = 250
	maxFuncLines = 40 // nine in ten functions stay under it
)

func TestFilesAreShort(t *testing.T) {
	for _, f := range goFiles(t) {
		if lines := bytes.Count(f.src, []byte{'\n'}); !f.test && lines > maxFileLines {
			t.Errorf("%s: %d lines, at most %d: one idea a file, so part it", f.name, lines, maxFileLines)
		}
	}
}

func TestNineInTenFunctionsAreShort(t *testing.T) {
	var long []string
	count := 0
	for _, f := range goFiles(t) {
		for _, d := range f.tree.Decls {
			fn, ok := d.(*ast.FuncDecl)
			if !ok || f.test {
				continue
			}
			count++
			if lines := f.line(fn.End()) - f.line(fn.Pos()) + 1; lines >= maxFuncLines {
				long = append(long, fmt.Sprintf("%s:%d: %s has %d lines", f.name, f.line(fn.Pos()), fn.Name.Name, lines))
			}
		}
	}
	t.Logf("%d of %d functions have %d lines or more", len(long), count, maxFuncLines)
	if len(long)*10 > count {
		t.Errorf("more than one in ten is long:\n%s", strings.Join(long, "\n"))
	}
}

func TestPackagesAreDescribed(t *testing.T) {
	described := map[string]bool{}
	for _, f := range goFiles(t) {
		if !f.test {
			described[f.dir] = described[f.dir] || f.tree.Doc.Text() != ""
		}
	}
	for dir, ok := range described {
		if !ok {
			t.Errorf("%s: no file has a package comment", dir)
		}
	}
}

func TestExportedNamesAreDescribed(t *testing.T) {
	for _, f := range goFiles(t) {
		if f.test {
			continue
		}
		for _, fault := range undescribed(f) {
			t.Error(fault)
		}
	}
}

// undescribed lists the exported top-level names and methods of a file that
// have no comment: above them, behind them, or above their group.
func undescribed(f goFile) (faults []string) {
	blame := func(n ast.Node, name string) {
		faults = append(faults, fmt.Sprintf("%s:%d: %s has no comment", f.name, f.line(n.Pos()), name))
	}
	for _, d := range f.tree.Decls {
		switch d := d.(type) {
		case *ast.FuncDecl:
			if d.Name.IsExported() && d.Doc.Text() == "" && receiverExported(d) {
				blame(d, d.Name.Name)
			}
		case *ast.GenDecl:
			for _, spec := range d.Specs {
				names, text := described(spec)
				i := slices.IndexFunc(names, (*ast.Ident).IsExported)
				if i >= 0 && text == "" && d.Doc.Text() == "" {
					blame(spec, names[i].Name)
				}
			}
		}
	}
	return faults
}

func described(spec ast.Spec) (names []*ast.Ident, text string) {
	switch s := spec.(type) {
	case *ast.TypeSpec:
		return []*ast.Ident{s.Name}, s.Doc.Text() + s.Comment.Text()
	case *ast.ValueSpec:
		return s.Names, s.Doc.Text() + s.Comment.Text()
	}
	return nil, ""
}

func receiverExported(d *ast.FuncDecl) bool {
	if d.Recv == nil {
		return true
	}
	exported := false
	ast.Inspect(d.Recv.List[0].Type, func(n ast.Node) bool {
		id, ok := n.(*ast.Ident)
		exported = exported || (ok && id.IsExported())
		return true
	})
	return exported
}

// unwanted holds spellings that are not American, and marks of unfinished
// work. They are looked for in comments, names and pages, not in strings: a
// user may type what he likes.
var unwanted = regexp.MustCompile(`(?i:colour|grey|aluminium|labell|centre|metre|behaviour|honour|neighbour|travell|analyse|organis|licence)|TODO|FIXME|XXX`)

func TestWordsOfTheHouse(t *testing.T) {
	for _, f := range goFiles(t) {
		for _, fault := range unwantedIn(f) {
			t.Error(fault)
		}
	}
	for _, name := range moduleFiles(t) {
		if !strings.HasSuffix(name, ".md") {
			continue
		}
		for i, line := range strings.Split(string(readFile(t, name)), "\n") {
			if word := unwanted.FindString(line); word != "" {
				t.Errorf("%s:%d: %q is not a word of this house", name, i+1, word)
			}
		}
	}
}

func unwantedIn(f goFile) (faults []string) {
	blame := func(line int, text string) {
		if word := unwanted.FindString(text); word != "" {
			faults = append(faults, fmt.Sprintf("%s:%d: %q is not a word of this house", f.name, line, word))
		}
	}
	for _, group := range f.tree.Comments {
		for _, c := range group.List {
			blame(f.line(c.Pos()), c.Text)
		}
	}
	ast.Inspect(f.tree, func(n ast.Node) bool {
		if id, ok := n.(*ast.Ident); ok {
			blame(f.line(id.Pos()), id.Name)
		}
		return true
	})
	return faults
}

// machinePaths finds places that exist only where the project was written.
var machinePaths = regexp.MustCompile(`/` + `work\b|\.\./` + `shared\b`)

func TestNoMachinePaths(t *testing.T) {
	for _, name := range moduleFiles(t) {
		src := readFile(t, name)
		if !utf8.Valid(src) {
			continue
		}
		if at := machinePaths.FindIndex(src); at != nil {
			t.Errorf("%s:%d: %q is a path of one machine", name, bytes.Count(src[:at[0]], []byte{'\n'})+1, src[at[0]:at[1]])
		}
	}
}

// The checks above have to bite: here is a file with one of each.
func TestHouseChecksBite(t *testing.T) {
	f := parseGo(t, "x/x.go", []byte(`package x

// The grey wire.
var Wire int

const Colour = 1

var (
	// Good has a comment.
	Good int
	Bad  int
)

type T struct{}

func (*T) Method() {}

type u struct{}

func (u) Method() {}
`))
	require.Equal(t, []string{
		"x/x.go:6: Colour has no comment",
		"x/x.go:11: Bad has no comment",
		"x/x.go:14: T has no comment",
		"x/x.go:16: Method has no comment",
	}, undescribed(f))
	require.Equal(t, []string{
		`x/x.go:3: "grey" is not a word of this house`,
		`x/x.go:6: "Colour" is not a word of this house`,
	}, unwantedIn(f))
	require.True(t, machinePaths.MatchString("cd /"+"work/main"))
	require.True(t, machinePaths.MatchString("see ../"+"shared/x"))
	require.False(t, machinePaths.MatchString("a fine piece of net"+"/workmanship"))
}
