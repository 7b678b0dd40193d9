package model

import (
	"cmp"
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
)

// resolve finds the terminal that a reference names. A name that is not
// known is noted once for the whole draft, and gives nil.
func (b *builder) resolve(ref draft.Ref) *Terminal {
	if len(ref.Parts) == 0 {
		return nil
	}
	name := ref.Parts[0]
	d := b.m.deviceNamed[name]
	if d == nil {
		b.noDevice(name, ref)
		return nil
	}
	if len(ref.Parts) == 1 {
		return b.onlyTerminal(d, ref)
	}
	pin := strings.Join(ref.Parts[1:], ".")
	t := d.called(pin)
	if t != nil && !d.Kind.Self {
		if t.Shown == "" {
			t.Shown = name + "." + pin
		}
		return t
	}
	if d.Kind.Self {
		f := b.say(nameRule, ref.At, "%s has one terminal: write %s, not %s", clip(name), clip(name), clip(ref.Raw))
		if plainWord(name) {
			f.Fix = &diag.Fix{Msg: "write " + name, Edits: []diag.Edit{{At: ref.At, Text: name}}}
		}
		return d.Terminals[0]
	}
	b.noTerminal(d, pin, ref.At, name+".")
	return nil
}

// noTerminal notes the use of a terminal that a device lacks. Where its lines
// or settings could not be read, it may well have it.
func (b *builder) noTerminal(d *Device, pin string, at diag.Span, before string) {
	if b.lenient[d] && mayHave(d.Kind, pin) {
		return
	}
	owner := strings.ReplaceAll(d.Kind.Name+" "+clip(d.Name), "%", "%%")
	if word := d.WordFor(pin); word != "" {
		b.say(nameRule, at, "%s has terminal %s only if it is said to be %s", d.Kind.Name+" "+clip(d.Name), pin, word)
		return
	}
	b.note(missing{says: owner + " has no terminal %q", word: pin, at: at, expected: d.pinNames(),
		whole: func(near string) string { return before + near }})
}

// mayHave reports whether a device of a kind could have a terminal if its
// settings and lines were other than they read.
func mayHave(k *part.Kind, pin string) bool {
	if k.Lines != nil {
		return true
	}
	return slices.ContainsFunc(k.Terminals, func(t part.Terminal) bool {
		return t.Name == pin || slices.Contains(t.Aliases, pin)
	})
}

func (b *builder) noDevice(name string, ref draft.Ref) {
	if b.metalSet.has(name) && !b.ghosts[name] {
		b.say(nameRule, ref.At, "%s is a metal; end the wire on a stud that is on it", clip(name))
		return
	}
	if b.placeSet.has(name) && !b.ghosts[name] {
		b.say(nameRule, ref.At, "%s is a place; end the wire on a terminal of a device there", clip(name))
		return
	}
	if b.ghosts[name] {
		return
	}
	rest := strings.Join(append([]string{""}, ref.Parts[1:]...), ".")
	b.note(missing{says: "no device %q in this draft", word: name, at: ref.At, expected: b.devSet.order,
		whole: func(near string) string { return near + rest }})
}

// onlyTerminal gives the one terminal of a device that was named alone.
func (b *builder) onlyTerminal(d *Device, ref draft.Ref) *Terminal {
	var free []*Terminal
	for _, t := range d.Terminals {
		if d.Kind.Self || t.Metal == nil {
			free = append(free, t)
		}
	}
	if len(free) == 1 {
		if free[0].Shown == "" {
			free[0].Shown = d.Name
			if !d.Kind.Self {
				free[0].Shown = fullName(free[0])
			}
		}
		return free[0]
	}
	if b.lenient[d] || len(free) == 0 {
		if !b.lenient[d] {
			b.say(nameRule, ref.At, "%s %s has no terminal for a wire", d.Kind.Name, d.Name)
		}
		return nil
	}
	f := b.say(missingRule, ref.At, "%s has several terminals; say which, as %s", d.Name, fullName(free[0]))
	f.Detail = "It has " + oneOf(d.pinNames()) + "."
	return nil
}

func (d *Device) pinNames() []string {
	var names []string
	for _, p := range d.Pins {
		names = append(append(names, cmp.Or(p.Printed, p.Name)), p.Aliases...)
	}
	return names
}

// TerminalByName finds a terminal by its full name, with the kind's name for
// the terminal or an alias of it: "K1.87", "K1.NO", "X2.rear.3", "E3".
func (m *Model) TerminalByName(full string) (*Terminal, bool) {
	name, pin, dotted := strings.Cut(full, ".")
	d := m.deviceNamed[name]
	if bare := m.deviceNamed[full]; bare != nil && bare.open {
		return bare.Terminals[0], true
	}
	switch {
	case d == nil:
		return nil, false
	case dotted && !d.Kind.Self:
		t := d.called(pin)
		return t, t != nil
	case !dotted && len(d.Terminals) == 1:
		return d.Terminals[0], true
	}
	return nil, false
}

// DeviceByName finds a device by its name.
func (m *Model) DeviceByName(name string) (*Device, bool) {
	d := m.deviceNamed[name]
	return d, d != nil
}

// WireByNumber finds a wire, lead or strap by its number.
func (m *Model) WireByNumber(number string) (*Wire, bool) {
	w := m.wireNumbered[number]
	return w, w != nil
}

// CircuitByName finds a circuit by its name.
func (m *Model) CircuitByName(name string) (*Circuit, bool) {
	for _, c := range m.Circuits {
		if c.Name == name {
			return c, true
		}
	}
	return nil, false
}
