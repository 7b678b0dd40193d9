package model

import (
	"math"
	"slices"
	"strings"

	"legwork/gauge"
	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// TerminalPart is a crimp terminal of the shelf.
type TerminalPart struct {
	Name, Label      string
	LeastMM2         float64 // thinnest conductor that its barrel takes, 0 when not said
	MostMM2          float64 // thickest
	Range            string  // as the draft says it: "16 AWG to 14 AWG"
	LeastOverM       float64 // outside of the insulation that its grip takes
	MostOverM        float64 // 0 when not said
	StripM           float64 // 0 when not said
	BladeM, ThreadMM float64 // what it joins; 0 when not said
	At               diag.Span
}

// SealPart is a seal around one wire.
type SealPart struct {
	Name, Label           string
	LeastOverM, MostOverM float64
	At                    diag.Span
}

// Finish is what may finish a wire at a terminal; empty where the draft does
// not say.
type Finish struct {
	Terminals []*TerminalPart
	Seals     []*SealPart
}

// Fits reports whether a conductor of an area, to 1 % of what gauges are
// rounded by, fits one of the terminals, or nothing is said.
func (f Finish) Fits(areaMM2 float64) bool {
	fits := func(t *TerminalPart) bool { return areaMM2 >= 0.99*t.LeastMM2 && areaMM2 <= 1.01*t.MostMM2 }
	return len(f.Terminals) == 0 || slices.ContainsFunc(f.Terminals, fits)
}

// finishOf gives what a line or plug of a device says of its wires' ends, to
// be filled in.
func (r *reading) finishOf(line string) *Finish {
	if r.lineFinish == nil {
		r.lineFinish = map[string]*Finish{}
	}
	if r.lineFinish[line] == nil {
		r.lineFinish[line] = &Finish{}
	}
	return r.lineFinish[line]
}

// finishAt gives what finishes the wires at a terminal: said of its half or
// plug, else of the device.
func (r *reading) finishAt(t *Terminal) Finish {
	plug, _, _ := strings.Cut(t.Cavity, ".")
	half, _, _ := strings.Cut(t.Name, ".")
	for _, line := range []string{plug, half} {
		if f := r.lineFinish[line]; f != nil && line != "" {
			return f.or(r.finish)
		}
	}
	return r.finish
}

// or is what a line says of itself, else what is said of the whole.
func (f Finish) or(whole Finish) Finish {
	if len(f.Terminals) == 0 {
		f.Terminals = whole.Terminals
	}
	if len(f.Seals) == 0 {
		f.Seals = whole.Seals
	}
	return f
}

// buildGood reads a part of the shelf that is no device.
func (b *builder) buildGood(s *draft.Stmt, good *part.Good, c *cursor) {
	if !c.more() {
		b.say(missingRule, s.Items[0].At, "part %s needs a name", good.Name)
		return
	}
	at := c.peek().At
	name, ok := b.nameOf(c.take(), "part")
	if !ok || !b.declare(b.partSet, name, "part", at) {
		return
	}
	label := ""
	f := &form{owner: "part " + name, name: name, settings: good.Settings, label: &label}
	b.read(f, c)
	values := b.orDefault(f, at)
	d := &part.Device{Name: name, Kind: &part.Kind{Name: good.Name, Settings: good.Settings}, Values: values, SystemV: b.m.SystemV}
	for _, child := range s.Children {
		if head := headOf(child); head != "note" {
			b.sortChild(child, s, nil)
		}
	}
	if good.Name == "seal" {
		b.sealBy[name] = &SealPart{Name: name, Label: label, LeastOverM: d.Num("insulation"), MostOverM: d.NumAt("insulation", 1), At: at}
		return
	}
	b.terminalBy[name] = b.terminalPart(d, label, at, f)
}

func (b *builder) terminalPart(d *part.Device, label string, at diag.Span, f *form) *TerminalPart {
	t := &TerminalPart{
		Name: d.Name, Label: label, LeastOverM: d.Num("insulation"), MostOverM: d.NumAt("insulation", 1),
		StripM: d.Num("strip"), BladeM: d.Num("blade"), ThreadMM: math.Max(d.Num("thread"), 1000*d.Num("diameter")), At: at,
	}
	switch {
	case d.Said("wire"):
		thin, thick := int(d.Num("wire")), int(d.NumAt("wire", 1))
		t.LeastMM2, t.MostMM2 = areaOfAWG(thin), areaOfAWG(thick)
		t.Range = gauge.AWGName(thin) + " to " + gauge.AWGName(thick)
	case d.Said("area"):
		thin, thick := d.Num("area"), d.NumAt("area", 1)
		t.LeastMM2, t.MostMM2 = thin, thick
		t.Range = quantity.Text(thin, quantity.Area) + " to " + quantity.Text(thick, quantity.Area)
	case !f.broken:
		b.say(missingRule, at, "part %s needs the wires that it takes, as: wire 16AWG 14AWG", clip(d.Name))
	}
	if t.LeastMM2 > t.MostMM2 {
		t.LeastMM2, t.MostMM2 = t.MostMM2, t.LeastMM2
	}
	return t
}

// areaOfAWG is the area that wires of a gauge have here, so that a wire of
// that gauge fits.
func areaOfAWG(n int) float64 {
	if s, ok := gauge.AWGSize(n); ok {
		return s.AreaMM2
	}
	return gauge.AWGAreaMM2(n)
}

// finishWords are the words by which a device, a plug or a half says what its
// wires are finished with.
func (b *builder) finishWords(words map[string]func(*cursor, draft.Item), owner string, to *Finish) {
	words["terminals"] = func(c *cursor, w draft.Item) { b.readTerminals(owner, to, c, w) }
	words["seals"] = func(c *cursor, w draft.Item) { b.readSeals(owner, to, c, w) }
}

func (b *builder) readTerminals(owner string, to *Finish, c *cursor, w draft.Item) {
	for _, r := range b.namesBehind(c, w, owner) {
		if p := b.terminalBy[r.Text()]; p == nil {
			b.noName("terminal part", r.Text(), r.At, namesOf(b.terminalBy))
		} else {
			to.Terminals = append(to.Terminals, p)
		}
	}
}

func (b *builder) readSeals(owner string, to *Finish, c *cursor, w draft.Item) {
	for _, r := range b.namesBehind(c, w, owner) {
		if p := b.sealBy[r.Text()]; p == nil {
			b.noName("seal part", r.Text(), r.At, namesOf(b.sealBy))
		} else {
			to.Seals = append(to.Seals, p)
		}
	}
}

func (b *builder) namesBehind(c *cursor, w draft.Item, owner string) []draft.Ref {
	if !c.more() || c.isFigure() {
		b.say(missingRule, w.At, "%s: %s needs parts of the shelf, joined by commas", owner, w.Raw)
		return nil
	}
	return refsOf(c.take())
}

func namesOf[T any](by map[string]T) []string {
	names := make([]string, 0, len(by))
	for name := range by {
		names = append(names, name)
	}
	slices.Sort(names)
	return names
}
