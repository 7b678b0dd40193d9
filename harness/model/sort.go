package model

import (
	"slices"

	"legwork/harness/draft"
	"legwork/harness/part"
)

// statements are the heads of top-level statements besides the device kinds.
var statements = []string{"draft", "harness", "place", "leg", "metal", "strap", "step", "circuit", "wire", "lead",
	"accept", "together", "spare", "note", "include", "part", "option", "cable", "core", "drain"}

// notYet are statements that stand under another one only.
var notYet = []string{"core", "drain"}

// headOf gives the head word of a statement, "" for a quoted one.
func headOf(s *draft.Stmt) string {
	if len(s.Head.Parts) != 1 || s.Head.Raw != s.Head.Parts[0] {
		return ""
	}
	return s.Head.Raw
}

func knownHead(word string) bool {
	_, kind := part.Of(word)
	return kind || slices.Contains(statements, word)
}

func allHeads() []string {
	heads := slices.DeleteFunc(slices.Clone(statements), func(s string) bool { return slices.Contains(notYet, s) })
	for _, k := range part.Kinds() {
		heads = append(heads, k.Name)
	}
	return heads
}

// sort puts a statement among those that are read in one go. A misspelled
// head is reported and the statement read as the nearest, so that the names
// it gives are known.
func (b *builder) sort(s *draft.Stmt, circuit *draft.Stmt) {
	head := headOf(s)
	if !knownHead(head) {
		if s.Bad && head == "" {
			b.orphans(s)
			return
		}
		if digitsOnly(s.Head.Raw) && len(s.Items) > 1 {
			b.say(wordRule, s.Head.At, "a line begins with what it is: write wire before the number %s", clip(s.Head.Raw))
			b.orphans(s)
			return
		}
		b.sayUnknown(wordRule, s.Head.At, s.Head.Raw, allHeads(), "no statement begins with %q", clip(s.Head.Raw))
		if head = nearestOf(s.Head.Raw, allHeads()); head == "" {
			b.ghost(s)
			b.orphans(s)
			return
		}
	}
	if circuit != nil && !b.fitsCircuit(head) {
		b.say(wordRule, s.Head.At, "%s can't stand in a circuit; write it at the margin", article(head))
		if head == "circuit" {
			circuit = nil
		}
	}
	b.sortHead(s, head, circuit)
}

func (b *builder) sortHead(s *draft.Stmt, head string, circuit *draft.Stmt) {
	switch head {
	case "draft", "harness":
		b.header = append(b.header, s)
	case "place":
		b.places = append(b.places, s)
	case "leg":
		b.legs = append(b.legs, s)
	case "metal":
		b.metals = append(b.metals, s)
	case "step":
		b.steps = append(b.steps, s)
	case "circuit":
		b.circuits = append(b.circuits, s)
		for _, child := range s.Children {
			b.sortChild(child, s, s)
		}
		return
	case "wire":
		b.wires = append(b.wires, wireStmt{stmt: s, role: Built, circuit: circuit})
	case "lead":
		b.wires = append(b.wires, wireStmt{stmt: s, role: Lead, circuit: circuit})
	case "strap":
		b.wires = append(b.wires, wireStmt{stmt: s, role: Strap, circuit: circuit})
	case "together", "spare":
		b.joint = append(b.joint, s)
	case "accept":
		b.accepts = append(b.accepts, acceptStmt{s, nil})
	case "note":
	case "include":
		b.include(s)
		return
	case "part":
		b.parts = append(b.parts, s)
		return
	case "option":
		b.options = append(b.options, s)
	case "cable":
		b.sortCable(s, circuit)
		return
	case "core", "drain":
		b.say(wordRule, s.Head.At, "%s stands below its cable; is it indented too little?", article(head))
		b.wires = append(b.wires, wireStmt{stmt: s, role: Built, circuit: circuit})
	default:
		kind, _ := part.Of(head)
		b.devices = append(b.devices, deviceStmt{s, kind})
		b.sortUnderDevice(s, kind, circuit)
		return
	}
	for _, child := range s.Children {
		b.sortChild(child, s, circuit)
	}
}

// fitsCircuit reports whether a statement may stand in a circuit: conductors,
// what is said about them, and splices and studs, which are part of the way.
func (b *builder) fitsCircuit(head string) bool {
	if k, ok := part.Of(head); ok {
		return k.Self
	}
	return slices.Contains([]string{"wire", "lead", "strap", "accept", "together", "spare", "note", "cable", "core", "drain"}, head)
}

// sortChild sorts a line under a statement that has no lines of its own kind.
func (b *builder) sortChild(s, parent, circuit *draft.Stmt) {
	head := headOf(s)
	switch {
	case head == "accept":
		b.accepts = append(b.accepts, acceptStmt{s, parent})
	case head == "note":
	case headOf(parent) == "circuit" || circuit == parent:
		b.sort(s, circuit)
	case knownHead(head):
		b.say(wordRule, s.Head.At, "%s can't stand under %s; is it indented too deep?", article(head), article(headOf(parent)))
		b.sort(s, circuit)
	default:
		b.say(wordRule, s.Head.At, "%s takes no line %q under it", article(headOf(parent)), clip(s.Head.Raw))
	}
}

// sortUnderDevice looks for lines under a device that are not its own.
func (b *builder) sortUnderDevice(s *draft.Stmt, kind *part.Kind, circuit *draft.Stmt) {
	for _, child := range s.Children {
		head := headOf(child)
		switch {
		case head == "accept":
			b.accepts = append(b.accepts, acceptStmt{child, s})
		case kind.Lines == nil || misplaced(child, kind):
			b.sortChild(child, s, circuit)
		default:
			for _, deeper := range child.Children {
				b.sortChild(deeper, child, circuit)
			}
		}
	}
}

// misplaced reports whether a line under a device is a wire or another
// statement that was indented too deep, and no line of the device.
func misplaced(s *draft.Stmt, kind *part.Kind) bool {
	head := headOf(s)
	if kind.Lines.Head != "" {
		return head != kind.Lines.Head && head != "note" && head != "spare" && knownHead(head)
	}
	return slices.Contains([]string{"wire", "lead", "strap"}, head) && len(s.Items) >= 3
}

// ghost remembers the name of a statement that was not read.
func (b *builder) ghost(s *draft.Stmt) {
	for _, it := range s.Items[:min(len(s.Items), 2)] {
		if !it.IsList() {
			b.ghosts[it.Text] = true
		}
	}
}

// orphans reads the wires under a statement that was not read.
func (b *builder) orphans(s *draft.Stmt) {
	for _, child := range s.Children {
		if slices.Contains([]string{"wire", "lead", "strap"}, headOf(child)) {
			b.sort(child, nil)
		} else {
			b.orphans(child)
		}
	}
}
