package model

import (
	"slices"
	"strings"

	"legwork/harness/diag"
	"legwork/harness/draft"
	"legwork/harness/part"
)

// maxCavities is how many terminals one device may have.
const maxCavities = 512

// readLines reads the child lines of a device.
func (b *builder) readLines(r *reading) {
	lines := r.d.Kind.Lines
	if lines == nil {
		return
	}
	names := newNameSet()
	b.readPartLines(r, names)
	for _, s := range r.d.Stmt.Children {
		head := headOf(s)
		if head == "accept" || head == "note" || misplaced(s, r.d.Kind) {
			continue
		}
		if len(r.d.Lines) == maxCavities {
			b.say(limitRule, s.Head.At, "%s has more than %d lines", r.form.owner, maxCavities)
			return
		}
		if head == "spare" && !b.isRole(r, s) {
			if !r.double {
				b.spares = append(b.spares, spareStmt{s, r.d})
			}
			continue
		}
		b.readLine(r, s, head, names)
	}
	b.seatAll(r)
}

func (b *builder) readLine(r *reading, s *draft.Stmt, head string, names *nameSet) {
	if lines := r.d.Kind.Lines; lines.Head != "" {
		if head != lines.Head {
			b.lenient[r.d] = true
			b.sayUnknown(wordRule, s.Head.At, s.Head.Raw, []string{lines.Head}, "%s takes lines that begin with %s, not %q",
				r.form.owner, lines.Head, clip(s.Head.Raw))
			return
		}
		c := newCursor(s)
		name, ok := b.firstName(s, c, head)
		if !ok || !b.declare(names, name, head, s.Items[0].At) {
			b.lenient[r.d] = true
			return
		}
		if lines.Shape == part.BusLines {
			b.readBus(r, s, name, c)
		} else {
			b.readHalf(r, s, name, c)
		}
		return
	}
	if (head == "option" || head == "part") && !b.isRole(r, s) {
		b.say(wordRule, s.Head.At, "%s says its %s on its own line, not below it", r.form.owner, head)
		b.lenient[r.d] = true
		return
	}
	if head == "plug" && !b.isRole(r, s) && r.d.Kind.Lines.Shape == part.TerminalLines {
		b.readPlug(r, s)
		return
	}
	if r.d.Kind.Lines.Shape == part.PositionLines {
		b.readPosition(r, s)
		return
	}
	b.readTerminal(r, s, names)
}

// isRole reports whether a line reads as a terminal with a role.
func (b *builder) isRole(r *reading, s *draft.Stmt) bool {
	return len(s.Items) > 0 && slices.Contains(roleWords(r.d.Kind), s.Items[0].Raw)
}

func roleWords(k *part.Kind) []string {
	var words []string
	for _, r := range k.Lines.Roles {
		words = append(words, r.Word)
	}
	return words
}

// readTerminal reads a line that is a terminal, its role and its settings.
func (b *builder) readTerminal(r *reading, s *draft.Stmt, names *nameSet) {
	name := s.Head.Parts[0]
	if len(s.Head.Parts) > 1 {
		b.say(nameRule, s.Head.At, "a terminal of %s can't hold a dot: %s", r.d.Name, clip(s.Head.Raw))
		return
	}
	if !b.declare(names, name, "terminal", s.Head.At) {
		return
	}
	line := part.Line{Name: name, At: s.Head.At}
	c := newCursor(s)
	owner := r.d.Name + "." + name
	roles := r.d.Kind.Lines.Roles
	settings := r.d.Kind.Lines.Settings
	if len(roles) > 0 {
		line.Role = b.readRole(r.d.Kind, s, c, owner)
		settings = nil
		if line.Role != nil {
			settings = line.Role.Settings
		} else {
			// The terminal exists; what it does is not known.
			b.lenient[r.d] = true
			line.Role = &part.Role{Word: "unknown"}
			c.i = len(c.items)
		}
	}
	f := b.lineForm(r, settings, owner)
	b.read(f, c)
	line.Values = b.asSaid(f, s.Head.At)
	r.d.Lines = append(r.d.Lines, line)
}

func (b *builder) readRole(k *part.Kind, s *draft.Stmt, c *cursor, owner string) *part.Role {
	words := roleWords(k)
	if !c.more() {
		if !s.Bad {
			f := b.say(missingRule, s.Head.At, "terminal %s needs its role, as %s or %s", owner, words[0], words[1])
			f.Detail = b.newDetail("Expected " + oneOf(words) + ".")
		}
		return nil
	}
	it := c.take()
	i := slices.Index(words, it.Raw)
	if i < 0 {
		b.sayUnknown(wordRule, it.At, it.Raw, words, "terminal %s has no role %q", owner, clip(it.Raw))
		return nil
	}
	return &k.Lines.Roles[i]
}

func (b *builder) lineForm(r *reading, settings []part.Setting, owner string) *form {
	f := &form{owner: owner, name: owner, settings: settings, names: func() []string { return b.freeNamesOfLines(r.d) }}
	f.words = map[string]func(*cursor, draft.Item){}
	if r.d.Kind.Lines.Shape == part.HalfLines {
		b.finishWords(f.words, owner, r.finishOf(strings.TrimPrefix(owner, r.d.Name+".")))
	}
	if r.d.Kind.Lines.Shape == part.TerminalLines {
		f.words["at"] = func(c *cursor, w draft.Item) { b.readSeat(r, c, w, owner) }
	}
	return f
}

// freeNamesOfLines adds the terminals that the lines of a device give.
func (b *builder) freeNamesOfLines(d *Device) []string {
	names := b.freeNames(d)
	for _, s := range d.Stmt.Children {
		names = append(names, s.Head.Parts...)
	}
	return names
}

// readHalf reads one half of a connector.
func (b *builder) readHalf(r *reading, s *draft.Stmt, name string, c *cursor) {
	f := b.lineForm(r, r.d.Kind.Lines.Settings, r.d.Name+"."+name)
	b.read(f, c)
	line := part.Line{Name: name, At: s.Items[0].At}
	line.Values = b.asSaid(f, line.At)
	r.d.Lines = append(r.d.Lines, line)
}

// busStmt is a bus whose members are found when all terminals are known.
type busStmt struct {
	box     *Device
	line    int
	members []draft.Ref
	at      diag.Span
}

func (b *builder) readBus(r *reading, s *draft.Stmt, name string, c *cursor) {
	line := part.Line{Name: name, At: s.Items[0].At}
	line.Values = b.asSaid(&form{owner: r.d.Name + "." + name, name: r.d.Name + "." + name, settings: r.d.Kind.Lines.Settings}, line.At)
	bus := busStmt{box: r.d, line: len(r.d.Lines), at: line.At}
	for c.more() {
		bus.members = append(bus.members, refsOf(c.take())...)
	}
	r.d.Lines = append(r.d.Lines, line)
	if !r.double {
		b.buses = append(b.buses, bus)
	}
}
