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
// GODEBUG=inittrace=1: its name, and what its init allocates.
var initLine = regexp.MustCompile(`(?m)^init (\S+) @\S+ ms, \S+ ms clock, (\d+) bytes, (\d+) allocs`)

// What an init may allocate. One that asks for ten thousand pieces takes more
// than the 1 ms that a package may take to start; time itself is measured, not
// tested, for a busy machine makes any of it long.
const (
	mostInitBytes  = 400_000
	mostInitAllocs = 2_000
)

// Every command starts with the init of every package.
func TestNoPackageIsSlowToStart(t *testing.T) {
	bin := filepath.Join(t.TempDir(), "legwork")
	out, err := exec.Command("go", "build", "-o", bin, moduleName+"/cmd/legwork").CombinedOutput()
	require.NoError(t, err, string(out))
	cmd := exec.Command(bin, "--help")
	cmd.Env = append(os.Environ(), "GODEBUG=inittrace=1")
	out, err = cmd.CombinedOutput()
	require.NoError(t, err)
	seen := map[string]bool{}
	for _, m := range initLine.FindAllStringSubmatch(string(out), -1) {
		seen[m[1]] = true
		for i, most := range []int{mostInitBytes, mostInitAllocs} {
			n, err := strconv.Atoi(m[2+i])
			require.NoError(t, err)
			require.LessOrEqual(t, n, most, "init of %s", m[1])
		}
	}
	require.True(t, seen[moduleName+"/harness/part"], "the trace was read")
}
