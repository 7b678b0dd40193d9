package scene

import "strings"

// Style is the look of one class. Empty fields leave what an earlier style of
// the same node says.
type Style struct {
	Class   string
	Stroke  string // "#14181d", or "none"
	WidthMM float64
	Dash    []float64 // mm, line and gap in turn
	Round   bool      // round ends and corners
	Fill    string    // "#ffffff", or "none"; fill of areas, color of texts
	SizeMM  float64   // font size; the height of capitals is 0.716 of it
	Bold    bool
	Regular bool // takes back Bold
	Ghost   bool // not painted, but can be pointed at (an invisible wide line under a thin one)
}

// CapHeight is the height of capitals over the font size in the Liberation
// Sans family.
const CapHeight = 0.716

// Look gives the style that results for a node of the scene: the styles of
// its classes in the order in which the scene lists them.
func (s *Scene) Look(class string) Style {
	var out Style
	for _, st := range s.Styles {
		if hasWord(class, st.Class) {
			out = merge(out, st)
		}
	}
	return out
}

func hasWord(class, word string) bool {
	for w := range strings.FieldsSeq(class) {
		if w == word {
			return true
		}
	}
	return false
}

func merge(a, b Style) Style {
	if b.Stroke != "" {
		a.Stroke = b.Stroke
	}
	if b.WidthMM > 0 {
		a.WidthMM = b.WidthMM
	}
	if b.Dash != nil {
		a.Dash = b.Dash
	}
	if b.Fill != "" {
		a.Fill = b.Fill
	}
	if b.SizeMM > 0 {
		a.SizeMM = b.SizeMM
	}
	a.Bold = (a.Bold || b.Bold) && !b.Regular
	a.Round = a.Round || b.Round
	a.Ghost = a.Ghost || b.Ghost
	return a
}

func writeStyles(b *strings.Builder, styles []Style) {
	for _, st := range styles {
		b.WriteString("." + st.Class + "{")
		writeStyle(b, st)
		b.WriteString("}\n")
	}
}

func writeStyle(b *strings.Builder, st Style) {
	put := func(name, value string) {
		if value != "" && value != "0" {
			b.WriteString(name + ":" + value + ";")
		}
	}
	put("stroke", st.Stroke)
	put("stroke-width", num(st.WidthMM))
	if st.Dash != nil {
		parts := make([]string, len(st.Dash))
		for i, d := range st.Dash {
			parts[i] = num(d)
		}
		put("stroke-dasharray", strings.Join(parts, " "))
	}
	if st.Round {
		b.WriteString("stroke-linecap:round;stroke-linejoin:round;")
	}
	put("fill", st.Fill)
	if st.SizeMM > 0 {
		put("font-size", num(st.SizeMM)+"px")
	}
	if st.Bold {
		b.WriteString("font-weight:700;")
	}
	if st.Regular {
		b.WriteString("font-weight:400;")
	}
	if st.Ghost {
		b.WriteString("stroke-opacity:0;pointer-events:stroke;")
	}
}
