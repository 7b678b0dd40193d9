package scene

import "strings"

var elements = [...]string{Group: "g", Polyline: "polyline", Polygon: "polygon", Rect: "rect", Circle: "circle", Arc: "path", Text: "text"}

func element(n *Node) string {
	if int(n.Shape) >= len(elements) {
		return "g"
	}
	if n.Shape == Polyline && len(n.Points) == 2 {
		return "line"
	}
	return elements[n.Shape]
}

// geometry writes the attributes that place the node. A node with too few
// points keeps none: it is well formed and invisible.
func geometry(b *strings.Builder, n *Node) {
	p := n.Points
	if len(p) == 0 {
		return
	}
	switch n.Shape {
	case Polyline, Polygon:
		line(b, n)
	case Rect:
		if len(p) > 1 {
			rect(b, n)
		}
	case Circle:
		attr(b, "cx", num(p[0].X))
		attr(b, "cy", num(p[0].Y))
		attr(b, "r", num(n.R))
	case Arc:
		if len(p) > 1 {
			sweep := "1"
			if n.Right {
				sweep = "0"
			}
			r := num(n.R)
			attr(b, "d", "M"+pair(p[0])+"A"+r+" "+r+" 0 0 "+sweep+" "+pair(p[1]))
		}
	case Text:
		attr(b, "x", num(p[0].X))
		attr(b, "y", num(p[0].Y))
		if n.Anchor != Start {
			attr(b, "text-anchor", [...]string{Middle: "middle", End: "end"}[n.Anchor])
		}
	}
}

func line(b *strings.Builder, n *Node) {
	p := n.Points
	if n.Shape == Polyline && len(p) == 2 {
		attr(b, "x1", num(p[0].X))
		attr(b, "y1", num(p[0].Y))
		attr(b, "x2", num(p[1].X))
		attr(b, "y2", num(p[1].Y))
		return
	}
	parts := make([]string, len(p))
	for i, q := range p {
		parts[i] = num(q.X) + "," + num(q.Y)
	}
	attr(b, "points", strings.Join(parts, " "))
}

func rect(b *strings.Builder, n *Node) {
	p := n.Points
	attr(b, "x", num(min(p[0].X, p[1].X)))
	attr(b, "y", num(min(p[0].Y, p[1].Y)))
	attr(b, "width", num(max(p[0].X, p[1].X)-min(p[0].X, p[1].X)))
	attr(b, "height", num(max(p[0].Y, p[1].Y)-min(p[0].Y, p[1].Y)))
	if n.R > 0 {
		attr(b, "rx", num(n.R))
	}
}

func pair(p Point) string { return num(p.X) + " " + num(p.Y) }
