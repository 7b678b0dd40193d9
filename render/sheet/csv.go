package sheet

import (
	"encoding/csv"
	"io"
	"strings"

	"legwork/harness/shop"
)

// WriteCSV writes a table as CSV with one heading row. A spreadsheet runs a
// text that begins like a formula; such texts get an apostrophe in front,
// unless raw is asked for.
func WriteCSV(w io.Writer, t shop.Table, raw bool) error {
	out := csv.NewWriter(w)
	var head []string
	for _, c := range t.Columns {
		head = append(head, c.Key)
	}
	if err := out.Write(head); err != nil {
		return err
	}
	for _, r := range t.Rows {
		line := make([]string, len(r))
		for i, c := range r {
			line[i] = csvText(c, raw)
		}
		if err := out.Write(line); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

func csvText(c shop.Cell, raw bool) string {
	if c.IsNumber {
		return fixed(c)
	}
	if raw || !formula(c.Text) {
		return c.Text
	}
	return "'" + c.Text
}

// formula reports whether a spreadsheet could take a text for a formula.
func formula(s string) bool {
	s = strings.TrimLeft(s, " \t\r\n\u00a0\ufeff")
	return s != "" && strings.ContainsRune("=+-@|%", rune(s[0]))
}
