package main

import (
	"encoding/csv"
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// report reads the parts of check's JSON that papers are held against.
type reportJSON struct {
	Wires []struct {
		Number, From, To, Size string
		LengthM                float64 `json:"length_m"`
	}
	Steps []struct {
		Name      string
		Terminals map[string]*float64
		Floating  map[string]string
	}
}

type tableJSON struct {
	Name, Title string
	Notes       []string
	Columns     []struct{ Key, Name, Unit, Type string }
	Rows        []map[string]any
}

func readJSON[T any](t *testing.T, args ...string) T {
	t.Helper()
	got := legwork(t, args...)
	require.Equal(t, exitClean, got.code, got.err)
	var v T
	require.NoError(t, json.Unmarshal([]byte(got.out), &v))
	return v
}

// The volts sheet and the report of the check show the same volts, step by
// step, to the digits of the sheet; where one is silent, so is the other.
func TestVoltsSheetAgreesWithTheReport(t *testing.T) {
	workshop(t)
	for _, name := range faultless {
		r := readJSON[reportJSON](t, "check", name, "--format", "json")
		sheet := readJSON[tableJSON](t, "list", name, "volts", "--format", "json")
		columns := map[string]bool{}
		for _, c := range sheet.Columns {
			columns[c.Key] = true
		}
		compared := 0
		for _, row := range sheet.Rows {
			terminal := row["terminal"].(string)
			for _, st := range r.Steps {
				if !columns[st.Name] {
					require.Contains(t, strings.Join(sheet.Notes, " "), st.Name+" as ", name)
					continue
				}
				volts, known := st.Terminals[terminal]
				require.True(t, known, terminal)
				if volts == nil {
					require.Nil(t, row[st.Name])
					require.Equal(t, st.Floating[terminal], row["no_value"].(map[string]any)[st.Name])
					continue
				}
				require.InDelta(t, *volts, row[st.Name], 0.005+1e-9, "%s in %s", terminal, st.Name)
				compared++
			}
		}
		require.Greater(t, compared, 20, name)
	}
}

// The cut list shows the ends and sizes of the report, and no wire is cut
// shorter than it lies in the harness.
func TestCutListAgreesWithTheReport(t *testing.T) {
	workshop(t)
	r := readJSON[reportJSON](t, "check", "orchard-truck.draft", "--format", "json")
	rows := map[string]map[string]any{}
	for _, row := range readJSON[tableJSON](t, "list", "orchard-truck.draft", "cut", "--format", "json").Rows {
		rows[row["number"].(string)] = row
	}
	require.Len(t, rows, len(r.Wires))
	for _, w := range r.Wires {
		row := rows[w.Number]
		require.Equal(t, []any{w.From, w.To, w.Size}, []any{row["from"], row["to"], row["size"]}, w.Number)
		short, long := w.LengthM/0.0254, w.LengthM/0.0254+48/25.4+0.5
		require.GreaterOrEqual(t, row["cut_in"], short-1e-6, w.Number)
		require.LessOrEqual(t, row["cut_in"], long+1e-6, w.Number)
	}
}

func TestEveryPaperInEveryForm(t *testing.T) {
	workshop(t)
	for _, name := range []string{"cut", "spools", "pins", "volts"} {
		text := legwork(t, "list", "small.draft", name)
		require.Equal(t, exitClean, text.code, text.err)
		table := readJSON[tableJSON](t, "list", "small.draft", name, "--format", "json")
		require.Equal(t, name, table.Name)
		require.True(t, strings.HasPrefix(text.out, table.Title+"\n"))
		for _, note := range table.Notes {
			require.Contains(t, text.out, note)
		}
		rows, err := csv.NewReader(strings.NewReader(legwork(t, "list", "small.draft", name, "--format", "csv").out)).ReadAll()
		require.NoError(t, err)
		require.Len(t, rows, 1+len(table.Rows))
		for i, c := range table.Columns {
			require.Equal(t, c.Key, rows[0][i])
			for _, row := range table.Rows {
				_, number := row[c.Key].(float64)
				require.Equal(t, c.Type == "number", number || row[c.Key] == nil, "%s: %v", c.Key, row[c.Key])
			}
		}
	}
}

// A label that a spreadsheet could run is defused, unless raw is asked for.
func TestCSVOfAHostileLabel(t *testing.T) {
	workshop(t)
	text := strings.Replace(get(t, "small.draft"), `"Lift pump"`, `"=cmd()"`, 1)
	require.NotEqual(t, get(t, "small.draft"), text)
	require.Contains(t, legworkIn(t, text, "list", "-", "pins", "--format", "csv").out, ",'=cmd(),")
	require.Contains(t, legworkIn(t, text, "list", "-", "pins", "--format", "csv", "--raw").out, ",=cmd(),")
}
