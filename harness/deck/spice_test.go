package deck

import (
	"bytes"
	"context"
	"encoding/binary"
	"errors"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
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

// simulate runs the operating point of many decks, and once more, with an aid to
// convergence, of those for which the simulator found none straight away.
func simulate(t *testing.T, path string, decks []string) []answer {
	t.Helper()
	answers := batch(t, path, decks, "option gminsteps=0\noption srcsteps=0\n")
	var hard []string
	var at []int
	for i, a := range answers {
		if !a.found() {
			hard, at = append(hard, decks[i]), append(at, i)
		}
	}
	for i, a := range batch(t, path, hard, "option gminsteps=0\n") {
		answers[at[i]] = a
	}
	return answers
}

// batch shares decks out to two processes, many decks to each: to start one for
// every deck would take most of the time.
func batch(t *testing.T, path string, decks []string, setup string) []answer {
	t.Helper()
	answers := make([]answer, len(decks))
	half := len(decks) / 2
	dirs := [2]string{t.TempDir(), t.TempDir()}
	var errs [2]error
	var both sync.WaitGroup
	for i, r := range [2][2]int{{0, half}, {half, len(decks)}} {
		if r[0] < r[1] {
			both.Go(func() { errs[i] = runAll(t.Context(), path, dirs[i], decks[r[0]:r[1]], setup, answers[r[0]:r[1]]) })
		}
	}
	both.Wait()
	require.NoError(t, errors.Join(errs[:]...))
	return answers
}

// runAll runs the simulator once, in a folder of its own. Its last resort, a
// search in time, is left out: it takes long, and finds nothing here.
func runAll(ctx context.Context, path, dir string, decks []string, setup string, answers []answer) error {
	var batch strings.Builder
	batch.WriteString("* all decks in one process\n.control\nset filetype=binary\noptran 0 0 0 0 0 0\n" + setup)
	for i, d := range decks {
		if err := os.WriteFile(filepath.Join(dir, fmt.Sprintf("d%d.cir", i)), []byte(d), 0o644); err != nil {
			return err
		}
		fmt.Fprintf(&batch, "source d%d.cir\nop\nwrite d%d.raw all\ndestroy all\nremcirc\n", i, i)
	}
	batch.WriteString("quit 0\n.endc\n.end\n")
	if err := os.WriteFile(filepath.Join(dir, "batch.cir"), []byte(batch.String()), 0o644); err != nil {
		return err
	}
	cmd := exec.CommandContext(ctx, path, "-b", "batch.cir")
	cmd.Dir = dir
	said, err := cmd.CombinedOutput()
	var exit *exec.ExitError // says 1 for good and bad runs alike
	if err != nil && !errors.As(err, &exit) {
		return fmt.Errorf("%w: %s", err, said)
	}
	for i := range decks {
		raw, err := os.ReadFile(filepath.Join(dir, fmt.Sprintf("d%d.raw", i)))
		if err != nil {
			continue // no operating point
		}
		if answers[i].volts, err = readRaw(raw); err != nil {
			return err
		}
	}
	return nil
}

// readRaw reads the node voltages of an operating point: a header in lines,
// then one float64 for each variable.
func readRaw(raw []byte) (map[string]float64, error) {
	head, data, ok := bytes.Cut(raw, []byte("\nBinary:\n"))
	if !ok || !bytes.Contains(head, []byte("Plotname: Operating Point")) {
		return nil, fmt.Errorf("not an operating point: %s", head)
	}
	_, list, _ := strings.Cut(string(head), "Variables:\n")
	volts := map[string]float64{"0": 0}
	for i, line := range strings.Split(strings.TrimSpace(list), "\n") {
		f := strings.Fields(line)
		if len(data) < 8*i+8 {
			return nil, fmt.Errorf("cut short: %s", head)
		}
		if name, ok := strings.CutPrefix(f[1], "v("); ok {
			volts[strings.TrimSuffix(name, ")")] = math.Float64frombits(binary.LittleEndian.Uint64(data[8*i:]))
		}
	}
	return volts, nil
}
