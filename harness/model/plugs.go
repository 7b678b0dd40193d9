package model

import (
	"slices"
	"strconv"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// Plug is one housing of a device with several: its terminals sit in the
// cavities of it.
type Plug struct {
	Name   string
	Label  string
	Ways   int
	Sealed bool
	BladeM float64 // 0 when not said
	At     diag.Span
}

var plugSettings = []part.Setting{
	{Name: "ways", Bare: true, Must: true, Doc: "how many cavities it has",
		Figures: []part.Figure{{Name: "count", Dim: quantity.Count, Min: 1, Max: maxCavities, Doc: "number of cavities"}}},
	{Name: "sealed", Doc: "it is sealed against water"},
	{Name: "blade", Doc: "width of its blades", Figures: []part.Figure{{Name: "width", Dim: quantity.Length, Min: 0.0003, Max: 0.02, Doc: "width"}}},
}

// seat is the cavity that a line says its terminal sits in; settled when all
// plugs of the device are read.
type seat struct {
	line int
	ref  draft.Ref
}

// readPlug reads "plug A 24way sealed" under a device whose lines are terminals.
func (b *builder) readPlug(r *reading, s *draft.Stmt) {
	c := newCursor(s)
	name, ok := b.firstName(s, c, "plug")
	if !ok || !b.declare(r.plugs(), name, "plug", s.Items[0].At) {
		b.lenient[r.d] = true
		return
	}
	p := Plug{Name: name, At: s.Items[0].At}
	owner := "plug " + r.d.Name + "." + name
	f := &form{owner: owner, name: r.d.Name + "." + name, settings: plugSettings, label: &p.Label, words: map[string]func(*cursor, draft.Item){}}
	b.finishWords(f.words, owner, r.finishOf(name))
	b.read(f, c)
	values := b.orDefault(f, p.At)
	p.Ways, p.Sealed, p.BladeM = int(values[0].Nums[0]), values[1].Said, values[2].Nums[0]
	if f.broken {
		p.Ways = 0 // how many it has was not read
	}
	r.d.Plugs = append(r.d.Plugs, p)
}

func (r *reading) plugs() *nameSet {
	if r.plugSet == nil {
		r.plugSet = newNameSet()
	}
	return r.plugSet
}

// readSeat reads "at A.12" on a terminal line.
func (b *builder) readSeat(r *reading, c *cursor, w draft.Item, owner string) {
	if !c.more() || c.peek().IsList() || len(refsOf(c.peek())[0].Parts) != 2 {
		b.say(missingRule, w.At, "%s: at needs a plug and a cavity of it, as at A.12", owner)
		if c.more() {
			c.take()
		}
		return
	}
	r.seats = append(r.seats, seat{len(r.d.Lines), refsOf(c.take())[0]})
}

// seatAll puts terminals into the cavities that their lines name.
func (b *builder) seatAll(r *reading) {
	taken := map[string]string{}
	for _, s := range r.seats {
		if s.line >= len(r.d.Lines) {
			continue
		}
		name, cavity := s.ref.Parts[0], s.ref.Parts[1]
		i := slices.IndexFunc(r.d.Plugs, func(p Plug) bool { return p.Name == name })
		if i < 0 {
			b.note(missing{says: strings.ReplaceAll(r.form.owner, "%", "%%") + " has no plug %q", word: name, at: s.ref.At,
				expected: r.plugs().order, whole: func(near string) string { return near + "." + cavity }})
			continue
		}
		p, full := &r.d.Plugs[i], s.ref.Text()
		n, err := strconv.Atoi(cavity)
		switch {
		case err == nil && p.Ways > 0 && !(n >= 1 && n <= p.Ways):
			b.say(rangeRule, s.ref.At, "plug %s has %d cavities; there is no %s", name, p.Ways, clip(full))
		case taken[full] != "":
			b.say(duplicateRule, s.ref.At, "cavity %s holds %s already", clip(full), taken[full])
		case p.Ways > 0 && err != nil && countIn(taken, name) == p.Ways:
			b.say(rangeRule, s.ref.At, "plug %s has %d cavities, and all are taken", name, p.Ways)
		default:
			taken[full] = r.d.Lines[s.line].Name
			r.d.Lines[s.line].Cavity = full
		}
	}
}

func countIn(taken map[string]string, plug string) int {
	n := 0
	for full := range taken {
		if strings.HasPrefix(full, plug+".") {
			n++
		}
	}
	return n
}
