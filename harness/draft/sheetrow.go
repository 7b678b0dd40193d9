package draft

import "strings"

// leastCells is how many separators make a line a row of a spreadsheet.
const leastCells = 3

// sheetRow answers a line that was pasted from a spreadsheet, once: its cells
// are parted by commas, semicolons or bars instead of blanks.
func (l *line) sheetRow() bool {
	s := strings.Trim(l.s, " \t")
	if s == "" || s[0] == '#' {
		return false
	}
	bare := withoutQuoted(s)
	for _, sign := range []string{",", ";", "|"} {
		bars := sign == "|" && strings.HasPrefix(s, "|")
		if strings.Count(bare, sign) < leastCells || !bars && strings.ContainsAny(bare, " \t") {
			continue
		}
		from := strings.Index(l.s, s)
		l.fault(from, from+len(s), `this looks like a row of a spreadsheet: part its cells by blanks, not by "`+sign+`", and begin it with wire`)
		return true
	}
	return false
}

// withoutQuoted takes the texts between double quotes out.
func withoutQuoted(s string) string {
	var b strings.Builder
	for i, piece := range strings.Split(s, `"`) {
		if i%2 == 0 {
			b.WriteString(piece)
		}
	}
	return b.String()
}
