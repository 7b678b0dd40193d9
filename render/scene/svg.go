package scene

import (
	"io"
	"math"
	"strconv"
	"strings"
	"unicode/utf8"
)

// Fonts is the family list of every text. Widths are computed from the
// metrics of the first, which the next two share.
const Fonts = `"Liberation Sans",Arial,Helvetica,sans-serif`

// WriteSVG writes the scene as one SVG document without scripts, outside
// fonts, filters or variables. One user unit is one millimeter; figures are
// rounded to 0.01 mm. The same scene gives the same bytes.
func WriteSVG(w io.Writer, s *Scene) error {
	var b strings.Builder
	width, height := num(s.WidthMM), num(s.HeightMM)
	title, desc := s.Prefix+"title", s.Prefix+"desc"
	role := "img"
	if s.Interactive {
		role = "group"
	}
	b.WriteString(`<svg xmlns="http://www.w3.org/2000/svg"`)
	attr(&b, "class", "sheet")
	attr(&b, "width", width+"mm")
	attr(&b, "height", height+"mm")
	attr(&b, "viewBox", "0 0 "+width+" "+height)
	attr(&b, "role", role)
	attr(&b, "aria-labelledby", title+" "+desc)
	if s.Lang != "" {
		attr(&b, "lang", s.Lang)
	}
	b.WriteString(">\n<title")
	attr(&b, "id", title)
	b.WriteString(">" + Escape(s.Title) + "</title>\n<desc")
	attr(&b, "id", desc)
	b.WriteString(">" + Escape(s.Desc) + "</desc>\n<style>\ntext{font-family:" + Fonts + "}\n")
	writeStyles(&b, s.Styles)
	b.WriteString("</style>\n")
	for _, n := range s.Nodes {
		s.writeNode(&b, n)
	}
	b.WriteString("</svg>\n")
	_, err := io.WriteString(w, b.String())
	return err
}

func (s *Scene) writeNode(b *strings.Builder, n *Node) {
	name := element(n)
	b.WriteString("<" + name)
	if n.ID != "" {
		attr(b, "id", s.Prefix+n.ID)
	}
	if n.Class != "" {
		attr(b, "class", n.Class)
	}
	geometry(b, n)
	for _, a := range n.Data {
		attr(b, "data-"+a.Name, a.Value)
	}
	if s.focused(n) {
		attr(b, "tabindex", "0")
	}
	body := n.Title != "" || n.Shape == Group || n.Shape == Text
	if !body {
		b.WriteString("/>\n")
		return
	}
	b.WriteString(">")
	if n.Title != "" {
		b.WriteString("<title>" + Escape(n.Title) + "</title>")
	}
	b.WriteString(Escape(n.Text))
	for _, k := range n.Kids {
		s.writeNode(b, k)
	}
	b.WriteString("</" + name + ">\n")
}

func (s *Scene) focused(n *Node) bool {
	for _, c := range s.FocusClasses {
		if s.Interactive && hasWord(n.Class, c) {
			return true
		}
	}
	return false
}

// num prints a figure rounded to 0.01, without trailing zeros and without -0.
// What is not a number becomes 0, so that a fault upstream can't break the file.
func num(v float64) string {
	v = math.Round(v*100) / 100
	if v == 0 || math.IsNaN(v) || math.IsInf(v, 0) {
		return "0"
	}
	return strconv.FormatFloat(v, 'f', -1, 64)
}

func attr(b *strings.Builder, name, value string) {
	b.WriteString(" " + name + `="` + Escape(value) + `"`)
}

// Escape makes any text fit for XML: the five marks become entities, and
// characters that XML forbids become U+FFFD.
func Escape(s string) string {
	var b strings.Builder
	for _, r := range s {
		switch {
		case r == '&':
			b.WriteString("&amp;")
		case r == '<':
			b.WriteString("&lt;")
		case r == '>':
			b.WriteString("&gt;")
		case r == '"':
			b.WriteString("&quot;")
		case r == '\'':
			b.WriteString("&#39;")
		case !legal(r):
			b.WriteRune(utf8.RuneError)
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}

// legal follows the production Char of XML 1.0 (fifth edition), section 2.2;
// line ends are refused too, since no text of a drawing holds any.
func legal(r rune) bool {
	return r >= 0x20 && r <= 0xD7FF || r >= 0xE000 && r <= 0xFFFD || r >= 0x10000 && r <= 0x10FFFF
}
