package words

import (
	"fmt"
	"slices"

	"legwork/gauge"
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
	"legwork/harness/quantity"
)

// placed tells what stands at a fixed place, or behind a word.
func (v View) placed(s *draft.Stmt, m sense, it draft.Item, ref draft.Ref) string {
	name := ref.Text()
	switch m.slot.Takes {
	case model.NewName:
		return v.given(s, name)
	case model.AKind:
		if k, ok := part.Of(name); ok {
			return k.Name + ": " + k.Title
		}
	case model.AnEnd, model.ASource:
		if l := lineOf(s); l.owner != nil && l.kind.Lines.Shape == part.PositionLines {
			name = l.owner.Item(0).Text + "." + name
		}
		return v.terminal(name, true)
	case model.APlace, model.ASpot, model.AMetal, model.ABox, model.APart, model.AnOption, model.AWire:
		return v.used(m.slot.Takes, name)
	case model.AStep:
		return v.steps(name)
	case model.AColor:
		return color(name)
	case model.ARule:
		if title := v.Rules[name]; title != "" {
			return name + ": " + title
		}
	case model.AWord:
		return v.closed(m, name)
	case model.AFigure:
		if m.word != nil {
			return m.word.Shape() + ": " + m.word.Doc
		}
	}
	return ""
}

// closed tells what a word of a closed set means.
func (v View) closed(m sense, name string) string {
	if m.role != nil {
		return m.role.Word + ": " + m.role.Doc
	}
	if p, ok := gauge.ProfileOf(name); ok {
		return p.Name + ": " + p.Title
	}
	if m.word != nil && slices.Contains(m.slot.Words, name) {
		return m.word.Shape() + ": " + m.word.Doc
	}
	return ""
}

// given tells what bears the name that a statement gives.
func (v View) given(s *draft.Stmt, name string) string {
	if owner, k := ownerOf(s); owner != nil {
		return s.Word() + " " + name + " of " + k.Name + " " + owner.Item(0).Text
	}
	switch s.Word() {
	case "wire", "lead", "strap", "core", "drain":
		return v.used(model.AWire, name)
	case "place":
		return v.used(model.APlace, name)
	case "metal":
		return v.used(model.AMetal, name)
	case "option":
		return v.used(model.AnOption, name)
	case "part":
		return v.used(model.APart, name)
	case "step":
		return v.steps(name)
	case "circuit":
		if c, ok := v.Model.CircuitByName(name); ok {
			return fmt.Sprintf("circuit %s%s: %d wires", c.Name, quoted(c.Label), len(c.Wires))
		}
	}
	if d, ok := v.Model.DeviceByName(name); ok && d.Kind.Name == s.Word() {
		return v.device(d)
	}
	return ""
}

// used tells what bears a name.
func (v View) used(t model.Takes, name string) string {
	m := v.Model
	switch t {
	case model.APlace, model.ASpot:
		for _, p := range m.Places {
			if p.Name == name {
				wet := map[bool]string{true: "wet", false: "dry"}[p.Wet]
				return fmt.Sprintf("place %s%s: %s, %s", name, quoted(p.Label), quantity.Text(p.AmbientC, quantity.Temperature), wet)
			}
		}
		for _, l := range m.Legs {
			if l.Name == name || l.B.Name+"-"+l.A.Name == name {
				return fmt.Sprintf("leg %s: %s", name, quantity.LengthText(l.LengthM, m.Metric))
			}
		}
	case model.AMetal:
		for _, b := range m.Metals {
			if b.Name == name {
				return "metal " + name + quoted(b.Label)
			}
		}
	case model.AnOption:
		if o, ok := m.OptionByName(name); ok {
			return "option " + name + quoted(o.Label)
		}
	case model.AWire:
		return v.wire(name)
	case model.APart:
		return v.part(name)
	case model.ABox:
		if d, ok := m.DeviceByName(name); ok {
			return v.device(d)
		}
	}
	return ""
}
