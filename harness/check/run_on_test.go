package check_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
	"legwork/harness/wanted"
)

// Every published cause of an engine that runs on, and every way in which a
// machine or a lamp feeds backwards, is a draft that is caught, and beside it
// the same put right, of which nothing is said but notes (common practice in
// the trade's fault lists; the drafts are invented).
func TestRunsOn(t *testing.T) {
	for _, name := range []string{
		"exciter", "jumper", "fan", "main-switch", "relay-held", "second-feed", "tell-tale", "starter",
	} {
		t.Run(name, func(t *testing.T) {
			src := runOnDraft(t, name)
			wants, err := wanted.Read(src)
			require.NoError(t, err)
			require.NotEmpty(t, wants)
			var found diag.List
			for _, f := range checked(t, name, src).Findings {
				if f.Severity >= diag.Warning {
					found.Add(f)
				}
			}
			require.Empty(t, wanted.Compare(wants, found), "%s", strings.Join(wanted.Compare(wants, found), "\n"))
			for _, f := range checked(t, name, runOnDraft(t, name+"-cured")).Findings {
				require.Less(t, f.Severity, diag.Warning, "cured: %s", f)
			}
		})
	}
}

func runOnDraft(t *testing.T, name string) string {
	t.Helper()
	src, err := os.ReadFile(filepath.Join("testdata", "run-on", name+".draft"))
	require.NoError(t, err)
	tidy(t, string(src))
	return string(src)
}

// A motor that shares its feed with a coil, and of which the draft does not
// say what it gives back, is told as not judged; with the figures it is not.
func TestMotorWithoutFiguresIsNotJudged(t *testing.T) {
	with := runOnDraft(t, "fan")
	told := func(src string) bool {
		for _, s := range checked(t, "fan", src).Skipped {
			if s.Rule == "alive-with-key-off" && strings.HasPrefix(s.Reason, "M2 while running down") {
				return true
			}
		}
		return false
	}
	require.False(t, told(with))
	without := strings.Replace(with, "coasts 70% 0.4ohm", "", 1)
	require.NotEqual(t, with, without)
	require.True(t, told(without))
}
