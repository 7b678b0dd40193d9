package harness_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
)

// initLine is a package in the trace that the runtime writes with
// GODEBUG=inittrace=1: its name and its time in ms.
var initLine = regexp.MustCompile(`(?m)^init (\S+) @\S+ ms, (\S+) ms clock`)

// Every command starts with the init of every package, so none may take more
// than 1 ms. The least of some runs counts: others are disturbed.
func TestNoPackageIsSlowToStart(t *testing.T) {
	bin := filepath.Join(t.TempDir(), "legwork")
	out, err := exec.Command("go", "build", "-o", bin, moduleName+"/cmd/legwork").CombinedOutput()
	require.NoError(t, err, string(out))
	least := map[string]float64{}
	for range 8 {
		cmd := exec.Command(bin, "--help")
		cmd.Env = append(os.Environ(), "GODEBUG=inittrace=1")
		out, err := cmd.CombinedOutput()
		require.NoError(t, err)
		for _, m := range initLine.FindAllStringSubmatch(string(out), -1) {
			ms, err := strconv.ParseFloat(m[2], 64)
			require.NoError(t, err)
			if was, known := least[m[1]]; !known || ms < was {
				least[m[1]] = ms
			}
		}
	}
	require.Contains(t, least, moduleName+"/harness/part", "the trace was read")
	for name, ms := range least {
		require.LessOrEqual(t, ms, 1.0, "init of %s", name)
	}
}
