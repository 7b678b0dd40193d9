package shop_test

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/route"
	"legwork/harness/shop"
	"legwork/harness/size"
)

// source reads, routes and sizes a draft that must be without faults.
func source(t *testing.T, text string) shop.Source {
	t.Helper()
	f, found := draft.Parse("test.draft", []byte(text))
	m, more := model.Build(f)
	for x := range append(found, more...).AtLeast(diag.Fault) {
		require.Fail(t, x.String())
	}
	r := route.Measure(m)
	p, ok := gauge.ProfileOf("road")
	require.True(t, ok)
	s, err := size.Choose(t.Context(), m, r, p, part.Start{})
	require.NoError(t, err)
	return shop.Source{Model: m, Routes: r, Sizes: s}
}

func shipped(t *testing.T, name string) string {
	t.Helper()
	src, err := os.ReadFile("../../testdata/" + name)
	require.NoError(t, err)
	return string(src)
}

// column gives the index of a column by its key.
func column(t *testing.T, table shop.Table, key string) int {
	t.Helper()
	for i, c := range table.Columns {
		if c.Key == key {
			return i
		}
	}
	require.Fail(t, "no column "+key)
	return -1
}

// rowsOf gives the rows that hold a text in a column.
func rowsOf(t *testing.T, table shop.Table, key, text string) [][]shop.Cell {
	t.Helper()
	i := column(t, table, key)
	var rows [][]shop.Cell
	for _, r := range table.Rows {
		if r[i].Text == text {
			rows = append(rows, r)
		}
	}
	return rows
}

// cell gives one cell by the text of another column of its row.
func cell(t *testing.T, table shop.Table, key, text, want string) shop.Cell {
	t.Helper()
	rows := rowsOf(t, table, key, text)
	require.Len(t, rows, 1, "%s %s", key, text)
	return rows[0][column(t, table, want)]
}

// square checks what holds for every table: rows as wide as the heading, keys
// in snake case and single, numbers only in number columns.
func square(t *testing.T, table shop.Table) {
	t.Helper()
	keys := map[string]bool{}
	for _, c := range table.Columns {
		require.NotEmpty(t, c.Name)
		require.False(t, keys[c.Key], c.Key)
		require.Equal(t, strings.ToLower(c.Key), c.Key)
		require.NotContains(t, c.Key, " ")
		keys[c.Key] = true
	}
	require.NotEmpty(t, table.Rows)
	for _, r := range table.Rows {
		require.Len(t, r, len(table.Columns))
		for i, c := range r {
			require.False(t, c.IsNumber && table.Columns[i].Kind != shop.Number, "%v", c)
			require.False(t, !c.IsNumber && table.Columns[i].Kind == shop.Number && c.Reason == "", "%v has no reason", c)
		}
	}
}

func TestPapersOfShippedDraftsAreSquare(t *testing.T) {
	for _, name := range []string{"least.draft", "small.draft", "orchard-truck.draft"} {
		s := source(t, shipped(t, name))
		for _, p := range shop.Papers() {
			square(t, p.Make(s))
			got, ok := shop.PaperOf(p.Name)
			require.True(t, ok)
			require.Equal(t, p.Title, got.Title)
			require.Equal(t, p.Name, p.Make(s).Name)
		}
	}
	_, ok := shop.PaperOf("bill")
	require.False(t, ok)
}
