// Package scene is a flat drawing on paper: lines, areas and texts in
// millimeters, with classes, ids and data attributes, and the writer that
// turns it into SVG. It knows nothing of harnesses and is useful alone.
//
// The x axis runs to the right, the y axis down, the origin is the upper left
// corner of the sheet. Looks are data ([Style]), so that every writer draws
// the same picture.
package scene

// Point is a place on the sheet, mm.
type Point struct{ X, Y float64 }

// Attr is a data attribute: Name without the "data-" before it, in kebab case.
type Attr struct{ Name, Value string }

// Shape is what a node draws.
type Shape uint8

const (
	Group    Shape = iota // draws its Kids, in order
	Polyline              // open line through Points
	Polygon               // closed area with corners Points
	Rect                  // Points: two opposite corners; R rounds the corners
	Circle                // Points: center; R
	Arc                   // Points: from, to; R; Right: bulges to the right of the way
	Text                  // Points: anchor on the base line
)

// Anchor says which part of a text stands at its point.
type Anchor uint8

const (
	Start  Anchor = iota // the text begins there
	Middle               // the text is centered there
	End                  // the text ends there
)

// Node is one piece of a drawing, or a group of pieces.
type Node struct {
	Shape  Shape
	ID     string // unique in the scene, "" for none; make it with [ID]
	Class  string // names of styles, parted by blanks; later styles of the scene win
	Title  string // accessible name, shown by viewers as a hint
	Data   []Attr
	Points []Point
	R      float64 // mm
	Right  bool
	Text   string
	Anchor Anchor
	Kids   []*Node
}

// Scene is one sheet.
type Scene struct {
	Name         string // short word for ids and file names: "paths-1"
	Title        string // accessible name of the whole drawing
	Desc         string // what a reader who can't see it should know
	Lang         string // "en"
	WidthMM      float64
	HeightMM     float64
	Styles       []Style
	Nodes        []*Node
	Prefix       string // put before every id, so that several scenes fit into one page
	Interactive  bool   // root gets role="group" and nodes with Focus class can be reached by keyboard
	FocusClasses []string
}

// Add appends nodes to the group and gives it back.
func (n *Node) Add(kids ...*Node) *Node {
	n.Kids = append(n.Kids, kids...)
	return n
}

// Get gives the value of a data attribute, "" if the node has none of that name.
func (n *Node) Get(name string) string {
	for _, a := range n.Data {
		if a.Name == name {
			return a.Value
		}
	}
	return ""
}

// Walk calls visit for every node of the scene, groups before their kids.
func (s *Scene) Walk(visit func(*Node)) {
	for _, n := range s.Nodes {
		walk(n, visit)
	}
}

func walk(n *Node, visit func(*Node)) {
	visit(n)
	for _, k := range n.Kids {
		walk(k, visit)
	}
}
