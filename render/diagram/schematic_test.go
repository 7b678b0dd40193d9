package diagram_test

import (
	"os"
	"strings"
	"testing"

	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/render/diagram"
	"legwork/render/scene"

	"github.com/stretchr/testify/require"
)

func build(t testing.TB, name, src string) *model.Model {
	t.Helper()
	f, _ := draft.Parse(name, []byte(src))
	m, _ := model.Build(f)
	require.NotNil(t, m)
	return m
}

func source(t testing.TB, name string) string {
	t.Helper()
	b, err := os.ReadFile("../../testdata/" + name)
	require.NoError(t, err)
	return string(b)
}

func draw(t testing.TB, m *model.Model) []diagram.Sheet {
	t.Helper()
	sheets, _ := diagram.Schematic(diagram.Input{Model: m, Title: diagram.Title{Customer: "(workshop)", Number: "LW-01-CP", Revision: "A", Date: "2026-01-15"}})
	require.NotEmpty(t, sheets)
	return sheets
}

func judged(t testing.TB, m *model.Model, sheets []diagram.Sheet) *report {
	t.Helper()
	r, err := judge(m, sheets)
	require.NoError(t, err)
	return r
}

// TestReadBack holds the sample drafts to every rule of the reader. The
// counts are a ratchet: what the layout reached, not to be exceeded.
func TestReadBack(t *testing.T) {
	for _, c := range []struct {
		draft        string
		sheets, cuts int
		bars         int
	}{
		{"least.draft", 1, 0, 0},
		{"small.draft", 1, 0, 2},
		{"orchard-truck.draft", 3, 0, 22},
	} {
		t.Run(c.draft, func(t *testing.T) {
			m := build(t, c.draft, source(t, c.draft))
			sheets := draw(t, m)
			r := judged(t, m, sheets)
			require.Empty(t, r.errors)
			require.Len(t, sheets, c.sheets)
			require.LessOrEqual(t, r.cuts, c.cuts, "wires cut for a boxed number")
			require.Zero(t, r.wireCrossings)
			require.LessOrEqual(t, r.barCrossings, c.bars, "wires across bars")
		})
	}
}

func TestSameInputSameBytes(t *testing.T) {
	write := func() string {
		var b strings.Builder
		for _, s := range draw(t, build(t, "o.draft", source(t, "orchard-truck.draft"))) {
			require.NoError(t, scene.WriteSVG(&b, s.Scene))
		}
		return b.String()
	}
	require.Equal(t, write(), write())
}
