package words

import (
	"legwork/harness/draft"
	"legwork/harness/model"
	"legwork/harness/part"
)

// line is what a statement, or a line below a device, may say.
type line struct {
	shape    string // how it is written
	doc      string
	slots    []model.Slot
	label    bool
	words    []model.Word
	settings []part.Setting
	roles    []part.Role
	colors   bool
	families bool
	owner    *draft.Stmt // device that it stands below, nil for none
	kind     *part.Kind  // of the device, or of the owner; nil for other statements
}

// lineOf tells what a statement may say, by its head and what it stands below.
func lineOf(s *draft.Stmt) line {
	if owner, k := ownerOf(s); owner != nil && !ownStatement(s, k) {
		return belowDevice(s, owner, k)
	}
	if k := kindOf(s); k != nil {
		d := model.DeviceStatement(k)
		if s.Word() == "part" {
			d = model.PartStatement(k)
			d.Slots = append([]model.Slot{{Name: "KIND", Takes: model.AKind}}, d.Slots...)
			d.Word = "part"
		}
		l := fromStatement(d)
		l.kind = k
		return l
	}
	if s.Head.Quoted() {
		return line{}
	}
	st, _ := model.StatementOf(s.Word())
	return fromStatement(st)
}

func fromStatement(s model.Statement) line {
	return line{
		shape: s.Shape(), doc: s.Doc, slots: s.Slots, label: s.Label, words: s.Words, settings: s.Settings, colors: s.Colors, families: s.Families,
	}
}

// kindOf gives the kind of a device statement, or of a part; nil for others.
func kindOf(s *draft.Stmt) *part.Kind {
	word := s.Word()
	if word == "part" {
		word = s.Item(0).Word()
	}
	if k, ok := part.Of(word); ok && !s.Head.Quoted() {
		return k
	}
	return nil
}

// ownerOf gives the device whose line a statement is, nil for none.
func ownerOf(s *draft.Stmt) (*draft.Stmt, *part.Kind) {
	if s.Parent == nil {
		return nil, nil
	}
	if k := kindOf(s.Parent); k != nil && k.Lines != nil {
		return s.Parent, k
	}
	return nil, nil
}

// ownStatement reports whether a line below a device is a statement of the
// builder's own.
func ownStatement(s *draft.Stmt, k *part.Kind) bool {
	for _, st := range model.Statements() {
		if st.Word == s.Word() && !s.Head.Quoted() {
			return belowAny(st.Word, k) || st.Under == k.Name
		}
	}
	return false
}

// belowAny reports whether a statement may stand below any device; spare is a
// terminal where lines begin with the name of one.
func belowAny(word string, k *part.Kind) bool {
	return word == "accept" || word == "note" || word == "spare" && k.Lines.Head != ""
}

func belowDevice(s, owner *draft.Stmt, k *part.Kind) line {
	l := line{
		shape: lineShape(k.Lines), doc: "A line of " + k.Name + " " + owner.Item(0).Text + ".", words: model.LineWords(k.Lines.Shape),
		settings: k.Lines.Settings, owner: owner, kind: k,
	}
	switch k.Lines.Shape {
	case part.TerminalLines:
		l.roles = k.Lines.Roles
		l.slots = []model.Slot{{Name: "ROLE", Takes: model.AWord, Words: roleWords(k)}}
	case part.PositionLines:
		l.slots = []model.Slot{{Name: "TERMINAL", Takes: model.AnEnd, Several: true}}
	case part.HalfLines:
		l.slots = []model.Slot{{Name: "NAME", Takes: model.NewName}}
	case part.BusLines:
		l.slots = []model.Slot{{Name: "NAME", Takes: model.NewName}, {Name: "TERMINAL", Takes: model.AnEnd, Several: true}}
	}
	return l
}

func roleWords(k *part.Kind) []string {
	var out []string
	for _, r := range k.Lines.Roles {
		out = append(out, r.Word)
	}
	return out
}
