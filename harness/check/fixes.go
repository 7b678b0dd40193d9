package check

import (
	"strings"
	"unicode/utf8"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/model"
	"legwork/harness/quantity"
	"legwork/harness/size"
)

// thicker offers the next size that keeps every floor of a wire, its drop
// included; nil where the draft gives no size, the wire is there already, or
// none does.
func (p *Pass) thicker(w size.Wire) *diag.Fix { return p.ofArea(w, 0) }

// ofArea is thicker for a wire that needs an area besides.
func (p *Pass) ofArea(w size.Wire, leastMM2 float64) *diag.Fix {
	if w.Chosen || w.Wire.Existing || w.Wire.Cable != nil || !w.Wire.Sized || w.Wire.SizeAt.IsZero() {
		return nil
	}
	for _, s := range gauge.Ladder(w.Conductor.Size.Metric) {
		c := w.Judgement.Case
		if c.Size = s; s.AreaMM2 > w.Conductor.Size.AreaMM2 && s.AreaMM2 >= leastMM2 && gauge.Fits(c) {
			word := strings.ReplaceAll(s.Name, " ", "")
			return &diag.Fix{Msg: "make wire " + w.Wire.Number + " " + s.Name, Edits: []diag.Edit{{At: w.Wire.SizeAt, Text: word}}}
		}
	}
	return nil
}

// smallerFuse offers the largest rating that a wire admits, if the fuse's load
// lets it be so small.
func (p *Pass) smallerFuse(g size.Guard, mostA float64) *diag.Fix {
	f, ok := p.fuse(g)
	if !ok || f.Chosen {
		return nil
	}
	family := f.Device.Protects()[f.Index].Family
	least, _, ok := gauge.ChooseFuse(family, f.LoadA, p.Profile)
	if !ok || least > mostA {
		return nil
	}
	for _, rating := range gauge.FuseSeries(family) {
		if rating >= least && rating <= mostA {
			least = max(least, rating)
		}
	}
	return p.rerated(f.Device, f.Index, least)
}

// largerFuse offers the rating that a fuse's load asks for, if every wire
// behind it stands that.
func (p *Pass) largerFuse(f size.Fuse) *diag.Fix {
	rating, _, ok := gauge.ChooseFuse(f.Device.Protects()[f.Index].Family, f.LoadA, p.Profile)
	if !ok || f.Chosen || rating <= f.RatedA {
		return nil
	}
	for _, w := range p.Sizes.Wires {
		g := p.Sizes.Guards[w.Wire.ID]
		if l, asked := w.Judgement.Limit(gauge.FloorProtection); g.Fuse == f.Device && g.Index == f.Index && (!asked || l.Got < rating) {
			return nil
		}
	}
	return p.rerated(f.Device, f.Index, rating)
}

// fuse finds what is known of the fuse that guards a wire.
func (p *Pass) fuse(g size.Guard) (f size.Fuse, ok bool) {
	for _, f := range p.Sizes.Fuses {
		if g.Fuse != nil && f.Device == g.Fuse && f.Index == g.Index {
			return f, true
		}
	}
	return f, false
}

// rerated offers another rating of a fuse; nil where the draft gives none, or
// the fuse is there already.
func (p *Pass) rerated(d *model.Device, index int, ratedA float64) *diag.Fix {
	list := d.Protects()
	if index < 0 || index >= len(list) || d.Existing {
		return nil
	}
	at := list[index].At
	if q, err := quantity.Parse(p.text(at)); err != nil || q.Dim != quantity.Current {
		return nil
	}
	return &diag.Fix{
		Msg:   "fit " + quantity.Text(ratedA, quantity.Current) + " as " + d.Name,
		Edits: []diag.Edit{{At: at, Text: quantity.Format(ratedA, quantity.Current)}},
	}
}

// appended offers words at the end of the line on which something is said,
// before its comment.
func (p *Pass) appended(at diag.Span, msg, words string) *diag.Fix {
	end, ok := p.tail(at)
	if !ok {
		return nil
	}
	return &diag.Fix{Msg: msg, Edits: []diag.Edit{{At: end, Text: "  " + words}}}
}

// text is what the draft says at a place.
func (p *Pass) text(at diag.Span) string {
	if p.Source == nil {
		return ""
	}
	src := p.Source(at.File)
	if !(at.Off >= 0 && at.Off <= at.EndOff && at.EndOff <= len(src)) {
		return ""
	}
	return string(src[at.Off:at.EndOff])
}

// tail is the place behind the last word of a line, before a comment.
func (p *Pass) tail(at diag.Span) (end diag.Span, ok bool) {
	if p.Source == nil || at.IsZero() {
		return end, false
	}
	src := p.Source(at.File)
	if !(at.Off >= 0 && at.EndOff <= len(src)) {
		return end, false
	}
	line, _, _ := strings.Cut(string(src[at.Off:]), "\n")
	quoted := false
	for i, r := range line {
		if r == '"' {
			quoted = !quoted
		}
		if r == '#' && !quoted {
			line = line[:i]
			break
		}
	}
	line = strings.TrimRight(line, " \t\r")
	end = at
	end.Off += len(line)
	end.EndOff = end.Off
	end.Col += utf8.RuneCountInString(line)
	end.End = end.Col
	return end, true
}
