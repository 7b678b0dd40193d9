package sheet

import (
	"encoding/json"
	"io"

	"legwork/harness/shop"
)

type jsonColumn struct {
	Key  string `json:"key"`
	Name string `json:"name"`
	Unit string `json:"unit,omitempty"`
}

type jsonTable struct {
	Name    string           `json:"name"`
	Title   string           `json:"title"`
	Notes   []string         `json:"notes"`
	Columns []jsonColumn     `json:"columns"`
	Rows    []map[string]any `json:"rows"`
}

// WriteJSON writes a table as one object; every row is an object by column
// key. A number column holds a number, or null where there is none to give.
func WriteJSON(w io.Writer, t shop.Table) error {
	out := jsonTable{Name: t.Name, Title: t.Title, Notes: append([]string{}, t.Notes...), Rows: []map[string]any{}}
	for _, c := range t.Columns {
		out.Columns = append(out.Columns, jsonColumn{c.Key, c.Name, c.Unit})
	}
	for _, r := range t.Rows {
		row := map[string]any{}
		for i, c := range r {
			row[t.Columns[i].Key] = jsonCell(t.Columns[i], c)
		}
		out.Rows = append(out.Rows, row)
	}
	enc := json.NewEncoder(w)
	enc.SetIndent("", "  ")
	return enc.Encode(out)
}

func jsonCell(col shop.Column, c shop.Cell) any {
	switch {
	case c.IsNumber:
		return json.Number(fixed(c))
	case col.Kind == shop.Number:
		return nil
	}
	return c.Text
}
