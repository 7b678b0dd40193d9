package sheet

import (
	"encoding/csv"
	"io"
	"strings"
	"unicode"

	"legwork/harness/shop"
)

// WriteCSV writes a table as CSV: a heading row of column keys, then the rows.
// A spreadsheet runs a text that begins like a formula; such texts get an
// apostrophe in front, unless raw is asked for.
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

// formula reports whether a spreadsheet could take a text for a formula: it
// begins with a sign that starts one, also behind blanks and marks that are
// not seen, or in its full-width form.
func formula(s string) bool {
	for _, r := range s {
		if unicode.IsSpace(r) || unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zs) {
			continue
		}
		return strings.ContainsRune("=+-@|%＝＋－＠", r)
	}
	return false
}
