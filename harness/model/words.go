package model

import (
	"maps"
	"slices"

	"legwork/harness/part"
	"legwork/harness/quantity"
)

// Takes says what stands at a fixed place of a statement, or behind a word.
type Takes uint8

// What a place may take.
const (
	NewName  Takes = iota // a name that the statement gives
	AnEnd                 // a terminal, or a device that has one
	APlace                // a place; a list of them where Several
	ASpot                 // a place, or a leg and a length along it
	AMetal                // a metal
	ABox                  // a box
	ASource               // a terminal or device, and the length of wire up to it
	APart                 // a part of the shelf
	AnOption              // an option
	AStep                 // a step
	AWire                 // the number of a wire
	AColor                // letters of a color
	AKind                 // a kind of device
	ARule                 // the name of a rule
	AText                 // a text in quotes
	AWord                 // one of Words
	AFigure               // a figure in the unit of Dim
	ACavity               // a cavity of a plug: A.12
	Anything              // whatever else is on the line
)

// Slot is one place of a statement, or behind a word.
type Slot struct {
	Name     string // in capitals, for the shape: "NUMBER"
	Takes    Takes
	Dim      quantity.Dim
	Words    []string
	Several  bool // takes the rest of the line, or a list
	Optional bool
}

// Word is a word of a statement besides the settings, with what stands behind it.
type Word struct {
	Word  string
	Slots []Slot
	Doc   string
}

// Statement is what the builder reads behind one head word.
type Statement struct {
	Word     string
	Slots    []Slot // fixed places
	Label    bool   // takes a label in quotes
	Words    []Word
	Settings []part.Setting // the very ones that the reader takes
	Colors   bool           // takes the letters of a color
	Families bool           // takes the name of an insulation
	Under    string         // head of the statement below which it stands only; "" for none
	Circuit  bool           // may stand in a circuit
	Doc      string
	Example  string
}

// Shape shows how the fixed places of a statement are written: "wire NUMBER END END".
func (s Statement) Shape() string { return shape(s.Word, s.Slots, s.Label) }

// Shape shows how a word is written: "from SOURCE 6in".
func (w Word) Shape() string { return shape(w.Word, w.Slots, false) }

func shape(text string, slots []Slot, label bool) string {
	for _, s := range slots {
		name := s.Name
		switch {
		case len(s.Words) > 0:
			name = oneOf(s.Words)
		case s.Takes == AText:
			name = `"` + name + `"`
		}
		if s.Several {
			name += " ..."
		}
		if s.Optional {
			name = "[" + name + "]"
		}
		text += " " + name
	}
	if label {
		text += ` ["LABEL"]`
	}
	return text
}

// StatementOf finds a statement that is no device by its head word.
func StatementOf(word string) (Statement, bool) {
	for _, s := range Statements() {
		if s.Word == word {
			return s, true
		}
	}
	return Statement{}, false
}

// DeviceStatement is what the builder reads behind the name of a kind.
func DeviceStatement(k *part.Kind) Statement {
	words := slices.DeleteFunc(DeviceWords(), func(w Word) bool { return w.Word == "grounds-to" && k.Ground == "" })
	return Statement{
		Word: k.Name, Slots: []Slot{{Name: "NAME", Takes: NewName}}, Label: true, Words: words,
		Settings: k.Settings, Circuit: k.Self, Doc: k.Title,
	}
}

// PartStatement is what the builder reads behind "part KIND": a part stands
// nowhere, so that it takes no words that say where.
func PartStatement(k *part.Kind) Statement {
	return Statement{
		Word: "part " + k.Name, Slots: []Slot{{Name: "NAME", Takes: NewName}}, Label: true, Settings: k.Settings,
		Words: slices.DeleteFunc(DeviceWords(), func(w Word) bool {
			return !slices.Contains([]string{"marked", "cavities", "terminals", "seals"}, w.Word)
		}),
		Doc: "Defines a part of the shelf. " + k.Title,
	}
}

var (
	terminalsWord = Word{"terminals", []Slot{{Name: "PART", Takes: APart, Several: true}}, "terminals of the shelf that its wires may end with, joined by commas; their fit is judged"}
	sealsWord     = Word{"seals", []Slot{{Name: "PART", Takes: APart, Several: true}}, "seals of the shelf that its wires may go through, joined by commas; their fit is judged"}
)

// DeviceWords are the words that every device may say besides its settings.
func DeviceWords() []Word {
	return []Word{
		{"at", []Slot{{Name: "PLACE", Takes: ASpot}}, "where it is: a place, or a leg and how far along it from the place that is written first"},
		{"in", []Slot{{Name: "BOX", Takes: ABox}}, "the box that it sits in; it is then where the box is"},
		{"on", []Slot{{Name: "METAL", Takes: AMetal}}, "the metal that it is bolted to; a stud is one with it"},
		{"grounds-to", []Slot{{Name: "METAL", Takes: AMetal}}, "the metal that its current returns through"},
		{"from", []Slot{{Name: "SOURCE", Takes: ASource}, {Name: "LENGTH", Takes: AFigure, Dim: quantity.Length}},
			"how much wire there is between the source and this device, measured"},
		{"option", []Slot{{Name: "OPTION", Takes: AnOption}}, "the option that it belongs to: it is there only where that is fitted"},
		{"existing", nil, "it is in the vehicle already: drawn dashed, tested, never bought"},
		{"marked", []Slot{{Name: "TERMINAL", Takes: Anything}, {Name: "MARK", Takes: Anything, Several: true}},
			"what its terminals are called on the device itself, in pairs: marked COM 3 NO 5; a draft then calls them so"},
		{"cavities", []Slot{{Name: "CAVITY", Takes: Anything, Several: true}}, "connectors: what the cavities of each half are called, joined by commas, where that is not 1, 2, 3"},
		terminalsWord, sealsWord,
		{"part", []Slot{{Name: "PART", Takes: APart}}, "the part of the shelf that it is; what its own line says wins"},
	}
}

// Marks are the words that say how sure the user is of the figures before them.
func Marks() []Word {
	return []Word{
		{"sheet", nil, "the setting before it is from the maker's sheet"},
		{"measured", nil, "the setting before it was measured on this vehicle"},
		{"guess", nil, "the setting before it is a guess; it is listed with the others in every report"},
	}
}

// ColorLetters lists the letters that are read as a color, with the IEC 60757
// letters of each.
func ColorLetters() (words []string, letters func(word string) string) {
	return colorWords(), func(word string) string { return colorLetters[word] }
}

// IsColor reports whether a word is read as a color: RD, RED, VT/WH.
func IsColor(word string) bool {
	_, ok := readColor(word)
	return ok
}

// IsThread reports whether a word is read as a stud's thread: M8, No10.
func IsThread(word string) bool {
	_, ok := threadMM(word)
	return ok
}

// FamilyNames lists the kinds of insulation.
func FamilyNames() []string { return familyNames() }

// StepWords lists the words of step lists in this draft, by name.
func (m *Model) StepWords() []string { return slices.Sorted(maps.Keys(m.stepWords)) }

// Positions lists the key positions of all steps of this draft.
func (m *Model) Positions() []string {
	words := slices.Clone(keyPositions)
	for _, s := range m.Steps {
		if !slices.Contains(words, s.Key) {
			words = append(words, s.Key)
		}
	}
	return words
}

// UsualSteps are the moments of use that every draft has, in order of play.
func UsualSteps() []part.Step { return slices.Clone(usualSteps) }

// GroupWords stand for several steps in a list.
func GroupWords() []Word {
	return []Word{
		{"run", nil, "every step with the key at run"},
		{"always", nil, "every step"},
		{"crank", nil, "engage and crank"},
		{"crank-only", nil, "crank without engage"},
	}
}
