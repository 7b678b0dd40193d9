package sheet

import (
	"encoding/json"
	"io"
	"math"

	"legwork/harness/shop"
)

type jsonColumn struct {
	Key  string `json:"key"`
	Name string `json:"name"`
	Unit string `json:"unit,omitempty"`
	Type string `json:"type"` // text or number
}

type jsonTable struct {
	Name    string           `json:"name"`
	Title   string           `json:"title"`
	Notes   []string         `json:"notes"`
	Columns []jsonColumn     `json:"columns"`
	Rows    []map[string]any `json:"rows"`
}

// reasonsKey is the key of a row under which the reasons stand for the numbers
// that it lacks. No column has this key.
const reasonsKey = "no_value"

// WriteJSON writes a table as one object; every row is an object by column
// key. A number column holds a number, or null where there is none to give:
// the row's "no_value" then says why, by column key.
func WriteJSON(w io.Writer, t shop.Table) error {
	out := jsonTable{Name: t.Name, Title: t.Title, Notes: append([]string{}, t.Notes...), Columns: []jsonColumn{}, Rows: []map[string]any{}}
	for _, c := range t.Columns {
		out.Columns = append(out.Columns, jsonColumn{c.Key, c.Name, c.Unit, typeOf(c)})
	}
	for _, r := range t.Rows {
		out.Rows = append(out.Rows, jsonRow(t, r))
	}
	enc := json.NewEncoder(w)
	enc.SetIndent("", "  ")
	enc.SetEscapeHTML(false)
	return enc.Encode(out)
}

func typeOf(c shop.Column) string {
	if c.Kind == shop.Number {
		return "number"
	}
	return "text"
}

func jsonRow(t shop.Table, cells []shop.Cell) map[string]any {
	row := map[string]any{}
	reasons := map[string]string{}
	for i, c := range cells {
		col := t.Columns[i]
		row[col.Key] = jsonCell(col, c)
		if c.Reason != "" {
			reasons[col.Key] = c.Reason
		}
	}
	if len(reasons) > 0 {
		row[reasonsKey] = reasons
	}
	return row
}

func jsonCell(col shop.Column, c shop.Cell) any {
	switch {
	case c.IsNumber && (math.IsNaN(c.Number) || math.IsInf(c.Number, 0)):
		return nil // JSON has no word for it
	case c.IsNumber:
		return json.Number(fixed(c))
	case col.Kind == shop.Number:
		return nil
	}
	return c.Text
}
