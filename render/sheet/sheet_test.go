package sheet_test

import (
	"encoding/csv"
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"legwork/harness/shop"
	"legwork/render/sheet"
)

// sample is a table of both kinds of column with a gap in the numbers.
func sample() shop.Table {
	return shop.Table{
		Name: "sample", Title: "A sample", Notes: []string{"Read this first."},
		Columns: []shop.Column{
			{Key: "name", Name: "Name"},
			{Key: "volts", Name: "Volts", Unit: "V", Kind: shop.Number},
			{Key: "note", Name: "Note"},
		},
		Rows: [][]shop.Cell{
			{shop.Word("K1"), shop.Figure(12.346, 2), shop.Word("left")},
			{shop.Word("longer"), shop.Figure(-0.0001, 2), shop.Word("")},
			{shop.Word("J1"), shop.NoFigure("open", "floating"), shop.Word("x")},
		},
	}
}

func text(t *testing.T, table shop.Table) string {
	t.Helper()
	var b strings.Builder
	require.NoError(t, sheet.WriteText(&b, table))
	return b.String()
}

func TestText(t *testing.T) {
	require.Equal(t, `A sample
Read this first.

Name    Volts V  Note
------  -------  ----
K1        12.35  left
longer     0.00
J1         open  x
`, text(t, sample()))
}

// Wide characters take two columns, marks on another character none: the
// columns behind them stay in line.
func TestTextIsAlignedAsShown(t *testing.T) {
	table := shop.Table{
		Title:   "T",
		Columns: []shop.Column{{Key: "a", Name: "A"}, {Key: "b", Name: "B", Kind: shop.Number}},
		Rows: [][]shop.Cell{
			{shop.Word("電線"), shop.Figure(1, 0)},         // two wide characters: 4 columns
			{shop.Word("Cafe\u0301"), shop.Figure(2, 0)}, // e with a combining accent: 4 columns
			{shop.Word("abcd"), shop.Figure(30, 0)},
		},
	}
	require.Equal(t, []string{"A      B", "----  --", "電線   1", "Cafe\u0301   2", "abcd  30"}, sheet.Lines(table))
}

// Text of a draft can't hide or reorder what stands beside it.
func TestTextShowsWhatIsHidden(t *testing.T) {
	table := sample()
	table.Rows[0][0] = shop.Word("K\u202e1\x1b[2J\nX")
	table.Title = "T"
	got := text(t, table)
	require.NotContains(t, got, "\u202e")
	require.NotContains(t, got, "\x1b")
	require.Contains(t, got, "K<U+202E>1<U+001B>[2J X")
}

// A table that is too wide is parted into bands, each with the first column;
// joined again they are the table.
func TestBands(t *testing.T) {
	require.Len(t, sheet.Bands(sample(), 100), 1)
	bands := sheet.Bands(sample(), 16)
	require.Len(t, bands, 2)
	for _, b := range bands {
		require.Equal(t, "name", b.Columns[0].Key)
		for _, line := range sheet.Lines(b) {
			require.LessOrEqual(t, len(line), 16)
		}
	}
	require.Equal(t, "volts", bands[0].Columns[1].Key)
	require.Equal(t, "note", bands[1].Columns[1].Key)
	require.Len(t, sheet.Bands(sample(), 1), 2, "a band holds one column however narrow")
}

func csvOf(t *testing.T, table shop.Table, raw bool) [][]string {
	t.Helper()
	var b strings.Builder
	require.NoError(t, sheet.WriteCSV(&b, table, raw))
	rows, err := csv.NewReader(strings.NewReader(b.String())).ReadAll()
	require.NoError(t, err)
	return rows
}

func TestCSV(t *testing.T) {
	rows := csvOf(t, sample(), false)
	require.Equal(t, [][]string{
		{"name", "volts", "note"}, {"K1", "12.35", "left"}, {"longer", "0.00", ""}, {"J1", "open", "x"},
	}, rows)
}

// What a spreadsheet could run gets an apostrophe, unless raw is asked for;
// everything else, and everything in raw, comes back as it was.
func TestCSVRoundTrip(t *testing.T) {
	tricky := []string{
		"plain", "with, comma", `with "quotes"`, "two\nlines", "電線", "'quoted", "a=b", "1-2", "", " leading",
		"=1+1", "+1", "-1", "@x", "|x", "%x", " =1", "\t=1", "\u00a0=1", "\ufeff=1", "\u200b=1", "\r=1", "＝1",
	}
	const harmless = 10 // the first ones
	table := shop.Table{Columns: []shop.Column{{Key: "a", Name: "A"}, {Key: "n", Name: "N", Kind: shop.Number}}}
	for _, s := range tricky {
		table.Rows = append(table.Rows, []shop.Cell{shop.Word(s), shop.Figure(-1, 1)})
	}
	raw, safe := csvOf(t, table, true), csvOf(t, table, false)
	for i, s := range tricky {
		require.Equal(t, s, raw[i+1][0])
		require.Equal(t, "-1.0", raw[i+1][1])
		require.Equal(t, "-1.0", safe[i+1][1], "a negative number is a number")
		if i < harmless {
			require.Equal(t, s, safe[i+1][0])
		} else {
			require.Equal(t, "'"+s, safe[i+1][0], "%q", s)
		}
	}
}

func TestJSON(t *testing.T) {
	table := sample()
	table.Rows[0][1] = shop.Figure(12.5, 2)
	var b strings.Builder
	require.NoError(t, sheet.WriteJSON(&b, table))
	require.Equal(t, `{
  "name": "sample",
  "title": "A sample",
  "notes": [
    "Read this first."
  ],
  "columns": [
    {
      "key": "name",
      "name": "Name",
      "type": "text"
    },
    {
      "key": "volts",
      "name": "Volts",
      "unit": "V",
      "type": "number"
    },
    {
      "key": "note",
      "name": "Note",
      "type": "text"
    }
  ],
  "rows": [
    {
      "name": "K1",
      "note": "left",
      "volts": 12.50
    },
    {
      "name": "longer",
      "note": "",
      "volts": 0.00
    },
    {
      "name": "J1",
      "no_value": {
        "volts": "floating"
      },
      "note": "x",
      "volts": null
    }
  ]
}
`, b.String())
}

// An empty table has empty lists, never null; a number that is none is null.
func TestJSONIsAlwaysValid(t *testing.T) {
	var b strings.Builder
	require.NoError(t, sheet.WriteJSON(&b, shop.Table{Name: "x"}))
	require.NotContains(t, b.String(), "null")
	b.Reset()
	table := sample()
	table.Rows[0][1] = shop.Figure(math.NaN(), 2)
	table.Rows[1][1] = shop.Figure(math.Inf(1), 2)
	require.NoError(t, sheet.WriteJSON(&b, table))
	var got struct {
		Rows []struct{ Volts *float64 }
	}
	require.NoError(t, json.Unmarshal([]byte(b.String()), &got))
	require.Nil(t, got.Rows[0].Volts)
	require.Nil(t, got.Rows[1].Volts)
}

var errFull = errors.New("disk full")

type full struct{}

func (full) Write([]byte) (int, error) { return 0, errFull }

func TestWritersTellOfAFullDisk(t *testing.T) {
	require.ErrorIs(t, sheet.WriteText(full{}, sample()), errFull)
	require.ErrorIs(t, sheet.WriteCSV(full{}, sample(), false), errFull)
	require.ErrorIs(t, sheet.WriteJSON(full{}, sample()), errFull)
}
