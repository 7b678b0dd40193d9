package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/require"
)

// schemaOf compiles a schema that stands in a file of the project.
func schemaOf(t *testing.T, path string) *jsonschema.Schema {
	t.Helper()
	s, err := jsonschema.NewCompiler().Compile(filepath.Join(root, path))
	require.NoError(t, err)
	return s
}

func valid(s *jsonschema.Schema, text string) error {
	v, err := jsonschema.UnmarshalJSON(strings.NewReader(text))
	if err != nil {
		return err
	}
	return s.Validate(v)
}

// What check writes for other programs keeps its schema: that of SARIF 2.1.0
// as OASIS publishes it, and our own.
func TestOutputKeepsItsSchema(t *testing.T) {
	drafts, err := filepath.Glob(filepath.Join(root, "testdata", "*.draft"))
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(drafts), 12)
	broken := filepath.Join(t.TempDir(), "half #1.draft")
	require.NoError(t, os.WriteFile(broken, []byte("relay K1 col 85ohm\nwire 1 G1.+ K9.30\n"), 0o644))
	for format, path := range map[string]string{"sarif": "testdata/sarif-schema-2.1.0.json", "json": "docs/check.schema.json"} {
		schema := schemaOf(t, path)
		for _, name := range append(drafts, broken) {
			got := legwork(t, "check", name, "--format", format)
			require.LessOrEqual(t, got.code, exitFindings, name)
			require.NoError(t, valid(schema, got.out), "%s as %s", name, format)
		}
		require.Error(t, valid(schema, `{"version": "none", "runs": 1}`))
	}
}

func TestSarif(t *testing.T) {
	src := "battery G1 grounds-to frame\nmetal frame\nlamp P1 21W grounds-to frame\nwire 1 G1.+ P1.1\n    accept unprotected-wire \"bench test\"\n"
	got := legworkIn(t, src, "check", "-", "--format", "sarif")
	var log sarifLog
	require.NoError(t, json.Unmarshal([]byte(got.out), &log))
	require.Len(t, log.Runs, 1)
	list, rules := log.Runs[0].Results, log.Runs[0].Tool.Driver.Rules
	require.NotEmpty(t, list)
	last := list[len(list)-1]
	require.Equal(t, "unprotected-wire", last.RuleID)
	require.Equal(t, "unprotected-wire", rules[*last.RuleIndex].ID)
	require.Equal(t, "error", last.Level)
	require.Equal(t, []sarifSuppression{{"inSource", "bench test"}}, last.Suppressed)
	require.Equal(t, 4, last.Locations[0].Physical.Region.Line)
	require.Equal(t, "danger", last.Properties["severity"])
}

func TestOnlyAndSeverity(t *testing.T) {
	faulty := filepath.Join(root, "testdata", "orchard-truck-faults.draft")
	all := legwork(t, "check", faulty)
	one := legwork(t, "check", faulty, "--only", "fuse-above-wire", "--only", "crowded-stud")
	require.Contains(t, one.out, "[fuse-above-wire]")
	require.Contains(t, one.out, "[crowded-stud]")
	require.NotContains(t, one.out, "[pump-runs-when-stalled]")
	require.Contains(t, one.out, "Shown are findings of fuse-above-wire, crowded-stud alone")
	require.Equal(t, exitFindings, one.code)
	require.Zero(t, legwork(t, "check", faulty, "--only", "crowded-stud").code, "a warning passes")

	grave := legwork(t, "check", faulty, "--severity", "danger")
	require.NotContains(t, grave.out, ": fault: ")
	require.Equal(t, strings.Count(all.out, ": danger: "), strings.Count(grave.out, ": danger: "))

	wrong := legwork(t, "check", faulty, "--only", "fuse-abve-wire")
	require.Equal(t, exitUsage, wrong.code)
	require.Contains(t, wrong.err, "did you mean fuse-above-wire?")
	require.Contains(t, legworkIn(t, "relay K1 col 85ohm\n", "check", "-", "--only", "crowded-stud").out, "col", "mistakes are shown whatever is asked for")
}
