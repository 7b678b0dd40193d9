package scene

import "strings"

// G makes a group.
func G(class string, kids ...*Node) *Node { return &Node{Class: class, Kids: kids} }

// Line makes an open line through the points given as x, y, x, y ...; an odd
// last figure is left out.
func Line(class string, xy ...float64) *Node {
	return &Node{Shape: Polyline, Class: class, Points: points(xy)}
}

// Area makes a closed area with the corners given as x, y, x, y ...
func Area(class string, xy ...float64) *Node {
	return &Node{Shape: Polygon, Class: class, Points: points(xy)}
}

// Frame makes a rectangle with corners (x1, y1) and (x2, y2).
func Frame(class string, x1, y1, x2, y2 float64) *Node {
	return &Node{Shape: Rect, Class: class, Points: []Point{{x1, y1}, {x2, y2}}}
}

// Ring makes a circle.
func Ring(class string, x, y, r float64) *Node {
	return &Node{Shape: Circle, Class: class, Points: []Point{{x, y}}, R: r}
}

// Bow makes a circular arc of radius r from one point to the other.
func Bow(class string, x1, y1, x2, y2, r float64, right bool) *Node {
	return &Node{Shape: Arc, Class: class, Points: []Point{{x1, y1}, {x2, y2}}, R: r, Right: right}
}

// Words makes a text with its anchor on the base line.
func Words(class string, x, y float64, at Anchor, text string) *Node {
	return &Node{Shape: Text, Class: class, Points: []Point{{x, y}}, Anchor: at, Text: text}
}

func points(xy []float64) []Point {
	p := make([]Point, 0, len(xy)/2)
	for i := 0; i+1 < len(xy); i += 2 {
		p = append(p, Point{xy[i], xy[i+1]})
	}
	return p
}

const hexDigits = "0123456789abcdef"

// ID joins a prefix and a user's name to an id that every reader of SVG and
// HTML takes. Letters, digits, dots and hyphens stay; any other byte becomes
// an underscore and two hex digits, so that different names never meet.
func ID(prefix, name string) string {
	var b strings.Builder
	b.WriteString(prefix)
	for i := range len(name) {
		c := name[i]
		plain := c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '.' || c == '-'
		if plain {
			b.WriteByte(c)
			continue
		}
		b.WriteByte('_')
		b.WriteByte(hexDigits[c>>4])
		b.WriteByte(hexDigits[c&15])
	}
	return b.String()
}
