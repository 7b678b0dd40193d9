package harness_test

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness"
	"legwork/harness/diag"
	"legwork/harness/draft"
)

// Every part of the shipped shelf can be used, and its files are tidy.
func TestShelfIsSound(t *testing.T) {
	entries, err := os.ReadDir("../testdata/shelf")
	require.NoError(t, err)
	require.Len(t, entries, 3)
	use, parts := "include \"shelf/relays.draft\"\n", 0
	for _, e := range entries {
		src, err := os.ReadFile("../testdata/shelf/" + e.Name())
		require.NoError(t, err)
		f, found := draft.Parse(e.Name(), src)
		require.Empty(t, found)
		require.Equal(t, string(draft.Tidy(f)), string(src), e.Name())
		for _, s := range f.Stmts {
			kind, name := s.Item(0).Word(), s.Item(1).Text
			if s.Word() != "part" {
				continue
			}
			parts++
			switch kind {
			case "terminal":
				use += "splice J-" + name + " terminals " + name + "\n"
			case "seal":
				use += "splice J-" + name + " seals " + name + "\n"
			default:
				use += kind + " D-" + name + " part " + name + "\n"
			}
		}
	}
	require.Greater(t, parts, 35)
	d := besideShelf(t, "car.draft", use)
	require.Empty(t, d.Findings)
	require.Len(t, d.Model.Devices, parts)
}

// The shelf judges what is crimped into it: a 10 A fuse in a mini holder takes
// 14 AWG at most, and a sealed 2.8 mm plug wants the seal for it.
func TestShelfJudgesFit(t *testing.T) {
	d := besideShelf(t, "car.draft", strings.Join([]string{
		`include "shelf/relays.draft"`,
		"battery G1  grounds-to frame", "fuse F1  part mini-10  from G1 6in", "relay K1  part five-pin", "switch S1  closed",
		"lamp P1  5W  grounds-to frame", "connector X1  part plug-28-2way",
		"wire 1  G1.+  F1.1  12AWG  6in", "wire 2  F1.2  K1.3  1ft", "wire 3  K1.5  X1.plug.1  16AWG  GXL  1ft", "wire 4  X1.socket.1  P1.1  1ft",
		"wire 5  K1.1  S1.1  1ft", "wire 6  S1.2  F1.2  1ft", "stud E1  on frame  M6", "wire 7  K1.2  E1  1ft",
		`accept two-wires-in-cavity "test"`, "",
	}, "\n"))
	require.Less(t, d.Findings.Worst(), diag.Fault, "%v", d.Findings)
	r, err := d.Check(t.Context(), harness.Options{})
	require.NoError(t, err)
	var told []string
	for _, f := range r.Findings {
		if f.Rule == "terminal-does-not-fit" || f.Rule == "seal-does-not-fit" {
			told = append(told, f.Msg)
		}
	}
	require.Len(t, told, 1, "%v", told)
	require.Contains(t, told[0], "wire 1, 12 AWG, fits no terminal of F1.1")
}
