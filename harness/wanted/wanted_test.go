package wanted

import (
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/diag"
)

func at(line int, rule, msg string) diag.Finding {
	return diag.Finding{Rule: rule, Severity: diag.Fault, At: diag.Span{File: "x", Line: line, Col: 1}, Msg: msg}
}

func TestRead(t *testing.T) {
	got, err := Read("fuse F1\nwire 1  # want loose-end \"ends at J1\" drop-over-limit \"loses\"\n# not a want\n")
	require.NoError(t, err)
	require.Equal(t, []Want{{2, "loose-end", "ends at J1"}, {2, "drop-over-limit", "loses"}}, got)
	_, err = Read("wire 1  # want loose-end\n")
	require.ErrorContains(t, err, "line 1")
	_, err = Read("wire 1  # want loose-end \"\"\n")
	require.Error(t, err, "an empty piece matches every message")
}

func TestCompareBothWays(t *testing.T) {
	wants := []Want{{2, "loose-end", "ends at J1"}}
	require.Empty(t, Compare(wants, diag.List{at(2, "loose-end", "wire 1 ends at J1")}))
	for name, found := range map[string]diag.List{
		"other line":    {at(3, "loose-end", "wire 1 ends at J1")},
		"other rule":    {at(2, "load-never-on", "wire 1 ends at J1")},
		"other message": {at(2, "loose-end", "wire 1 ends at J2")},
	} {
		require.Len(t, Compare(wants, found), 2, name)
	}
	require.Len(t, Compare(wants, nil), 1, "missing")
	require.Len(t, Compare(nil, diag.List{at(2, "loose-end", "x")}), 1, "surplus")
	twice := diag.List{at(2, "loose-end", "wire 1 ends at J1"), at(2, "loose-end", "wire 2 ends at J1")}
	require.Len(t, Compare(wants, twice), 1, "one want covers one finding")
}
