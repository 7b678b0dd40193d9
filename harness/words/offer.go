package words

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// slot lists what may stand at a fixed place, or behind a word.
func (c *completer) slot(w *walk, s model.Slot) {
	switch s.Takes {
	case model.AnEnd, model.ASource:
		c.ends(w)
	case model.AStep:
		for _, st := range c.Model.Steps {
			c.add(st.Name, "step", st.Label)
		}
	case model.AColor:
		c.looks(true, false)
	case model.AKind:
		c.kinds(func(*part.Kind) bool { return true })
	case model.ARule:
		for _, id := range slices.Sorted(maps.Keys(c.Rules)) {
			c.add(id, "rule", c.Rules[id])
		}
	case model.AWord:
		c.closedWords(w, s)
	case model.AFigure:
		for _, word := range s.Words {
			c.add(word, "word", "")
		}
		c.units(s.Dim)
	case model.ACavity:
		c.cavities(w)
	default:
		c.bearers(s.Takes)
	}
}

func (c *completer) closedWords(w *walk, s model.Slot) {
	for _, word := range s.Words {
		doc := ""
		for _, r := range w.roles {
			if r.Word == word {
				doc = r.Doc
			}
		}
		c.add(word, "word", doc)
	}
}

// bearers lists the names in the draft that bear what is asked for.
func (c *completer) bearers(t model.Takes) {
	m := c.Model
	switch t {
	case model.APlace, model.ASpot:
		for _, p := range m.Places {
			c.add(p.Name, "place", c.used(model.APlace, p.Name))
		}
		for _, l := range m.Legs {
			if t == model.ASpot {
				c.add(l.Name, "leg", c.used(model.ASpot, l.Name)+"; then how far along it")
			}
		}
	case model.AMetal:
		for _, b := range m.Metals {
			c.add(b.Name, "metal", b.Label)
		}
	case model.AnOption:
		for _, o := range m.Options {
			c.add(o.Name, "option", o.Label)
		}
	case model.ABox:
		for _, d := range m.Devices {
			if d.Kind.Lines != nil && d.Kind.Lines.Shape == part.BusLines {
				c.add(d.Name, "box", d.Label)
			}
		}
	case model.AWire:
		for _, w := range m.Wires {
			c.add(w.Number, "wire", c.wire(w.Number))
		}
	case model.APart:
		for _, f := range append([]*draft.File{c.File}, c.Included...) {
			for s := range f.All() {
				if s.Word() == "part" && s.Parent == nil {
					c.add(s.Item(1).Text, "part", s.Item(0).Text)
				}
			}
		}
	}
}

// ends lists devices, and behind a period the terminals of one, free ones first.
func (c *completer) ends(w *walk) {
	if w.owner != nil && w.kind.Lines.Shape == part.PositionLines {
		for _, t := range w.kind.Terminals {
			for _, name := range t.Also() {
				c.add(name, "terminal", t.Doc)
			}
		}
		return
	}
	name, _, dotted := strings.Cut(c.typed, ".")
	if dotted {
		c.terminals(name)
		return
	}
	for _, d := range c.Model.Devices {
		text := d.Name
		if !d.Kind.Self {
			text += "."
		}
		if !strings.Contains(d.Name, ".") {
			c.add(text, d.Kind.Name, strings.SplitN(c.device(d), "\n", 2)[0])
		}
	}
}

func (c *completer) terminals(name string) {
	d, ok := c.Model.DeviceByName(name)
	if !ok || d.Kind.Self {
		return
	}
	for _, wired := range []bool{false, true} {
		for _, t := range d.Terminals {
			if (len(t.Ends) > 0) == wired {
				for _, pin := range append([]string{t.Name}, d.Pins[t.Pin].Aliases...) {
					c.add(name+"."+pin, "terminal", c.terminal(name+"."+pin, false))
				}
			}
		}
	}
}

// free lists what the name behind a setting may be.
func (c *completer) free(w *walk) {
	if w.owner != nil { // a line: names another terminal of the device
		if d, ok := c.Model.DeviceByName(w.owner.Item(0).Text); ok {
			for _, l := range d.Lines {
				if l.Role != nil {
					c.add(l.Name, "terminal", l.Role.Word)
				}
			}
		}
		return
	}
	c.bearers(model.AMetal)
	c.bearers(model.APlace)
}

// cavities lists the cavities of the plugs of a device.
func (c *completer) cavities(w *walk) {
	d, ok := c.Model.DeviceByName(w.owner.Item(0).Text)
	if !ok {
		return
	}
	taken := map[string]string{}
	for _, l := range d.Lines {
		taken[l.Cavity] = l.Name
	}
	for _, p := range d.Plugs {
		for n := 1; n <= p.Ways; n++ {
			if cavity := fmt.Sprintf("%s.%d", p.Name, n); taken[cavity] == "" {
				c.add(cavity, "cavity", p.Label)
			}
		}
	}
}

// units lists the units that a number can have, once it is begun.
func (c *completer) units(d quantity.Dim) {
	digits := strings.TrimRight(c.typed, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ%")
	if !quantity.Looks(c.typed) || digits == "" {
		return
	}
	for _, u := range quantity.UnitsOf(d) {
		if _, err := quantity.Parse(digits + u); err == nil {
			c.add(digits+u, "figure", d.String())
		}
	}
}

// stepWords lists the words of step lists.
func (c *completer) stepWords() {
	for _, word := range c.Model.StepWords() {
		c.add(word, "step", c.steps(word))
	}
}

// looks lists colors and insulations. A tracer is completed behind its slash.
func (c *completer) looks(colors, insulations bool) {
	if colors {
		letters, _ := model.ColorLetters()
		base, _, striped := strings.Cut(c.typed, "/")
		for _, l := range letters {
			if striped {
				l = base + "/" + l
			}
			c.add(l, "color", color(l))
		}
	}
	if insulations {
		for _, f := range model.FamilyNames() {
			c.add(f, "insulation", insulationOf(f))
		}
	}
}
