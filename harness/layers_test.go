// This file is a statement of policy: which package may know which. Work goes
// one way, draft to paper, and an arrow drawn backwards shows up here first.
// If it fails, the usual cure is to move the code, not to widen the table; a
// change of the table wants a note in docs/decisions.

package harness_test

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// layers holds for every package what it may import inside the module, one
// blank between names. A name with a star stands for every package below.
var layers = map[string]string{
	"gauge":              "",
	"harness/diag":       "",
	"harness/quantity":   "",
	"harness/circuit":    "",
	"harness/draft":      "harness/diag harness/quantity",
	"harness/part":       "harness/diag harness/quantity harness/circuit gauge",
	"harness/model":      "harness/draft harness/part harness/diag harness/quantity gauge",
	"harness/words":      "harness/model harness/draft harness/part harness/diag harness/quantity gauge",
	"harness/route":      belowRoute,
	"harness/solve":      belowRoute + " harness/route",
	"harness/deck":       belowRoute + " harness/solve",
	"harness/size":       belowRoute + " harness/route harness/solve",
	"harness/check":      belowRoute + " harness/route harness/solve harness/size",
	"harness/wanted":     "harness/diag",
	"harness/shop":       belowRoute + " harness/route harness/solve harness/size",
	"harness":            "harness/* gauge",
	"harness/proof":      "harness harness/* gauge",
	"render/scene":       "",
	"render/diagram":     "harness harness/* render/scene",
	"render/layout":      "harness harness/* gauge render/scene render/diagram",
	"render/sheet":       "harness harness/* render/scene",
	"render/page":        "harness harness/* render/scene",
	"render":             "harness harness/* render/*",
	"cmd/legwork":        "harness harness/* gauge render render/*",
	"cmd/legwork-layout": "",
}

const belowRoute = "harness/model harness/draft harness/part harness/diag harness/quantity harness/circuit gauge"

// outside holds the modules from elsewhere, and who may import them.
var outside = []struct {
	module   string
	below    string // only here; "" for everywhere
	testOnly bool
}{
	{module: "github.com/alecthomas/kong", below: "cmd/"},
	{module: "golang.org/x/term", below: "cmd/"},
	{module: "github.com/stretchr/testify", testOnly: true},
	{module: "github.com/google/go-cmp", testOnly: true},
	{module: "github.com/santhosh-tekuri/jsonschema", below: "cmd/", testOnly: true},
	{module: "github.com/dlclark/regexp2", below: "harness/words", testOnly: true},
}

// onlyInCmd holds packages of the standard library that reach the disk, the
// clock, the environment or chance: a stage gives the same answer every time.
var onlyInCmd = []string{
	"os", "os/exec", "os/signal", "os/user", "net", "net/http", "syscall", "log", "log/slog", "flag",
	"time", "math/rand", "math/rand/v2", "crypto/rand", "path/filepath",
}

// never holds packages that no file imports.
var never = []string{"C", "unsafe", "plugin"}

// topLevel holds what may stand beside go.mod; dot files may stand there too.
var topLevel = []string{
	"README.md", "DEVELOPERS.md", "LICENSE", "go.mod", "go.sum",
	"harness", "cmd", "gauge", "render", "testdata", "docs",
}

// importFault says why a file of package dir may not import what; "" if it may.
func importFault(dir string, test bool, what string) string {
	inCmd := strings.HasPrefix(dir, "cmd/")
	inside, ours := strings.CutPrefix(what, moduleName+"/")
	switch {
	case slices.Contains(never, what):
		return "no file may"
	case ours && !test && !granted(layers[dir], inside):
		return fmt.Sprintf("its row in layers allows only: %q", layers[dir])
	case ours:
		return ""
	case !strings.Contains(what, "."):
		if slices.Contains(onlyInCmd, what) && !inCmd && !test {
			return "only cmd touches disk, clock, environment and chance"
		}
		return ""
	}
	for _, o := range outside {
		if what != o.module && !strings.HasPrefix(what, o.module+"/") {
			continue
		}
		if o.testOnly && !test {
			return "only tests may"
		}
		if !strings.HasPrefix(dir+"/", o.below) {
			return "only packages below " + o.below + " may"
		}
		return ""
	}
	return "this module from elsewhere is not listed in outside"
}

func granted(row, what string) bool {
	for _, name := range strings.Fields(row) {
		stem, star := strings.CutSuffix(name, "*")
		if what == name || (star && strings.HasPrefix(what, stem)) {
			return true
		}
	}
	return false
}

func TestImportPolicy(t *testing.T) {
	for _, f := range goFiles(t) {
		if _, known := layers[f.dir]; !known {
			t.Errorf("%s: package %s has no row in layers: say what it may import", f.name, f.dir)
			continue
		}
		for _, spec := range f.tree.Imports {
			what, err := strconv.Unquote(spec.Path.Value)
			require.NoError(t, err)
			if fault := importFault(f.dir, f.test, what); fault != "" {
				t.Errorf("%s:%d: may not import %s: %s", f.name, f.line(spec.Pos()), what, fault)
			}
		}
	}
}

func TestTopLevelIsFixed(t *testing.T) {
	for _, name := range moduleFiles(t) {
		top, _, _ := strings.Cut(name, "/")
		if !strings.HasPrefix(top, ".") && !slices.Contains(topLevel, top) {
			t.Errorf("%s: %s may not stand at top level, which is fixed: %v", name, top, topLevel)
		}
	}
}

// The policy has to bite: each of these is a fault, or is none.
func TestImportFaultBites(t *testing.T) {
	tests := []struct {
		dir  string
		test bool
		what string
		ok   bool
	}{
		{"harness/circuit", false, "legwork/render/scene", false},
		{"harness/circuit", false, "math", true},
		{"harness/draft", false, "legwork/harness/diag", true},
		{"harness/draft", false, "legwork/harness/diagram", false},
		{"harness/diag", false, "legwork/harness/quantity", false},
		{"harness/shop", false, "legwork/harness/check", false},
		{"harness/size", false, "legwork/harness/check", false},
		{"harness", false, "legwork/harness/check", true},
		{"harness", false, "legwork/render", false},
		{"gauge", false, "legwork/harness/quantity", false},
		{"render/page", false, "legwork/render/diagram", false},
		{"harness/solve", false, "time", false},
		{"harness/solve", false, "context", true},
		{"cmd/legwork", false, "time", true},
		{"harness", false, "os", false},
		{"harness", true, "os", true},
		{"gauge", true, "unsafe", false},
		{"cmd/legwork", false, "github.com/alecthomas/kong", true},
		{"harness", false, "github.com/alecthomas/kong", false},
		{"harness/part", true, "github.com/stretchr/testify/require", true},
		{"harness/part", false, "github.com/stretchr/testify/require", false},
		{"cmd/legwork", true, "example.org/other", false},
	}
	for _, tt := range tests {
		require.Equal(t, tt.ok, importFault(tt.dir, tt.test, tt.what) == "", "%s imports %s", tt.dir, tt.what)
	}
	for dir, row := range layers {
		for _, name := range strings.Fields(row) {
			stem, star := strings.CutSuffix(name, "/*")
			_, known := layers[name]
			require.True(t, star || known, "row %s names %s, which has no row (%s)", dir, name, stem)
		}
	}
}
