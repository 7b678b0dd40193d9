package diagram

import (
	"path"
	"strings"

	"legwork/harness/model"
	"legwork/render/scene"
)

// Blank is an empty sheet with its frame and title block, for other drawings
// of a harness than the schematic. All lengths are in mm.
type Blank struct {
	Name              string // "A3"
	WidthMM, HeightMM float64
	Room              scene.Box // for the drawing
	Notes             scene.Box // for the legend
	paper             paper
}

// Heading is what a title block says.
type Heading struct {
	Title         Title
	Kind          string // document type
	Name          string // of the harness
	Extra         string // supplementary title; a second line after a line feed
	Sheet, Sheets int
}

// Blanks gives the sheets of a paper of [Papers], smallest first; those of
// DefaultPaper for any other name.
func Blanks(name string) []Blank {
	var out []Blank
	for _, s := range papersFor(name) {
		right, bottom := s.legendBox()
		const inset = band + 1
		out = append(out, Blank{
			Name: s.name, WidthMM: s.w, HeightMM: s.h, paper: s,
			Room:  scene.Box{X1: s.left + inset, Y1: s.margin + inset, X2: s.w - s.margin - inset, Y2: s.legendY() - 2},
			Notes: scene.Box{X1: s.left + 2, Y1: s.legendY(), X2: right, Y2: bottom},
		})
	}
	return out
}

// Border draws the frame of the sheet and its title block.
func (b Blank) Border(h Heading) *scene.Node {
	h.Extra = strings.TrimSpace(h.Extra)
	return scene.G("frame", b.paper.border()...).Add(b.paper.titleBlock(h))
}

// Styles are the looks that the drawings of a harness share: paper, texts,
// lines, and for each color letter a stroke class of "c" and the letters.
func Styles() []scene.Style { return styles() }

// Paints gives the color letters that the insulation of a wire and its tracer
// are painted with, "" for no tracer.
func Paints(w *model.Wire) (base, tracer string) { return paintsOf(w) }

// FillOf is the shade of color letters, "#1b1b1b".
func FillOf(letters string) string { return colorPaint[paintOf(letters)] }

// NameOf is the harness's title, or else the name of its draft.
func NameOf(m *model.Model) string {
	if m.Title != "" {
		return m.Title
	}
	return strings.TrimSuffix(path.Base(m.File), ".draft")
}

// WithOptions adds to a supplementary title which options are drawn and which
// are left out, on a second line.
func WithOptions(m *model.Model, extra string) string {
	if s := fitting(m); s != "" {
		extra += "\n" + s
	}
	return extra
}

// fitting says which options the drawing has and which it leaves out.
func fitting(m *model.Model) string {
	var with, without []string
	for _, o := range m.Options {
		if o.Fitted {
			with = append(with, o.Name)
		} else {
			without = append(without, o.Name)
		}
	}
	var out []string
	if len(with) > 0 {
		out = append(out, "with "+strings.Join(with, ", "))
	}
	if len(without) > 0 {
		out = append(out, "without "+strings.Join(without, ", "))
	}
	if len(out) == 0 {
		return ""
	}
	return "Options: " + strings.Join(out, "; ")
}
