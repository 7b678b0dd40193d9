package model

import (
	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// Cable is several cores in one jacket, bought ready. Its cores are wires of
// the model, each with its own number; Cable says so.
type Cable struct {
	ID       int
	Name     string
	Label    string
	Cores    []*Wire // drains included, in draft order
	LengthM  float64 // 0 when not given
	LengthAt diag.Span
	JacketM  float64 // outside diameter, 0 when not given
	Shielded bool
	Twisted  bool
	Existing bool
	Option   *Option
	At       diag.Span

	core Wire // what its cores have that say nothing else
	want string
}

type cableStmt struct{ stmt, circuit *draft.Stmt }

var cableSettings = append(append([]part.Setting{}, wireSettings...),
	part.Setting{Name: "jacket", Doc: "diameter over the jacket",
		Figures: []part.Figure{{Name: "diameter", Dim: quantity.Length, Min: 0.001, Max: 0.1, Doc: "diameter"}}},
	part.Setting{Name: "shielded", Doc: "its cores have a shield around them"}, part.Setting{Name: "twisted", Doc: "its cores are twisted"})

// Positions of the settings that a cable has besides those of a wire.
const (
	jacketSetting = iota + 4
	shieldedSetting
	twistedSetting
)

// sortCable puts a cable and the cores under it among what is read.
func (b *builder) sortCable(s, circuit *draft.Stmt) {
	b.cables = append(b.cables, cableStmt{s, circuit})
	for _, child := range s.Children {
		switch head := headOf(child); head {
		case "core", "drain":
			b.wires = append(b.wires, wireStmt{stmt: child, role: Built, circuit: circuit, cable: s})
			for _, deeper := range child.Children {
				b.sortChild(deeper, child, circuit)
			}
		default:
			b.sortChild(child, s, circuit)
		}
	}
}

func (b *builder) buildCables() {
	for _, s := range b.cables {
		c := newCursor(s.stmt)
		name, ok := b.firstName(s.stmt, c, "cable")
		if !ok {
			name = "unnamed"
		} else {
			b.declare(b.numSet, name, "cable", c.items[0].At)
		}
		b.buildCable(s.stmt, name, c)
	}
}

func (b *builder) buildCable(s *draft.Stmt, name string, c *cursor) {
	k := &Cable{ID: len(b.m.Cables), Name: name, At: s.Head.At}
	if c.i > 0 {
		k.At = c.items[0].At
	}
	owner := "cable " + name
	f := &form{owner: owner, name: name, settings: cableSettings, label: &k.Label}
	f.bare, f.expected = familyWord(&k.core.Family), familyNames
	f.words = map[string]func(*cursor, draft.Item){
		"option":   b.optionWord(owner, &k.Option),
		"existing": func(*cursor, draft.Item) { k.Existing = true },
	}
	b.read(f, c)
	k.core.Size, k.core.Sized, k.core.SizeAt = b.sizeOf(f)
	if length := b.said(f, lengthSetting); length != nil {
		k.LengthM, k.LengthAt = length.Nums[0], length.At
	}
	if drop := b.said(f, dropSetting); drop != nil {
		b.say(wordRule, drop.At, "%s has no drop of its own; say it of a core", owner)
	}
	if jacket := b.said(f, jacketSetting); jacket != nil {
		k.JacketM = jacket.Nums[0]
	}
	k.Shielded, k.Twisted = b.said(f, shieldedSetting) != nil, b.said(f, twistedSetting) != nil
	if cores := coresUnder(s); cores == 0 && !f.broken && c.i > 0 {
		b.say(missingRule, k.At, "%s needs its cores below it, as: core 301 A1.CRANK B1.S", owner)
	}
	if f.broken {
		k.want = "said" // the size may be what was not read
	}
	b.m.Cables = append(b.m.Cables, k)
	b.cable[s] = k
}

func coresUnder(s *draft.Stmt) int {
	n := 0
	for _, child := range s.Children {
		if head := headOf(child); head == "core" || head == "drain" {
			n++
		}
	}
	return n
}

// asCore gives a core what its cable says and its own line does not.
func (b *builder) asCore(w *Wire, k *Cable, owner string, broken bool) {
	w.Cable = k
	w.Existing = w.Existing || k.Existing
	if !w.Sized {
		w.Size, w.Sized, w.SizeAt = k.core.Size, k.core.Sized, k.core.SizeAt
	}
	if w.LengthM == 0 {
		w.LengthM, w.LengthAt = k.LengthM, k.LengthAt
	}
	if w.Family == "" {
		w.Family = k.core.Family
	}
	if !w.Sized && !w.Existing && !broken && k.want == "" {
		k.want = "said"
		b.say(missingRule, k.At, "cable %s needs the size of its cores, such as 20AWG; %s has none", clip(k.Name), owner)
	}
}
