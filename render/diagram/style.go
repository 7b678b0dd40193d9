package diagram

import "legwork/render/scene"

// Measures of the drawing, mm.
const (
	module = 2.5 // grid of the symbols

	sizeTiny  = 2.1 // field labels of the title block only
	sizeSmall = 2.5 // wire data, pin names, captions: capitals 1.8 high
	sizeName  = 3.5 // designations, path numbers, section titles
	sizeLarge = 4.9 // sheet title, letters in symbols

	termR    = 0.65 // terminal circle
	casing   = 0.3  // dark edge of a wire, both sides together
	haloMM   = 1.4  // white beside a wire that crosses a bar, both sides together
	railMM   = 1.4
	barMM    = 0.7
	tapMM    = 1.15 // least dot on a rail: seen beside its width
	labelGap = 1.0  // from the edge of a wire to its label
)

const (
	ink   = "#14181d"
	muted = "#59636e"
	tint  = "#f4f6f8"
	white = "#ffffff"
)

// colorPaint gives the paint of each color letter that a draft may use: those
// of IEC 60757, and TN, tan, that shops write. The shades are our own; letters
// at each wire say the same. GNYE is drawn as green with yellow.
var colorPaint = map[string]string{
	"BK": "#1b1b1b", "BN": "#7a4a24", "RD": "#d7261e", "OG": "#f5821f", "YE": "#f6cf1b", "GN": "#1f9a4c", "BU": "#1d5fc4",
	"VT": "#7b3fb0", "GY": "#8f989f", "WH": "#ffffff", "PK": "#f39ab5", "TQ": "#27b3b3",
	"TN": "#cda873", "GD": "#b08d1e", "SR": "#c3c9ce",
}

var colorOrder = []string{"BK", "BN", "RD", "OG", "YE", "GN", "BU", "VT", "GY", "WH", "PK", "TQ", "TN", "GD", "SR"}

// strokes are the widths of insulation by cross-section: common practice of
// drawing thick cables thick, the steps are our own.
var strokes = []struct{ upToMM2, widthMM float64 }{{1.2, 0.8}, {2.9, 1.1}, {7, 1.5}, {20, 2.2}, {1e9, 3.0}}

// strokeOf gives the stroke class and width of a cross-section; 0 is unknown
// and drawn thin.
func strokeOf(areaMM2 float64) (class int, widthMM float64) {
	for i, s := range strokes {
		if areaMM2 <= s.upToMM2 {
			return i, s.widthMM
		}
	}
	return 0, strokes[0].widthMM
}

func styles() []scene.Style {
	out := []scene.Style{
		{Class: "paper", Fill: white}, {Class: "sec", Fill: tint},
		{Class: "t", Fill: ink, SizeMM: sizeSmall}, {Class: "t1", SizeMM: sizeTiny}, {Class: "t3", SizeMM: sizeName}, {Class: "t4", SizeMM: sizeLarge},
		{Class: "b", Bold: true}, {Class: "mut", Fill: muted}, {Class: "inv", Fill: white},
		{Class: "l18", Stroke: ink, WidthMM: 0.18, Fill: "none"}, {Class: "l25", Stroke: ink, WidthMM: 0.25, Fill: "none"},
		{Class: "l70", Stroke: ink, WidthMM: 0.7, Fill: "none"}, {Class: "l140", Stroke: ink, WidthMM: 1.4, Fill: "none"},
		{Class: "sy", Stroke: ink, WidthMM: 0.35, Fill: "none", Round: true},
		{Class: "syb", Stroke: ink, WidthMM: 0.7, Fill: "none", Round: true},
		{Class: "syw", Stroke: ink, WidthMM: 0.35, Fill: white, Round: true},
		{Class: "syf", Stroke: "none", Fill: ink},
		{Class: "link", Stroke: ink, WidthMM: 0.25, Dash: []float64{1.25, 0.8}, Fill: "none"},
		{Class: "ring", Stroke: ink, WidthMM: 0.25, Fill: "none"},
		{Class: "unit", Stroke: ink, WidthMM: 0.25, Dash: []float64{4, 0.8, 0.8, 0.8}, Fill: white},
		{Class: "box-fill", Stroke: "none", Fill: white},
		{Class: "tg", SizeMM: 3},
		{Class: "box", Stroke: ink, WidthMM: 0.35, Fill: white},
		{Class: "term", Stroke: ink, WidthMM: 0.3, Fill: white},
		{Class: "rail", Stroke: ink, WidthMM: railMM, Fill: "none"}, {Class: "bar", Stroke: ink, WidthMM: barMM, Fill: "none"},
		{Class: "metal", Stroke: ink, WidthMM: railMM, Fill: "none"},
		{Class: "dot", Stroke: "none", Fill: ink}, {Class: "tag", Stroke: "none", Fill: ink},
		{Class: "halo", Stroke: white, Fill: "none"}, {Class: "case", Stroke: ink, Fill: "none"},
		{Class: "ins", Fill: "none"}, {Class: "tr", Fill: "none", Dash: []float64{2.6, 1.5}},
		{Class: "hit", Stroke: "#000000", Fill: "none", WidthMM: 4, Ghost: true},
	}
	for _, c := range colorOrder {
		out = append(out, scene.Style{Class: "c" + c, Stroke: colorPaint[c]})
	}
	for i, s := range strokes {
		n := string(rune('0' + i))
		out = append(out,
			scene.Style{Class: "h" + n, WidthMM: s.widthMM + haloMM}, scene.Style{Class: "k" + n, WidthMM: s.widthMM + casing},
			scene.Style{Class: "w" + n, WidthMM: s.widthMM}, scene.Style{Class: "r" + n, WidthMM: s.widthMM * 0.42})
	}
	out = append(out, scene.Style{Class: "ex", Dash: []float64{4, 1.6}}, scene.Style{Class: "exs", Dash: []float64{1.1, 0.7}})
	return append(out, scene.Style{Class: "hthin", WidthMM: 0.35 + haloMM})
}
