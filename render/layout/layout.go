// Package layout draws the harness as it lies: a tree of places, joined by
// legs that are drawn to length, with what sits at each place listed beside it.
//
// Legs that close a loop are drawn as two stubs with one letter. Where the
// sheet has no room beside a place for what sits there, the list of it goes to
// a further sheet. No text lies over a leg, a symbol or another text.
package layout

import (
	"fmt"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/render/diagram"
	"legwork/render/scene"
)

// Draw draws the layout of a harness. A draft without legs has none: the
// finding says so, and there is no sheet. The result depends on nothing but
// the input; without routes no wires are counted, without sizes no bundle has
// a diameter.
func Draw(in diagram.Input) ([]diagram.Sheet, diag.List) {
	if in.Model == nil {
		return nil, nil
	}
	if len(in.Model.Legs) == 0 {
		return nil, diag.List{{
			Rule: "no-legs", Severity: diag.Note,
			Msg: "the draft has no legs, so there is no layout to draw; say place and leg lines",
		}}
	}
	p := &plan{in: in, m: in.Model, shapes: map[float64]*shape{}}
	p.grow()
	p.weigh()
	p.gather()
	p.fit()
	return p.sheets(), nil
}

// plan is a layout in the making.
type plan struct {
	in    diagram.Input
	m     *model.Model
	tree  tree
	loads []load // by leg ID
	cards []*card
	best  *attempt

	shapes map[float64]*shape // by mm for 1 m
}

// sheets paints the best attempt, and what had no room on it.
func (p *plan) sheets() []diagram.Sheet {
	a := p.best
	more := a.overflow()
	pages := 1 + len(more)
	out := []diagram.Sheet{p.sheet(a, a.paint(), 1, pages, p.describe())}
	for i, nodes := range more {
		g := scene.G("cards", nodes...)
		out = append(out, p.sheet(a, []*scene.Node{g}, i+2, pages, "What sits at the places that had no room on the first sheet."))
	}
	return out
}

func (p *plan) sheet(a *attempt, nodes []*scene.Node, n, of int, desc string) diagram.Sheet {
	b := a.blank
	name := fmt.Sprintf("layout-%d", n)
	title := "Harness layout"
	if of > 1 {
		title = fmt.Sprintf("Harness layout, sheet %d of %d", n, of)
	}
	h := diagram.Heading{
		Title: p.in.Title, Kind: "Harness layout", Name: diagram.NameOf(p.m), Sheet: n, Sheets: of,
		Extra: diagram.WithOptions(p.m, p.extra(a)),
	}
	s := &scene.Scene{
		Name: name, Lang: "en", WidthMM: b.WidthMM, HeightMM: b.HeightMM, Styles: slices.Concat(diagram.Styles(), styles(), fills()),
		Title: title + ": " + diagram.NameOf(p.m), Desc: desc, FocusClasses: []string{"leg"},
	}
	s.Nodes = append([]*scene.Node{scene.Frame("paper", 0, 0, b.WidthMM, b.HeightMM)}, nodes...)
	s.Nodes = append(s.Nodes, b.Border(h))
	return diagram.Sheet{Name: name, Title: title, Scene: s}
}

// extra is the supplementary title: the title block's own where it has one.
func (p *plan) extra(a *attempt) string {
	if p.in.Title.Extra != "" {
		return p.in.Title.Extra
	}
	return "Legs to scale " + a.scaleText()
}

// describe says in words what the first sheet shows.
func (p *plan) describe() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s joined by %s, drawn to length. ", count(len(p.m.Places), "place"), count(len(p.m.Legs), "leg"))
	for _, l := range p.m.Legs {
		b.WriteString(strings.Join(p.words(l), ", ") + ". ")
	}
	return strings.TrimSpace(b.String())
}

func count(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
