package check

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/size"
)

var _ = define(Rule{
	ID:       "terminal-does-not-fit",
	Severity: diag.Fault,
	Title:    "A wire fits none of the terminals that its end may have.",
	Why: "A crimp barrel holds a wire only within the range that its maker names: too thick a wire does not go in, too thin a one pulls out and heats. " +
		"The draft says by parts of the shelf what may finish this end, and none of them takes the size that the wire has. " +
		"Where its size was chosen, current, fuse or handling asks for it. Use another terminal or plug, or change what asks for the size.",
	Equation: "thinnest <= area of the wire <= thickest; wires that share a terminal count together",
	Misses:   "Ends whose terminals are not said; existing wires, leads and straps, which have their terminals; strands, plating and tool.",
	Needs:    States,
	Bad: `part    terminal  blade-63-14  blade 6.3mm  wire 16AWG 14AWG
battery G1  grounds-to frame
fuse    F1  15A  from G1 6in
lamp    P1  60W  grounds-to frame  terminals blade-63-14
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  P1.1  10AWG  3ft
`,
	Good: `part    terminal  blade-63-10  blade 6.3mm  wire 12AWG 10AWG
battery G1  grounds-to frame
fuse    F1  15A  from G1 6in
lamp    P1  60W  grounds-to frame  terminals blade-63-10
wire 1  G1.+  F1.1  14AWG  6in
wire 2  F1.2  P1.1  10AWG  3ft
`,
	Run: terminalDoesNotFit,
})

func terminalDoesNotFit(p *Pass) {
	for _, t := range p.Model.Terminals {
		if len(t.Finish.Terminals) == 0 {
			continue
		}
		told := map[*model.Wire]bool{} // shares a terminal with one that was told of
		for _, e := range t.Ends {
			if !finished(e.Wire) || told[e.Wire] {
				continue
			}
			area, with := p.areaAt(t, e.Wire)
			if t.Finish.Fits(area) {
				continue
			}
			for _, w := range with {
				told[w] = true
			}
			p.reportMisfit(t, e, area, with)
		}
	}
}

// finished reports whether the ends of a wire are still to be finished.
func finished(w *model.Wire) bool { return w.Role == model.Built && !w.Existing }

// areaAt is the copper that one terminal has to hold: that of the wire, or of
// all that share the terminal with it.
func (p *Pass) areaAt(t *model.Terminal, w *model.Wire) (area float64, with []*model.Wire) {
	for _, j := range p.Model.Together {
		if j.Terminal != t || !slices.Contains(j.Wires, w) {
			continue
		}
		for _, o := range j.Wires {
			area += p.Sizes.Wires[o.ID].Conductor.Size.AreaMM2
		}
		return area, j.Wires
	}
	return p.Sizes.Wires[w.ID].Conductor.Size.AreaMM2, nil
}

func (p *Pass) reportMisfit(t *model.Terminal, e model.End, area float64, with []*model.Wire) {
	w := p.Sizes.Wires[e.Wire.ID]
	near := t.Finish.Terminals[0]
	off := math.Inf(1)
	var takes []string
	for _, part := range t.Finish.Terminals {
		takes = append(takes, fmt.Sprintf("%s takes %s", part.Name, part.Range))
		if d := math.Max(part.LeastMM2-area, area-part.MostMM2); d < off {
			off, near = d, part
		}
	}
	v := diag.Value{Name: "area", Got: area, Limit: near.MostMM2, Unit: "mm2", Bound: diag.AtMost}
	if area < near.LeastMM2 {
		v.Limit, v.Bound = near.LeastMM2, diag.AtLeast
	}
	msg := fmt.Sprintf("wire %s, %s%s, fits no terminal of %s", w.Wire.Number, w.Conductor.Size.Name, asked(w), t.Shown)
	if len(with) > 1 {
		msg = fmt.Sprintf("wire %s and %d more in one terminal, %.3g mm2 together, fit none of %s", w.Wire.Number, len(with)-1, area, t.Shown)
	}
	p.Report(diag.Finding{
		At:      endSpan(e),
		Msg:     msg,
		Detail:  strings.Join(takes, "; ") + ".",
		Values:  []diag.Value{v},
		Related: []diag.Related{{At: near.At, Msg: "this one comes nearest"}},
	})
}

// asked says what asks for the size of a wire that was chosen.
func asked(w size.Wire) string {
	if !w.Chosen || w.Governs == "" {
		return ""
	}
	return " (" + w.Governs + " asks for it)"
}

func endSpan(e model.End) diag.Span {
	if e.From {
		return e.Wire.FromAt
	}
	return e.Wire.ToAt
}
