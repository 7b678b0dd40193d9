package deck

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// simulator gives the path of the circuit simulator that judges the model, ""
// where there is none. Under CI there has to be one.
func simulator(t *testing.T) string {
	t.Helper()
	path, err := exec.LookPath("ngspice")
	if err == nil {
		return path
	}
	require.NotEqual(t, "true", os.Getenv("CI"), "CI has to run the circuit simulator: %v", err)
	return ""
}

// answer is what the simulator found for one deck: volts by node name, or
// nothing where it found no operating point.
type answer struct {
	volts map[string]float64
}

func (a answer) found() bool { return a.volts != nil }

// simulate runs the operating point of many decks in one process, and once
// more, with every aid to convergence that the simulator has, of those for
// which it found none straight away.
func simulate(t *testing.T, path string, decks []string) []answer {
	t.Helper()
	answers := runBatch(t, path, decks, "option gminsteps=0\noption srcsteps=0\noptran 0 0 0 0 0 0\n")
	var hard []string
	var at []int
	for i, a := range answers {
		if !a.found() {
			hard, at = append(hard, decks[i]), append(at, i)
		}
	}
	if len(hard) > 0 {
		for i, a := range runBatch(t, path, hard, "option gminsteps=0\noptran 0 0 0 0 0 0\n") {
			answers[at[i]] = a
		}
	}
	return answers
}

func runBatch(t *testing.T, path string, decks []string, setup string) []answer {
	t.Helper()
	dir := t.TempDir()
	var batch strings.Builder
	batch.WriteString("* all decks in one process\n.control\nset filetype=binary\n" + setup)
	for i, d := range decks {
		require.NoError(t, os.WriteFile(filepath.Join(dir, fmt.Sprintf("d%d.cir", i)), []byte(d), 0o644))
		fmt.Fprintf(&batch, "source d%d.cir\nop\nwrite d%d.raw all\ndestroy all\nremcirc\n", i, i)
	}
	batch.WriteString("quit 0\n.endc\n.end\n")
	require.NoError(t, os.WriteFile(filepath.Join(dir, "batch.cir"), []byte(batch.String()), 0o644))
	cmd := exec.CommandContext(t.Context(), path, "-b", "batch.cir")
	cmd.Dir = dir
	said, err := cmd.CombinedOutput()
	var exit *exec.ExitError
	require.True(t, err == nil || errors.As(err, &exit), "%v: %s", err, said)
	answers := make([]answer, len(decks))
	for i := range decks {
		raw, err := os.ReadFile(filepath.Join(dir, fmt.Sprintf("d%d.raw", i)))
		if err == nil {
			answers[i].volts = readRaw(t, raw)
		}
	}
	return answers
}

// readRaw reads the node voltages of an operating point: a header in lines,
// then one float64 for each variable.
func readRaw(t *testing.T, raw []byte) map[string]float64 {
	t.Helper()
	head, data, ok := bytes.Cut(raw, []byte("\nBinary:\n"))
	require.True(t, ok && bytes.Contains(head, []byte("Plotname: Operating Point")), "%s", head)
	_, list, _ := strings.Cut(string(head), "Variables:\n")
	volts := map[string]float64{"0": 0}
	for i, line := range strings.Split(strings.TrimSpace(list), "\n") {
		f := strings.Fields(line)
		if name, ok := strings.CutPrefix(f[1], "v("); ok {
			volts[strings.TrimSuffix(name, ")")] = math.Float64frombits(binary.LittleEndian.Uint64(data[8*i:]))
		}
	}
	return volts
}
