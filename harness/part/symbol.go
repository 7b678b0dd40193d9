package part

// Symbol is the drawing of a kind as data, on a grid of modules (2.5 mm),
// origin in the middle of the first column, y downwards. Package part needs no
// drawing code and the renderer needs no list of kinds.
type Symbol struct {
	Half    float64 // half height
	Columns int     // columns it takes
	Row     Row     // where it stands on a current-path sheet
	Pins    []SymbolPin
	Body    Box // outline that wires and texts keep clear of
	Strokes []Stroke
	// Parts is set where a device is drawn in several places (coil and contact);
	// then the fields above are unused.
	Parts []Symbol
	Name  string // names the part of a device: "coil", "contact"
}

// Row of a current-path sheet, from the supply down.
type Row uint8

// The rows, from the supply down.
const (
	FuseRow Row = iota + 1
	SwitchRow
	ConnectorRow
	LoadRow
	SensorRow
)

// SymbolPin is where a terminal sits. X counts modules; Col adds columns.
type SymbolPin struct {
	Name string
	Col  int
	X, Y float64
}

// Box is a rectangle; a coordinate of column c adds c pitches: X1 belongs to
// the first column, X2 to column Col2.
type Box struct {
	X1, Y1, X2, Y2 float64
	Col2           int
}

// StrokeKind is one way to draw.
type StrokeKind uint8

// The strokes; Points and the other fields mean what each says.
const (
	Thin StrokeKind = iota + 1 // thin polyline through Points
	Bold                       // thick polyline
	Dashed
	Rect   // Points: corner, size
	Unit   // dash-dot outline; Points: corner, opposite corner
	Circle // Points: center; R
	Dot    // Points: center; R
	Fill   // filled polygon
	Arc    // Points: from, to; R, Right: bulge
	Text   // Points: anchor; S
	Blade  // moving contact, drawn at rest
	Closed // the blade when closed, drawn only in a state view
)

// Point is a place in modules, with a column whose pitch is added to X.
type Point struct {
	X, Y float64
	Col  int
}

// Stroke is one piece of a symbol.
type Stroke struct {
	Kind   StrokeKind
	Points []Point
	R      float64
	Right  bool
	S      string
}
